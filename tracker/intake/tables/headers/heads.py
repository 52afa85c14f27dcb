"""What a cell would be as the head of a column: a word that names it, a value spread across, a unit, a bare number."""

import re
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import YEAR, is_period
from tracker.intake.tables.headers.priced_texts import is_money, is_price
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.figures.spans import is_span
from tracker.intake.values.figures.web_widths import is_web_width
from tracker.intake.values.heads.header import Header, header, without_unit
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.heads.two_words import two_words
from tracker.intake.values.notes.note_signs import WITHIN
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.brackets import Bracket, bracket_text, is_bare_order_size, is_open_figure
from tracker.intake.values.orders.broken_sizes import breaks_off
from tracker.intake.values.prices.money import price_text, price_unit
from tracker.intake.values.prices.price_terms import price_and_terms
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.lead import LeadTime, lead_unit
from tracker.intake.words.lists import phrases

BOARD_ROLES = frozenset({Role.ITEM, Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE})
PRICE_ROLES = frozenset({Role.PRICE, Role.LIST_PRICE, Role.NET_PRICE, Role.PREVIOUS_PRICE, Role.ALL_IN})
AXIS_ROLES = frozenset({Role.CALIPER, Role.WEIGHT, Role.BRACKET, Role.GRADE, Role.PRODUCT, Role.SHEET_SIZE})
_PIECES = ("sheets", "roll", "pallet", "other_unit")
_LONGEST = 120
_NAMES = 0.55
_FOOTNOTE = re.compile(r"(?:\s+\d\)|\s*\*+\)?|\s+[¹²³⁴⁵⁶⁷⁸⁹]+\)?)\s*$")


@dataclass(frozen=True, slots=True)
class Head:
    """A cell judged as a head. `named`: its words name what stands below. `across`: which property of board it is a
    value of ('caliper', 'weight', 'bracket', 'grade', 'coating', 'size', 'width', 'form'), or 'period', as in a
    cross-tab."""

    role: Role | None = None
    named: bool = False
    across: str = ""
    unit: bool = False
    number: Decimal | None = None
    answers_itself: bool = False

    @property
    def price(self) -> bool:
        return self.named and self.role in PRICE_ROLES

    @property
    def board(self) -> bool:
        return self.named and self.role in BOARD_ROLES

    @property
    def axis_word(self) -> bool:
        return self.named and self.role in AXIS_ROLES


def head_text(cell: Cell) -> str:
    """A header cell's text; a number that its format shows with words ('380 µm') has them in its text."""
    if isinstance(cell.value, Decimal) and cell.number_format not in ("", "General"):
        words = format_words(cell.number_format)
        if words and words not in cell.text:
            return f"{cell.value:f} {words}"
    return _in_words(cell.text)


_WRAPPED = re.compile(r"(?<=[a-zäöüß])-[ \t]*\n[ \t]*(?=[a-zäöüß])")
"""Where a narrow column parts a word: 'Mindest-', a line break and 'abnahme'."""


@lru_cache(maxsize=16384)
def _in_words(text: str) -> str:
    """A field's name as a program writes it, in words: 'PRC_5000_19999LB' is 'PRC 5000-19999LB', 'LedtidDagar' and
    'UNTPRC' are two."""
    text = _WRAPPED.sub("", without_footnote(text))
    if " " in text:
        return text
    if "_" in text:
        text = _BETWEEN_FIGURES.sub("-", text).replace("_", " ").strip()
    return _RUN_TOGETHER.sub(" ", two_words(text))


_RUN_TOGETHER = re.compile(r"(?<=[a-zäöüåéèñ]{2})(?=[A-ZÄÖÜÅÉ][a-zäöüåéèñ]{2})")
"""Between the words of 'LedtidDagar' and 'GiltigTom'; 'GmbH' and 'kWh' are one."""
_BETWEEN_FIGURES = re.compile(r"(?<=\d)_(?=\d)")


@lru_cache(maxsize=16384)
def without_footnote(text: str) -> str:
    """The text without the marks of footnotes at its end and behind its words: 'Price* below 10 t'."""
    return WITHIN.sub("", _FOOTNOTE.sub("", text)).strip()


