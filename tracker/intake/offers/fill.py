"""Putting board, terms and order size into a draft, with the questions and notes that each brings."""

from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.columns.column import PriceColumn
from tracker.intake.columns.roles.cells import lead_of
from tracker.intake.grid import Cell
from tracker.intake.offers.answered import answer_about, key_about
from tracker.intake.offers.boards.measures import Board
from tracker.intake.offers.boards.physics import is_plausible, possible_weights, usual_weight
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.order_terms import minimum_of_grade
from tracker.intake.offers.terms.terms import delivered_by_column, delivered_by_place, lead_of_grade, not_counted
from tracker.intake.offers.terms.terms_said import Terms
from tracker.intake.offers.terms.who_quotes import fill_vendor
from tracker.intake.values.boards.weight import WeightReading
from tracker.intake.values.boards.weights_by_board import of_grades
from tracker.intake.values.figures.sheetsize import LengthUnit, SheetSize
from tracker.intake.values.orders.brackets_in_kg import KgBracket
from tracker.intake.values.times.lead import LeadUnit
from tracker.trade.exact import as_decimal, plain_text
from tracker.trade.offer import Evidence, GrammageFrom, LineEvidence, NoteCode
from tracker.trade.quantities import WeightUnit


def fill_board(draft: Draft, board: Board, facts: FileFacts) -> None:
    """Grade, coating, caliper, basis weight and sheet size."""
    draft.product = board.product
    _tell(draft, "product", board.product_said)
    _fill_grade(draft, board, facts)
    draft.coated_sides = board.coated_sides
    _fill_caliper(draft, board)
    _fill_weight(draft, board, facts)
    draft.sheet_words = board.sheet_said.words if board.sheet_said is not None else None
    sheets = _in_units_of_file(board.sheets, facts)
    if len(sheets) == 1 and board.sheets_weighed:
        draft.sheet_weighed = sheets[0].mm
    elif len(sheets) == 1:
        draft.sheet_mm = sheets[0].mm
        _tell(draft, "sheet_mm", board.sheet_said)
    if draft.caliper_um is None and draft.grammage_gsm is None and not draft.asked:
        text = "Neither caliper nor basis weight is given for certain, and one of them is needed."
        draft.ask(NoteCode.CALIPER_UNKNOWN, "caliper", draft.where, text, board.product)


def _in_units_of_file(sheets: tuple[SheetSize, ...], facts: FileFacts) -> tuple[SheetSize, ...]:
    """'30x42' can be inches or centimetres: inches in a file of pounds and points, and never in a metric one."""
    if len(sheets) < 2 or not (facts.units.pound_file or facts.units.metric_file):
        return sheets
    return tuple(size for size in sheets if (size.unit is LengthUnit.INCH) == facts.units.pound_file)


def _tell(draft: Draft, field: str, said: Said[object] | None) -> None:
    if said is not None:
        draft.evidence.append(Evidence(field, said.where, said.words))


def _fill_grade(draft: Draft, board: Board, facts: FileFacts) -> None:
    if len(board.grades) == 1:
        draft.grade = board.grades[0]
        _tell(draft, "grade", board.grade_said)
        return
    words = board.grade_words or board.product
    answer = answer_about(facts.answered.settled, "grade", words, board.grades)
    if answer is not None:
        draft.grade = answer
        draft.evidence.append(Evidence("grade", "your answer", words))
        return
    if board.grades:
        text = f"“{words}” could be {' or '.join(board.grades)}. Which grade is it?"
    else:
        text = f"Which grade is “{words}”?" if words else "Nothing says which grade of board this is."
    draft.ask(NoteCode.GRADE_UNKNOWN, key_about("grade", words), draft.where, text, words, board.grades)


