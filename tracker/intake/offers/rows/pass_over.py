"""Tables and sheets that offer nothing: old lists, indices, freight rates, anything that describes no board."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from operator import attrgetter

from tracker.intake.columns.column import Column, Kind, PriceColumn
from tracker.intake.columns.groups.corner_boards import corner_boards
from tracker.intake.columns.priced.buyers_figures import whose_figure
from tracker.intake.columns.priced.own_costs import names_own_cost
from tracker.intake.columns.priced.whose_prices import names_others_prices
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.surcharges_listed import CHARGES
from tracker.intake.offers.rows.outdated import EXAMPLE, MOST_EXAMPLES, age_above
from tracker.intake.offers.rows.row_labels import heads_measures
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.headers.periods import is_period
from tracker.intake.tables.table import SheetTables, Words
from tracker.intake.tables.view import View
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.changes.change_logs import heads_change_log, names_change_log
from tracker.intake.values.changes.list_age import Age
from tracker.intake.values.changes.no_offers import (
    called_an_example,
    deals_done,
    kept_inside,
    names_costs,
    shows_how_to_read,
    surely_an_example,
)
from tracker.intake.values.changes.others_prices import Offering, title_offers
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.figures.formats import unit_of_format
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.notes.statements import Remark, says, statements
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.trade.offer import PassedOver

NOTHING_OFFERED = "no prices offered"
"""Why a table is passed over that has no column of prices."""


def passed_table(read: ReadTable, found: SheetTables, elsewhere: Sequence[Words] = ()) -> str:
    """Why a table holds no offers, '' where it may. `elsewhere`: what sheets of words alone say."""
    offers = [price for price in read.columns.prices if price.kind is Kind.OFFER]
    if not offers:
        return NOTHING_OFFERED
    titles = read.table.titles
    if any(age_above(words, found.tables) is Age.SUPERSEDED for words in titles):
        return "marked as old"
    if any(deals_done(words.text) for words in titles) or _of_others(read, found):
        return "marked as no offers"
    if _costs_alone(read, found, offers):
        return "what the vendor pays himself"
    if titles and _spreads_the_other_measure(titles[-1].text, offers):
        return "measures of boards, no prices"
    if _charges_alone(read, found):
        return CHARGES
    if titles and _of_other_goods(read, titles[-1].text):
        return "other goods than board"
    across = any(price.caliper or price.weights or price.grade for price in offers)
    described = bool(read.columns.board or corner_boards(read.columns)) or across
    if not described:
        if any(charge_header(words.text) is not None for words in titles) or read.columns.of(Role.DESTINATION):
            return CHARGES
        if any(_are_words(read, column) for column in read.columns.of(*ON_TOP)):
            return CHARGES
        around = [*titles, *found.texts, *read.table.headings()]
        if not any(_board(words.text) for words in around):
            return "no board is described"
    if any(Remark.INDEX in says(words.text) for words in titles) and not read.columns.of(Role.CALIPER, Role.WEIGHT):
        return "an index"
    if _by_periods(read) and any(map(phrases("index").find, (found.view.sheet, *(words.text for words in titles)))):
        # 'Fibre cost index' over months and grades, whatever stands before the word.
        return "an index"
    alone = len(found.tables) == 1
    if _by_periods(read) and not (across and _may_be_prices(read, (*found.texts, *elsewhere), alone=alone)):
        return "a history by months or years, no board"
    return EXAMPLE if any(_is_example(words.text, read) for words in titles) else ""


def _is_example(title: str, read: ReadTable) -> bool:
    few = len(read.table.rows) <= MOST_EXAMPLES
    return surely_an_example(title) or (few and (shows_how_to_read(title) or called_an_example(title)))


def _of_others(read: ReadTable, found: SheetTables) -> bool:
    """'Competitor prices' over one of several tables; over a sheet's only one it is asked about."""
    several = len(found.tables) > 1
    return several and any(title_offers(words.text) is Offering.NOT for words in read.table.titles)


def _costs_alone(read: ReadTable, found: SheetTables, offers: Sequence[PriceColumn]) -> bool:
    """'Purchasing, internal, not for customers' over costs, and a hidden sheet of nothing but costs. 'Purchase price'
    over an open list may be what its buyer pays, and beside the names of vendors it is."""
    if read.columns.of(Role.VENDOR):
        return False
    titles = [words.text for words in read.table.titles]
    headed = all(names_own_cost(price.column) for price in offers)
    if found.view.hidden and headed:
        return True
    return any(map(kept_inside, titles)) and (headed or any(map(names_costs, (found.view.sheet, *titles))))


