"""A note that says one thing of all lines and then another of some: 'Lead time 3 weeks; item 4: 6 weeks'.

Read as one, it would say both of the lines that it names and nothing of the others.
"""

import re
from collections.abc import Iterable, Iterator

from tracker.intake.values.boards.board_behind import is_another, is_aside_of_all, of_board_behind, states
from tracker.intake.values.boards.boards_excepted import boards_excepted
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.kinds_meant import boards_called
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.leads_excepted import leads_excepted
from tracker.intake.values.notes.lines_counted import lines_named
from tracker.intake.values.notes.lines_meant import lines_meant
from tracker.intake.values.notes.pieces_of_some import tells_something
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import tokens_of, without

_STOPS = " :,;.–-()"


def of_all_and_some(text: str) -> tuple[str, ...]:
    """Its texts, each about all lines or about those that it names first; the text itself where it is about one of
    both. What 'except' says of some is told by its own words."""
    if phrases("excepted").find(text):
        return leads_excepted(text) or _around_the_exception(text)
    parted = (_uncontrasted(part) for clause in clauses(text) for part in _before_lines(clause))
    pieces = list(_with_colons(parted))
    named = [_named(piece) for piece in pieces]
    if len(pieces) < 2 or not any(named):
        return (text,)
    parts = list(_but_for_unread(list(_parts(pieces, named))))
    return tuple(parts) if len(parts) > 1 else (text,)


def _but_for_unread(parts: list[str]) -> Iterator[str]:
    """'Lead time 3 weeks' without items 3 and 4 where 'items 3 and 4 in the usual stock' is not read: they have another
    time, or weight, than all."""
    unread = [part[slice(*lines)] for part in parts if (lines := lines_named(part)) is not None and _is_unread(part)]
    for part in parts:
        of_all = any(isinstance(one, LeadTime | SaysMinimum) for one in statements(part))
        excepts = bool(unread) and of_all and lines_named(part) is None
        yield f"{part} except {', '.join(unread)}" if excepts else part


def _is_unread(part: str) -> bool:
    return tells_something(part) and lines_meant(part, note=True) is None


def _around_the_exception(text: str) -> tuple[str, ...]:
    """'Prices delivered, except SBS, which is ex works. Lead time 4 weeks' at its last stop as well: what stands behind
    the exception is on another subject than this, and of all again."""
    pieces = clauses(text)
    place = next((at for at, piece in enumerate(pieces) if phrases("excepted").find(piece)), 0)
    told, later = ". ".join(pieces[: place + 1]), pieces[place + 1 :]
    excepted = boards_excepted(told) if later else None
    if excepted is None or not excepted.behind or any(boards_named(piece).some for piece in later):
        return _before_the_exception(text)
    own = _kinds_of(excepted.behind)
    apart = bool(own) and not any(own & _kinds_of(piece) for piece in later)
    return (*_before_the_exception(told), *later) if apart else _before_the_exception(text)


def _kinds_of(text: str) -> set[type[object]]:
    return set(map(type, statements(text)))


def _before_the_exception(text: str) -> tuple[str, ...]:
    """'EUR per tonne. Minimum 2 t except SBS' at its stop: from the first sentence nothing is excepted."""
    pieces = clauses(text)
    place = next((at for at, piece in enumerate(pieces) if phrases("excepted").find(piece)), 0)
    ahead, excepting = pieces[:place], pieces[place]
    told = statements(excepting[: phrases("excepted").find(excepting)[0].start]) if ahead else ()
    if not told or not all(statements(piece) and not boards_named(piece).some for piece in ahead):
        return (text,)
    return (*ahead, ". ".join(pieces[place:]))


def _parts(pieces: list[str], named: list[tuple[str, str] | None]) -> Iterator[str]:
    """The pieces, of which those behind named lines go on with them until one speaks of all prices; behind the 'SBS 8
    weeks' of 'Lead time 3 weeks; SBS 8 weeks. Ex works' what is on another subject speaks of all again."""
    topic, going_on, aside = "", "", ""
    for piece, lines in zip(pieces, named, strict=True):
        topic = topic_of(piece, *OF_TERMS) or topic
        if lines is not None:
            if going_on:
                yield going_on
            said, words = lines
            bare = topic and not statements(words) and lead_text(words) is None and states(words)
            bare = bare and not _are_there(f"{said} {words}")
            going_on = f"{said}: {topic} {words}" if bare else f"{said}: {words}"
            aside = _aside(topic, words)
        elif going_on and not speaks_of_all(piece) and not (aside and _is_another_subject(piece, aside)):
            going_on = f"{going_on}. {piece}"
        else:
            if going_on:
                yield going_on
            going_on = ""
            yield piece
    if going_on:
        yield going_on


