"""What a careful reader takes from a title's half sentence, a row of weights, a legend or a word in a column."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.footing import footing
from tracker.trade.offer import State
from tracker.trade.quantities import WeightUnit, grammage


def in_gsm(*pounds_per_msf):
    return [pytest.approx(float(grammage(Decimal(each), WeightUnit.LB_MSF))) for each in pounds_per_msf]


def weights_of(rows):
    return [float(line.offer.grammage_gsm) for line in lines(rows).values()]


@pytest.mark.parametrize(
    "title",
    ["US$ per short ton by basis weight, lb per 1,000 sq ft", "US$/ST, across: basis weight (lb/MSF)"],
)
def test_a_title_names_what_bare_numbers_across_are(title):
    assert weights_of([[title], [], ["Grade", 60, 68], ["SBS C1S", 1240, 1231]]) == in_gsm(60, 68)


def test_a_row_of_weights_under_calipers_weighs_the_rows_below_it():
    rows = [
        ["US$ per cwt"], [], ["Caliper (pt)", 14, 18], ["SBS, lb/MSF", 60, 76], ["SBS C1S", "61.2", "60.3"],
        ["CRB, lb/MSF", 56, 70], ["CRB C1S", "41.2", "40.3"],
    ]  # fmt: skip
    assert list(lines(rows)) == ["B5", "C5", "B7", "C7"]
    assert weights_of(rows) == in_gsm(60, 76, 56, 70)


def test_a_row_of_weights_under_grades_weighs_the_columns():
    rows = [
        ["Prix €/t"], [], ["Qualité", "GC1", "GD2"], ["Grammage g/m²", 250, 350], ["< 5 t", 1351, 961],
        ["> 5 t", 1278, 888],
    ]  # fmt: skip
    found = lines(rows)
    assert [(cell, line.offer.grammage_gsm) for cell, line in found.items()] == [
        ("B5", 250), ("C5", 350), ("B6", 250), ("C6", 350),
    ]  # fmt: skip
    assert [line.offer.below_kg for line in found.values()][:2] == [5000, 5000]


@pytest.mark.parametrize("last", ["and up", "+", "–", "no limit", "y más", "offen", "et plus"])
def test_the_last_order_size_is_open(last):
    rows = [
        ["Board", "pt", "Order from (lb)", "to (lb)", "USD/cwt"],
        ["SBS", 18, 5000, 19999, 62], ["SBS", 18, 20000, last, 59],
    ]  # fmt: skip
    line = lines(rows)["E3"]
    assert (line.state, line.offer.below_kg) == (State.ACCEPTED, None)


@pytest.mark.parametrize(
    ("note", "heads", "bounds"),
    [
        ("Komplettladung = 24 t und mehr, Teilladung = unter 24 t.", ("Teilladung", "Komplettladung"), 24000),
        ("En pall väger 800 kg.", ("under 5 pallar", "5 pallar och mer"), 4000),
        ("Une palette pèse 800 kg", ("moins de 5 palettes", "5 palettes et plus"), 4000),
        ("Part load = under 24 t", ("Part load", "Full load"), 24000),
    ],
)
def test_what_a_load_weighs_can_be_said_in_a_sentence(note, heads, bounds):
    rows = [[f"EUR/t. {note}"], [], ["Sorte", "g/m²", "µm", *heads], ["GD2", 300, 390, 958, 911]]
    small, large = lines(rows).values()
    assert (small.offer.from_kg, small.offer.below_kg) == (None, bounds)
    assert (large.offer.from_kg, large.offer.below_kg) == (bounds, None)


def test_charges_in_rows_below_the_boards_are_in_the_delivered_cost():
    rows = [
        ["FOB mill"], ["Item", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1000],
        ["Freight to your plant, all items", None, None, 62], ["Energy surcharge, all items", None, None, "2.5 %"],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert float(footing(line.offer).delivered_per_tonne) == pytest.approx(1087 / 0.90718474)


@pytest.mark.parametrize("rate", ["2 or 3 %", "2-3 %", "2 to 3 %", "2 %/3 %"])
def test_a_charge_row_that_is_not_understood_leaves_the_delivered_cost_open(rate):
    rows = [
        ["FOB mill"], ["Item", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1000],
        ["Freight", None, None, 62], ["Energy surcharge", None, None, rate],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert footing(line.offer).delivered_per_tonne is None


def test_a_sentence_tells_what_a_sign_at_a_price_means():
    rows = [
        ["Preise in EUR/t, mit * gekennzeichnete Preise in EUR/kg"], [], ["Sorte", "g/m²", "µm", "Preis"],
        ["GC1", 230, 370, 1313], ["GD2", 300, 390, "0,93*"], ["GD2", 350, 455, 917],
    ]  # fmt: skip
    assert [line.offer.basis.value for line in lines(rows).values()] == ["tonne", "kg", "tonne"]


def test_a_point_among_micrometres_makes_no_short_ton():
    rows = [
        ["Sorte", "Gewicht", "Dicke", "EUR/t"], ["GC1", "250 g/m²", "0,40 mm", 1311],
        ["GC1", "270 g/m²", "435 µm", 1303], ["GC2", "300 g/m²", "19 pt", 1266],
    ]  # fmt: skip
    assert {line.offer.basis.value for line in lines(rows).values()} == {"tonne"}


def test_a_place_called_port_is_no_freight():
    rows = [
        ["Delivered price by destination, US$ per short ton"], [],
        ["Grade", "pt", "Eastburn", "Port Hanley", "West Tarring"],
        ["SBS C1S", 14, 1150, 1170, 1185], ["CUK", 24, 1105, 1125, 1140],
    ]  # fmt: skip
    found = lines(rows)
    assert list(found) == ["C4", "D4", "E4", "C5", "D5", "E5"]
    assert not any(line.offer.charges for line in found.values())


def test_weights_across_keep_their_prices_above_a_row_of_units():
    rows = [["SEK per metriskt ton"], ["Kvalitet", "230 g", "270 g"], [None, "g/m²", "g/m²"], ["GC2", 13250, 13160]]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [230, 270]


def test_what_a_discount_starts_from_is_no_weight():
    rows = [
        ["EUR je Tonne"], ["Sorte", "g/m²", "µm", "Basis", "Abschlag", "Nettopreis"], ["GD2", 300, 400, 870, 20, 845],
        ["GD2", 350, 465, 890, 20, 872],
    ]  # fmt: skip
    assert {cell: line.state for cell, line in lines(rows).items()} == {"F3": State.ACCEPTED, "F4": State.ACCEPTED}


def test_the_same_lot_in_every_row_parts_no_orders():
    rows = [
        ["Qty", "Description", "Price"],
        ["1 lot", "SBS C1S 16 pt", "$1,215 / short ton"],
        ["1 lot", "CUK 18 pt", "$0.54/lb"],
    ]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


def test_numbered_notes_with_a_figure_are_notes():
    rows = [
        ["Board", "pt", "US$/MSF"], ["CUK", 18, 37.65], [], ["1. Minimum order 8,000 lb."],
        ["2. Last year's volume:", None, 18450], ["3. Terms net 30."],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert float(line.offer.minimum_kg) == pytest.approx(8000 * 0.45359237)


def test_tons_bought_and_what_they_come_to_are_no_prices():
    rows = [
        ["Grade", "pt", "Price USD/ST", "Tons (short)", "Amount USD"], ["SBS C1S", 16, 1125, 40, 45000],
        ["SBS C1S", 22, 1190, 20, 23800], ["Subtotal", None, 1146.67, 60, 68800],
    ]  # fmt: skip
    assert {cell: line.state for cell, line in lines(rows).items()} == {"C2": State.ACCEPTED, "C3": State.ACCEPTED}


def test_a_list_called_annulled_is_superseded():
    rows = [
        ["ANNULÉ – remplacé par le tarif du 1er juillet 2026"],
        ["EUR/t"],
        ["Qualité", "g/m²", "Prix"],
        ["GC2", 230, 1185],
    ]
    assert lines(rows) == {}


def test_a_place_spelt_like_a_word_for_validity_heads_prices():
    rows = [
        ["Precios en euros por tonelada, portes incluidos"], ["Calidad", "g/m²", "µm", "Madrid", "Valencia"],
        ["GC2", 250, 405, 1310, 1318], ["GD2", 300, 390, 910, 918],
    ]  # fmt: skip
    assert list(lines(rows)) == ["D3", "E3", "D4", "E4"]


def test_a_basis_may_say_what_its_ton_is():
    rows = [["FOB mill, per short ton of 2,000 lb"], ["Grade", "pt", "USD", "CAD"], ["SBS", 14, 1190, 1629]]
    assert [(line.offer.basis.value, line.offer.currency) for line in lines(rows).values()] == [
        ("short_ton", "USD"), ("short_ton", "CAD"),
    ]  # fmt: skip


def test_a_charge_row_may_say_its_unit_beside_its_figure():
    rows = [
        ["US$ per short ton"], ["Board", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 1140], [],
        ["Energy surcharge", None, None, 18.5, "US$ per short ton"],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert [(charge.price, charge.currency) for charge in line.offer.charges] == [(Decimal("18.5"), "USD")]


def test_a_legend_may_be_called_one():
    rows = [
        ["USD/t"], ["Leyenda: S1 = SBS estucado una cara (C1S); K = CUK"], [], ["Código", "g/m²", "µm", "Precio"],
        ["S1", 280, 345, 1290], ["K", 300, 400, 1120],
    ]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["SBS", "CUK"]


@pytest.mark.parametrize("spoilt", ["x", "1 ", "a. ", "1-", "GC1 250 g/m² "])
def test_a_cell_of_thousands_of_signs_holds_up_no_other(spoilt):
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price", "Remark"], ["GC1", 250, 405, 1182, (spoilt * 33000)[:32767]]]
    assert lines([*rows, ["GD2", 300, 390, 812]])["D4"].state is State.ACCEPTED
