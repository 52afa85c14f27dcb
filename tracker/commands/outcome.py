"""What a command line leaves to be done once it has been carried out.

Commands never import the window: `run(argv)` returns one of these in place of an exit status, and
tracker/__main__.py, above both faces, sees to it.
"""

from dataclasses import dataclass
from pathlib import Path


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
