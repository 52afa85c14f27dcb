"""Sheet sizes that a text names only to say what its weights are of: 'weight in lb per 500 sheets of 25 x 38 in'."""

import re
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.figures.sheetsize import SheetSize, find_sheet_sizes
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.pieces_of_some import tells_something
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked, outside


@lru_cache(maxsize=8192)
def own_sheet_sizes(text: str) -> tuple[SheetSize, ...]:
    """The sizes that a text says of the sheets sold, and not of what weights are of or of what can be cut."""
    found = find_sheet_sizes(text)
    bounds = _bounds(text, found)
    return tuple(size for size in found if size.words not in bounds and not _defines_weight(text, size))


def _bounds(text: str, found: Sequence[SheetSize]) -> set[str]:
    """The words for sizes that bound what can be cut: where one end of 'from 20 x 26 in to 52 x 70 in' does, so does
    the other."""
    places = [(max(text.find(words), 0), words) for words in dict.fromkeys(size.words for size in found)]
    bounds = {size.words for size in found if _is_a_bound(text, size)}
    for (start, one), (after, other) in pairwise(places):
        if bounds & {one, other} and _joins_ends(text[start + len(one) : after]):
            bounds |= {one, other}
    return bounds


def _joins_ends(between: str) -> bool:
    joined_by = between.strip()
    said = [match.value for match in phrases("range").find(joined_by)]
    spans = [match.span for section in ("range", "size_bounds") for match in phrases(section).find(joined_by)]
    signs = blanked(joined_by, spans).strip()
    return bool(joined_by) and signs in ("", *_DASHES) and not {"and", "or"}.intersection(said)


_DASHES = ("-", "–", "—")


def bounds_sizes(head: str) -> bool:
    """Whether the sizes below a head are what can be cut: 'Max. sheet size', 'Sheet size (maximum)', and not 'Format ab
    Lager', 'Sheet size (minimum 5 ST)' or 'Format möglich ab 1 t', whose word is of a stock, an order or a day."""
    bounds = outside(phrases("size_bounds").find(head), phrases("from_stock").find(head))
    return any(not _leads_to_another(head[one.end :]) for one in bounds)


def _leads_to_another(behind: str) -> bool:
    """Whether a figure or a month follows: what is bounded is an order or a time."""
    first = _PIECES.split(behind.lstrip(" ("))[0]
    return any(map(str.isdigit, first)) or bool(phrases("months").find(first))


_PIECES = re.compile(r"[(),;:]")


def _is_a_bound(text: str, size: SheetSize) -> bool:
    """'Maximum sheet size 52 x 70 in', 'sheets up to 52 x 70 in', '52 x 70 in max.', and not 'max. 500 sheets 28 x 40
    in', which bounds another figure."""
    at = max(text.find(size.words), 0)
    # The stop of 'max. sheet size' ends nothing.
    bounds = phrases("size_bounds").find(text[:at])
    ends = [end.end() for end in _PART_ENDS.finditer(text[:at]) if not any(_cut_short(end, one) for one in bounds)]
    ahead = text[ends[-1] if ends else 0 : at]
    behind = text[at + len(size.words) :]
    limits = phrases("size_bounds").find(behind)
    closes = (end.start() for end in _PART_ENDS.finditer(behind) if not any(_cut_short(end, one) for one in limits))
    behind = behind[: next(closes, len(behind))]
    if any(not any(map(str.isdigit, ahead[one.end :])) for one in phrases("size_bounds").find(ahead)):
        return True
    closing = phrases("size_bounds").find(behind)
    return bool(closing) and not behind[: closing[0].start].strip(" (") and not behind[closing[0].end :].strip(" ).")


def sheets_of_all(text: str) -> tuple[SheetSize, ...]:
    """The sizes that a note says of all sheets: that of 'lead time 4 weeks, 28 x 40 in from stock' is of some, which
    have a term of their own."""
    telling = [part for clause in clauses(text) for part in COMMA.split(clause) if tells_something(part)]
    own = [size for part in telling for size in find_sheet_sizes(part)] if len(telling) > 1 else []
    of_others = (_is_of_a_thing, _is_weighed, _is_an_example)
    return tuple(
        size for size in own_sheet_sizes(text) if size not in own and not any(one(text, size) for one in of_others)
    )


