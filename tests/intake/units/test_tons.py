"""Short tons and tonnes: which of them a plain ton is, and what the file says of it."""

import pytest

from tests.intake.sheets import book, codes, grid, lines, merged
from tracker.intake.read import read_workbook
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers, State

BOARD = ["SBS C1S", 18, 75]


def test_pounds_below_a_price_per_ton_say_how_much_a_ton_is():
    rows = [["Board", "Thickness", "Weight", "USD per ton"], [None, "points", "lb/MSF", "(2000 lb)"], [*BOARD, 1190]]
    line = lines(rows)["D3"]
    assert (str(line.state), line.offer.basis, line.offer.from_kg) == ("accepted", "short_ton", None)


def test_a_lone_t_is_a_tonne_in_a_metric_table_beside_one_in_pounds():
    rows = [
        ["A. USD/MSF"], ["Grade", "Caliper in", "lb/MSF", "Price"], ["SBS C1S", 0.018, 75, 43.8], [],
        ["B. EUR/t"], ["Grade", "Caliper µm", "g/m²", "Price"], ["GC1", 480, 290, 1042],
    ]  # fmt: skip
    assert [line.offer.basis for line in lines(rows).values()] == ["msf", "tonne"]
    asked = lines([*rows[:4], ["B. EUR/ton"], *rows[5:]]).values()
    assert [line.state for line in asked] == [State.ACCEPTED, State.QUESTION]


QUEBEC = [
    ["Produit", "Calibre (points)", "lb/1000 pi²", "Prix", "Unité"],
    ["SBS couché 1 face", 18, 76, "1 490,00", "tonne courte"],
    ["Kraft couché non blanchi", 18, 75, "68,5 ¢", "livre"],
    ["CCNB", 24, 94, "1 240,00", "tonne métrique"],
    ["Carton gris", 28, 98, "880,00", "ton"],
]


def test_a_ton_beside_tonnes_is_asked_and_one_among_pounds_is_short():
    note = ["Les prix sont en dollars canadiens."]
    mixed = list(lines([*QUEBEC, [], note]).values())
    assert mixed[-1].offer.basis is None
    assert codes(mixed[-1]) == {"basis-unknown"}
    pounds = list(lines([*QUEBEC[:3], QUEBEC[4], [], note]).values())
    assert pounds[-1].offer.basis == "short_ton"


@pytest.mark.parametrize(
    ("unit", "basis"), [("$ CA/t.c.", Basis.SHORT_TON), ("$ CA/t.m.", Basis.TONNE), ("$ CA/t", None)]
)
def test_short_forms_of_the_two_tons(unit, basis):
    rows = [["Carton", "pt", "lb/1000 pi²", f"Prix ({unit})"], ["SBS C1S", 18, 75, 1580]]
    assert [line.offer.basis for line in lines(rows).values()] == [basis]


def only(rows, answers=None, **more):
    (line,) = lines(rows, answers, **more).values()
    return line


def headed(head, value, **more):
    """The one line of a list whose price column is headed so."""
    return only([["Board", "Caliper (pt)", "lb/MSF", head], ["SBS C1S", 18, 75, value]], **more)


def test_a_ton_among_points_and_grams_and_pounds_without_a_caliper_are_asked():
    assert codes(only([["Board", "pt", "g/m²", "USD/ton"], ["SBS", 18, 360, 1100]])) == {"basis-unknown"}
    assert "weight-basis-unknown" in codes(only([["Board", "lb", "USD/MSF"], ["URB", 130, 34]]))


def test_a_ton_is_short_among_pounds_and_inches_and_a_tonne_among_grams_and_microns():
    assert headed("USD/ton", 1100).offer.basis is Basis.SHORT_TON
    assert only([["Board", "µm", "g/m²", "USD/ton"], ["SBS", 457, 366, 1100]]).offer.basis is Basis.TONNE


def test_a_stated_ton_settles_every_ton():
    rows = [
        ["All tons are metric tons of 1,000 kg."],
        [],
        *[["Board", "pt", "lb/MSF", "USD/ton"], ["SBS", 18, 75, 1100]],
    ]
    assert only(rows).offer.basis is Basis.TONNE


def test_a_point_among_micrometres_makes_no_short_ton():
    rows = [
        ["Sorte", "Gewicht", "Dicke", "EUR/t"], ["GC1", "250 g/m²", "0,40 mm", 1311],
        ["GC1", "270 g/m²", "435 µm", 1303], ["GC2", "300 g/m²", "19 pt", 1266],
    ]  # fmt: skip
    assert {line.offer.basis.value for line in lines(rows).values()} == {"tonne"}


def test_a_basis_may_say_what_its_ton_is():
    rows = [["FOB mill, per short ton of 2,000 lb"], ["Grade", "pt", "USD", "CAD"], ["SBS", 14, 1190, 1629]]
    assert [(line.offer.basis.value, line.offer.currency) for line in lines(rows).values()] == [
        ("short_ton", "USD"), ("short_ton", "CAD"),
    ]  # fmt: skip


US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def of_book(*grids):
    return {
        (line.offer.source.sheet, line.offer.source.cell): line for line in read_workbook(book(*grids), Answers()).lines
    }


