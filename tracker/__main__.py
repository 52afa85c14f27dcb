"""python -m tracker: a command, or without one the window."""

import signal

if __name__ == "__main__":
    # While the program is loaded nothing is begun that could be told of: Ctrl-C ends it at once, without a traceback.
    signal.signal(signal.SIGINT, signal.SIG_DFL)

import gc
import sys
from collections.abc import Sequence

from tracker.commands import run
from tracker.commands.outcome import PicturesWanted, WindowWanted


def main(argv: Sequence[str] | None = None) -> int:
    """Carry out the command line; exit statuses are those of the commands (0 done, 1 failed, 2 wrong use, 3 asked)."""
    signal.signal(signal.SIGINT, signal.default_int_handler)
    outcome = run(sys.argv[1:] if argv is None else list(argv))
    if isinstance(outcome, WindowWanted):
        return open_the_window(outcome)
    if isinstance(outcome, PicturesWanted):
        return leave_pictures(outcome)
    # The process ends here: looking once more through all that was loaded, for garbage, would only take time.
    gc.freeze()
    return outcome


def open_the_window(wanted: WindowWanted) -> int:
    """The window on a database; where this machine can show none, a sentence on what is missing, then the fallback."""
    from tracker.window.display import why_no_window

    reason = why_no_window()
    if reason is None:
        from tracker.window.application import open_window

        return open_window(wanted.database)
    print(reason, file=sys.stderr)
    return 1 if wanted.otherwise is None else leave_pictures(wanted.otherwise)


def leave_pictures(wanted: PicturesWanted) -> int:
    """The report, a summary, and every screen as a picture drawn without a display."""
    from tracker.window.display import why_no_drawing

    leave_report(wanted)
    reason = why_no_drawing()
    if reason is not None:
        print(f"The pictures could not be drawn. {reason}", file=sys.stderr)
        return 1
    from tracker.window.render import render_places

    pictures = render_places(wanted.database, wanted.folder)
    print(f"{len(pictures)} pictures of the screens are in {wanted.folder}")
    return 0


def leave_report(wanted: PicturesWanted) -> None:
    from tracker.desk.opening import desk_on
    from tracker.desk.reporting import leave_papers

    desk = desk_on(wanted.database)
    try:
        papers = leave_papers(desk, wanted.folder)
    finally:
        desk.close()
    print(f"{', '.join(paper.name for paper in papers)} are in {wanted.folder}")


if __name__ == "__main__":
    sys.exit(main())
