"""What a note says of each table by its letter, number, place or name: each table has its own money and units."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis

_A_AND_B = ("Table A – Sverige", "Table B – Danmark")
_PLAIN = ("Reels", "Cut to size")


def _told(*notes, titles=_A_AND_B, unit="kr/1000 kg", above=()):
    """Currency and basis of the first and of the second table's lines."""
    head, rows = ["Board", "g/m²", "µm", unit], [["GC1", 250, 405], ["GC2", 270, 445]]
    figures = zip(titles, ((1435, 1372), (1210, 1190)), strict=True)
    priced = [(title, [[*row, price] for row, price in zip(rows, prices, strict=True)]) for title, prices in figures]
    tables = [line for title, body in priced for line in ([], [title], head, *body)]
    found = [
        line.offer for line in lines([*([note] for note in above), *tables, [], *([note] for note in notes)]).values()
    ]
    assert found[0].currency == found[1].currency
    return [(offer.currency, offer.basis) for offer in (found[0], found[2])]


_EACH = [("SEK", Basis.TONNE), ("DKK", Basis.TONNE)]


@pytest.mark.parametrize(
    ("note", "titles"),
    [
        ("In table A kr is Swedish kronor (SEK), in table B Danish kroner (DKK).", _A_AND_B),
        ("kr = SEK in table A, DKK in table B", _A_AND_B), ("Table A: kr = SEK; table B: kr = DKK", _A_AND_B),
        ("Sverige: kr = SEK, Danmark: kr = DKK", _A_AND_B), ("kr: SEK (Sverige), DKK (Danmark)", _A_AND_B),
        ("In the first table kr = SEK, in the second table kr = DKK", _A_AND_B),
        ("In table 1 kr = SEK, in table 2 kr = DKK", _PLAIN), ("In table A kr = SEK, in table B kr = DKK", _PLAIN),
        ("Tabelle 1: kr = SEK. Tabelle 2: kr = DKK.", ("Tabelle 1", "Tabelle 2")),
        ("In Tafel A ist kr SEK, in Tafel B DKK", ("Tafel A", "Tafel B")),
        ("Dans le tableau 1, kr = SEK ; dans le tableau 2, kr = DKK", ("Tableau 1", "Tableau 2")),
        ("En la tabla 1, kr = SEK, y en la tabla 2, kr = DKK", ("Tabla 1", "Tabla 2")),
        ("I tabell A är kr svenska kronor (SEK), i tabell B danska kronor (DKK).", ("Tabell A", "Tabell B")),
        ("I första tabellen är kr SEK, i andra tabellen DKK", _PLAIN),
    ],
)  # fmt: skip
def test_each_table_has_the_money_that_is_said_of_it(note, titles):
    assert _told(note, titles=titles) == _EACH
    assert _told(above=[note], titles=titles) == _EACH


def test_dollars_and_tons_are_told_apart_so_too():
    dollars = _told("In table A $ is US dollars, in table B Canadian dollars", unit="$/1000 kg")
    assert [currency for currency, _ in dollars] == ["USD", "CAD"]
    tons = _told("In table A ton = 2,000 lb, in table B ton = 1,000 kg", unit="USD/ton")
    assert [basis for _, basis in tons] == [Basis.SHORT_TON, Basis.TONNE]
    units = _told("Prices in table A are in USD per short ton, in table B in EUR per tonne", unit="Price")
    assert units == [("USD", Basis.SHORT_TON), ("EUR", Basis.TONNE)]


@pytest.mark.parametrize("note", ["In table A kr = SEK", "kr = SEK in table A"])
def test_what_is_said_of_one_table_leaves_the_other_open(note):
    assert _told(note) == [("SEK", Basis.TONNE), (None, Basis.TONNE)]


def test_a_ton_of_one_table_is_not_that_of_another():
    assert _told("In table A ton = 2,000 lb", unit="USD/ton") == [("USD", Basis.SHORT_TON), ("USD", None)]


@pytest.mark.parametrize(
    "note", ["In table C kr = SEK, in table D kr = DKK", "In table 1 kr = SEK, in table 2 kr = DKK"]
)
def test_tables_that_none_is_called_leave_both_open(note):
    assert [currency for currency, _ in _told(note)] == [None, None]


@pytest.mark.parametrize("note", ["kr = SEK", "Tables A and B: kr = SEK", "See table B for reels; all kr = SEK"])
def test_what_is_said_of_all_tables_holds_for_both(note):
    assert [currency for currency, _ in _told(note)] == ["SEK", "SEK"]
