"""Notes that explain the keys of a column: 'D = delivered' below a column 'D' with an x in some rows, 'a = lead time 3
weeks' beside a column of remarks or codes that says 'a' or 'a, b'."""

import re
from collections.abc import Iterable, Mapping, Set
from dataclasses import replace

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.of_word_keys import cells_worded
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.relieved_charges import NoCharge
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.key_entries import key_entries
from tracker.intake.values.notes.lines_apart import without_others
from tracker.intake.values.notes.note_signs import KEYED, NOT, RAISED, sign_ahead
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.notes.word_keys import without_name
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_KEY = re.compile(r"\s*([^\W\d_]{1,3}|\d{1,2})\s*(?:[=:]|\s[-–]\s)\s*(?=[^\W_])")
_KEYS = re.compile(r"(?:[^\W\d_]{1,3}|\d{1,2})(?:\s*[,;+/ ]\s*(?:[^\W\d_]{1,3}|\d{1,2}))*")


def key_ahead(text: str) -> str:
    """The key that a note explains, with the sign of equality, so that no footnote's sign is taken for it; '' for
    none, and for several in one text."""
    if (sign := sign_ahead(text)).startswith(KEYED):
        return sign
    found = _KEY.match(text)
    return f"{KEYED}{fold(found[1])}" if found is not None and len(key_entries(text)) <= 1 else ""


def without_key(text: str) -> str:
    """The note behind its key, and behind what the key calls its rows: 'S = special width: lead time 6 weeks'."""
    found = _KEY.match(text)
    return text if found is None else without_name(text[found.end() :])


def with_the_others(texts: tuple[Words, ...]) -> tuple[Words, ...]:
    """The texts with 'Other lines: lead time 3 weeks' as a note on the rows without the one key beside it that others
    have terms by."""
    keys = {key for words in texts if (key := key_ahead(words.text)) and statements(without_key(words.text))}
    if len(keys) != 1 or len(*keys) > _LONGEST_MARK or " " in next(iter(keys)):
        return texts
    return tuple(_of_the_others(words, *keys) for words in texts)


_LONGEST_KEY, _LONGEST_MARK = 3, 9


def _of_the_others(words: Words, key: str) -> Words:
    begins = any(match.start == 0 for match in phrases("the_others").find(words.text))
    rest = without_others(words.text) if begins else None
    return words if rest is None else replace(words, text=f"[{NOT}{key}] {rest}")


def key_by_key(text: str, tables: Iterable[Table]) -> tuple[str, ...]:
    """'E = from stock; F = making, lead time 5 weeks' once for each key, where rows of these tables hold some and
    some of it is said of orders; () for any other text, also for one on units and names of boards."""
    entries = key_entries(text)
    keys = {entry.code for entry in entries}
    if len(keys) < _SEVERAL or not all(entry.whole and _SHORT.fullmatch(entry.code) for entry in entries):
        return ()
    told = [one for entry in entries for one in statements(entry.said)]
    if not any(isinstance(one, _OF_ORDERS) for one in told) or any(isinstance(one, _OTHERWISE) for one in told):
        return ()
    rows = (table.view.rows[row.index].values() for table in tables for row in table.rows if not table.view.passing)
    held = {fold(cell.text).strip() for cells in rows for cell in cells if len(cell.text) <= _LONGEST_KEY}
    return tuple(f"{entry.code} = {entry.said}" for entry in entries) if keys & held else ()


def _told(text: str) -> bool:
    return any(isinstance(one, _OF_ORDERS) for one in statements(without_key(text)))


_SEVERAL = 2
_SHORT = re.compile(r"[^\W\d_]{1,3}")
_OF_ORDERS = (LeadTime, LeadUnread, SaysMinimum, LeastUnread, Delivery, Validity, ChargeWords, NoCharge)
_OTHERWISE = (SaysBasis, SaysCurrency, LegendEntry)


