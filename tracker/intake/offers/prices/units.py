"""Which units of measure a file uses, for what they settle: what its 'ton' is, and in what its bare figures are."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, fields

from tracker.intake.columns.roles.cells import caliper_of, weight_of
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.values.boards.caliper import caliper_unit, find_calipers, roll_units
from tracker.intake.values.boards.weight import find_weights, weight_units
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.basis import basis_text, find_basis
from tracker.intake.values.prices.money import find_price_unit, price_unit
from tracker.intake.values.prices.several_bases import bases_with_places
from tracker.trade.basis import Basis
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit

_METRIC_BASES = frozenset({Basis.KG, Basis.M2, Basis.THOUSAND_M2})


@dataclass
class Units:
    """Kinds of units seen in a file's boards, order sizes and prices. Each is a count of where they were seen."""

    pounds: int = 0
    inches: int = 0
    points: int = 0
    grams: int = 0
    millimetres: int = 0
    kilos: int = 0
    feet: int = 0
    tonnes: int = 0
    thousand_kilos: int = 0
    short_tons: int = 0

    def add(self, seen: "Units", times: int) -> None:
        """Counts what was seen in one text for each time that it stands in the file."""
        for kind in fields(self):
            setattr(self, kind.name, getattr(self, kind.name) + times * getattr(seen, kind.name))

    @property
    def pounds_and_inches_throughout(self) -> bool:
        """Where lines are sold by the tonne as well, it is not throughout: a 'ton' among them may be one."""
        return bool(self.pounds and (self.inches or self.points)) and not (self._metric or self.tonnes)

    @property
    def metric_throughout(self) -> bool:
        """Where board is weighed in g/m² and priced by 1,000 kg, its thickness need not be told."""
        told = self.millimetres or (self.thousand_kilos and not self.short_tons)
        return bool(self.grams and told) and not self._us

    @property
    def metric_file(self) -> bool:
        """Metric units and none of the other kind: enough for a lone 't' to be a tonne.

        Among calipers in micrometres a few in points do not make board that is weighed in g/m² American.
        """
        few_inches = bool(self.grams) and self.inches < self.millimetres
        return self._metric and not (self.pounds or self.feet) and (not self.inches or few_inches)

    @property
    def metric_but_for_points(self) -> bool:
        """Weights in g/m² and nothing but thicknesses in points beside them, as Latin America writes its lists: enough
        for a 'tonelada' to be a tonne (common practice, no source), and not for a 't' or a 'ton'."""
        return bool(self.grams) and not (self.pounds or self.inches or self.feet)

    @property
    def pound_file(self) -> bool:
        """Pounds, inches or square feet and no metric unit: enough for an 'ST' to be a short ton."""
        return self._us and not self._metric

    @property
    def thick_in_points(self) -> bool:
        """Pounds, inches or points and nothing in millimetres: enough for a caliper of '030' to be 30 points."""
        return self._us and not self.millimetres

    @property
    def _metric(self) -> bool:
        return bool(self.grams or self.millimetres or self.kilos)

    @property
    def _us(self) -> bool:
        return bool(self.pounds or self.inches or self.points or self.feet)


def units_seen(sheets: Iterable[ReadSheet]) -> Units:
    """Counts the units of every header, board cell and text of a file."""
    units = Units()
    for sheet in sheets:
        for text in sheet.all_texts():
            _count_text(units, text)
        for read in sheet.tables:
            _count_table(units, read)
    return units


def units_of(read: ReadTable) -> Units:
    """Counts the units of one table's headers and board cells."""
    units = Units()
    _count_table(units, read)
    return units


def _count_text(units: Units, text: str) -> None:
    # Only units beside a number or behind 'per': 'livré' is no pound, and 'Quotation # 12' is not in pounds.
    basis = find_basis(text)
    if basis is not None:
        _count_basis(units, basis.bases)
        _count_tons(units, text)
    for mass in find_masses(text):
        units.pounds += mass.units in ((MassUnit.LB,), (MassUnit.CWT,)) and "#" not in mass.words
        units.kilos += mass.units == (MassUnit.KG,)
    named = weight_units(text)
    if len(named) == 1:
        _count_weight(units, named[0])
    for caliper in find_calipers(text):
        _count_caliper(units, caliper.unit)
    units.inches += "in" in roll_units(text)
    lengths = {size.unit.value for size in find_sheet_sizes(text)}
    for length in lengths if len(lengths) == 1 else ():
        _count_length(units, length)


