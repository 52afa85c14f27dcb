"""The smallest order that a vendor takes, and what small orders cost more: of a row, else of what stands around it."""

import re
from collections.abc import Collection, Iterator
from decimal import Decimal
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.columns.roles.cells import order_weight
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import of_board
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.of_others_perhaps import of_others_perhaps
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.statements import SaysMinimum
from tracker.intake.values.orders.brackets_in_kg import LARGEST_ORDER_KG
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.orders.minimum import LeastUnread, begins_at, find_minimum, least_unread
from tracker.intake.values.orders.no_least import sold_in_any_quantity
from tracker.intake.values.orders.small_orders import DearerIfSmall, dearer_if_small
from tracker.intake.words.lists import phrases
from tracker.trade.offer import Evidence, Note, NoteCode
from tracker.trade.quantities import MassUnit

_ADDS = re.compile(r"[+%]\s*\d|\d\s*%")
"""'+8 %' beside the weight of a smallest order: what less than that costs more."""

Least = tuple[Decimal, Evidence]
"""A smallest order in kg, and what said it."""


def least_order(cells: dict[int, Cell], columns: Columns, scope: Scope, facts: FileFacts) -> Least | Note | None:
    """The row's own smallest order, else the one around it; a note where one is said and not for certain a weight."""
    for column in columns.of(Role.MINIMUM):
        cell = cells.get(column.index)
        if cell is not None:
            mass = order_weight(cell, column) or _only_mass(cell)
            return weighed(mass, at(cell), cell.text.strip(), facts)
    for remark in _texts(cells, columns, Role.REMARKS):
        least = least_of(remark.text, facts)
        if least is not None:
            return weighed(least, at(remark), remark.text.strip(), facts)
        if sold_in_any_quantity(remark.text):
            return None
        unread = least_unread(remark.text)
        if unread is not None:
            return not_understood(unread, at(remark))
    own = _own_unread(scope)
    if own is not None:
        return not_understood(own.value, own.where)
    if _have_none(scope):
        return None
    said = scope.nearest(SaysMinimum)
    if not said:
        return _of_export(scope, facts)
    if any(one.value.grades for one in said) or len({one.value.mass for one in said}) != 1:
        # Which of them holds is told once the row's grade is known.
        return None
    return weighed(said[0].value.mass, said[0].where, said[0].words, facts)


def _own_unread(scope: Scope) -> Said[LeastUnread] | None:
    """What is told of the smallest order of these rows and not understood, before one is told of them or of all."""
    for level in scope.levels:
        unread = [one for one in level.all_of(LeastUnread) if not one.value.apart]
        if unread and (level.of_row or level.of_some):
            return unread[0]
        if level.all_of(SaysMinimum):
            return None
    return None


def _have_none(scope: Scope) -> bool:
    """'E = from stock, no minimum': what is said of these rows before a smallest order of them or of all."""
    for level in scope.levels:
        if level.all_of(SaysMinimum):
            return False
        if (level.of_row or level.of_some) and any(sold_in_any_quantity(words.text) for words in level.texts):
            return True
    return False


def _of_export(scope: Scope, facts: FileFacts) -> Least | Note | None:
    """'Minimum order for export 20 t' of a list that is one for export itself, as its title says."""
    for said in scope.nearest(LeastUnread):
        if said.value.export is not None and any(map(_titles_export, scope.levels)):
            return weighed(said.value.export, said.where, said.words, facts)
    return None


def _titles_export(level: Level) -> bool:
    """'Exportpreisliste 14', 'Export price list for Latin America'."""
    firsts = (COMMA.split(words.text)[0] for words in level.texts)
    named = (first for first in firsts if phrases("of_export").find(first))
    return any(phrases("list_names").find(first) or len(first.split()) <= _SHORT_TITLE for first in named)


_SHORT_TITLE = 2
"""Words of 'Export' and 'Exportpreisliste 14'."""


def leasts_unread(least: Least | Note | None, cells: dict[int, Cell], scope: Scope) -> Iterator[Note]:
    """What is told of a smallest order around a row that tells none itself, and not understood; of orders that this
    list is not for, where no other is told."""
    where = least.cell if isinstance(least, Note) else None if least is None else least[1].said_by
    if any(where == at(cell) for cell in cells.values()):
        return
    told = least is not None or bool(scope.nearest(SaysMinimum))
    for said in scope.nearest(LeastUnread):
        if said.where != where and not (told and said.value.apart):
            yield not_understood(said.value, said.where)


