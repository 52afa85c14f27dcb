"""Basis weight from what 1,000 sheets weigh, exactly; a stated basis weight comes first."""

from decimal import Decimal
from fractions import Fraction

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import GrammageFrom


def _weight(heads, *cells):
    found = lines([["USD"], ["Grade", "Caliper (pt)", *heads, "$/M"], ["SBS C1S", 18, *cells, 348.6]])
    return found[f"{'CDEFG'[len(cells)]}3"].offer


@pytest.mark.parametrize(
    ("head", "figure", "kg"),
    [("M weight", 599, "0.45359237"), ("lb/1000 sheets", 599, "0.45359237"), ("kg per 1000 sheets", 271.7, "1")],
)
def test_what_a_thousand_sheets_weigh_gives_the_basis_weight(head, figure, kg):
    offer = _weight([head, "Size"], figure, "28 x 40 in")
    exact = Fraction(str(figure)) * Fraction(kg) / (Fraction("0.7112") * Fraction("1.016"))
    assert offer.grammage_from is GrammageFrom.QUOTED
    assert abs(Fraction(offer.grammage_gsm) - exact) < exact / 10**9


def test_a_stated_basis_weight_comes_first():
    assert round(_weight(["lb/MSF", "M weight", "Size"], 77, 599, "28 x 40 in").grammage_gsm, 3) == Decimal("375.947")


def test_without_a_size_nothing_follows():
    assert _weight(["M weight"], 599).grammage_from is GrammageFrom.ESTIMATED
