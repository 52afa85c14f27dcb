"""What is said of money, or of a list out of force, and changed no line: it is told, and asked of nobody.

'Less 2 % for truckloads' may well be meant for this buyer. A rule that reads it for certain, or asks about it, leaves
its mark on the lines: evidence, a note, a question. What left none is named beside the parts of the sheet that hold no
offers.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cached_property
from string import ascii_uppercase

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.rows.outdated import outdated_whole
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.discounts import DiscountTaken
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, same_charge
from tracker.intake.values.freight.charge_parts import OptionalCharge
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.relieved_charges import NoCharge
from tracker.intake.values.notes.money_told import MoneyTold, money_told
from tracker.intake.values.notes.statements import Statement
from tracker.intake.values.orders.loads_charged import LoadCharge
from tracker.intake.values.orders.small_orders import DearerIfSmall
from tracker.intake.values.orders.terms_by_size import DeliveredFrom, SmallOrderCharge
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found
from tracker.trade.offer import Evidence, NoteCode, PassedOver, RowEvidence

_Place = tuple[str, str]
"""A sheet's name and the address of a cell in it."""


Left = tuple[Words, MoneyTold]
"""A part of a text that tells of money, and the text."""


def not_counted(sheets: Sequence[ReadSheet], drafts: Sequence[Draft], passed: Iterable[PassedOver]) -> tuple[Left, ...]:
    """The parts of texts that tell of money and that no line's value, note or question came from.

    `passed`: what was passed over, so that what marks those rows as old is not told twice.
    """
    passed = tuple(passed)
    told = [
        (words, one)
        for sheet in sheets
        if not outdated_whole(sheet, sheets)
        for words in dict.fromkeys(_said_in(sheet))
        for one in money_told(words.text)
        if not (one.old and _passes_over(words, passed))
    ]
    if not told or not drafts:
        return ()
    used = _Used({(words.sheet, at(words.cell)) for words, _ in told})
    used.see(drafts)
    return tuple((words, one) for words, one in told if not used.counts(words, one))


def as_passed_over(left: Iterable[Left]) -> list[PassedOver]:
    """The same, as told beside the parts of the sheet that hold no offers."""
    return list(dict.fromkeys(PassedOver(words.sheet, _row(words), _why(one)) for words, one in left))


def _row(words: Words) -> str:
    return str(words.cell.row + 1)


def _why(told: MoneyTold) -> str:
    return f"“{told.words.strip(' .;:')}” was not counted"


def _said_in(sheet: ReadSheet) -> Iterator[Words]:
    """What stands around a sheet's offers and beside them; what stands over other figures is theirs."""
    others = {words for read in sheet.tables if read.passed_over for words in (*read.table.titles, *read.table.notes)}
    yield from (words for words in sheet.found.texts if words not in others)
    for read in sheet.tables:
        if not read.passed_over:
            yield from (*read.table.titles, *read.table.notes, *read.table.headings(), *read.table.lines())
            yield from _remarks(read)


_MOST_ROWS = 3000
"""Rows of a table whose remarks are gone over."""


def _remarks(read: ReadTable) -> Iterator[Words]:
    table = read.table
    if table.view.passing or len(table.rows) > _MOST_ROWS:
        return
    for row in table.rows:
        for cell in read.columns.remarks_in(table.view.rows[row.index]):
            yield Words(table.view.sheet, row.index, cell, cell.text)


def _passes_over(words: Words, passed: Iterable[PassedOver]) -> bool:
    """Whether prices below these words, or in their row, were left out: that they are old is told there."""
    rows = (part.rows.partition("-") for part in passed if part.sheet == words.sheet)
    return any(last.isdigit() and words.cell.row < int(last) for first, _, end in rows for last in (end or first,))


