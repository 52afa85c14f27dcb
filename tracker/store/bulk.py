"""Thousands of rows in one statement."""

from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any

from sqlalchemy import JSON, Connection, Table, bindparam, insert


def insert_rows(connection: Connection, table: Table, rows: Sequence[Mapping[str, Any]]) -> None:
    """Inserts rows that all name the same columns."""
    if rows:
        insert_columns(connection, table, {name: [row[name] for row in rows] for name in rows[0]})


def insert_columns(connection: Connection, table: Table, columns: Mapping[str, Sequence[Any]]) -> None:
    """Inserts rows given column by column, all of one length.

    Every value is turned into what the database keeps by its column's own type, a column at a time: SQLAlchemy's way of
    a dictionary at a time takes several times as long for the twenty thousand offers of one sheet.
    """
    names = list(columns)
    statement = insert(table).values({name: bindparam(name) for name in names}).compile(dialect=connection.dialect)
    kept = {name: _converted(table, name, values, connection) for name, values in columns.items()}
    parameters: list[Any]
    if statement.positional:
        order = statement.positiontup or names
        parameters = list(zip(*(kept[name] for name in order), strict=True))
    else:
        parameters = [dict(zip(names, values, strict=True)) for values in zip(*kept.values(), strict=True)]
    connection.exec_driver_sql(str(statement), parameters)


def _converted(table: Table, name: str, values: Sequence[Any], connection: Connection) -> Sequence[Any]:
    kind = table.c[name].type.dialect_impl(connection.dialect)
    convert = kind.bind_processor(connection.dialect)
    if convert is None:
        return values
    # A list repeats its weights and days from row to row, so each is turned once; JSON's lists can't be looked up.
    turned = convert if isinstance(kind, JSON) else lru_cache(_MOST_REMEMBERED)(convert)
    return [turned(value) for value in values]


_MOST_REMEMBERED = 4096