def _cut_short(end: re.Match[str], word: Found[str]) -> bool:
    return end[0].startswith(".") and word.start < end.start() <= word.end


def _is_weighed(text: str, size: SheetSize) -> bool:
    """'1,000 sheets 26 x 38 in weigh 250 lb', '26 x 38 in = 0.25 lb': what such a sheet comes to."""
    behind = text[max(text.find(size.words), 0) + len(size.words) :].lstrip(" :)")
    # The 'Weight' of the next sentence is of what follows it.
    weighs = not behind[:1].isupper() and any(one.start == 0 for one in phrases("piece_weighs").find(behind))
    return behind.startswith("=") or weighs


def _is_an_example(text: str, size: SheetSize) -> bool:
    """'Example: 1,000 sheets 26 x 38 in'."""
    ahead = text[: max(text.find(size.words), 0)]
    return any(one.value in ("example", "worked") for one in phrases("examples").find(ahead))


def _is_of_a_thing(text: str, size: SheetSize) -> bool:
    """'Pallets 28 x 40 in', 'press size 28 x 40 in', 'sample sheets 28 x 40 in', and not the sheets of 'pallets of
    1,000 sheets 28 x 40 in'."""
    ahead = _PART_ENDS.split(text[: max(text.find(size.words), 0)])[-1]
    things = phrases("sized_things").find(ahead)
    return bool(things) and not any(form.start >= things[-1].end for form in phrases("forms").find(ahead))


_PART_ENDS = re.compile(r"[;,](?!\d)|\.\s|\s[-–—]\s|\n")


@lru_cache(maxsize=8192)
def sheets_of_thousand(text: str) -> tuple[SheetSize, ...]:
    """The sizes that an 'M weight' is of: what 1,000 sheets weigh is told of sheets that are sold."""
    if not _counts_thousand(text):
        return ()
    return tuple(size for size in find_sheet_sizes(text) if _defines_weight(text, size))


@lru_cache(maxsize=8192)
def sheets_of_row(text: str) -> tuple[SheetSize, ...]:
    """The sizes in a board's own words, whose 1,000 sheets are its own: 'SBS, 544 lb per 1,000 sheets 28 x 40 in'."""
    return find_sheet_sizes(text) if _counts_thousand(text) else own_sheet_sizes(text)


def _defines_weight(text: str, size: SheetSize) -> bool:
    """Behind a word of weights, and what they count or nothing stands between: 'lb per ream of 500 sheets, 24 x 36 in'.

    'Weight in lb/MSF, sheets 28 x 40 in' goes on to the sheets sold; in '28 x 40 in, M weight 544' they come first.
    """
    at = text.find(size.words)
    ahead = _ENDS.split(text[: max(at, 0)])[-1]
    weighed = _weight_words(ahead)
    between = ahead[min(weighed) :] if weighed else ""
    if not weighed or phrases("price_words").find(between) or find_currencies(between):
        # 'Weights lb/MSF, price per 1,000 sheets 28 x 40 in' has gone on to the prices.
        return False
    return _counts(ahead, *_COUNTED) or not (_PARTS.search(between) or phrases("forms").find(between))


_ENDS = re.compile(r";|\.\s|\s[-–—]\s")
_PARTS = re.compile(r"[,:()]")
_THOUSAND = "1000sheets"
_COUNTED = ("ream", _THOUSAND)


def _counts(text: str, *units: str) -> bool:
    return any(match.value in units for match in phrases("basis").find(text)) or bool(_of_thousand(text))


def _counts_thousand(text: str) -> bool:
    return _counts(text, _THOUSAND)


def _weight_words(text: str) -> list[int]:
    """Where each of them ends. The ream and the pound of 'USD per ream 28 x 40 in' are what a price is per."""
    priced = phrases("price_words").find(text) or find_currencies(text)
    pounds = [match for match in phrases("weight_units").find(text) if match.value == "pound" and not priced]
    named = [
        match for match in phrases("weight_words").find(text) if not phrases("basis").whole(text[slice(*match.span)])
    ]
    return [match.end for match in (*named, *pounds, *_of_thousand(text))]


def _of_thousand(text: str) -> list[Found[str]]:
    return [match for match in phrases("headers").find(text) if match.value == Role.SHEETS_WEIGHT]
