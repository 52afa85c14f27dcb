"""Columns of codes that a key explains under their own head: '1 | 2' below 'G', and 'G: 1 = solid bleached sulfate C1S,
2 = coated unbleached kraft'."""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from tracker.intake.tables.headers.keyed_units import UNIT
from tracker.intake.tables.headers.keys import around
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.prices.units_of_codes import BEHIND_THE_CODES, unit_led_to
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_LABELLED = re.compile(r"\s*(?P<label>[^:=]{1,30}?)\s*:\s*(?P<rest>.*=.*)", re.DOTALL)
_ENTRY = re.compile(
    r"(?:^|[,;\n]\s*)(?P<code>[^\s=:,;]{1,6})\s*=\s*(?P<said>[^=]+?)\s*(?=$|[,;\n]\s*[^\s=:,;]{1,6}\s*=)"
)


def with_keyed_columns(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with what such codes stand for in their place: a grade, what prices are per, or at whose freight they
    are. The key itself is then said of these rows alone. `elsewhere`: what sheets of words alone say."""
    if found.view.passing:
        return found
    keys = {label: key for words in (*elsewhere, *around(found)) for label, key in (_key_in(words.text),) if key}
    if not keys:
        return found
    told = {label for table in found.tables for column in table.columns if (label := _explained(table, column, keys))}
    if not told:
        return found
    tables = tuple(_without(_in_words(table, keys), told) for table in found.tables)
    return replace(found, tables=tables, texts=_kept(found.texts, told))


def _key_in(text: str) -> tuple[str, dict[str, str]]:
    """The head, folded, that a text explains the codes of, and what each stands for; nothing where the text says more,
    or one code twice."""
    labelled = _LABELLED.fullmatch(text)
    entries = list(_ENTRY.finditer(labelled["rest"])) if labelled is not None else []
    key = {fold(entry["code"]).strip(): entry["said"].rstrip(" .") for entry in entries}
    whole = bool(entries) and entries[0].start() == 0 and entries[-1].end() == len(labelled["rest"] if labelled else "")
    if labelled is None or not whole or len(key) < len(entries) or BEHIND_THE_CODES.search(text):
        return "", {}
    return _label(labelled["label"]), key


def _label(text: str) -> str:
    """The 'U' of 'Column U' as well."""
    first = next((match for match in phrases("column_words").find(text) if match.start == 0), None)
    return fold(text if first is None or first.end == len(text) else text[first.end :]).strip(" .\"'“”")


_KINDS: tuple[tuple[str, Callable[[str], bool]], ...] = (
    ("Grade", lambda said: (grade := find_grade(said)) is not None and bool(grade.grades)),
    (UNIT, lambda said: unit_led_to(said) is not None),
    ("Delivery terms", lambda said: (term := find_delivery(said)) is not None and term.delivered is not None),
)
"""The heads of such columns, and what tells that all entries of a key are of that kind."""


def _kind_of(key: Mapping[str, str]) -> str:
    return next((head for head, fits in _KINDS if all(map(fits, key.values()))), "")


def _explained(table: Table, column: HeadedColumn, keys: Mapping[str, Mapping[str, str]]) -> str:
    """The label of the key that explains a column's codes, most of which it names; '' for none."""
    label = fold(column.heads[-1].text).strip(" .") if column.heads else ""
    key = keys.get(label, {})
    cells = [cell for _, cell in table.view.down(column.index, (row.index for row in table.rows))] if key else []
    known = sum(fold(cell.text).strip() in key for cell in cells)
    return label if known and 2 * known > len(cells) and _kind_of(key) else ""


def _in_words(table: Table, keys: Mapping[str, Mapping[str, str]]) -> Table:
    rows, columns = dict(table.view.rows), list(table.columns)
    for place, column in enumerate(table.columns):
        label = _explained(table, column, keys)
        if not label:
            continue
        key = keys[label]
        for row, cell in table.view.down(column.index, (each.index for each in table.rows)):
            said = key.get(fold(cell.text).strip())
            if said is not None:
                rows[row] = rows[row] | {column.index: cell._replace(value=said, text=said, number_format="General")}
        *above, lowest = column.heads
        head = lowest._replace(value=_kind_of(key), text=_kind_of(key))
        columns[place] = replace(column, heads=(*above, head), named=column.called)
    return replace(table, columns=tuple(columns), view=replace(table.view, rows=rows))


def _without(table: Table, told: set[str]) -> Table:
    return replace(table, titles=_kept(table.titles, told), notes=_kept(table.notes, told))


def _kept(texts: Sequence[Words], told: set[str]) -> tuple[Words, ...]:
    return tuple(words for words in texts if _key_in(words.text)[0] not in told or not _key_in(words.text)[0])
