"""Texts around tables, row by row: a label and the value beside it are read as one statement."""

import re
from collections.abc import Iterable
from datetime import date, datetime

from tracker.intake.grid import Cell
from tracker.intake.tables.additions import with_additions
from tracker.intake.tables.figures import as_formatted, is_figure
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.table import Words
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.firms.company import company_name, labelled_company
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases


def words_of(view: View, rows: Iterable[int]) -> list[Words]:
    """Everything that some rows say, in order."""
    return list(with_additions(row_words(view, row) for row in rows))


def row_words(view: View, row: int) -> list[Words]:
    """What one row says: each cell by itself, or joined to the label before it."""
    found: list[Words] = []
    label: Cell | None = None
    cells = [cell for _, cell in sorted(view.rows.get(row, {}).items())]
    for place, cell in enumerate(cells):
        said = shown(cell)
        if not said:
            continue
        apart = label is not None and (place > 1 or cell.column > label.column + 1)
        if apart and _asks_for_the_next(cell, cells[place - 1], cells[place + 1 :]):
            label = None
        if label is not None and _is_a_firms_name(cells[place - 1], label, found[-1].text):
            label = None
        if label is not None and place > 1 and _numbers_a_list(shown(cells[place - 1])):
            # 'Kartong AB | Prislista 4 | SEK per 1000 kg': nothing costs 4 SEK.
            label = None
        if label is not None and _stands_apart(cell, label):
            label = None
        if label is None and place and _is_unit_of_a_charge(cells[place - 1], cell):
            continue
        if label is not None:
            text = f"{_labelled(found[-1].text, label)} {said}"
            found[-1] = Words(view.sheet, row, label, text)
        else:
            found.append(Words(view.sheet, row, cell, said))
        # 'Minimum order' | '5' | 't': a label goes on collecting while the cells stay short.
        labels = _is_label(cell) or _names_an_amount(cells[place:]) or _leads_to_a_day(cells[place : place + 2])
        label = label or (cell if labels else None)
        if label is not None and label is not cell and len(said) > 40:
            label = None
    return found


def _asks_for_the_next(cell: Cell, before: Cell, following: list[Cell]) -> bool:
    """The 'Währung' of 'Lieferant | Kartonwerk AG | Währung | EUR': a line of a form may ask for several things."""
    if _labels_a_party_or_a_unit(cell, before, following):
        return True
    head = head_of(cell) if following and isinstance(cell.value, str) else None
    if head is None or not head.named or any(map(str.isdigit, cell.text)):
        return False
    if head.role in _OF_UNITS:
        # The unit behind 'Minimum order: | 5' is that of the 5; what prices are per stands behind words.
        worded = isinstance(before.value, str) and not number_readings(before.text)
        return worded and (ends_in_colon(cell) or price_unit(following[0].text) is not None)
    return head.role in _ASKED_FOR


def _labels_a_party_or_a_unit(cell: Cell, before: Cell, following: list[Cell]) -> bool:
    """The 'Seller:' of 'Buyer: | Birch Carton Co. | Seller: | Alder Paperboard Inc.', and the 'Basis:' before a unit of
    prices, both behind an answer."""
    if not ends_in_colon(cell) or ends_in_colon(before) or not isinstance(before.value, str):
        return False
    label = cell.text.strip(" :")
    party = any(phrases(section).whole(label) is not None for section in ("addressees", "letters_to"))
    party = party or phrases("company").whole(label) in ("label", "signs")
    # The 't' of 'Minimum order: | 5 | Unit: | t' is that of the 5.
    unit = price_unit(following[0].text) if following and not number_readings(before.text) else None
    return party or (unit is not None and phrases("unit_words").whole(label) is not None)


_OF_UNITS = (Role.BASIS, Role.PER_QUANTITY)


def ends_in_colon(cell: Cell) -> bool:
    """Whether a cell labels what stands beside or below it."""
    return cell.text.rstrip().endswith(":")


_ASKED_FOR = frozenset(
    {
        Role.CURRENCY, Role.DELIVERY_TERMS, Role.VALIDITY, Role.LEAD_TIME, Role.MINIMUM, Role.PAYMENT, Role.RECEIVED,
        Role.PROPERTY,
    }
)  # fmt: skip
"""'Quote no.' and 'Buyer' are properties, which say nothing of prices."""


def _is_a_firms_name(cell: Cell, label: Cell, said: str) -> bool:
    """The name of 'Vendor: | Ferrowick Board | | by phone': what follows it is said by itself. Further away from its
    label, as 'Offer No.' is in 'Company | | | Offer No. | 26-114', it may be a label too."""
    return cell.column == label.column + 1 and labelled_company(said) is not None


