"""sample event, attach: what happened to a sample, and what is kept with it."""

import argparse
from pathlib import Path

from tracker.commands import values
from tracker.commands.outcome import WrongUse
from tracker.desk import attachments, samples
from tracker.desk.opening import Desk
from tracker.desk.sample_life import EventKind
from tracker.desk.sample_numbers import number_said


def describe_event(parser: argparse.ArgumentParser) -> None:
    """The kind decides which options count."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("kind", metavar="KIND", choices=[kind.value for kind in EventKind], help=", ".join(EventKind))
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day it happened; else today")
    parser.add_argument("--until", metavar="DATE", type=values.day, help="with 'promised': the day it is promised for")
    parser.add_argument("--carrier", metavar="NAME", default="", help="with 'sent': who carries it")
    parser.add_argument("--tracking", metavar="NUMBER", default="", help="with 'sent': the carrier's number")
    parser.add_argument("--note", metavar="TEXT", default="", help="anything worth keeping")


def describe_attach(parser: argparse.ArgumentParser) -> None:
    """Photographs, data sheets."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("files", metavar="FILE", nargs="+", type=Path, help="the files to keep with it")


def event(desk: Desk, options: argparse.Namespace) -> str:
    """Records it."""
    if options.kind == EventKind.PROMISED and options.until is None:
        raise WrongUse("Say which day it is promised for: --until DATE.")
    if options.kind != EventKind.PROMISED and options.until is not None:
        raise WrongUse("--until goes with 'promised': the day it is promised for.")
    if options.kind != EventKind.SENT and (options.carrier or options.tracking):
        raise WrongUse("--carrier and --tracking go with 'sent': record when it was sent.")
    edit = samples.record(
        desk,
        number_said(options.number),
        EventKind(options.kind),
        options.on,
        options.until,
        options.note,
        options.carrier,
        options.tracking,
    )
    return f"{edit.text[0].upper()}{edit.text[1:]}."


def attach(desk: Desk, options: argparse.Namespace) -> str:
    """Keeps the files."""
    edits = [attachments.attach(desk, number_said(options.number), path) for path in options.files]
    return "\n".join(f"{edit.text[0].upper()}{edit.text[1:]}." for edit in edits)
