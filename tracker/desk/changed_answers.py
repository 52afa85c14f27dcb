"""A remembered answer that was wrong is said anew, and what was stored by it follows."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from tracker.desk.edits import writing
from tracker.desk.files import files as all_files
from tracker.desk.questions import remembered
from tracker.desk.take_in import answers_kept, read_bytes, settled_to_keep
from tracker.desk.trouble import Trouble
from tracker.trade.answer_words import answer_words
from tracker.trade.answers import objection
from tracker.trade.offer import Line, Reading, State

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.answers import Remembered


@dataclass(frozen=True, slots=True)
class ChangedAnswer:
    """A remembered answer said anew: change_answer(desk, answer_id, was) turns it back. `offers`: how many stored
    offers followed it."""

    text: str
    answer_id: int
    was: str
    value: str
    offers: int


@dataclass(frozen=True, slots=True)
class _FileAnew:
    """A kept file read with the new answer; `same`: sheets and cells of the offers that the answer leaves as they were,
    `offers`: how many it does not."""

    file_id: int
    reading: Reading
    answers: Mapping[str, str]
    same: frozenset[tuple[str, str]]
    offers: int


def change_answer(desk: Desk, answer_id: int, value: str) -> ChangedAnswer:
    """Remembers another value; the vendor's files that were read with the old one, and are not withdrawn, follow.

    Of their offers only those change that the answer takes part in. Trouble, and nothing is changed, where the answer
    is forgotten, `value` is not of its kind, or a file read with it leaves the question open again.
    """
    known = next((each for each in remembered(desk) if each.id == answer_id), None)
    if known is None:
        raise Trouble("That answer is forgotten already.")
    wrong = objection(known.key, value)
    if wrong is not None:
        raise Trouble(wrong)
    anew = _read_anew(desk, known, value)
    followed = sum(each.offers for each in anew)
    what = answer_words(known.key, value, known.words)
    follow = "1 stored offer follows" if followed == 1 else f"{followed:,} stored offers follow"
    text = f"changed for {known.vendor}: {what}; {follow}"
    _write(desk, known, value, anew, text)
    return ChangedAnswer(text, answer_id, known.value, value, followed)


def _read_anew(desk: Desk, known: Remembered, value: str) -> list[_FileAnew]:
    """The vendor's files that the old answer took part in, read with the new one."""
    from tracker.store import files

    read = []
    for file in all_files(desk):
        if file.vendor != known.vendor or file.withdrawn:
            continue
        with desk.store.reading() as connection:
            name, received, kept = files.answers_of(connection, file.id)
            content = files.content(connection, file.id)
        if kept.get(known.key) != known.value:
            continue
        answers = answers_kept(kept, received)
        other = replace(answers, settled={**answers.settled, known.key: value})
        # Read twice, so that nothing changes but by the answer: the reader may have learned more since.
        before = read_bytes(None, name, content, answers).reading
        after = read_bytes(None, name, content, other).reading
        if any(question.key == known.key for question in after.questions):
            raise Trouble(f"“{value}” does not answer the question in {name}: choose another answer.")
        read.append(_compared(file.id, before, after, settled_to_keep(other)))
    return read


def _compared(file_id: int, before: Reading, after: Reading, answers: Mapping[str, str]) -> _FileAnew:
    old, new = _accepted(before), _accepted(after)
    same = frozenset(cell for cell, line in new.items() if cell in old and old[cell].offer == line.offer)
    return _FileAnew(file_id, after, answers, same, len((old.keys() | new.keys()) - same))


def _accepted(reading: Reading) -> dict[tuple[str, str], Line]:
    return {
        (line.offer.source.sheet, line.offer.source.cell): line
        for line in reading.lines
        if line.state is State.ACCEPTED
    }


def _write(desk: Desk, known: Remembered, value: str, anew: list[_FileAnew], text: str) -> None:
    from tracker.store import answers, files

    with writing(desk, text) as pen:
        answers.remember(pen, known.vendor, known.key, value, known.words)
        for each in anew:
            files.replace_offers(pen, each.file_id, each.reading, each.answers, each.same)