class TestTonsOfPages:
    US_PAGE = (["On this page a ton is 2,000 lb. US dollars."], [*US, "Price/ton"], ["SBS C2S", 12, 54, 1262])
    PAGE = (["On this page a ton is 1,000 kg. US dollars."], [*METRIC, "Price/ton"], ["SBS C2S", 260, 305, 1412])
    NEITHER = (["US dollars."], [*METRIC, "Price/ton"], ["SBS C2S", 260, 305, 1412])

    def test_each_page_has_its_own(self):
        found = of_book(grid(self.US_PAGE, "Home"), grid(self.PAGE, "Abroad"), grid(self.NEITHER, "Other"))
        assert [line.offer.basis for line in found.values()] == [Basis.SHORT_TON, Basis.TONNE, None]

    def test_one_definition_holds_for_the_whole_file(self):
        found = of_book(grid(self.PAGE, "Abroad"), grid(self.NEITHER, "Other"))
        assert {line.offer.basis for line in found.values()} == {Basis.TONNE}


def test_a_charge_per_t_in_a_list_without_calipers_is_per_tonne():
    rows = [["Preise in EUR/t. Energiezuschlag 38,00 EUR/t auf alle Sorten."], ["Sorte", "230 g/m²", "250 g/m²"]]
    found = lines([*rows, ["GC1", 1290, 1284]])
    assert {(float(one.price), one.basis) for line in found.values() for one in line.offer.charges} == {
        (38.0, Basis.TONNE)
    }
    rows = [["Prices in USD/ST. Energy surcharge USD 38.00/t on all grades."], ["Board", "75 lb/MSF", "80 lb/MSF"]]
    found = lines([*rows, ["SBS", 1290, 1284]])
    assert {one.basis for line in found.values() for one in line.offer.charges} != {Basis.TONNE}


HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize(("size", "kg"), [("5 tons+ (10,000 lb)", 4536), ("from 5 tons (5,000 kg)", 5000)])
def test_a_size_in_two_units_says_which_ton_is_meant(size, kg):
    found = lines([["USD per cwt"], [*HEAD, size, "20 tons+"], [*BOARD, 47.2, 45.7]])
    assert round(found["D3"].offer.from_kg) == kg


def test_a_size_in_two_units_that_differ_is_asked_about():
    found = lines([["USD per cwt"], [*HEAD, "5 tons+ (30,000 lb)", "20 tons+ (90,000 lb)"], [*BOARD, 47.2, 45.7]])
    assert codes(found["D3"]) >= {"bracket-unread"}


SPANISH_HEAD = ["Tipo", "g/m²", "Precio", None, "Tipo", "lb/MSF", "Precio"]


@pytest.mark.parametrize("short", ["USD/tonelada corta (2.000 lb)", "USD/short ton (2,000 lb)"])
def test_a_defined_short_ton_leaves_the_tonne_of_another_table(short):
    titles = ["Europa, EUR/t", None, None, None, f"América, {short}", None, None]
    found = lines(
        [titles, SPANISH_HEAD, ["GC2", 250, 1221, None, "SBS", 60, 1236], ["GD2", 350, 851, None, "URB", 85, 752]]
    )
    assert {str(found[cell].offer.basis) for cell in ("G3", "G4")} == {"short_ton"}
    assert {str(found[cell].offer.basis) for cell in ("C3", "C4")} <= {"tonne", "None"}


@pytest.mark.parametrize("note", ["1 ton = 2,000 lb", "ton of 2,000 lb", "tons are short tons"])
def test_a_defined_ton_is_every_plain_ton(note):
    found = lines([["USD per ton"], ["Grade", "pt", "g/m²", "Price"], ["SBS", 18, 366, 1190], [note]])
    assert str(found["D3"].offer.basis) == "short_ton"


def spread(rolls, axis):
    heads = [["Stock", axis, None], [None, 60, 76]]
    rows = [["Tarn Valley Board"], ["USD per ton, f.o.b. mill"], [rolls], [], *heads, ["SBS C1S", 1250, 1226]]
    return list(lines(rows, merged=merged((4, 1, 4, 2))).values())


@pytest.mark.parametrize("rolls", ["Trimmed rolls 20 in. to 84 in. wide, 3 in. cores.", "Rolls 40 inches wide"])
@pytest.mark.parametrize("axis", ["Basis weight, pounds per 1,000 square feet", "Basis wt, lb/MSF"])
def test_a_ton_among_pounds_on_an_area_and_rolls_in_inches_is_short(rolls, axis):
    found = spread(rolls, axis)
    assert [(line.state, line.offer.basis) for line in found] == [("accepted", "short_ton")] * 2
    assert {line.offer.caliper_um for line in found} == {None}


@pytest.mark.parametrize("rolls", ["Trimmed rolls 500 to 2,100 mm wide.", "12 in rolls of any kind", "12 in all"])
def test_a_ton_among_pounds_alone_is_asked_about(rolls):
    assert [codes(line) for line in spread(rolls, "Basis wt, lb/MSF")] == [{"basis-unknown"}] * 2
