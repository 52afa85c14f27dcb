"""The lead times and smallest orders that notes tell of some boards, sentence after sentence: 'Weights from 350 g/m²
we make less often, there it is six weeks', 'All heavier ones take three weeks'.

What can't be read for certain is told as well: then what is said of all boards may not hold for these.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.boards.some_boards import SomeBoards, some_boards
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.leasts_of_some import LeastsOfSome, leasts_of_some, without_cells
from tracker.intake.values.notes.pieces_of_some import Piece, pieces_of, tells_figure
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.times_carried_on import goes_on_with_another
from tracker.intake.values.notes.told_plainly import BOARDS, Plain, told_plainly
from tracker.intake.values.notes.ways_named import ways_named
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.orders.minimum import find_minimum
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.goods_in_stock import in_stock_for_some_orders
from tracker.intake.values.times.lasting import lasting
from tracker.intake.values.times.lead import LeadTime, LeadUnit, calendar_days, lead_phrases, lead_unit
from tracker.intake.values.times.lead_by_itself import names_a_store
from tracker.intake.values.times.lead_sentences import times_in, told_of_orders
from tracker.intake.values.times.leads_in_full import tells_its_time
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import joined, phrases, without_words
from tracker.intake.words.phrases import Found, outside


@dataclass(frozen=True, slots=True)
class TermsOfSome:
    """What a piece tells of `boards`, None for all: every lead time and every least weight in it, () where none.

    `place`: in which of the texts. `to_order`: they are in no stock. `no_minimum`: any quantity is sold. `read`: no
    word is left that is not understood.
    """

    boards: SomeBoards | None
    leads: tuple[LeadTime, ...]
    masses: tuple[Mass, ...]
    words: str
    speaks_of_time: bool = False
    to_order: bool = False
    speaks_of_least: bool = False
    no_minimum: bool = False
    read: bool = False
    place: int = 0

    @property
    def lead(self) -> LeadTime | None:
        """The one lead time that it tells for certain."""
        return self.leads[0] if self.read and len({one.days for one in self.leads}) == 1 else None

    @property
    def of_lead(self) -> bool:
        return self.speaks_of_time or bool(self.leads) or self.to_order

    @property
    def of_least(self) -> bool:
        return bool(self.masses) or self.no_minimum or self.speaks_of_least


@lru_cache(maxsize=1024)
def terms_of_some(texts: tuple[str, ...]) -> tuple[TermsOfSome, ...]:
    """What notes tell, piece by piece, as they stand one below the other; () where nothing is told of some boards."""
    found: list[TermsOfSome] = []
    for place, text in enumerate(texts):
        said: list[tuple[Piece, TermsOfSome]] = []
        pieces = pieces_of(text)
        for at, piece in enumerate(pieces):
            if goes_on_with_another(piece.text, [one.text for one in pieces[:at]]):
                continue
            ahead = [one for other, one in said if other.clause == piece.clause]
            one = replace(_told(piece, ahead, [one for _, one in said]), place=place)
            if one.of_lead or one.of_least:
                one = _beside_those_before(one, found)
                said.append((piece, one))
                found.append(one)
    return tuple(_beside_those_behind(found)) if any(one.boards is not None for one in found) else ()


def _beside_those_behind(found: list[TermsOfSome]) -> Iterator[TermsOfSome]:
    """'Others' are none of those either of which a later piece tells the same for certain: 'GC1 from stock, others 4
    weeks' and then 'GZ: 6 weeks'."""
    for place, one in enumerate(found):
        if one.boards is None or one.boards.beside != "others" or not (one.read and one.boards.told):
            yield one
            continue
        alike = (other for other in found[place + 1 :] if (other.lead and one.lead) or (other.masses and one.masses))
        named = (other.boards for other in alike if other.read and other.boards is not None)
        behind = tuple(boards for boards in named if boards.certain and not boards.beside)
        yield replace(one, boards=replace(one.boards, told=(*one.boards.told, *behind)))


def _beside_those_before(one: TermsOfSome, found: list[TermsOfSome]) -> TermsOfSome:
    """'Others' are all but those of which the same is told before; where that is told of none, or right before in words
    that name no board, it is not known which they are."""
    if one.boards is None or not one.boards.beside or one.boards.told:
        return one
    alike = [other for other in found if (other.of_lead and one.of_lead) or (other.of_least and one.of_least)]
    named = [other.boards for other in alike if other.boards is not None and not other.boards.beside]
    if alike and alike[-1].place == one.place and alike[-1].boards is None:
        # 'Zone 1 2 weeks, all others 4 weeks'.
        return replace(one, boards=None, read=False)
    if not named or alike[-1].boards is None:
        return replace(one, read=False)
    return replace(one, boards=replace(one.boards, told=tuple(named)))