def _fill_caliper(draft: Draft, board: Board) -> None:
    if len(board.calipers) == 1:
        draft.caliper_um = board.calipers[0]
        _tell(draft, "caliper_um", board.caliper_said)
        _tell(draft, "caliper_um", board.caliper_head)
    elif board.calipers and board.caliper_said is not None:
        figures = " and ".join(f"{um.normalize():f} µm" for um in board.calipers)
        text = f"The caliper can be read as {figures}. Which is it?"
        draft.ask(NoteCode.CALIPER_UNKNOWN, "caliper", board.caliper_said.where, text, board.caliper_said.words)
    elif board.caliper_unread is not None:
        words = board.caliper_unread.text.strip()
        draft.ask(NoteCode.CALIPER_UNKNOWN, "caliper", at(board.caliper_unread), f"Which caliper is “{words}”?", words)


def _fill_weight(draft: Draft, board: Board, facts: FileFacts) -> None:
    readings = _left_by_facts(board, facts)
    where = board.weight_said.where if board.weight_said is not None else draft.where
    words = board.weight_said.words if board.weight_said is not None else ""
    if board.weights_differ:
        text = "The sheet gives this board two basis weights that do not agree."
        draft.ask(NoteCode.WEIGHT_IMPLAUSIBLE, "weight", where, text, words)
    elif len({one.gsm for one in readings}) == 1:
        _take_weight(draft, readings[0], where, words)
    elif readings:
        _by_physics(draft, readings, where, words, facts)
    elif board.weight_unread is None:
        _estimate(draft)
    else:
        text = f"“{board.weight_unread.text.strip()}” gives no basis weight that can be read."
        words = board.weight_unread.text.strip()
        draft.ask(NoteCode.WEIGHT_BASIS_UNKNOWN, "weight", at(board.weight_unread), text, words)
    if draft.grammage_from is GrammageFrom.QUOTED:
        _tell(draft, "grammage_gsm", board.weight_head)


def _left_by_facts(board: Board, facts: FileFacts) -> tuple[WeightReading, ...]:
    """A note that says on which area pounds are settles them."""
    units = of_grades(facts.weights, board.grades).units
    return tuple(one for one in board.weights if one.unit in units) or board.weights


@lru_cache(maxsize=16384)
def _decimal(gsm: Fraction) -> Decimal:
    return as_decimal(gsm)


def _take_weight(draft: Draft, weight: WeightReading, where: str, words: str) -> None:
    draft.grammage_gsm = _decimal(weight.gsm)
    draft.grammage_from = GrammageFrom.QUOTED
    draft.evidence.append(Evidence("grammage_gsm", where, words))
    if draft.caliper_um is not None and not is_plausible(draft.grammage_gsm, draft.caliper_um):
        text = f"No board of {_caliper_words(draft)} weighs {_as_quoted(weight)}. One of the two must be wrong."
        draft.ask(NoteCode.WEIGHT_IMPLAUSIBLE, "weight", where, text, words)


def _caliper_words(draft: Draft) -> str:
    """'18 pt (457 µm)', in the vendor's own words, which a reader finds again in the sheet."""
    assert draft.caliper_um is not None
    microns = f"{round(draft.caliper_um)} µm"
    said = next((each.words for each in LineEvidence(tuple(draft.evidence)) if each.field == "caliper_um"), microns)
    return microns if said.strip() == microns else f"caliper “{said.strip()}” ({microns})"


def _as_quoted(weight: WeightReading) -> str:
    """'350 lb/MSF': the vendor's own figure and unit, which a reader finds again in the sheet."""
    return f"{plain_text(weight.value)} {_QUOTED[weight.unit]}" if weight.unit is not None else f"“{weight.words}”"


