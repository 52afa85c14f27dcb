"""What the whole file settles: decimal sign, order of day and month, ton, dollar, trade names, the list's date."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property

from tracker.intake.offers.boards.legend import (
    UnitEntry,
    explaining_texts,
    listed_names,
    names_by_affix,
    names_in_rows,
    names_with_figures,
    unit_codes,
)
from tracker.intake.offers.boards.weights_noted import units_noted, weights_around, weights_of_file
from tracker.intake.offers.days_of_list import days_of_list
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.orders.loads_told import loads_told, loads_told_of_grades
from tracker.intake.offers.orders.sizes_named import sizes_named
from tracker.intake.offers.prices.money_named import money_named
from tracker.intake.offers.prices.of_all_prices import names_all_prices
from tracker.intake.offers.prices.signs import evidence_of, sign_of_units, sign_said
from tracker.intake.offers.prices.ticked_rows import MoneyOfMarks
from tracker.intake.offers.prices.units import Units, units_of, units_seen
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.years_of_prices import YearsOfPrices, years_of_prices
from tracker.intake.values.boards.affixed_codes import Affix
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.boards.weights_told import UNTOLD, WeightBasis
from tracker.intake.values.figures.numbers import SignEvidence
from tracker.intake.values.firms.addresses import abroad
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.statements import (
    SaysMinimum,
    SaysTon,
    Statement,
    statements,
)
from tracker.intake.values.notes.tables_named import defines_of_tables
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.loads_priced import priced_alike
from tracker.intake.values.orders.masses import Mass, find_mass_units
from tracker.intake.values.orders.thousands import unit_of_thousands
from tracker.intake.values.prices.basis import find_basis, is_tonelada
from tracker.intake.values.prices.currency import DOLLARS, find_currencies
from tracker.intake.values.prices.tons_of_codes import tons_of_codes
from tracker.intake.values.times.dates import DateOrder, date_order
from tracker.intake.values.times.lead import LeadUnit
from tracker.intake.values.times.lead_units import lead_unit_said
from tracker.intake.words.fold import fold
from tracker.trade.offer import Answers
from tracker.trade.quantities import MassUnit, WeightUnit


@dataclass
class FileFacts:
    """Facts that hold for every sheet of a file; None or empty where the file does not settle them.

    `lone_t`: which ton a 't' is, where that is not told by the units of the file being metric. `tons_differ`: it says
    in one place that a ton is this, and in another that it is that. `loads_alike`: prices are the same for all loads.
    `ton_answered`: a person said which ton it is. `tons_of_codes`: what a ton is in rows with such codes.
    """

    decimal_sign: str | None = None
    date_order: DateOrder | None = None
    ton: MassUnit | None = None
    lone_t: MassUnit | None = None
    tons_differ: bool = False
    tons_of_codes: tuple[tuple[Affix, MassUnit | None], ...] = ()
    ton_answered: bool = False
    units: Units = field(default_factory=Units)
    weights: WeightBasis = UNTOLD
    weights_noted: Mapping[int, WeightUnit] = field(default_factory=dict)
    named_dollars: frozenset[str] = frozenset()
    dollars_of_all: frozenset[str] = frozenset()
    abroad: bool = False
    loads: dict[str, Mass] = field(default_factory=dict)
    loads_of_grades: dict[str, dict[str, Mass]] = field(default_factory=dict)
    loads_alike: bool = False
    sizes: dict[str, Bracket] = field(default_factory=dict)
    says_minimum: bool = False
    lead_unit: LeadUnit | None = None
    order_units: tuple[MassUnit, ...] = ()
    names: dict[str, GradeReading] = field(default_factory=dict)
    unexplained: frozenset[str] = frozenset()
    explaining: frozenset[str] = frozenset()
    grades_in_rows: frozenset[str] = frozenset()
    unit_codes: dict[str, UnitEntry] = field(default_factory=dict)
    list_date: date | None = None
    holds_from: date | None = None
    list_year: int | None = None
    answered: Answers = field(default_factory=Answers)
    sheets: tuple[ReadSheet, ...] = field(default=(), repr=False)

    @cached_property
    def money(self) -> frozenset[str]:
        """The currencies that the file names outright; looked for only where a shared sign asks."""
        return money_named(self.sheets)

    @cached_property
    def money_of_marks(self) -> MoneyOfMarks:
        """What money marked rows are in; looked for only where a row is marked."""
        return MoneyOfMarks(self.sheets)

    @cached_property
    def years_of_prices(self) -> YearsOfPrices:
        """Of which year the prices are by what says no day of the list; heads name years of their own."""
        heads = {
            head.text for sheet in self.sheets for read in sheet.tables for column in read.table.columns
            for head in column.heads
        }  # fmt: skip
        return years_of_prices(text for sheet in self.sheets for text in sheet.all_texts() if text not in heads)

    @property
    def coded_texts(self) -> frozenset[str]:
        """The texts that explain unit codes: they say what the rows with those codes are in, and nothing of others."""
        return frozenset(entry.text for entry in self.unit_codes.values())

    def answers_ton(self, *, lone_t: bool) -> bool:
        """Whether which ton a 'ton' is, or (`lone_t`) a 't', is known by a person's answer alone."""
        return self.ton_answered and (lone_t or not self.units.pounds_and_inches_throughout)

    def makes_tonne(self, words: str) -> bool:
        """Whether a 't' or 'tonelada' is a tonne among the file's units."""
        return self.units.metric_file or (is_tonelada(words) and self.units.metric_but_for_points)


