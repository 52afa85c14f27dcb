"""What a line says of itself: each field's cell with what it was taken for, in the user's units."""

from datetime import date
from decimal import Decimal

from tests.intake.sheets import lines
from tracker.desk.take_in import TakenIn
from tracker.trade.layout import Layout, MarkedColumn
from tracker.trade.offer import Answers, State
from tracker.window.look.figures import Units
from tracker.window.note_words import ESTIMATED, note_text
from tracker.window.take_in.evidence import what_said
from tracker.window.take_in.findings import findings_of


def told(line, units: Units = Units.METRIC) -> list[tuple[str, str, str, str]]:
    return [(said.field, said.where, said.words, said.meant) for said in what_said(line, units)]


PLAIN = [
    ["Board", "Caliper (µm)", "g/m²", "Price EUR/t"],
    ["FBB GC2", 295, 200, 1100],
    ["FBB GC2", "18 pt", "75 lb/MSF", 1100],
]


def test_a_bare_figure_has_its_unit_and_the_head_that_gives_it() -> None:
    found = lines(PLAIN)
    said = told(found["D2"])
    assert ("Caliper", "B2", "295", "") in said
    assert ("Caliper", "B1", "Caliper (µm)", "295 µm") in said
    assert ("Basis weight", "C2", "200", "") in said
    assert ("Basis weight", "C1", "g/m²", "200 g/m²") in said
    assert ("Basis weight", "C1", "g/m²", "41.0 lb/MSF") in told(found["D2"], Units.US)
    # A figure that says its own unit has it from no head.
    assert {where for field, where, *_ in told(found["D3"]) if field in ("Caliper", "Basis weight")} == {"B3", "C3"}


def test_the_basis_that_a_person_said_is_credited_to_the_answer() -> None:
    rows = [["Board", "Caliper (pt)", "Weight", "Price", "Unit"], ["SBS C1S", 18, "350 g/m²", 1090, "USD/ton"]]
    asked = told(lines(rows)["D2"])
    assert not [said for said in asked if said[1] == "your answer"]
    said = [each for each in told(lines(rows, {"ton": "short"})["D2"]) if each[0] == "Price is per"]
    assert said == [("Price is per", "E2", "USD/ton", ""), ("Price is per", "your answer", "USD/ton", "ST")]
    plain = [["Board", "Caliper (pt)", "lb/MSF", "Price", "Unit"], ["SBS C1S", 18, 75, 1090, "USD/ST"]]
    assert ("Price is per", "E2", "USD/ST", "ST") in told(lines(plain, {"ton": "short"})["D2"])


def test_one_price_on_two_bases_names_the_cell_that_has_no_line_of_its_own() -> None:
    rows = [
        ["Board", "µm", "g/m²", "EUR/t", "EUR/1000 m²"],
        ["FBB GC2", 400, 250, 1100, 275],
        ["FBB GC1", 400, 270, 1200, 324],
    ]
    found = lines(rows)
    assert list(found) == ["D2", "D3"]
    assert told(found["D2"])[1] == ("Same price as", "E2", "275", "")


def test_an_estimate_is_told_in_the_units_chosen_and_short_in_a_list() -> None:
    from tests.intake.sheets import book, grid
    from tracker.intake.read import read_workbook

    reading = read_workbook(
        book(grid([["Board", "Caliper (pt)", "Price USD/ST"], ["SBS C1S", 12, 1320], ["SBS C1S", 14, 1308]])), Answers()
    )
    line = reading.lines[0]
    assert line.state is State.ACCEPTED
    (note,) = line.notes
    assert "g/m²" in note_text(note, line.offer, Units.METRIC)
    in_us = note_text(note, line.offer, Units.US)
    assert "lb/MSF" in in_us
    assert "g/m²" not in in_us
    # Every line's is the same in the list, so that it is told once above them.
    assert findings_of(TakenIn(reading, b"", Answers())).told_once == {ESTIMATED}


def test_the_unit_of_a_column_marked_by_hand_is_the_layouts() -> None:
    from tests.intake.sheets import book, grid
    from tracker.intake.read import read_workbook

    columns = (
        MarkedColumn(0, "grade"),
        MarkedColumn(1, "caliper", "um"),
        MarkedColumn(2, "weight", "g/m2"),
        MarkedColumn(3, "price", "tonne"),
    )
    layout = Layout("Sheet1", "0" * 64, columns, 0, currency="EUR", marked_on=date(2026, 11, 25))
    (line,) = read_workbook(book(grid([["SBS", 295, 200, 1240]])), Answers(layouts=(layout,))).lines
    assert line.offer.caliper_um == Decimal(295)
    assert ("Caliper", "the layout you marked", "in µm", "295 µm") in told(line)
    assert ("Basis weight", "the layout you marked", "in g/m²", "200 g/m²") in told(line)
