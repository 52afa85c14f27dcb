"""Prices by roll width across: offers of their own, told apart by the width; and widths that are measures."""

import pytest

from tests.intake.sheets import codes, lines, prices
from tracker.intake.values.figures.web_widths import is_web_width

US = ["Grade", "Caliper"], ["SBS C1S", "18 pt"], "Prices in USD/ST", "short_ton"
EU = {
    "de": (["Sorte", "Stärke"], ["GC1", "400 µm"], "Preise in EUR/t", "tonne"),
    "fr": (["Sorte", "Épaisseur"], ["GC1", "400 µm"], "Prix en EUR/t", "tonne"),
    "es": (["Calidad", "Espesor"], ["GC1", "400 µm"], "Precios en EUR/t", "tonne"),
    "sv": (["Kvalitet", "Tjocklek"], ["GC1", "400 µm"], "Priser i EUR per 1000 kg", "tonne"),
}


def table(parts, *heads):
    """Two prices under these rows of heads, their unit, and the row they stand in."""
    head, board, title, unit = parts
    above = [[None, None, *row] for row in heads[:-1]]
    return [[title], *above, [*head, *heads[-1]], [*board, 1140, 1160]], unit, str(len(above) + 3)


@pytest.mark.parametrize(
    ("parts", "heads"),
    [
        (US, [["40in", "42in"]]),
        (US, [['40"', '42"']]),
        (US, [["Width 40 in", "Width 42 in"]]),
        (US, [["40 in. rolls", "42 in. rolls"]]),
        (US, [['40 1/2"', "42 inches wide"]]),
        (US, [["Price 40in", "Price 42in"]]),
        (US, [["Roll width", None], ["40in", "42in"]]),
        (US, [["Roll width (in)", None], [40, 42]]),
        (US, [["up to 42 in", "over 42 in"]]),
        (US, [["Trim 84 in", "Trim 96 in"]]),
        (US, [["Sheet width 40 in", "Sheet width 42 in"]]),
        (US, [["3 in core", "6 in core"]]),
        (EU["de"], [["1020 mm", "1200 mm"]]),
        (EU["de"], [["Rollenbreite 700 mm", "920 mm"]]),
        (EU["de"], [["Rollenbreite", None], ["700 mm", "920 mm"]]),
        (EU["de"], [["Breite 1.020 mm", "Breite 1.200 mm"]]),
        (EU["fr"], [["laize 700", "laize 920"]]),
        (EU["fr"], [["Laize (mm)", None], [700, 920]]),
        (EU["es"], [["ancho 700 mm", "ancho 920 mm"]]),
        (EU["es"], [["Ancho de bobina", None], ["700 mm", "920 mm"]]),
        (EU["sv"], [["bredd 700 mm", "bredd 920 mm"]]),
        (EU["sv"], [["Rullbredd, mm", None], [700, 920]]),
    ],
)
def test_prices_by_width_are_offers_that_do_not_disagree(parts, heads):
    rows, unit, row = table(parts, *heads)
    found = lines(rows)
    assert prices(found) == {f"C{row}": ("accepted", "1140", unit), f"D{row}": ("accepted", "1160", unit)}
    assert all("prices-disagree" not in codes(line) and not line.offer.source.also for line in found.values())
    assert {str(line.offer.caliper_um) for line in found.values()} <= {"457.2", "457.20", "400"}


@pytest.mark.parametrize(
    ("text", "is_one"),
    [
        ("Width 1", False),
        ("Width 1 (mm)", False),
        ("5M", False),
        ("400 mm", True),
        ("0.4 mm", False),
        ("1.020 mm", False),
        ("Breite 1.020 mm", True),
        ("Rolle 40", False),
        ("18 pt", False),
        ("28 x 40 in", False),
        ("40 in stock", False),
        ("OD 40 in", True),
        ("ID 100", False),
        ("mandrin 76 mm", True),
        ("hylsa 76 mm", True),
        ("ancho de bobina 700", True),
    ],
)
def test_what_tells_a_width_and_no_more(text, is_one):
    assert is_web_width(text) is is_one


def test_rolls_by_width_stand_beside_sheets_by_size():
    rows = [["Prices in USD/ST"], ["Grade", "Caliper", "40in rolls", "28x40 sheets"], ["SBS C1S", "18 pt", 1140, 1220]]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.sheet_mm is None for line in found.values()] == [True, False]


@pytest.mark.parametrize("head", ["Roll width", "Roll width (in)", "Laize", "Rollenbreite", "Ancho", "Rullbredd"])
def test_a_width_over_widths_is_a_measure(head):
    rows = [["Prices in USD/ST"], ["Grade", "Caliper", head, "Price"], ["SBS C1S", "18 pt", 40, 1140]]
    assert prices(lines(rows)) == {"D3": ("accepted", "1140", "short_ton")}


@pytest.mark.parametrize(
    ("heads", "calipers"),
    [
        (["18 pt", "20 pt"], [457.2, 508]),
        (["400 µm", "450 µm"], [400, 450]),
        ([".018 in", ".020 in"], [457.2, 508]),
        (["0.4 mm", "0.45 mm"], [400, 450]),
    ],
)
def test_calipers_across_stay_calipers(heads, calipers):
    found = lines([["Prices in USD/ST"], ["Grade", *heads], ["SBS C1S", 1140, 1160], ["CRB", 860, 880]])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [float(line.offer.caliper_um) for line in found.values()] == [*calipers, *calipers]


def test_widths_below_a_word_for_caliper_are_no_calipers():
    rows = [["Prices in USD/ST"], ["", "Caliper", ""], ["Grade", "40in", "42in"], ["SBS C1S", 1140, 1160]]
    for line in lines(rows).values():
        assert (str(line.state), line.offer.caliper_um) == ("question", None)


def test_a_thickness_that_may_be_a_width_is_asked_about():
    rows = [["Preise in EUR/t"], ["Sorte", "Stärke", "1.020 mm", "1.200 mm"], ["GC1", "400 µm", 1140, 1160]]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


@pytest.mark.parametrize(
    "rows",
    [
        [["Tons in stock by roll width"], ["Grade", "Caliper", "40in", "42in"], ["SBS C1S", "18 pt", 12, 8]],
        [["Stock list"], ["Grade", "Caliper", "40in", "42in"], ["SBS C1S", "18 pt", 1140, 1160]],
        [
            ["Prices in USD/ST"],
            [None, None, "Stock (ST)"],
            ["Grade", "Caliper", "40in", "42in"],
            ["SBS C1S", "18 pt", 1140, 1160],
            ["CRB", "20 pt", 860, 880],
        ],
        [
            ["Prices in USD/ST"],
            ["Grade", "Caliper", "Base", "40in", "42in"],
            ["SBS C1S", "18 pt", 1140, 1150, 1160],
            ["CRB", "20 pt", 860, 870, 880],
        ],
    ],
)
def test_figures_by_width_that_nothing_calls_prices_are_not_accepted(rows):
    assert not [cell for cell, line in lines(rows).items() if cell[0] in "DE" and str(line.state) == "accepted"]


def test_stock_by_width_beside_a_price_is_no_price():
    rows = [["Stock list"], ["Grade", "Caliper", "Price USD/ST", "40in", "42in"], ["SBS C1S", "18 pt", 1140, 12, 8]]
    assert prices(lines(rows)) == {"C3": ("accepted", "1140", "short_ton")}
