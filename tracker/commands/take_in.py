"""import: vendors' files in, what was understood out, and stored unless it is a dry run."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import partial
from pathlib import Path

from tracker.commands import values
from tracker.commands.import_lines import lines_read
from tracker.commands.import_words import nothing_found, outcome, questions, refusals
from tracker.commands.opened import desk_for_writing
from tracker.commands.outcome import Status
from tracker.commands.printing import print_json
from tracker.commands.vendor_said import vendor_said
from tracker.desk.collecting import no_collecting
from tracker.desk.contract import file_object
from tracker.desk.files import answers as answers_of
from tracker.desk.files import find, name_vendor
from tracker.desk.opening import Desk, desk_if_there, is_there, load_store
from tracker.desk.questions import answer_kept
from tracker.desk.take_in import Manner, TakenIn, keep_ready, read, read_again, stand_down, store
from tracker.desk.trouble import Trouble
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers, State

Told = tuple[TakenIn, Trouble | None]
"""What a file yielded, and why it could not be stored."""


def describe(parser: argparse.ArgumentParser) -> None:
    """The options; those that answer questions do so for every file named."""
    parser.add_argument(
        "files", nargs="+", metavar="FILE", type=Path, help="price sheets: .xlsx .xlsm .xls .xlsb .ods .csv .tsv"
    )
    parser.add_argument("--dry-run", action="store_true", help="read and show each line, but store nothing")
    parser.add_argument("--json", action="store_true", help="print one JSON document with every line and its notes")
    answers = parser.add_argument_group("answers to what a sheet leaves open")
    answers.add_argument("--vendor", metavar="NAME", help="who quotes, where the sheet does not say")
    answers.add_argument("--currency", metavar="CODE", type=values.currency, help="the currency meant, for example USD")
    answers.add_argument(
        "--per",
        metavar="CODE",
        choices=[basis.value for basis in Basis],
        help=f"what prices are per that name no unit: {', '.join(basis.value for basis in Basis)}",
    )
    answers.add_argument("--ton", choices=("short", "metric"), help="which ton 'ton' means")
    answers.add_argument("--received", metavar="DATE", type=values.day, help="when the sheet came; else today")
    answers.add_argument(
        "--grade",
        metavar="WORDS=CODE",
        action="append",
        default=[],
        type=_grade_answer,
        help="what the vendor's words for a board mean, for example 'Fenlight White=SBS'; may be repeated",
    )


def run(options: argparse.Namespace) -> Status:
    """Reads each file, prints the result, stores what was accepted unless it is a dry run."""
    with no_collecting():
        with _reader_ready(), _desk(options) as desk:
            if desk is not None and is_there(desk) and options.vendor:
                options.vendor = vendor_said(desk, options.vendor)
            answers = _answers(options)
            results = [_take_in(desk, path, answers, options) for path in options.files]
        _show(results, options)
    return _status(results)


@contextmanager
def _reader_ready() -> Iterator[None]:
    """The process that reads starts while this one still loads what it needs for the database."""
    keep_ready()
    try:
        yield
    finally:
        stand_down()


@contextmanager
def _desk(options: argparse.Namespace) -> Iterator[Desk | None]:
    """A dry run uses what an earlier database remembers, and makes none."""
    if options.dry_run and desk_if_there(options.database) is None:
        yield None
        return
    with desk_for_writing(options) as desk:
        yield desk


def _show(results: list[Told], options: argparse.Namespace) -> None:
    if options.json:
        print_json({"files": [file_object(taken) for taken, _ in results]}, 4)
    for taken, trouble in results:
        if trouble is None:
            _tell(taken, plain=not options.json, dry=options.dry_run)
        else:
            print(f"{taken.reading.file}: {trouble}", file=sys.stderr)


def _take_in(desk: Desk | None, path: Path, answers: Answers, options: argparse.Namespace) -> Told:
    """One file that can't be stored does not keep the others out."""
    taken = read(desk, path, answers, Manner(meanwhile=None if desk is None else partial(load_store, desk)))
    if options.dry_run or desk is None or taken.reading.unreadable:
        return taken, None
    try:
        if taken.imported_on is None:
            store(desk, taken, remember=answers.settled)
        else:
            taken = _answer_kept(desk, _as_kept(desk, taken, answers), answers)
    except Trouble as trouble:
        if options.debug:
            raise
        return taken, trouble
    return taken, None


def _as_kept(desk: Desk, taken: TakenIn, given: Answers) -> TakenIn:
    """The file read with what was answered about it since, so that a settled question is not asked for ever."""
    if not taken.reading.questions:
        return taken
    known = answers_of(desk, find(desk, taken.reading.sha256).id)
    return read_again(desk, taken, replace(known, settled={**known.settled, **given.settled}))


def _answer_kept(desk: Desk, taken: TakenIn, answers: Answers) -> TakenIn:
    """What was left open when the file was taken in: who sent it, and its questions."""
    named, kept = answers.settled.get("vendor"), find(desk, taken.reading.sha256)
    # A sheet whose rows each name their vendor has none of its own, and needs none.
    if named and kept.vendor is None and any(line.offer.vendor in (None, named) for line in taken.reading.lines):
        print(f"{name_vendor(desk, kept.id, named).text}.", file=sys.stderr)
    let_through = answer_kept(desk, taken.reading.sha256, answers.settled)
    return replace(taken, imported_on=None) if let_through else taken


def _answers(options: argparse.Namespace) -> Answers:
    settled: dict[str, str] = dict(options.grade)
    for key in ("vendor", "currency", "ton"):
        value = getattr(options, key)
        if value:
            settled[key] = " ".join(value.split())
    if options.per:
        settled["basis:"] = options.per
    return Answers(settled, options.received)


def _grade_answer(text: str) -> tuple[str, str]:
    words, equals, code = text.rpartition("=")
    if not equals or not words.strip() or not code.strip():
        raise argparse.ArgumentTypeError(f"'{text}' is not WORDS=CODE: write it as 'Fenlight White=SBS'")
    return f"grade:{' '.join(words.split()).casefold()}", values.grade(code)


def _tell(taken: TakenIn, *, plain: bool, dry: bool) -> None:
    """The same in sentences: the outcome on standard output (unless JSON stands there), questions on standard error."""
    reading = taken.reading
    if reading.unreadable:
        print(reading.unreadable, file=sys.stderr)
        return
    if plain:
        print(outcome(taken, dry=dry))
        for line in lines_read(taken) if dry else ():
            print(line)
    asides = [*nothing_found(taken), *questions(taken, dry=dry), *(refusals(taken) if plain else ())]
    for sentence in asides:
        print(sentence, file=sys.stderr)


def _status(results: list[Told]) -> Status:
    if any(trouble is not None for _, trouble in results):
        return Status.FAILED
    if any(taken.reading.unreadable for taken, _ in results):
        return Status.WRONG_USE
    if any(line.state is not State.ACCEPTED for taken, _ in results for line in taken.reading.lines):
        return Status.ASKED
    return Status.DONE
