"""Vendors whose names stand in one row over the prices of each: where one of them is a firm's by a word of the trade,
the others are names too. What nobody bids beside them is the buyer's own: what he pays, the lowest, a target."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Kind, PriceColumn, vendor_in_head
from tracker.intake.columns.groups.index_headings import without_indexes
from tracker.intake.columns.groups.means_beside import without_means
from tracker.intake.columns.groups.named_in_lines import undated, within_nobody, without_no_vendors
from tracker.intake.columns.groups.one_word_vendors import with_one_word_vendors
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import without_periods
from tracker.intake.tables.table import Words
from tracker.intake.values.firms.company import company_name, letterhead_name, may_be_a_name, name_of_bidder
from tracker.intake.values.firms.own_words import has_a_strange_word
from tracker.intake.values.heads.header import Header, without_unit
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def with_bids(
    prices: Sequence[PriceColumn],
    columns: Sequence[Column],
    texts: Sequence[Words],
    samples: Mapping[int, Sequence[Cell]],
) -> list[PriceColumn]:
    """The prices with the vendors whose names head them, and what nobody bids beside them set aside; `columns`: all of
    the table; `texts`: what stands over it."""
    offered = without_no_vendors(without_indexes(prices), texts)
    beside = with_one_word_vendors(_with_vendors_beside(offered, texts), columns, texts)
    return _with_bids_only(without_means(beside, samples))


def _with_vendors_beside(prices: Sequence[PriceColumn], texts: Sequence[Words]) -> list[PriceColumn]:
    """'Dunmarrow Mill | Eastquill Board | Pellgate Paperboard': each of the prices under a name is that vendor's. Under
    the letterhead of a firm that compares no bids 'Dayton Mill | Akron Mill | Average' are its own mills, and 'Tarn
    Board | Lowton Board | Average' its brands or those who bid for its orders: it is asked."""
    rows = {
        cell.row
        for price in prices
        for cell, head in zip(price.column.heads, price.column.said, strict=True)
        if price.vendor and vendor_in_head(head) == price.vendor
    }
    if not rows and (letterheads := _letterheads_of_one_firm(texts)):
        open_rows = _rows_compared(prices, not_of=letterheads)
        return [_of_whom(price, open_rows) for price in prices]
    several = len({price.vendor for price in prices} - {None}) > 1
    rows = rows or _rows_compared(prices)
    return [price if price.vendor else _named(price, rows, several) for price in prices] if rows else list(prices)


def _rows_compared(prices: Sequence[PriceColumn], not_of: Sequence[str] = ()) -> set[int]:
    """The row of 'Ferrowick Board | Tarn Board | Average', which no legal form shows to be firms': what is worked out
    from prices stands right beside several names with words of their own. 'Budget' alone may be a quality of board.

    `not_of`: letterheads whose own works and brands the names are not to be.
    """
    worked_out = any(_beside_bids(price) == _WORKED_OUT and _is_of_several(price.column.text) for price in prices)
    named = [
        (cell.row, without_unit(head))
        for price in prices
        for cell, head in zip(price.column.heads, price.column.said, strict=True)
        if worked_out and _beside_bids(price) is None and letterhead_name(without_unit(head)) is not None
    ]
    by_row = {row: [name for one, name in named if one == row] for row, _ in named}
    return {row for row, names in by_row.items() if len(names) > 1 and not (not_of and _are_own(names, not_of))}


def _are_own(names: Sequence[str], letterheads: Sequence[str]) -> bool:
    """Mills, and brands that begin alike or with a word of the letterhead."""
    first = [fold(name).split()[0] for name in names]
    own_words = {word for text in letterheads for word in fold(text).split()}
    works = all(any(match.value == "behind" for match in phrases("works").find(name)) for name in names)
    return works or len(set(first)) < len(first) or not own_words.isdisjoint(first)


def _of_whom(price: PriceColumn, rows: set[int]) -> PriceColumn:
    """A price under a name that may be a vendor's or the letterhead's own brand is explained by nobody."""
    asked = price.kind is Kind.OFFER and _beside_bids(price) is None and any(c.row in rows for c in price.column.heads)
    return replace(price, unexplained=True, label=price.label or price.column.text) if asked else price


def _letterheads_of_one_firm(texts: Sequence[Words]) -> list[str]:
    """Some firm's letterhead, where there is no word of bids that it compares."""
    compared = any(phrases("bids_compared").find(words.text) for words in texts)
    return [] if compared else [name for words in texts if (name := company_name(words.text)) is not None]


def _is_of_several(text: str) -> bool:
    """'Average' and 'Lowest'."""
    return phrases("total").whole(text) is not None or phrases("no_firms").whole(text) in ("any", "may_be_firms")


def without_chosen_vendors(
    by_role: Mapping[Role, tuple[Column, ...]], prices: Sequence[PriceColumn]
) -> dict[Role, tuple[Column, ...]]:
    """Behind the prices of several vendors 'Low bid: Pellgate' says whom the buyer would take, and not who quotes."""
    vendors = {price.vendor for price in prices if price.kind is Kind.OFFER}
    several = None not in vendors and len(vendors) > 1
    return {role: () if several and role is Role.VENDOR else columns for role, columns in by_role.items()}


