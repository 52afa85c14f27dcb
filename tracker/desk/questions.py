"""Questions that imports left: answered later, from the kept file, and remembered for the vendor."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.take_in import Answered, Stored, TakenIn, answers_kept, keep_answers, read_bytes, settled_to_keep
from tracker.desk.trouble import Trouble
from tracker.intake.words.fold import fold
from tracker.trade.answer_words import answer_words
from tracker.trade.answers import objection
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

    Offers that were stored before keep their place. Trouble if the question is no longer open, or if this answer is
    not of its kind or does not settle it. `Stored.answered` is what take_back() needs.
    """
    asked = _find(desk, question_id)
    wrong = objection(asked.question.key, value, asked.question.choices)
    if wrong is not None:
        raise Trouble(wrong)
    before, taken = _read_with(desk, asked, value)
    if any(question.key == asked.question.key for question in taken.reading.questions):
        raise Trouble(f"“{value}” does not answer the question “{asked.question.text}”: choose another answer.")
    return _add_settled(desk, asked, taken, {asked.question.key: value} if remember else {}, before)


def answer_kept(desk: Desk, sha256: str, settled: Mapping[str, str]) -> int:
    """Gives answers to the open questions of a file that was taken in before; how many offers that let through.

    One for the whole file ('currency') answers every question of its kind that leaves it open; answers that no open
    question asks for are passed over. Trouble as answer().
    """
    from tracker.store import files

    with desk.store.reading() as connection:
        file_id = files.id_of(connection, sha256)
    offers = 0
    for key, value in settled.items():
        # Looked up anew for each: an answer may close other questions of its file.
        asked = [each for each in open_questions(desk) if each.file_id == file_id and _asks_for(each, key, value)]
        offers += sum(answer(desk, each.id, value).offers for each in asked)
    return offers


def _asks_for(asked: OpenQuestion, key: str, value: str) -> bool:
    question = asked.question
    if ":" in key or key == question.key:
        return fold(key) == fold(question.key)
    return question.key.partition(":")[0] == key and objection(key, value, question.choices) is None


def take_back(desk: Desk, answered: Answered) -> None:
    """Undoes an answer: the offers it let through go, its question is open again, and it is no longer remembered.

    Trouble, and nothing is changed, where another answer of the file came after it.
    """
    from tracker.store import files

    with desk.store.reading() as connection:
        name, received, now = files.answers_of(connection, answered.file_id)
        content = files.content(connection, answered.file_id)
    if now != answered.after:
        raise Trouble(f"“{answered.text}” can't be undone: the file was read with other answers since then.")
    # Without the desk, so that what is remembered now does not answer the question at once.
    taken = read_bytes(None, name, content, answers_kept(answered.before, received))
    with writing(desk, f"undone: {answered.text}") as pen:
        files.take_back(pen, answered.file_id, taken.reading, answered.before)
        pen.reverse(answered.remembered)


def answer_again(desk: Desk, answered: Answered) -> Stored:
    """Gives an answer anew that was taken back."""
    for asked in open_questions(desk):
        if (asked.file_id, asked.question.key) == (answered.file_id, answered.key):
            return answer(desk, asked.id, answered.value, bool(answered.remembered))
    raise Trouble("That question is no longer open: look at the list again.")


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
    what = answer_words(known.key, known.value, known.words)
    text = f"forgot for {known.vendor} that {what}; offers already stored stay as they are"
    with writing(desk, text) as pen:
        change = pen.delete(answers, answer_id)
    return Edit(text, (change,))


def _find(desk: Desk, question_id: int) -> OpenQuestion:
    for asked in open_questions(desk):
        if asked.id == question_id:
            return asked
    raise Trouble("That question is no longer open: look at the list again.")


def _read_with(desk: Desk, asked: OpenQuestion, value: str) -> tuple[dict[str, str], TakenIn]:
    """The answers that a kept file was read with, and a new reading with one more."""
    from tracker.store import files

    with desk.store.reading() as connection:
        name, received, before = files.answers_of(connection, asked.file_id)
        content = files.content(connection, asked.file_id)
    kept = answers_kept(before, received)
    answers = replace(kept, settled={**kept.settled, asked.question.key: value})
    return before, read_bytes(desk, name, content, answers)


def _add_settled(
    desk: Desk, asked: OpenQuestion, taken: TakenIn, remember: dict[str, str], before: dict[str, str]
) -> Stored:
    from tracker.store import files

    reading, key, after = taken.reading, asked.question.key, settled_to_keep(taken.answers)
    text = f"answered: {asked.question.text}"
    with writing(desk, text) as pen:
        added = files.add_settled(pen, asked.file_id, reading, after)
        entries = keep_answers(pen, _named(reading, asked.vendor), remember, {key: asked.question.words})
    waiting = sum(line.state is not State.ACCEPTED for line in reading.lines)
    answered = Answered(text, asked.file_id, key, taken.answers.settled[key], before, after, entries)
    return Stored(asked.file_id, added, waiting, len(reading.questions), answered=answered)


def _named(reading: Reading, vendor: str | None) -> Reading:
    return reading if reading.vendor else replace(reading, vendor=vendor)
