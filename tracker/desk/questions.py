"""Questions that imports left: answered later, from the kept file, and remembered for the vendor."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.take_in import Stored, TakenIn, answers_kept, keep_answers, read_bytes, settled_to_keep
from tracker.desk.trouble import Trouble
from tracker.trade.offer import Reading, State

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.answers import Remembered as Remembered
    from tracker.store.held import OpenQuestion as OpenQuestion


def open_questions(desk: Desk) -> tuple[OpenQuestion, ...]:
    """What waits for a decision, the oldest file first."""
    from tracker.store import held

    with desk.store.reading() as connection:
        return held.open_questions(connection)


def answer(desk: Desk, question_id: int, value: str, remember: bool = True) -> Stored:
    """Reads the kept file again with the answer and adds the offers that it settles; other questions stay open.

    Offers that were stored before keep their place. Trouble if the question is no longer open, or if this answer does
    not settle it.
    """
    asked = _find(desk, question_id)
    taken = _read_with(desk, asked, value)
    if any(question.key == asked.question.key for question in taken.reading.questions):
        raise Trouble(f"“{value}” does not answer the question “{asked.question.text}”: choose another answer.")
    return _add_settled(desk, asked, taken, {asked.question.key: value} if remember else {})


def set_aside(desk: Desk, question_id: int) -> Edit:
    """The question is asked no more; its lines stay unused."""
    from tracker.store.tables import question

    asked = _find(desk, question_id)
    text = f"set aside: {asked.question.text}"
    with writing(desk, text) as pen:
        change = pen.update(question, question_id, {"set_aside_at": datetime.now(UTC)})
    return Edit(text, (change,))


def remembered(desk: Desk, vendor: str | None = None) -> tuple[Remembered, ...]:
    """Answers kept for a vendor, or for all, with the words they answered."""
    from tracker.store import answers

    with desk.store.reading() as connection:
        return answers.listing(connection, vendor)


def forget(desk: Desk, answer_id: int) -> Edit:
    """An answer is no longer used for the vendor's next sheets; what was read with it stays."""
    from tracker.store.tables import answer as answers

    known = next((each for each in remembered(desk) if each.id == answer_id), None)
    if known is None:
        raise Trouble("That answer is forgotten already.")
    text = f"forgot what “{known.key}” means for {known.vendor}"
    with writing(desk, text) as pen:
        change = pen.delete(answers, answer_id)
    return Edit(text, (change,))


def _find(desk: Desk, question_id: int) -> OpenQuestion:
    for asked in open_questions(desk):
        if asked.id == question_id:
            return asked
    raise Trouble("That question is no longer open: look at the list again.")


def _read_with(desk: Desk, asked: OpenQuestion, value: str) -> TakenIn:
    from tracker.store import files

    with desk.store.reading() as connection:
        name, received, earlier = files.answers_of(connection, asked.file_id)
        content = files.content(connection, asked.file_id)
    kept = answers_kept(earlier, received)
    answers = replace(kept, settled={**kept.settled, asked.question.key: value})
    return read_bytes(desk, name, content, answers)


def _add_settled(desk: Desk, asked: OpenQuestion, taken: TakenIn, remember: dict[str, str]) -> Stored:
    from tracker.store import files

    reading = taken.reading
    with writing(desk, f"answered: {asked.question.text}") as pen:
        added = files.add_settled(pen, asked.file_id, reading, settled_to_keep(taken.answers))
        keep_answers(pen, _named(reading, asked.vendor), remember, {asked.question.key: asked.question.words})
    waiting = sum(line.state is not State.ACCEPTED for line in reading.lines)
    return Stored(asked.file_id, added, waiting, len(reading.questions))


def _named(reading: Reading, vendor: str | None) -> Reading:
    return reading if reading.vendor else replace(reading, vendor=vendor)
