from decimal import Decimal

import pytest

from tracker.intake.columns.roles.cells import mass_of
from tracker.intake.grid import Cell
from tracker.trade.quantities import MassUnit


@pytest.mark.parametrize("spoilt", ["Infinity", "-Infinity", "NaN", "0", "-5"])
def test_no_order_weighs_what_a_spoilt_file_says(spoilt):
    assert mass_of(Cell(0, 0, Decimal(spoilt), spoilt), (MassUnit.KG,)) is None
