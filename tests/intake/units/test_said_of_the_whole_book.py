"""What a sheet says of the whole workbook holds for the sheets beside it."""

import pytest

from tests.intake.sheets import book, grid
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_BOARDS = (["GC2", 250, 405, 1690], ["GC2", 295, 495, 1670])


def _found(said, title="Prices by the short ton (2,000 lb)", head="$ / ST"):
    heads = ["Grade", "g/m²", "µm"]
    first = grid([[said], [*heads, "$ / tonne"], *_BOARDS], "Rolls")
    second = grid([[title], [*heads, head], *_BOARDS], "Sheets")
    found = read_workbook(book(first, second), Answers()).lines
    return {(line.offer.currency, str(line.state)) for line in found if line.offer.source.sheet == "Sheets"}


@pytest.mark.parametrize(
    "said",
    [
        "All prices in this workbook are in Canadian dollars (CAD).",
        "Prices on all tabs are in Canadian dollars.",
        "Alle Preise dieser Arbeitsmappe in kanadischen Dollar (CAD)",
        "Tous les prix de ce classeur sont en dollars canadiens (CAD), FAB usine.",
        "Todos los precios de este libro en dólares canadienses (CAD)",
        "Alla priser i denna arbetsbok i kanadensiska dollar (CAD)",
    ],
)
def test_its_dollar_is_that_of_the_other_sheets(said):
    assert _found(said) == {("CAD", "accepted")}


def test_what_is_said_of_the_sheets_own_prices_is_not():
    assert {state for _, state in _found("Prices in Canadian dollars (CAD)")} == {"question"}


def test_a_sheet_that_names_its_own_money_keeps_it():
    assert {
        money for money, _ in _found("All prices in this workbook are in CAD.", "All prices in US dollars", "USD / ST")
    } == {"USD"}
