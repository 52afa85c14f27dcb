"""A table of surcharges alone, beside those of boards: 'Surcharges on all prices | EUR/t' over 'Energy | 38'."""

import re
from collections.abc import Iterator, Sequence
from itertools import combinations

from tracker.intake.grid import Cell
from tracker.intake.offers.charges.row_charges import has_figure
from tracker.intake.offers.rows.row_labels import charge_of_label, names_board
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.additions_below import leads_to_additions, says_no_more_than_that
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, same_charge
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import price_text, price_unit
from tracker.intake.words.lists import phrases

CHARGES = "charges, no board"
"""Why such a table is passed over."""


def take_surcharges(tables: Sequence[ReadTable]) -> Iterator[Words]:
    """What each row of such tables says, as a note would: 'Energy surcharge: 38 EUR/t'; the tables are passed over.

    Of several tables of boards the title must say that they are on every price.
    """
    listed = [(read, rows) for read in tables if (rows := list(_rows(read)))]
    among = [read for read, _ in listed]
    boards = sum(not read.passed_over for read in tables if read not in among)
    for read, rows in listed:
        if boards == 1 or (boards and phrases("all_of_them").find(_title(read))):
            read.passed_over, read.told = CHARGES, True
            yield from rows


def _rows(read: ReadTable) -> Iterator[Words]:
    """Each row's charge in words; none where one names no charge, or two are rates of one and the same."""
    table = read.table
    if table.view.passing or table.view.turned or not lists_surcharges(read):
        return
    rows = [*_rows_like_heads(read), *(row.index for row in table.rows)]
    said = [_in_words(table.view.rows[row], read) for row in rows]
    labels = [label.text for label, _ in said if label is not None]
    if not all(text for _, text in said) or any(_are_one(one, other) for one, other in combinations(labels, 2)):
        return
    for row, (label, text) in zip(rows, said, strict=True):
        if label is not None:
            yield Words(table.view.sheet, row, label, text)


def _are_one(label: str, other: str) -> bool:
    """Two rates of one charge: 'Energy from May' and 'Energy from June'; 'Energy' and 'Fuel' are two."""
    kinds = [named[0].value if (named := charges_named(each)) else "" for each in (label, other)]
    if not any(kinds):
        return label.casefold() == other.casefold()
    return kinds[0] == kinds[1] and same_charge(ChargeKind(kinds[0]), label, other)


def _rows_like_heads(read: ReadTable) -> list[int]:
    """'Energy surcharge | 3.5 %' right below 'Surcharges | EUR/t' looks like a second row of heads, and 'Palés | 9
    EUR/unidad' right below a line that adds it like the first."""
    heads = [cell for column in read.table.columns for cell in column.heads]
    first = min((cell.row for cell in heads), default=0)
    added = leads_to_additions(_title(read))
    found = (cell for cell in heads if (cell.row > first and charge_of_label(cell.text) is not None) or
             (added and _is_money(cell.text)))  # fmt: skip
    return sorted({cell.row for cell in found})


def _is_money(text: str) -> bool:
    said = price_text(text)
    return said is not None and bool(said.amounts) and said.currency is not None


def _title(read: ReadTable) -> str:
    """The words over the rows: the table's own title, or the head of its labels."""
    labels = read.table.columns[0].heads[:1] if read.table.columns else ()
    return read.table.titles[-1].text if read.table.titles else " ".join(head_text(cell) for cell in labels)


def _is_on_all(title: str) -> bool:
    """'Added to every price above': what the rows below name comes on top. 'All prices' adds nothing."""
    sections = ("all_of_them", "price_words", "adds_to_prices")
    on_all = all(phrases(section).find(title) for section in sections) and says_no_more_than_that(title)
    return on_all or leads_to_additions(title)


def lists_surcharges(read: ReadTable) -> bool:
    """Whether all that the rows of a table name comes on top."""
    return _is_of_surcharges(_title(read)) or _is_on_all(_title(read))


def _is_of_surcharges(title: str) -> bool:
    """'Surcharges', 'Zuschläge zu allen Preisen'; not 'Freight rates', nor 'Surcharges below 5 t'."""
    named = charges_named(title)
    if not named or any(found.value != ChargeKind.OTHER for found in named) or any(map(str.isdigit, title)):
        return False
    return says_no_more_than_that(title)


def _in_words(cells: dict[int, Cell], read: ReadTable) -> tuple[Cell | None, str]:
    """The label of a row and what it says; '' where it is more than a charge, its amount and the unit of that."""
    figures = {index: cell for index, cell in cells.items() if has_figure(cell)}
    index, figure = next(iter(figures.items()), (-1, None))
    beside = cells.get(index + 1)
    units = [beside] if beside is not None and _is_share_or_unit(beside.text) else []
    labels = [cell for at, cell in cells.items() if at not in figures and cell not in units]
    if figure is None or len(figures) != 1 or len(labels) != 1:
        return None, ""
    added = charge_of_label(labels[0].text) is None
    if names_board(labels[0].text) or (added and not _is_on_all(_title(read))):
        return None, ""
    heads = next((column.heads for column in read.table.columns if column.index == index), ())
    unit = units[0].text.strip() if units else _unit(figure, heads)
    said = f"{labels[0].text.strip(' +:')}: {_signed(figure.text)} {unit}" if unit is not None else ""
    return labels[0], _added(said, _title(read)) if added else said


def _added(said: str, title: str) -> str:
    """'Pallets: 12 USD/ST, added to every price above', as it takes the title to make a charge of it; '' where it
    makes none."""
    text = f"{said}, {title}"
    told = statements(text) if said else ()
    return text if told and all(isinstance(one, ChargeWords) for one in told) else ""


def _signed(figure: str) -> str:
    """'(12)' takes off, as '-12' does."""
    bracketed = _BRACKETED.fullmatch(figure.strip())
    return figure.strip() if bracketed is None else f"-{bracketed[1]}"


_BRACKETED = re.compile(r"\(\s*(\d[\d.,]*)\s*\)")


def _is_share_or_unit(text: str) -> bool:
    """'USD/cwt', '% of board price'."""
    return text.lstrip().startswith("%") or _is_unit(text)


def _unit(figure: Cell, over: Sequence[Cell]) -> str | None:
    """The unit of an amount, by its column's heads; '' where it says one itself."""
    own = price_text(figure.text) if isinstance(figure.value, str) else None
    if "%" in figure.text or (own is not None and (own.basis is not None or (own.currency and own.rest))):
        # '9 EUR/unidad' says one that nobody knows.
        return ""
    units = (unit for cell in reversed(over) if (unit := _unit_of_head(head_text(cell).strip())))
    return next(units, None)


def _unit_of_head(head: str) -> str:
    """The 'USD/ST' of 'Amount (USD/ST)'; '' of a head that says none."""
    if head == "%":
        return head
    words = head.split()
    ends = (" ".join(words[at:]).strip("()[],: ") for at in range(len(words)))
    return next((end for end in ends if _is_unit(end)), "")


def _is_unit(head: str) -> bool:
    unit = price_unit(head)
    return unit is not None and unit.currency is not None and unit.basis is not None
