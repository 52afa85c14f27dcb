"""The offers of one table: one draft for every cell of its price columns that offers or withholds a price."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from tracker.intake.columns.column import Columns, Kind, PriceColumn
from tracker.intake.columns.groups.groups import under_one_heading
from tracker.intake.columns.groups.of_ways import of_own_way
from tracker.intake.columns.priced.apart import standing_apart
from tracker.intake.columns.priced.prices import DISCOUNT_BESIDE
from tracker.intake.columns.priced.unnamed import UNNAMED
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.board import BOARD_ROLES, board_of, with_column
from tracker.intake.offers.boards.board_terms import fill_lead_of_board, fill_minimum_of_board
from tracker.intake.offers.boards.boards_held import BoardPriced, board_priced
from tracker.intake.offers.boards.measures import Board
from tracker.intake.offers.boards.other_board import ask_of_another_board
from tracker.intake.offers.boards.struck import ask_of_struck_board
from tracker.intake.offers.charges.charge_columns import charge_columns
from tracker.intake.offers.charges.charges import fill_charges
from tracker.intake.offers.charges.optional_columns import OptionalColumns
from tracker.intake.offers.charges.relief import free_for
from tracker.intake.offers.draft import Block, Draft
from tracker.intake.offers.file_facts import FileFacts, facts_for
from tracker.intake.offers.fill import (
    fill_board,
    fill_bracket,
    fill_lead,
    fill_terms,
    take_board,
    take_terms,
)
from tracker.intake.offers.notes.comments import fill_comment
from tracker.intake.offers.notes.footnotes import Footnotes
from tracker.intake.offers.notes.headings import HeadingsInForce
from tracker.intake.offers.notes.hidden import fill_hidden
from tracker.intake.offers.notes.of_some_columns import OfSomeColumns
from tracker.intake.offers.notes.of_some_lines import OfSomeLines
from tracker.intake.offers.notes.of_some_vendors import OfSomeVendors
from tracker.intake.offers.notes.parts_of_rows import parts_of_row
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import HEADING, Level, Scope
from tracker.intake.offers.orders.brackets import brackets_of
from tracker.intake.offers.orders.load_terms import drop_told_of_loads, load_of
from tracker.intake.offers.orders.sizes_unread import SizesUnread
from tracker.intake.offers.orders.terms_by_size import fill_terms_by_size
from tracker.intake.offers.prices.column_doubts import ask_of_column, doubt_of_column
from tracker.intake.offers.prices.far_below import ask_of_amounts_far_below, columns_far_below
from tracker.intake.offers.prices.going_out import GoingOut
from tracker.intake.offers.prices.indicative import note_indicative
from tracker.intake.offers.prices.money import Around, Claimed, around
from tracker.intake.offers.prices.price import fill_price
from tracker.intake.offers.prices.price_cell import Standing
from tracker.intake.offers.prices.price_cells import PriceCells
from tracker.intake.offers.prices.price_changes import ask_of_change, ask_whether_in_force, figures_in
from tracker.intake.offers.prices.row_changes import RowChanges
from tracker.intake.offers.prices.twins import words_of_row
from tracker.intake.offers.rows.alike import AlikeRows, Cells, Part, Told
from tracker.intake.offers.rows.alike_offers import AlikeOffers, Contents, Priced
from tracker.intake.offers.rows.outdated import Doubts, doubt_in_head, marked_off
from tracker.intake.offers.rows.pass_over import passed_within
from tracker.intake.offers.rows.rows import Rows, WholeRow
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.offers.terms.head_terms import fill_lead_of_head, fill_until
from tracker.intake.offers.terms.of_ways import TermsOfWays
from tracker.intake.offers.terms.terms import TERM_ROLES, terms_of
from tracker.intake.offers.terms.terms_of_some import SomeBoardsTold
from tracker.intake.offers.terms.terms_said import Terms
from tracker.intake.progress import counted
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.changes.discounts import DiscountTaken
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.trade.offer import PassedOver

_Surroundings = tuple[Headings | None, tuple[Words, ...], frozenset[str], frozenset[Words], int, tuple[Level, ...]]
"""What tells the scopes of two rows apart."""


@dataclass
class TableOffers:
    """What a table yields: drafts in the order of the sheet, row by row, and the rows that were passed over."""

    drafts: list[Draft] = field(default_factory=list)
    passed: list[PassedOver] = field(default_factory=list)


class TableReader:
    """Reads one table. What rows share (scope, claims about money, decimal sign) is worked out once."""

    def __init__(
        self, read: ReadTable, levels: tuple[Level, ...], claimed: Claimed, facts: FileFacts, vendor: Said[str] | None,
        doubts: Doubts, titles: Sequence[Words] = (),
    ) -> None:  # fmt: skip
        self._read, self._levels, self._claimed = read, levels, claimed
        self._facts = facts_for(read, facts, levels)
        self._vendor, self._doubts, self._titles = vendor, doubts, titles
        self._in_force = HeadingsInForce()
        self._scopes: dict[_Surroundings, Scope | str] = {}
        self._around: dict[tuple[int, int, BoardPriced, frozenset[str]], Around] = {}
        self._cells = PriceCells(read, self._facts, (words.text for level in levels for words in level.texts))
        self._kinds = frozenset(price.kind for price in read.columns.prices)
        self._offers = tuple(price for price in read.columns.prices if price.kind is Kind.OFFER)
        self._apart = standing_apart(self._offers)
        self._previous = tuple(price for price in read.columns.prices if price.kind is Kind.PREVIOUS)
        self._of_heads = {price.index: doubt_in_head(price) for price in self._offers}
        self._far_below = columns_far_below(read, self._offers)
        self._heads_differ = len({price.delivery and price.delivery.delivered for price in self._offers}) > 1
        self._columns = {price.index: under_one_heading(read.columns, price) for price in self._offers}
        self._of_ways = {price.index: of_own_way(self._columns[price.index], price) for price in self._offers}
        self._ways = TermsOfWays(read)
        self._blocks: dict[Block, Block] = {}
        self._sizes = SizesUnread(read.columns, self._facts)
        self._going_out = GoingOut(read.columns)
        self._uncompared = frozenset(price.index for price in read.columns.prices) | read.counting
        self._left_out: dict[int, str] = {}
        self._boards = AlikeRows(read.columns, read.table.view, Part(BOARD_ROLES, self._describe_board, take_board))
        self._terms = AlikeRows(read.columns, read.table.view, Part(TERM_ROLES, self._describe_terms, take_terms))
        self._alike = AlikeOffers(read.columns, (*self._columns.values(), *self._of_ways.values()))
        self._last_board: tuple[Cells, Columns, Board] | None = None
        self._last_terms: tuple[Cells, Columns, Scope, Terms] | None = None

    def read(self) -> TableOffers:
        texts = (words.text for level in self._levels for words in level.texts)
        rows = Rows(self._read.table, self._read.columns, texts)
        # Of a very long table the rows are gone over twice, because to keep them all would take a gigabyte.
        whole = rows if self._read.table.view.passing else list(rows)
        self._brackets = brackets_of(self._read.columns, whole, self._titles, self._facts)
        rows.go_over()
        self._told, self._charges_of, self._charges_below = rows.terms, rows.charges_of, rows.charges_below
        self._set_apart = self._told.rows() | self._charges_below.keys() | self._read.table.view.hidden_rows
        self._levels = (*self._told.of_table(rows.charges), *self._levels)
        self._of_vendors = OfSomeVendors(self._read.table, self._read.columns, self._levels)
        self._levels = self._of_vendors.levels
        self._optional = OptionalColumns(self._read.columns, self._levels)
        self._footnotes = Footnotes(self._levels, self._read.table, self._read.columns)
        self._of_some = OfSomeLines(self._read.table, self._read.columns, self._levels)
        self._levels = self._of_some.levels
        self._of_some_boards = SomeBoardsTold(self._levels, self._facts, self._ways, self._footnotes.signs)
        self._of_columns = OfSomeColumns(self._offers, self._told.beside(self._levels), self._told.stated_of)
        self._row_changes = RowChanges(self._read.table, self._read.columns, self._levels, self._titles)
        # What such a row's prices are for rests on other rows, or on signs at any of its cells.
        self._none_alike = bool(self._brackets.by_row or self._brackets.by_cell or self._row_changes.by_sign)
        drafts = [draft for row in counted(whole) for draft in self._row(row)]
        self._sizes.ask(drafts)
        return TableOffers(drafts, passed_within(self._read, rows.passed | self._left_out))

    def _row(self, whole: WholeRow) -> Iterator[Draft]:
        offered = self._offered(whole)
        if not offered:
            self._pass_priceless(whole)
            return
        scope = self._scope(whole)
        if isinstance(scope, str):
            self._left_out[whole.row.index] = scope
            return
        words = words_of_row(whole, self._uncompared)
        drafts = {price.index: self._blank(whole, price, cell, words) for price, cell, _ in offered}
        said = None if self._stands_apart(whole) else self._alike.said(whole)
        left = [one for one in offered if said is None or not self._alike.fill(drafts[one[0].index], said, one, scope)]
        if left:
            self._work_out(drafts, left, whole, scope, said)
        ask_of_amounts_far_below(drafts, self._far_below)
        yield from drafts.values()

    def _stands_apart(self, whole: WholeRow) -> bool:
        """A row of which something holds for no other, whatever its cells say."""
        return self._none_alike or whole.doubt != "" or whole.row.index in self._set_apart

    def _work_out(
        self, drafts: dict[int, Draft], offered: list[Priced], whole: WholeRow, scope: Scope, said: Contents | None
    ) -> None:
        told = self._boards.told(whole), self._terms.told(whole)
        of_row = self._doubts.of_row(whole.cells, scope.headings)
        for priced in offered:
            draft = drafts[priced[0].index]
            self._fill(draft, whole, priced, told, scope)
            doubt = self._of_heads[priced[0].index] or of_row
            if doubt is not None:
                ask_whether_in_force(draft, doubt.said, doubt.may_mean, self._facts)
            if said is not None:
                self._alike.keep(draft, said, priced, whole, scope)

    def _offered(self, whole: WholeRow) -> list[Priced]:
        """The row's own price cells that offer a price, or fail to."""
        found = []
        for price in self._offers:
            if price.index not in whole.own:
                continue
            cell = whole.cells[price.index]
            read = self._cells.read(price, cell)
            if read.standing is not Standing.NOTHING:
                found.append((price, cell, read))
        return found

    def _pass_priceless(self, whole: WholeRow) -> None:
        """A row that describes a board and has words or nothing where its price should be: that is told."""
        said = [column.role for column in self._read.columns.of(*BOARD_ROLES) if column.index in whole.own]
        instead = [whole.cells[price.index].text.strip() for price in self._offers if price.index in whole.own]
        words = next((text for text in instead if any(map(str.isalnum, text))), "")
        if said and words:
            self._left_out[whole.row.index] = f"“{words}” is no price"
        elif not instead and {Role.PRODUCT, Role.GRADE}.intersection(said) and MEASURES.intersection(said):
            self._left_out[whole.row.index] = "no price stands beside these boards"

    def _scope(self, whole: WholeRow) -> Scope | str:
        """All that is said around the row; why it offers nothing, under a heading that marks what follows so."""
        carried = self._footnotes.of_row(whole.cells)
        own = self._of_some.of_row(whole)
        vendor = self._of_vendors.of_row(whole.cells)
        told = self._told.by_row.get(whole.row.index, ())
        key = (whole.row.headings, whole.row.lines, carried, own, vendor, told)
        if key not in self._scopes:
            headings = self._in_force.at(whole.row.headings)
            around = self._of_vendors.left_to(self._levels, vendor)
            levels = (*told, Level(HEADING, headings), *around) if headings else (*told, *around)
            if whole.row.lines:
                levels = (Level("own lines", whole.row.lines, of_row=True, unsure=whole.row.unsure), *levels)
            levels = self._of_some.left_to_row(self._footnotes.left(levels, carried), own)
            self._scopes[key] = marked_off(headings, self._read.table) or Scope(levels, headings)
        return self._scopes[key]

    def _blank(self, whole: WholeRow, price: PriceColumn, cell: Cell, words: str) -> Draft:
        at = (price.index, whole.row.headings)
        block = self._blocks.setdefault(at, at)
        label = price.label or (price.bracket.words if price.bracket is not None else "")
        return Draft(self._read.table.view.sheet, cell, label, whole.row.index, block, words)

    def _fill(self, draft: Draft, whole: WholeRow, priced: Priced, told: tuple[Told, Told], scope: Scope) -> None:
        """Asks every rule what it has to say of one price."""
        price, _, read = priced
        self._boards.fill(draft, told[0], price, scope)
        scope = self._of_some.left_to_board(self._footnotes.put_first(scope, price.index), draft)
        scope = self._of_columns.left_to(scope, price.index)
        of_terms = self._ways.left_to(scope, draft, price.index, whole.cells)
        self._terms.fill(draft, told[1], price, of_terms)
        fill_until(draft, price, self._facts)
        if (lead := self._told.lead_at(whole.row.index, price.index)) is not None:
            fill_lead(draft, *lead)
        elif price.lead is not None:
            fill_lead_of_head(draft, price)
        else:
            fill_lead_of_board(draft, whole.cells, self._read.columns, of_terms)
        fill_minimum_of_board(draft, whole.cells, self._read.columns, of_terms, self._facts)
        self._of_some_boards.fill(draft, whole.cells, price, self._read.columns, scope)
        columns = self._columns[price.index]
        parts = parts_of_row(whole.cells, columns, scope)
        fill_price(draft, read, whole, columns, self._money(price, scope, board_priced(draft), parts), self._facts)
        bracket = self._brackets.of(price, whole.row.index, scope)
        fill_bracket(draft, bracket)
        self._sizes.see(draft, bracket, whole.cells, (draft.label, *(words.text for words in scope.headings)))
        of_size = fill_terms_by_size(draft, scope, self._facts)
        free, chosen = free_for(scope, draft, self._facts), self._optional.of_row(whole.cells)
        charged = charge_columns(price, self._offers, whole.cells, columns, free, draft, chosen, scope)
        below = *self._charges_of.get(price.index, ()), *self._charges_below.get(whole.row.index, ()), *of_size
        load, ways = load_of(bracket), lambda: self._ways.own(scope, draft, price.index, whole.cells)
        fill_charges(draft, whole.cells, columns, scope, self._facts, charged, below, load, ways)
        drop_told_of_loads(draft, scope, load)
        fill_hidden(draft, self._read.table.view, whole.row.index, price.index)
        doubtful = self._doubt_of_table(draft, scope)
        if doubtful:
            ask_of_column(draft, doubtful)
        own = self._row_changes.of(whole, price, scope.headings, columns)
        before = figures_in(whole.cells, self._previous)
        ask_of_change(draft, price, scope, self._facts, own, beside=self._kinds, before=before)
        doubt = whole.doubt or doubt_of_column(price, apart=price.index in self._apart, explained=bool(doubtful))
        if doubt:
            ask_of_column(draft, doubt)
        note_indicative(draft, read, price, whole.cells, columns, scope)
        self._going_out.note(draft, whole.cells, scope.headings)
        ask_of_struck_board(draft, whole.cells, columns, self._facts)
        ask_of_another_board(draft, whole.cells, columns, self._facts)
        fill_comment(draft, self._facts)

    def _doubt_of_table(self, draft: Draft, scope: Scope) -> str:
        """What the table's columns leave open, but where a usual price in a stated unit, or a note, settles it."""
        doubt = self._read.columns.doubt
        told = draft.currency is not None and draft.basis is not None and not draft.far_off
        at_rest = (doubt == UNNAMED and told) or (doubt == DISCOUNT_BESIDE and bool(scope.nearest(DiscountTaken)))
        return "" if at_rest else doubt

    def _describe_board(self, draft: Draft, cells: Cells, price: PriceColumn, scope: Scope) -> None:
        columns = self._columns[price.index]
        if self._last_board is None or self._last_board[0] is not cells or self._last_board[1] is not columns:
            self._last_board = cells, columns, board_of(cells, columns, scope, self._facts)
        fill_board(draft, with_column(self._last_board[2], price), self._facts)

    def _describe_terms(self, draft: Draft, cells: Cells, price: PriceColumn, scope: Scope) -> None:
        columns = self._of_ways[price.index]
        last = self._last_terms
        if last is None or last[0] is not cells or last[1] is not columns or last[2] is not scope:
            last = self._last_terms = cells, columns, scope, terms_of(cells, columns, scope, self._facts)
        fill_terms(draft, last[3], price, self._vendor, heads_differ=self._heads_differ)

    def _money(self, price: PriceColumn, scope: Scope, board: BoardPriced, parts: frozenset[str]) -> Around:
        key = (price.index, id(scope), board, parts)
        if key not in self._around:
            levels = self._footnotes.left_to_column(scope.levels, price.index)
            scope = scope if levels is scope.levels else Scope(levels)
            self._around[key] = around(price, scope, self._claimed, self._facts, board, parts)
        return self._around[key]
