"""What went wrong, as one plain sentence; the rest goes to the log, never to the screen."""

import logging
import sys
import time
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, Signal

from tracker.desk import trouble

log = logging.getLogger(__name__)
_SECONDS_BETWEEN_REPEATS = 2.0


def log_file() -> Path:
    """Where the log is kept, in the desktop's own place for logs."""
    from platformdirs import user_log_path

    return user_log_path("paperboard-tracker", appauthor=False, ensure_exists=True) / "window.log"


def keep_log(path: Path) -> None:
    """Appends warnings and errors, with their tracebacks, to a file."""
    handler = logging.FileHandler(path, encoding="utf-8", delay=True)
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    logging.getLogger("tracker").addHandler(handler)


def sentence_for(error: BaseException) -> str:
    """The desk's sentence as it stands; for a fault of ours, that it is one and where the details are."""
    ours = "Something in the tracker itself went wrong. Nothing was lost; the details are in the log."
    return trouble.sentence_for(error) or ours


class Mishaps(QObject):
    """Catches what no one else caught: logs it, and says so once through `happened`, from whichever thread."""

    happened = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._last = 0.0

    def install(self) -> None:
        """From now on nothing reaches the terminal as a traceback."""
        sys.excepthook = self.caught

    def caught(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Takes sys.excepthook's place; a fault in painting repeats on every repaint, so repeats stay quiet."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        log.error("not caught elsewhere", exc_info=(kind, error, trace))
        now = time.monotonic()
        if now - self._last > _SECONDS_BETWEEN_REPEATS:
            self._last = now
            self.happened.emit(sentence_for(error))