def not_understood(said: LeastUnread, where: str) -> Note:
    """What is told of words that tell a smallest order and give none."""
    text = f"“{said.words}” tells a smallest order that is not understood. Ask the vendor which orders it is for."
    text = of_others_perhaps(said.words) if said.perhaps else text
    return Note(NoteCode.BRACKET_UNREAD, where, text)


def least_of(remark: str, facts: FileFacts) -> Mass | None:
    """The smallest order that a remark on one board names; 'from 500 kg' is one where the file names one for all."""
    return begins_at(remark) if facts.says_minimum else find_minimum(remark)


def own_least(cell: Cell, facts: FileFacts) -> Least | Note | None:
    """The smallest order that a line of text names with its board and its price."""
    least = find_minimum(cell.text)
    if least is not None:
        return weighed(least, at(cell), cell.text.strip(), facts)
    unread = least_unread(cell.text)
    return None if unread is None else not_understood(unread, at(cell))


def minimum_of_grade(scope: Scope, draft: Draft, facts: FileFacts) -> Least | None:
    """The one smallest order, in kg, that the nearest level gives a board by its grade, or all beside others named."""
    own = of_board(scope.nearest(SaysMinimum), draft)
    if _have_none(scope) or len({one.value.mass for one in own}) != 1:
        return None
    least = weighed(own[0].value.mass, own[0].where, own[0].words, facts)
    return least if isinstance(least, tuple) else None


def dearer_small_orders(cells: dict[int, Cell], columns: Columns, scope: Scope) -> Iterator[Note]:
    """What orders below some size cost more is no part of the price, and must not be lost."""
    around = ((said.where, said.value.words) for said in scope.nearest(DearerIfSmall))
    own = ((at(cell), said.words) for cell in _texts(cells, columns, Role.REMARKS) for said in _dearer(cell))
    least = ((at(cell), cell.text.strip()) for cell in _texts(cells, columns, Role.MINIMUM) if _ADDS.search(cell.text))
    for where, words in dict.fromkeys((*own, *least, *around)):
        yield Note(NoteCode.BRACKET_UNREAD, where, small_orders_cost_more(words))


def small_orders_cost_more(words: str) -> str:
    """What is told of them."""
    return f"“{words}”: small orders cost more than this price. Ask the vendor what yours comes to."


def drop_told(draft: Draft, dearer: Collection[str]) -> None:
    """Nothing is left to tell of what these words say of small orders: the price is for such, or for none of them."""
    told = set(map(small_orders_cost_more, dearer))
    draft.notes = [note for note in draft.notes if note.text not in told]


def still_told(draft: Draft, words: str) -> bool:
    """Whether a note still tells what these words say of small orders."""
    return any(note.text == small_orders_cost_more(words) for note in draft.notes)


def _dearer(cell: Cell) -> Iterator[DearerIfSmall]:
    dearer = dearer_if_small(cell.text)
    if dearer is not None:
        yield dearer


def _texts(cells: dict[int, Cell], columns: Columns, role: Role) -> Iterator[Cell]:
    found = (cells.get(column.index) for column in columns.of(role))
    return (cell for cell in found if cell is not None and isinstance(cell.value, str))


def _only_mass(cell: Cell) -> Mass | None:
    """'5,000 lb (less: +8 %)' is one weight among other words."""
    found = find_masses(cell.text) if isinstance(cell.value, str) else ()
    return found[0] if len(found) == 1 else None


def weighed(mass: Mass | None, where: str, words: str, facts: FileFacts) -> Least | Note | None:
    kg = _kg(mass, ton_of(mass, facts), facts.decimal_sign) if mass is not None else None
    if kg is not None and kg <= LARGEST_ORDER_KG:
        return kg, Evidence("minimum_kg", where, words)
    if not any(sign.isdigit() for sign in words):
        return None
    text = f"“{words}” says the smallest order, but not in a weight that can be told for certain."
    return Note(NoteCode.BRACKET_UNREAD, where, text)


@lru_cache(maxsize=4096)
def _kg(mass: Mass, ton: MassUnit | None, sign: str | None) -> Decimal | None:
    return mass.kg(ton, sign)


def ton_of(mass: Mass, facts: FileFacts) -> MassUnit | None:
    """Which ton a weight of an order is in: what the file settles, or a lone 't' in a metric file."""
    if not mass.metric_hint:
        return facts.ton
    return MassUnit.TONNE if facts.makes_tonne(mass.words) else facts.lone_t
