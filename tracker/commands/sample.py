"""sample: all that can be done with one sample, or with the requests of one vendor."""

import argparse
import sys
from collections.abc import Callable

from tracker.commands import sample_checks, sample_events, sample_log, sample_papers
from tracker.commands.line import add_common
from tracker.commands.opened import desk_for_reading, desk_for_writing
from tracker.commands.outcome import Status, WrongUse
from tracker.desk.opening import Desk

Action = Callable[[Desk, argparse.Namespace], str]

# Each says how it is asked for, and what it does; what it returns is printed.
_ACTIONS: dict[str, tuple[str, Callable[[argparse.ArgumentParser], None], Action]] = {
    "log": ("log requests; prints their numbers", sample_log.describe_log, sample_log.log),
    "template": ("keep a request under a name, list those kept", sample_log.describe_template, sample_log.template),
    "board": ("say which of the vendor's boards it is", sample_log.describe_board, sample_log.board),
    "contact": ("say whom to write to at a vendor", sample_papers.describe_contact, sample_papers.contact),
    "event": ("record what happened to a sample", sample_events.describe_event, sample_events.event),
    "attach": ("keep a photograph or data sheet with it", sample_events.describe_attach, sample_events.attach),
    "show": ("tell all that is known of one sample", sample_checks.describe_show, sample_checks.show),
    "reading": ("record readings taken on it", sample_checks.describe_reading, sample_checks.reading),
    "claim": ("keep what its data sheet claims", sample_checks.describe_claim, sample_checks.claim),
    "verdict": ("approve or reject its board", sample_checks.describe_verdict, sample_checks.verdict),
    "labels": ("print labels", sample_papers.describe_labels, sample_papers.labels),
    "chase": ("draft a message to each vendor that is due", sample_papers.describe_chase, sample_papers.chase),
    "calendar": ("write what is owed as a calendar file", sample_papers.describe_calendar, sample_papers.calendar),
}


def describe(parser: argparse.ArgumentParser) -> None:
    """What can be done with a sample."""
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True, title="actions")
    for name, (summary, describe_action, _) in _ACTIONS.items():
        action = actions.add_parser(name, help=summary, description=f"{summary[0].upper()}{summary[1:]}.")
        add_common(action, top=False)
        describe_action(action)


def run(options: argparse.Namespace) -> Status:
    """Does the one that was asked for."""
    try:
        with (desk_for_writing if _begins(options) else desk_for_reading)(options) as desk:
            print(_ACTIONS[options.action][2](desk, options))
    except WrongUse as problem:
        print(problem, file=sys.stderr)
        return Status.WRONG_USE
    return Status.DONE


def _begins(options: argparse.Namespace) -> bool:
    """It can be the first thing that is kept; all else is done with a sample or template that is there already."""
    return options.action in ("log", "contact") or (options.action == "template" and options.name is not None)
