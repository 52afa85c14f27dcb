"""Heads that say an order size and how board of that size is delivered: 'Under 40,000 lb' over 'FOB mill'."""

import re

from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.orders.brackets import Bracket, bracket_text

_PARTED = " \t\n,;:/|()[]–-"


def size_beside_delivery(text: str, delivery: Delivery | None) -> Bracket | None:
    """The order size in weight that is all a text says beside its delivery; None where it says more, or no such size.

    A bare '5 t delivered' is a size only in a row of such.
    """
    if delivery is None or delivery.conditional or delivery.words not in text or delivery.words == text:
        return None
    size = bracket_text(" ".join(re.sub(r"\(\s*\)", " ", text.replace(delivery.words, " ", 1)).split()).strip(_PARTED))
    return size if size is not None and not (size.not_weight or size.alone) else None
