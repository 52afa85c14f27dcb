"""Order sizes that stand where none was looked for: in a description, a sub-heading, a column under another name.

A board that comes several times, at several prices, beside words that differ in a weight of an order has a price for
each size of order. Where these words were not read as sizes, null would mean that each holds for every order.
"""

from collections.abc import Hashable, Iterable
from decimal import Decimal
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.answered import key_about
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.twins import about
from tracker.intake.values.brackets import NAMED_SIZE, PIECES_OR_TONS, VEHICLES
from tracker.intake.values.lead import in_figures
from tracker.intake.values.masses import find_masses
from tracker.intake.values.roles import ORDER_SIZES, Role
from tracker.intake.words.lists import phrases
from tracker.trade.offer import NoteCode
from tracker.trade.quantities import MassUnit

_TELLING = (
    Role.PRODUCT,
    Role.GRADE,
    Role.COATING,
    Role.FORM,
    Role.REMARKS,
    Role.PROPERTY,
    Role.CALIPER,
    Role.WEIGHT,
    Role.DELIVERY_TERMS,
    Role.DESTINATION,
    Role.LEAD_TIME,
)
_LIGHTEST_ORDER_KG = Decimal(100)
"""Nobody orders less by weight; common practice, no source."""


class SizesUnread:
    """Watches the offers of one table that nothing was found to bound, and asks about those that something may."""

    def __init__(self, columns: Columns) -> None:
        known = {column.index for role, held in columns.by_role.items() if role not in _TELLING for column in held}
        self._passed = (known - _indices(columns)) | {price.index for price in columns.prices}
        self._sized: list[tuple[Draft, tuple[str, ...]]] = []

    def see(self, draft: Draft, cells: dict[int, Cell], around: Iterable[str]) -> None:
        """Keeps in mind what may size the order of an offer without an order size."""
        own = (cell.text for index, cell in cells.items() if index not in self._passed and isinstance(cell.value, str))
        sizes = tuple(text.strip() for text in (*own, *around) if may_size_an_order(text))
        if sizes:
            self._sized.append((draft, sizes))

    def ask(self, drafts: Iterable[Draft]) -> None:
        """Asks what orders each price of a board is for, where several prices differ in such words."""
        if not self._sized:
            return
        prices: dict[Hashable, set[Decimal | None]] = {}
        for draft in drafts:
            prices.setdefault(_board(draft), set()).add(draft.price)
        said: dict[Hashable, set[tuple[str, ...]]] = {}
        for draft, sizes in self._sized:
            said.setdefault(_board(draft), set()).add(sizes)
        for draft, sizes in self._sized:
            board = _board(draft)
            tells = next((words for words in sizes if any(words not in other for other in said[board])), "")
            if len(prices[board]) > 1 and tells:
                _ask(draft, tells)


def _indices(columns: Columns) -> set[int]:
    return {column.index for column in columns.of(*_TELLING, *ORDER_SIZES)}


def _board(draft: Draft) -> Hashable:
    """What an offer is for and in which money, apart from its price and from what its column is called."""
    return (*about(draft)[1:], draft.currency, draft.basis, draft.delivered)


def _ask(draft: Draft, words: str) -> None:
    text = f"For what weight of order does “{words}” stand?"
    draft.ask(NoteCode.BRACKET_UNREAD, key_about("bracket", words), draft.where, text, words)


@lru_cache(maxsize=16384)
def may_size_an_order(text: str) -> bool:
    """Whether a text has a weight of an order in it, or the load of a vehicle, or a size by its name."""
    text = in_figures(text)
    kinds = {match.value for match in phrases("bracket").find(text)}
    if kinds & _SIZES:
        return True
    if any(match.value == PIECES_OR_TONS and _counted(text[: match.start]) for match in phrases("bracket").find(text)):
        return True
    weights = (mass.kg(MassUnit.TONNE) for mass in find_masses(text))
    return any(kg is None or kg >= _LIGHTEST_ORDER_KG for kg in weights)


def _counted(before: str) -> bool:
    """'10 ST' and '10+ ST', and not 'ST-553'."""
    return before.rstrip(" +")[-1:].isdigit()


_SIZES = frozenset({*VEHICLES, NAMED_SIZE})
