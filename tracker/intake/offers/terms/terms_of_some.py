"""What notes tell of some boards, held against the lead time and the smallest order that a row was given.

A general rule may stand in one sentence and its exception in the next. Where that one is read, it holds for its boards;
where it is not, nothing is known of those that it may mean.

A lead time may be told of some boards in several ways, and they are heard in this order. First each text is parted:
`lines_apart`, which hands on to `of_all_and_some` and, behind 'except', to `leads_excepted`, makes texts that are each
about all lines or about those that they name. Then `of_some_lines` gives each line its own texts (`lines_meant`), and
`of_ways` those of its form; what these say is read as if it were said of all, and fills the draft. What is here comes
last and reads the notes as they were written, piece by piece: it settles whose time is whose, and takes away what the
others gave where a piece that may be about the board is not read. Nothing after it changes a lead time from a note.
"""

from collections.abc import Callable, Mapping, Sequence, Set
from dataclasses import dataclass
from decimal import Decimal
from typing import Generic, TypeVar

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.some_boards_held import is_one_of
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.of_others_perhaps import of_others_perhaps
from tracker.intake.offers.notes.of_unseen_marks import may_be_of_any
from tracker.intake.offers.notes.scope import HEADING, Level, Scope
from tracker.intake.offers.orders.order_terms import ton_of
from tracker.intake.offers.terms.of_ways import TermsOfWays
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import sign_ahead, without_sign
from tracker.intake.values.notes.terms_of_some import TermsOfSome, terms_of_some
from tracker.intake.values.notes.ways_named import FORMS
from tracker.intake.values.times.lead_by_itself import lead_by_itself
from tracker.intake.values.times.lead_sentences import find_lead
from tracker.trade.offer import Evidence, NoteCode, RowEvidence

T = TypeVar("T")
Days = tuple[int, int]
_FROM_STOCK = (0, 0)


@dataclass(frozen=True, slots=True)
class _OfBoard(Generic[T]):
    """What notes tell of one board: the piece that is read, with its value; or the one that may hold for it as well."""

    rule: TermsOfSome | None = None
    value: T | None = None
    doubt: TermsOfSome | None = None


