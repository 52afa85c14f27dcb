"""Towns with the letters of their states over prices are where board goes, and no firms by a legal form."""

import pytest

from tests.intake.sheets import lines

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_places_with_the_letters_of_their_state_are_no_firms():
    rows = [["Larch Board Ltd"], ["USD/ST delivered"], [*HEAD, "Delivered to"]]
    found = lines([*rows, [None, None, None, "Reno NV", "Tulsa OK"], [*BOARD, 1312, 1288]])
    assert [line.offer.vendor for line in found.values()] == ["Larch Board Ltd"] * 2
    assert list(found) == ["D5", "E5"]


_BOARDS = [["CRB C1S", "16 pt", "315 g/m²"], ["SBS C1S", "18 pt", "365 g/m²"]]


def vendors(*heads, title="Tarnmoor Board Sales: CAD per metric tonne, delivered"):
    """Who quotes each price; 'asked' where that it is one is not certain."""
    prices = [
        [1395 - 33 * place for place, _ in enumerate(heads)],
        [1874 - 31 * place for place, _ in enumerate(heads)],
    ]
    rows = [[*board, *own] for board, own in zip(_BOARDS, prices, strict=True)]
    found = lines([[title], [], ["Board", "Caliper", "Basis weight", *heads], *rows])
    return [line.offer.vendor if str(line.state) == "accepted" else "asked" for line in found.values()]


@pytest.mark.parametrize(
    "heads",
    [
        ("Vancouver BC", "Calgary AB", "Mississauga ON"),
        ("Red Deer AB", "Regina SK"),
        ("Red Deer, AB", "Regina, SK"),
        ("Red Deer (AB)", "Regina (SK)"),
        ("Calgary AB", "Edmonton AB"),
        ("Elko Springs NV", "Lornemoor ID"),
        ("Lornehaven SA", "Ballarat VIC"),
    ],
)
def test_letters_of_one_country_s_states_beside_each_other_name_no_firm(heads):
    assert set(vendors(*heads)) == {"Tarnmoor Board Sales"}


def test_cantons_are_states_too():
    title = "Kartonhandel Wehrli: Preise franko, CHF/t"
    assert set(vendors("Aarau AG", "Luzern LU", "Basel BS", title=title)) == {"Kartonhandel Wehrli"}


@pytest.mark.parametrize(
    "heads", [("Fiskmo AB", "Orrvik AB"), ("Fiskmo AB", "Karton Aarbach AG"), ("Karton Aarbach AG", "Papier Wehrli AG")]
)
def test_firms_stay_firms(heads):
    assert set(vendors(*heads)) == set(heads)


def test_words_of_the_trade_before_such_letters_are_no_towns():
    found = lines(
        [
            ["Item ID", "Grade", "Caliper", "Basis weight", "Price CA", "Price DE"],
            ["A-1", "SBS C1S", "18 pt", "365 g/m²", "1874 USD/t", "1822 EUR/t"],
        ]
    )
    assert [line.offer.currency for line in found.values()] == ["USD", "EUR"]
