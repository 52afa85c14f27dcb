"""The number of a sample as it stands on its label, and as a person types or scans it."""

import re

from tracker.desk.trouble import Trouble

_SAID = re.compile(r"(?:s|no\.?|#)?\s*[-–]?\s*0*(\d{1,9})", re.IGNORECASE)


def number_text(number: int) -> str:
    """'S-0007': what the label says in letters and in its code."""
    return f"S-{number:04d}"


def number_said(text: str) -> int:
    """7 from '7', 'S-0007', 's7' or '#7'. Trouble for what is no sample's number."""
    found = _SAID.fullmatch(text.strip())
    if found is None:
        raise Trouble(f"“{text.strip()}” is not a sample's number: it looks like S-0007, and 7 is enough.")
    return int(found[1])


def no_such_sample(number: int) -> Trouble:
    """What to say where there is none of that number."""
    return Trouble(f"There is no sample {number}: look at the list of samples for its number.")