def _by_physics(draft: Draft, readings: tuple[WeightReading, ...], where: str, words: str, facts: FileFacts) -> None:
    """Pounds without an area: settled where caliper and grade make just one of them possible, else asked.

    An answer settles only what physics leaves open: one board's pounds can be on another area than the next one's.
    """
    left = possible_weights(readings, draft.caliper_um, draft.grade) if draft.caliper_um is not None else readings
    if len({one.gsm for one in left}) == 1:
        _take_weight(draft, left[0], where, words)
        unit = left[0].unit.value if left[0].unit is not None else "g/m²"
        text = f"“{words}” does not say in which unit or on which area; at this caliper only {unit} is possible."
        draft.note(NoteCode.WEIGHT_BASIS_UNKNOWN, where, text)
    elif left:
        _ask_weight_basis(draft, left, where, words, facts)
    else:
        text = f"“{words}” makes no possible board at this caliper, on 1,000 ft² or on 3,000 ft²."
        draft.ask(NoteCode.WEIGHT_IMPLAUSIBLE, "weight", where, text, words)


_UNITS = {"msf": WeightUnit.LB_MSF, "3000ft2": WeightUnit.LB_3000FT2, "gsm": WeightUnit.GSM}
_QUOTED = {
    WeightUnit.LB_MSF: "lb/MSF",
    WeightUnit.LB_3000FT2: "lb/3,000 ft²",
    WeightUnit.GSM: "g/m²",
    WeightUnit.KG_M2: "kg/m²",
}
_UNIT_WORDS = {"msf": "lb on 1,000 ft²", "3000ft2": "lb on 3,000 ft²", "gsm": "g/m²"}


def _ask_weight_basis(draft: Draft, left: tuple[WeightReading, ...], where: str, words: str, facts: FileFacts) -> None:
    """The answer, where one was given that is still possible, else the question; of pounds there is one a file."""
    open_ = [name for name, unit in _UNITS.items() if any(one.unit is unit for one in left)]
    key = "weight-basis" if "gsm" not in open_ else f"weight-basis:{'|'.join(open_)}"
    answer = facts.answered.settled.get(key)
    chosen = next((one for one in left if answer is not None and one.unit is _UNITS.get(answer)), None)
    if chosen is not None:
        _take_weight(draft, chosen, where, words)
        draft.evidence.append(Evidence("grammage_gsm", "your answer", words))
        return
    either = " or ".join(_UNIT_WORDS[name] for name in open_)
    if "gsm" not in open_:
        # Only the area is in doubt: the pounds are in the vendor's words or in the head above them.
        either = either.replace("lb on", "per")
    text = f"Is “{words}” {either}?"
    draft.ask(NoteCode.WEIGHT_BASIS_UNKNOWN, key, where, text, words, open_)


def _estimate(draft: Draft) -> None:
    if draft.grade is None or draft.caliper_um is None:
        return
    draft.grammage_gsm = usual_weight(draft.grade, draft.caliper_um)
    draft.grammage_from = GrammageFrom.ESTIMATED
    text = (
        f"The sheet gives no basis weight. {_round(draft.grammage_gsm)} g/m² is what {draft.grade} of this caliper "
        "usually weighs: an estimate."
    )
    draft.note(NoteCode.WEIGHT_ESTIMATED, draft.where, text)


def _round(value: Decimal) -> str:
    return f"{value:.0f}"


def fill_terms(draft: Draft, terms: Terms, price: PriceColumn, vendor: Said[str] | None, *, heads_differ: bool) -> None:
    """Lead time, validity, smallest order, delivery and vendor; `heads_differ`: those of prices, about delivery."""
    draft.lead_days, draft.valid_until = terms.lead_days, terms.valid_until
    draft.valid_at_latest = terms.valid_at_latest
    draft.minimum_kg, draft.received = terms.minimum_kg, terms.received
    draft.delivered = delivered_by_column(price, terms, heads_differ=heads_differ)
    draft.notes.extend(terms.notes)
    draft.evidence.extend(terms.evidence)
    by_place = delivered_by_place(price, terms) if draft.delivered is None else None
    if by_place is not None:
        draft.delivered = True
        draft.evidence.append(by_place)
    fill_vendor(draft, terms, price, vendor)


