"""Cross-tabs below each other, each of which spreads its own measures across."""

import pytest

from tests.intake.sheets import lines

GD2 = ["Duplexkarton GD2"]
GC2 = ["Faltschachtelkarton GC2"]
LOTS = [["500 bis 2.999 kg", 968, 960, 952], ["ab 3.000 kg", 884, 876, 868]]
DEARER = [["500 bis 2.999 kg", 1352, 1340, 1333], ["ab 3.000 kg", 1258, 1246, 1239]]
WEIGHTS = [[250, 300, 350], [235, 275, 300]]
CALIPERS = [[325, 385, 455], [380, 455, 500]]


def boards(rows):
    found = lines([["Alle Preise €/t frei Haus"], [], *rows])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    offers = [line.offer for line in found.values()]
    return [(offer.grade, offer.caliper_um, offer.grammage_gsm) for offer in offers[:3] + offers[-3:]]


@pytest.mark.parametrize("gap", [[[]], []])
@pytest.mark.parametrize("corner", ["Flächengewicht (g/m²)", "g/m²", "Grammage g/m²"])
def test_each_has_its_own_weights_and_calipers(corner, gap):
    first = [GD2, [corner, *WEIGHTS[0]], ["Dicke (µm)", *CALIPERS[0]], *LOTS]
    second = [GC2, [corner, *WEIGHTS[1]], ["Dicke (µm)", *CALIPERS[1]], *DEARER]
    wanted = [("CRB", *each) for each in zip(CALIPERS[0], WEIGHTS[0], strict=True)]
    wanted += [("FBB", *each) for each in zip(CALIPERS[1], WEIGHTS[1], strict=True)]
    assert boards([*first, *gap, *second]) == wanted


def test_one_measure_across_is_enough():
    found = boards([GD2, ["Dicke µm", *CALIPERS[0]], *LOTS, [], GC2, ["Dicke µm", *CALIPERS[1]], *DEARER])
    assert [caliper for _, caliper, _ in found] == [*CALIPERS[0], *CALIPERS[1]]


def test_another_name_for_the_same_measure_begins_anew_too():
    found = boards(
        [GD2, ["Flächengewicht g/m²", *WEIGHTS[0]], *LOTS, [], GC2, ["Grammatur g/m²", *WEIGHTS[1]], *DEARER]
    )
    assert [weight for *_, weight in found] == [*WEIGHTS[0], *WEIGHTS[1]]


def test_a_row_that_changes_the_second_measure_alone_keeps_the_first():
    rows = [GD2, ["g/m²", *WEIGHTS[0]], ["Dicke (µm)", *CALIPERS[0]], *LOTS]
    found = boards([*rows, [], GC2, ["Dicke (µm)", *CALIPERS[1]], *DEARER])
    assert found[3:] == [("FBB", *each) for each in zip(CALIPERS[1], WEIGHTS[0], strict=True)]


def test_rows_of_prices_begin_no_table():
    rows = [["g/m²", *WEIGHTS[0]], ["GD2", 968, 960, 952], ["GD3", 884, 876, 868], ["GC2", 1352, 1340, 1333]]
    found = lines([["Alle Preise €/t frei Haus"], [], *rows])
    assert [line.offer.price for line in found.values()] == [price for _, *prices in rows[1:] for price in prices]


def test_calipers_by_weight_below_the_prices_are_no_offers():
    prices = [["Calidad", "Gramaje (g/m²)"], [None, 250, 300, 350], ["GC1", 1155, 1148, 1141], ["GT2", 862, 855, 848]]
    calipers = [["Calidad", 250, 300, 350], ["GC1", 400, 490, 580], ["GT2", 325, 390, 455]]
    rows = [["Tarifa en €/t"], [], *prices, [], ["Espesores orientativos en µm"], *calipers]
    found = [line.offer.price for line in lines(rows).values()]
    assert found == [1155, 1148, 1141, 862, 855, 848]


def test_a_header_that_comes_again_on_the_next_page_heads_prices():
    head = [["Calidad", "Gramaje (g/m²)"], [None, 250, 300, 350]]
    again = [["Calidad", 250, 300, 350], ["GD2", 798, 791, 784]]
    found = boards([*head, ["GC1", 1155, 1148, 1141], [], ["Página 2"], *again])
    assert [weight for *_, weight in found] == [*WEIGHTS[0], *WEIGHTS[0]]


@pytest.mark.parametrize("corner", ["GC1 g/m²", "GC1 (g/m²)"])
def test_a_corner_with_the_grade_and_its_unit_heads_weights(corner):
    rows = [[corner, "< 5 t", "5-20 t"], [230, 1250, 1220], [300, 1240, 1210]]
    found = [line.offer for line in lines([["EUR per tonne, delivered"], [], *rows]).values()]
    assert [(offer.grade, offer.grammage_gsm) for offer in found] == [
        ("FBB", 230),
        ("FBB", 230),
        ("FBB", 300),
        ("FBB", 300),
    ]


def test_grades_over_order_sizes_are_groups_and_no_part_of_them():
    head = [[None, "GC1", None, "GD2", None], ["Ytvikt g/m²", "< 5 ton", "> 5 ton", "< 5 ton", "> 5 ton"]]
    found = lines([["EUR per ton (1 000 kg), fritt fabrik"], [], *head, [230, 1194, 1163, 829, 798]]).values()
    assert [(line.offer.grade, line.offer.price) for line in found] == [
        ("FBB", 1194), ("FBB", 1163), ("CRB", 829), ("CRB", 798),
    ]  # fmt: skip


@pytest.mark.parametrize("axis", ["g/m²", "Grammatur", "Basis weight", "Grammage (g/m²)", "gramaje", "ytvikt g/m²"])
def test_a_title_with_the_name_of_an_axis_beside_it_is_none_of_the_boards_above(axis):
    def block(title, *prices):
        return [[title, axis], ["Sorte", 230, 250], ["GC1", *prices]]

    rows = [
        ["Preise je 1000 kg, g/m²"],
        [],
        *block("Block I: CHF", 1389, 1378),
        [],
        *block("Block II: EUR", 1452, 1440),
    ]
    found = lines(rows)
    assert [(line.state, line.offer.currency) for line in found.values()] == [("accepted", c) for c in _CHF_THEN_EUR]


_CHF_THEN_EUR = ("CHF", "CHF", "EUR", "EUR")


@pytest.mark.parametrize("said", ["call", "n/a", "auf Anfrage", "–"])
def test_a_board_without_a_price_among_others_is_no_title(said):
    rows = [["EUR je 1000 kg"], ["Sorte", "g/m²", "Preis"], ["GC1", 230, 1389], ["GC2", None, said], ["GD2", 250, 948]]
    assert {cell: str(line.offer.grade) for cell, line in lines(rows).items()} == {"C3": "FBB", "C5": "CRB"}
