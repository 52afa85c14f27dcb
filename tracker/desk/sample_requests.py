"""Asking for samples: one request, or one grade in several calipers from several vendors in one go."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from itertools import product
from typing import TYPE_CHECKING, Any

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_numbers import no_such_sample
from tracker.desk.trouble import Trouble
from tracker.trade.exact import UM_PER_POINT
from tracker.trade.grades import grades
from tracker.trade.sample_form import understood

if TYPE_CHECKING:
    from tracker.desk.opening import Desk

THINNEST_UM, THICKEST_UM = Decimal(100), Decimal(2540)
"""4 to 100 pt: wider than any list of carton board (common practice, no source), so that only slips fall out."""

MOST_AT_ONCE = 200
"""More requests than this in one go is a slip of the hand."""


@dataclass(frozen=True, slots=True)
class Enquiry:
    """What is asked of whom: every vendor is asked for every caliper (none: no caliper is named).

    board: the vendor's own name of a board, where one is wanted. quantity: in words, such as '20 sheets 28 x 40 in'.
    on: the day it was asked, today if not said. contact: the person asked, where it is not the vendor's usual one.
    """

    vendors: tuple[str, ...]
    grade: str
    calipers_um: tuple[Decimal, ...] = ()
    board: str = ""
    quantity: str = ""
    for_what: str = ""
    needed: date | None = None
    on: date | None = None
    contact: str = ""


@dataclass(frozen=True, slots=True)
class LoggedAll:
    """The numbers of the requests, vendor by vendor and caliper by caliper, and the one edit that made them."""

    numbers: tuple[int, ...]
    edit: Edit


@dataclass(frozen=True, slots=True)
class Logged:
    """A request that was logged: the number for its label, and the edit."""

    number: int
    edit: Edit


def log_all(desk: Desk, enquiry: Enquiry) -> LoggedAll:
    """Logs every request of an enquiry, or none. Trouble for no vendor, no such grade, a day still to come."""
    from tracker.store import samples as kept

    grade = enquiry.grade.strip().upper()
    vendors = tuple(dict.fromkeys(" ".join(name.split()) for name in enquiry.vendors))
    day = enquiry.on or desk.today
    _refuse(enquiry, vendors, grade, day, desk.today)
    asked = list(product(vendors, enquiry.calipers_um or (None,)))
    text = f"asked {', '.join(vendors)} for {_counted(len(asked))} of {grade}"
    with writing(desk, text) as pen:
        logged = [kept.log(pen, vendor, _values(enquiry, grade, caliper, day)) for vendor, caliper in asked]
    numbers = tuple(number for number, _ in logged)
    return LoggedAll(numbers, Edit(f"{_named(numbers)} logged", tuple(change for _, change in logged)))


def log(
    desk: Desk,
    vendor: str,
    grade: str,
    caliper_um: Decimal | None = None,
    quantity: str = "",
    needed: date | None = None,
    on: date | None = None,
    for_what: str = "",
) -> Logged:
    """Logs a single request made on a day (today if not said). Trouble as log_all()."""
    calipers = () if caliper_um is None else (caliper_um,)
    enquiry = Enquiry((vendor,), grade, calipers, quantity=quantity, needed=needed, on=on, for_what=for_what)
    logged = log_all(desk, enquiry)
    return Logged(logged.numbers[0], logged.edit)


def name_board(desk: Desk, number: int, board: str) -> Edit:
    """Says which of the vendor's boards a sample is of, by the vendor's own name for it."""
    from tracker.store import samples as kept

    name = " ".join(board.split())
    text = f"sample {number} is {name}" if name else f"sample {number} has no board's name"
    with writing(desk, text) as pen:
        try:
            kept.get(pen.connection, number)
        except KeyError:
            raise no_such_sample(number) from None
        change = kept.change(pen, number, {"product": name})
    return Edit(text, (change,))


def _values(enquiry: Enquiry, grade: str, caliper: Decimal | None, day: date) -> dict[str, Any]:
    form = understood(enquiry.quantity)
    width, length = form.size_mm or (None, None)
    return {
        "grade": grade,
        "caliper_um": caliper,
        "product": _on_one_line(enquiry.board),
        "quantity": _on_one_line(enquiry.quantity),
        "form": form.form.value if form.form else "",
        "pieces": form.pieces,
        "width_mm": width,
        "length_mm": length,
        "for_what": _on_one_line(enquiry.for_what),
        "requested_on": day,
        "needed_by": enquiry.needed,
        "contact": _on_one_line(enquiry.contact),
    }


def _on_one_line(words: str) -> str:
    """A label, a greeting and a table's row have one line for it."""
    return " ".join(words.split())


def _refuse(enquiry: Enquiry, vendors: tuple[str, ...], grade: str, day: date, today: date) -> None:
    if not vendors or not all(vendors):
        raise Trouble("Say which vendor is asked for the sample.")
    if grade not in grades():
        raise Trouble(f"{grade or 'Nothing'} is not a grade: use one of {', '.join(grades())}.")
    for problem in _impossible_calipers(enquiry.calipers_um):
        raise Trouble(problem)
    if day > today:
        raise Trouble(f"A request can't have been made on {day.isoformat()}, which is still to come.")
    if enquiry.needed is not None and enquiry.needed < day:
        raise Trouble(
            f"A sample asked for on {day.isoformat()} can't be needed by {enquiry.needed.isoformat()}, before that."
        )
    count = len(vendors) * max(1, len(enquiry.calipers_um))
    if count > MOST_AT_ONCE:
        raise Trouble(f"That would be {count} requests; log at most {MOST_AT_ONCE} in one go.")


def _impossible_calipers(calipers: tuple[Decimal, ...]) -> Iterator[str]:
    for caliper in calipers:
        if not THINNEST_UM <= caliper <= THICKEST_UM:
            points = f"{float(caliper) / float(UM_PER_POINT):.4g}"
            yield (
                f"A caliper of {points} pt ({float(caliper):.5g} µm) is no carton board's: check its unit and decimal "
                "point (18 pt are 457 µm)."
            )
    if len(set(calipers)) < len(calipers):
        yield "A caliper is named twice: name each once."


def _counted(count: int) -> str:
    return "a sample" if count == 1 else f"{count} samples"


def _named(numbers: tuple[int, ...]) -> str:
    return f"sample {numbers[0]}" if len(numbers) == 1 else f"samples {numbers[0]} to {numbers[-1]}"
