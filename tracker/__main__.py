"""python -m tracker: a command, or without one the window."""

import sys
from collections.abc import Sequence

from tracker.commands import run
from tracker.commands.outcome import WindowWanted


def main(argv: Sequence[str] | None = None) -> int:
    """Carry out the command line; exit statuses are those of the commands (0 done, 1 failed, 2 wrong use, 3 asked)."""
    outcome = run(sys.argv[1:] if argv is None else list(argv))
    return open_the_window(outcome) if isinstance(outcome, WindowWanted) else outcome


def open_the_window(wanted: WindowWanted) -> int:
    """The window on a database; where this machine can show none, a sentence that says what is missing."""
    from tracker.window.display import why_no_window

    reason = why_no_window()
    if reason:
        print(reason, file=sys.stderr)
        return 1
    from tracker.window.application import open_window

    return open_window(wanted.database)


if __name__ == "__main__":
    sys.exit(main())
