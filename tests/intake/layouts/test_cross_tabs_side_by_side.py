"""Cross-tabs beside each other, each with its own order sizes."""

import pytest

from tests.intake.sheets import codes, lines

_GERMAN = (
    ("GC1 EUR/t", "g/m²", (230, 300), ("< 5 t", "> 5 t"), 1250),
    ("GD2 EUR/t", "g/m²", (300, 400), ("< 2 t", "> 2 t"), 850),
)
_AMERICAN = (
    ("SBS C1S - USD/MSF FOB mill", "Caliper (pt)", (16, 18), ("Up to 10,000 lb", "10,000 lb and over"), 51.5),
    ("CRB - USD/MSF FOB mill", "Caliper (pt)", (20, 24), ("Up to 5,000 lb", "5,000 lb and over"), 41.5),
)


def beside(tables, gap):
    """The tables' rows in line, with an empty column between them or none."""
    blank = [None] if gap else []
    (title, corner, heads, sizes, price), (title2, corner2, heads2, sizes2, price2) = tables
    rows = [[title, None, None, *blank, title2], [corner, *heads, *blank, corner2, *heads2]]
    for place, (size, size2) in enumerate(zip(sizes, sizes2, strict=True)):
        rows.append([size, price - place, price + 6 - place, *blank, size2, price2 - place, price2 + 6 - place])
    return rows


def brackets(found):
    return {cell: (line.offer.from_kg, line.offer.below_kg) for cell, line in found.items()}


@pytest.mark.parametrize(("gap", "cells"), [(True, ("B3", "B4", "F3", "F4")), (False, ("B3", "B4", "E3", "E4"))])
@pytest.mark.parametrize(("tables", "limits"), [(_GERMAN, (5000, 2000)), (_AMERICAN, (4535.9237, 2267.96185))])
def test_each_price_has_the_order_size_of_its_own_table(tables, limits, gap, cells):
    found = lines(beside(tables, gap))
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert len(found) == 8
    own = brackets(found)
    first, second = limits
    assert [tuple(None if end is None else float(end) for end in own[cell]) for cell in cells] == [
        (None, first), (first, None), (None, second), (second, None),
    ]  # fmt: skip


def test_groups_over_one_column_of_order_sizes_share_it():
    rows = [["EUR/t"], [None, "GC1", None, "GD2"], ["g/m²", 230, 300, 300, 400], ["< 5 t", 1250, 1240, 850, 840]]
    assert set(brackets(lines(rows)).values()) == {(None, 5000)}


def test_weights_parted_by_an_empty_column_are_one_table():
    rows = [["EUR/t"], ["g/m²", 230, 250, None, 300, 350], ["GC1", 1250, 1240, None, 1230, 1220]]
    assert {cell: line.offer.grammage_gsm for cell, line in lines(rows).items()} == {
        "B3": 230, "C3": 250, "E3": 300, "F3": 350,
    }  # fmt: skip


def test_bare_figures_under_the_word_for_an_order_are_asked():
    found = lines([["GC1 EUR/t", None, None, None, "GD2 EUR/t"], ["Menge", 230, 300, None, "Menge", 300, 400],
                   ["< 5 t", 1250, 1240, None, "< 2 t", 850, 840]])  # fmt: skip
    assert list(found) == ["B3", "C3", "F3", "G3"]
    assert all("caliper-unknown" in codes(line) for line in found.values())


@pytest.mark.parametrize(("title", "state"), [("GC1 EUR/t", "accepted"), ("Abschlag 1 EUR/t", "question")])
def test_the_figure_of_a_board_s_name_is_no_amount(title, state):
    found = lines([[title], ["Sorte", "g/m²", "Preis"], ["GC1", 230, 1250]])
    assert str(found["C3"].state) == state


@pytest.mark.parametrize(
    ("measures", "place"),
    [
        ("grammage (caliper)", "Destination"),
        ("Gewicht g/m² (Dicke µm)", "Ziel"),
        ("grammage (épaisseur)", "Destination"),
        ("gramaje (espesor)", "Destino"),
        ("ytvikt (tjocklek)", "Ort"),
    ],
)
@pytest.mark.parametrize("tables", [1, 2])
def test_grades_that_name_the_measures_of_the_heads_below_them(measures, place, tables):
    rows = [
        ["EUR/t, CPT named destination"],
        [],
        [f"GC2, {measures}", None, None, None, f"GZ, {measures}"],
        [place, "220 g/m² (360 µm)", "245 g/m² (405 µm)", None, place, "240 g/m² (295 µm)", "280 g/m² (350 µm)"],
        ["Kolkhamn", 1142, 1136, None, "Kolkhamn", 1388, 1381],
        ["Tarnberg", 1148, 1142, None, "Tarnberg", 1394, 1387],
    ]
    found = lines([row[: 7 if tables == 2 else 3] for row in rows])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    told = {cell: (line.offer.grade, line.offer.grammage_gsm, line.offer.caliper_um) for cell, line in found.items()}
    assert [told[cell] for cell in ("B5", "C6")] == [("FBB", 220, 360), ("FBB", 245, 405)]
    assert len(told) == 4 * tables
    if tables == 2:
        assert told["G6"] == ("SBS", 280, 350)


@pytest.mark.parametrize("title", ["Caliper (µm)", "Dicke (µm)"])
def test_figures_under_the_name_of_the_other_measure_are_no_prices(title):
    rows = [[title], ["Grade", "220 g/m²", "245 g/m²"], ["GC2", 360, 405], ["GC1", 350, 395]]
    assert not any(str(line.state) == "accepted" for line in lines(rows).values())