def only_looks_like_a_table(read: ReadTable) -> bool:
    """Whether a table that offers nothing is text laid out in columns: labels with what they say ('Minimum order |
    10,000 lb' over 'Lead time | 4 weeks'), or words throughout ('EUR per tonne | EXW')."""
    table = read.table
    if not read.passed_over or table.view.passing or table.last_row - table.first_row > _MOST_ROWS:
        return False
    rows = [table.view.rows.get(row, {}) for row in range(table.first_row, table.last_row + 1)]
    filled = [cells for cells in rows if cells]
    if len(table.columns) == _LABEL_AND_VALUE:
        label, value = (column.index for column in table.columns)
        if all(cells.keys() == {label, value} and _is_term(cells[label]) for cells in filled):
            return True
    return all(isinstance(cell.value, str) and not _is_figure(cell.text) for cells in filled for cell in cells.values())


def _is_figure(text: str) -> bool:
    """'1,105' and '$1,105/ST'; 'at least 20,000 kg' is a term, though it could be read as a price per kg."""
    said = price_text(text)
    return bool(number_readings(text)) or (said is not None and bool(said.amounts) and said.currency is not None)


_MOST_ROWS = 40
_LABEL_AND_VALUE = 2


def _is_term(cell: Cell) -> bool:
    head = head_of(cell)
    return head is not None and head.named and head.role in _TERMS


_TERMS = frozenset({Role.MINIMUM, Role.LEAD_TIME, Role.VALIDITY, Role.DELIVERY_TERMS, Role.PAYMENT, Role.VALID_FROM})


def _are_words(read: ReadTable, column: Column) -> bool:
    """'Freight only' over 'Zone 1' and 'Zone 2'."""
    cells = list(read.cells(column))
    return bool(cells) and all(isinstance(cell.value, str) and not _is_figure(cell.text) for cell in cells)


def _spreads_the_other_measure(title: str, offers: Sequence[PriceColumn]) -> bool:
    """'Calipers in µm' right over figures by basis weight, or the other way round, and in no money.

    Over '220 g/m² (360 µm)' 'grammage (caliper)' says what the heads are.
    """
    said = header(title)
    by_weight, by_caliper = (all(map(attrgetter(name), offers)) for name in ("weights", "caliper"))
    calipers = by_weight and said.caliper_unit is not None and said.role is Role.CALIPER
    weights = by_caliper and len(said.weight_units) == 1 and said.role is Role.WEIGHT
    both = by_weight and by_caliper
    return (calipers or weights) and not both and heads_measures(title) and not statements(title)


def _of_other_goods(read: ReadTable, title: str) -> bool:
    """'Other goods' over skids and cores, none of which is called by a grade or measured as board is."""
    if phrases("other_articles").whole(title.strip(" .:()")) is None or read.columns.of(Role.CALIPER, Role.WEIGHT):
        return False
    cells = (cell for row in read.table.rows for cell in read.table.view.rows[row.index].values())
    return not read.table.view.passing and not any(_board(cell.text) for cell in cells if isinstance(cell.value, str))


def _charges_alone(read: ReadTable, found: SheetTables) -> bool:
    """'Freight rates, US$ per cwt' over zones and states, or at their head: words that no head calls a board are none
    there."""
    if any(column.sure for column in read.columns.board):
        return False
    above = [*read.table.titles, *(words for words in found.texts if words.row < read.table.first_row)]
    measured = any(price.caliper or price.weights for price in read.columns.prices)
    if measured and any(names_grade(words.text) and not _heads_charges(words.text) for words in above):
        # 'Coated unbleached kraft, $ per MSF', and below it 'Freight is extra': prices of that board by caliper.
        return False
    corner = read.table.columns[0].text if read.table.columns else ""
    if not any(_heads_charges(text) for text in (corner, *(words.text for words in above))):
        return False
    return not any(_board(cell.text) for column in read.columns.board for cell in read.cells(column))


def _heads_charges(text: str) -> bool:
    """A title that begins with a charge and says of none how much it is: 'Freight adds $3.10 per MSF' is one more thing
    that a list of boards says."""
    named = charge_header(text)
    if named is None or not text.strip().startswith(named.label):
        return False
    return not any(isinstance(one, ChargeWords) and one.amounts for one in statements(text))


