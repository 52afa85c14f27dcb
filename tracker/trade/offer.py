"""An offer: one price for one board at one order size, as a vendor wrote it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import overload

from tracker.trade.basis import Basis, BoardMeasure
from tracker.trade.layout import Layout


class State(StrEnum):
    """How far an offer is known: accepted, or a person is asked, or it can't be used."""

    ACCEPTED = "accepted"
    QUESTION = "question"
    REFUSED = "refused"


class NoteCode(StrEnum):
    GRADE_UNKNOWN = "grade-unknown"
    CURRENCY_UNKNOWN = "currency-unknown"
    BASIS_UNKNOWN = "basis-unknown"
    WEIGHT_BASIS_UNKNOWN = "weight-basis-unknown"
    CALIPER_UNKNOWN = "caliper-unknown"
    NUMBER_AMBIGUOUS = "number-ambiguous"
    DATE_AMBIGUOUS = "date-ambiguous"
    PRICES_DISAGREE = "prices-disagree"
    FORMULA_WITHOUT_VALUE = "formula-without-value"
    ERROR_CELL = "error-cell"
    PRICE_NOT_POSITIVE = "price-not-positive"
    HIDDEN = "hidden"
    WEIGHT_ESTIMATED = "weight-estimated"
    WEIGHT_IMPLAUSIBLE = "weight-implausible"
    ALREADY_IMPORTED = "already-imported"
    LEAD_TIME_UNREAD = "lead-time-unread"
    VALIDITY_UNREAD = "validity-unread"
    BRACKET_UNREAD = "bracket-unread"
    OUTSIDE_USUAL_RANGE = "outside-usual-range"


class GrammageFrom(StrEnum):
    QUOTED = "quoted"
    ESTIMATED = "estimated"


@dataclass(frozen=True, slots=True)
class Note:
    """What a person should know about one line, in plain words, with the cell it was seen in."""

    code: NoteCode
    cell: str
    text: str


OPEN = "XXX"
"""ISO 4217's code for 'no currency': no price is in it, so a charge in it can be added to none."""


@dataclass(frozen=True, slots=True)
class Charge:
    """Something quoted beside the price. `basis` None means a percentage of the price; else `currency` is set.

    `freight` says that this charge brings the board to the buyer's dock. `currency` OPEN: the sheet names the charge
    but does not say for certain what it comes to, so that the delivered cost is not known.
    """

    label: str
    price: Decimal
    currency: str | None
    basis: Basis | None
    freight: bool = False


@dataclass(frozen=True, slots=True)
class Source:
    """Where a price stands: sheet name ('' for CSV), A1 address, the cell's own text."""

    sheet: str
    cell: str
    as_written: str = ""
    also: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Offer:
    """One price as read. None means the sheet does not say (or, while a question is open, does not say for certain).

    caliper_um in µm, grammage_gsm in g/m², masses in kg, lead_days as (shortest, longest) calendar days,
    price in units of `currency` per `basis`. `from_kg` is inclusive, `below_kg` exclusive; None is open.
    `valid_at_latest`: where the last day can be read two ways and `valid_until` is open, the later of the two.
    """

    source: Source
    vendor: str | None = None
    product: str = ""
    grade: str | None = None
    coated_sides: int | None = None
    caliper_um: Decimal | None = None
    grammage_gsm: Decimal | None = None
    grammage_from: GrammageFrom | None = None
    price: Decimal | None = None
    currency: str | None = None
    basis: Basis | None = None
    sheet_mm: tuple[Decimal, Decimal] | None = None
    from_kg: Decimal | None = None
    below_kg: Decimal | None = None
    minimum_kg: Decimal | None = None
    lead_days: tuple[int, int] | None = None
    valid_until: date | None = None
    delivered: bool | None = None
    charges: tuple[Charge, ...] = ()
    received: date | None = None
    valid_at_latest: date | None = None

    @property
    def measure(self) -> BoardMeasure:
        """What converts between weight and area of this board."""
        return BoardMeasure(self.grammage_gsm, self.sheet_mm)


@dataclass(frozen=True, slots=True)
class Evidence:
    """What said a field's value: the cell (or header, format, note, remembered answer) and its words."""

    field: str
    said_by: str
    words: str
    against: str = ""


