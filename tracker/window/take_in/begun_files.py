"""Files that were answered or marked and then left: opened again, they go on from there instead of being asked anew."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from tracker.window.settings import Settings
from tracker.window.take_in.file_at_hand import FileAtHand

_MOST_KEPT = 30


class BegunFiles:
    """Remembers them by what is in them, whatever they are called; answers outlive the window, marks do not."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._by_content: dict[str, FileAtHand] = {}
        self._from_before: dict[str, dict[str, Any]] = _from_text(settings.begun)

    def keep(self, files: Iterable[FileAtHand]) -> None:
        """Remembers those of these files that something was said about."""
        for file in files:
            if file.begun and file.taken is not None:
                self._by_content[file.taken.reading.sha256] = file
        begun = {sha256: file for sha256, file in self._by_content.items() if file.begun}
        said = self._from_before | {sha256: _said(file) for sha256, file in begun.items()}
        self._settings.keep(begun=json.dumps(dict(list(said.items())[-_MOST_KEPT:])))

    def take_up(self, file: FileAtHand) -> FileAtHand | None:
        """The file that was begun with the very bytes of this one, as it now lies on disk; None where there is none.

        It is to be read again: what was answered is not in the new reading yet.
        """
        if file.taken is None:
            return None
        sha256 = file.taken.reading.sha256
        earlier, said = self._by_content.pop(sha256, None), self._from_before.pop(sha256, None)
        if earlier is not None and earlier is not file and not earlier.stored:
            earlier.path, earlier.stop = file.path, file.stop
            earlier.taken, earlier.found = file.taken, file.found
            return earlier
        if earlier is None and said is not None and not file.begun:
            file.given.update(said["given"])
            file.words.update(said["words"])
            file.nameless = said["nameless"]
            return file
        return None


def _said(file: FileAtHand) -> dict[str, Any]:
    return {"given": file.given, "words": file.words, "nameless": file.nameless}


def _from_text(text: str) -> dict[str, dict[str, Any]]:
    """What an earlier window kept; nothing where it was written by other hands."""
    try:
        kept = json.loads(text or "{}")
        return {
            str(sha256): {
                "given": {str(key): str(value) for key, value in said["given"].items()},
                "words": {str(key): str(value) for key, value in said["words"].items()},
                "nameless": bool(said["nameless"]),
            }
            for sha256, said in kept.items()
        }
    except (ValueError, KeyError, TypeError, AttributeError):
        return {}
