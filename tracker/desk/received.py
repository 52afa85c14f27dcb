"""Since when a vendor's list counts: of two lists the later is the current one, in whatever order they are taken in."""

from datetime import date

from tracker.trade.offer import Answers, Reading


def day_received(reading: Reading, answers: Answers, today: date) -> date:
    """The day a person said the list came, else the day it says it was made, else today.

    A list dated ahead counts from today: whoever has it in hand can order by it.
    """
    if answers.received is not None:
        return answers.received
    return today if reading.dated is None else min(reading.dated, today)
