"""Whom to write to at a vendor, and in which language."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble
from tracker.reports.message import LANGUAGES

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.contacts import Contact as Contact

_MAIL = re.compile(r"[^@\s,;<>\"]+@[^@\s,;<>\"]+\.[^@\s,;<>\".]+")


def set_contact(desk: Desk, vendor: str, name: str = "", mail: str = "", language: str = "en") -> Edit:
    """Keeps a vendor's contact. Trouble for no vendor, what is no mail address, or another language."""
    from tracker.store import contacts as kept

    called, address, code = " ".join(vendor.split()), mail.strip(), language.strip().casefold()
    if not called:
        raise Trouble("Say whose contact it is.")
    if address and not _MAIL.fullmatch(address):
        raise Trouble(f"“{address}” is not a mail address: write it like name@vendor.example.")
    if code not in LANGUAGES:
        raise Trouble(f"Messages are written in {', '.join(LANGUAGES)}; “{language}” is none of them.")
    text = f"set the contact of {called}"
    with writing(desk, text) as pen:
        change = kept.put(pen, kept.Contact(called, " ".join(name.split()), address, code))
    return Edit(text, (change,))


def contact(desk: Desk, vendor: str) -> Contact:
    """A vendor's contact; empty, and in English, where nobody set one."""
    from tracker.store import contacts as kept

    with desk.store.reading() as connection:
        known = kept.listing(connection)
    wanted = " ".join(vendor.split()).casefold()
    return next((each for name, each in known.items() if name.casefold() == wanted), kept.Contact(vendor))
