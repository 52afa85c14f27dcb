"""What a note says of lines that it names by their numbers, and what of all others: the words around the numbers."""

from tracker.intake.values.notes.lines_counted import lines_named
from tracker.intake.values.notes.relatives import is_relative
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


def of_all_others(rest: str) -> str:
    """What 'Except items 2 and 3, lead time is 3 weeks' says of all others behind the exception; '' where it tells more
    of the lines excepted: 'Except item 3 (delivered), prices are FOB mill'."""
    own = rest.lstrip().startswith("(") or is_relative(rest.lstrip(_STOPS)) or lines_named(rest) is not None
    return "" if own else rest.strip(_STOPS)


_STOPS = " ,;:.–-"


def before_a_denial(before: str) -> str | None:
    """What 'energy surcharge 20 EUR/t, but not on items 3 and 4' says of all others; None where nothing is denied of
    these lines alone."""
    denial = ending_with(before.rstrip(), "negations")
    ahead = before[: denial.start].rstrip() if denial is not None else ""
    for section in ("contrasted", "but_words"):
        leading = ending_with(ahead, section)
        ahead = ahead if leading is None else ahead[: leading.start].rstrip()
    said = ahead.rstrip(" ,;(–-")
    return said if said and denial is not None and said != before[: denial.start].rstrip() else None


def tells_again(before: str, rest: str) -> bool:
    """'Minimum 5 t, for items 3 and 4 twice that, 10 t': which of the two figures is of these lines is not read."""
    told = statements(before)
    again = bool(find_masses(rest)) and any(isinstance(one, SaysMinimum) for one in told)
    again = again or (bool(find_dates(rest)) and any(isinstance(one, Validity) for one in told))
    return again or (lead_text(rest) is not None and any(isinstance(one, LeadTime) for one in told))


def ending_with(text: str, section: str) -> Found[str] | None:
    """The phrase of a section that a text ends with."""
    return next((found for found in phrases(section).find(text) if found.end == len(text)), None)
