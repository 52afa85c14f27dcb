"""One file that is being taken in: what was read so far and what was answered."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tracker.trade.offer import Answers, State
from tracker.window.door import Door
from tracker.window.errors import sentence_for
from tracker.window.look.figures import counted, date_text

if TYPE_CHECKING:
    from tracker.desk.take_in import TakenIn


@dataclass
class FileAtHand:
    """`given` are the answers of this session by question key; `before` those that the vendor's
    earlier answers gave; `taken` and `workbook` are None until read."""

    path: Path
    given: dict[str, str] = field(default_factory=dict)
    taken: TakenIn | None = None
    workbook: Any = None
    before: Answers = field(default_factory=Answers)
    why_no_sheet: str = ""
    stored: bool = False

    @property
    def accepted(self) -> int:
        """How many offers would be taken in now."""
        if self.taken is None or self.taken.imported_on is not None or self.stored:
            return 0
        return sum(line.state is State.ACCEPTED for line in self.taken.reading.lines)

    @property
    def short(self) -> str:
        """'tolmere.xlsx: 42 offers, 2 questions'."""
        if self.taken is None:
            return f"{self.path.name}: reading…"
        reading = self.taken.reading
        if reading.unreadable:
            return f"{self.path.name}: can't be read"
        if self.stored or self.taken.imported_on is not None:
            return f"{self.path.name}: taken in"
        asked = f", {counted(len(reading.questions), 'question')}" if reading.questions else ""
        return f"{self.path.name}: {counted(self.accepted, 'offer')}{asked}"

    def whose(self) -> str:
        """'From Tolmere Board'; where the lines name several vendors, how many."""
        if self.taken is None:
            return ""
        reading = self.taken.reading
        vendors = {reading.vendor} if reading.vendor else {line.offer.vendor for line in reading.lines} - {None}
        if not vendors:
            return "The vendor is not known yet." if reading.lines else ""
        return f"From {vendors.pop()}" if len(vendors) == 1 else f"From {len(vendors)} vendors"

    def summary(self) -> str:
        """What the reading came to, in one or two sentences."""
        if self.taken is None:
            return "Reading the file…"
        reading = self.taken.reading
        if reading.unreadable:
            return reading.unreadable
        if self.taken.imported_on is not None:
            return f"This very file was taken in on {date_text(self.taken.imported_on)}: nothing would be added."
        states = [line.state for line in reading.lines]
        if not states:
            return "No prices were found. " + " ".join(
                f"{passed.sheet or 'The file'}: {passed.why}." for passed in reading.passed_over[:3]
            )
        parts = [f"{counted(states.count(State.ACCEPTED), 'offer')} understood"]
        if held := states.count(State.QUESTION):
            parts.append(f"{held:,} held by {counted(len(reading.questions), 'question')}")
        if refused := states.count(State.REFUSED):
            parts.append(f"{refused:,} that can't be used")
        return ", ".join(parts) + "."


def read_with_sheet(door: Door, path: Path) -> tuple[TakenIn, Any, str]:
    """A first reading, with the sheet it was read from or why that can't be shown. Runs on the desk's thread."""
    taken = door.read(path)
    if taken.reading.unreadable:
        return taken, None, taken.reading.unreadable
    try:
        return taken, door.workbook(taken.content, taken.reading.file), ""
    except Exception as error:
        # The reading stands without its picture: better half a page than none.
        return taken, None, sentence_for(error)


def read_again(door: Door, file: FileAtHand, taken: TakenIn) -> tuple[TakenIn, Any, str]:
    """The same bytes with the answers given by now, on top of those that were remembered."""
    answers = Answers({**file.before.settled, **file.given}, file.before.received)
    return door.read_again(taken, answers), file.workbook, file.why_no_sheet
