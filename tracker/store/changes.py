"""Edits that leave a trace: every row written through here is logged in the same transaction, and can be put back."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, Date, RowMapping, Table, delete, func, insert, select, update
from sqlalchemy.engine import CursorResult

from tracker.store.tables import change_log, metadata
from tracker.store.types import Measure, Moment

Row = dict[str, Any]


class ChangedMeanwhile(Exception):
    """What was to be put back is no longer as the edit left it; the message says what stands there."""


@dataclass(frozen=True, slots=True)
class Change:
    """One logged row: what it was and what it became (None: it was not there). Values are as JSON keeps them."""

    id: int
    at: datetime
    who: str
    text: str
    table: str
    row: int
    was: Row | None
    now: Row | None


@dataclass(frozen=True, slots=True)
class Pen:
    """Who writes, through which transaction, and what the log shall call it."""

    connection: Connection
    who: str
    text: str

    def insert(self, table: Table, values: Mapping[str, Any]) -> tuple[int, int]:
        """Adds a row; gives its id and the id of the log's entry."""
        result: CursorResult[Any] = self.connection.execute(insert(table).values(**values))
        key = result.inserted_primary_key
        assert key is not None
        row_id = int(key[0])
        return row_id, self._log(table, row_id, None, self._row(table, row_id))

    def update(self, table: Table, row_id: int, values: Mapping[str, Any]) -> int:
        """Changes a row that is there; gives the id of the log's entry."""
        was = self._row(table, row_id)
        self.connection.execute(update(table).where(table.c.id == row_id).values(**values))
        return self._log(table, row_id, was, self._row(table, row_id))

    def delete(self, table: Table, row_id: int) -> int:
        """Removes a row; gives the id of the log's entry."""
        was = self._row(table, row_id)
        self.connection.execute(delete(table).where(table.c.id == row_id))
        return self._log(table, row_id, was, None)

    def note(self, table: Table, row_id: int, now: Row) -> int:
        """Logs something that was written in bulk, in its own words."""
        return self._log(table, row_id, None, now)

    def reverse(self, change_ids: Sequence[int]) -> tuple[int, ...]:
        """Puts back what those entries changed, the last first; gives the ids of the new entries.

        ChangedMeanwhile if a row is no longer as the edit left it: then nothing is put back, as the caller's
        transaction is given up.
        """
        undone = [self._reverse_one(change_id) for change_id in reversed(change_ids)]
        return tuple(undone)

    def _reverse_one(self, change_id: int) -> int:
        entry = self.connection.execute(select(change_log).where(change_log.c.id == change_id)).mappings().one()
        table = metadata.tables[entry["table_name"]]
        row_id = entry["row_id"]
        stands = self._row(table, row_id)
        if stands != entry["now"]:
            raise ChangedMeanwhile(f"“{entry['text']}” can't be undone: it was changed again since then.")
        was = entry["was"]
        if was is None:
            self.connection.execute(delete(table).where(table.c.id == row_id))
        elif stands is None:
            self.connection.execute(insert(table).values(**_plain_to_row(table, was)))
        else:
            self.connection.execute(update(table).where(table.c.id == row_id).values(**_plain_to_row(table, was)))
        return self._log(table, row_id, stands, was)

    def _row(self, table: Table, row_id: int) -> Row | None:
        columns = [column for column in table.c if column.name not in _UNLOGGED]
        found = self.connection.execute(select(*columns).where(table.c.id == row_id)).mappings().one_or_none()
        return None if found is None else _row_to_plain(found)

    def _log(self, table: Table, row_id: int, was: Row | None, now: Row | None) -> int:
        entry = {
            "at": datetime.now(UTC),
            "who": self.who,
            "text": self.text,
            "table_name": table.name,
            "row_id": row_id,
            "was": was,
            "now": now,
        }
        key = self.connection.execute(insert(change_log).values(**entry)).inserted_primary_key
        assert key is not None
        return int(key[0])


# Kept files are too large for a log and are never edited.
_UNLOGGED = frozenset({"content", "evidence"})


def latest(connection: Connection) -> int:
    """The newest entry's id; 0 where nothing was ever written."""
    return connection.execute(select(func.max(change_log.c.id))).scalar() or 0


def history(connection: Connection, limit: int) -> tuple[Change, ...]:
    """The latest entries of the log, newest first."""
    rows = connection.execute(select(change_log).order_by(change_log.c.id.desc()).limit(limit)).mappings()
    return tuple(
        Change(row["id"], row["at"], row["who"], row["text"], row["table_name"], row["row_id"], row["was"], row["now"])
        for row in rows
    )


def _row_to_plain(row: RowMapping) -> Row:
    return {str(name): _to_plain(value) for name, value in row.items()}


def _to_plain(value: Any) -> Any:
    if isinstance(value, datetime | date):
        return value.isoformat()
    return str(value) if isinstance(value, Decimal) else value


def _plain_to_row(table: Table, plain: Row) -> Row:
    return {name: _from_plain(table.c[name].type, value) for name, value in plain.items()}


def _from_plain(kind: object, value: Any) -> Any:
    if value is None:
        return None
    if isinstance(kind, Measure):
        return Decimal(value)
    if isinstance(kind, Moment):
        return datetime.fromisoformat(value)
    return date.fromisoformat(value) if isinstance(kind, Date) else value
