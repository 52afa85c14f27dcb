"""Boards on two lines, the second of which has figures alone, under a key of their units below the header."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.firms.company import company_name


def _read(key, first, second):
    return lines(
        [
            ["Kartonhaus Tannbrück GmbH"],
            [],
            ["Art.-Nr.", "Bezeichnung", "Bg./Pal.", "EUR/1.000 Bg."],
            [None, key],
            ["4711-20", "GC1 Chromokarton", 3000, 252],
            [None, first],
            ["4720-40", "Chromoduplex GD2", 2400, 187],
            [None, second],
        ]
    )


def _told(found):
    return [(line.offer.grammage_gsm, line.offer.caliper_um, line.offer.sheet_mm) for line in found.values()]


@pytest.mark.parametrize(
    ("key", "first", "second"),
    [
        ("g/m² / µm / Format in cm", "250 / 400 / 72 x 102", "300 / 390 / 70 x 100"),
        ("gsm | mic | sheet mm", "250 | 400 | 720 x 1020", "300 | 390 | 700 x 1000"),
        ("g/m² – µm – format cm", "250 – 400 – 72 x 102", "300 – 390 – 70 x 100"),
        ("g/m² · micras · cm", "250 · 400 · 72 x 102", "300 · 390 · 70 x 100"),
        ("g/m² / µm / ark i mm", "250/400/720x1020", "300/390/700x1000"),
    ],
)
def test_each_figure_has_the_unit_in_its_place(key, first, second):
    found = _read(key, first, second)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert _told(found) == [(250, 400, (720, 1020)), (300, 390, (700, 1000))]


@pytest.mark.parametrize("key", ["g/m² / µm", "Maße", "Art / Typ / Form"])
def test_figures_without_a_unit_each_are_asked_about(key):
    found = _read(key, "250 / 400 / 72 x 102", "300 / 390 / 70 x 100")
    assert {str(line.state) for line in found.values()} == {"question"}
    assert {told[:2] for told in _told(found)} == {(None, None)}


@pytest.mark.parametrize(
    "title", ["Lagerprogramm Karton, Format", "Sortiment Karton", "Product Range Paperboard", "Lagersortiment Kartong"]
)
def test_what_a_list_is_called_is_no_firm(title):
    assert company_name(title) is None


def test_their_units_tell_which_ton_the_prices_are_per():
    rows = [["Sorte", "Ausführung", "€/t"], [None, "g/m² / µm"], ["GC1", "250 / 400", 1200], ["GD2", "350 / 430", 900]]
    assert [(str(line.state), str(line.offer.basis)) for line in lines(rows).values()] == [("accepted", "tonne")] * 2


def test_one_board_is_enough_where_no_other_stands_below_the_key():
    rows = [["Sorte", "Ausführung", "€/t"], [None, "g/m² / µm / Format in cm"], ["GC1", "250 / 400 / 72 x 102", 1200]]
    assert _told(lines(rows)) == [(250, 400, (720, 1020))]
