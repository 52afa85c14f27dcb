"""Offers and readings for the tests of the store and the desk; every name is invented."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from decimal import Decimal
from hashlib import sha256

from tracker.trade.basis import Basis
from tracker.trade.offer import (
    Charge,
    Choice,
    Evidence,
    GrammageFrom,
    Line,
    Note,
    NoteCode,
    Offer,
    Question,
    Reading,
    Source,
    State,
)

VENDOR = "Quillmere Board Works"
DAY = date(2026, 11, 20)

FULL = Offer(
    source=Source("Prices", "D5", "1,240.50", ("E5", "F5")),
    vendor=None,
    product="Fenlight White",
    grade="SBS",
    coated_sides=1,
    caliper_um=Decimal("457.2"),
    grammage_gsm=Decimal("380.829355638"),
    grammage_from=GrammageFrom.QUOTED,
    price=Decimal("1240.50"),
    currency="USD",
    basis=Basis.SHORT_TON,
    sheet_mm=(Decimal("711.2"), Decimal("1016")),
    from_kg=Decimal("4535.9237"),
    below_kg=Decimal("18143.6948"),
    minimum_kg=Decimal("907.18474"),
    lead_days=(28, 42),
    valid_until=date(2026, 12, 31),
    delivered=False,
    charges=(
        Charge("Freight", Decimal("1.85"), "USD", Basis.CWT, freight=True),
        Charge("Energy", Decimal("3.5"), None, None),
    ),
    received=date(2026, 11, 3),
)


def line(cell: str = "D5", **changes: object) -> Line:
    """An accepted line like FULL, in another cell and with these fields changed."""
    offer = replace(FULL, source=replace(FULL.source, cell=cell), **changes)
    evidence = (Evidence("price", cell, "1,240.50"), Evidence("basis", "D3", "$/ton", "a footnote"))
    return Line(offer, State.ACCEPTED, (Note(NoteCode.HIDDEN, cell, "The row is hidden."),), evidence)


def held(cell: str = "D9") -> Line:
    """A line that waits for the answer to TON."""
    offer = replace(FULL, source=replace(FULL.source, cell=cell), basis=None, charges=())
    return Line(offer, State.QUESTION, (Note(NoteCode.BASIS_UNKNOWN, cell, "Which ton?"),))


TON = Question(
    "ton",
    NoteCode.BASIS_UNKNOWN,
    "Is 'ton' a short ton or a tonne in this file?",
    "ton",
    (Choice("short", "short ton"), Choice("metric", "tonne")),
    (("Prices", "D9"),),
)


def reading(
    *lines: Line, content: bytes = b"a sheet", vendor: str | None = VENDOR, questions: Iterable[Question] = ()
) -> Reading:
    """A reading of a file with this content."""
    return Reading("list.xlsx", sha256(content).hexdigest(), None, vendor, lines, (), tuple(questions))