def head_of(cell: Cell) -> Head | None:
    """The cell as a head, or None where it can't be one: a price, a date, a sentence. One that shows a fault may be
    one, and says nothing."""
    if isinstance(cell.value, Decimal):
        shown = head_text(cell)
        return head_of_words(shown) if shown != cell.text.strip() else Head(number=cell.value)
    if cell.fault is not None:
        return Head()
    if not isinstance(cell.value, str) or len(cell.text) > _LONGEST:
        return None
    return head_of_words(head_text(cell))


def may_name(text: str) -> bool:
    """Whether a text has words that could name what stands beside or below it: sooner told than the whole head."""
    roles = header_roles(text)
    return bool(roles) and roles[0].strength >= _NAMES


def is_bare_number(cell: Cell) -> bool:
    """A number and no more, as a caliper or weight spread across has it."""
    head = head_of(cell)
    return head is not None and head.number is not None


@lru_cache(maxsize=16384)
def head_of_words(text: str) -> Head | None:
    """A text as a head; None for one that holds a price or says nothing."""
    readings = number_readings(text)
    if is_open_figure(text):
        return Head(across="bracket")
    if len(readings) == 1 and not YEAR.fullmatch(text.strip()):
        return Head(number=readings[0].value)
    if is_web_width(text):
        return Head(across="width")
    if (is_money(text) and not _is_price_of_a_year(text)) or _has_terms_behind(text):
        return None
    if is_period(text):
        return Head(across="period")
    if _withholds_price(text):
        return Head()
    said = header(text)
    across = _across(said)
    if not across and is_bare_order_size(text):
        across = "bracket"
    if not across and is_price(text) and not _is_price_of_a_year(text):
        return None
    named = may_name(text) and not _value_only(said, across)
    return Head(
        said.role if named else None,
        named,
        across,
        _is_unit(said),
        answers_itself=_answers_itself(said),
    )


def _across(said: Header) -> str:
    """A value of board in a header: what is left of the text beside it does not matter here."""
    if len(said.calipers) == 1:
        return "caliper"
    alone = said.text if said.currency is None else without_unit(said)
    # The unit of '250 g/m² (EUR/t)' is the price's; its weight has one of its own.
    one_unit = len(said.weight_units) == 1 or (said.currency is not None and len(said.weights) == 1)
    if (one_unit and said.weights) or (len(weight_units(alone)) == 1 and is_span(alone, "weight_units")):
        return "weight"
    if is_span(alone, "caliper_units"):
        return "caliper"
    if phrases("basis").whole(said.text) in ("roll", "sheet"):
        return "form"
    if said.bracket is not None and _is_order_size(said, said.bracket):
        return "bracket"
    if said.sheet_sizes:
        return "size"
    return _board_across(said) if len(said.text) <= 60 else ""


def _is_order_size(said: Header, bracket: Bracket) -> bool:
    """'< 5 t', '1-3 pallets' and 'full load' are; 'sheets per pallet' is not, nor is what a price is per."""
    if (said.basis is not None and said.basis.bases) or said.currency is not None:
        return False
    counted = any(sign.isdigit() for sign in said.text)
    if not counted and bracket.not_weight in _PIECES and said.role in ORDER_SIZES:
        # 'Qty (sheets)' names the figures below it.
        return False
    broken = breaks_off(bracket.words)
    return not bracket.not_weight or counted or broken or said.role in (None, *ORDER_SIZES)


def _board_across(said: Header) -> str:
    if said.grade is None:
        return ""
    if said.grade.grades:
        return "grade"
    return "coating" if said.grade.coated_sides is not None else ""


def _value_only(said: Header, across: str) -> bool:
    """'18 pt' carries the word 'pt', but it is a caliper and names none; 'Price 18 pt' names a price."""
    if across in ("caliper", "weight", "size"):
        return said.role in (Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.WIDTH, Role.LENGTH, Role.ROLL_WIDTH)
    if across == "grade":
        # 'Carton gris (URB)' has the word for board in it, and is one.
        return said.role not in PRICE_ROLES and not (said.role is Role.GRADE and said.roles[0].strength >= 0.9)
    if across == "form":
        return True
    if across == "coating":
        return said.role not in PRICE_ROLES and not (said.role is Role.COATING and said.roles[0].strength >= 0.9)
    if across == "bracket":
        return not any(reading.role in PRICE_ROLES and reading.strength >= 0.8 for reading in said.roles)
    return False


