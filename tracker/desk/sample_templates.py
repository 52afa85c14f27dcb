"""Requests that are made often, kept under a name: the same vendors, grade and calipers in a few keys."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, timedelta
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_requests import Enquiry
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.sample_templates import StoredTemplate


@dataclass(frozen=True, slots=True)
class SampleTemplate:
    """An enquiry under a name. It has no days of its own: needed_days counts from the day it is used on."""

    name: str
    enquiry: Enquiry
    needed_days: int | None

    def used_on(self, day: date) -> Enquiry:
        """The enquiry as it would be made on a day."""
        needed = None if self.needed_days is None else day + timedelta(days=self.needed_days)
        return replace(self.enquiry, needed=needed, on=day)


def save(desk: Desk, name: str, enquiry: Enquiry) -> Edit:
    """Keeps an enquiry under a name, in the place of an earlier one of that name. Trouble for no name."""
    from tracker.store import sample_templates as kept

    called = " ".join(name.split())
    if not called:
        raise Trouble("Say what the template shall be called.")
    text = f"kept the template {called}"
    with writing(desk, text) as pen:
        change = kept.put(pen, called, _contents(enquiry, enquiry.on or desk.today))
    return Edit(text, (change,))


def templates(desk: Desk) -> tuple[SampleTemplate, ...]:
    """Every template by name."""
    from tracker.store import sample_templates as kept

    with desk.store.reading() as connection:
        return tuple(_template(stored) for stored in kept.listing(connection))


def template(desk: Desk, name: str) -> SampleTemplate:
    """The template of a name, whatever its capitals. Trouble where there is none."""
    found = templates(desk)
    for each in found:
        if each.name.casefold() == " ".join(name.split()).casefold():
            return each
    known = f"the templates are {', '.join(each.name for each in found)}" if found else "none was kept yet"
    raise Trouble(f"There is no template {name}: {known}.")


def forget(desk: Desk, name: str) -> Edit:
    """Takes a template away. Trouble where there is none of that name."""
    from tracker.store import sample_templates as kept

    called = template(desk, name).name
    text = f"forgot the template {called}"
    with writing(desk, text) as pen:
        (found,) = [each.id for each in kept.listing(pen.connection) if each.name == called]
        change = kept.remove(pen, found)
    return Edit(text, (change,))


def _contents(enquiry: Enquiry, day: date) -> dict[str, Any]:
    return {
        "vendors": list(enquiry.vendors),
        "grade": enquiry.grade,
        "calipers_um": [str(caliper) for caliper in enquiry.calipers_um],
        "board": enquiry.board,
        "quantity": enquiry.quantity,
        "for": enquiry.for_what,
        "needed_days": None if enquiry.needed is None else (enquiry.needed - day).days,
    }


def _template(stored: StoredTemplate) -> SampleTemplate:
    contents = stored.contents
    enquiry = Enquiry(
        vendors=tuple(contents["vendors"]),
        grade=contents["grade"],
        calipers_um=tuple(Decimal(caliper) for caliper in contents["calipers_um"]),
        board=contents["board"],
        quantity=contents["quantity"],
        for_what=contents["for"],
    )
    return SampleTemplate(stored.name, enquiry, contents["needed_days"])