def facts_of(sheets: Iterable[ReadSheet], answers: Answers) -> FileFacts:
    """All that a file settles by itself, then what earlier answers settle of the rest."""
    sheets = tuple(sheets)
    texts = [text for sheet in sheets for text in sheet.all_texts()]
    said = [statement for text in texts for statement in statements(text)]
    facts = FileFacts(answered=answers, sheets=sheets)
    facts.decimal_sign = _sign(sheets) or sign_said(texts) or sign_of_units(texts) or answers.settled.get("decimal")
    facts.date_order = date_order(_dated(sheets, texts)) or _answered_order(answers)
    facts.units = units_seen(sheets)
    _settle_ton(facts, said, answers)
    # 'In table 1 ton = 2,000 lb' is no definition for other tables.
    facts.tons_of_codes = tuple(dict.fromkeys(told for text in texts for told in tons_of_codes(text)))
    facts.tons_differ = facts.tons_differ or bool(facts.tons_of_codes) or any(map(defines_of_tables, texts))
    facts.ton, facts.lone_t = (None, None) if facts.tons_differ else (facts.ton, facts.lone_t)
    facts.weights = weights_of_file(sheets)
    facts.named_dollars = frozenset(code for text in texts for code in _dollars(text))
    facts.dollars_of_all = frozenset(code for text in texts if names_all_prices(text) for code in _dollars(text))
    facts.abroad = any(map(abroad, texts))
    facts.says_minimum = any(isinstance(one, SaysMinimum) for text in texts for one in statements(text))
    facts.lead_unit = _lead_unit(texts)
    facts.loads = loads_told(texts)
    facts.loads_of_grades = loads_told_of_grades(texts)
    facts.loads_alike = any(map(priced_alike, texts))
    facts.sizes = sizes_named(texts)
    facts.order_units = _order_units(texts)
    legends = [one for one in (*said, *names_in_rows(sheets)) if isinstance(one, LegendEntry)]
    legends += [*names_with_figures(sheets, legends), *names_by_affix(sheets)]
    facts.names = _names(legends)
    listed = {*(fold(one.name).strip() for one in legends), *(listed_names(sheets) if legends else ())}
    facts.unexplained = frozenset(listed - facts.names.keys())
    facts.explaining = explaining_texts(sheets) if facts.names else frozenset()
    facts.unit_codes = unit_codes(sheets)
    # The day a list came is not the day it was made: '30 days' without a date of the list's own ends on no known day.
    # 'SUPERSEDED - price list of 1 November 2025' over an old sheet dates that one.
    days = days_of_list(texts, facts.date_order)
    facts.list_date, facts.holds_from, facts.list_year = days
    return facts


def _lead_unit(texts: Iterable[str]) -> LeadUnit | None:
    """The one unit that the file says its lead times are counted in."""
    said = {lead_unit_said(text) for text in texts} - {None}
    return said.pop() if len(said) == 1 else None


def facts_for(read: ReadTable, facts: FileFacts, levels: Sequence[Level]) -> FileFacts:
    """The file's facts as they hold for one table: a metric table has metric units, whatever another one is in, and
    'On this page a ton is 2,000 lb' holds there, whatever another page says, as what that says weights are in does.
    `levels`: what stands around the table, from the nearest words on."""
    facts = replace(facts, grades_in_rows=_grades_in_rows(read, facts))
    only = _only_grade(read)
    facts = replace(facts, loads={**facts.loads_of_grades.get(only, {}), **facts.loads}) if only else facts
    sheet = next((one for one in facts.sheets if read in one.tables), None)
    if sheet is not None:
        weights = weights_around(read, sheet, levels) or facts.weights
        facts = replace(facts, weights=weights, weights_noted=units_noted(read, sheet))
    tons = (frozenset(said.value.ton for said in level.all_of(SaysTon)) for level in levels if not level.foreign)
    nearest = next(filter(None, tons), frozenset[MassUnit]())
    if facts.tons_differ and len(nearest) == 1:
        (ton,) = nearest
        return replace(facts, ton=ton, lone_t=ton, ton_answered=False)
    if facts.units.metric_file or facts.ton is not None:
        return facts
    own = units_of(read)
    return replace(facts, units=own) if own.metric_throughout else facts


