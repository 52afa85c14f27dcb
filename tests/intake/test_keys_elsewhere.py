"""What heads and names mean may stand on another sheet; and old prices under their times are no offers."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_CARD = [["Stock", "Thk", "Bs.Wt", "LTL", "TL"], ["S1", 14, 60, 1268, 1224], ["G2", 20, 79, 903, 868]]
_KEY = [
    ["S1", "solid bleached sulfate, coated one side"], ["G2", "clay coated newsback"], [],
    ["Thk", "thickness in points"], ["Bs.Wt", "pounds per 1,000 sq ft"],
    ["LTL", "orders under 40,000 lb"], ["TL", "orders of 40,000 lb and up"], ["All prices US dollars per short ton."],
]  # fmt: skip


def card(*key):
    reading = read_workbook(book(grid(_CARD, "Card"), grid(list(key), "Key")), Answers())
    return {line.offer.source.cell: line for line in reading.lines}


def test_a_key_sheet_explains_names_units_and_order_sizes():
    found = card(*_KEY)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    offers = [found[cell].offer for cell in ("D2", "E2", "D3")]
    assert [offer.grade for offer in offers] == ["SBS", "SBS", "CRB"]
    assert [round(float(offer.caliper_um), 1) for offer in offers] == [355.6, 355.6, 508.0]
    assert [(offer.from_kg is None, offer.below_kg is None) for offer in offers] == [
        (True, False), (False, True), (True, False),
    ]  # fmt: skip


def test_without_the_key_the_order_sizes_are_asked():
    found = card(*(row for row in _KEY if row and row[0] not in ("LTL", "TL")))
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize("heads", [("Q1/26 (alt)", "Q2/26 (alt)", "neu"), ("Q1 2026 (old)", "Q2 2026 (old)", "new")])
def test_figures_marked_as_old_under_their_times_are_not_offered(heads):
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", *heads],
        ["GC2", 250, 420, 1080, 1098, 1121],
        ["GD2", 320, 410, 768, 775, 791],
    ]
    assert list(lines(rows)) == ["F3", "F4"]


@pytest.mark.parametrize(
    "title", ["Grid of 2025 - superseded, do not use", "Tabelle 2025, überholt", "Tableau 2025 (caduc)"]
)
def test_a_superseded_paper_of_any_name_offers_nothing(title):
    assert not lines([[title], ["Board", "pt", "lb/MSF", "USD/MSF"], ["CRB", 16, 63, 29.4]])
