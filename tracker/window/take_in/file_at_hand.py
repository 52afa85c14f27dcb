"""One file that is being taken in: what was read so far and what was answered."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from itertools import groupby
from pathlib import Path
from threading import Event
from typing import TYPE_CHECKING, Any

from tracker.trade.layout import Layout
from tracker.trade.offer import LEAVE_OUT, Answers, Reading, State
from tracker.window.door import Door
from tracker.window.look.figures import counted, date_text
from tracker.window.take_in.findings import Findings, findings_of
from tracker.window.take_in.marking import Marking

if TYPE_CHECKING:
    from tracker.desk.take_in import TakenIn


_LONGEST_NAME = 60
_NO_PRICES, _MOST_TOLD = "no prices", 3


@dataclass(eq=False)
class FileAtHand:
    """`given` are the answers of this session by question key, `words` what of the sheet each of them answered, `anew`
    the keys that are asked about whatever is remembered; `marking` is the table as it was marked by hand, if it was.
    `unlaid`: read without any remembered layout. `nameless`: to be taken in although nobody is named as its vendor.
    `vendor_wanted`: without lines to be taken in, the user wants to say whose it is all the same.
    `kept`: the sha256 of a stored file that is read from the database, to be stored in place of what it came to, and
    `said_before` the answers that it was stored with.
    `waits`: the window was closed over it; `let_go`: it was left, and is no longer among those being taken in.
    `taken` is None until read; `stop`, once set, ends the reading, of which `share` is done (from 0 to 1)."""

    path: Path
    given: dict[str, str] = field(default_factory=dict)
    words: dict[str, str] = field(default_factory=dict)
    anew: set[str] = field(default_factory=set)
    marking: Marking | None = None
    unlaid: bool = False
    nameless: bool = False
    vendor_wanted: bool = False
    kept: str = ""
    said_before: dict[str, str] = field(default_factory=dict)
    taken: TakenIn | None = None
    found: Findings = field(default_factory=Findings)
    stored: bool = False
    waits: bool = False
    let_go: bool = False
    stop: Event = field(default_factory=Event)
    share: float = 0.0

    def hear(self, share: float) -> None:
        """How much of it is read. Called from the desk's thread."""
        self.share = share

    @property
    def workbook(self) -> Any:
        """The file's sheets as the vendor sent them, None while there are none to show."""
        return None if self.taken is None else self.taken.sheets

    @property
    def first_line(self) -> str:
        """The words that stand alone in the first filled row, as a letterhead does, else the first of the short texts
        around the tables that have no figure in them; '' where there are none."""
        for grid in self._grids()[:1]:
            # Grids iterate row by row: a long one is not walked to its end.
            filled = groupby(grid.cells.items(), key=lambda item: item[0][0])
            words = [cell.text.strip() for _, cell in next(filled, (0, ()))[1] if cell.text.strip()]
            if len(words) == 1 and any(map(str.isalpha, words[0])) and len(words[0]) <= _LONGEST_NAME:
                return " ".join(words[0].split())
        around = () if self.taken is None else self.taken.reading.letterhead
        return next((text for text in around if len(text) <= _LONGEST_NAME and not any(map(str.isdigit, text))), "")

    def answers(self, today: date) -> Answers:
        """All that was settled here; what is remembered for the vendor the desk adds."""
        received = None if self.taken is None else self.taken.answers.received
        return Answers(dict(self.given), received, self._layouts(today), frozenset(self.anew))

    def _layouts(self, today: date) -> tuple[Layout, ...] | None:
        grid = next((grid for grid in self._grids() if self.marking and grid.sheet == self.marking.sheet), None)
        if grid is not None and self.marking is not None and self.taken is not None:
            layout = self.marking.layout(grid, self.taken.reading.sha256, today)
            if layout is not None:
                return (layout,)
        return () if self.unlaid else None

    def _grids(self) -> tuple[Any, ...]:
        return () if self.workbook is None else self.workbook.grids

    def take_over(self, taken: TakenIn) -> None:
        """Takes up what a kept file was stored with: its answers to what it leaves open, and its marks."""
        settled, asked = taken.answers.settled, {each.key: each.words for each in self.found.asked}
        about = {key for key, value in settled.items() if key in asked or key == "vendor" or value == LEAVE_OUT}
        self.said_before = {key: value for key, value in settled.items() if key in about}
        self.given.update(self.said_before)
        self.words.update(asked)
        own = (layout for layout in taken.answers.layouts or () if layout.of_file == taken.reading.sha256)
        self.marking = next(map(Marking.of, own), None)

    @property
    def to_remember(self) -> dict[str, str]:
        """What storing it is to keep for the vendor: nothing that was only taken over."""
        return {key: value for key, value in self.given.items() if self.said_before.get(key) != value}

    @property
    def accepted(self) -> int:
        """How many offers would be taken in now."""
        return 0 if self.taken is None or self._done else self.found.states[State.ACCEPTED]

    def lapsed(self, on: date) -> int:
        """How many of those offers have lapsed by a day."""
        return self.found.lapsed(on) if self.accepted else 0

    @property
    def imported_on(self) -> date | None:
        """The day it was taken in, where taking it in again would add nothing."""
        return None if self.taken is None or self.kept else self.taken.imported_on

    @property
    def _done(self) -> bool:
        return self.stored or self.imported_on is not None

    @property
    def begun(self) -> bool:
        """Whether anything was said about it that leaving it would lose."""
        said = self.given != self.said_before or self.anew or self.nameless or (self.marking and not self.kept)
        return bool(said) and not self.stored

    @property
    def unsettled(self) -> bool:
        """Whether there is still something to decide about it: it is being read, or has lines to take in or to ask."""
        if self.taken is None:
            return True
        if self._done:
            return False
        return bool(self.found.states[State.ACCEPTED] or self.found.states[State.QUESTION])

    @property
    def is_unreadable(self) -> bool:
        """Whether it was read, to no avail."""
        return self.taken is not None and self.taken.reading.unreadable is not None

    @property
    def is_blank(self) -> bool:
        """Whether there is no cell with anything in it."""
        return self.workbook is not None and not any(grid.cells for grid in self._grids())

    @property
    def lacks_vendor(self) -> bool:
        """Whether neither the sheet nor the user names a vendor of any line. Of a blank sheet nobody needs to know."""
        if self.taken is None or self.is_unreadable or self.is_blank:
            return False
        return not self.found.vendors

    @property
    def may_name_vendor(self) -> bool:
        """Whether nobody is asked whose it is, since nothing is to be taken in, but may say so: the vendor's earlier
        marks may serve it."""
        nothing = self.taken is not None and not self.taken.reading.lines
        return nothing and self.lacks_vendor and not self.vendor_wanted

    @property
    def ready(self) -> int:
        """How many offers can be taken in: none while it is open whose they are."""
        return 0 if self.lacks_vendor and not self.nameless else self.accepted

    @property
    def short(self) -> str:
        """'tolmere.xlsx: 42 offers, 2 questions'."""
        if self.taken is None:
            return f"{self.path.name}: reading…"
        reading = self.taken.reading
        if reading.unreadable:
            return f"{self.path.name}: can't be read"
        if self._done:
            return f"{self.path.name}: taken in"
        asked = f", {counted(len(reading.questions), 'question')}" if reading.questions else ""
        return f"{self.path.name}: {counted(self.accepted, 'offer')}{asked}"

    def whose(self) -> str:
        """'From Tolmere Board, dated 9 Nov 2026'; where the lines name several vendors, how many."""
        vendors = self.found.vendors
        if not vendors:
            nobody = self.lacks_vendor and (self.nameless or self.may_name_vendor)
            return "Nobody is named as its vendor." if nobody else ""
        dated = None if self.taken is None else self.taken.reading.dated
        named = next(iter(vendors)) if len(vendors) == 1 else f"{len(vendors)} vendors"
        return f"From {named}" + (f", dated {date_text(dated)}" if dated is not None else "")

    def summary(self) -> str:
        """What the reading came to, in one or two sentences."""
        if self.taken is None:
            return "Reading the file…"
        reading = self.taken.reading
        if reading.unreadable:
            return reading.unreadable
        if self.imported_on is not None:
            return f"This very file was taken in on {date_text(self.imported_on)}: nothing would be added."
        states = self.found.states
        if self.is_blank:
            return (
                "Nothing stands in this file. If the program it comes from shows prices in it, save it there anew; "
                "else ask the vendor for it."
            )
        if not reading.lines:
            return f"No prices were found.{_why_none(reading)} If it has some, mark its table by hand."
        parts = [f"{counted(states[State.ACCEPTED], 'offer')} understood"]
        if held := states[State.QUESTION]:
            parts.append(f"{held:,} held by {counted(len(reading.questions), 'question')}")
        if left_out := self.found.left_out:
            parts.append(f"{left_out:,} left out")
        if refused := states[State.REFUSED] - left_out:
            parts.append(f"{refused:,} that can't be used")
        return ", ".join(parts) + "."


