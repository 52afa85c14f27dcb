"""What is said around a row, nearest first: sub-headings, the table's titles, the sheet, its name, the other sheets."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any, TypeVar, cast

from tracker.intake.offers.notes.doubted import left_open
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.list_boards import LONGEST_TITLE, board_named_first, board_of_list
from tracker.intake.values.boards.open_headings import board_unknown, ends_group
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.figures.sheetsize import sheets_in_title
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.told_with_price import without_own_charges
from tracker.intake.values.heads.column_legend import column_named
from tracker.intake.values.notes.board_titles import calls_a_board, of_some_measures, states_more_than_a_board
from tracker.intake.values.notes.boards_ended import stated_of_boards
from tracker.intake.values.notes.line_defaults import LineDefault, line_defaults
from tracker.intake.values.notes.note_signs import as_written
from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_of_group import lead_of_group
from tracker.intake.values.times.lead_remarked import lead_of_some, lead_remarked, stock_lead
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases

S = TypeVar("S")
HEADING = "heading"


@dataclass(frozen=True)
class Level:
    """Texts that hold equally near to a row. `foreign`: they stand on another sheet, whose name is told with the cell.
    `board`: the texts may also say which board the row is. `sole`: of a sheet's only table, so that what the rest of
    the sheet says is about the same prices. `beside`: what is said by more than one text. `last_row`: the last row of
    the table, below which a text is a note. `hidden`: on a hidden sheet, what something costs the vendor is charged to
    nobody. `of_row`: they are about these rows alone. `unsure`: they may be about other rows. `of_some`: they are about
    some prices, and beside them holds what is said of all. `of_table`: they stand over a table further down."""

    name: str
    texts: tuple[Words, ...]
    foreign: bool = False
    board: bool = True
    sole: bool = False
    beside: tuple[Said[Statement], ...] = ()
    last_row: int | None = None
    hidden: bool = False
    of_row: bool = False
    unsure: bool = False
    of_some: bool = False
    of_table: bool = False

    @cached_property
    def stated(self) -> tuple[Said[Statement], ...]:
        """Every statement of every text of the level."""
        return self.beside + tuple(
            Said(statement, self.place(words), as_written(words.text))
            for words in self.texts
            for statement in self._states(words)
            # What is said of one column's delivery or lead time holds for no other.
            if column_named(words.text) is None or isinstance(statement, SaysCurrency | SaysBasis)
            if not (self.hidden and isinstance(statement, ChargeWords))
        )

    def _states(self, words: Words) -> tuple[Statement, ...]:
        """What one of its texts states; what is said of some rows alone may name their lead time by itself."""
        text = words.text
        if words.unsure and not self.unsure:
            return tuple(left_open(text, statements(text)))
        if not self.of_row:
            said = tuple(without_own_charges(text, statements(text)))
            heads = self.name == HEADING and not any(isinstance(one, LeadTime | LeadUnread) for one in said)
            return (*said, of_group) if heads and (of_group := lead_of_group(text)) is not None else said
        lead = lead_remarked(text)
        if self.unsure:
            lead = lead or lead_of_some(text) or stock_lead(text)
            return () if lead is None else (LeadUnread(text.strip()),)
        told = stated_of_boards(text) if self.of_some else statements(text)
        return (*(one for one in told if not isinstance(one, LeadTime | LeadUnread)), *((lead,) if lead else ()))

    @cached_property
    def _kinds(self) -> dict[type[object], tuple[Said[object], ...]]:
        kinds: dict[type[object], tuple[Said[object], ...]] = {}
        for said in self.stated:
            kinds[type(said.value)] = (*kinds.get(type(said.value), ()), said)
        return kinds

    def all_of(self, kind: type[S]) -> tuple[Said[S], ...]:
        """The statements of one kind."""
        return cast("tuple[Said[S], ...]", self._kinds.get(kind, ()))

    @cached_property
    def leaves_board_open(self) -> bool:
        """Whether a text above says that the board of what follows is not known, or not that of the group before."""
        return any(
            board_unknown(words.text) or ends_group(words.text) for words in self.texts if not self.is_note(words)
        )

    @cached_property
    def _of_boards(self) -> tuple[Words, ...]:
        """Its texts but for those that only say which group ends, or may be about other rows."""
        return tuple(words for words in self.texts if not (words.unsure or ends_group(words.text)))

    @cached_property
    def grades(self) -> tuple[Said[GradeReading], ...]:
        """What the level's texts say of grade and coating."""
        return tuple(self._grades_in(self._of_boards))

    @cached_property
    def texts_above(self) -> tuple[Words, ...]:
        """Its texts without the notes below the table, but for those that speak of all boards."""
        return tuple(
            each for each in self._of_boards if not self.is_note(each) or phrases("all_of_them").find(each.text)
        )

    @cached_property
    def grades_above(self) -> tuple[Said[GradeReading], ...]:
        """What those say: a note below may be about another board than a row that has a name of its own."""
        return tuple(self._grades_in(self.texts_above))

    def _grades_in(self, texts: Iterable[Words]) -> Iterator[Said[GradeReading]]:
        for words in texts:
            note = self.is_note(words) and not phrases("all_of_them").find(words.text)
            reading = board_of_list(words.text, note=note)
            if reading is not None:
                yield Said(reading, self.place(words), words.text)

    @cached_property
    def titles(self) -> tuple[Words, ...]:
        """The texts that may name a board's measures: short ones that state nothing else, or call the board by its
        grade first, and what longer ones say of the board by itself.

        Of notes only those about the board alone: 'also available in 300 g/m²' is no line's weight.
        """
        sure = (words for words in self.texts if not (words.unsure or self.is_note(words)))
        long = (words for words in sure if len(words.text) > LONGEST_TITLE)
        first = tuple(replace(words, text=said) for words in long if (said := board_named_first(words.text)))
        return first + tuple(
            words
            for words in self._of_boards
            if len(words.text) <= LONGEST_TITLE
            and (not states_more_than_a_board(words.text) or calls_a_board(words.text))
            and not of_some_measures(words.text)
            and (not self.is_note(words) or names_only_board(words.text))
        )

    def is_note(self, words: Words) -> bool:
        """Whether a text stands below the last row that it may be about."""
        return self.last_row is not None and words.row > self.last_row

    @cached_property
    def sizes(self) -> tuple[Words, ...]:
        """The short texts that may say how large a sheet is: those that state no terms but what a price is in, and
        when and where it is for; of a title that states more the part that names a sheet and nothing else."""
        told = {
            words: words.text
            if len(words.text) <= LONGEST_TITLE and not states_more_than_a_board(words.text, *_BESIDE)
            else "" if self.is_note(words) else sheets_in_title(words.text)
            for words in self._of_boards
        }  # fmt: skip
        return tuple(replace(words, text=said) for words, said in told.items() if said)

    def place(self, words: Words) -> str:
        if self.name == "sheet name":
            return "the sheet's name"
        return f"{words.sheet}!{at(words.cell)}" if self.foreign else at(words.cell)


