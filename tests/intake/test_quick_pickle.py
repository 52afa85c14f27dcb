import gc
import pickle
from dataclasses import dataclass, field
from decimal import Decimal

from tracker.intake.grid import Cell, Grid, MergedRange, Workbook
from tracker.intake.quick_pickle import packed, unpacked
from tracker.trade.offer import Evidence, Line, Note, NoteCode, Offer, Reading, Source, State


@dataclass(frozen=True, slots=True)
class One:
    only: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Derived:
    given: int
    doubled: int = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "doubled", 2 * self.given)


@dataclass
class Plain:
    words: str


@dataclass(frozen=True, slots=True)
class Named:
    first: int
    second: int = field(default=0, kw_only=True)


def reading() -> Reading:
    offer = Offer(Source("Offer", "C5", "$905/ST"), "Ferrowick Mills", "SBS C1S", price=Decimal("905"), currency="USD")
    note = Note(NoteCode.HIDDEN, "C5", "the row is hidden")
    line = Line(offer, State.ACCEPTED, (note,), (Evidence("price", "cell", "$905/ST"),))
    return Reading("offer.xlsx", "0" * 64, None, "Ferrowick Mills", (line, line))


def test_what_is_packed_comes_back_equal():
    book = Workbook("a", "b", "csv", (Grid("", {(0, 0): Cell(0, 0, "x", "x")}, (MergedRange(0, 0, 1, 1),)),))
    for item in (reading(), book, One((1, 2)), One(()), Derived(4), Plain("x"), Named(1, second=2), [1, "a", None]):
        assert unpacked(packed(item)) == item


def test_what_is_shared_stays_shared():
    lines = unpacked(packed(reading())).lines
    assert lines[0] is lines[1]


def test_it_is_ordinary_pickle():
    assert pickle.loads(packed(reading())) == reading()


def test_the_collector_is_left_as_it_was():
    assert gc.isenabled()
    unpacked(packed(1))
    assert gc.isenabled()
    gc.disable()
    try:
        unpacked(packed(1))
        assert not gc.isenabled()
    finally:
        gc.enable()
