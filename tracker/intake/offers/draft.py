"""An offer in the making: fields as they become known, what holds it back, what a person should read."""

from collections.abc import Iterable
from dataclasses import dataclass, field, fields
from datetime import date
from decimal import Decimal
from operator import attrgetter

from tracker.intake.grid import Cell
from tracker.intake.offers.answered import key_about
from tracker.intake.offers.notes.said import at
from tracker.intake.plain_lines import PlainLine
from tracker.intake.tables.table import Headings
from tracker.trade.basis import Basis
from tracker.trade.offer import Charge, Evidence, GrammageFrom, Note, NoteCode, Offer, RowEvidence, State

DECIMAL = "decimal"
"""The key of the question which sign is the decimal sign."""
PRICE = "price"
"""The kind of the question what the price of one cell is."""


Block = tuple[int, Headings | None]
"""A price's column, and the sub-headings above its row."""


@dataclass(slots=True)
class Draft:
    """One price cell's offer before it is final. `asked` holds the keys of the questions that hold it back.

    `label`, `row_key`, `block` and `row_words` say where it stands: its column's extra words, its row, its column and
    sub-heading, and the row's other cells. `amounts`: the readings of a price whose decimal sign nothing settles.
    `rival`: another price of the sheet for the very same offer, which says something else. `by_figure`: what was found
    of it rests on its own figure or on other rows, so that no other offer is like it (rows/alike_offers.py).
    `recap`: the words that call it a repeat of one that stands elsewhere. `parts`: the forms and markets of its titles.
    `sheet_weighed`: the size that its weight is told of, where nothing else tells one. `unread`: what is said of terms
    around it and gives none.
    """

    sheet: str
    cell: Cell
    label: str = ""
    row_key: int = 0
    block: Block = (0, None)
    row_words: str = ""
    vendor: str | None = None
    product: str = ""
    grade: str | None = None
    coated_sides: int | None = None
    caliper_um: Decimal | None = None
    grammage_gsm: Decimal | None = None
    grammage_from: GrammageFrom | None = None
    price: Decimal | None = None
    amounts: tuple[Decimal, ...] = ()
    currency: str | None = None
    basis: Basis | None = None
    sheet_mm: tuple[Decimal, Decimal] | None = None
    sheet_words: str | None = None
    sheet_weighed: tuple[Decimal, Decimal] | None = None
    from_kg: Decimal | None = None
    below_kg: Decimal | None = None
    minimum_kg: Decimal | None = None
    lead_days: tuple[int, int] | None = None
    valid_until: date | None = None
    delivered: bool | None = None
    charges: tuple[Charge, ...] = ()
    received: date | None = None
    valid_at_latest: date | None = None
    also: tuple[str, ...] = ()
    notes: list[Note] = field(default_factory=list)
    evidence: list[Evidence | RowEvidence] = field(default_factory=list)
    asked: list["Asked"] = field(default_factory=list)
    refused: bool = False
    by_figure: bool = False
    rival: "Draft | None" = field(default=None, repr=False)
    recap: str = ""
    parts: frozenset[str] = frozenset()
    unread: frozenset[str] = frozenset()

    @property
    def where(self) -> str:
        return at(self.cell)

    @property
    def price_key(self) -> str:
        """The key of the question what this very cell's price is."""
        return key_about(PRICE, f"{self.sheet}!{self.where}")

    @property
    def far_off(self) -> bool:
        """Whether its price is far outside what board usually costs."""
        return any(note.code is NoteCode.OUTSIDE_USUAL_RANGE for note in self.notes)

    def note(self, code: NoteCode, cell: str, text: str) -> None:
        """Tell something that does not hold the offer back."""
        self.notes.append(Note(code, cell, text))

    def ask(self, code: NoteCode, key: str, cell: str, text: str, words: str = "", options: Iterable[str] = ()) -> None:
        """Hold the offer back until a person has decided; `options`: the only values that the sheet leaves open."""
        self.notes.append(Note(code, cell, text))
        self.asked.append(Asked(key, code, text, words, tuple(options)))

    def settle(self, key: str) -> None:
        """The question of this key is answered by the sheet itself after all."""
        texts = {asked.text for asked in self.asked if asked.key == key}
        self.asked = [asked for asked in self.asked if asked.key != key]
        self.notes = [note for note in self.notes if note.text not in texts]

    def refuse(self, code: NoteCode, text: str) -> None:
        self.notes.append(Note(code, self.where, text))
        self.refused = True

    @property
    def state(self) -> State:
        if self.refused:
            return State.REFUSED
        return State.QUESTION if self.asked else State.ACCEPTED

    def plain(self) -> PlainLine:
        """The finished line, as what it is made of."""
        return (
            (self.sheet, self.where, self.cell.text, self.also),
            _of_offer(self),
            self.state,
            tuple(self.notes),
            tuple([part if isinstance(part, Evidence) else (part.said, part.row) for part in self.evidence]),
        )


_of_offer = attrgetter(*(each.name for each in fields(Offer) if each.name != "source"))
"""What a draft and an offer have in common, in the offer's order."""


@dataclass(frozen=True, slots=True)
class Asked:
    """Why a line is held back: the key its answer is remembered under, and the vendor's words in doubt.

    `options`: the values that can answer it, where the sheet leaves only some open.
    """

    key: str
    code: NoteCode
    text: str
    words: str = ""
    options: tuple[str, ...] = ()
