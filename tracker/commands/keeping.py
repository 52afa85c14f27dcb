"""backup, restore and check: the database kept safe."""

import argparse
import sys
from pathlib import Path

from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.desk.keeping import backup, check, restore
from tracker.desk.opening import default_database


def describe(parser: argparse.ArgumentParser) -> None:
    """backup and restore name a file; check needs nothing."""
    command = parser.prog.rsplit(" ", 1)[-1]
    if command == "backup":
        parser.add_argument("file", metavar="FILE", type=Path, help="where the copy goes")
        parser.add_argument("--replace", action="store_true", help="write over what stands there, an older copy say")
    elif command == "restore":
        parser.add_argument(
            "file", metavar="FILE", type=Path, help="the copy to put back; what is there is kept beside it"
        )


def run(options: argparse.Namespace) -> Status:
    """Does the one that was asked for."""
    return {"backup": _backup, "restore": _restore, "check": _check}[options.command](options)


def _backup(options: argparse.Namespace) -> Status:
    with desk_for_reading(options) as desk:
        backup(desk, options.file, replace=options.replace)
    print(f"The database is copied to {options.file}.")
    return Status.DONE


def _restore(options: argparse.Namespace) -> Status:
    database = options.database or default_database()
    kept = restore(database, options.file)
    print(f"{database} now holds what {options.file} held." + (f" What stood there is kept in {kept}." if kept else ""))
    return Status.DONE


def _check(options: argparse.Namespace) -> Status:
    with desk_for_reading(options) as desk:
        found = check(desk)
    for fault in found:
        print(fault, file=sys.stderr)
    if not found:
        print("The database and all its references are sound.")
    return Status.FAILED if found else Status.DONE