class SomeBoardsTold:
    """The notes around a table, and what they tell of some of its boards."""

    def __init__(
        self, levels: Sequence[Level], facts: FileFacts, ways: TermsOfWays, signs: Set[str] = frozenset()
    ) -> None:  # fmt: skip
        """`signs`: those of footnotes that lines carry, which are about these lines alone."""
        self._facts = facts
        self._ways = ways
        texts: dict[Cell, tuple[str, str]] = {}
        for level in levels:
            plain = level.texts if level.name != HEADING and not level.of_row else ()
            for words in (each for each in plain if not (_is_of_marked(each.text, signs) or may_be_of_any(each))):
                texts.setdefault(words.cell, (level.place(words), _whole(words)))
        self._places = [place for place, _ in texts.values()]
        told = terms_of_some(tuple(without_sign(text) for _, text in texts.values()))
        self._of_lead = tuple(one for one in told if one.of_lead)
        self._of_least = tuple(one for one in told if one.of_least)

    def fill(
        self, draft: Draft, cells: Mapping[int, Cell], price: PriceColumn, columns: Columns, scope: Scope
    ) -> None:  # fmt: skip
        """Gives a draft the lead time and the smallest order of its board, or takes one away that may not hold for it;
        what its columns or its price's head are for is told there."""
        if self._of_lead and price.lead is None and not _told(cells, columns, Role.LEAD_TIME):
            self._fill_lead(draft, self._of_its_form(self._of_lead, draft, cells, price, scope))
        if self._of_least and not _told(cells, columns, Role.MINIMUM):
            self._fill_least(draft, self._of_its_form(self._of_least, draft, cells, price, scope))

    def _of_its_form(
        self, told: tuple[TermsOfSome, ...], draft: Draft, cells: Mapping[int, Cell], price: PriceColumn, scope: Scope
    ) -> tuple[TermsOfSome, ...]:  # fmt: skip
        """What is told without that of the other form, where a price's head, its row or a title tells its own."""
        if not any(one.boards is not None and one.boards.form for one in told):
            return told
        own = self._ways.own(scope, draft, price.index, cells) & FORMS
        return tuple(one for one in told if one.boards is None or not own or one.boards.form in ("", *own))

    def _fill_lead(self, draft: Draft, told: tuple[TermsOfSome, ...]) -> None:
        if not self._from_notes(draft, "lead_days"):
            return
        found = _of_board(told, draft, draft.lead_days, _leads_in)
        if found.doubt is not None:
            draft.lead_days = None
            self._doubt(draft, NoteCode.LEAD_TIME_UNREAD, found.doubt)
        elif found.rule is not None and self._may_take(draft, draft.lead_days, NoteCode.LEAD_TIME_UNREAD, found.rule):
            draft.lead_days = found.value
            self._take(draft, "lead_days", NoteCode.LEAD_TIME_UNREAD, found.rule)

    def _fill_least(self, draft: Draft, told: tuple[TermsOfSome, ...]) -> None:
        if not self._from_notes(draft, "minimum_kg"):
            return
        found = _of_board(told, draft, draft.minimum_kg, self._leasts_in)
        if found.doubt is not None:
            draft.minimum_kg = None
            self._doubt(draft, NoteCode.BRACKET_UNREAD, found.doubt)
        elif found.rule is not None and self._may_take(draft, draft.minimum_kg, NoteCode.BRACKET_UNREAD, found.rule):
            draft.minimum_kg = found.value
            self._take(draft, "minimum_kg", NoteCode.BRACKET_UNREAD, found.rule)

    def _leasts_in(self, one: TermsOfSome) -> tuple[frozenset[Decimal | None], bool]:
        weights = [mass.kg(ton_of(mass, self._facts), self._facts.decimal_sign) for mass in one.masses]
        told: set[Decimal | None] = {kg for kg in weights if kg is not None}
        told |= {None} if one.no_minimum else set()
        return frozenset(told), one.read and len(told) == 1 and None not in weights

    def _from_notes(self, draft: Draft, field: str) -> bool:
        """Whether its value is one of the notes', or it has none; one of its own cells is right whatever they say."""
        said = [one for part in draft.evidence for one in _plain(part) if one.field == field]
        return not said or said[-1].said_by in self._places

    def _may_take(self, draft: Draft, given: object, code: NoteCode, rule: TermsOfSome) -> bool:
        """Whether nothing else that was told and not understood may hold instead."""
        if given is not None:
            return True
        others = {note.cell for note in draft.notes if note.code is code} - {self._places[rule.place]}
        told = self._of_lead if code is NoteCode.LEAD_TIME_UNREAD else ()
        return all(self._is_of_others(where, draft) for where in others) and not any(map(_is_open, told))

    def _is_of_others(self, where: str, draft: Draft) -> bool:
        """Whether all that is told there is surely of other boards than this one."""
        told = [one for one in (*self._of_lead, *self._of_least) if self._places[one.place] == where]
        return bool(told) and all(one.boards is not None and is_one_of(one.boards, draft) is False for one in told)

    def _take(self, draft: Draft, field: str, code: NoteCode, rule: TermsOfSome) -> None:
        where = self._places[rule.place]
        known = {note.cell for note in draft.notes if note.cell == where or self._is_of_others(note.cell, draft)}
        draft.notes = [note for note in draft.notes if note.code is not code or note.cell not in known]
        draft.evidence.append(Evidence(field, where, rule.words))

    def _doubt(self, draft: Draft, code: NoteCode, doubt: TermsOfSome) -> None:
        if any(note.code is code for note in draft.notes):
            return
        text = of_others_perhaps(doubt.words)
        draft.note(code, self._places[doubt.place], text)


