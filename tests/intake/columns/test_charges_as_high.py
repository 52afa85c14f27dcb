"""No charge costs as much as the board: such figures under a charge's name are prices, and are asked about."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Board", "pt", "lb/MSF"]


def read(price, beside, rows=((1145, 1210), (1150, 1220)), title="Carton board"):
    boards = [["SBS C1S", 16 + 2 * n, 68 + 7 * n, *pair] for n, pair in enumerate(rows)]
    return lines([[title], [*HEAD, price, beside], *boards])


@pytest.mark.parametrize(
    ("price", "beside"),
    [
        ("Standard USD/ST", "Premium USD/ST"), ("Price USD/ST", "Extra USD/ST"), ("Price USD/ST", "Surcharge USD/ST"),
        ("Price USD/ST", "Freight USD/ST"), ("Price USD/ST", "Energy surcharge"), ("Preis USD/ST", "Aufpreis USD/ST"),
        ("Prix USD/ST", "Supplément USD/ST"), ("Precio USD/ST", "Recargo USD/ST"), ("Pris USD/ST", "Tillägg USD/ST"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("rows", [((1145, 1210), (1150, 1220)), ((1145, 1210),)])
def test_a_second_price_under_a_charges_name_is_asked_about(price, beside, rows):
    found = read(price, beside, rows)
    assert not any(line.offer.charges for line in found.values())
    assert "question" in {str(line.state) for line in found.values()}


@pytest.mark.parametrize(
    ("price", "beside", "rows", "title"),
    [
        ("Price USD/ST", "Premium USD/ST", ((1145, 60), (1150, 60)), "Carton board"),
        ("Price USD/ST", "Freight USD/ST", ((420, 290), (400, 290)), "Carton board"),
        ("Price USD/cwt", "Freight USD/ST", ((55, 60), (57, 60)), "Carton board"),
        ("Price", "Freight USD/ST", ((55, 60), (57, 60)), "Prices in USD per cwt"),
    ],
)
def test_a_charge_that_is_less_or_on_another_basis_stays_one(price, beside, rows, title):
    found = read(price, beside, rows, title)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert all(len(line.offer.charges) == 1 for line in found.values())
