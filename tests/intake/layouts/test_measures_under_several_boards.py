"""Bare weights and calipers across, under boards whose heads say in which unit: 'GC1 (g/m²)' over '230 | 300'."""

import pytest

from tests.intake.sheets import lines, merged


@pytest.mark.parametrize(
    ("corner", "small", "large"),
    [("Menge", "ab 1 t", "ab 5 t"), ("Order size", "from 1 t", "from 5 t"), ("Quantité", "dès 1 t", "dès 5 t"),
     ("Cantidad", "desde 1 t", "desde 5 t"), ("Kvantitet", "från 1 t", "från 5 t")],
)  # fmt: skip
def test_the_figures_below_each_board_are_its_weights(corner, small, large):
    rows = [["EUR/t"], [corner, "GC1 (g/m²)", None, "GD2 (g/m²)", None], [None, 230, 300, 300, 350],
            [small, 1260, 1220, 910, 900], [large, 1230, 1190, 880, 870]]  # fmt: skip
    found = [line.offer for line in lines(rows).values()]
    weights = [("FBB", 230), ("FBB", 300), ("CRB", 300), ("CRB", 350)] * 2
    assert [(one.grade, one.grammage_gsm) for one in found] == weights
    assert {one.from_kg for one in found} == {1000, 5000}


def test_weights_in_columns_of_their_own_are_no_prices():
    rows = [["EUR/t"], ["µm", "GC1 (g/m²)", "GC2 (g/m²)"], [300, 230, 250], [350, 300, 320]]
    assert not lines(rows)


@pytest.mark.parametrize(
    ("label", "rows"),
    [("Form", ("Rolls", "Sheets")), ("Ausführung", ("Rollen", "Bogen")), ("Présentation", ("Bobines", "Feuilles")),
     ("Presentación", ("Bobinas", "Hojas")), ("Utförande", ("Rullar", "Ark"))],
)  # fmt: skip
@pytest.mark.parametrize("weights", [(230, 300, 300, 350), (300, 230, 350, 300)])
def test_a_label_before_the_weights_names_what_stands_below_it(label, rows, weights):
    table = [["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], [label, *weights], [rows[0], 1200, 1180, 880, 870],
             [rows[1], 1260, 1240, 940, 930]]  # fmt: skip
    found = lines(table)
    assert [str(line.state) for line in found.values()] == ["accepted"] * 8
    grades = ("FBB", "FBB", "CRB", "CRB")
    assert [(line.offer.grade, line.offer.grammage_gsm) for line in found.values()] == [
        *zip(grades, weights, strict=True),
    ] * 2  # fmt: skip


def test_so_does_one_over_order_sizes():
    rows = [["Alle Preise in EUR/t"], [None, "GC1 (g/m²)", None, "GD2 (g/m²)", None], ["Menge", 230, 300, 300, 350],
            ["ab 5 t", 1200, 1180, 880, 870], ["ab 20 t", 1160, 1140, 840, 830]]  # fmt: skip
    found = [line.offer for line in lines(rows).values()]
    assert [(one.grammage_gsm, one.from_kg) for one in found[::4]] == [(230, 5000), (230, 20_000)]


@pytest.mark.parametrize("corner", [(), ((0, 0, 1, 0),)])
def test_heads_may_be_merged_over_two_rows(corner):
    rows = [["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], [], [None, 230, 300, 300, 350],
            ["Rollen", 1200, 1180, 880, 870], ["Bogen", 1260, 1240, 940, 930]]  # fmt: skip
    found = lines(rows, merged=merged(*corner, (0, 1, 1, 2), (0, 3, 1, 4)))
    assert [(line.offer.grade, line.offer.grammage_gsm) for line in found.values()] == [
        ("FBB", 230), ("FBB", 300), ("CRB", 300), ("CRB", 350),
    ] * 2  # fmt: skip


@pytest.mark.parametrize("label", ["Lead time", "Lieferzeit", "Délai", "Plazo", "Leveranstid"])
def test_days_below_such_heads_are_no_weights(label):
    rows = [["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], [label, 14, 16, 18, 20], ["Form", 230, 300, 300, 350]]
    assert not lines(rows)
