"""Who is written to, and does not quote: the name behind 'To', the one beside which its purchasing is addressed, and
the one over a request for offers."""

from collections.abc import Sequence

from tracker.intake.tables.table import Words
from tracker.intake.values.firms.company import company_name, labelled_company
from tracker.intake.values.firms.firm_papers import asks_for_offers, makes_an_offer
from tracker.intake.words.lists import phrases


class Addressees:
    """The texts of a sheet that name who is written to."""

    def __init__(self, texts: Sequence[Words]):
        self._texts = texts
        self._labels = [words for words in texts if _leads_to_a_buyer(words.text)]
        inquires = self._inquires = any(phrases("requests_for_offers").find(words.text) for words in texts)
        for_attention = (words for words in texts if _calls_attention(words.text, inquires=inquires))
        self._named = [named for words in for_attention if (named := self._beside(words)) is not None]
        self._heads = _heads_of_requests(texts)

    def name(self, words: Words) -> bool:
        """Whether a text that names a firm names one that is written to."""
        behind = any(_addresses(label, words) for label in self._labels)
        written_to = behind or words in self._named or _is_written_to(words.text)
        return written_to or self.buys(words) or self._asks(words)

    def buys(self, words: Words) -> bool:
        """Whether a text heads a request for offers, or names a firm's purchasing."""
        return words in self._heads or _is_of_purchasing(words.text)

    def _asks(self, words: Words) -> bool:
        """'Issued by: Pellworth Cartons' in a request for quotation, on one line or in two cells."""
        if not self._inquires:
            return False
        beside = (label.text for label in self._texts if _is_right_before(label, words))
        return any(found.start == 0 for text in (words.text, *beside) for found in phrases("inquirers").find(text))

    def _beside(self, attention: Words) -> Words | None:
        """The firm named nearest above a line for somebody's attention, in the address that ends there, or right below
        it; what a sheet begins with is who writes."""
        column = [words for words in self._texts if words.cell.column == attention.cell.column]
        lines = {words.row: words for words in column if words.sheet == attention.sheet}
        row = attention.row - 1
        while row in lines and row >= attention.row - _LONGEST_ADDRESS:
            if company_name(lines[row].text) is not None:
                return lines[row] if any(self._is_above(words, lines[row]) for words in self._texts) else None
            row -= 1
        return lines.get(attention.row + 1)

    @staticmethod
    def _is_above(words: Words, other: Words) -> bool:
        return words.sheet == other.sheet and words.row < other.row


_LONGEST_ADDRESS = 4
"""Lines of an address above the one that calls for attention."""


def _heads_of_requests(texts: Sequence[Words]) -> list[Words]:
    """What sheets begin with that ask for offers and are none themselves: who asks. Whoever answers is called the
    vendor, says 'Your inquiry', or calls his paper an offer beside it."""
    heads: list[Words] = []
    for sheet in dict.fromkeys(words.sheet for words in texts):
        own = [one for one in texts if one.sheet == sheet]
        if any(asks_for_offers(one.text) for one in own) and not any(makes_an_offer(one.text) for one in own):
            heads.append(min(own, key=lambda one: (one.row, one.cell.column)))
    return [one for one in heads if labelled_company(one.text) is None]


def _calls_attention(text: str, *, inquires: bool) -> bool:
    """'z. H. Einkauf', 'Attn: Ms Doe', 'Service achats'. Who asks for offers may write to a vendor's sales desk."""
    if phrases("selling_desks").find(text):
        return False
    if phrases("buying_desks").whole(text.strip()) is not None:
        return True
    calls = any(found.start == 0 and _is_short(text) for found in phrases("attention").find(text))
    return calls and (not inquires or bool(phrases("buying_desks").find(text)))


def _is_written_to(text: str) -> bool:
    """'An Moosbrunner KG', 'Till Granforsa AB', and on one line 'Moosbrunner KG, z. H. Einkauf'."""
    led = any(found.start == 0 and _begins_with_a_firm(text[found.end :]) for found in phrases("letters_to").find(text))
    behind = (found for found in phrases("attention").find(text) if found.start > 0)
    return led or any(_is_short(text[found.start :]) for found in behind)


def _is_of_purchasing(text: str) -> bool:
    """'Cartonnerie Lind, service achats'."""
    _, *asides = text.split(",")
    return any(phrases("buying_desks").whole(aside.strip()) is not None for aside in asides)


def _begins_with_a_firm(text: str) -> bool:
    """Not 'to the Supply Agreement between Verrin Mills, Inc. (Seller) and others'."""
    text = text.strip(" :")
    name = company_name(text)
    return name is not None and text.startswith(name)


def _is_short(text: str) -> bool:
    """'Attention of Ms Doe', and not 'Attention: new prices from 1 July on, please see below'."""
    return len(text.strip().splitlines()[0].split()) <= _FEW_WORDS


_FEW_WORDS = 7


def _addresses(label: Words, words: Words) -> bool:
    """Whether a text stands below a label, or beside it."""
    below = words.row == label.row + 1
    beside = words.row == label.row and words.cell.column > label.cell.column
    return label.sheet == words.sheet and (below or beside)


def _is_right_before(label: Words, words: Words) -> bool:
    return label.sheet == words.sheet and label.row == words.row and label.cell.column < words.cell.column


def _leads_to_a_buyer(text: str) -> bool:
    """'An', 'Bill to:', and 'Bill to: Ship to:' in two cells of one row: the names in the row below are the buyer's."""
    labels = [label.strip() for label in text.split(":") if label.strip()]
    return bool(labels) and all(map(_is_label, labels))


def _is_label(text: str) -> bool:
    """Not the 'A' of a legend, which is the French 'À' as well."""
    led = len(text) > 1 and phrases("letters_to").whole(text) is not None
    return led or phrases("addressees").whole(text) is not None
