"""'Rolls | Sheets' and 'Truck | Pallet' over prices: how board comes or is ordered, not what its prices are per."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column, PriceColumn, basis_in_head
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.tables.headers.heads import without_footnote
from tracker.intake.tables.table import Words
from tracker.intake.values.figures.web_widths import without_web_width
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.values.notes.note_signs import RAISED, sign_ahead, without_sign
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.prices.basis import basis_span
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.prices.price_sentences import SaysBasis
from tracker.intake.values.prices.units_of_parts import prices_each_form
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked, tokens_of, without

_BOTH = {"roll", "sheet"}
_NEAR = Decimal("1.5")
"""How many times the price of rolls that of sheets may be; common practice, no source."""


def told_apart_by_form(
    columns: list[Column], samples: Mapping[int, Sequence[Cell]], said: Iterable[Words]
) -> list[Column]:
    """'Rolls | Sheets' over two prices say in what form the board comes, not what the prices are per.

    Where one of the heads by itself says something else ('Format'), figures near each other in every row show that
    both are prices; `said` around the table, a unit for each form or for the one with a sign does so as well.
    """
    forms = {column.index: form for column in columns if (form := form_of(column))}
    if set(forms.values()) != _BOTH:
        return columns
    texts = [words.text for words in said]
    told = any(map(prices_each_form, texts)) or _unit_by_a_footnote(columns, forms, texts)
    if not (told or _all_priced(columns, forms, samples)):
        return columns
    return [
        replace(column, role=Role.PRICE, said=_without_form(column.said)) if column.index in forms else column
        for column in columns
    ]


def _unit_by_a_footnote(columns: Sequence[Column], forms: Collection[int], texts: Iterable[str]) -> bool:
    """'¹) € je 1.000 Bogen' to 'Bogen 70 x 100 cm ¹)': prices in another unit than the others."""
    heads = (head.text for column in columns if column.index in forms for head in column.heads)
    signs = {text.removeprefix(without_footnote(text)).strip().translate(RAISED) for text in heads} - {""}
    noted = (without_sign(text) for text in texts if sign_ahead(text) in signs) if signs else ()
    return any(_states_a_unit(text) for text in noted)


def _states_a_unit(note: str) -> bool:
    unit = price_unit(note.strip(" .:="))
    return (unit is not None and unit.basis is not None) or any(isinstance(one, SaysBasis) for one in statements(note))


def other_forms(columns: Sequence[Column], prices: Collection[Column]) -> list[Column]:
    """Of 'Rollen | Bogen 70 x 100' the one that is no price for all that its figures and the sheet say, where the other
    is the only one: nobody counts rolls beside the price of sheets."""
    forms = {column: form for column in columns if (form := form_of(column))}
    if set(forms.values()) != _BOTH or not prices or not set(prices) <= forms.keys():
        return []
    return [column for column in forms if column not in prices]


def told_apart_by_load(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Full truck | Pallet', '> 5 t | Pallet': figures near the price of one order size are the price of another, and
    neither how many sheets a pallet holds nor a price per pallet."""
    priced = [column for column in columns if column.role is Role.PRICE and _size(column) is not None]
    loads = {
        column.index
        for column in columns
        if column.role in (Role.PACKING, Role.PRICE) and _size(column) in LOADS
        and any(_near_by_row([samples[column.index], samples[price.index]]) for price in priced if price is not column)
    }  # fmt: skip
    return [
        # 'EUR/t' over '3 rolls and more' is what both are per.
        replace(column, role=Role.PRICE, said=(*column.said[:-1], replace(column.said[-1], basis=None)))
        if column.index in loads
        else column
        for column in columns
    ]


def _size(column: Column) -> str | None:
    """The order size that a head says and no more: 'pallet', "" for a weight, None for none."""
    bracket = column.said[-1].bracket if column.said else None
    return None if bracket is None else bracket.not_weight


def _all_priced(columns: list[Column], forms: Mapping[int, str], samples: Mapping[int, Sequence[Cell]]) -> bool:
    priced = {column.index for column in columns if column.role is Role.PRICE}
    return priced >= forms.keys() or (priced <= forms.keys() and _near_by_row([samples[index] for index in forms]))


