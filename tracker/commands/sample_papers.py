"""sample labels, chase, calendar, contact: what is written out about samples."""

import argparse
from pathlib import Path

from tracker.commands.outcome import WrongUse
from tracker.desk import contacts, sample_papers
from tracker.desk.chase_templates import make_own
from tracker.desk.chasing import Drafted, chases, draft, sign_as, signature
from tracker.desk.opening import Desk
from tracker.desk.sample_numbers import number_said
from tracker.desk.sample_papers import label_sheets

LANGUAGES = ("en", "de", "fr", "es")


def describe_labels(parser: argparse.ArgumentParser) -> None:
    """Which samples, on which labels."""
    parser.add_argument("file", metavar="FILE.pdf", type=Path, help="the PDF to write")
    parser.add_argument("numbers", metavar="NUMBER", nargs="+", help="the samples' numbers")
    parser.add_argument(
        "--sheet", metavar="SIZE", choices=tuple(label_sheets()), default="a4-21", help=", ".join(label_sheets())
    )


def describe_chase(parser: argparse.ArgumentParser) -> None:
    """All vendors that are due, or one that is named."""
    parser.add_argument("--vendor", metavar="NAME", help="this vendor, due or not; else every one that is due today")
    parser.add_argument("--folder", metavar="DIR", type=Path, default=Path(), help="where the drafts go; else here")
    parser.add_argument("--buyer", metavar="NAME", default="", help="who signs; kept for the next time")
    parser.add_argument("--list", action="store_true", help="only tell who is due")
    parser.add_argument("--own-template", metavar="LANG", choices=LANGUAGES, help="make a template to change by hand")


def describe_calendar(parser: argparse.ArgumentParser) -> None:
    """Where to."""
    parser.add_argument("file", metavar="FILE.ics", type=Path, help="the calendar file to write")


def describe_contact(parser: argparse.ArgumentParser) -> None:
    """Of one vendor."""
    parser.add_argument("vendor", metavar="VENDOR", help="the vendor")
    parser.add_argument("--name", metavar="NAME", default="", help="the person")
    parser.add_argument("--mail", metavar="ADDRESS", default="", help="the person's mail address")
    parser.add_argument("--language", metavar="LANG", choices=LANGUAGES, default="en", help=", ".join(LANGUAGES))


def labels(desk: Desk, options: argparse.Namespace) -> str:
    """Writes the PDF."""
    numbers = [number_said(text) for text in options.numbers]
    sample_papers.write_labels(desk, numbers, options.sheet, options.file)
    return f"Wrote {len(numbers)} label{'s' * (len(numbers) > 1)} to {options.file}."


def _told(drafted: Drafted) -> str:
    """Where the draft is, what it lacks, and which commands tell that it was sent."""
    message = drafted.message
    lacks = "" if message.to else f' No address is known: sample contact "{message.vendor}" --mail ADDRESS.'
    numbers = ", ".join(map(str, message.numbers))
    return f"{drafted.path}: nothing was sent.{lacks} Once it is sent: sample event NUMBER chased, for {numbers}."


def chase(desk: Desk, options: argparse.Namespace) -> str:
    """Drafts the messages, or tells who is due."""
    if options.own_template:
        return f"Change {make_own(options.own_template)}; it is used from now on."
    due = chases(desk)
    if options.list:
        told = [f"{each.vendor}: {len(each.due)} due, {len(each.owed)} owed" for each in due]
        return "\n".join(told) or "No vendor is due for a chase today."
    named = [options.vendor] if options.vendor else [each.vendor for each in due]
    if options.buyer:
        sign_as(desk, options.buyer)
    if named and not signature(desk):
        raise WrongUse("Say who signs: --buyer NAME; it is kept for the next time.")
    drafted = [draft(desk, vendor, options.folder, options.buyer) for vendor in named]
    return "\n".join(map(_told, drafted)) or "No vendor is due for a chase today."


def calendar(desk: Desk, options: argparse.Namespace) -> str:
    """Writes the file."""
    count = sample_papers.write_calendar(desk, options.file)
    return f"Wrote {count} to-do{'s' * (count != 1)} to {options.file}."


def contact(desk: Desk, options: argparse.Namespace) -> str:
    """Keeps it."""
    edit = contacts.set_contact(desk, options.vendor, options.name, options.mail, options.language)
    return f"{edit.text[0].upper()}{edit.text[1:]}."
