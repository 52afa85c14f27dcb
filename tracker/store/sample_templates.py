"""Requests that are made often, under names."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import sample_template


@dataclass(frozen=True, slots=True)
class StoredTemplate:
    """A name, and what is asked for as the desk wrote it down."""

    id: int
    name: str
    contents: dict[str, Any]
    made_by: str


def put(pen: Pen, name: str, contents: Mapping[str, Any]) -> int:
    """Keeps a template, in the place of one of the same name; gives the log's entry."""
    values = {
        "name": name,
        "folded": name.casefold(),
        "contents": dict(contents),
        "made_at": datetime.now(UTC),
        "made_by": pen.who,
    }
    same = sample_template.c.folded == name.casefold()
    there = pen.connection.execute(select(sample_template.c.id).where(same)).scalar()
    if there is not None:
        return pen.update(sample_template, there, values)
    return pen.insert(sample_template, values)[1]


def remove(pen: Pen, template_id: int) -> int:
    """Forgets a template; gives the log's entry."""
    return pen.delete(sample_template, template_id)


def listing(connection: Connection) -> tuple[StoredTemplate, ...]:
    """Every template by name."""
    rows = connection.execute(select(sample_template).order_by(sample_template.c.folded)).mappings()
    return tuple(StoredTemplate(row["id"], row["name"], dict(row["contents"]), row["made_by"]) for row in rows)
