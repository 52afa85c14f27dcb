"""A board with a note below it, and the lead time that the note gives it."""

from tests.intake.sheets import codes, lines

BOARD = [["Grade", "Caliper (µm)", "Weight (g/m²)", "Price EUR/tonne"], ["GC1", 430, 290, 1201], []]
UNREAD = "lead-time-unread"


def lead_below(text):
    """The lead time of a board over a note, its lead-time-unread where it is told not to be read, or None."""
    line = lines([*BOARD, [text]])["D2"]
    return UNREAD if UNREAD in codes(line) else line.offer.lead_days
