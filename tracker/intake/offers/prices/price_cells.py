"""The price cells of one table: what the figures of a column settle together, each cell is read by."""

from collections.abc import Iterable, Iterator, Sequence

from tracker.intake.columns.column import PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.prices.price_cell import PriceCell, in_crowns, read_price, shows_crowns
from tracker.intake.offers.prices.signs import evidence_of, marks_disagree, sign_by_size
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.values.figures.halves import halves_of
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.dates import DateReading, find_dates, ordered
from tracker.intake.words.lists import phrases


class PriceCells:
    """Reads the price cells of a table. `around`: what is said of its prices."""

    def __init__(self, read: ReadTable, facts: FileFacts, around: Iterable[str]) -> None:
        self._read, self._facts = read, facts
        prices = read.columns.prices
        later = any(price.pair is not None for price in prices) and any(map(self._begins_later, around))
        self._pairs = {price.index: None if later else self._pair(price) for price in prices}
        texts = {price.index: list(self._texts(price)) for price in prices}
        self._signs = {price.index: self._sign(price, texts[price.index]) for price in prices}
        shown = any(map(shows_crowns, texts.values()))
        self._crowns = {index: in_crowns(written, shown=shown) for index, written in texts.items()}

    def read(self, price: PriceColumn, cell: Cell) -> PriceCell:
        """What a cell of one of the table's price columns says."""
        index = price.index
        read = read_price(cell, self._signs[index], crowns=self._crowns[index], pair=self._pairs[index])
        return read._replace(keyed=True) if (cell.row, cell.column) in self._read.table.keyed else read

    def _pair(self, price: PriceColumn) -> int | None:
        """Which of two prices in a cell is in force, unless the head says that it will be one day."""
        return None if self._is_to_come(find_dates(price.column.text)) else price.pair

    def _begins_later(self, text: str) -> bool:
        """'New prices from 1 January 2027', in a list that was made before."""
        ages = {match.value for match in phrases("price_ages").find(text)}
        said = "in_force" in ages and phrases("price_words").find(text) and phrases("since").find(text)
        return bool(said) and self._is_to_come(find_dates(text))

    def _is_to_come(self, dates: Iterable[DateReading]) -> bool:
        """A day behind the list's own; any day, where the list does not say when it was made."""
        made = self._facts.list_date
        return any(made is None or day > made for date in dates for day in ordered(date, self._facts.date_order))

    def _sign(self, price: PriceColumn, texts: Sequence[str]) -> str | None:
        sign = evidence_of(texts).sign or self._facts.decimal_sign
        if self._read.columns.of(Role.BASIS, Role.CURRENCY, Role.PER_QUANTITY):
            return sign
        return None if marks_disagree(texts) else sign or sign_by_size(self._figures(price))

    def _texts(self, price: PriceColumn) -> Iterator[str]:
        return (cell.text for cell in self._figures(price) if isinstance(cell.value, str))

    def _figures(self, price: PriceColumn) -> Iterator[Cell]:
        """The column's cells; of two prices in one, each by itself."""
        paired = self._pairs[price.index] is not None
        for cell in self._read.cells(price.column):
            halves = halves_of(cell.text) if paired else None
            yield from (cell,) if halves is None else (cell._replace(value=half, text=half) for half in halves)