@dataclass
class _Used:
    """What left its mark on any line, of the cells that are looked for."""

    places: set[_Place]
    fields: dict[_Place, set[str]] = field(default_factory=dict)
    charges: set[tuple[str, Decimal]] = field(default_factory=set)
    quoted: set[str] = field(default_factory=set)
    priced: set[_Place] = field(default_factory=set)

    def see(self, drafts: Iterable[Draft]) -> None:
        """Goes over all lines once; those of a long list share what is said of all of them."""
        seen: set[tuple[str, int]] = set()
        notes: set[tuple[NoteCode, str]] = set()
        for draft in drafts:
            self.priced.update(self.places & {(draft.sheet, draft.where)})
            self.charges.update((charge.label, charge.price) for charge in draft.charges)
            notes.update((note.code, note.text) for note in draft.notes)
            for part in draft.evidence:
                key = draft.sheet, id(part if isinstance(part, Evidence) else part.said)
                if key not in seen or not isinstance(part, Evidence):
                    self._see_part(draft.sheet, part, first=key not in seen)
                    seen.add(key)
        texts = (text for code, text in notes if code in _OF_MONEY)
        self.quoted = {fold(quote) for text in texts for quote in _QUOTED.findall(text)}

    def _see_part(self, sheet: str, part: Evidence | RowEvidence, *, first: bool) -> None:
        """`first`: no row before said the same; another names its own cells."""
        if isinstance(part, Evidence):
            self._see(sheet, part)
        elif first or part.row in self.rows:
            for piece in part.pieces():
                self._see(sheet, piece)

    @cached_property
    def rows(self) -> frozenset[int]:
        """The rows, as a person counts them, of the cells that are looked for."""
        return frozenset(int(cell.lstrip(ascii_uppercase)) for _, cell in self.places)

    def _see(self, sheet: str, piece: Evidence) -> None:
        other, _, cell = piece.said_by.rpartition("!")
        place = (other or sheet, cell)
        if place in self.places:
            self.fields.setdefault(place, set()).add(piece.field)

    def counts(self, words: Words, told: MoneyTold) -> bool:
        """Whether a part of a text is behind any line."""
        place = (words.sheet, at(words.cell))
        part = fold(told.words)
        if place in self.priced or any(part in quote or quote in part for quote in self.quoted):
            return True
        if _repeats_charges(told.words, self.charges):
            return True
        fields = self.fields.get(place, set())
        if told.freight and "delivered" in fields:
            return True
        if "delivered" not in fields and any(_leaves_freight_open(one) for one in (*told.own, *told.of_clause)):
            # 'Freight is included within Ohio' charges nothing, and leaves it open elsewhere.
            return False
        # 'Invoiced separately' behind 'energy surcharge 4 %,' is about that one.
        if told.alone or told.own or not any(map(str.isdigit, told.words)):
            return any(self._counted(one, fields) for one in (told.own or told.of_clause))
        return any(self._counted(one, fields) and _is_told_in(one, part) for one in told.of_clause)

    def _counted(self, said: Statement, fields: set[str]) -> bool:
        return "charges" in fields if isinstance(said, ChargeWords) else isinstance(said, _UNDERSTOOD)


def _leaves_freight_open(said: Statement) -> bool:
    return isinstance(said, Delivery) and said.delivered is None and not said.on_request


def _repeats_charges(part: str, charges: Iterable[tuple[str, Decimal]]) -> bool:
    """Whether it names a charge that lines have, and no other figure: 'energy surcharge in % of the board price' says
    what a column is, and 'surcharges (to be added to all prices)' heads the rows of them."""
    figures = {Decimal(figure.replace(",", ".")) for figure in _FIGURE.findall(part)}
    named = charges_named(part)
    if figures:
        return any(fold(label) in fold(part) and price in figures for label, price in charges)
    labels = [label for label, _ in charges]
    general = all(phrases("surcharge_words").whole(part[one.start : one.end]) is not None for one in named)
    alike = all(any(_is_of(one, part, label) for label in labels) for one in named)
    return bool(named) and (alike or (general and bool(labels)))


def _is_of(named: Found[str], part: str, label: str) -> bool:
    kind = ChargeKind(named.value)
    kinds = {one.value for one in charges_named(label)}
    return (kind in kinds or kind is ChargeKind.OTHER) and same_charge(kind, part[named.start : named.end], label)


_FIGURE = re.compile(r"(?<![\d.,])\d+(?:[.,]\d+)?(?![\d.,]*\d)")
_QUOTED = re.compile("“([^”]{4,})”")
_OF_MONEY = frozenset({NoteCode.NUMBER_AMBIGUOUS, NoteCode.BRACKET_UNREAD, NoteCode.PRICES_DISAGREE})
"""Notes that quote what is said of money; one on a time or a weight may quote a whole text for its other half."""
_UNDERSTOOD = (NoCharge, DiscountTaken, LoadCharge, SmallOrderCharge, DeliveredFrom, DearerIfSmall, OptionalCharge)
"""What the rules know to be no part of a price, or to be one for some orders."""


def _is_told_in(said: Statement, part: str) -> bool:
    """Whether what a sentence states is stated in this part of it: the label of a charge, or its figure."""
    if isinstance(said, ChargeWords):
        return fold(said.label) in part
    words = fold(getattr(said, "words", ""))
    return bool(words) and (words in part or part in words)