def _why_none(reading: Reading) -> str:
    """' Tab “Terms”: an index of prices.'; nothing where no more is known than that there are none."""
    told = [part for part in reading.passed_over if part.why != _NO_PRICES][:_MOST_TOLD]
    return "".join(f" {f'Tab “{part.sheet}”' if part.sheet else 'The file'}: {part.why}." for part in told)


def lapsed_words(gone: int, of: int) -> str:
    """'All 10 have lapsed: Quotes shows them among “lapsed and replaced ones too”.'"""
    have = "It has lapsed" if of == 1 else f"All {of:,} have lapsed" if gone == of else f"{gone:,} of them have lapsed"
    have = have.replace("1 of them have", "1 of them has") if gone == 1 else have
    return f"{have}: Quotes shows {'it' if gone == 1 else 'them'} among “lapsed and replaced ones too”."


def in_hand(now: list[FileAtHand], before: list[FileAtHand]) -> list[FileAtHand]:
    """`now`, the files being taken in from here on; those of `before` that are not among them are let go of."""
    for each in before:
        each.let_go = True
    for each in now:
        each.let_go = False
    return now


def read_file(door: Door, file: FileAtHand) -> tuple[TakenIn, Findings]:
    """A first reading, with the sheets it was read from. Runs on the desk's thread."""
    taken = door.read_kept(file.kept, file.stop, file.hear) if file.kept else door.read(file.path, file.stop, file.hear)
    return taken, findings_of(taken)


def read_again(door: Door, file: FileAtHand, taken: TakenIn, today: date) -> tuple[TakenIn, Findings]:
    """The same bytes with what was answered and marked by now."""
    again = door.read_again(taken, file.answers(today), file.stop, file.hear)
    return again, findings_of(again)
