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


FILE_COLUMNS: tuple[Column, ...] = (
    Column(
        "name",
        fixed("File"),
        text=lambda d, row: d[row].name,
        keys=lambda d: text_keys([file.name for file in d]),
        width=180,
        share=4,
        strong=True,
        tip=lambda d, row: d[row].name,
    ),
    Column(
        "vendor",
        fixed("Vendor"),
        text=lambda d, row: d[row].vendor or "not named",
        keys=lambda d: text_keys([file.vendor or "" for file in d]),
        width=130,
        share=3,
    ),
    Column(
        "received",
        fixed("Received"),
        text=lambda d, row: figures.date_text(d[row].received),
        keys=lambda d: np.array([file.received.toordinal() for file in d]),
        stand=Stand.RIGHT,
        width=90,
    ),
    Column(
        "imported",
        fixed("Taken in"),
        text=lambda d, row: figures.date_text(d[row].imported_at.astimezone().date()),
        keys=lambda d: np.array([file.imported_at.timestamp() for file in d]),
        stand=Stand.RIGHT,
        width=90,
        tip=lambda d, row: f"by {d[row].imported_by}",
    ),
    Column(
        "offers",
        fixed("Offers"),
        text=lambda d, row: f"{d[row].offers:,}",
        keys=lambda d: np.array([file.offers for file in d]),
        stand=Stand.RIGHT,
        width=60,
    ),
    Column(
        "held",
        fixed("Not used"),
        text=lambda d, row: f"{d[row].held:,}" if d[row].held else NONE,
        keys=lambda d: np.array([file.held for file in d]),
        stand=Stand.RIGHT,
        width=66,
        about="Lines held by a question, or that can't be used",
    ),
    Column(
        "state",
        fixed(""),
        text=lambda d, row: "withdrawn" if d[row].withdrawn else "",
        keys=lambda d: np.array([not file.withdrawn for file in d]),
        width=80,
        about="The offers of a withdrawn file do not count",
    ),
)
