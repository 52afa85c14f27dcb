from decimal import Decimal

import pytest

from tracker.trade.basis import Basis
from tracker.trade.level import LevelFigure


@pytest.mark.parametrize(
    ("amount", "basis", "per_tonne", "said"),
    [
        ("1455.05", Basis.TONNE, "1455.05", "USD 1,455.05 per tonne"),
        # 1,320 ÷ 0.90718474 t = 1,455.050…; 66 ÷ 45.359237 kg × 1,000 = the same price by the hundredweight.
        ("1320", Basis.SHORT_TON, "1455.05", "USD 1,320 per short ton"),
        ("66", Basis.CWT, "1455.05", "USD 66 per cwt"),
    ],
)
def test_a_level_is_compared_per_tonne_and_told_as_it_was_said(
    amount: str, basis: Basis, per_tonne: str, said: str
) -> None:
    figure = LevelFigure(Decimal(amount), "USD", basis)
    assert figure.per_tonne == Decimal(per_tonne)
    assert str(figure) == said


def test_a_level_is_per_a_weight() -> None:
    with pytest.raises(ValueError, match="no weight"):
        LevelFigure(Decimal(40), "USD", Basis.MSF)
