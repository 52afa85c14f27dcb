"""A board named behind what is said of all, with another figure of the same: the 'GD2 ab Lager' behind 'Lieferzeit 4
Wochen', the '(CRB: 30 November)' behind 'Valid until 15 December 2026'."""

import re

from tracker.intake.values.boards.boards_behind import boards_behind
from tracker.intake.values.boards.boards_excepted import JOINED, boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.kinds_meant import boards_called, kind_meant
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.lines_counted import lines_named
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

_STOPS = " :,;.–-()"


def of_board_behind(before: str, piece: str) -> tuple[str, ...]:
    """'GD2: ab Lager' of the piece behind what is said of all; () where it does not tell another figure of a board."""
    piece = _without_joint(piece.strip(_STOPS))
    words, rest = _board_and_figure(piece)
    said = rest.strip(_STOPS)
    if not words or not said or boards_named(before).some or lines_named(before) is not None:
        return ()
    until = "" if is_another(before, said) else _last_day_of(before)
    led = not boards_ahead(piece)[0]
    own = _own_end(said) if until else ""
    if own or (until and (_ends_too(rest, said) or (led and _is_a_day(said)))):
        said = f"{until} {own or _without_until(said)}"
    elif not is_another(before, said):
        return ()
    # 'GC1 und GD2' are two boards, and '18 and 24 pt' are known together.
    boards = (words,) if boards_called(words).some else re.split(JOINED, words)
    return tuple(f"{board}: {said}" for board in boards)


def _without_joint(piece: str) -> str:
    """'For CRB until 30 November' of 'but for CRB until 30 November'."""
    joint = next((match for match in phrases("but_words").find(piece) if match.start == 0), None)
    return piece if joint is None else piece[joint.end :].lstrip(_STOPS)


def _board_and_figure(piece: str) -> tuple[str, str]:
    """The boards and the figure of 'GD2 10 t', 'für GD2 10 t' and '10 t for the GD2 grades'."""
    words, rest = boards_ahead(piece)
    leads = phrases("about_lines").find(piece) if not words else []
    for lead in leads:
        boards, behind = boards_behind(piece[lead.end :].lstrip())
        ahead = piece[: lead.start].rstrip()
        # '10 t for CRB' has all of its figure ahead, 'for CRB 10 t' behind.
        if boards and bool(ahead) != bool(behind.strip(_STOPS)):
            return boards, ahead or behind
    return (words, rest) if words else _boards_of_those(piece)


def _boards_of_those(piece: str) -> tuple[str, str]:
    """'The kraft', 'those of 18 pt' and 'the recycled items', with what goes on behind them."""
    those = next((match for match in joined("those_of", "articles").find(piece) if match.start == 0), None)
    named = piece if those is None else piece[those.end :].lstrip(" '’")
    words, rest = boards_behind(named) if those is not None else ("", named)
    kind = kind_meant(named) if not words else None
    if kind is None or not boards_called(named.removesuffix(kind.behind)).some:
        return words, rest
    return named.removesuffix(kind.behind).strip(), kind.behind


def _last_day_of(before: str) -> str:
    """The words that lead to its last day: 'valid until'."""
    held = [one for one in statements(before) if isinstance(one, Validity) and one.until is not None]
    spoken = [match.start for section in ("valid", "until") for match in phrases(section).find(before)]
    dates = find_dates(before)
    return before[min(spoken) : dates[-1].start].strip() if held and spoken and dates else ""


def _own_end(said: str) -> str:
    """The day of 'only until 30 November' and 'prices are valid until 30 November', where no more is said."""
    dates, ends = find_dates(said), phrases("until").find(said)
    if len(dates) != 1 or not any(match.end <= dates[0].start for match in ends):
        return ""
    day = (dates[0].start, dates[0].end)
    return said[slice(*day)] if not rest_of(said, [day], *_BESIDE_AN_END) else ""


_BESIDE_AN_END = ("until", "valid", "only_these", "copula", "price_words", "board_goods", "contrasted")


def _ends_too(rest: str, said: str) -> bool:
    """Whether it begins with another end: ': 30 November', 'until 30 November'."""
    return bool(_ahead_until(said)) or (rest[:1] in ":(" and any(map(str.isdigit, said)))


def _is_a_day(said: str) -> bool:
    """The '30 November' of 'for CRB 30 November'."""
    return any(not blanked(said, ((day.start, day.end),)).strip(_STOPS) for day in find_dates(said))


def _ahead_until(said: str) -> int:
    return next((match.end for match in phrases("until").find(said) if match.start == 0), 0)


def _without_until(said: str) -> str:
    return said[_ahead_until(said) :].strip(_STOPS)


def is_another(before: str, words: str) -> bool:
    """The '6 weeks' of 'Lead time 3 weeks, 6 weeks for item 4': another figure of what has one already."""
    kinds = {type(one) for one in statements(before)}
    if lead_text(words) is not None:
        return LeadTime in kinds
    return SaysMinimum in kinds and any(mass.words == words for mass in find_masses(words))


def is_aside_of_all(head: str) -> bool:
    """Whether a colon stands in brackets behind what is said of all: that of 'all prices USD/ST (CRB: CAD/ST)'.
    `head`: what stands before it."""
    before, bracket, said = head.rpartition("(")
    return bool(bracket) and ")" not in said and states(before)


def states(words: str) -> bool:
    """Whether anything is said that lines may differ in."""
    said = words.strip(_STOPS)
    money = find_price_unit(said) is not None and any(map(str.isdigit, said))
    return bool(statements(said) or find_masses(said) or money) or any(
        read is not None for read in (lead_text(said), find_delivery(said))
    )