def fill_lead(draft: Draft, cell: Cell, unit: LeadUnit | None) -> None:
    """The lead time that a row of the table gives the price's own column, before any said of the whole table."""
    read = lead_of(cell, unit)
    draft.lead_days = read.days if read is not None else None
    if read is not None:
        draft.evidence.append(Evidence("lead_days", at(cell), cell.text.strip()))
    else:
        draft.note(NoteCode.LEAD_TIME_UNREAD, at(cell), not_counted(cell.text.strip()))


def fill_lead_of_grade(draft: Draft, scope: Scope) -> None:
    """The lead time that a note gives this grade: 'SBS 4-5 weeks; CRB 3 weeks'."""
    said = lead_of_grade(scope, draft) if draft.lead_days is None else None
    if said is not None:
        draft.lead_days = said.value.days
        draft.evidence.append(said.evidence("lead_days"))


def fill_minimum_of_grade(draft: Draft, scope: Scope, facts: FileFacts) -> None:
    """The smallest order that a note gives this grade: 'Min order SBS 20,000 lb, CRB 10,000 lb'."""
    found = minimum_of_grade(scope, draft, facts) if draft.minimum_kg is None else None
    if found is not None:
        draft.minimum_kg, said = found
        draft.evidence.append(said)


def take_board(draft: Draft, other: Draft) -> None:
    """What fill_board filled into another draft, but for evidence, notes and questions."""
    draft.product, draft.grade, draft.coated_sides = other.product, other.grade, other.coated_sides
    draft.caliper_um, draft.sheet_mm, draft.sheet_words = other.caliper_um, other.sheet_mm, other.sheet_words
    draft.sheet_weighed = other.sheet_weighed
    draft.grammage_gsm, draft.grammage_from = other.grammage_gsm, other.grammage_from


def take_terms(draft: Draft, other: Draft) -> None:
    """What fill_terms filled into another draft, but for evidence and notes."""
    draft.lead_days, draft.valid_until = other.lead_days, other.valid_until
    draft.valid_at_latest = other.valid_at_latest
    draft.minimum_kg, draft.received = other.minimum_kg, other.received
    draft.delivered, draft.vendor = other.delivered, other.vendor


def fill_bracket(draft: Draft, bracket: Said[KgBracket] | None) -> None:
    """The order size that the price holds for."""
    if bracket is None:
        return
    # Where it ends rests on the other rows of its board.
    draft.by_figure = True
    size = bracket.value
    if size.beside:
        text = f"“{bracket.words}” stands in a list of order sizes beside the boards: it was taken for none of theirs."
        draft.note(NoteCode.BRACKET_UNREAD, bracket.where, text)
        return
    if size.of_sheets:
        sheet_kg = _sheet_kg(draft)
        if sheet_kg is None and size.stated:
            # A price for one stated quantity bounds no order size.
            return
        size = KgBracket(unread=True) if sheet_kg is None else size.weighed(sheet_kg)
    if size.unread:
        key, text = key_about("bracket", bracket.words), f"For what weight of order does “{bracket.words}” stand?"
        if size.of_ton:
            key, text = "ton", f"Is the ton of “{bracket.words}” a short ton (2,000 lb) or a tonne (1,000 kg)?"
        draft.ask(NoteCode.BRACKET_UNREAD, key, bracket.where, text, bracket.words)
        return
    draft.from_kg, draft.below_kg = size.from_kg, size.below_kg
    draft.evidence.append(bracket.evidence("from_kg"))


def _sheet_kg(draft: Draft) -> Decimal | None:
    """What one sheet weighs, where the vendor says its size and its basis weight."""
    if draft.sheet_mm is None or draft.grammage_gsm is None or draft.grammage_from is not GrammageFrom.QUOTED:
        return None
    width, length = draft.sheet_mm
    return Decimal(width) * Decimal(length) / 1_000_000 * draft.grammage_gsm / 1000
