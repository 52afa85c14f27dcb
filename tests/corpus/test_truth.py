"""Truth's own arithmetic against worked values, and generated files against themselves."""

from decimal import Decimal
from fractions import Fraction

import pytest

from tests.corpus.registry import load, make
from tests.corpus.truth import GSM_PER, Charge, Intent, text


def test_worked_prices():
    """Hand-worked: 1,150 a short ton at 78 lb/MSF is 44.85 an MSF; 62.50 a cwt at 190 lb/3000 ft² is 475/12 an MSF;
    210 per 1,000 sheets of 720 x 1020 mm at 350 g/m² is 125000/153 a tonne."""
    by_ton = Intent("SBS", Decimal(1150), "USD", "short_ton", gsm=78 * GSM_PER["lb_msf"])
    assert by_ton.per_msf() == Fraction("44.85")
    by_cwt = Intent("SBS", Decimal("62.50"), "USD", "cwt", gsm=190 * GSM_PER["lb_3000"])
    assert by_cwt.per_msf() == Fraction(475, 12)
    sheets = Intent(
        "SBS", Decimal(210), "EUR", "1000sheets", gsm=Fraction(350), sheet_mm=(Fraction(720), Fraction(1020))
    )
    assert sheets.per_tonne() == Fraction(125000, 153)


def test_delivered_cost_adds_every_charge_by_its_own_basis():
    """1,200 a short ton with 2.50 a cwt, 60 a short ton and 3.5 % of the price is 1,352 a short ton."""
    charges = [
        Charge("sheeting", Decimal("2.50"), "USD", "cwt"),
        Charge("freight", Decimal(60), "USD", "short_ton", freight=True),
    ]
    charges.append(Charge("surcharge", Decimal("3.5"), "USD", "percent"))
    offer = Intent("SBS", Decimal(1200), "USD", "short_ton", gsm=85 * GSM_PER["lb_msf"], charges=charges)
    assert text(offer.delivered_cost("msf")) == "57.46"
    assert offer.delivered_cost("tonne") == 1352 * Fraction(1000) / (2000 * Fraction(45359237, 10**8))


@pytest.mark.parametrize("name", [kind.name for kind in load().values() if not kind.heavy])
def test_a_family_builds_the_same_file_from_the_same_seed(name):
    first, again = make(load()[name], 3), make(load()[name], 3)
    assert (first.name, first.truth) == (again.name, again.truth)


@pytest.mark.parametrize("name", [kind.name for kind in load().values() if not kind.heavy])
def test_every_line_of_truth_points_at_a_cell_with_content(name):
    for seed in range(4):
        made = make(load()[name], seed)
        cells = {
            ("" if made.name.endswith(".csv") else sheet.name, row, column)
            for sheet in made.plan.sheets
            for (row, column), cell in sheet.cells.items()
            if cell.value is not None or cell.formula or cell.error
        }
        for line in made.truth["lines"]:
            assert (line["sheet"], *_position(line["cell"])) in cells
        assert len({(line["sheet"], line["cell"]) for line in made.truth["lines"]}) == len(made.truth["lines"])


def _position(cell: str) -> tuple[int, int]:
    letters = cell.rstrip("0123456789")
    column = 0
    for letter in letters:
        column = 26 * column + ord(letter) - 64
    return int(cell[len(letters) :]) - 1, column - 1
