"""Order sizes that stand where none was looked for: in a description, a sub-heading, a column under another name.

A board that comes several times, at several prices, beside words that differ in a weight of an order has a price for
each size of order. Where these words were not read as sizes, null would mean that each holds for every order.
"""

import re
from collections.abc import Hashable, Iterable
from decimal import Decimal
from functools import cache, lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.fill import fill_bracket
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.orders.brackets import size_without_limits
from tracker.intake.offers.prices.twins import about
from tracker.intake.values.figures.numbers_in_words import in_figures, says_unread_number
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.orders.bracket_pieces import NAMED_SIZE, PIECES_OR_TONS, VEHICLES
from tracker.intake.values.orders.brackets_in_kg import KgBracket
from tracker.intake.values.orders.masses import MASS_UNITS, Mass, find_mass_units, find_masses
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, words
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

    def __init__(self, columns: Columns, facts: FileFacts) -> None:
        self._facts = facts
        known = {column.index for role, held in columns.by_role.items() if role not in _TELLING for column in held}
        self._passed = (known - _indices(columns)) | {price.index for price in columns.prices}
        self._sized: list[tuple[Draft, dict[str, str]]] = []

    def see(self, draft: Draft, bracket: Said[KgBracket] | None, cells: dict[int, Cell], around: Iterable[str]) -> None:
        """Keeps in mind what may size the order of an offer without an order size."""
        if bracket is not None:
            return
        passed = self._passed
        own = [cell.text for index, cell in cells.items() if index not in passed and isinstance(cell.value, str)]
        telling = [text for text in (*own, *around) if sizes_said(text)]
        if telling:
            sizes = {size: text.strip() for text in telling for size in sizes_said(text)}
            self._sized.append((draft, sizes))
            draft.by_figure = True

    def ask(self, drafts: Iterable[Draft]) -> None:
        """Asks what orders each price of a board is for, where several prices differ in such words."""
        if not self._sized:
            return
        prices: dict[Hashable, set[Decimal | None]] = {}
        for draft in drafts:
            prices.setdefault(_board(draft), set()).add(draft.price)
        said: dict[Hashable, list[frozenset[str]]] = {}
        for draft, sizes in self._sized:
            said.setdefault(_board(draft), []).append(frozenset(sizes))
        common = {board: frozenset.intersection(*all_said) for board, all_said in said.items()}
        for draft, sizes in self._sized:
            board = _board(draft)
            own = next((words for size, words in sizes.items() if size not in common[board]), "")
            if own and len(prices[board]) > 1:
                fill_bracket(draft, Said(size_without_limits(own, self._facts), draft.where, own))


def _indices(columns: Columns) -> set[int]:
    return {column.index for column in columns.of(*_TELLING, *ORDER_SIZES)}


def _board(draft: Draft) -> Hashable:
    """What an offer is for and in which money, apart from its price and from what its column is called."""
    return (*about(draft)[1:], draft.currency, draft.basis, draft.delivered)


@lru_cache(maxsize=16384)
def sizes_said(text: str) -> tuple[str, ...]:
    """The weights of an order in a text, each with the signs around it, the loads of vehicles and the sizes by name."""
    if _hints().isdisjoint(_WORD.findall(fold(text))):
        # Most texts of a long list end here, each of them different.
        return ()
    large = says_unread_number(text) and bool(find_mass_units(text))
    text = in_figures(text)
    found = phrases("bracket").find(text)
    signs = " ".join(sorted({match.value for match in found} & _SIGNS))
    weights = [f"{signs} {mass.words}" for mass in find_masses(text) if _is_of_an_order(mass)]
    # 'Under one hundred twenty tonnes' is of an order, whichever size that is.
    weights += [fold(text)] if large else []
    tons = [
        f"{signs} {text[: match.start].split()[-1]} tons"
        for match in found
        if match.value == PIECES_OR_TONS and _counted(text[: match.start])
    ]
    return (*weights, *tons, *(match.value for match in found if match.value in _SIZES))


_WORD = re.compile(r"[^\W\d_]{2,}|(?<![^\W\d_])(?:t(?![^\W\d_])|[^\W\d_](?=[./]))|#(?!/)")


@cache
def _hints() -> frozenset[str]:
    """The longest word of each unit of weight, load and name of a size."""
    named = [phrase for unit in MASS_UNITS for phrase in words("basis").get(unit, ())]
    named += [phrase for kind in (*_SIZES, PIECES_OR_TONS) for phrase in words("bracket").get(kind, ())]
    return frozenset(max(found, key=len) for phrase in named if (found := _WORD.findall(fold(phrase))))


_SIGNS = frozenset({"below", "up_to", "from", "above", "to"})


def _is_of_an_order(mass: Mass) -> bool:
    kg = mass.kg(MassUnit.TONNE)
    return kg is None or kg >= _LIGHTEST_ORDER_KG


def _counted(before: str) -> bool:
    """'10 ST' and '10+ ST', and not 'ST-553'."""
    return before.rstrip(" +")[-1:].isdigit()


_SIZES = frozenset({*VEHICLES, NAMED_SIZE})
