"""How a command line ends: with an exit status, or with something left to be done above both faces.

Commands never import the window: `run(argv)` returns WindowWanted or PicturesWanted in place of an exit status, and
tracker/__main__.py sees to it.
"""

from dataclasses import dataclass
from enum import IntEnum
from pathlib import Path


class Status(IntEnum):
    """Exit statuses. WRONG_USE also stands for input that can't be read, ASKED for work done that leaves a question."""

    DONE = 0
    FAILED = 1
    WRONG_USE = 2
    ASKED = 3


@dataclass(frozen=True, slots=True)
class PicturesWanted:
    """Pictures of every screen, on a database, are to be left in a folder: the demo where there is no display."""

    database: str
    folder: Path


@dataclass(frozen=True, slots=True)
class WindowWanted:
    """A window is to be opened on a database: a path or URL, None for the setting or the user's data folder.

    `otherwise` is done where this machine can show no window; without it the reason is said and that is all.
    """

    database: str | None = None
    otherwise: PicturesWanted | None = None


Outcome = int | WindowWanted | PicturesWanted


class WrongUse(Exception):
    """Options that don't go together, or one that is missing; the message says which."""
