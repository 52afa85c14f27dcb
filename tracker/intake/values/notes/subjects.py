"""Of what a part of a sentence tells before a term: of the prices, of the boards of the list, or of something else that
a vendor writes about."""

import re
from enum import Enum, auto

from tracker.intake.words.lists import phrases, without_words


class Subject(Enum):
    """What is spoken of. NONE: nothing is named, as in a title or an incoterm by itself."""

    PRICES = auto()
    BOARDS = auto()
    OTHER = auto()
    NONE = auto()


_NAMES = {
    Subject.PRICES: (
        "these_prices", "all_prices", "price_lists", "list_names", "price_words", "base_prices",
        "goods_meant", "basis", "currency", "cents", "indicative",
    ),
    Subject.BOARDS: (
        "all_goods", "goods_delivered", "board_goods", "wares", "forms", "grades", "coating", "order_words",
    ),
}  # fmt: skip


def subject_of(ahead: str, *unsaid: str) -> Subject:
    """The subject that stands ahead of a term: PRICES of 'all our prices are', BOARDS of 'SBS and CUK'; OTHER where a
    word is left that is neither and goes without saying (the lists `unsaid`) in no such place: 'our insurance'."""
    # A denial leaves the subject what it is; 'per short ton' goes before the 'ton' that goes without saying.
    if left_over(ahead, "negations", *(section for sections in _NAMES.values() for section in sections), *unsaid):
        return Subject.OTHER
    named = (subject for subject, sections in _NAMES.items() if any(phrases(one).find(ahead) for one in sections))
    return next(named, Subject.NONE)


def begins_with_goods(part: str) -> bool:
    """The 'Ware ab Werk' behind 'Muster frei Haus'."""
    named = (match for section in _GOODS for match in phrases(section).find(part))
    return any(not left_over(part[: match.start], "articles", "all_of_them") for match in named)


_GOODS = ("goods_delivered", "all_goods", "wares", "board_goods")


def left_over(text: str, *sections: str) -> list[str]:
    """The words that are left without those of the lists; single letters, figures and signs tell nothing."""
    return _WORD.findall(without_words(text, *sections))


_WORD = re.compile(r"[^\W\d_]{2,}(?:['’-][^\W\d_]+)*")