def _is_price_of_a_year(text: str) -> bool:
    """'Price 2026 USD/ST', 'EUR/t 2026' and 'Budget 2027 $' are heads; '2026 USD/ST' may be a price."""
    year = YEAR.search(text)
    if year is None:
        return False
    estimated = phrases("indicative").whole(text[: year.start()].strip()) is not None
    if _UNIT_THEN_YEAR.fullmatch(text) or (estimated and not rest_of(text[year.end() :], (), "currency")):
        return True
    return any(r.role in PRICE_ROLES and r.words.strip() != text.strip() for r in header(text).roles)


def _withholds_price(text: str) -> bool:
    """'no disponible' and 'no quote' stand in the place of a price, though 'no' alone heads item numbers; 'Ask price'
    and 'Ask, US$ per cwt' head what a vendor asks for."""
    price = price_text(text)
    if price is None or not price.no_price or price.amounts:
        return False
    said = header(text)
    asked = any(reading.role in PRICE_ROLES and reading.strength >= 1 for reading in said.roles)
    named = said.basis is not None or phrases("headers").whole(text) is not None
    return not (asked and named) or phrases("no_price").whole(text) is not None


def _is_unit(said: Header) -> bool:
    text = said.text.strip().strip("()[]")
    if price_unit(text) is not None:
        return True
    few = len(text) <= 20
    return few and bool(
        said.weight_units or said.caliper_unit or said.mass_units or said.length_unit or said.percent or lead_unit(text)
    )


def _answers_itself(said: Header) -> bool:
    """'Date: 4 May 2026', 'lead time 35 days' and 'weight tolerance +/- 5 %' say all there is to say."""
    before, colon, after = said.text.partition(":")
    if colon and after.strip() and before.strip():
        return True
    if _TOLERANCE.search(said.text):
        return True
    if said.role is Role.LEAD_TIME and _tells_a_lead(said.text):
        return True
    return any(reading.role in _DATED for reading in said.roles) and bool(find_dates(said.text))


def _tells_a_lead(text: str) -> bool:
    """'4 weeks', 'from stock'; 'Ready to ship' leaves to the cells beside it when that is."""
    counted = any(map(str.isdigit, text)) or bool(phrases("from_stock").find(text))
    return counted and any(isinstance(each, LeadTime) for each in statements(text))


_TOLERANCE = re.compile(r"(?:\+\s?/?\s?[-–−]|±)\s?\d")
_UNIT_THEN_YEAR = re.compile(r"[^\d]+(?:/|\bper\b)[^\d]+\s(?:19|20)\d\d")
"""A figure behind its unit, without a sign of thousands or decimals, and as large as a year."""

_DATED = frozenset({Role.VALIDITY, Role.VALID_FROM, Role.RECEIVED})


_NUMBERED = re.compile(r"\s*\(?\d{1,2}[.)]\s+[^\W\d]")


def looks_priced(cell: Cell) -> bool:
    """A cell that holds a price or something that stands in its place: a number, a price text, a fault."""
    if cell.fault is not None or isinstance(cell.value, Decimal):
        return True
    if not isinstance(cell.value, str):
        return False
    price = price_text(cell.text)
    # '2. Laminated board, prices in CHF per m²' numbers a part of the list.
    if price is None or not price.amounts or (price.rest and _NUMBERED.match(cell.text)):
        return False
    # 'All prices per 1000 kg' has a number in it, and words around it; 'up to 10,000 lb' is an order size.
    bracket = bracket_text(cell.text) if price.basis is not None else None
    alone = not (price.rest or (bracket is not None and not bracket.alone))
    return price.currency is not None or alone or _has_terms_behind(cell.text)


def _has_terms_behind(text: str) -> bool:
    """'1200 (min. 5,000 lb)', under a head that says in what money; '5 t up to a truckload', '2+ truckloads' are order
    sizes, and 'Price 1 (from 5 t)' heads a column."""
    terms = price_and_terms(text) if text.lstrip()[:1].isdigit() else None
    if terms is None:
        return False
    price = price_text(terms.price)
    bare = price is not None and price.basis is None and "(" in text
    return bare or not terms.size
