"""Why prices rise: what the vendor's own costs have come to, which is charged to nobody."""

from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases


def tells_costs(part: str) -> bool:
    """'Energy costs are up 14 % since January' and 'hausse du coût de l'énergie (+ 11 %)'.

    'Plus energy costs' and 'energy cost 25 USD/ST' are charged, and 'because of rising costs an energy surcharge of 3 %
    applies' tells a charge as well.
    """
    said = {match.value for match in phrases("costs_told").find(part)}
    charged = find_currencies(part) or any(phrases(section).find(part) for section in _CHARGED)
    return said == {"cost", "rise"} and not charged


_CHARGED = ("surcharge_applies", "added_on_top")
