"""What waits today, as lines of words."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from tracker.desk.standing import Standing
from tracker.window.look import figures
from tracker.window.look.figures import NONE, Units, counted
from tracker.window.quotes.offer_columns import Offers, per_words, price_figure
from tracker.window.tables.task_list import Task
from tracker.window.take_in.begun_files import BegunSheet

if TYPE_CHECKING:
    from tracker.desk.questions import OpenQuestion
    from tracker.desk.samples import Sample
    from tracker.desk.today import Today


MOST_OFFERS = 200
"""So many prices out of line are listed, the furthest first: nobody settles more in a day, and each costs time."""

_TIMES = {1: "once", 2: "twice"}


def overdue_samples(todays: Today, units: Units) -> list[Task]:
    """Most overdue first; the target is the request's number."""
    return [_sample(sample, units) for sample in todays.overdue]


def _sample(sample: Sample, units: Units) -> Task:
    what = " ".join(part for part in (sample.grade, _known(figures.caliper(sample.caliper_um, units))) if part)
    asked = f"asked for on {figures.date_text(sample.requested)}"
    if sample.promised is not None:
        asked = f"promised for {figures.date_text(sample.promised)}"
    chased = f", chased {_TIMES.get(sample.chased, f'{sample.chased} times')}" if sample.chased else ""
    purpose = f" for {sample.for_what}" if sample.for_what else ""
    return Task(
        f"{sample.vendor}: {what}{purpose}",
        f"{asked}{chased}",
        f"{counted(sample.overdue_days or 0, 'day')} late",
        sample.number,
        sample.grade,
    )


def begun_sheets(sheets: Sequence[BegunSheet]) -> list[Task]:
    """Sheets left half answered, the latest first; the target is the sheet."""
    return [_begun(sheet) for sheet in sheets]


def _begun(sheet: BegunSheet) -> Task:
    said = [counted(sheet.answers, "answer") + " given"] if sheet.answers else []
    said += ["marked by hand"] if sheet.marked else []
    said += [] if said or sheet.kept else ["read"]
    asked = f"{counted(sheet.asked, 'question')} left" if sheet.asked else "nothing left to ask"
    again = "answered anew" if sheet.kept else "not taken in yet"
    return Task(
        f"{sheet.vendor or 'Vendor not known'}: a sheet you began",
        f"{sheet.path.name}: {', '.join([*said, again])}",
        asked,
        sheet,
    )


def questions(todays: Today) -> list[Task]:
    """One line a file, since its questions are answered together; the target is the tuple of them."""
    of_file: dict[int, list[OpenQuestion]] = {}
    for asked in todays.questions:
        of_file.setdefault(asked.file_id, []).append(asked)
    return [
        Task(
            f"{group[0].vendor or 'Vendor not known'}: {counted(len(group), 'question')}",
            f"{group[0].file}: {group[0].question.text}",
            f"{counted(group[0].lines, 'line')} held",
            tuple(group),
        )
        for group in of_file.values()
    ]


def out_of_line(todays: Today, offers: Offers) -> list[Task]:
    """Furthest from the going price first, as many as are listed; the target is the offer."""
    return [_offer(offers, row) for row in todays.out_of_line[:MOST_OFFERS]]


def _offer(offers: Offers, row: int) -> Task:
    comparison = offers.comparison
    mark = Standing(int(offers.marks[row]))
    ratio = float(offers.of_expected[row])
    price = f"{price_figure(comparison, float(comparison.price[row]))} {per_words(comparison)}"
    # A line never ends between an amount and what it is per.
    quoted = comparison.snapshot.as_quoted[row].replace(" ", "\N{NO-BREAK SPACE}")
    text = f"{figures.beside(ratio)} the going price" if mark is not Standing.SLIP else "another basis?"
    return Task(
        _board(offers, row),
        f"{price}, quoted {quoted}",
        text,
        row,
        offers.name("grade", row),
        mark,
    )


def lapsing(todays: Today, offers: Offers) -> list[Task]:
    """One line a vendor's file and day, since a list lapses as a whole; the target is its first offer."""
    snapshot, today = offers.comparison.snapshot, offers.comparison.footing.as_of
    rows = np.array(todays.lapsing, dtype=np.int64)
    pairs = np.stack([snapshot.file[rows], snapshot.valid_at_latest[rows]], axis=1)
    lists, first, whose = np.unique(pairs, axis=0, return_index=True, return_inverse=True)
    return [
        _lapsing_list(offers, rows[whose.ravel() == place], int(lists[place][1]) - today.toordinal())
        for place in np.argsort(first, kind="stable")
    ]


def _lapsing_list(offers: Offers, rows: NDArray[np.int64], days: int) -> Task:
    codes = np.unique(offers.comparison.snapshot.grade[rows])
    grades = ", ".join(sorted(offers.comparison.snapshot.grades[code] for code in codes if code >= 0))
    until = offers.comparison.footing.as_of + timedelta(days)
    either = " at the latest" if offers.comparison.snapshot.valid_until[rows[0]] < 0 else ""
    return Task(
        f"{offers.name('vendor', int(rows[0]))}: {counted(len(rows), 'offer')}",
        f"{grades}, valid until {figures.date_text(until)}{either}",
        "today" if days == 0 else f"{counted(days, 'day')} left",
        int(rows[0]),
    )


def _board(offers: Offers, row: int) -> str:
    snapshot = offers.comparison.snapshot
    caliper = _known(figures.caliper(float(snapshot.caliper_um[row]), offers.units))
    # A vendor's own words often hold the caliper already: saying it twice reads like two boards.
    board = snapshot.product[row] or offers.name("grade", row)
    said = caliper.partition(" ")[0] in board.split()
    return f"{offers.name('vendor', row)}: {board}{'' if said or not caliper else f', {caliper}'}"


def _known(text: str) -> str:
    return "" if text == NONE else text