def _are_there(text: str) -> bool:
    """The weight of 'GD2: 40 t available from stock' is that of what there is, and of no order."""
    return bool(find_masses(text) and joined("made_so.there", "from_stock.any", "kept_in_stock").find(text))


def _aside(topic: str, words: str) -> str:
    """What is said of some lines by a figure alone, with the words for what it is of; '' where more is said."""
    return f"{topic} {words}" if topic and not statements(words) and statements(f"{topic} {words}") else ""


def _is_another_subject(piece: str, aside: str) -> bool:
    said = _kinds_of(piece)
    return bool(said) and not said & _kinds_of(aside)


def _with_colons(pieces: Iterable[str]) -> Iterator[str]:
    """The 'CRB ex stock' behind 'Lead time 4 weeks' as 'CRB: ex stock'."""
    before = ""
    for piece in pieces:
        of_board = of_board_behind(before, piece)
        before = before if of_board else piece
        yield from of_board or (piece,)


def _named(piece: str) -> tuple[str, str] | None:
    """The words for the lines or the board that a piece is about, and what it says of them."""
    found = lines_named(piece)
    if found is not None:
        return piece[found[0] : found[1]], f"{_ahead(piece, found[0])} {piece[found[1] :].strip(_STOPS)}".strip(_STOPS)
    head, colon, rest = piece.partition(":")
    if (
        not colon
        or is_aside_of_all(head)
        or not boards_called(head).some
        or boards_named(rest).some
        or topic_of(head, *OF_TERMS)
        or not states(rest)
    ):
        return None
    return head.strip(), rest.strip(_STOPS)


def _ahead(piece: str, lines: int) -> str:
    """What stands before the lines that are named from `lines` on, without the word that leads to them."""
    before = piece[:lines].rstrip()
    # 'For the items 3 and 4'.
    for section in ("articles", "about_lines"):
        leading = next((one for one in phrases(section).find(before) if one.end == len(before)), None)
        before = before if leading is None else before[: leading.start].rstrip()
    return before


_BREAK = re.compile(r",\s+|\s\(|\s-\s(?=[^\W\d])")


def _before_lines(clause: str) -> Iterator[str]:
    """'Lead time 3 weeks, item 4 6 weeks' and 'Lead time 3 weeks (item 4: 6 weeks)' in two: what is said of all, and
    what of the lines named behind it."""
    for match in _BREAK.finditer(clause):
        before, behind = clause[: match.start()], clause[match.end() :]
        behind = _uncontrasted(behind.strip(" )") if match.group().endswith("(") else behind)
        if of_board_behind(before, behind):
            yield before
            yield from _before_lines(behind)
            return
        found = lines_named(behind)
        of_lines = _named(before)
        if found is None or not states(before if of_lines is None else of_lines[1]):
            continue
        first = not _ahead(behind, found[0]) and states(_BREAK.split(behind[found[1] :])[0])
        if first or (of_lines is None and _is_another(before, _ahead(behind, found[0]))):
            yield before
            yield from _before_lines(behind)
            return
    yield clause


def _is_another(before: str, words: str) -> bool:
    """As of lead times, the '30 EUR/t' of 'energy surcharge 20 EUR/t, but 30 EUR/t for items 3 and 4'."""
    amount = find_price_unit(words) is not None and any(map(str.isdigit, words)) and not statements(words)
    charged = any(isinstance(one, ChargeWords) and one.amounts for one in statements(before))
    return (amount and charged) or is_another(before, words)


def _uncontrasted(piece: str) -> str:
    """'For items 3 and 4 10 t' of 'for items 3 and 4, however, 10 t' and of 'but for …': what sets lines against all
    that was said says nothing more of them."""
    if lines_named(piece) is None:
        return piece
    but = next((match for match in phrases("but_words").find(piece) if match.first == 0), None)
    plain = piece if but is None else piece[but.end :]
    return " ".join(without(plain, phrases("contrasted").find(plain)).replace(" , ", " ").split())


def speaks_of_all(piece: str) -> bool:
    """'Prices delivered', 'All lines valid until 31 December', 'This offer is open until 15 September'."""
    first = tokens_of(piece)
    if any(phrases(section).at(first, 0) is not None for section in ("all_of_them", "all_prices", "list_names")):
        return True
    return any(found.first == 0 for found in phrases("these_prices").find(piece))
