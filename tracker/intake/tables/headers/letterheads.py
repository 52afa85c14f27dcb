"""Lines of the letterhead above a header, and fields of a letter: they look like heads, and head no column."""

import re
from collections import Counter
from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headerless.headless import describes_board
from tracker.intake.tables.headers.heads import Head, head_of
from tracker.intake.tables.view import View
from tracker.intake.tables.words import ends_in_colon
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.freight.delivery import delivery_text, find_delivery
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.values.notes.dated import SaysDate
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import counts_pages, find_price_unit
from tracker.intake.values.times.lead import lead_text
from tracker.intake.values.times.validity import validity
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def is_letterhead(view: View, row: int) -> bool:
    """'Cartones Brezalta, S.L. | Portes incluidos', 'Lieferant | Kartonwerk AG | Währung | EUR', 'Tarifa 2026/3 |
    válida hasta 31/12': who quotes, or the list's number, at the left edge of the row below. Firms beside each other
    head the prices of each. 'RPT0047 | Customer price report | Page 2 of 2' heads a page wherever it stands."""
    cells = view.rows[row]
    texts = [cells[column].text for column in sorted(cells)]
    if any(map(_tells_the_page, texts)):
        return True
    if len(texts) < _FEWEST or min(cells) > min(view.rows.get(row + 1, cells)):
        return False
    firms = [place for place, text in enumerate(texts) if _names_a_firm(text)]
    if firms:
        return len(firms) == 1 and (firms[0] == 0 or (firms[0] == 1 and _leads_to_a_firm(texts[0])))
    named = any(map(str.isdigit, texts[0])) and bool(phrases("list_names").at(tokens_of(texts[0]), 0))
    return named or _is_numbered(texts) or _is_a_term(view, row) or _followed_by_terms(view, row) or _titles(view, row)


def _titles(view: View, row: int) -> bool:
    """'Moorfield Sheet & Roll | Prices £ per tonne, ex works' over 'Grade | GSM | Caliper | Price £/t': what all prices
    are in, over the measure of a board, where every column has a head of its own."""
    (left, _), (column, told), *others = sorted(view.rows[row].items())
    below = view.rows.get(row + 1, {})
    heads = [head_of(cell) for cell in below.values()]
    if others or left != min(below, default=None) or not all(head is not None and head.named for head in heads):
        return False
    under, unit = _head_below(below, column), find_price_unit(told.text)
    in_money = unit is not None and unit.currency is not None and bool(phrases("price_words").find(told.text))
    return under is not None and under.role in MEASURES and (in_money or bool(phrases("list_names").find(told.text)))


def _tells_the_page(text: str) -> bool:
    """'Seite 2 von 3', 'Page 2/2'; 'Blatt 100', 'Hoja 72 x 102' and 'Blatt 70/100' may be what a price is for."""
    figures = re.findall(r"\d+", text)
    if not counts_pages(fold(text).strip()) or len(figures) < _FEWEST or find_sheet_sizes(text):
        return False
    return "/" not in text or int(figures[-1]) < _SMALLEST_SIDE


_SMALLEST_SIDE = 40
"""Of a sheet in cm; common practice, no source."""


def _is_a_term(view: View, row: int) -> bool:
    """'Minsta order | 2 ton', 'Lead time | 1-2 weeks' right above heads: a label and what it says of all below, where
    no price stands under that."""
    (_, label), (column, value), *others = sorted(view.rows[row].items())
    below = _head_below(view.rows.get(row + 1, {}), column)
    if others or below is None or below.price or below.across:
        return False
    roles = header_roles(label.text)
    named = bool(roles) and roles[0].role in _TERMS and roles[0].strength >= _PLAINLY
    return named and head_of(value) is not None and not _heads_plainly(value.text)


_TERMS = frozenset({
    Role.LEAD_TIME, Role.VALIDITY, Role.VALID_FROM, Role.MINIMUM, Role.DELIVERY_TERMS, Role.PAYMENT, Role.RECEIVED,
})  # fmt: skip


def _is_numbered(texts: Sequence[str]) -> bool:
    """'QUOTATION | Quote # | Q-26-2209': what the paper is called, and its number."""
    return phrases("list_names").whole(texts[0]) is not None and any(map(_numbers_it, texts[1:]))


def _numbers_it(text: str) -> bool:
    roles = header_roles(text)
    return bool(roles) and roles[0].role is Role.PROPERTY and bool(phrases("list_names").find(text))


