"""Texts that say which board they are about and nothing else, or what its prices are in as well."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_OF_BOARDS = (
    "grades",
    "grade_codes",
    "coating",
    "side_words",
    "forms",
    "weight_units",
    "caliper_units",
    "generic_names",
    "header_filler",
    "all_of_them",
    "every_board",
)
_NAMED = frozenset({Role.GRADE, Role.PRODUCT, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.PRICE, Role.SHEET_SIZE})


_OF_PRICES = (
    "price_words", "list_names", "basis", "per", "delivery", "incoterms", "valid", "until", "months", "copula", "marks",
    "offering",
)  # fmt: skip
"""What a list's first words say besides: 'Preise für GC2 in EUR je t, frei Haus, gültig bis 31. Mai'."""


@lru_cache(maxsize=4096)
def names_only_board(text: str) -> bool:
    """Whether every word of a text names a board, its form or a measure of it.

    'Basis weight 250 g/m² for all grades' does. 'Also available in 300 g/m²' and 'Stiffness at 300 g/m²' speak of
    another board, or of something else of this one.
    """
    return _all_known(text, _OF_BOARDS)


@lru_cache(maxsize=4096)
def names_board_and_price(text: str) -> bool:
    """Whether every word of a text names a board or says of prices what they are in and until when they hold."""
    return _all_known(text, (*_OF_BOARDS, *_OF_PRICES), of_money=True)


def begins_with_board(text: str) -> bool:
    """Whether a text names a grade and no other words before its board: 'Coated unbleached kraft carrier', and not
    'replaces SBS', 'like CUK' or 'tested against CRB'."""
    ahead = _ahead_of_grade(text)
    return ahead is not None and (not any(map(str.isalpha, ahead)) or names_only_board(ahead))


def names_another_board(text: str) -> bool:
    """Whether a text holds its board against that of the grade it names: 'competes with SBS', 'comparable to CUK'."""
    ahead = _ahead_of_grade(text)
    return bool(ahead) and bool(phrases("not_this_board").find(ahead or ""))


@lru_cache(maxsize=4096)
def names_only_another_board(text: str) -> bool:
    """Whether a board's own words name a grade only to say what it is like or stands in for: 'Alpine replaces SBS',
    'SBS-like board', 'Better than SBS', 'As SBS but greyer'. 'Sold as SBS' is that."""
    reading = find_grade(text)
    if reading is None or not reading.grades:
        return False
    # The words for boards in general of 'Carton au lieu de GC1' are found with the grade.
    pieces = reading.words.split(" ")
    named = next((whole for at in range(len(pieces)) if (whole := " ".join(pieces[at:])) in text), reading.words)
    ahead, _, behind = text.partition(named)
    if names_grade(ahead):
        return False
    held = [*phrases("not_this_board").find(ahead), *phrases("held_against").find(ahead)]
    held = [match for match in held if match.value != "first" or not any(map(str.isalnum, ahead[: match.start]))]
    if any(not rest_of(ahead[match.end :], ()) for match in held):
        return True
    return phrases("like_behind").at(tokens_of(behind.lstrip(" -–")), 0) is not None


def _ahead_of_grade(text: str) -> str | None:
    """What stands before the first grade of a text; None where it names none."""
    reading = find_grade(text)
    if reading is None or not reading.grades:
        return None
    return text.partition(reading.words.split(" ", 1)[0])[0]


def _all_known(text: str, sections: tuple[str, ...], *, of_money: bool = False) -> bool:
    said = tokens_of(text)
    known: set[int] = set()
    for section in sections:
        known.update(place for match in phrases(section).among(said) for place in range(match.first, match.after))
    for match in phrases("headers").among(said):
        if match.value in _NAMED:
            known.update(range(match.first, match.after))
    for money in currency_phrases().among(said) if of_money else ():
        known.update(range(money.first, money.after))
    return all(place in known or not any(map(str.isalpha, word)) for place, (word, *_) in enumerate(said))
