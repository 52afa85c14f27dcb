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


@pytest.mark.parametrize(
    ("note", "titles"),
    [
        ("All prices in SEK except table B, in DKK.", _A_AND_B), ("Prices in SEK, except table B in DKK", _A_AND_B),
        ("All prices in SEK except in table B, which is in DKK.", _A_AND_B),
        ("Prices in SEK, table B excepted, which is in DKK.", _A_AND_B), ("Prices in SEK, table B in DKK.", _A_AND_B),
        ("Alle Preise in SEK außer Tabelle B, in DKK", ("Tabelle A", "Tabelle B")),
        ("Alle Preise in SEK, ausgenommen Tabelle B (DKK)", ("Tabelle A", "Tabelle B")),
        ("Tous les prix en SEK sauf tableau B, en DKK", ("Tableau A", "Tableau B")),
        ("Todos los precios en SEK excepto la tabla B, en DKK", ("Tabla A", "Tabla B")),
        ("Alla priser i SEK utom tabell B, som är i DKK", ("Tabell A", "Tabell B")),
        ("Prices A in SEK, B in DKK.", _A_AND_B), ("A: SEK, B: DKK", _A_AND_B),
        ("The upper table is in SEK, the lower table in DKK", _PLAIN),
        ("Obere Tabelle in SEK, untere Tabelle in DKK", _PLAIN), ("Övre tabellen i SEK, nedre tabellen i DKK", _PLAIN),
    ],
)  # fmt: skip
def test_a_table_excepted_has_its_own_money_and_the_others_that_of_all(note, titles):
    assert _told(note, titles=titles) == _EACH


@pytest.mark.parametrize("note", ["Prices in SEK, except table B.", "Except table B, all prices are in SEK."])
def test_a_table_that_is_only_excepted_is_asked(note):
    assert _told(note) == [("SEK", Basis.TONNE), (None, Basis.TONNE)]


@pytest.mark.parametrize(
    "note",
    [
        "In table A kr means SEK; table B will change to DKK on January 1, 2027.",
        "In Tabelle A ist kr SEK, in Tabelle B waren die Preise bis 2025 in DKK.",
        "Dans le tableau A, kr = SEK ; le tableau B était en DKK jusqu'en 2025.",
        "En la tabla A, kr = SEK; la tabla B era en DKK hasta 2025.",
        "I tabell A är kr SEK, tabell B var i DKK till 2025.",
        "Table A in SEK, see table B for DKK prices",
    ],
)  # fmt: skip
def test_what_a_table_was_or_will_be_in_and_where_it_only_points_is_not_what_it_is_in(note):
    assert _told(note) == [("SEK", Basis.TONNE), (None, Basis.TONNE)]


def test_a_sentence_that_points_to_a_table_says_nothing_of_the_other_s_money():
    assert _told("See table B for DKK prices.") == [(None, Basis.TONNE)] * 2
    assert _told("Table B prices were in DKK until 2025, now in SEK.")[1] == ("SEK", Basis.TONNE)


@pytest.mark.parametrize(
    "note",
    [
        "Section 2 of our terms: prices are in SEK.", "Abschnitt 2 unserer Bedingungen: Preise in SEK.",
        "Section 2 de nos conditions : prix en SEK.", "Sección 2 de nuestras condiciones: precios en SEK.",
        "Avsnitt 2 i våra villkor: priser i SEK.", "Prices in SEK. Table 2 is for sheets only.",
        "Prices in SEK; table 2 was in DKK last year.", "Prices of section 1 and section 2 are in SEK.",
    ],
)  # fmt: skip
def test_what_is_said_of_no_table_by_itself_holds_for_all(note):
    assert _told(note, titles=("Section 1", "Section 2")) == [("SEK", Basis.TONNE)] * 2


def test_a_ton_is_told_of_a_table_in_any_order_of_words():
    assert _told("Ton in table A is 2,000 lb.", unit="USD/ton") == [("USD", Basis.SHORT_TON), ("USD", None)]
    assert _told("Prices per short ton, table B per tonne.", unit="Price USD") == [
        ("USD", Basis.SHORT_TON), ("USD", Basis.TONNE),
    ]  # fmt: skip
