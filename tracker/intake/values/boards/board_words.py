"""Texts that say which board they are about and nothing else, or what its prices are in as well."""

from functools import lru_cache

from tracker.intake.values.heads.roles import Role
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
