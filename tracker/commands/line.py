"""The command line: which command is asked for, its exit status, and what a user sees when something fails."""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from collections.abc import Callable, Sequence
from typing import NoReturn

from tracker.commands import values
from tracker.commands.outcome import Outcome, Status, WindowWanted
from tracker.desk.trouble import sentence_for

# Each module offers `describe(parser)` and `run(options) -> Outcome`; it is imported only when its command is asked
# for, so that no command waits for what another one needs.
_COMMANDS: dict[str, tuple[str, str]] = {
    "import": ("take_in", "read vendors' price sheets and store their offers"),
    "quotes": ("quotes", "list the offers current on a day, on one footing and judged"),
    "level": ("level", "set a grade's market level from a day on, or list them"),
    "rate": ("rate", "set your own exchange rate for a day"),
    "sample": ("sample", "log a sample request, what happened to it, or readings taken on it"),
    "samples": ("samples", "list sample requests with their state and age"),
    "waits": ("waits", "tell how long vendors take"),
    "report": ("report", "write the buyer's report as a PDF or a workbook"),
    "demo": ("demo", "make a fresh demo database and open it"),
    "backup": ("keeping", "write a consistent copy of the database, also while it is in use"),
    "restore": ("keeping", "put a backup in the database's place, verified first"),
    "check": ("keeping", "check the database and its references"),
}


def run(arguments: Sequence[str]) -> Outcome:
    """Runs one command and returns its exit status, or what is left to be done; without a command that is the window.

    A user's trouble becomes one sentence on standard error.
    """
    _speak_utf8()
    try:
        options = _parser(arguments).parse_args(arguments)
        return WindowWanted(options.database) if options.command is None else _carry_out(options)
    except SystemExit as stop:
        return stop.code if isinstance(stop.code, int) else Status.WRONG_USE
    except KeyboardInterrupt:
        print("Stopped; nothing that was not finished is kept.", file=sys.stderr)
        return Status.FAILED


def _carry_out(options: argparse.Namespace) -> Outcome:
    action: Callable[[argparse.Namespace], Outcome] = options.run
    try:
        outcome = action(options)
        sys.stdout.flush()
        return outcome
    except BrokenPipeError:
        # Who read the results has enough; at its end Python would complain that it can't write the rest.
        sys.stdout = open(os.devnull, "w", encoding="utf-8")  # noqa: PTH123, SIM115
        return Status.FAILED
    except Exception as problem:
        if options.debug:
            raise
        print(sentence_for(problem) or _not_installed(problem) or _our_fault(problem), file=sys.stderr)
        return Status.FAILED


def _not_installed(problem: Exception) -> str:
    """Started with another Python than the one it was installed for, the program lacks what it stands on."""
    package = (problem.name or "").partition(".")[0] if isinstance(problem, ModuleNotFoundError) else ""
    if not package or package == __name__.partition(".")[0]:
        return ""
    return (
        f"The package “{package}”, which this program needs, is not installed for the Python at {sys.executable}. "
        "Install the program as README.md says, and start it with the Python of that environment."
    )


def _our_fault(problem: Exception) -> str:
    return (
        f"That failed because of a fault in this program ({type(problem).__name__}: {problem}). "
        "Nothing half done was kept. Run it again with --debug and report what it prints."
    )


class _Parser(argparse.ArgumentParser):
    """Wrong use is told in a sentence; the lines of usage that would bury it are a --help away."""

    def error(self, message: str) -> NoReturn:
        said = message.removeprefix("argument ")
        missing = said.removeprefix("the following arguments are required: ")
        if missing != said:
            said = f"{missing} is missing"
        print(f"{said[0].upper()}{said[1:]}. See {self.prog} --help.", file=sys.stderr)
        self.exit(Status.WRONG_USE)


def _parser(arguments: Sequence[str]) -> argparse.ArgumentParser:
    parser = _Parser(
        prog="python -m tracker",
        description="Vendors' paperboard price sheets on one footing, and every sample accounted for. "
        "Without a command the window opens.",
        epilog="Exit status: 0 done; 1 failed; 2 wrong use or unreadable input; "
        "3 done, but a person is asked something.",
    )
    add_common(parser, top=True)
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", title="commands")
    for name, (module, summary) in _COMMANDS.items():
        command = commands.add_parser(name, help=summary, description=f"{summary[0].upper()}{summary[1:]}.")
        add_common(command, top=False)
        if name in arguments:
            loaded = importlib.import_module(f"tracker.commands.{module}")
            loaded.describe(command)
            command.set_defaults(run=loaded.run)
    return parser


def add_common(parser: argparse.ArgumentParser, *, top: bool) -> None:
    """The options that every command takes, before the command's name or after it."""
    default: dict[str, object] = {} if top else {"default": argparse.SUPPRESS}
    parser.add_argument(
        "--database",
        metavar="PATH-OR-URL",
        type=values.database,
        help="a SQLite file or postgresql+psycopg://…; else the one your settings name, else your data folder",
        **default,  # type: ignore[arg-type]
    )
    parser.add_argument("--debug", action="store_true", help="show where in the program a fault arose", **default)  # type: ignore[arg-type]


def _speak_utf8() -> None:
    """Standard output carries µ and ² on every system, whatever its code page, and every byte of a file's name."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(encoding="utf-8", errors="backslashreplace")