def _grades_in_rows(read: ReadTable, facts: FileFacts) -> frozenset[str]:
    """The grades that the table's own rows name, and those that the file explains its names by."""
    cells = (cell for column in read.columns.of(Role.PRODUCT, Role.GRADE) for cell in read.cells(column))
    named = (find_grade(text) for text in {cell.text for cell in cells})
    readings = [*(reading for reading in named if reading is not None), *facts.names.values()]
    return frozenset(grade for reading in readings for grade in reading.grades)


def _only_grade(read: ReadTable) -> str:
    """The grade that the table's every row names; '' where one names none, or another."""
    cells = [cell for column in read.columns.of(Role.PRODUCT, Role.GRADE) for cell in read.cells(column)]
    grades = {"" if (named := find_grade(cell.text)) is None else named.grade or "" for cell in cells}
    return grades.pop() if len(grades) == 1 and len(cells) >= len(read.table.rows) else ""


def _sign(sheets: Iterable[ReadSheet]) -> str | None:
    evidence = SignEvidence()
    for sheet in sheets:
        found = evidence_of(sheet.figures())
        evidence = SignEvidence(evidence.point + found.point, evidence.comma + found.comma)
    return evidence.sign


def _dated(sheets: Iterable[ReadSheet], texts: Iterable[str]) -> Iterator[str]:
    yield from texts
    for sheet in sheets:
        yield from sheet.dates()


def _answered_order(answers: Answers) -> DateOrder | None:
    order = answers.settled.get("date-order")
    return DateOrder(order) if order in set(DateOrder) else None


def _settle_ton(facts: FileFacts, said: Iterable[Statement], answers: Answers) -> None:
    """A stated definition, else the units throughout, else an earlier answer.

    Pounds and inches make 'ton' a short ton; 't' is the symbol of the tonne, and stays open among them.
    """
    defined = {statement.ton for statement in said if isinstance(statement, SaysTon)}
    if defined:
        facts.tons_differ = len(defined) > 1
        facts.ton = facts.lone_t = None if facts.tons_differ else defined.pop()
    elif facts.units.metric_throughout:
        facts.ton = facts.lone_t = MassUnit.TONNE
    else:
        facts.lone_t = _ANSWERED_TONS.get(answers.settled.get("ton", ""))
        facts.ton = MassUnit.SHORT_TON if facts.units.pounds_and_inches_throughout else facts.lone_t
        facts.ton_answered = facts.lone_t is not None


_ANSWERED_TONS = {"short": MassUnit.SHORT_TON, "metric": MassUnit.TONNE}


def _dollars(text: str) -> Iterator[str]:
    for reading in find_currencies(text):
        if reading.code is not None and reading.code in DOLLARS:
            yield reading.code


_PARTED = re.compile(r",(?!\d)|;|\s[-–—]\s")
_NAMES_ORDERS = 0.6


def _order_units(texts: Iterable[str]) -> tuple[MassUnit, ...]:
    """The unit that titles and notes give the sizes of orders: 'USD/cwt, by order size in pounds', 'M = 1000 lb'."""
    texts = tuple(texts)
    parts = (part for text in texts for part in _PARTED.split(text) if not any(map(str.isdigit, part)))
    found = {units for part in parts if header(part).strength(Role.BRACKET) >= _NAMES_ORDERS if (units := _mass(part))}
    found |= {units for text in texts if (units := unit_of_thousands(text))}
    return found.pop() if len(found) == 1 else ()


def _mass(part: str) -> tuple[MassUnit, ...]:
    """Its unit of weight but for the one that prices are per."""
    basis = find_basis(part)
    return find_mass_units(part if basis is None else part.replace(basis.words, " ", 1))


def _names(legends: Iterable[LegendEntry]) -> dict[str, GradeReading]:
    """Trade names that the file explains; one explained two ways explains nothing."""
    names: dict[str, GradeReading] = {}
    clashing: set[str] = set()
    for entry in legends:
        name = fold(entry.name).strip()
        if name in names and names[name].grades != entry.grade.grades:
            clashing.add(name)
        names[name] = entry.grade
    return {name: grade for name, grade in names.items() if name not in clashing}
