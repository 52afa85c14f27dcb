"""Who quotes: named by a label or in the letterhead, for the file, a sheet or a table."""

import re
from collections.abc import Callable, Iterable, Iterator, Sequence

from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.offers.terms.addressees import Addressees
from tracker.intake.tables.table import HeadedColumn, Words
from tracker.intake.values.firms.coated_names import name_of_a_coater
from tracker.intake.values.firms.company import (
    company_name,
    headed_company,
    labelled_company,
    letterhead_name,
    may_be_a_name,
    name_above_a_contact,
)
from tracker.intake.values.firms.own_words import has_words_of_its_own
from tracker.intake.values.firms.seller_labels import (
    buys_by_system,
    labelled_seller,
    named_or_making,
    named_seller,
    names_maker,
    selling_part,
)
from tracker.intake.values.firms.titled_firms import company_ahead_of_its_list, is_of_a_buyer, titled_company
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def vendor_among(texts: Sequence[Words]) -> Said[str] | None:
    """The one vendor that some texts name: who sells, else who makes the board where nobody else is named."""
    return seller_among(texts) or maker_among(texts)


def seller_among(texts: Sequence[Words]) -> Said[str] | None:
    """The one firm that some texts name, and not as the board's maker alone; a labelled name comes before others; None
    for none or two."""
    labelled = _only(_names(texts, labelled_seller)) or _only(_names(texts, selling_part))
    named = company_name if any(buys_by_system(words.text) for words in texts) else named_or_making
    return labelled or _only(_names(texts, named))


def maker_among(texts: Sequence[Words]) -> Said[str] | None:
    """The firm behind 'Manufacturer:', where no text names another: a merchant who names himself is who quotes."""
    return None if _names(texts, named_seller) else _only(_names(texts, labelled_company))


def maker_alone(texts: Sequence[Words], sheet: ReadSheet, of_file: Said[str] | None) -> Said[str] | None:
    """The maker whom some texts of a sheet name, where neither the file nor what the sheet begins with names another
    firm."""
    maker, begun = maker_among(texts), letterhead(sheet)
    return maker if all(_may_be(maker, other) for other in (of_file, begun)) else None


def _may_be(maker: Said[str] | None, other: Said[str] | None) -> bool:
    return other is None or (maker is not None and plain_name(other.value) in plain_name(maker.value))


def vendor_over(headings: Sequence[Words]) -> str | None:
    """The vendor whom the nearest of the sub-headings over some rows labels: 'Supplier: Saltmarrow Paperboard Inc.'."""
    nearest_first = sorted(headings, key=lambda words: -words.row)
    return next(filter(None, (labelled_company(words.text) for words in nearest_first)), None)


def vendor_of_list(texts: Sequence[Words]) -> Said[str] | None:
    """The firm behind what its list is called, where no text names one in any other way."""
    return None if _names(texts, named_seller) else _only(_names(texts, titled_company))


def letterhead(sheet: ReadSheet) -> Said[str] | None:
    """The firm that a sheet begins with, where no other text of the sheet names one; also beside a table's heads."""
    texts = [*sheet.found.texts, *(words for read in sheet.tables for words in read.table.titles)]
    addressees = Addressees(texts)
    if any(named_seller(words.text) is not None and not addressees.name(words) for words in texts):
        return None
    priced = {price.index for read in sheet.tables for price in read.columns.prices}
    cells = [words.cell for words in texts]
    cells += [
        column.heads[0]
        for read in sheet.tables
        for column in read.table.columns
        if len(column.heads) > 1 and column.index not in priced | _of_buyers(read.table.columns)
    ]
    first = min(cells, key=lambda cell: (cell.row, cell.column), default=None)
    if first is None or any(words.cell is first and addressees.buys(words) for words in texts):
        return None
    if names_maker(first.text):
        return None
    name = company_name(first.text) or company_ahead_of_its_list(first.text) or letterhead_name(first.text)
    name = name or name_of_a_coater(first.text) or _in_small_letters(first.text)
    if name is None and any(_is_contact(words.text) for words in texts if 0 < words.row - first.row <= _CLOSE):
        name = name_above_a_contact(first.text)
    return Said(name, at(first), first.text) if name is not None and not is_of_a_buyer(name) else None


