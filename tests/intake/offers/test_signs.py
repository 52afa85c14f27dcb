"""A column's decimal sign by the size of its certain figures."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Caliper (pt)", "lb/MSF", "Price"]


def _read(title, *prices):
    boards = (["SBS C1S", 16, 68], ["SBS C1S", 18, 76], ["CRB C1S", 20, 79])
    rows = [[*board, price] for board, price in zip(boards, prices, strict=True)]
    return [(str(line.offer.price), str(line.state)) for line in lines([[title], HEAD, *rows]).values()]


@pytest.mark.parametrize(
    ("prices", "open_one"),
    [((1195, "1,180*", 864), "1180"), (("1.195", 1180, 864), "1195"), (("$1,195/ST", "$890/ST", "$864/ST"), "1195")],
)
def test_figures_of_a_size_settle_how_the_others_are_written(prices, open_one):
    found = _read("US$/ST", *prices)
    assert {state for _, state in found} == {"accepted"}
    assert open_one in {price for price, _ in found}


def test_a_comma_is_a_decimal_sign_where_the_size_says_so():
    assert ("1.195", "accepted") in _read("EUR/kg", "1,195", 1.18, 0.86)


@pytest.mark.parametrize("prices", [("1,195", "1,180", "1,060"), ("$1,195/ST", "$51/cwt", "$42/cwt")])
def test_no_figure_and_figures_on_another_unit_settle_nothing(prices):
    assert _read("FOB mill, US$/ST" if "/" not in prices[0] else "FOB mill", *prices)[0][1] == "question"


@pytest.mark.parametrize(
    ("note", "price"),
    [
        ("Precios con punto de millar", "1412"),
        ("Figures have a decimal comma", "1412"),
        ("Alle Preise mit Tausenderpunkt", "1412"),
        ("Prix avec virgule décimale", "1412"),
        ("Priser med decimalkomma", "1412"),
        ("Prices have a decimal point", "1.412"),
    ],
)
def test_a_note_says_how_figures_are_written(note, price):
    rows = [[HEAD[0], "g/m²", "µm", "EUR/t" if price == "1412" else "EUR/kg"], ["GC1", 300, 470, "1.412"], [], [note]]
    (line,) = lines(rows).values()
    assert (str(line.offer.price), str(line.state)) == (price, "accepted")


@pytest.mark.parametrize("note", ["Prices are firm", "Decimal point or decimal comma: see the order form"])
def test_a_figure_that_no_note_settles_is_asked_about(note):
    (line,) = lines([[HEAD[0], "g/m²", "µm", "EUR"], ["GC1", 300, 470, "1.412"], [], [note]]).values()
    assert str(line.state) == "question"


@pytest.mark.parametrize(
    ("other", "state"),
    [("748,50", "accepted"), ("1,748.50", "accepted"), ("1.748", "question")],
)
def test_the_point_of_a_price_without_cents_is_no_sign_beside_other_signs(other, state):
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 300, 470, "874.-"], ["GC2", 250, 400, other]]
    first, second = lines(rows).values()
    assert str(first.offer.price) == "874"
    assert str(second.state) == state