class KeyedNotes:
    """The keys that some notes explain, in the columns of a table that hold them or marks below them."""

    def __init__(self, noted: Mapping[str, str], table: Table, columns: Columns) -> None:
        """`noted`: each key, and the note that explains it."""
        known = {column.index for found in columns.by_role.values() for column in found}
        free = {column.index for column in columns.of(Role.REMARKS)} | {
            column.index for column in table.columns if column.index not in known
        }
        self._rows = [table.view.rows[row.index] for row in table.rows] if noted and not table.view.passing else []
        keys = noted.keys()
        self._marked = {index: key for index, key in self._headed(table, free) if key in keys}
        may_list = free.union(_may_hold_keys(columns)).difference(self._marked, (one.index for one in columns.prices))
        self._listing = frozenset(index for index in may_list if self._lists(index, keys))
        self._worded = frozenset(
            key for key, text in noted.items() if key.startswith(KEYED) and sign_ahead(text) == key
        )
        self._priced = frozenset(price.index for price in columns.prices)
        self.keys = frozenset(self._marked.values()).union(*map(self.of_row, self._rows)) & keys
        # An entry whose word no row has is of none of them.
        self.keys |= self._worded
        if self._listing:
            # The 'F = lead time 5 weeks' of a list whose lines are all marked E is of none of them.
            self.keys |= {key for key, text in noted.items() if key[1:].isalpha() and len(key[1:]) == 1 and _told(text)}

    def _headed(self, table: Table, free: set[int]) -> Iterable[tuple[int, str]]:
        """The columns that a key stands over, with nothing but marks in them."""
        for column in table.columns:
            cells = [cells[column.index] for cells in self._rows if column.index in cells]
            if column.index in free and column.heads and cells and all(map(_is_mark, cells)):
                head = fold(column.heads[-1].text).strip(" .")
                yield column.index, head.translate(RAISED) if not head[:1].isalnum() else f"{KEYED}{head}"

    def _lists(self, index: int, noted: Set[str]) -> bool:
        """Whether all its cells are keys, or a dash for none, and the notes explain some of these.

        A letter that none explains says nothing for certain; a number that none does may count the rows.
        """
        explained = False
        for cell in (cells[index] for cells in self._rows if index in cells):
            keys = _keys(cell)
            if any(map(str.isalnum, cell.text)) and not keys:
                return False
            if any(key[-1].isdigit() for key in keys - noted):
                return False
            explained = explained or bool(keys & noted)
        return explained

    def of_row(self, cells: Mapping[int, Cell]) -> frozenset[str]:
        """The keys that hold for a row."""
        marked = {key for index, key in self._marked.items() if index in cells}
        worded = cells_worded(cell for index, cell in cells.items() if index not in self._priced) & self._worded
        return worded.union(marked, *(_keys(cells[index]) for index in self._listing if index in cells))

    @property
    def over_columns(self) -> frozenset[int]:
        """The columns whose head is a key for the rows marked below it."""
        return frozenset(self._marked)


def _may_hold_keys(columns: Columns) -> Iterable[int]:
    """The columns whose heads say what their keys tell of, or call them codes: 'Code', 'Lead time', and 'Typ' beside
    another that names the board."""
    yield from (column.index for column in columns.of(*_TOLD_BY_KEYS))
    named = columns.of(Role.PRODUCT, Role.GRADE)
    yield from (column.index for column in named if len(named) > 1)


_TOLD_BY_KEYS = (
    Role.ITEM, Role.LEAD_TIME, Role.DELIVERY_TERMS, Role.STOCK, Role.FORM, Role.MINIMUM, Role.VALIDITY,
    Role.PAYMENT, Role.PROPERTY, Role.DESTINATION,
)  # fmt: skip


def _is_mark(cell: Cell) -> bool:
    text = cell.text.strip()
    signed = not any(map(str.isalnum, text)) and bool(text.strip("-–—. "))
    return signed or fold(text) in _MARKS or phrases("answers").whole(text) == "yes"


_MARKS = frozenset({"x", "xx", "v", "1"})


def _keys(cell: Cell) -> frozenset[str]:
    text = cell.text.strip()
    return (
        frozenset(f"{KEYED}{fold(key)}" for key in re.findall(r"[^\W_]+", text))
        if _KEYS.fullmatch(text)
        else frozenset()
    )
