"""What board weighs: bare figures, pounds on an area, two weights that differ, slips and estimates."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import GrammageFrom, State


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


@pytest.mark.parametrize("head", ["kg/m²", "Weight kg/m2", "Flächengewicht (kg/qm)"])
def test_greyboard_weighed_in_kilograms_a_square_metre(head):
    found = lines([["EUR/t"], ["Board", "mm", head, "EUR/t"], ["Greyboard", 1.4, 0.94, 630]])
    assert prices(found) == {"D3": ("accepted", "630", "tonne")}
    assert found["D3"].offer.grammage_gsm == 940
    assert not codes(found["D3"])


@pytest.mark.parametrize(
    ("head", "cell", "gsm"),
    [
        ("Cal./wt (lb/MSF)", "14 pt / 56", 273),
        ("Caliper pt / Basis weight lb/MSF", "14/56", 273),
        ("Basis weight lb/MSF / caliper pt", "56/14", 273),
        ("Dicke/Gewicht", "400 µm / 240", 240),
        ("Épaisseur µm / grammage g/m²", "400/240", 240),
        ("Spec", "14pt 56#", 273),
        ("Size", "14 pt, 56 lb/MSF", 273),
        ("Stärke / Gewicht", "400 µm 240 g", 240),
    ],
)
def test_caliper_and_weight_in_one_cell_are_each_read(head, cell, gsm):
    line = lines([["Board", head, "EUR per tonne"], ["GC1" if gsm == 240 else "CRB", cell, 900]])["C2"]
    assert (str(line.state), round(line.offer.grammage_gsm), line.offer.grammage_from) == ("accepted", gsm, "quoted")


def test_pounds_on_an_area_of_unknown_name_are_no_estimate():
    rows = [
        ["Board", "pt", "lb/QQX", "USD/ST"],
        ["SBS C1S", 14, 59, 1200],
        ["SBS C1S", 18, 74, 1190],
        ["CRB", 20, 79, 800],
    ]
    assert [line.offer.grammage_from for line in lines(rows).values()] == ["quoted"] * 3
    stock = [["Board", "pt", "Qty (lb)", "USD/ST"], ["SBS C1S", 14, 59, 1200], ["SBS C1S", 18, 74, 1190]]
    assert [line.offer.grammage_from for line in lines(stock).values()] == ["estimated"] * 2


@pytest.mark.parametrize(("note", "caliper"), [("Zwischenlagen 0,4 mm", None), ("Dicke 0,4 mm", 400), ("0,4 mm", 400)])
def test_a_note_below_measures_board_only_where_it_says_so(note, caliper):
    rows = [["EUR/t"], ["Sorte", "g/m²", "Preis"], ["GC1", 250, 1204], ["GC1", 260, 1198], [], [note]]
    assert {line.offer.caliper_um for line in lines(rows).values()} == {caliper}


AMERICAN = [["SBS", 0.018, 74, 1140, 42.18], ["CUK", 0.021, 86, 1040, 44.72]]


@pytest.mark.parametrize("above", ["Basis weight", "Weight lb", "Lb"])
def test_an_area_below_a_weight_is_what_board_weighs_on(above):
    rows = [["Board", "Caliper", above, "Price"], [None, "in", "per MSF", "USD/ST"], *(row[:4] for row in AMERICAN)]
    for line in lines(rows).values():
        assert line.offer.grammage_gsm is not None
        assert "weight-basis-unknown" not in codes(line)


@pytest.mark.parametrize("head", ["Gewicht kg", "Weight (kg)", "Poids kg", "Peso kg", "Vikt kg"])
def test_kilograms_beside_a_basis_weight_are_of_the_lot(head):
    rows = [["GC2", 230, 360, "3.820", 985], ["GD2", 280, 360, "6.415", 690], ["GD2", 350, 455, "1.790", 705]]
    found = lines([["Preise €/t"], ["Bezeichnung", "g/qm", "my", head, "Preis"], *rows])
    assert [float(line.offer.grammage_gsm) for line in found.values()] == [230, 280, 350]
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_pounds_beside_grams_may_be_the_basis_weight_once_more():
    rows = [["SBS", 254, 52, 18, 1221], ["SBS", 381, 78, 24, 1230]]
    found = lines([["USD per short ton"], ["Grade", "g/m²", "Basis weight lb/MSF", "pt", "Price"], *rows])
    assert [round(float(line.offer.grammage_gsm)) for line in found.values()] == [254, 381]


@pytest.mark.parametrize(
    ("head", "price"),
    [
        ("Lbs", "$/cwt"),
        ("Weight", "$/cwt"),
        ("Gewicht", "EUR/kg"),
        ("Poids (kg)", "EUR/kg"),
        ("Peso", "EUR/kg"),
        ("Vikt", "EUR/kg"),
    ],
)
def test_figures_that_no_board_weighs_are_what_there_is_of_each_lot(head, price):
    rows = [["Grade", "Caliper", head, price], ["SBS", "14 pt", 17300, 44.5], ["CUK", "18 pt", 39600, 43.2]]
    found = lines([*rows, ["CRB", "20 pt", 950, 39]]).values()
    assert [codes(line) & {"weight-implausible", "weight-estimated"} for line in found] == [{"weight-estimated"}] * 3


def test_one_weight_too_high_among_weights_of_board_is_a_slip():
    rows = [["Grade", "Pt", "Lbs", "$/cwt"], ["SBS", 14, 59, 44.5], ["CUK", 18, 7400, 43.2], ["CRB", 20, 80, 39]]
    found = lines(rows)
    assert "weight-implausible" in codes(found["D3"])
    assert str(found["D2"].offer.grammage_from) == "quoted"


def test_a_lone_weight_of_binders_board_is_its_own():
    rows = [["Sorte", "Dicke mm", "Gewicht", "EUR/kg"], ["Graupappe", 2.5, 1580, 0.61], ["Graupappe", 3, 1900, 0.6]]
    found = lines(rows).values()
    assert [float(line.offer.grammage_gsm) for line in found] == [1580, 1900]


METRIC = [["Sorte", "µm", "EUR/t"], ["GC1", 405, 1250], ["GD2", 400, 850]]


@pytest.mark.parametrize(
    "note",
    [
        "Au-delà de 450 g/m² : nous consulter", "(1) disponible également en 255 g/m²", "Also available in 300 g/m²",
        "Sample sheets 250 g/m² free", "Stiffness measured at 300 g/m²", "Lieferbar auch in 280 g/m²",
        "Nuevo gramaje 320 g/m² a partir de enero", "Även tillgänglig i 270 g/m²", "Ab 300 g/m² auf Anfrage",
    ],
)  # fmt: skip
def test_a_note_about_another_weight_weighs_no_board(note):
    for line in lines([*METRIC, [], [note]]).values():
        assert line.state is State.ACCEPTED
        assert line.offer.grammage_from is GrammageFrom.ESTIMATED


@pytest.mark.parametrize(
    "note",
    ["Flächengewicht: 280 g/m²", "All boards 280 g/m²", "Grammage 280 g/m² pour tous les articles", "Ytvikt 280 g/m²"],
)
def test_a_note_about_the_board_alone_weighs_it(note):
    assert {line.offer.grammage_gsm for line in lines([*METRIC, [], [note]]).values()} == {Decimal(280)}


def test_a_number_sign_beside_calipers_weighs_the_board():
    rows = [["Board", "Pts", "#", "US$ per cwt"], ["SBS C1S", 16, 67, 62.25], ["SBS C1S", 20, 83, 61.5]]
    weights = [round(line.offer.grammage_gsm, 1) for line in lines(rows).values()]
    assert weights == [Decimal("327.1"), Decimal("405.2")]


def test_a_number_sign_over_large_figures_is_an_order():
    rows = [["Board", "Pts", "#", "US$ per cwt"], ["SBS C1S", 16, 10000, 62.25], ["SBS C1S", 16, 40000, 61.5]]
    assert {str(line.offer.grammage_from) for line in lines(rows).values()} == {"estimated"}


def only(rows, answers=None, **more):
    (line,) = lines(rows, answers, **more).values()
    return line


@pytest.mark.parametrize(("weight", "gsm"), [(71, Decimal("346.652362183")), (213, Decimal("346.652362183"))])
def test_pounds_without_an_area_are_settled_by_physics_with_a_note(weight, gsm):
    line = only([["Board", "pt", "lb", "USD/ST"], ["CRB C1S", 18, weight, 905]])
    assert line.state is State.ACCEPTED
    assert line.offer.grammage_gsm == gsm
    assert codes(line) == {"weight-basis-unknown"}


def test_a_board_without_a_weight_has_a_marked_estimate():
    line = only([["Board", "Caliper (pt)", "USD/MSF"], ["SBS C1S", 18, 41.5]])
    assert line.state is State.ACCEPTED
    assert line.offer.grammage_from is GrammageFrom.ESTIMATED
    assert codes(line) == {"weight-estimated"}


def test_two_basis_weights_that_differ_are_still_asked_about():
    rows = [["Board", "pt", "lb/MSF", "g/m²", "USD/ST"], ["SBS C1S", 18, 75, 300, 1190]]
    assert codes(lines(rows)["E2"]) == {"weight-implausible"}


def test_pounds_that_are_no_boards_weight_on_either_area_are_asked_about():
    rows = [["Board", "pt", "Basis wt (lb)", "US$/ST"], ["CRB C1S", 18, 350, 880], ["CRB C1S", 20, 79, 870]]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]


@pytest.mark.parametrize("head", ["Basis lb", "Basis lbs", "Basis lb (1)"])
def test_basis_over_pounds_is_a_weight(head):
    rows = [["Grade", "Caliper (pt)", head, "USD/ST"], ["SBS", 18, 74, 1200], ["CUK", 20, 80, 900],
            ["(1) per 1,000 sq ft"]]  # fmt: skip
    assert [round(line.offer.grammage_gsm) for line in lines(rows).values()] == [361, 391]
