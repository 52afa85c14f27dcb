"""What a command line leaves to be done once it has been carried out."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class WindowWanted:
    """`run(argv)` returns this, in place of an exit status, when a window is to be opened on a database.

    `database` is a path or URL, None for the setting or the user's data folder. Commands never import the window:
    tracker/__main__.py, above both faces, opens it.
    """

    database: str | None = None