def _count_basis(units: Units, bases: frozenset[Basis]) -> None:
    units.pounds += bool(bases & {Basis.LB, Basis.CWT}) and len(bases) == 1
    units.feet += Basis.MSF in bases
    units.kilos += bool(bases & _METRIC_BASES)


def _count_tons(units: Units, text: str) -> None:
    """'Per 1 000 kg' says what the prices' writer reckons in; the 'metric ton' beside which he has a 'ton' may be
    another, and so may the ton of prices beside freight that is per 1,000 kg."""
    for clause in clauses(text):
        for basis, _, _ in bases_with_places(clause):
            by_kilos = any(mass.units == (MassUnit.KG,) for mass in find_masses(basis.words))
            units.thousand_kilos += by_kilos and basis.bases == {Basis.TONNE} and not charges_named(clause)
            units.short_tons += basis.bases == {Basis.SHORT_TON}


def _count_weight(units: Units, unit: WeightUnit | None) -> None:
    units.grams += unit in (WeightUnit.GSM, WeightUnit.KG_M2)
    units.pounds += unit in (WeightUnit.LB_MSF, WeightUnit.LB_3000FT2)


def _count_caliper(units: Units, unit: CaliperUnit) -> None:
    _count_length(units, unit.value)


def _count_length(units: Units, unit: str) -> None:
    units.inches += unit == "in"
    units.points += unit == "pt"
    units.millimetres += unit in ("mm", "um", "cm", "m")


def _count_table(units: Units, read: ReadTable) -> None:
    for headed in read.table.columns:
        for cell in headed.heads:
            text = head_text(cell)
            # The point of 'FOB shipping point' is no unit of thickness.
            unit = caliper_unit(text) if find_price_unit(text) is None and find_delivery(text) is None else None
            if unit is not None:
                _count_caliper(units, unit)
            _count_tons(units, text)
    for column in read.columns.of(Role.CALIPER):
        if column.caliper_unit is not None:
            _count_caliper(units, column.caliper_unit)
        # What can be no board in the head's own unit is an error in it, and no figure in another.
        for cell in read.cells(column) if column.caliper_unit is None else ():
            found = caliper_of(cell, None)
            units_of_figure = {reading.unit for reading in found.readings} if found is not None else set()
            # What may be points or millimetres tells nothing of the file.
            for unit in units_of_figure if len(units_of_figure) == 1 else ():
                _count_caliper(units, unit)
    for column in read.columns.of(Role.WEIGHT):
        for cell in read.cells(column):
            weight = weight_of(cell, column.weight_units)
            for one in weight.readings if weight is not None else ():
                _count_weight(units, one.unit)
    for price in read.columns.prices:
        # 'Basis weight, lb/MSF' over 52 and 60, which head prices.
        if len(price.weights) == 1:
            _count_weight(units, price.weights[0].unit)
    for column in read.columns.of(Role.MINIMUM, *ORDER_SIZES):
        units.pounds += column.mass_units in ((MassUnit.LB,), (MassUnit.CWT,))
        units.kilos += column.mass_units == (MassUnit.KG,)
    for column in read.columns.of(Role.BASIS):
        units.tonnes += any(_is_tonne(cell.text) for cell in read.cells(column))
    cells = (cell for column in read.columns.of(*_WITH_UNITS) for cell in read.cells(column))
    # The boards of a long list come many times each.
    for text, times in Counter(cell.text for cell in cells if isinstance(cell.value, str)).items():
        seen = Units()
        _count_words(seen, text)
        units.add(seen, times)


_WITH_UNITS = (
    Role.CALIPER, Role.WEIGHT, Role.PRODUCT, Role.GRADE, Role.BASIS, Role.MINIMUM, Role.BRACKET, Role.SHEET_SIZE,
    Role.ROLL_WIDTH, Role.FORM,
)  # fmt: skip


def _is_tonne(text: str) -> bool:
    priced = price_unit(text)
    basis = basis_text(text) if priced is None else priced.basis
    return basis is not None and basis.bases == {Basis.TONNE}


def _count_words(units: Units, text: str) -> None:
    _count_text(units, text)
    for weight in find_weights(text):
        _count_weight(units, weight.unit)
