"""sample: a request is logged, something happens to it, readings are taken on it."""

import argparse

from tracker.commands import values
from tracker.commands.outcome import Status
from tracker.desk import readings, samples
from tracker.desk.opening import Desk, desk_on
from tracker.desk.sample_life import EventKind
from tracker.trade.exact import as_decimal
from tracker.trade.quantities import CaliperUnit, micrometres


def describe(parser: argparse.ArgumentParser) -> None:
    """Three things can be done with a sample."""
    actions = parser.add_subparsers(dest="action", metavar="log|event|reading", required=True)
    _describe_log(actions.add_parser("log", help="log a request; prints its number"))
    _describe_event(actions.add_parser("event", help="record what happened to a sample"))
    _describe_reading(actions.add_parser("reading", help="record readings taken on a sample"))


def run(options: argparse.Namespace) -> Status:
    """Does the one that was asked for."""
    desk = desk_on(options.database)
    try:
        done = {"log": _log, "event": _record, "reading": _measure}[options.action](desk, options)
    finally:
        desk.close()
    print(done)
    return Status.DONE


def _describe_log(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--vendor", metavar="NAME", required=True, help="who is asked")
    parser.add_argument("--grade", metavar="CODE", required=True, help="the grade asked for, for example SBS")
    parser.add_argument("--caliper-pt", metavar="N", type=values.positive, help="the caliper in points")
    parser.add_argument("--quantity", metavar="TEXT", default="", help="how much, for example '20 sheets 28 x 40 in'")
    parser.add_argument("--needed", metavar="DATE", type=values.day, help="the day it is needed by")
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day it was asked for; else today")
    parser.add_argument("--for", dest="for_what", metavar="TEXT", default="", help="the carton it is for")


def _describe_event(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("number", metavar="NUMBER", type=int, help="the sample's number")
    parser.add_argument("kind", metavar="KIND", choices=[kind.value for kind in EventKind], help=", ".join(EventKind))
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day it happened; else today")
    parser.add_argument("--until", metavar="DATE", type=values.day, help="with 'promised': the day it is promised for")
    parser.add_argument("--note", metavar="TEXT", default="", help="anything worth keeping")


def _describe_reading(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("number", metavar="NUMBER", type=int, help="the sample's number")
    parser.add_argument("property", metavar="PROPERTY", help="what was measured, for example caliper or grammage")
    parser.add_argument("values", metavar="VALUE", nargs="+", help="the readings")
    parser.add_argument(
        "--unit", metavar="UNIT", default="", help="their unit, for example pt; else the property's own"
    )
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day they were taken; else today")


def _log(desk: Desk, options: argparse.Namespace) -> str:
    points = options.caliper_pt
    caliper = None if points is None else as_decimal(micrometres(points, CaliperUnit.POINT))
    logged = samples.log(
        desk,
        options.vendor,
        options.grade,
        caliper,
        options.quantity,
        options.needed,
        options.on,
        options.for_what,
    )
    return str(logged.number)


def _record(desk: Desk, options: argparse.Namespace) -> str:
    kind = EventKind(options.kind)
    edit = samples.record(desk, options.number, kind, options.on, options.until, options.note)
    return f"{edit.text[0].upper()}{edit.text[1:]}."


def _measure(desk: Desk, options: argparse.Namespace) -> str:
    edit = readings.add(desk, options.number, options.property, options.values, options.unit, options.on)
    return f"{edit.text}."
