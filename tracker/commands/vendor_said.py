"""A vendor's name after an option: the known vendor that it means, told where it was written otherwise."""

import sys

from tracker.desk.opening import Desk
from tracker.desk.vendors import vendor_meant, vendors


def vendor_said(desk: Desk, typed: str) -> str:
    """The known vendor's name, else the name as typed with a warning on standard error where it may be a slip."""
    meant = vendor_meant(typed, vendors(desk))
    if meant.known and meant.name != " ".join(typed.split()):
        print(f"“{typed}” is taken as {meant.name}.", file=sys.stderr)
    if meant.close:
        print(f"{meant.name} is a new vendor; did you mean {' or '.join(meant.close)}?", file=sys.stderr)
    return meant.name
