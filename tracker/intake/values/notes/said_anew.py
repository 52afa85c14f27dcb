"""A figure that is told anew for some of what a text is about, in the words for the one before it."""

from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.lead import LeadTime, lead_text


def in_its_place(said: str, own: str) -> str:
    """'Min. order 10,000 lb' of 'min. order 30,000 lb each' and '10,000 lb': a figure is of what another was."""
    for one in statements(said):
        if isinstance(one, LeadTime) and lead_text(own) is not None:
            return said.replace(one.words, own) if one.words in said else f"{said}: {own}"
        if isinstance(one, SaysMinimum) and any(mass.words == own for mass in find_masses(own)):
            return said.replace(one.mass.words, own)
    return own
