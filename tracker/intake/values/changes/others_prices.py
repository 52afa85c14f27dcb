"""Names of prices that stand in a sheet and that nobody offers there: competitors', the market's, a buyer's targets,
last year's, and those of boards that are gone.

'Competitor prices' heads such prices and 'Marktpreis GC1' is one. 'Market Street Board Co.' and 'Discontinued grades
while stocks last' are a firm, and offers perhaps.
"""

from enum import IntEnum
from functools import cache, lru_cache

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.changes.no_offers import may_be_an_example, offers_nothing, shows_how_to_read
from tracker.intake.values.changes.shown_besides import shown_besides, shown_only
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found, Phrases, tokens_of


class Offering(IntEnum):
    """Whether what stands below or beside a text is offered."""

    SURELY = 0
    DOUBTFUL = 1
    NOT = 2


_LONGEST = 70
_FEW_MORE = 2
"""Words more in a heading, such as a place or a firm's name; a note says more."""
_NAMED, _SOLD = "named", "sold"
"""Keys of the word lists."""


@lru_cache(maxsize=8192)
def heading_offers(text: str) -> Offering:
    """What a sub-heading says of the prices below it, by what it begins with."""
    if len(text) > _LONGEST:
        return Offering.SURELY
    example = Offering.DOUBTFUL if may_be_an_example(text) else Offering.SURELY
    besides = Offering.DOUBTFUL if shown_besides(text) or shown_only(text) else Offering.SURELY
    return max(_of_others(text), _of_gone_boards(text), _of_a_paper(text), example, besides)


@lru_cache(maxsize=8192)
def title_offers(text: str) -> Offering:
    """What a title says of all prices of a table: so only where it speaks of nothing else."""
    if len(text) > _LONGEST:
        return Offering.SURELY
    first = _leading("prices_of_others", text)
    others = Offering.SURELY if first is not None and _strange(text, first) else _of_others(text)
    return max(others, _of_a_paper(text))


_BRACKETS = str.maketrans(dict.fromkeys("()[]", " "))


def _of_a_paper(text: str) -> Offering:
    """'DRAFT - not an offer', 'Example only, prices fictitious', 'Please quote the following, target prices'."""
    # 'Price list (sample)' is a sample price list.
    said = {match.value for match in phrases("not_quoted").find(" ".join(text.translate(_BRACKETS).split()))}
    named = any(match.value == _NAMED for match in phrases("prices_of_others").find(text))
    asks = "asks" in said or bool(phrases("requests_for_offers").find(text))
    # 'Sheets are not on offer at present' leaves the rolls.
    denied = offers_nothing(text) and not _strange(text, None) and not phrases("forms").find(text)
    first = _leading("not_quoted", text)
    whole = first is not None and first.value == "whole" and not _strange(text, first)
    doubtful = whole or denied or _made_up(text) or (asks and named) or _of_prices_paid(text)
    return Offering.DOUBTFUL if doubtful else Offering.SURELY


def _made_up(text: str) -> bool:
    """'Sample price list', and not 'Sample prices on request', which offers samples beside the prices."""
    parts = (" ".join(part.translate(_BRACKETS).split()) for one in clauses(text) for part in one.split(","))
    return any(
        match.value == "made_up"
        for part in parts if not phrases("samples_to_have").find(part)
        for match in phrases("not_quoted").find(part)
    )  # fmt: skip


def _of_prices_paid(text: str) -> bool:
    """'What our plants paid last year', 'Gezahlte Preise 2025, Historie'; new prices may stand beside such, and freight
    that was paid is one that is paid."""
    found = phrases("beside_bids").find(text)
    paid = [match for match in found if match.value == "paid_before" and not _is_freight(text[: match.start])]
    then = any(match.value == "previous_price" for match in phrases("headers").find(text))
    return bool(paid) and then and not phrases("new_prices").find(text)


def _is_freight(before: str) -> bool:
    """'Freight paid', 'port payé'."""
    named = (match for match in phrases("headers").find(before) if match.value == "freight")
    return any(not before[match.end :].strip() for match in named)


def _of_others(text: str) -> Offering:
    first = _leading("prices_of_others", text)
    if first is None:
        return Offering.SURELY
    if first.value == _NAMED:
        strange = _strange(text, first)
        told = Offering.DOUBTFUL if strange else Offering.NOT
        return told if strange <= _FEW_MORE else Offering.SURELY
    return Offering.SURELY if _strange(text, first, boards=False) else Offering.DOUBTFUL


def _of_gone_boards(text: str) -> Offering:
    """'Discontinued:', 'Sold in October'; 'Not available in rolls' and 'Sold in full pallets' are offered otherwise."""
    first = _leading("gone_boards", text)
    if first is None or _limited(text[first.end :]):
        return Offering.SURELY
    if not _strange(text, first):
        return Offering.NOT
    boards = phrases("generic_names").find(text) or _names_of_boards(text)
    return Offering.DOUBTFUL if boards and first.value != _SOLD else Offering.SURELY


