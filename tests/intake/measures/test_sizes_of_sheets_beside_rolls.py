"""The size of sheets is that of the price for sheets, and not of the one for rolls beside it."""

import pytest

from tests.intake.sheets import book, grid, lines, merged
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

FORMS = [("Rulle", "Ark"), ("Rolls", "Sheets"), ("Rollen", "Bogen"), ("Bobines", "Feuilles"), ("Bobinas", "Hojas")]
SIZE = {"Ark": "Format mm", "Sheets": "Size mm", "Bogen": "Format mm", "Feuilles": "Format mm", "Hojas": "Formato mm"}
PER = {"Ark": "SEK/1000 ark", "Sheets": "USD/1000 sheets", "Bogen": "EUR/1000 Bogen",
       "Feuilles": "EUR/1000 feuilles", "Hojas": "EUR/1000 hojas"}  # fmt: skip


@pytest.mark.parametrize(("roll", "sheet"), FORMS)
def test_under_a_heading_over_the_size_and_the_price_of_sheets(roll, sheet):
    money = PER[sheet].partition("/")[0]
    rows = [
        ["Skogstorp Board"],
        ["", "", "", roll, sheet],
        ["Grade", "g/m²", "µm", f"{money}/t", SIZE[sheet], PER[sheet]],
        ["GC1", 240, 395, 1460, "720 x 1020", 279],
        ["GC2", 280, 470, 1405, "700 x 1000", 298.5],
    ]
    found = {line.offer.source.cell: line for line in read_workbook(
        book(grid(rows, merged=merged((1, 4, 1, 5)))), Answers()).lines}  # fmt: skip
    assert [found[cell].state for cell in ("D4", "F4", "D5", "F5")] == [State.ACCEPTED] * 4
    assert [found[cell].offer.sheet_mm for cell in ("D4", "F4", "F5")] == [None, (720, 1020), (700, 1000)]


@pytest.mark.parametrize(("roll", "sheet"), FORMS)
def test_in_one_row_of_heads(roll, sheet):
    money = PER[sheet].partition("/")[0]
    heads = ["Grade", "g/m²", "µm", f"{roll} {money}/t", SIZE[sheet], f"{sheet} {PER[sheet]}"]
    found = lines([["Skogstorp Board"], heads, ["GC1", 240, 395, 1460, "720 x 1020", 279]])
    assert [found[cell].offer.sheet_mm for cell in ("D3", "F3")] == [None, (720, 1020)]


def test_one_price_keeps_its_size_whatever_it_is_called():
    heads = ["Grade", "g/m²", "µm", "Sheet size mm", "Price USD/1000 sheets"]
    found = lines([["Skogstorp Board"], heads, ["GC1", 240, 395, "720 x 1020", 279]])
    assert found["E3"].offer.sheet_mm == (720, 1020)


PRICED = [
    ("Roll price", "Sheet price"), ("Price in rolls", "Price cut to size"), ("Rollenpreis", "Bogenpreis"),
    ("Prix bobine", "Prix feuille"), ("Precio bobina", "Precio hoja"), ("Rullpris", "Arkpris"),
]  # fmt: skip


@pytest.mark.parametrize(("roll", "sheet"), PRICED)
def test_under_heads_that_name_the_form_beside_the_price(roll, sheet):
    heads = ["Grade", "g/m²", "Format (mm)", f"{roll} EUR/t", f"{sheet} EUR/t"]
    found = lines([["Skogstorp Board"], heads, ["GC1", 240, "720 x 1020", 1200, 1260]])
    assert [found[cell].offer.sheet_mm for cell in ("D3", "E3")] == [None, (720, 1020)]
    assert {line.state for line in found.values()} == {State.ACCEPTED}
