"""Commas, points and spaces within figures: read as one number, or asked about."""

import pytest

from tests.intake.sheets import codes, lines, prices
from tracker.trade.footing import footing
from tracker.trade.offer import State


@pytest.mark.parametrize(
    ("measure", "expected"),
    [("0,46 mm", ("accepted", "1090", "tonne")), ("0.46 mm", ("question", None, "tonne")),
     ("0.46", ("question", "1.090", "tonne"))],
)  # fmt: skip
def test_a_measure_settles_a_price_by_its_comma_and_never_to_an_absurd_one(measure, expected):
    """Technical data have a decimal point in sheets whose money has a comma."""
    rows = [["Sorte", "g/m²", "Dicke mm", "Preis"], ["GD2", 350, measure, "1.090 €/t"]]
    assert prices(lines(rows)) == {"D2": expected}


@pytest.mark.parametrize(
    ("weight", "caliper"), [("1 100", "1 650"), ("1\u202f100", "1\u00a0650"), ("1 100 g/m²", "1 650 µm")]
)
def test_thousands_set_apart_by_a_space_are_one_figure(weight, caliper):
    rows = [["Material", "g/m²", "µm", "SEK/m²"], ["URB", weight, caliper, "8,47"], ["GD2", "280", "360", "2,84"]]
    first = next(iter(lines(rows).values())).offer
    assert (first.grammage_gsm, first.caliper_um) == (1100, 1650)


def test_two_figures_with_a_space_between_are_asked():
    rows = [["Material", "g/m²", "µm", "SEK/m²"], ["GC2", "250", "410 455", "4.10"]]
    assert next(iter(lines(rows).values())).offer.caliper_um is None


def test_one_decimal_sign_in_the_column_settles_the_others():
    rows = [["Sorte", "µm", "g/m²", "Preis €/t"], ["GC1", 400, 250, "1.234"], ["GD2", 400, 300, "840,50"]]
    assert lines(rows)["D2"].offer.price == 1234


@pytest.mark.parametrize("spoilt", ["x", "1 ", "a. ", "1-", "GC1 250 g/m² "])
def test_a_cell_of_thousands_of_signs_holds_up_no_other(spoilt):
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price", "Remark"], ["GC1", 250, 405, 1182, (spoilt * 33000)[:32767]]]
    assert lines([*rows, ["GD2", 300, 390, 812]])["D4"].state is State.ACCEPTED


BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize("dash", ["-", " - ", " – ", "–"])
def test_a_spaced_dash_between_two_figures_is_a_span(dash):
    rows = [[f"FCA mill. Delivery 3{dash}4 weeks."], [*HEAD, "USD/ST"], [*BOARD, 1190]]
    assert lines(rows)["D3"].offer.lead_days == (21, 28)


def test_a_spaced_dash_behind_a_figure_of_its_own_parts_sentences():
    rows = [["Minimum order 20 tons – lead time 4 weeks"], [*HEAD, "USD/ST"], [*BOARD, 1190]]
    assert lines(rows)["D3"].offer.lead_days == (28, 28)


COMMA_HEAD = ["Sorte", "g/m²", "µm"]
POINTS = [["GC1", 240, 375, "1'345.00"], ["GC2", 260, 430, "1'268.50"]]
COMMAS = [["GC1", 240, 375, "1.345,00"], ["GC2", 260, 430, "1.268,50"]]


@pytest.mark.parametrize(
    ("note", "rows"),
    [
        ("Franko Domizil. Energiezuschlag 4,5 % auf alle Preise, Mindestmenge 2,5 t.", POINTS),
        ("Franco. Supplément énergie 4,5 % sur tous les prix. Minimum 2,5 t.", POINTS),
        ("Portes pagados. Recargo energético 4,5 % sobre todos los precios. Pedido mínimo 2,5 t.", POINTS),
        ("Delivered. Energy surcharge 4.5% on all prices. Minimum order 2.5 t.", COMMAS),
        ("Fritt levererat. Energitillägg 4.5 % på alla priser. Minsta order 2.5 t.", COMMAS),
    ],
)
def test_a_note_is_read_as_it_is_written_whatever_sign_the_figures_have(note, rows):
    found = lines([[note], [], [*COMMA_HEAD, "EUR/t"], *rows])
    offer = found["D4"].offer
    assert [(str(charge.price), charge.basis) for charge in offer.charges] == [("4.5", None)]
    assert offer.minimum_kg == 2500
    assert footing(offer).delivered_per_tonne == pytest.approx(1345 * 1.045)


def test_a_weight_that_the_sheets_sign_makes_grams_of_is_still_told():
    (line, _) = lines([["Minimum order 20,000 kg"], [], [*COMMA_HEAD, "EUR/t"], *COMMAS]).values()
    assert line.offer.minimum_kg is None
    assert "bracket-unread" in codes(line)


def test_the_letter_of_a_slip_tells_no_decimal_sign():
    head = ["Board", "pt", "lb/MSF", "Price"]
    rows = [head, ["SBS C1S", 18, 75, "$1,145/ST"], ["CCNB", 20, 78, "$59.10/cwt"], ["CUK", 21, 88, "$1,1O5/ST"]]
    told = prices(lines(rows))
    assert told["D2"] == ("accepted", "1145", "short_ton")
    assert told["D4"][0] == "question"
    rows[2][3] = "59,10 $/cwt"
    assert prices(lines(rows))["D2"][:2] == ("accepted", "1.145") or prices(lines(rows))["D2"][0] == "question"
