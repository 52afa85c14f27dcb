"""Lists and rows called old, void or superseded offer nothing beside those that are in force."""

from datetime import date

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


def test_an_old_list_beside_the_current_one_makes_only_itself_old():
    rows = [
        ["Cinderford Carton Board Ltd"],
        [],
        ["Current list (June 2026)", None, None, None, None, "Superseded list (January 2026)"],
        [*HEAD, None, *HEAD],
        ["GC1", 250, 400, 1240, None, "GC1", 250, 400, 1275],
        ["GD2", 300, 395, 880, None, "GD2", 300, 395, 905],
    ]
    assert states(rows) == {"D5": ("accepted", "1240"), "D6": ("accepted", "880")}


def test_a_row_that_its_status_calls_superseded_is_no_offer():
    rows = [[*HEAD, "Status"], ["GC1", 250, 400, 1240, "current"], ["GC1", 250, 400, 1190, "superseded 1 Oct 2026"]]
    assert states(rows) == {"D2": ("accepted", "1240")}


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_a_list_called_old_above_a_new_one_offers_nothing():
    board = ["GC1", 240, 405]
    rows = [
        ["Preisliste alt (bis 31.10.2026)"],
        ["Sorte", "g/m²", "µm", "€/t"],
        [*board, 1210],
        [],
        ["Preisliste neu (ab 01.11.2026)"],
        ["Sorte", "g/m²", "µm", "€/t"],
        [*board, 1290],
    ]
    assert prices(lines(rows)) == {"D7": ("accepted", "1290", "tonne")}


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("OLD (thru 12/31/26)", "NEW (eff. 1/1/27)"),
        ("alt (bis 31.12.2026)", "neu (ab 1.1.2027)"),
        ("ancien (jusqu'au 31/12/2026)", "nouveau (à partir du 1/1/2027)"),
    ],
)
def test_an_old_price_with_its_last_day_is_no_offer_beside_the_new(old, new):
    assert list(
        lines([["USD per short ton"], [*EXPORT_HEAD, old, new], [*BOARD, 1150, 1190], ["CRB", 18, 70, 830, 850]])
    ) == [
        "E3",
        "E4",
    ]


@pytest.mark.parametrize(
    "title", ["Grid of 2025 - superseded, do not use", "Tabelle 2025, überholt", "Tableau 2025 (caduc)"]
)
def test_a_superseded_paper_of_any_name_offers_nothing(title):
    assert not lines([[title], ["Board", "pt", "lb/MSF", "USD/MSF"], ["CRB", 16, 63, 29.4]])


def _accepted(found) -> set[str]:
    return {cell for cell, line in found.items() if str(line.state) == "accepted"}


def test_a_list_beside_the_one_that_superseded_it_is_not_offered():
    head = ["Grade", "pt", "List 13 (superseded)", "List 14"]
    found = lines([["US dollars per short ton"], head, ["SBS C1S", 14, 1140, 1165], ["URB", 22, 662, 680]])
    assert _accepted(found) == {"D3", "D4"}


TONNE_HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]
NEW = [["GD2", 300, 390, 822], ["GC2", 270, 435, 1083], ["GC2", 300, 490, 1071]]


def two_lists(first, second):
    return lines([["Ardelune Board Mill"], [], [first], TONNE_HEAD, *OLD, [], [second], TONNE_HEAD, *NEW])


@pytest.mark.parametrize(
    ("void", "valid"),
    [
        ("LIST 11 - VOID, replaced by list 12 (below)", "LIST 12 - valid until 28 February 2027"),
        ("Preisliste 11 - UNGÜLTIG, ersetzt durch Preisliste 12 (unten)", "Preisliste 12"),
        ("Tarif 11 - ANNULÉ, remplacé par le tarif 12 (ci-dessous)", "Tarif 12 - en vigueur"),
        (
            "LISTA 11 - ANULADA, sustituida por la lista 12 (más abajo)",
            "LISTA 12 - vigente hasta el 28 de mayo de 2027",
        ),
        ("Prislista 11 - UPPHÄVD, ersatt av prislista 12 (nedan)", "Prislista 12"),
    ],
)
def test_a_void_list_above_a_valid_one(void, valid):
    assert [line.offer.price for line in two_lists(void, valid).values()] == [822, 1083, 1071]


@pytest.mark.parametrize(
    ("void", "further"),
    [
        ("LIST 11 - VOID", "Part 2: sheets"),
        ("LIST 11 - VOID", "Price list 11, part 2: sheets"),
        ("SUPERSEDED price list 2025", "Price list - part 2"),
    ],
)
def test_a_void_list_that_goes_on(void, further):
    assert not two_lists(void, further)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("expired", "valid until 31 December 2026"),
        ("abgelaufen", "gültig bis 31.12.2026"),
        ("périmé", "valable jusqu'au 31/12/2026"),
        ("caducado", "vigente hasta el 31/12/2026"),
        ("utgången", "gäller t.o.m. 2026-12-31"),
    ],
)
def test_ages_in_the_row_below_the_heads(old, new):
    rows = [
        ["EUR per tonne, delivered"],
        ["Grade", "g/m²", "µm", "Price 2025", "Price 2026"],
        [None, None, None, old, new],
    ]
    found = lines([*rows, ["GC1", 240, 385, 1300, 1320], ["GC2", 300, 490, 1220, 1250]])
    assert [line.offer.price for line in found.values()] == [1320, 1250]
    assert {line.offer.valid_until for line in found.values()} == {date(2026, 12, 31)}


DOLLAR_HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def test_a_superseded_table_and_a_sheet_of_an_earlier_year_are_passed_over():
    rows = [DOLLAR_HEAD, SBS, [], ["Price list 2025, superseded"], DOLLAR_HEAD, CRB]
    assert set(lines(rows)) == {"D2"}
    for of_others in ("All previous prices are void.", "Offer withdrawn if not accepted by June 30, 2026"):
        assert set(lines([["USD/ST"], [of_others], DOLLAR_HEAD, SBS])) == {"D4"}
    assert set(lines([["Cancelled orders are charged at cost"], DOLLAR_HEAD, SBS])) == {"D3"}
    assert set(lines([["These prices expire December 15, 2026."], DOLLAR_HEAD, SBS])) == {"D3"}
    for title in ("SUPERSEDED - valid to 30 Jun", "No longer valid from 1 July 2026", "Ungültig ab 1. Juli 2026"):
        assert set(lines([DOLLAR_HEAD, SBS, [], [title], DOLLAR_HEAD, CRB])) == {"D2"}
    assert not lines([["SUPERSEDED by the list of 1 May 2026 – EUR per tonne DAP"], [], DOLLAR_HEAD, SBS])
    years = book(grid([DOLLAR_HEAD, SBS], "2026"), grid([DOLLAR_HEAD, CRB], "2025"))
    assert [line.offer.source.sheet for line in read_workbook(years, Answers()).lines] == ["2026"]


def test_a_list_called_annulled_is_superseded():
    rows = [
        ["ANNULÉ – remplacé par le tarif du 1er juillet 2026"],
        ["EUR/t"],
        ["Qualité", "g/m²", "Prix"],
        ["GC2", 230, 1185],
    ]
    assert lines(rows) == {}


def test_a_list_that_is_void_after_a_day_holds_until_it():
    rows = [["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS", 18, 77, 1228]]
    held = lines([["Quoted in US dollars per short ton. Void after October 31, 2027."], *rows])
    assert [line.offer.valid_until.isoformat() for line in held.values()] == ["2027-10-31"]
    assert lines([["VOID - price list 4"], *rows]) == {}
