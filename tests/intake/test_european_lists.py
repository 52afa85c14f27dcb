"""Price lists as German, French, Swedish and Finnish vendors send them: what once made the reader ask, miss or err.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import codes, lines


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


@pytest.mark.parametrize("head", ["Bulk cm3/g", "Volumen cm³/g", "cm³/g", "Dichte g/cm3", "kg/m3", "Vol. [cm³/g]"])
def test_bulk_and_density_are_no_basis_weight(head):
    found = lines([["EUR/t"], ["Sorte", "g/m²", head, "µm", "EUR/t"], ["GC1", 240, 1.69, 405, 1290]])
    assert prices(found) == {"E3": ("accepted", "1290", "tonne")}
    assert found["E3"].offer.grammage_gsm == 240


@pytest.mark.parametrize("head", ["kg/m²", "Weight kg/m2", "Flächengewicht (kg/qm)"])
def test_greyboard_weighed_in_kilograms_a_square_metre(head):
    found = lines([["EUR/t"], ["Board", "mm", head, "EUR/t"], ["Greyboard", 1.4, 0.94, 630]])
    assert prices(found) == {"D3": ("accepted", "630", "tonne")}
    assert found["D3"].offer.grammage_gsm == 940
    assert not codes(found["D3"])
