"""What an import left open: the questions a person must decide, and the lines that wait for them or were refused."""

import dataclasses
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, delete, func, select, update

from tracker.store.bulk import insert_rows
from tracker.store.offers import note_from_plain, note_to_plain
from tracker.store.tables import held_line, price_file, question, vendor
from tracker.trade.offer import Choice, Line, Note, NoteCode, Question, Reading, State


@dataclass(frozen=True, slots=True)
class OpenQuestion:
    """A question of a stored file. `lines`: how many of the file's lines are held back in all."""

    id: int
    file_id: int
    file: str
    vendor: str | None
    question: Question
    lines: int


@dataclass(frozen=True, slots=True)
class HeldLine:
    """A line that is not an offer yet, or never will be."""

    file_id: int
    file: str
    sheet: str
    cell: str
    state: State
    product: str
    as_written: str
    notes: tuple[Note, ...]


def add(connection: Connection, file_id: int, reading: Reading) -> None:
    """Stores a reading's questions and its lines that were not accepted."""
    asked = [_question_row(file_id, each) for each in reading.questions]
    waiting = [_line_row(file_id, line) for line in reading.lines if line.state is not State.ACCEPTED]
    insert_rows(connection, question, asked)
    insert_rows(connection, held_line, waiting)


def replace(connection: Connection, file_id: int, reading: Reading) -> None:
    """Puts what a new reading leaves open in place of what the last one did.

    A question that is still asked keeps its row: whoever looks at it can answer it, and one set aside stays so.
    """
    there = select(question.c.key, question.c.id).where(question.c.price_file_id == file_id)
    ids = {row.key: row.id for row in connection.execute(there)}
    still = {asked.key: asked for asked in reading.questions if asked.key in ids}
    for key, row_id in ids.items():
        if key in still:
            values = _question_row(file_id, still[key])
            connection.execute(update(question).where(question.c.id == row_id).values(**values))
        else:
            connection.execute(delete(question).where(question.c.id == row_id))
    connection.execute(delete(held_line).where(held_line.c.price_file_id == file_id))
    fresh = tuple(asked for asked in reading.questions if asked.key not in ids)
    add(connection, file_id, dataclasses.replace(reading, questions=fresh))


def open_questions(connection: Connection) -> tuple[OpenQuestion, ...]:
    """Questions neither answered nor set aside, of files that were not withdrawn, the oldest file first."""
    waiting = (
        select(func.count())
        .where(held_line.c.price_file_id == question.c.price_file_id, held_line.c.state == State.QUESTION.value)
        .scalar_subquery()
    )
    query = (
        select(question, price_file.c.name, vendor.c.name.label("vendor"), waiting.label("lines"))
        .join(price_file, price_file.c.id == question.c.price_file_id)
        .outerjoin(vendor, vendor.c.id == price_file.c.vendor_id)
        .where(question.c.set_aside_at.is_(None), price_file.c.withdrawn_at.is_(None))
        .order_by(question.c.id)
    )
    return tuple(
        OpenQuestion(row["id"], row["price_file_id"], row["name"], row["vendor"], _question(row), row["lines"])
        for row in connection.execute(query).mappings()
    )


def lines(connection: Connection, file_id: int) -> tuple[HeldLine, ...]:
    """The lines of a file that are not offers, in the sheet's order."""
    query = select(held_line, price_file.c.name).join(price_file).where(held_line.c.price_file_id == file_id)
    return tuple(
        HeldLine(
            file_id,
            row["name"],
            row["sheet"],
            row["cell"],
            State(row["state"]),
            row["product"],
            row["as_written"],
            tuple(note_from_plain(note) for note in row["notes"]),
        )
        for row in connection.execute(query.order_by(held_line.c.id)).mappings()
    )


def _question_row(file_id: int, asked: Question) -> dict[str, Any]:
    return {
        "price_file_id": file_id,
        "key": asked.key,
        "code": asked.code.value,
        "text": asked.text,
        "words": asked.words,
        "choices": [[choice.value, choice.label] for choice in asked.choices],
        "cells": [list(cell) for cell in asked.cells],
    }


def _question(row: Any) -> Question:
    return Question(
        row["key"],
        NoteCode(row["code"]),
        row["text"],
        row["words"],
        tuple(Choice(value, label) for value, label in row["choices"]),
        tuple((sheet, cell) for sheet, cell in row["cells"]),
    )


def _line_row(file_id: int, line: Line) -> dict[str, Any]:
    source = line.offer.source
    return {
        "price_file_id": file_id,
        "sheet": source.sheet,
        "cell": source.cell,
        "state": line.state.value,
        "product": line.offer.product,
        "as_written": source.as_written,
        "notes": [note_to_plain(note) for note in line.notes],
    }
