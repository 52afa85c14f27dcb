"""What a part about a way of selling board tells beside figures: a time for it, or only in which form board comes."""

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.times.lead import lead_text
from tracker.intake.values.times.times_in_words import counts_time


def tells_how_it_comes(piece: str, said: str) -> bool:
    """'SBS delivered in rolls' tells neither when nor on which terms. `said`: the piece without its ways."""
    timed = any(map(str.isdigit, said)) or counts_time(said) or lead_text(said) is not None
    return find_delivery(said) is not None and freight_of_prices(piece) is None and not timed
