"""sample log, template, board: asking for samples, one or many in one go."""

import argparse
import sys
from decimal import Decimal

from tracker.commands import values
from tracker.commands.outcome import WrongUse
from tracker.commands.vendor_said import vendor_said
from tracker.desk import sample_requests, sample_templates, samples
from tracker.desk.opening import Desk
from tracker.desk.sample_numbers import number_said
from tracker.desk.sample_requests import Enquiry
from tracker.trade.exact import as_decimal
from tracker.trade.grades import grades
from tracker.trade.quantities import CaliperUnit, micrometres


def describe_log(parser: argparse.ArgumentParser) -> None:
    """--vendor and --caliper-pt may be given several times: every vendor is asked for every caliper."""
    _describe_enquiry(parser)
    parser.add_argument("--template", metavar="NAME", help="as the template says, but for what is said here")


def describe_template(parser: argparse.ArgumentParser) -> None:
    """Without --vendor and --grade the templates are listed."""
    parser.add_argument("name", metavar="NAME", nargs="?", help="what to call it; without a name, all are listed")
    parser.add_argument("--forget", action="store_true", help="take it away")
    _describe_enquiry(parser)


def describe_board(parser: argparse.ArgumentParser) -> None:
    """The vendor's own name, as its price sheet writes it."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("board", metavar="BOARD", help="the vendor's name for the board")


def log(desk: Desk, options: argparse.Namespace) -> str:
    """Logs the requests; the numbers, one a line."""
    if not options.template and not (options.vendor and options.grade):
        raise WrongUse("Say --vendor and --grade, or a --template that names them.")
    enquiry = _enquiry(desk, options)
    logged = sample_requests.log_all(desk, enquiry)
    for number in logged.numbers:
        print(_logged(samples.sample(desk, number)), file=sys.stderr)
    return "\n".join(str(number) for number in logged.numbers)


def _logged(sample: samples.Sample) -> str:
    """What was understood, so that a slip is seen at once; the bare number is for whoever called."""
    parts = [f"Logged no. {sample.number}: {sample.vendor}", sample.board, sample.grade]
    parts += ["" if sample.caliper_um is None else f"{float(sample.caliper_um) / 25.4:.4g} pt", sample.quantity]
    parts += [
        f"needed by {sample.needed.isoformat()}" if sample.needed else "",
        sample.for_what and f"for {sample.for_what}",
    ]
    return ", ".join(part for part in parts if part) + "."


def template(desk: Desk, options: argparse.Namespace) -> str:
    """Keeps, forgets or lists."""
    if options.name is None:
        return "\n".join(_told(each) for each in sample_templates.templates(desk)) or "No template is kept."
    if options.forget:
        return _sentence(sample_templates.forget(desk, options.name).text)
    if not (options.vendor and options.grade):
        raise WrongUse("Say --vendor and --grade: they are what a template keeps.")
    options.template = None
    return _sentence(sample_templates.save(desk, options.name, _enquiry(desk, options)).text)


def board(desk: Desk, options: argparse.Namespace) -> str:
    """Names the board."""
    return _sentence(sample_requests.name_board(desk, number_said(options.number), options.board).text)


def _describe_enquiry(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--vendor", metavar="NAME", action="append", help="who is asked; may be given several times")
    parser.add_argument(
        "--grade", metavar="CODE", type=values.grade, help=f"the grade asked for: one of {', '.join(grades())}"
    )
    parser.add_argument(
        "--caliper-pt", metavar="N", type=values.positive, nargs="+", action="extend", help="calipers in points"
    )
    parser.add_argument("--board", metavar="NAME", help="the vendor's own name of the board")
    parser.add_argument(
        "--quantity", metavar="TEXT", help="form, size and how many: '20 sheets 28 x 40 in', '1 roll end'"
    )
    parser.add_argument("--needed", metavar="DATE", type=values.day, help="the day it is needed by")
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day it was asked for; else today")
    parser.add_argument("--for", dest="for_what", metavar="TEXT", help="the carton it is for")
    parser.add_argument("--contact", metavar="NAME", help="the person asked, where not the vendor's usual one")


def _enquiry(desk: Desk, options: argparse.Namespace) -> Enquiry:
    day = options.on or desk.today
    base = sample_templates.template(desk, options.template).used_on(day) if options.template else Enquiry((), "")
    return Enquiry(
        vendors=tuple(vendor_said(desk, name) for name in options.vendor) if options.vendor else base.vendors,
        grade=options.grade or base.grade,
        calipers_um=_calipers(options.caliper_pt) or base.calipers_um,
        board=options.board or base.board,
        quantity=options.quantity or base.quantity,
        for_what=options.for_what or base.for_what,
        needed=options.needed or base.needed,
        on=day,
        contact=options.contact or base.contact,
    )


def _calipers(points: list[Decimal] | None) -> tuple[Decimal, ...]:
    return tuple(as_decimal(micrometres(each, CaliperUnit.POINT)) for each in points or ())


def _told(template: sample_templates.SampleTemplate) -> str:
    enquiry = template.enquiry
    calipers = ", ".join(f"{float(caliper) / 25.4:.4g} pt" for caliper in enquiry.calipers_um)
    asked = " ".join(part for part in (enquiry.grade, calipers) if part)
    return f"{template.name}: {asked} from {', '.join(enquiry.vendors)}"


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}."
