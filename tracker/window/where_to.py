"""Asks where to write a file, and gives a name that was typed without an ending the ending of its kind."""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.desk.trouble import Trouble

_ENDING = re.compile(r"\*(\.\w+)\)$")


def where_to(parent: QWidget, title: str, name: str, kinds: str = "") -> tuple[Path | None, str]:
    """The path, None where the user left, and which of the kinds was chosen; without kinds it is that of `name`.

    Raises Trouble where the name with its ending is another file's: the dialog asked about none but the name typed.
    """
    chosen, kind = QFileDialog.getSaveFileName(parent, title, name, kinds)
    if not chosen:
        return None, kind
    of_kind = _ENDING.search(kind)
    return _with_ending(Path(chosen), of_kind[1] if of_kind else Path(name).suffix), kind


def _with_ending(path: Path, ending: str) -> Path:
    """Qt's own dialog adds none."""
    if path.suffix or not ending:
        return path
    named = path.with_name(f"{path.name}{ending}")
    if named.exists():
        raise Trouble(f"{named} is there already and was left as it is: choose it, or another name.")
    return named