def _told(piece: Piece, ahead: list[TermsOfSome], before: list[TermsOfSome]) -> TermsOfSome:
    """What a piece tells; `ahead`: what the same clause tells before it, `before`: what the same text does."""
    but = piece.of_all_but
    if but is None and (piece.excepts or (piece.is_exception and not (ahead or before))):
        return _left_unread(piece)
    text = without_cells(", ".join(_own_parts(piece.text, in_turn=any(one.leads for one in ahead))))
    named = some_boards(text)
    plain = text if named is None else named.rest
    of_money = bool(find_currencies(text)) or "%" in text or bool(phrases("price_words").find(plain))
    spoken = any(one.masses for one in (before if named is not None else ahead))
    least = LeastsOfSome() if of_money else leasts_of_some(text, plain, spoken=spoken)
    masses = least.masses
    counted = _times(plain) if not of_money or phrases("lead_topic").find(plain) else []
    bare = _bare(plain, ahead) if not counted and not masses and named is not None else None
    leads = tuple(dict.fromkeys([lead for lead, _, _ in counted] + ([bare[0]] if bare is not None else [])))
    stock, no_stock = _stock(plain)
    stocked_for_all = not in_stock_for_some_orders(piece.clause)
    how = _how_told(text, plain, masses, bare is not None, spoken=spoken or least.begun)
    masses = () if how.other_weight else masses
    otherwise = not of_money and named is not None and _is_otherwise(text)
    # Without words for deliveries, how often boards are made is no time of theirs.
    rare = named is not None and not leads and bool(joined("made_so.rarely").find(plain)) and _names_a_time(plain)
    of_least = (how.least or _tells_the_least(piece, masses)) and least.sure
    read = of_least if masses else how.lead or (tells_its_time(plain) and not how.figures_left)
    read = read and (stocked_for_all or not stock)
    boards = piece.boards if but is None else SomeBoards(beside="others", told=(but,))
    if boards is None and read and not masses and _is_one_lead(leads) and not phrases("not_lead").find(piece.clause):
        boards = _of_a_form(text)
    return TermsOfSome(
        boards,
        (*leads, *stock),
        masses,
        piece.text,
        speaks_of_time=not of_money and ((not leads and _may_count(plain, piece, ahead)) or otherwise or rare),
        to_order=not leads and (no_stock or bool(joined("made_so.to_order").find(text))),
        speaks_of_least=bool(ahead) and ahead[-1].of_least and not ahead[-1].of_lead and tells_figure(piece.text),
        no_minimum=bool(phrases("no_minimum").find(text)),
        read=read and not (no_stock or otherwise or rare) and _is_plain(text, boards, of_least=bool(masses)),
    )


def _left_unread(piece: Piece) -> TermsOfSome:
    """What a piece tells that excepts boards in words that are not read: 'CRB is excepted, here it is 1 t'."""
    timed = counts_time(piece.text)
    least = not timed and bool(find_masses(piece.text))
    boards = piece.boards if least else None
    return TermsOfSome(boards, (), (), piece.text, speaks_of_time=timed, speaks_of_least=least)


def _of_a_form(text: str) -> SomeBoards | None:
    """The sheets of 'sheets take 6 weeks': some boards of all. What stands between commas is told apart by its ways."""
    found = phrases("forms_named").find(text)
    forms = {match.value for match in found}
    # The 'les' of 'les feuilles' is 'per' elsewhere.
    begins = bool(found) and not rest_of(text[: found[0].start], (), "made_so.boards", "articles")
    alone = len(forms) == 1 and (begins or forms <= ways_named(text)) and COMMA.search(text) is None
    return SomeBoards(form=forms.pop()) if alone else None


def _is_one_lead(leads: tuple[LeadTime, ...]) -> bool:
    """Days without more may be those of payment: 'sheets 25 days after order'."""
    return len({lead.days for lead in leads}) == 1 and lead_unit(leads[0].words) is not LeadUnit.DAY


def _how_told(text: str, plain: str, masses: tuple[Mass, ...], bare: bool, *, spoken: bool) -> Plain:
    """How the words of a piece tell its times and weights, with one sign for the words of its boards."""
    told = times_in_figures(_with_sign(text, plain))
    if bare:
        told = in_figures(told)
        spans = [match.span() for match in _COUNT.finditer(told)]
    else:
        spans = [(start, end) for _, start, end in times_in(told)]
    return told_plainly(told, spans, [mass.words for mass in masses], repeats=spoken)


def _with_sign(text: str, plain: str) -> str:
    """The sign for boards where their words were taken out of a text."""
    signs = [" " if sign == " " else BOARDS if sign != left else sign for sign, left in zip(text, plain, strict=True)]
    return re.sub(rf"{BOARDS}+(?:[ .,/&-]*{BOARDS}+)*", f" {BOARDS} ", "".join(signs))


