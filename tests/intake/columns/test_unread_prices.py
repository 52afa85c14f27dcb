"""A table of boards whose prices stand under no head that is understood is asked about, and never passed over."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

BOARDS = [["GC1", 250, 405, 1290], ["GC2", 280, 450, 1215], ["GD2", 350, 470, 845]]
EUROS = '#,##0.00 "€"'


def asked(rows, **more):
    """The cells that are asked about; nothing may be accepted."""
    found = lines(rows, **more)
    assert {str(line.state) for line in found.values()} <= {"question"}
    return sorted(found)


@pytest.mark.parametrize(
    "heads",
    [["Grade", "g/m²", "µm"], ["Sorte", "g/m²", "µm"], ["Qualité", "g/m²", "µm"], ["Calidad", "g/m²", "µm"],
     ["Kvalitet", "g/m²", "µm"]],
)  # fmt: skip
def test_figures_under_no_head_are_asked_about(heads):
    assert asked([heads, *BOARDS]) == ["D2", "D3", "D4"]


def test_numbers_of_rows_are_not():
    assert not asked([["Grade", "g/m²", "µm"], *([*board[:3], place] for place, board in enumerate(BOARDS, 1))])


@pytest.mark.parametrize("head", ["Ware, €", "Width, €", "LZ €"])
def test_a_currency_at_figures_is_heard_whatever_their_head_says(head):
    assert asked([["Grade", "g/m²", "µm", head], *BOARDS]) == ["D2", "D3", "D4"]


def test_a_currency_in_the_number_format_is_too():
    formats = {(row, 3): EUROS for row in (1, 2, 3)}
    assert asked([["Grade", "g/m²", "µm", "Width"], *BOARDS], formats=formats) == ["D2", "D3", "D4"]
    assert not asked([["Grade", "g/m²", "µm", "Width"], *BOARDS])


@pytest.mark.parametrize("head", ["Tons per shipment", "Lead time in tons"])
def test_no_board_takes_hundreds_of_days(head):
    assert asked([["Grade", "pt", "lb/MSF", head], ["SBS", 18, 76, 1190], ["CRB", 20, 79, 860]]) == ["D2", "D3"]


@pytest.mark.parametrize("days", [(14, 21), (28, 42), (1.5, 2.5)])
def test_times_to_wait_are_no_prices(days):
    rows = [["SBS", 18, 76, days[0]], ["CRB", 20, 79, days[1]]]
    assert not asked([["Grade", "pt", "lb/MSF", "Lead time"], *rows])


@pytest.mark.parametrize(("title", "form"), [("EUR/t, frei Haus", "Rolle"), ("SEK per ton (1000 kg)", "Ark")])
def test_a_form_of_board_over_figures_below_a_price_unit_may_head_prices(title, form):
    head = ["Sorte", "g/m²", "µm", form, form]
    rows = [[*board, board[3] - 35] for board in BOARDS]
    assert asked([[title], head, *rows]) == ["D3", "D4", "D5"]


def test_a_form_over_how_it_is_packed_heads_none():
    head = ["Sorte", "g/m²", "µm", "Rolle", "Rolle"]
    assert not asked([["Verpackung"], head, *([*board[:3], 1200, 40] for board in BOARDS)])


@pytest.mark.parametrize(
    "head",
    ["Stock (kg)", "Yield m²/t", "Sheets per pallet", "Weight per skid lb", "Lagerbestand kg", "Feuilles par palette",
     "Rendimiento m²/t", "Ark per pall", "Core, mm", "Brightness %", "Bonus %", "Price index"],
)  # fmt: skip
def test_what_a_head_explains_is_left_to_it(head):
    assert not asked([["Grade", "g/m²", "µm", head], *BOARDS])


def test_prices_that_are_over_beside_a_list_that_is_not():
    head = ["Grade", "g/m²", "µm", "Price until 31 August (superseded)", "Our list"]
    assert asked([["EUR/t"], head, *([*board, board[3] + 40] for board in BOARDS)]) == ["E3", "E4", "E5"]


def test_figures_under_no_head_beside_superseded_ones_are_asked_about():
    head = ["Grade", "g/m²", "µm", "Oct 2025 (superseded)"]
    assert asked([["EUR/t"], head, *([*board, board[3] + 40] for board in BOARDS)]) == ["E3", "E4", "E5"]


def test_a_grid_of_bare_figures_in_a_sheet_of_prices_is_asked_about():
    rows = [["¢/lb, delivered"], [], ["pt"], [16, 59.5, 45.5], [18, 59.25, 45.3], [20, 59, 45.1]]
    assert len(asked(rows)) == 3
    assert not asked([["Opening hours"], [], [16, 59.5, 45.5], [18, 59.25, 45.3]])


def test_boards_under_no_head_beside_a_sheet_of_offers_are_asked_about():
    offers = grid([["EUR/t"], ["Grade", "g/m²", "µm", "Price"], *BOARDS], "List")
    other = grid([["SBS one side coated", 1290, 1280], ["Folding boxboard GC2", 1180, 1165]], "More")
    calls = grid([["Ring before", 12, 30], ["Ring after", 14, 45]], "Office")
    found = read_workbook(book(offers, other, calls), Answers({})).lines
    assert {(line.offer.source.sheet, str(line.state)) for line in found} == {
        ("List", "accepted"),
        ("More", "question"),
    }