def _by_periods(read: ReadTable) -> bool:
    """Every row is a time ('Jan 2026', 'Q2') in its first column, or sums them up, and no column measures or names a
    board."""
    if read.columns.of(Role.CALIPER, Role.WEIGHT) or not read.table.columns:
        return False
    named = (cell for column in read.columns.of(Role.PRODUCT, Role.GRADE) for cell in read.cells(column))
    if any(_board(cell.text) for cell in named):
        return False
    first = min(column.index for column in read.table.columns)
    labels = [cells[first] for row in read.table.rows if first in (cells := read.table.view.rows[row.index])]
    labels = [cell for cell in labels if not is_total(cell.text)]
    return bool(labels) and all(isinstance(cell.value, date) or is_period(cell.text) for cell in labels)


def _may_be_prices(read: ReadTable, around: Iterable[Words], *, alone: bool) -> bool:
    """The figures by month are money: at themselves, else by the nearest title that tells prices from quantities, else
    by a currency around the sheet's only table. 'Shipments by grade, tonnes' are none; prices in no currency are
    asked about."""
    if any(price.column.currencies for price in read.columns.prices) or any(map(_money_at, _priced_cells(read))):
        return True
    titles = [*(words.text for words in reversed(read.table.titles)), read.table.view.sheet]
    said = next((told for title in titles if (told := _tells_prices(title)) is not None), None)
    return said if said is not None else alone and any(find_currencies(words.text) for words in around)


def _priced_cells(read: ReadTable) -> Iterator[Cell]:
    return (cell for price in read.columns.prices for cell in read.cells(price.column))


def _money_at(cell: Cell) -> bool:
    unit = unit_of_format(cell.number_format)
    return (unit is not None and unit.currency is not None) or bool(find_currencies(cell.text))


def _tells_prices(title: str) -> bool | None:
    """Whether a title says that prices or that quantities follow: 'Contract, per short ton', 'Lieferungen in t'; None
    where it says neither."""
    weight = bool(find_mass_units(title))
    per = any(match.value == "strong" for match in phrases("per").find(title))
    if find_currencies(title) or phrases("price_words").find(title) or (weight and per):
        return True
    quantities = weight or any(phrases(section).find(title) for section in ("volumes_sold", "volumes_listed"))
    return False if quantities else None


def is_change_log(view: View) -> bool:
    """'date | who | change' over rows that begin with a day, or a sheet called 'log' with such rows: what it says was
    changed in the list already."""
    if view.passing or not view.order:
        return False
    first, *others = (list(view.rows[row].values()) for row in view.order)
    headed = heads_change_log([cell.text for cell in first])
    dated = [cells for cells in others if isinstance(cells[0].value, date) or find_dates(cells[0].text)]
    return (headed or names_change_log(view.sheet)) and 2 * len(dated) >= len(others) > 0


def _board(text: str) -> bool:
    return names_grade(text) or names_measure(text)


def passed_outside(sheet: str, rows: Sequence[int]) -> list[PassedOver]:
    """The rows that look like offers and that the person who marked the table left out of it."""
    return [PassedOver(sheet, span, why) for span, why in _row_spans(dict.fromkeys(rows, "outside the rows marked"))]


def passed_within(read: ReadTable, rows: dict[int, str]) -> list[PassedOver]:
    """What of a table offers nothing: `rows` with their reasons, and columns of other prices beside those offered."""
    table, sheet = read.table, read.table.view.sheet
    passed = [PassedOver(sheet, span, why) for span, why in _row_spans(rows)]
    for price in read.columns.prices:
        if price.kind is not Kind.OFFER:
            of_others = names_others_prices(price.column) or whose_figure(price.column) is not None
            others = price.kind is Kind.LIST and of_others
            own = "a later year's price" if price.kind is Kind.LATER else f"a {price.kind.value} price"
            what = "holds prices that nobody offers here," if others else f"is {own}"
            why = f"the column “{price.column.text}” {what} beside the one offered"
            passed.append(PassedOver(sheet, f"{table.first_row + 1}-{table.last_row + 1}", why))
    return passed


def _row_spans(rows: dict[int, str]) -> Iterator[tuple[str, str]]:
    """Rows that follow each other and are passed over for one reason, together: '13-15'."""
    first = last = -1
    for row, why in (*sorted(rows.items()), (-1, "")):
        if first >= 0 and (row != last + 1 or why != rows[first]):
            yield (f"{first + 1}-{last + 1}" if last > first else str(first + 1)), rows[first]
            first = -1
        first, last = (row if first < 0 else first), row
