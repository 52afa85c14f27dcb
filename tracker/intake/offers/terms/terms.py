"""Lead time, validity, smallest order, delivery and vendor of a row: its own cells first, then what stands around it.

None of these holds an offer back: what is unclear stays open, with a note where something was written.
"""

from collections.abc import Iterator, Sequence
from datetime import date, datetime

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.columns.roles.cells import lead_of
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import of_board
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.of_others_perhaps import of_others_perhaps
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.order_terms import dearer_small_orders, least_order, leasts_unread
from tracker.intake.offers.terms.leads_around import lead_of_stock, leads_around
from tracker.intake.offers.terms.terms_said import Cells, Terms, cell_of, remarked
from tracker.intake.offers.terms.validity_terms import take_validity
from tracker.intake.offers.terms.vendor import vendor_over
from tracker.intake.values.firms.company import may_call_a_vendor
from tracker.intake.values.freight.delivery import Delivery, find_delivery, terms_under
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import KEYED, sign_ahead
from tracker.intake.values.notes.word_keys import as_key
from tracker.intake.values.times.lead import LeadTime, counts_plain_days
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_sentences import lead_among
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity_cell import validity_text
from tracker.intake.words.lists import phrases
from tracker.trade.offer import Evidence, Note, NoteCode


def terms_of(cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> Terms:
    """The terms that hold for every price of a row."""
    if not columns.of(*TERM_ROLES):
        return _around(scope, facts)
    terms = Terms()
    _lead(terms, cells, columns, scope, facts)
    take_validity(terms, cells, columns, scope, facts)
    _orders(terms, cells, columns, scope, facts)
    _delivery(terms, cells, columns, scope)
    _received(terms, cells, columns, facts)
    _vendor(terms, cells, columns, scope)
    return terms


def _vendor(terms: Terms, cells: Cells, columns: Columns, scope: Scope) -> None:
    """A firm under 'Vendor'; one under 'Mill' makes the board, and a merchant who names himself sells it. Beside a
    vendor the firm under 'Company name' may be whose extract it is."""
    firms = [column for column in columns.of(Role.VENDOR) if column.index in cells]
    named = [column for column in firms if may_call_a_vendor(cells[column.index].text)]
    makers = [column for column in named if phrases("makers").find(column.text)]
    sellers = [column for column in named if column not in makers]
    told = [column for column in sellers if phrases("company_heads").whole(column.text) is None]
    terms.vendor = _first_name(cells, told or sellers) or vendor_over(scope.headings)
    terms.maker = _first_name(cells, makers)


def _first_name(cells: Cells, columns: Sequence[Column]) -> str | None:
    return cells[columns[0].index].text.strip() if columns else None


TERM_ROLES = (
    Role.LEAD_TIME, Role.VALIDITY, Role.MINIMUM, Role.DELIVERY_TERMS, Role.RECEIVED, Role.VENDOR,
    Role.REMARKS,
)  # fmt: skip
"""The columns that may be read here: the row's other cells are not handed over."""


def _around(scope: Scope, facts: FileFacts) -> Terms:
    """Terms that no column of the table speaks of: the same for every row with the same texts around it."""
    known = scope.terms.get("terms")
    if not isinstance(known, Terms):
        known = Terms()
        nothing = Columns(())
        _lead(known, {}, nothing, scope, facts)
        take_validity(known, {}, nothing, scope, facts)
        _orders(known, {}, nothing, scope, facts)
        _delivery(known, {}, nothing, scope)
        known.vendor = vendor_over(scope.headings)
        scope.terms["terms"] = known
    return known


def _lead(terms: Terms, cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> None:
    if _lead_between(terms, cells, columns):
        return
    for column in columns.of(Role.LEAD_TIME):
        cell = cells.get(column.index)
        if cell is None:
            continue
        unit = column.lead_unit or facts.lead_unit
        read = lead_of(cell, unit) or (lead_among(cell.text) if isinstance(cell.value, str) else None)
        if read is not None or not _is_key(cell, scope):
            _take_own_lead(terms, cell, read)
            return
    if _lead_beside_delivery(terms, cells, columns):
        return
    remarked = next(_leads_remarked(cells, columns), None)
    if remarked is not None:
        _take_own_lead(terms, *remarked)
        return
    unread = scope.lead_unread
    if not unread:
        _take_lead(terms, leads_around(scope))
        unread = scope.nearest(LeadUnread)
    of_stock = lead_of_stock(scope, unread[0]) if unread and terms.lead_days is None else None
    if of_stock is not None and not terms.notes:
        terms.lead_days = of_stock.days
        terms.evidence.append(unread[0].evidence("lead_days"))
    elif unread and terms.lead_days is None and not terms.notes:
        terms.notes.append(Note(NoteCode.LEAD_TIME_UNREAD, unread[0].where, _of_unread(unread[0].value)))


def _is_key(cell: Cell, scope: Scope) -> bool:
    """'E' and 'Express' in a column of lead times, where 'E = from stock' and 'Express: 1 week' are said of the rows
    that have them; 'TBA' is no key."""
    own = next((level for level in scope.levels if level.of_some), None)
    if own is None or not own.all_of(LeadTime):
        return False
    worded = any(sign_ahead(words.text) == f"{KEYED}{as_key(cell.text)}" for words in own.texts)
    return worded or (len(cell.text.strip()) == 1 and cell.text.strip().isalpha())


def _of_unread(told: LeadUnread) -> str:
    return of_others_perhaps(told.words) if told.perhaps else not_counted(told.words)


def not_counted(words: str) -> str:
    """What is told of words that speak of a lead time and give none."""
    return f"“{words}” gives no lead time that can be counted."


def _leads_remarked(cells: Cells, columns: Columns) -> Iterator[tuple[Cell, LeadTime | LeadUnread]]:
    """What the row's remarks say of its lead time."""
    for column in columns.of(Role.REMARKS):
        cell = cells.get(column.index)
        said = lead_remarked(cell.text) if cell is not None and isinstance(cell.value, str) else None
        if cell is not None and said is not None:
            yield cell, said


def _take_own_lead(terms: Terms, cell: Cell, said: LeadTime | LeadUnread | None) -> None:
    """What a cell of the row says of its lead time; what can't be counted is told."""
    if isinstance(said, LeadTime):
        terms.lead_days = said.days
        terms.evidence.append(Evidence("lead_days", at(cell), cell.text))
    else:
        _not_read(terms, NoteCode.LEAD_TIME_UNREAD, cell, "lead time")


def _lead_between(terms: Terms, cells: Cells, columns: Columns) -> bool:
    """'Lead time, weeks' over 'min' and 'max': the shortest and the longest, in two columns."""
    columns_of_times = columns.of(Role.LEAD_TIME)
    if len(columns_of_times) != 2 or not all(column.index in cells and column.said for column in columns_of_times):
        return False
    first, last = columns_of_times
    ends = [phrases("bracket").whole(column.said[-1].text) for column in (first, last)]
    shortest, longest = (lead_of(cells[column.index], column.lead_unit) for column in (first, last))
    if ends[0] != "from" or ends[1] not in ("up_to", "to") or shortest is None or longest is None:
        return False
    terms.lead_days = (shortest.days[0], max(shortest.days[0], longest.days[1]))
    for column in (first, last):
        terms.evidence.append(Evidence("lead_days", at(cells[column.index]), cells[column.index].text))
    return True


def _lead_beside_delivery(terms: Terms, cells: Cells, columns: Columns) -> bool:
    """'frei Haus, 4 Wochen' and '4 Wochen' under 'Lieferung' say when; of 'KW 34' is told that it was not read."""
    cell = cell_of(cells, columns, Role.DELIVERY_TERMS)
    if cell is None or not isinstance(cell.value, str):
        return False
    lead = None if _may_be_payment(cell, columns) else lead_among(cell.text)
    if lead is not None:
        _take_own_lead(terms, cell, lead)
    elif any(sign.isdigit() for sign in cell.text) and not _says_otherwise(cell.text):
        _not_read(terms, NoteCode.LEAD_TIME_UNREAD, cell, "lead time")
    return lead is not None


def _says_otherwise(text: str) -> bool:
    """'DAP zone 3', 'net 30 days': terms with a figure, and no lead time."""
    return (
        find_delivery(text) is not None or bool(phrases("not_lead").find(text)) or counts_plain_days(text) is not None
    )


def _may_be_payment(cell: Cell, columns: Columns) -> bool:
    """'30 days' and no more under 'Terms', which says nothing of delivery."""
    heads = (column.text for column in columns.of(Role.DELIVERY_TERMS) if column.index == cell.column)
    return counts_plain_days(cell.text) is not None and not any(phrases("lead_topic").find(head) for head in heads)


def _take_lead(terms: Terms, said: tuple[Said[LeadTime], ...]) -> None:
    if any(one.value.grades for one in said):
        # Which of them holds is told once the row's grade is known.
        return
    if len({one.value.days for one in said}) == 1:
        terms.lead_days = said[0].value.days
        terms.evidence.append(said[0].evidence("lead_days"))
    elif said:
        terms.notes.append(Note(NoteCode.LEAD_TIME_UNREAD, said[0].where, "The sheet gives more than one lead time."))


def lead_of_grade(scope: Scope, draft: Draft) -> Said[LeadTime] | None:
    """The one lead time that the nearest level gives a board by its grade, or all boards beside others named."""
    own = of_board(scope.nearest(LeadTime), draft)
    return own[0] if len({one.value.days for one in own}) == 1 else None


def _orders(terms: Terms, cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> None:
    least = least_order(cells, columns, scope, facts)
    if isinstance(least, Note):
        terms.notes.append(least)
    elif least is not None:
        terms.minimum_kg, said = least
        terms.evidence.append(said)
    terms.notes.extend(leasts_unread(least, cells, scope))
    terms.notes.extend(dearer_small_orders(cells, columns, scope))


def _delivery(terms: Terms, cells: Cells, columns: Columns, scope: Scope) -> None:
    for column in columns.of(Role.DELIVERY_TERMS):
        cell = cells.get(column.index)
        if cell is None:
            continue
        read = terms_under(cell.text, column.text) or find_delivery(cell.text)
        if read is not None:
            _take_delivery(terms, read, at(cell), cell.text.strip())
            terms.own_delivery = terms.delivered is not None
            return
    for remark, said_here in remarked(cells, columns, Delivery):
        if not said_here.of_lead_time:
            _take_delivery(terms, said_here, at(remark), remark.text.strip())
            terms.own_delivery = terms.delivered is not None
            return
    # 'Delivery 3 weeks ex works' counts the weeks from the works, where another text says what prices include.
    of_prices = ([one for one in level.all_of(Delivery) if not one.value.of_lead_time] for level in scope.levels)
    said = next((found for found in of_prices if found), None) or scope.nearest(Delivery)
    # 'Franco à partir de 20 t : nous consulter' beside 'prix départ usine' tells of other prices.
    said = [one for one in said if not one.value.on_request] or said
    if len({one.value.delivered for one in said}) == 1:
        _take_delivery(terms, said[0].value, said[0].where, said[0].words)
    if said and all(one.value.by_place for one in said):
        terms.by_place = said[0].evidence("delivered")
    some = [one for one in scope.all_of(Delivery) if one.value.conditional]
    if terms.delivered and some:
        terms.delivered = None
        text = f"“{some[0].words.strip()}”: not every price includes freight. Ask the vendor whether yours does."
        terms.notes.append(Note(NoteCode.NUMBER_AMBIGUOUS, some[0].where, text))
    perhaps = [one for one in said if one.value.perhaps]
    if terms.delivered is None and perhaps:
        text = f"“{perhaps[0].words.strip()}” may be said of this price too. Ask the vendor whether freight is in it."
        terms.notes.append(Note(NoteCode.NUMBER_AMBIGUOUS, perhaps[0].where, text))


def _take_delivery(terms: Terms, read: Delivery, where: str, words: str) -> None:
    if read.delivered is not None:
        terms.delivered = read.delivered
        terms.evidence.append(Evidence("delivered", where, words))


def _received(terms: Terms, cells: Cells, columns: Columns, facts: FileFacts) -> None:
    cell = cell_of(cells, columns, Role.RECEIVED)
    if cell is None:
        return
    if isinstance(cell.value, date):
        terms.received = cell.value.date() if isinstance(cell.value, datetime) else cell.value
        return
    read = validity_text(cell.text)
    if read is not None:
        terms.received = read.last_day(facts.date_order, None)


def delivered_by_column(price: PriceColumn, terms: Terms, *, heads_differ: bool) -> bool | None:
    """What the row itself says of delivery, else the price's own head, else what the sheet says.

    `heads_differ`: 'FOB mill | Delivered' tell the row's prices apart, and no cell of the row speaks of both.
    """
    by_head = price.delivery.delivered if price.delivery is not None else None
    if by_head is not None and (heads_differ or not terms.own_delivery):
        return by_head
    return terms.delivered


def delivered_by_place(price: PriceColumn, terms: Terms) -> Evidence | None:
    """What says that the price of a place includes freight: 'entregado según zona' over 'Zona norte'."""
    placed = any(head.strength(Role.DESTINATION) for head in price.column.said)
    return terms.by_place if placed and terms.delivered is None else None


def _not_read(terms: Terms, code: NoteCode, cell: Cell, what: str) -> None:
    terms.notes.append(Note(code, at(cell), f"“{cell.text.strip()}” gives no {what} that can be counted."))
