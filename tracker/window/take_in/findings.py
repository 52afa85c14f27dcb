"""What the screen needs to know about a reading, gathered off the interface: a sheet may have many thousand lines."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING

from tracker.desk.collecting import no_collecting
from tracker.desk.known_answers import asked_of
from tracker.trade.offer import Line, NoteCode, Question, Reading, State
from tracker.window.look.figures import date_text
from tracker.window.note_words import is_left_out, note_in_list
from tracker.window.take_in.cells import Use, place_of, uses_of
from tracker.window.take_in.earlier_marks import EarlierMarks, earlier_marks
from tracker.window.take_in.line_columns import own_notes, price_words
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.marks_understood import marks_understood
from tracker.window.take_in.passed_over import passed_words
from tracker.window.take_in.refused_lines import refused_lines, refused_words
from tracker.window.take_in.terms_told import terms_words

if TYPE_CHECKING:
    from tracker.desk.take_in import TakenIn

Place = tuple[int, int]
_FEWEST_ALIKE = 2
_LONGEST_PRICE = 26
"""A price that could not be read is shown as it was written, and may be a whole sentence."""


@dataclass(frozen=True, slots=True)
class Findings:
    """Of one reading: lines by state, who quotes, what each cell was used for, and which line stands in which cell.
    `told_once`: notes that all its lines share; `far_off`: the lines whose price lies far outside what board costs;
    `asked`: all that a person can settle, whether or not a line waits for it; `passed`: what holds no offers, in words;
    `sized`: an order size sets some lines apart; `longest_price`: the price that takes most room, as it is shown;
    `longest_note`: the most that is told of one line by itself; `marks`: by sheet, what marking by hand starts from;
    `earlier`: marks of the vendor's that may serve; `left_out`: lines that the user decided to do without; `until`: of
    those understood, how many end on which day; `terms`: what was understood of its terms, in words;
    `refused`: the lines that can't be used, and why;
    `notes`: what is told of one line by itself; `longest_board`: the name of a board that takes most room;
    `held`: the lines that a question holds."""

    states: Counter[State] = field(default_factory=Counter)
    vendors: frozenset[str] = frozenset()
    sheets: frozenset[str] = frozenset()
    noted: bool = False
    told_once: frozenset[str] = frozenset()
    uses: dict[str, dict[Place, Use]] = field(default_factory=dict)
    line_at: dict[tuple[str, Place], int] = field(default_factory=dict)
    layout_words: str = ""
    far_off: tuple[int, ...] = ()
    asked: tuple[Question, ...] = ()
    passed: str = ""
    sized: bool = False
    longest_price: str = ""
    longest_note: str = ""
    marks: dict[str, Marking] = field(default_factory=dict)
    earlier: EarlierMarks | None = None
    left_out: int = 0
    until: Counter[date] = field(default_factory=Counter)
    terms: str = ""
    refused: tuple[int, ...] = ()
    refused_words: str = ""
    notes: dict[int, str] = field(default_factory=dict)
    longest_board: str = ""
    held: tuple[int, ...] = ()

    def lapsed(self, on: date) -> int:
        """How many of the offers understood have lapsed by a day, by every reading of their last one."""
        return sum(count for until, count in self.until.items() if until < on)


def findings_of(taken: TakenIn) -> Findings:
    """Goes over all lines once. Runs on the desk's thread."""
    reading = taken.reading
    lines = reading.lines
    # The collector would walk a million cells while the interface waits for it.
    with no_collecting():
        return _gathered(taken, reading, lines)


def _gathered(taken: TakenIn, reading: Reading, lines: tuple[Line, ...]) -> Findings:
    told_once, asked, refused = _notes_of_all(lines), asked_of(reading), refused_lines(lines)
    sheets = frozenset(line.offer.source.sheet for line in lines)
    notes = {number: said for number, line in enumerate(lines) if (said := own_notes(line, told_once))}
    longest_note = max(notes.values(), key=len, default="")
    return Findings(
        Counter(line.state for line in lines),
        _vendors(reading),
        sheets,
        bool(longest_note),
        told_once,
        uses_of(lines, asked),
        _line_at(reading),
        _layout_words(taken),
        tuple(number for number, line in enumerate(lines) if _is_far_off(line)),
        asked,
        passed_words(reading.passed_over, len(sheets | {part.sheet for part in reading.passed_over}) > 1),
        any(line.offer.from_kg or line.offer.below_kg for line in lines),
        max(map(price_words, lines), key=len, default="")[:_LONGEST_PRICE],
        longest_note,
        marks_understood(() if taken.sheets is None else taken.sheets.grids, lines),
        _earlier(taken),
        sum(map(is_left_out, lines)),
        Counter(until for line in lines if line.state is State.ACCEPTED and (until := _last_day(line)) is not None),
        terms_words(lines),
        refused,
        refused_words(lines, refused),
        notes,
        max((line.offer.product for line in lines), key=len, default=""),
        tuple(number for number, line in enumerate(lines) if line.state is State.QUESTION),
    )


def _earlier(taken: TakenIn) -> EarlierMarks | None:
    """Only where no layout served: what is known by its header row needs none."""
    if taken.sheets is None or not taken.answers.layouts or _layout_words(taken):
        return None
    return earlier_marks(taken.sheets.grids, taken.reading.sha256, taken.answers.layouts)


def _last_day(line: Line) -> date | None:
    return line.offer.valid_until or line.offer.valid_at_latest


def _is_far_off(line: Line) -> bool:
    if line.state is State.REFUSED:
        return False
    return any(note.code is NoteCode.OUTSIDE_USUAL_RANGE for note in line.notes)


def _vendors(reading: Reading) -> frozenset[str]:
    named = {reading.vendor} if reading.vendor else {line.offer.vendor for line in reading.lines}
    return frozenset(name for name in named if name)


def _notes_of_all(lines: tuple[Line, ...]) -> frozenset[str]:
    """Notes that every line has which can be used at all: told in each row they would hide what sets it apart."""
    usable = [line for line in lines if line.state is not State.REFUSED]
    if len(usable) < _FEWEST_ALIKE:
        return frozenset()
    common = set(map(note_in_list, usable[0].notes))
    for line in usable:
        if not common:
            break
        common &= set(map(note_in_list, line.notes))
    return frozenset(common)


def _line_at(reading: Reading) -> dict[tuple[str, Place], int]:
    found: dict[tuple[str, Place], int] = {}
    for number, line in enumerate(reading.lines):
        source = line.offer.source
        for address in (source.cell, *source.also):
            place = place_of(address)
            if place is not None:
                found[source.sheet, place] = number
    return found


def _layout_words(taken: TakenIn) -> str:
    """'Read by the layout you marked on 25 Nov 2026.'; '' where the sheet was understood by itself."""
    if not taken.answers.layouts:
        return ""
    said = (piece for line in taken.reading.lines for piece in line.evidence if piece.field == "layout")
    used = next(said, None)
    if used is None:
        return ""
    return f"Read by the layout you marked on {date_text(date.fromisoformat(used.words.rpartition(' ')[2]))}."