def _near_by_row(prices: Sequence[Sequence[Cell]]) -> bool:
    by_row = list(map(figures_by_row, prices))
    rows = [[figures[row] for figures in by_row] for row in set.intersection(*(set(figures) for figures in by_row))]
    # A zero is no price: 'Rolls | Sheets' over '0 | 859'.
    rows = [row for row in rows if min(row) > 0]
    return bool(rows) and all(max(row) <= _NEAR * min(row) for row in rows)


def form_of(column: Column) -> str:
    """'roll' or 'sheet' where a head says that and no more; '' elsewhere, and below 'price per'."""
    per = any(head.strength(Role.BASIS) or head.strength(Role.PER_QUANTITY) for head in column.said)
    return "" if per else next((form for head in column.said if (form := form_alone(_unsized(head)))), "")


def form_in(head: str) -> str:
    """'Rolls FOB', 'Roll price', 'Sheet extra'; of a price per sheet or per roll its unit says nothing."""
    unit, tokens = basis_span(head), tokens_of(head)
    bare = head if unit is None else blanked(head, [(tokens[unit[0]][1], tokens[unit[1] - 1][2])])
    found = {match.value for section in ("forms", "forms_alone", "basis") for match in phrases(section).find(bare)}
    found |= {"roll" for _ in phrases("rolls").find(bare)}
    forms = found & _BOTH
    return forms.pop() if len(forms) == 1 else ""


def form_named(column: Column) -> frozenset[str]:
    """The form that a head is all about, among those that texts name."""
    return frozenset(filter(None, (form_of(column),)))


def _unsized(head: Header) -> str:
    """'Bogen' of 'Bogen 70 x 100', 'rolls' of '40 in. rolls'."""
    text = without_web_width(without_footnote(head.text))
    for size in head.sheet_sizes:
        text = text.replace(size.words, " ", 1) if size.words else text
    return text.strip()


def _without_form(said: tuple[Header, ...]) -> tuple[Header, ...]:
    return tuple(replace(head, basis=None) if form_alone(head.text) else head for head in said)


def form_alone(text: str) -> str:
    """'roll' or 'sheet' for a text that says that and no more, else ''."""
    form = phrases("forms").whole(text) or phrases("forms_alone").whole(text) or phrases("basis").whole(text)
    return form if form in _BOTH else ""


def labelled_by_form(prices: Sequence[PriceColumn]) -> tuple[PriceColumn, ...]:
    """'Price, rolls' and 'Price, sheets' beside each other are prices of two things, whatever they are per."""
    forms = [form_priced(price.column) for price in prices]
    if set(filter(None, forms)) != _BOTH:
        return tuple(prices)
    return tuple(
        replace(_without_count(price), label=f"{price.label} {form}".strip()) if form else price
        for price, form in zip(prices, forms, strict=True)
    )


def _without_count(price: PriceColumn) -> PriceColumn:
    """'Roll price' beside 'Sheet price' is for no number of rolls."""
    size = price.bracket
    named = size is not None and size.not_weight in _COUNTED and size.start is None and size.end is None
    return replace(price, bracket=None, bracket_head=None) if named else price


_COUNTED = ("roll", "sheets")


def form_priced(column: Column) -> str:
    """'roll' or 'sheet' where a head says that beside the word for price and its unit; '' elsewhere."""
    said = (text for head in column.said for text in _beside_price(head))
    return next((form for text in said if (form := form_alone(text))), "")


def _beside_price(head: Header) -> tuple[str, str]:
    """A head without its unit and size, for 'Rollenpreis' names a form in one word, and without the word for price."""
    size = head.bracket.words if head.bracket is not None and not head.bracket.not_weight else ""
    rest = without_unit(head, basis_in_head(head)).removesuffix(size)
    whole = rest.strip(_STOPS)
    for reading in head.roles:
        rest = rest.replace(reading.words, " ", 1) if reading.role in PRICES else rest
    # The unit is gone from 'Price per cwt - Rolls' already, and the words that it was read with are no more.
    rest = without(rest, phrases("price_words").find(rest))
    return whole, rest.strip(_STOPS)


_STOPS = " ,;:()[]–-\n"