def _followed_by_terms(view: View, row: int) -> bool:
    """'Board Materials | | ex works Cork | 5 days': terms of the list, none of them over a price."""
    (left, first), *others = sorted(view.rows[row].items())
    below = view.rows.get(row + 1, {})
    heads = [_head_below(below, column) for column, _ in others]
    # 'USD/ST | FOB mill | | Delivered' over 'Rolls | Sheets | Rolls | Sheets' heads the prices of each.
    all_below = [head for cell in below.values() if (head := head_of(cell)) is not None]
    spread = Counter(head.across for head in all_below)
    several = sum(head.price or bool(head.across) for head in all_below) > 1
    priced = any(
        head is None or (head.price and several) or (head.across and spread[head.across] > 1) for head in heads
    )
    # Over 'Lyon | Lille', which may head prices, 'Prix €/tonne | Départ usine | Franco' are heads.
    known = all(head is not None and head.named for head in heads)
    titles = not _heads_plainly(first.text) or (known and _is_of_all_prices(first, _head_below(below, left)))
    return not priced and titles and all(_is_term(cell.text) for _, cell in others)


def _is_of_all_prices(first: Cell, below: Head | None) -> bool:
    """'Prices in SEK/kg excl. VAT' over the head of the boards says what all prices are in."""
    unit = find_price_unit(first.text)
    over_boards = below is not None and below.named and not (below.price or below.across)
    return over_boards and unit is not None and unit.currency is not None


def _head_below(below: dict[int, Cell], column: int) -> Head | None:
    return head_of(below[column]) if column in below else None


def _is_term(text: str) -> bool:
    """Delivery, how long it takes, or until when a price holds."""
    held = validity(text)
    return delivery_text(text) is not None or lead_text(text) is not None or (held is not None and not held.unread)


def is_stamped(view: View, row: int) -> bool:
    """'EXTRACTION TARIFS | Édité le 13/11/2026', 'RPT_ID | PRC04 | RUN | 2026-11-12 06:14': what a program writes over
    its export, from the first column on. 'bis 31.12. | ab 1.1.2027' over prices heads these."""
    cells = view.rows[row]
    if len(cells) < _FEWEST or min(cells) > min(view.rows.get(row + 1, cells)):
        return False
    return any(isinstance(said, SaysDate) for cell in cells.values() for said in statements(cell.text))


def asks_for_several(view: View, row: int) -> bool:
    """'Attn: | Ms Doe | | Ship: | 2 wks ARO': a line of several labels, each with its value right beside it. Without
    colons the last value shows it, where it is of the kind that its label asks for and no board is described here or
    below: 'Grade | Caliper | Lead time | From stock' are heads."""
    cells = [cell for _, cell in sorted(view.rows[row].items())]
    labels, values = cells[::2], cells[1::2]
    if len(labels) < _FEWEST or len(labels) != len(values):
        return False
    if any(value.column != label.column + 1 for label, value in zip(labels, values, strict=True)):
        return False
    if any(map(ends_in_colon, values)):
        return False
    if all(map(ends_in_colon, labels)):
        return True
    return _answers(labels[-1], values[-1]) and not any(map(_heads_boards, cells)) and not _over_a_board(view, row)


def _answers(label: Cell, value: Cell) -> bool:
    head = head_of(label)
    if head is None or not isinstance(value.value, str):
        return False
    if head.role is Role.LEAD_TIME:
        return lead_text(value.text) is not None
    return head.role is Role.DELIVERY_TERMS and find_delivery(value.text) is not None


def _heads_boards(cell: Cell) -> bool:
    head = head_of(cell)
    return head is not None and head.named and (head.board or head.price)


def _over_a_board(view: View, row: int) -> bool:
    """A board right below, with figures; further fields may say one of a reference or of days."""
    below = view.rows.get(row + 1, {})
    return any(map(is_figure, below.values())) and any(map(describes_board, below.values()))


_FEWEST = 2


def _names_a_firm(text: str) -> bool:
    """A column's plain head may be written as a name, and end in a word of the trade: 'NATURE DU CARTON'."""
    return company_name(text) is not None and not _heads_plainly(text)


def _heads_plainly(text: str) -> bool:
    roles = header_roles(text)
    return bool(roles) and roles[0].strength >= _PLAINLY


def _leads_to_a_firm(text: str) -> bool:
    """'Lieferant' names what follows, and 'RPT 4411' the report that the firm's program wrote."""
    return any(map(str.isdigit, text)) or any(
        reading.role is Role.VENDOR and reading.strength >= _PLAINLY for reading in header_roles(text)
    )


_PLAINLY = 0.9
