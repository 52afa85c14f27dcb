"""Files that were answered or marked and then left: opened again, they go on from there instead of being asked anew."""

from __future__ import annotations

from collections.abc import Iterable

from tracker.window.take_in.file_at_hand import FileAtHand


class BegunFiles:
    """Remembers them by what is in them, whatever they are called, for as long as the window is open."""

    def __init__(self) -> None:
        self._by_content: dict[str, FileAtHand] = {}

    def keep(self, files: Iterable[FileAtHand]) -> None:
        """Remembers those of these files that something was said about."""
        for file in files:
            if file.begun and file.taken is not None:
                self._by_content[file.taken.reading.sha256] = file

    def take_up(self, file: FileAtHand) -> FileAtHand | None:
        """The file that was begun with the very bytes of this one, as it now lies on disk; None where there is none.

        It is to be read again: what was answered is not in the new reading yet.
        """
        earlier = None if file.taken is None else self._by_content.pop(file.taken.reading.sha256, None)
        if earlier is None or earlier is file or earlier.stored:
            return None
        earlier.path, earlier.stop = file.path, file.stop
        earlier.taken, earlier.found = file.taken, file.found
        return earlier