def _with_bids_only(prices: Sequence[PriceColumn]) -> list[PriceColumn]:
    """'Paid Q4-26' and 'April list' beside another price are no offers, nor are 'Lowest' and 'Target' beside the prices
    of several vendors, where it is asked of any other column that is no vendor's. 'You paid 2025' is none by itself."""
    offers = [price for price in prices if price.kind is Kind.OFFER]
    several = len({price.vendor for price in offers} - {None}) > 1
    alone = not several and all(_beside_bids(price) in _NOT_BESIDE_ANY for price in offers)
    return [
        price if price not in offers else _paid_before(price) if alone else _of_nobody(price, several=several)
        for price in prices
    ]


_PAID_BEFORE, _LISTED, _WORKED_OUT = "paid_before", "listed", "worked_out"
_NOT_BESIDE_ANY = frozenset({"paid", "year_before", _PAID_BEFORE, _LISTED})
"""What is no offer where another price stands beside it."""


def _paid_before(price: PriceColumn) -> PriceColumn:
    before = _beside_bids(price) == _PAID_BEFORE and _says_when(price)
    return replace(price, kind=Kind.PREVIOUS) if before else price


def _of_nobody(price: PriceColumn, *, several: bool) -> PriceColumn:
    meant = _beside_bids(price)
    if price.vendor or not (several or meant in _NOT_BESIDE_ANY):
        return price
    if meant is not None and (several or _says_when(price)):
        return replace(price, kind=Kind.LIST if meant in (_WORKED_OUT, _LISTED) else Kind.PREVIOUS)
    return replace(price, unexplained=True, label=price.label or price.column.text)


def _says_when(price: PriceColumn) -> bool:
    """'Paid Q4-26', 'April list' and 'last paid'; beside 'Collect' a bare 'Paid' may mean with the freight."""
    text = price.column.text
    told = any(map(str.isdigit, text)) or without_periods(text) != text
    return told or any(" " in _plain(head).strip() for head in price.column.said[-1:])


def _beside_bids(price: PriceColumn) -> str | None:
    said = " ".join(" ".join(_plain(head) for head in price.column.said).split())
    listed = _says_when(price) and phrases("headers_alone").whole(said) == Role.LIST_PRICE
    return phrases("beside_bids").whole(said) or (_LISTED if listed else None)


def _plain(head: Header) -> str:
    """Its words without unit, times and signs: 'Paid Q4-26, $/ST' -> 'Paid'."""
    return undated(within_nobody(without_unit(head)))


def _named(price: PriceColumn, rows: set[int], several: bool) -> PriceColumn:
    """The price with the name in its head, asked about where figures of nobody known stand under no more than a name.
    Beside the prices of `several` firms 'Lakemont Fiber', a strange word and one of the trade, is one more."""
    if _beside_bids(price) is not None:
        return price
    heads = zip(price.column.heads, price.column.said, strict=True)
    beside = (head for cell, head in heads if cell.row in rows and price.kind is Kind.OFFER)
    names = [name for head in beside if (name := _name_in(head) or _works_in_one_word(head)) is not None]
    if len(names) != 1:
        return price
    # Figures like prices under 'Supplier' and a firm's name are what it quotes, as are those under 'Bid Tarn Mills'.
    called = any(head.role is Role.VENDOR for head in price.column.said[:-1]) or any(
        name_of_bidder(without_unit(head)) for head in price.column.said
    )
    traded = several and _is_strange_and_of_the_trade(names[0])
    asked = price.unexplained and not (called or traded or any(map(_works_in_one_word, price.column.said)))
    return replace(price, vendor=names[0], unexplained=asked)


def _is_strange_and_of_the_trade(name: str) -> bool:
    of_fibre = phrases("firm_goods").whole(name.split()[-1]) == "fibre"
    return has_a_strange_word(name) and (of_fibre or letterhead_name(name) is not None)


def _name_in(head: Header) -> str | None:
    name = without_unit(head).strip(" /()[],")
    bidder = name_of_bidder(name)
    return bidder if bidder else name if may_be_a_name(name) and not _named_otherwise(head) else None


def _works_in_one_word(head: Header) -> str | None:
    """'Fenntalwerk' among firms is one too; the 'Werk' and 'Hauptwerk' of a buyer have no name of their own."""
    name = without_unit(head).strip(" /()[],")
    named = name.isalpha() and name[:1].isupper() and phrases("generic_names").whole(name) is None
    return name if named and phrases("one_word_firms").whole(name) and not phrases("own_works").whole(name) else None


def _named_otherwise(head: Header) -> bool:
    """'Low bid' and 'Our price' are no names."""
    role = head.role
    return role is not None and head.strength(role) >= _PLAINLY and role not in (Role.PRODUCT, Role.VENDOR)


_PLAINLY = 0.9
