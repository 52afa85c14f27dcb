"""The columns of the files taken in: one line a file, withdrawn ones stepping back."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from tracker.window.look import figures
from tracker.window.look.figures import NONE
from tracker.window.tables.columns import Column, Stand, fixed, text_keys

if TYPE_CHECKING:
    from tracker.desk.files import StoredFile

Files = tuple["StoredFile", ...]


def is_withdrawn(files: Files, row: int) -> bool:
    return files[row].withdrawn


def _taken_in(files: Files, row: int) -> str:
    return figures.date_text(files[row].imported_at.astimezone().date())


FILE_COLUMNS: tuple[Column, ...] = (
    Column(
        "name",
        fixed("File"),
        text=lambda d, row: d[row].name,
        keys=lambda d: text_keys([file.name for file in d]),
        width=150,
        share=4,
        strong=True,
        wraps=True,
        tip=lambda d, row: d[row].name,
    ),
    Column(
        "vendor",
        fixed("Vendor"),
        text=lambda d, row: d[row].vendor or "not named",
        keys=lambda d: text_keys([file.vendor or "" for file in d]),
        width=112,
        share=3,
        wraps=True,
        tip=lambda d, row: d[row].vendor or "",
    ),
    Column(
        "received",
        fixed("Received"),
        text=lambda d, row: figures.date_text(d[row].received),
        keys=lambda d: np.array([file.received.toordinal() for file in d]),
        stand=Stand.RIGHT,
        width=94,
        tip=lambda d, row: f"Taken in on {_taken_in(d, row)} by {d[row].imported_by}",
    ),
    Column(
        "imported",
        fixed("Taken in"),
        text=_taken_in,
        keys=lambda d: np.array([file.imported_at.timestamp() for file in d]),
        stand=Stand.RIGHT,
        width=94,
        tip=lambda d, row: f"by {d[row].imported_by}",
    ),
    Column(
        "offers",
        fixed("Offers"),
        text=lambda d, row: f"{d[row].offers:,}",
        keys=lambda d: np.array([file.offers for file in d]),
        stand=Stand.RIGHT,
        width=54,
    ),
    Column(
        "held",
        fixed("Not used"),
        text=lambda d, row: f"{d[row].held:,}" if d[row].held else NONE,
        keys=lambda d: np.array([file.held for file in d]),
        stand=Stand.RIGHT,
        width=72,
        about="Lines held by a question, or that can't be used",
    ),
    Column(
        "state",
        fixed(""),
        text=lambda d, row: "withdrawn" if d[row].withdrawn else "",
        keys=lambda d: np.array([not file.withdrawn for file in d]),
        width=82,
        about="The offers of a withdrawn file do not count",
    ),
)
