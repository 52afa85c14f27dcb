"""What stands below one firm's name, down to the next firm's, is said by that firm alone: 'Lead time 5 weeks, minimum
20,000 lb' over its table says nothing of the table of another firm further down."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import count, pairwise, takewhile

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.of_all_prices import names_all_prices
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.terms.vendor import plain_name, vendor_among
from tracker.intake.tables.table import Words
from tracker.intake.values.firms.company import labelled_company
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.trade.offer import NoteCode

_TOLD_OF: dict[type[object], NoteCode] = {
    LeadTime: NoteCode.LEAD_TIME_UNREAD,
    LeadUnread: NoteCode.LEAD_TIME_UNREAD,
    Validity: NoteCode.VALIDITY_UNREAD,
    SaysMinimum: NoteCode.BRACKET_UNREAD,
    LeastUnread: NoteCode.BRACKET_UNREAD,
    ChargeWords: NoteCode.NUMBER_AMBIGUOUS,
    Delivery: NoteCode.NUMBER_AMBIGUOUS,
}
"""The notes about terms that may be those of an offer, by what they are of."""


def take_notes_of_firms(tables: Sequence[ReadTable]) -> None:
    """Gives a table the words right below it, where a firm's name stands between them and the table after it: as they
    touch that name they were taken for titles, too."""
    for before, after in pairwise(sorted(tables, key=lambda read: read.table.first_row)):
        above, below = before.table, after.table
        named = _nearest_name(below.titles)
        notes = tuple(words for words in below.titles if named is not None and words.row < named[0])
        if notes and notes[0].row == above.last_row + 1:
            above.notes += notes
            below.titles = tuple(words for words in below.titles if words not in notes)


def said_by_other_firms(read: ReadTable, sheet: ReadSheet) -> set[Words]:
    """The texts of a sheet that a firm over other tables says of these.

    What stands above the first name holds for all, and so does what speaks of all who offer. What stands below the last
    table and a gap does, unless terms stand below the tables of an earlier firm as well; right below the table only
    what says in which unit all prices are.
    """
    starts = _first_rows(sheet)
    if len(set(starts.values())) <= 1:
        return set()
    own = _firm_at(read.table.first_row, starts)
    end = max(table.table.last_row for table in sheet.tables)
    apart = _has_terms_between(sheet, starts)
    touching = _rows_touching(end, sheet)
    return {
        words
        for words in sheet.found.texts
        if _firm_at(words.row, starts) not in (None, own)
        and not (words.row > end and (not apart or names_all_prices(words.text)) and words.row not in touching)
        and not (words.row in touching and _tells_unit(words.text))
        and not phrases("of_all_who_offer").find(words.text)
    }


def tell_of_the_last_firm_s(drafts: Iterable[Draft], read: ReadTable, sheet: ReadSheet) -> None:
    """Tells the offers of an earlier firm that have no terms at all of those right below the last firm's table: they
    may be meant for every firm."""
    bare = [draft for draft in drafts if not _has_terms(draft)]
    theirs = said_by_other_firms(read, sheet) if bare else set()
    if not theirs or _has_terms_between(sheet, _first_rows(sheet)):
        return
    touching = _rows_touching(max(table.table.last_row for table in sheet.tables), sheet)
    for words in sorted(theirs, key=lambda each: (each.row, each.cell.column)):
        kinds = map(type, statements(words.text)) if words.row in touching else ()
        code = next((_TOLD_OF[kind] for kind in kinds if kind in _TOLD_OF), None)
        if code is None:
            continue
        text = f"“{words.text.strip()}” stands below another firm's prices, and may hold for this offer too."
        for draft in bare:
            draft.note(code, at(words.cell), f"{text} Ask the vendor.")


def _has_terms(draft: Draft) -> bool:
    told = (draft.lead_days, draft.valid_until, draft.valid_at_latest, draft.minimum_kg, draft.delivered)
    return bool(draft.charges) or any(term is not None for term in told)


def _rows_touching(end: int, sheet: ReadSheet) -> set[int]:
    """The unbroken rows of words right below the last table."""
    said = {words.row for words in sheet.found.texts}
    return set(takewhile(said.__contains__, count(end + 1)))


def _tells_unit(text: str) -> bool:
    return any(isinstance(one, SaysBasis | SaysCurrency) for one in statements(text))


def _first_rows(sheet: ReadSheet) -> dict[int, str]:
    """Where a firm's name stands over a table, and whose; none where tables stand beside each other.

    A firm is called by its shorter name: 'Nordwald Karton' is 'Nordwald Karton GmbH'.
    """
    tables = sorted(sheet.tables, key=lambda read: read.table.first_row)
    if any(after.table.first_row <= before.table.last_row for before, after in pairwise(tables)):
        return {}
    starts: dict[int, str] = {}
    edge = -1
    for read in tables:
        over = {*sheet.found.texts, *read.table.titles}
        named = _nearest_name([words for words in over if edge < words.row < read.table.first_row])
        starts |= {} if named is None else {named[0]: named[1]}
        edge = read.table.last_row
    if starts:
        starts |= dict(_blocks_without_prices(sheet, after=min(starts)))
    return {row: min((name for name in starts.values() if _are_one(name, own)), key=len) for row, own in starts.items()}


def _are_one(one: str, other: str) -> bool:
    short, long = sorted((_plain(one), _plain(other)), key=len)
    return f"{long} ".startswith(f"{short} ")


def _plain(name: str) -> str:
    """A firm's name without its legal form."""
    words = plain_name(name).split()
    while len(words) > 1 and phrases("company").whole(words[-1]) == "legal":
        words.pop()
    return " ".join(words)


def _blocks_without_prices(sheet: ReadSheet, after: int) -> Iterator[tuple[int, str]]:
    """'Vendor: Sorbek Board' over 'sold out through August': no table is his, and what stands there is said by him."""
    last = max(read.table.first_row for read in sheet.tables)
    for words in sheet.found.texts:
        firm = labelled_company(words.text) if after < words.row < last else None
        if firm is not None:
            yield words.row, fold(firm)


def _nearest_name(over: Iterable[Words]) -> tuple[int, str] | None:
    """The row of the lowest text that names a firm, and the firm."""
    for words in sorted(over, key=lambda each: (-each.row, each.cell.column)):
        named = vendor_among([words])
        if named is not None:
            return words.row, fold(named.value)
    return None


def _firm_at(row: int, starts: dict[int, str]) -> str | None:
    """The firm whose name is the last at or above a row."""
    above = [start for start in starts if start <= row]
    return starts[max(above)] if above else None


def _has_terms_between(sheet: ReadSheet, starts: dict[int, str]) -> bool:
    """Whether terms stand below a table and above the next firm's name."""
    ends = [read.table.last_row for read in sheet.tables]
    noted = any(read.table.notes for read in sheet.tables if read.table.last_row < max(starts))
    return noted or any(
        end < words.row < start and bool(statements(words.text))
        for start in starts
        if (end := max((end for end in ends if end < start), default=None)) is not None
        for words in sheet.found.texts
    )