def _is_otherwise(text: str) -> bool:
    """'GD2 twice as long', 'GD2 2 weeks longer', 'GD2 is out of stock until May': the time of all is not theirs."""
    later = any(match.value == "later" for match in phrases("not_lead").find(text))
    return later or bool(joined("made_so.otherwise", "none_left").find(text))


def _may_count(plain: str, piece: Piece, ahead: list[TermsOfSome]) -> bool:
    """A time that is not read, or the '18' of 'lead time 4 weeks, SBS 18'."""
    return counts_time(plain) or (any(one.leads for one in ahead) and tells_figure(piece.text))


def _names_a_time(plain: str) -> bool:
    units = (match.value for match in lead_phrases().find(plain))
    return counts_time(plain) or any(unit in ("day", "working_day", "week", "month") for unit in units)


def _tells_the_least(piece: Piece, masses: tuple[Mass, ...]) -> bool:
    """'We can't take less than 10,000 lb an item', of all boards: what it says is read as a smallest order."""
    told = find_minimum(piece.text) if piece.boards is None and len(masses) == 1 else None
    return told is not None and told.words == masses[0].words


def _is_plain(text: str, boards: SomeBoards | None, *, of_least: bool) -> bool:
    """Whether no word makes it uncertain, as 'may take' does; rolls or sheets are some boards of all."""
    # The 'can' of 'can be had', the 'no' of 'no minimum', and the 'not' of 'not less than 5 t'.
    told = without_words(text, *(("orders_refused", "at_least") if of_least else ()), "made_so", "no_minimum")
    if any(phrases(section).find(told) for section in ("may_be", "some_of_them", "only_if", "negations")):
        return False
    return boards.certain if boards is not None else not phrases("forms_named").find(text)


def _times(plain: str) -> list[tuple[LeadTime, int, int]]:
    return list(times_in(times_in_figures(plain)))


def _stock(plain: str) -> tuple[tuple[LeadTime, ...], bool]:
    """That goods are in stock; and whether that is denied."""
    said: Sequence[Found[str]] = joined("from_stock.any", "kept_in_stock").find(plain)
    if any(denied(plain, match) for match in said):
        return (), True
    # 'Ab Lager Kassel' says from where, and not that it is there.
    said = [match for match in said if not names_a_store(plain, match)]
    said = said or _at_once(plain)
    return tuple(LeadTime(0, 0, plain[match.start : match.end]) for match in said[:1]), False


def _at_once(plain: str) -> Sequence[Found[str]]:
    """The 'at once' of 'greyboard goes out at once'; a rise that holds at once is none of goods."""
    leaves = joined("made_so.there", "goods_leave.any", "goods_leave.waiting").find(plain)
    found = [match for match in phrases("at_once").find(plain) if match.value == "any"]
    return found if leaves and not counts_time(plain) else []


def _bare(plain: str, ahead: list[TermsOfSome]) -> tuple[LeadTime, str] | None:
    """The '6' of 'Lead time 4 weeks, except weights from 400 g/m², which need 6'; the '18' of '4 weeks, SBS 18' may be
    a caliper."""
    units = {unit for one in ahead for lead in one.leads if (unit := lead_unit(lead.words)) is not None}
    counts = _COUNT.findall(in_figures(plain))
    if len(units) != 1 or len(counts) != 1:
        return None
    low, high = counts[0][0], counts[0][1] or counts[0][0]
    led = any(phrases(section).find(plain) for section in ("takes_time", "within_a_time", "made_so"))
    if not led and int(high) > _THINNEST:
        return None
    (unit,) = units
    days = [calendar_days(Decimal(count), unit) for count in (low, high)]
    return (LeadTime(days[0], days[1], plain.strip()), low) if days[0] <= days[1] else None


_THINNEST = 9
"""Points of the thinnest board that is common (our choice): a lower figure behind a board's name is no caliper."""
_COUNT = re.compile(r"(?<![\d.,/\w])(\d{1,2})(?:\s*[-–]\s*(\d{1,2}))?(?![\w/%]|[.,]\d)")


def _own_parts(text: str, *, in_turn: bool) -> Iterator[str]:
    """Those that are of no other topic than how long boards take and how much of them is sold. `in_turn`: it goes on
    with lead times, where '6 weeks hold for these' is one too."""
    for part in COMMA.split(told_of_orders(text)):
        others = [match for match in phrases("not_lead").find(part) if match.value not in ("how", "later")]
        others += phrases("valid").find(part) if not in_turn else []
        others += lasting(part)
        # The 'held' of 'held in stock' is of no price.
        others = outside(others, joined("from_stock.any", "kept_in_stock").find(part))
        if not others or phrases("lead_topic").find(part):
            yield part