def _is_of_marked(text: str, signs: Set[str]) -> bool:
    """'* from stock' where lines carry the star. What '* GC1 3 weeks, GD2 5 weeks' says of which board is read here."""
    return sign_ahead(text) in signs and not boards_named(without_sign(text)).some


def _told(cells: Mapping[int, Cell], columns: Columns, role: Role) -> bool:
    return any(column.index in cells for column in columns.of(role))


def _plain(part: Evidence | RowEvidence) -> tuple[Evidence, ...]:
    return (part,) if isinstance(part, Evidence) else tuple(part.pieces())


def _whole(words: Words) -> str:
    """All of its cell; a label together with its value."""
    return words.cell.text if words.text in words.cell.text else words.text


def _leads_in(one: TermsOfSome) -> tuple[frozenset[Days | None], bool]:
    return frozenset(lead.days for lead in one.leads), one.lead is not None


def _is_open(one: TermsOfSome) -> bool:
    """A time told of all boards that is not read."""
    return one.boards is None and find_lead(one.words) is None and lead_by_itself(one.words) is None


def _of_board(
    told: Sequence[TermsOfSome], draft: Draft, given: T | None,
    values: Callable[[TermsOfSome], tuple[frozenset[T | None], bool]],
) -> _OfBoard[T]:  # fmt: skip
    """What is told of a board that was given a value, or none.

    First what is not read and may be of this board: nothing is known then. Next what is read and of this board: it has
    that value, unless two are told. Then what is told of all, where none was given. Last, a value that is told of
    other boards alone is not this one's.
    """
    held = [(one, is_one_of(one.boards, draft)) for one in told if one.boards is not None]
    doubts = [one for one, of_it in held if of_it is not False and not (of_it and values(one)[1])]
    of_all = {value for one in told if one.boards is None for value in values(one)[0]}
    doubt = next((one for one in doubts if not _is_harmless(one, given, values(one)[0], of_all)), None)
    if doubt is not None:
        return _OfBoard(doubt=doubt)
    sure = {value: one for one, of_it in held if of_it and values(one)[1] for value in values(one)[0]}
    if len(sure) > 1:
        return _OfBoard(doubt=next(iter(sure.values())))
    if sure:
        ((value, one),) = sure.items()
        return _OfBoard(one, value) if value != given else _OfBoard()
    if given is None:
        return _of_all_others(told, held, values)
    telling = [one for one in told if given in values(one)[0]]
    others = bool(telling) and all(one.boards is not None and not is_one_of(one.boards, draft) for one in telling)
    may = any(of_it is None for one, of_it in held if one in telling)
    return _OfBoard(doubt=telling[0]) if others and not may else _OfBoard()


def _is_harmless(
    one: TermsOfSome, given: T | None, values: frozenset[T | None], of_all: Set[T | None]
) -> bool:  # fmt: skip
    """Whether what is not read, or is perhaps of this board, tells the value that it was given anyway; of rolls or
    sheets alone only where no other one is told of all. What is made to order has the lead time of all, unless that is
    'from stock'."""
    of_a_form = one.boards is not None and bool(one.boards.form)
    same = given is not None and values == {given} and not (of_a_form and of_all - {given})
    return same or (one.to_order and given != _FROM_STOCK)


def _of_all_others(
    told: Sequence[TermsOfSome], held: Sequence[tuple[TermsOfSome, bool | None]],
    values: Callable[[TermsOfSome], tuple[frozenset[T | None], bool]],
) -> _OfBoard[T]:  # fmt: skip
    """What is told of all, for a board that is surely none of those of which something else is told."""
    every = [one for one in told if one.boards is None]
    known = {value for one in every for value in values(one)[0]}
    if len(known) != 1 or not all(values(one)[1] for one in every) or any(of_it is not False for _, of_it in held):
        return _OfBoard()
    (value,) = known
    # Of 'GD2 and heavier ones take longer' it is not told for certain which boards are none of them.
    apart = all(values(one)[1] or (one.boards is not None and one.boards.certain) for one, _ in held)
    return _OfBoard(every[0], value) if value is not None and apart else _OfBoard()
