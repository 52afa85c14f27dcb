"""Weights over calipers across a table of prices, with another column that one of the two rows alone heads."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

_ROWS = [["SBS C1S", 62.3, 61.8, 61.2, 14.5], ["SBS C2S", 66.1, 65.5, 64.9, 14.5], ["CUK", 53.4, 52.9, 52.2, 14.5]]


def _read(upper, lower, unit="US$ per cwt, FOB mill"):
    return lines([["Ashwater Forks Paperboard Inc."], [unit], [], upper, lower, *_ROWS])


@pytest.mark.parametrize("core", ["New core (option)", "Core", "Hülse", "Mandrin", "Mandril", "Hylsa"])
def test_a_core_beside_them(core):
    found = _read(["lb per 3,000 sq ft", 177, 201, 231], ["Caliper (pt)", 14, 16, 18, core])
    assert {cell[0] for cell in found} == set("BCD")
    assert [found[f"{column}6"].offer.caliper_um for column in "BCD"] == [
        Decimal(x) for x in ("355.6", "406.4", "457.2")
    ]
    assert [round(found[f"{column}6"].offer.grammage_gsm) for column in "BCD"] == [288, 327, 376]


def test_prices_in_cents():
    found = _read(
        ["lb per 3,000 sq ft", 177, 201, 231],
        ["Caliper (pt)", 14, 16, 18, "New core (option)"],
        "Cents per lb, FOB mill.",
    )
    assert found["D8"].offer.price == Decimal("0.522")
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_a_caliper_whose_weight_is_not_told_has_none_of_its_neighbours():
    found = _read(["lb per 3,000 sq ft", 177, 201, 231], ["Caliper (pt)", 14, 16, 18, 20])
    assert round(found["D6"].offer.grammage_gsm) == 376
    assert found["E6"].offer.caliper_um == 508
    assert found["E6"].offer.grammage_from == "estimated"


def test_a_charge_beside_them_is_a_charge():
    found = _read(["lb per 3,000 sq ft", 177, 201, 231], ["Caliper (pt)", 14, 16, 18, "Freight"])
    assert [charge.price for charge in found["B6"].offer.charges] == [Decimal("14.5")]