def _in_small_letters(text: str) -> str | None:
    """'ets fontgrise emballage': as whoever writes no capitals at all would write a firm, and not 'anfrage birch'."""
    name = text.strip()
    if not name.islower() or not has_words_of_its_own(name) or phrases("header_filler").find(name.split()[0]):
        return None
    return name if headed_company(name.title()) == name.title() and not is_of_a_buyer(name) else None


def _of_buyers(columns: Iterable[HeadedColumn]) -> set[int]:
    """The columns that begin with a label for who buys, and those right behind: 'Buyer: | Birch Carton Co. | Seller:'
    over heads."""
    labels = [column.index for column in columns if column.heads and phrases("addressees").find(column.heads[0].text)]
    return {*labels, *(index + 1 for index in labels)}


def vendor_of_file(texts: Sequence[Words], sheets: Sequence[ReadSheet]) -> Said[str] | None:
    """Who quotes in a file: the firm that its texts name, else the one that it begins with. Of two that are named by no
    more than their place and as the board's maker, either may be."""
    named = seller_among(texts) or vendor_of_list(texts)
    if named is not None:
        return named
    begun, maker = letterhead_of_file(sheets), maker_among(texts)
    if maker is None:
        return begun
    return maker if _may_be(maker, begun) else None


def letterhead_of_file(sheets: Sequence[ReadSheet]) -> Said[str] | None:
    """The firm that the first sheet begins with, or, behind an index or a cover, the one firm that its offers do."""
    if not sheets:
        return None
    offering = (sheet for sheet in sheets if any(not read.passed_over for read in sheet.tables))
    later = (name for sheet in offering if (name := letterhead(sheet)) is not None)
    return letterhead(sheets[0]) or _only({fold(name.value): name for name in later})


_CLOSE = 4
"""Rows below a name in which its telephone stands in a letterhead."""


def _is_contact(text: str) -> bool:
    """'Tel. +44 20 7946 0958', 'sales@ferrowick.example'; 'Attn: Ms Doe' may be of the buyer."""
    return "@" in text or (Remark.CONTACT in says(text) and any(map(str.isdigit, text)))


def may_name_another(texts: Sequence[Words], vendor: Said[str]) -> bool:
    """Whether a sheet begins with what may be another firm's name: then the file's vendor is not taken for its own."""
    first = min(texts, key=lambda words: (words.row, words.cell.column), default=None)
    return first is not None and fold(vendor.value) not in fold(first.text) and may_be_a_name(first.text)


def short_texts(sheets: Iterable[ReadSheet]) -> Iterator[str]:
    """The texts around the tables that are short enough to be a firm's name, in the order of the sheets."""
    for sheet in sheets:
        around = [*sheet.found.texts, *(words for read in sheet.tables for words in read.table.titles)]
        for words in sorted(around, key=lambda words: (words.row, words.cell.column)):
            if may_be_a_name(words.text):
                yield words.text.strip()


def _names(texts: Iterable[Words], named: Callable[[str], str | None]) -> dict[str, Said[str]]:
    found: dict[str, Said[str]] = {}
    texts = list(texts)
    addressees = Addressees(texts)
    for words in texts:
        name = named(words.text)
        # 'Bedarf Kunde' is the head over what is asked for, and no dealer in supplies.
        if name is None or is_of_a_buyer(name):
            continue
        if not addressees.name(words):
            found.setdefault(fold(name), Said(name, at(words.cell), words.text))
    return found


def _only(names: dict[str, Said[str]]) -> Said[str] | None:
    """The one firm named; 'Kartonfabrik Hallen' and 'Kartonfabrik Hallen GmbH' are one, by its longer name."""
    longest = max(names, key=len, default="")
    one = all(plain_name(longest).startswith(f"{plain_name(name)} ") for name in names if name != longest)
    return names[longest] if longest and one else None


def plain_name(name: str) -> str:
    """The words of a name, without the signs between them."""
    return " ".join(re.findall(r"\w+", name))
