"""Files that were answered or marked and then left: opened again, they go on from there instead of being asked anew."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from weakref import WeakValueDictionary

from tracker.trade.layout import MarkedColumn
from tracker.window.settings import Settings
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.marking import Marking

_MOST_KEPT = 30
_ROWS = ("header_row", "first_row", "last_row")
_WHOLE = ("currency", "grade")


@dataclass(frozen=True, slots=True)
class BegunSheet:
    """A file that waits half answered: where it lay, whose it is ('' not known), what was said and is still asked.

    `kept`: it is a stored file that is being answered anew, so that it need not be there any more.
    """

    sha256: str
    path: Path
    vendor: str
    answers: int
    marked: bool
    asked: int
    kept: bool


class BegunFiles:
    """Remembers them by what is in them, whatever they are called; all that was said outlives the window.

    `here` is a sign of the database that is open: what was begun for another waits until that one is open again, since
    it would be stored in the wrong one (a demo's is thrown away).
    """

    def __init__(self, settings: Settings, here: str) -> None:
        self._settings = settings
        self._here = here
        # A file with its sheets takes many megabytes: only those that something was said about are held on to.
        self._by_content: WeakValueDictionary[str, FileAtHand] = WeakValueDictionary()
        self._held: list[FileAtHand] = []
        self._from_before: dict[str, dict[str, Any]] = _from_text(settings.begun)

    def keep(self, files: Iterable[FileAtHand], *, all_unsettled: bool = False) -> None:
        """Remembers those of these files that something was said about, or all that still have lines to take in."""
        for file in files:
            file.waits = all_unsettled and file.unsettled and not file.kept
            if file.taken is not None and not file.taken.reading.unreadable:
                self._by_content[file.taken.reading.sha256] = file
                self._from_before.pop(file.taken.reading.sha256, None)
        self._write()

    def move_to(self, here: str) -> None:
        """Another database is open: what was begun for the one before stays that one's."""
        self._from_before = self._all()
        self._by_content.clear()
        self._held = []
        self._here = here

    def forget(self, sha256: str) -> None:
        """What was said about a file is no longer wanted."""
        self._by_content.pop(sha256, None)
        self._from_before.pop(sha256, None)
        self._write()

    def listing(self) -> tuple[BegunSheet, ...]:
        """What waits, the latest first."""
        return tuple(_sheet(sha256, said) for sha256, said in reversed(self._all().items()) if self._is_here(said))

    def take_up(self, file: FileAtHand) -> FileAtHand | None:
        """The file that was begun with the very bytes of this one, as it now lies on disk; None where there is none.

        It is to be read again: what was answered is not in the new reading yet.
        """
        if file.taken is None:
            return None
        sha256 = file.taken.reading.sha256
        earlier, said = self._by_content.pop(sha256, None), None
        if sha256 in self._from_before and self._is_here(self._from_before[sha256]):
            said = self._from_before.pop(sha256)
        if earlier is not None and earlier is not file and earlier.begun:
            earlier.path, earlier.stop = file.path, file.stop
            earlier.taken, earlier.found = file.taken, file.found
            return earlier
        if said is not None and not file.begun:
            _take_over(file, said)
            return file
        return None

    def _all(self) -> dict[str, dict[str, Any]]:
        begun = {
            sha256: {**_said(file), "database": self._here}
            for sha256, file in self._by_content.items()
            if _to_be_kept(file)
        }
        return self._from_before | begun

    def _is_here(self, said: dict[str, Any]) -> bool:
        """Whether it was begun for the database that is open; what an earlier version kept does not tell."""
        return said["database"] in ("", self._here)

    def _write(self) -> None:
        self._held = [file for file in self._by_content.values() if _to_be_kept(file)]
        self._settings.keep(begun=json.dumps(dict(list(self._all().items())[-_MOST_KEPT:])))


def _to_be_kept(file: FileAtHand) -> bool:
    return file.begun or file.waits


def _sheet(sha256: str, said: dict[str, Any]) -> BegunSheet:
    return BegunSheet(
        sha256,
        Path(said["path"]),
        said["vendor"],
        len(said["given"]),
        said["marking"] is not None,
        said["asked"],
        bool(said["kept"]),
    )


def _said(file: FileAtHand) -> dict[str, Any]:
    reading = None if file.taken is None else file.taken.reading
    return {
        "path": str(file.path.absolute()),
        "vendor": (reading.vendor if reading is not None else None) or "",
        "asked": len(file.found.asked),
        "given": file.given,
        "words": file.words,
        "anew": sorted(file.anew),
        "nameless": file.nameless,
        "kept": file.kept,
        "said_before": file.said_before,
        "marking": None if file.marking is None else _plain(file.marking),
    }


def _take_over(file: FileAtHand, said: dict[str, Any]) -> None:
    file.given.update(said["given"])
    file.words.update(said["words"])
    file.anew.update(said["anew"])
    file.nameless, file.kept = said["nameless"], said["kept"]
    file.said_before.update(said["said_before"])
    file.marking = None if said["marking"] is None else _marking(said["marking"])


def _from_text(text: str) -> dict[str, dict[str, Any]]:
    """What an earlier window kept; nothing where it was written by other hands."""
    try:
        kept = json.loads(text or "{}")
        return {str(sha256): _checked(said) for sha256, said in kept.items()}
    except (ValueError, KeyError, TypeError, AttributeError):
        return {}


def _checked(said: dict[str, Any]) -> dict[str, Any]:
    """Every piece as the kind it must be; those that an earlier version did not keep are left empty."""
    marking = said.get("marking")
    return {
        "path": str(said.get("path", "")),
        "database": str(said.get("database", "")),
        "vendor": str(said.get("vendor", "")),
        "asked": int(said.get("asked", 0)),
        "given": _texts(said["given"]),
        "words": _texts(said["words"]),
        "anew": [str(key) for key in said.get("anew", ())],
        "nameless": bool(said["nameless"]),
        "kept": str(said.get("kept", "")),
        "said_before": _texts(said.get("said_before", {})),
        "marking": None if marking is None else _plain(_marking(marking)),
    }


def _texts(said: dict[Any, Any]) -> dict[str, str]:
    return {str(key): str(value) for key, value in said.items()}


def _plain(marking: Marking) -> dict[str, Any]:
    columns = [[column.index, column.role, column.unit] for column in marking.columns.values()]
    whole = {name: getattr(marking, name) for name in (*_ROWS, *_WHOLE)}
    return {"sheet": marking.sheet, "columns": columns, **whole}


def _marking(plain: dict[str, Any]) -> Marking:
    columns = [MarkedColumn(int(index), str(role), str(unit)) for index, role, unit in plain["columns"]]
    rows = (None if plain[name] is None else int(plain[name]) for name in _ROWS)
    whole = (None if plain[name] is None else str(plain[name]) for name in _WHOLE)
    header, first, last = rows
    currency, grade = whole
    return Marking(str(plain["sheet"]), {each.index: each for each in columns}, header, first, last, currency, grade)
