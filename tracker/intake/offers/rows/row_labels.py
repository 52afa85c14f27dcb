"""What the label of a row with figures says that it is, where it is no board: a total, an index, a charge, a term."""

import re
from collections.abc import Collection, Iterator, Mapping
from enum import StrEnum
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.figures.lengths import measured
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.freight_to_buyer import freight_to_buyer
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.words.lists import phrases

_TERMS = frozenset({
    *ON_TOP, Role.LEAD_TIME, Role.VALIDITY, Role.MINIMUM, Role.DELIVERY_TERMS, Role.TOTAL, Role.DISCOUNT, Role.PAYMENT,
    Role.INDEX, Role.CHANGE, Role.MARGIN, Role.STOCK, Role.YIELD, Role.PACKING, Role.SHEETS_WEIGHT,
})  # fmt: skip


class RowKind(StrEnum):
    """What a row is that offers nothing, in the words in which that is told."""

    MEASURES = "measures of boards, no price"
    TOTAL = "a total or an average"
    SOLD = "a quantity, no price"
    INDEX = "an index or a rate of exchange"
    DISTANCE = "a distance, no price"
    CHARGE = "a charge, no board"
    TERM = "a term of the offer, no board"


@lru_cache(maxsize=4096)
def kind_of_row(label: str) -> RowKind | None:
    """What the words of a label say that its row is; None where they say nothing of the kind."""
    if heads_measures(label) or _names_a_test(label):
        return RowKind.MEASURES
    if is_total(label):
        return RowKind.TOTAL
    if (phrases("volumes_sold").find(label) or _counts(label)) and not names_board(label):
        return RowKind.SOLD
    if Remark.INDEX in says(label):
        return RowKind.INDEX
    if phrases("distances").whole(label) is not None:
        return RowKind.DISTANCE
    if charge_of_label(label) is not None and not _describes_board(label):
        return RowKind.CHARGE
    return RowKind.TERM if term_of_row(label) is not None else None


def _names_a_test(label: str) -> bool:
    """'Bending stiffness MD' in a list of a board's properties; 'High brightness SBS' and 'Moisture resistant' are
    boards."""
    found = [match for match in phrases("board_tests").find(label) if match.value == "any" and match.start == 0]
    behind = re.findall(r"[^\W\d_]+", label[found[0].end :]) if found else []
    few = all(len(word) <= _LETTERS or phrases("board_tests").whole(word) == "behind" for word in behind)
    return bool(found) and few and not names_board(label)


_LETTERS = 3
"""Of 'MD', 'CD', 'ISO' and of units."""


def _counts(label: str) -> bool:
    """'Number of items' and 'Antal rader' below a list; 'Antal ark 500-1999' is an order size with its price."""
    return not any(map(str.isdigit, label)) and any(match.start == 0 for match in phrases("counts").find(label))


def charge_of_label(label: str) -> ChargeWords | None:
    """The charge that a label names, by its words or by the sign before them: '+ moisture-proof wrap'."""
    return (
        charge_header(label)
        or _freight_to_buyer(label)
        or (
            ChargeWords(ChargeKind.OTHER, label.strip(" +"))
            if _ADDED.match(label) is not None and not names_board(label) and not names_measure(label)
            else None
        )
    )


def _freight_to_buyer(label: str) -> ChargeWords | None:
    named = freight_to_buyer(label)
    return None if named is None else ChargeWords(ChargeKind.FREIGHT, named)


def is_other_charge(label: str) -> bool:
    """'Premium', 'Extra': a charge by a word that may as well be a board's name, as freight and energy are none."""
    charge = charge_of_label(label)
    return charge is not None and charge.kind is ChargeKind.OTHER


_ADDED = re.compile(r"\s*\+\s*[^\W\d]")


def term_of_row(label: str) -> Role | None:
    """Which term of the offer a label names."""
    head = head_of_words(label)
    return head.role if head is not None and head.named and head.role in _TERMS else None


@lru_cache(maxsize=4096)
def heads_charges(heading: str) -> bool:
    """'Freight, US$ per short ton' over rows of zones, 'Adders, where they apply:': what follows are rates, as long as
    no row names a board."""
    head = head_of_words(heading)
    if heading.rstrip().endswith(":") and not (head is not None and head.named):
        head = head_of_words(heading.partition(",")[0])
    named = head is not None and head.named and head.role in ON_TOP
    rates = charge_header(heading) if not named else None
    # 'Freight alone, for pick-up accounts (US$/ST)'.
    in_money = rates is not None and rates.currency is not None and heading.strip().startswith(rates.label)
    return (named or in_money) and find_grade(heading) is None


def names_board(label: str) -> bool:
    """Whether a label names a board by its grade or its caliper."""
    return find_grade(label) is not None or bool(find_calipers(label))


def heads_measures(text: str) -> bool:
    """'GC1 g/m²' beside figures: what the board weighs, and not what it costs; 'rolls under 62 in' has a figure."""
    if any(one.unit for units in ("caliper_units", "weight_units") for one in measured(text, units)):
        return False
    said = header(text)
    units = len(said.weight_units) == 1 or said.caliper_unit is not None
    return units and said.basis is None and said.currency is None and not (said.weights or said.calipers)


def _describes_board(text: str) -> bool:
    """'GC1, 250 g/m², 405 µm, FSC' begins with its grade and measures it: a board with one more word in its name."""
    grade, charge = find_grade(text), charge_header(text)
    if grade is None or charge is None or not grade.grades or not names_measure(text):
        return False
    return 0 <= text.find(grade.words) < text.find(charge.label)


def says_coating_alone(text: str) -> bool:
    """'C1S, white back' under a grade written once; 'Fenlight White' may be another board."""
    reading = find_grade(text)
    return reading is not None and not reading.words and reading.coated is not None


def label_among(cells: Mapping[int, Cell], priced: Collection[int], columns: Columns) -> Cell | None:
    """The first cell of words of a row; where that says who quotes, what names the board: 'Sorbek Packaging | CUK, 21
    pt' is no packaging."""
    vendors = [column.index for column in columns.of(Role.VENDOR)]
    for index in sorted(cells):
        cell = cells[index]
        if isinstance(cell.value, str) and index not in priced and any(map(str.isalpha, cell.text)):
            quotes = index in vendors and (company_name(cell.text) is not None or not is_total(cell.text))
            return next(boards_beside(cell, cells, columns), cell) if quotes else cell
    return None


def boards_beside(label: Cell, cells: Mapping[int, Cell], columns: Columns) -> Iterator[Cell]:
    """The other cells of a row that name a board, below a head that says that boards stand there."""
    headed = (cells[column.index] for column in columns.board if column.heads and column.index in cells)
    return (cell for cell in headed if cell is not label and names_board(cell.text))
