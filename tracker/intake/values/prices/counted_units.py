"""Units by the thousand or the hundred: 'per 1,000 cartons' is told by what is counted, and not by the number alone."""

from collections.abc import Sequence

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, Token

_THOUSAND_OF = {
    "sheet": "1000sheets", "each": "thousand", "m2": "1000m2", "square_foot": "msf", "kg": "tonne", "lb": "1000lb",
}  # fmt: skip
"""What is counted -> the unit that a thousand of it is, as a key of [basis] in the word lists."""
_OTHERS = frozenset({"roll", "pallet", "carton", "truckload", "railcar", "linear", "square_inch", "ream", "thousand"})
_COUNTS = frozenset({"50", "100", "250", "500", "3000"})
_TELL_NO_UNIT = (
    "header_filler", "delivery", "incoterms", "marks", "indicative", "about", "price_words", "headers", "headers_alone",
    "per", "bracket", "lead", "coating", "grades", "no_price", "additions", "to_the_buyer", "exceptions",
)  # fmt: skip
"""Words of these lists go on about the price: 'per 1,000 ab Werk'."""
_FEET = frozenset({"ft", "p", "c"})
"""Behind a thousand these are no forint and no pence."""
_OF = frozenset({"of", "de", "d", "von", "av"})


def thousand_of(found: Sequence[Token], thousand: Found[str], text: str) -> tuple[str, int]:
    """What a thousand is of, as a key of [basis] or in words of its own, and the number of the token after it."""
    if text[thousand.start : thousand.end] == "m":
        # 'EUR/m' is as likely per metre.
        return "m", thousand.after
    place = thousand.after
    if place + 1 < len(found) and found[place][0] in _OF:
        place += 1
    counted = _counted(found, place)
    if counted is not None and counted.value in _THOUSAND_OF:
        return _THOUSAND_OF[counted.value], counted.after
    if counted is not None or (_is_a_noun(found, place, text) and not _is_an_initial(thousand, text)):
        after = place + 1 if counted is None else counted.after
        return f"1,000 {text[found[place][1] : found[after - 1][2]]}", after
    return thousand.value, thousand.after


def _is_an_initial(thousand: Found[str], text: str) -> bool:
    """The M of 'M. Trennick' is a person's; 'USD/M. sheets' counts by a word that is known."""
    return text[thousand.start : thousand.end] == "M" and text[thousand.end : thousand.end + 2] == ". "


def count_of(found: Sequence[Token], place: int, text: str) -> tuple[str, int] | None:
    """'100' by itself, and '3,000 sq ft': units that are known for what they are, and not converted."""
    if place >= len(found) or found[place][0] not in _COUNTS:
        return None
    counted = _counted(found, place + 1)
    after = place + 1 if counted is None else counted.after
    if counted is None and (found[place][0] != "100" or (after < len(found) and found[after][0].isdigit())):
        return None
    return text[found[place][1] : found[after - 1][2]], after


def _counted(found: Sequence[Token], place: int) -> Found[str] | None:
    counted = phrases("basis").at(found, place)
    return counted if counted is not None and counted.value in _OTHERS.union(_THOUSAND_OF) else None


def _is_a_noun(found: Sequence[Token], place: int, text: str) -> bool:
    """A word right behind the thousand, in the same line, that says nothing else of a price."""
    if place >= len(found) or not found[place][0].isalpha() or "\n" in text[found[place - 1][2] : found[place][1]]:
        return False
    side = phrases("length_units").at(found, place)
    if side is not None and side.value != "m":
        # '700 x 1000 mm' is a sheet, though 'x' may be 'per'.
        return False
    money = phrases("currency").at(found, place) is not None and found[place][0] not in _FEET
    return not money and not any(phrases(section).at(found, place) for section in _TELL_NO_UNIT)