def _limited(words: str) -> bool:
    """'In rolls', 'from stock', 'for orders below 5 t': in other forms and orders there are offers."""
    told = any(phrases(kind).find(words) for kind in ("forms", "small_orders", "stores", "negations"))
    loads = any(match.value in LOADS for match in phrases("bracket").find(words))
    return told or loads or bool(find_masses(words))


def _leading(section: str, text: str) -> Found[str] | None:
    """The phrase of a section that a text begins with, behind small words: 'Our target prices'."""
    found = tokens_of(text)
    small = {
        place
        for kind in ("articles", "header_filler")
        for match in phrases(kind).among(found)
        for place in range(match.first, match.after)
    }
    words = next((place for place, (word, *_) in enumerate(found) if word.isalnum() and place not in small), None)
    starts = (place for place in range(len(found)) if words is None or place <= words)
    return next((match for place in starts if (match := phrases(section).at(found, place)) is not None), None)


_OF_PRICES = (
    "prices_of_others", "price_words", "price_lists", "these_prices", "articles", "copula", "months", "since", "until",
    "end_of", "basis", "per",
)  # fmt: skip
_OF_BOARDS = (
    "gone_boards",
    "no_offers",
    "not_quoted",
    "bid_rounds",
    "list_names",
    "header_filler",
    "generic_names",
    "price_ages",
)


def _strange(text: str, first: Found[str] | None, *, boards: bool = True) -> int:
    """How many words behind the name say more than for when, in which unit and, with `boards`, for what."""
    found = tokens_of(text)
    known = set(range(first.after if first is not None else 0))
    for kind in (*_OF_PRICES, *(_OF_BOARDS if boards else ())):
        known.update(*(range(match.first, match.after) for match in phrases(kind).among(found)))
    known.update(*(range(match.first, match.after) for match in currency_phrases().among(found)))
    if boards:
        known.update(*(range(match.first, match.after) for match in _names_of_boards(text)))
    return sum(word.isalpha() and place not in known for place, (word, *_) in enumerate(found))


def _names_of_boards(text: str) -> list[Found[str]]:
    heads = (Role.PRODUCT, Role.GRADE, Role.ITEM, *PRICES)
    return [match for match in phrases("headers").find(text) if match.value in heads]


@lru_cache(maxsize=8192)
def round_of_bids(text: str) -> str:
    """Which round of bids a heading says that its prices are of, in the words of the list; '' for none."""
    first = _leading("bid_rounds", text)
    return first.value if first is not None and not _strange(text, first) else ""


_OF_BUYERS = {"bought": Offering.NOT, "asks": Offering.DOUBTFUL}
"""What a line says that begins as buyers write: 'We bought SBS at …', 'Please quote CRB at … or better'."""


@lru_cache(maxsize=16384)
def row_offers(label: str) -> Offering:
    """What the name of a row's board says of its price: 'Zielpreis GC1', 'SBS 18 pt (competitor)'.

    A word that may be another ('Market') counts only right beside the board.
    """
    if not (_telling().may_begin_in(label) and _telling().find(label)):
        # Most names of a long list end here, each of them different.
        return Offering.SURELY
    if phrases("examples").find(label):
        if shows_how_to_read(label):
            return Offering.NOT
        if may_be_an_example(label):
            return Offering.DOUBTFUL
    told = phrases("not_quoted").find(label)
    if told and told[0].first == 0 and told[0].value in _OF_BUYERS:
        return _OF_BUYERS[told[0].value]
    found = phrases("prices_of_others").find(label)
    if not found:
        return Offering.SURELY
    first = _leading("prices_of_others", label)
    if first is not None:
        rest = label[first.end :].strip(" :,;()–-")
        if first.value == _NAMED:
            return Offering.NOT
        return Offering.DOUBTFUL if not rest or _begins_with_a_board(rest) else Offering.SURELY
    last = found[-1]
    if label[last.end :].strip(" .)]") or not _ends_with_a_board(label[: last.start]):
        return Offering.SURELY
    return Offering.NOT if last.value == _NAMED else Offering.DOUBTFUL


@cache
def _telling() -> Phrases[str]:
    """The phrases of all lists that row_offers looks for, by list."""
    lists = ("examples", "not_quoted", "prices_of_others")
    return Phrases({name: [phrase for said in words(name).values() for phrase in said] for name in lists})


def _begins_with_a_board(words: str) -> bool:
    return any(words.startswith(board) for board in _boards(words))


def _ends_with_a_board(words: str) -> bool:
    """'GC1 Vorjahr', 'SBS 18 pt - competitor', 'Fenlight (target price)'."""
    plain = words.rstrip()
    return plain.endswith(("(", "[", " -", " –", ":", ",")) or any(plain.endswith(board) for board in _boards(plain))


def _boards(words: str) -> list[str]:
    grade = find_grade(words)
    measures = [*(one.words for one in find_calipers(words)), *(one.words for one in find_weights(words))]
    return [board for board in (grade.words if grade is not None else "", *measures) if board]


@lru_cache(maxsize=8192)
def remark_offers(text: str) -> Offering:
    """What a remark beside a row says of its price, where it says nothing else: 'Zielpreis'."""
    named = phrases("prices_of_others").whole(text) == _NAMED
    return Offering.DOUBTFUL if named else Offering.SURELY
