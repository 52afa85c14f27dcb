"""A market level as somebody says it: an amount in a currency per a weight of board."""

from dataclasses import dataclass
from decimal import Decimal

from tracker.trade.basis import Basis, BoardMeasure
from tracker.trade.basis import per_tonne as figure_per_tonne

_WEIGHT_WORDS = {
    Basis.TONNE: "tonne",
    Basis.SHORT_TON: "short ton",
    Basis.CWT: "cwt",
    Basis.LB: "lb",
    Basis.KG: "kg",
}


@dataclass(frozen=True, slots=True)
class LevelFigure:
    """What a grade costs per `basis`, which is a weight (ValueError else), as it was said and is shown again."""

    amount: Decimal
    currency: str
    basis: Basis = Basis.TONNE

    def __post_init__(self) -> None:
        if self.basis not in _WEIGHT_WORDS:
            raise ValueError(f"{self.basis} is no weight.")

    @property
    def per_tonne(self) -> Decimal:
        """Per 1,000 kg, to the cent where it was said per another weight."""
        if self.basis is Basis.TONNE:
            return self.amount
        exact = figure_per_tonne(self.amount, self.basis, BoardMeasure())
        assert exact is not None  # a weight's factor is known without knowing the board
        return Decimal(round(exact * 100)) / 100

    def __str__(self) -> str:
        """'USD 1,340 per short ton'."""
        return f"{self.currency} {self.amount:,f} per {_WEIGHT_WORDS[self.basis]}"
