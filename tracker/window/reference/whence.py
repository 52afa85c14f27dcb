"""Where a fact comes from, said quietly: what is only custom or memory by a mark, a real source by its name."""

from PySide6.QtWidgets import QLabel

from tracker.trade.sourced import Provenance, SourceKind
from tracker.window.pieces import words

_MARKS = {SourceKind.COMMON_PRACTICE: "○", SourceKind.MEMORY: "△"}
LEGEND = "○ common practice, no source     △ from memory, not checked against its source"


def whence(source: Provenance | str) -> QLabel:
    """The source in small letters, or its mark; in full for whoever rests the pointer on it or has it read out."""
    in_full = str(source)
    label = words(_short(source), "small", wrap=True, selectable=True)
    label.setToolTip(in_full)
    label.setAccessibleName(in_full)
    return label


def _short(source: Provenance | str) -> str:
    if isinstance(source, str) or source.kind not in _MARKS:
        return str(source)
    return f"{_MARKS[source.kind]} {source.reference}".rstrip()