_BESIDE = (SaysCurrency, SaysBasis, Delivery, LeadTime, Validity)
"""What a title says of prices and not of boards."""


@dataclass(frozen=True)
class Scope:
    """The levels around some rows, nearest first; `headings`: the sub-headings in force."""

    levels: tuple[Level, ...]
    headings: tuple[Words, ...] = ()

    @cached_property
    def of_boards(self) -> tuple[Level, ...]:
        """The levels that may say which board a row is."""
        return tuple(level for level in self.levels if level.board)

    @cached_property
    def defaults(self) -> tuple[Said[LineDefault], ...]:
        """What is said of every line that does not say its own, nearest first."""
        return tuple(
            Said(default, level.place(words), words.text)
            for level in self.levels
            for words in level.texts
            for default in line_defaults(words.text)
        )

    def nearest(self, kind: type[S]) -> tuple[Said[S], ...]:
        """The statements of one kind at the nearest level that makes any."""
        if kind not in self._nearest:
            self._nearest[kind] = next((found for level in self.levels if (found := level.all_of(kind))), ())
        known: tuple[Said[S], ...] = self._nearest[kind]
        return known

    def all_of(self, kind: type[S]) -> tuple[Said[S], ...]:
        """The statements of one kind at every level, nearest first, each once."""
        if kind not in self._all:
            self._all[kind] = tuple(dict.fromkeys(said for level in self.levels for said in level.all_of(kind)))
        known: tuple[Said[S], ...] = self._all[kind]
        return known

    @cached_property
    def lead_unread(self) -> tuple[Said[LeadUnread], ...]:
        """What speaks of these rows' own lead time and can't be read, where nothing nearer tells it; what another text
        tells beside it may be of the same boards."""
        for level in self.levels:
            leads = level.all_of(LeadTime)
            own, read = level.of_row or level.of_some or level.name == HEADING, {said.words for said in leads}
            unread = tuple(said for said in level.all_of(LeadUnread) if own and said.words not in read)
            if leads or unread:
                return unread
        return ()

    @cached_property
    def _nearest(self) -> dict[type[object], Any]:
        return {}

    @cached_property
    def _all(self) -> dict[type[object], Any]:
        return {}

    @cached_property
    def terms(self) -> dict[str, object]:
        """What readers of terms have worked out for these levels and keep for the next row."""
        return {}

    @cached_property
    def changes(self) -> dict[int, tuple[Said[ChangesPrice], ...]]:
        """What is known to change the prices of a column, kept for the next row."""
        return {}

    @cached_property
    def charges(self) -> tuple[tuple[Said[ChargeWords], ...], ...]:
        """What each level that names charges says of them, nearest first."""
        return tuple(said for level in self.levels if (said := level.all_of(ChargeWords)))
