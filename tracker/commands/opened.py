"""The database a command works on: one that only looks makes none, and one that makes it says so."""

import argparse
import sys
from collections.abc import Iterator
from contextlib import contextmanager

from tracker.desk.opening import Desk, desk_on, is_there, refuse_missing


@contextmanager
def desk_for_reading(options: argparse.Namespace) -> Iterator[Desk]:
    """A desk on a database that is there. Trouble where there is none: its name is most often mistyped."""
    desk = desk_on(options.database)
    refuse_missing(desk)
    try:
        yield desk
    finally:
        desk.close()


@contextmanager
def desk_for_writing(options: argparse.Namespace) -> Iterator[Desk]:
    """A desk on a database that is made once something is kept in it; that it was made is told on standard error."""
    desk = desk_on(options.database)
    there = is_there(desk)
    try:
        yield desk
    finally:
        desk.close()
        if not there and is_there(desk):
            print(f"There was no database {desk.database}, so a new one was made there.", file=sys.stderr)
