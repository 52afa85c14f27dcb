"""How much of the files being taken in is read."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QProgressBar

from tracker.window.take_in.file_at_hand import FileAtHand

_OF_ONE = 100
_LOOKED_EVERY_MS = 100


class ReadingBar(QProgressBar):
    """Looks at the files ten times a second while one of them is being read. As long as nothing is known of how much
    is done it only shows that something is."""

    def __init__(self, files: Callable[[], Sequence[FileAtHand]]) -> None:
        super().__init__()
        self._files = files
        self.setAccessibleName("Files read")
        self.setTextVisible(False)
        self._timer = QTimer(self)
        self._timer.setInterval(_LOOKED_EVERY_MS)
        self._timer.timeout.connect(self.look)

    def begin(self) -> None:
        """Files are being read from now on."""
        self.look()
        self._timer.start()

    def look(self) -> None:
        """Shows how much is read by now, and nothing once all is."""
        files = self._files()
        done = sum(_OF_ONE * (file.share if file.taken is None else 1) for file in files)
        # Of no length a bar moves to and fro.
        self.setRange(0, _OF_ONE * len(files) if done else 0)
        self.setValue(int(done))
        reading = any(file.taken is None for file in files)
        self.setVisible(reading)
        if not reading:
            self._timer.stop()