def _stands_apart(cell: Cell, label: Cell) -> bool:
    """The firm at the right edge of a letterhead that begins with a paper's number: 'Quote 418 | | | Tarn Board AB'.
    Right beside the number may stand who is written to."""
    return (
        cell.column > label.column + 1 and _numbers_a_list(label.text) and company_name(cell.text) == cell.text.strip()
    )


def _labelled(said: str, label: Cell) -> str:
    """What is collected so far; a bare label takes the colon that it would have in one cell ('Vendor' | 'X Inc.'), and
    a list's number too: 'Quote 4711' beside 'US$ per cwt' is no amount."""
    worded = said[-1:].isalpha() or _ENDS_IN_WORDS.search(said) is not None
    ends = worded or _numbers_a_list(said) or _CODE.fullmatch(said) is not None or _ends_in_a_code(said)
    bare = said == label.text.strip() and ends
    return f"{said}:" if bare else said


def _numbers_a_list(said: str) -> bool:
    return any(map(str.isdigit, said)) and any(match.start == 0 for match in phrases("list_names").find(said))


def _ends_in_a_code(said: str) -> bool:
    """'Customer prices CP-220' beside 'US$ per cwt' is no amount of 220; 'Price EUR-220' may be one."""
    code = _CODE_BEHIND.search(said) if phrases("price_words").find(said) else None
    return code is not None and not find_currencies(code["letters"])


_CODE_BEHIND = re.compile(r"\s(?P<letters>[^\W\d_]{1,5})[-/]\d+[A-Z]?$")
_ENDS_IN_WORDS = re.compile(r"[^\W\d]\s*\([^()]*[^\W\d][^()]*\)$")
"""'Prices are per (ton / cwt / MSF)'."""
_CODE = re.compile(r"[^\W\d]{1,4}\d{1,3}")
"""'G2' beside what it stands for."""


def shown(cell: Cell) -> str:
    """The cell's text, a figure with what its format says; a true date is written so that it is read one way only."""
    if isinstance(cell.value, datetime):
        return cell.value.date().isoformat()
    if isinstance(cell.value, date):
        return cell.value.isoformat()
    return _worded(as_formatted(cell))


def _worded(text: str) -> str:
    """'FACTURÉ EN SUS' with small letters where a code for a grade is a part of other words."""
    for said in phrases("codes_in_words").find(text) if text.isupper() else ():
        text = f"{text[: said.start]}{text[said.start : said.end].lower()}{text[said.end :]}"
    return text


def _is_unit_of_a_charge(before: Cell, cell: Cell) -> bool:
    """'Freight from mill (add if we ship) | | $/cwt' heads a table of freight: the prices of board are per something
    else."""
    unit = price_unit(cell.text) if isinstance(cell.value, str) and isinstance(before.value, str) else None
    return unit is not None and bool(charges_named(before.text)) and not phrases("price_words").find(before.text)


def _names_an_amount(cells: list[Cell]) -> bool:
    """'Small order | 12 | $/cwt' says what that is charged, and in no word what boards are priced per."""
    if len(cells) != _AN_AMOUNT or not isinstance(cells[0].value, str) or names_grade(cells[0].text):
        return False
    unit = price_unit(cells[2].text) if isinstance(cells[2].value, str) else None
    return is_figure(cells[1]) and unit is not None and unit.currency is not None and unit.basis is not None


def _leads_to_a_day(cells: list[Cell]) -> bool:
    """'Tender open for acceptance until | 2027-01-29', which is no head of a column: with the day the two say how long
    prices hold, and the words alone do not."""
    if len(cells) == 1 or not isinstance(cells[0].value, str) or not find_dates(shown(cells[1])):
        return False
    label, day = map(shown, cells)
    return not any(map(_is_validity, statements(label))) and any(map(_is_validity, statements(f"{label}: {day}")))


def _is_validity(said: Statement) -> bool:
    return isinstance(said, Validity) and said.until is not None


_AN_AMOUNT = 3
"""Cells: its name, its figure, its unit."""
_FOOTNOTE_SIGN = re.compile(r"\(?[*†‡§°¹²³⁴⁵⁶⁷⁸⁹]+\)?")


def _is_label(cell: Cell) -> bool:
    text = cell.text.strip()
    if ends_in_colon(cell) or _FOOTNOTE_SIGN.fullmatch(text):
        return True
    head = head_of(cell) if len(text) < 40 and isinstance(cell.value, str) else None
    return head is not None and head.named and not head.answers_itself and not _says_the_terms(text)


def _says_the_terms(text: str) -> bool:
    """'Warehouse pick-up, ex works' says who bears the way, whatever stands beside it; 'FCA' asks for a place."""
    return COMMA.search(text) is not None and any(isinstance(said, Delivery) for said in statements(text))
