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