@dataclass(frozen=True, slots=True)
class RowEvidence:
    """What the cells of one row said, with `said` shared by all rows that say the same.

    A piece that is marked True names only the column ('F'); the row, as a person counts, makes it a cell.
    """

    said: tuple[tuple[Evidence, bool], ...]
    row: int

    def pieces(self) -> Iterator[Evidence]:
        for piece, own in self.said:
            if own:
                yield Evidence(piece.field, f"{piece.said_by}{self.row}", piece.words, piece.against)
            else:
                yield piece


@dataclass(frozen=True, slots=True, eq=False, repr=False)
class LineEvidence(Sequence[Evidence]):
    """What said a line's fields, made when asked for: a list of 200,000 lines has millions of pieces."""

    parts: tuple[Evidence | RowEvidence, ...]

    def __iter__(self) -> Iterator[Evidence]:
        for part in self.parts:
            if isinstance(part, RowEvidence):
                yield from part.pieces()
            else:
                yield part

    def __len__(self) -> int:
        return sum(len(part.said) if isinstance(part, RowEvidence) else 1 for part in self.parts)

    @overload
    def __getitem__(self, place: int) -> Evidence: ...
    @overload
    def __getitem__(self, place: slice) -> tuple[Evidence, ...]: ...
    def __getitem__(self, place: int | slice) -> Evidence | tuple[Evidence, ...]:
        return tuple(self)[place]

    def __eq__(self, other: object) -> bool:
        return isinstance(other, LineEvidence | tuple) and tuple(self) == tuple(other)

    def __hash__(self) -> int:
        return hash(tuple(self))

    def __repr__(self) -> str:
        return repr(tuple(self))


@dataclass(frozen=True, slots=True)
class Line:
    """One offer of a vendor's sheet with its state, the notes a person should read, and what said each field."""

    offer: Offer
    state: State
    notes: tuple[Note, ...] = ()
    evidence: Sequence[Evidence] = ()


@dataclass(frozen=True, slots=True)
class PassedOver:
    """Part of a sheet that holds no offers, and why."""

    sheet: str
    rows: str
    why: str


@dataclass(frozen=True, slots=True)
class Choice:
    """One possible answer: `value` is remembered, `label` is shown."""

    value: str
    label: str


@dataclass(frozen=True, slots=True)
class Question:
    """One cause that holds lines back.

    `key` is what an answer is remembered under: 'ton', 'currency:kr/mt', 'grade:fenlight white'. `choices` may be
    empty: then any text of the named kind answers it (a vendor's name, an ISO currency; trade/answers.py tells).
    `cells`: sheet name and address of each price held back, and of the basis weight in doubt.
    """

    key: str
    code: NoteCode
    text: str
    words: str
    choices: tuple[Choice, ...]
    cells: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Reading:
    """All that reading one vendor's file yields. `unreadable`: why nothing could be read, in one sentence.

    `letterhead`: where no vendor was found, the short texts around the tables, for who knows vendors by their names.
    `dated`: the day the list says it was made, where it says one and no other.
    """

    file: str
    sha256: str
    unreadable: str | None = None
    vendor: str | None = None
    lines: tuple[Line, ...] = ()
    passed_over: tuple[PassedOver, ...] = ()
    questions: tuple[Question, ...] = ()
    letterhead: tuple[str, ...] = ()
    dated: date | None = None


LEAVE_OUT = "leave-out"
"""The answer that settles nothing: the lines that a question holds back are not used."""


@dataclass(frozen=True, slots=True)
class Answers:
    """What a person has settled for a file or remembered for its vendor.

    Keys of `settled`: 'vendor', 'currency:<words folded>' (ISO code; 'currency:' where the sheet has no words, and
    'currency' for the whole file), 'ton' ('short'|'metric'), 'weight-basis' ('msf'|'3000ft2'|'gsm'), 'decimal'
    ('.'|','), 'date-order' ('dmy'|'mdy'), 'basis:<words>' (a Basis value; likewise), 'grade:<words>' (a grade code),
    'bracket:<words>' ('from_kg:below_kg'), 'holds:<sheet>!<cells>' (the cell whose price holds, for this file alone),
    'price:<sheet>!<cell>' (which figure of a cell that holds several is its price, likewise);
    and under the key of any question LEAVE_OUT, for this file alone.
    An answer never overrules what the sheet says; it settles what that leaves open.
    `layouts`: tables marked by hand, used where they fit; None: nobody said, so that those remembered for the vendor
    serve. `anew`: keys that are asked about once more, so that what is remembered under them does not serve.
    """

    settled: Mapping[str, str] = field(default_factory=dict)
    received: date | None = None
    layouts: tuple[Layout, ...] | None = None
    anew: frozenset[str] = frozenset()
