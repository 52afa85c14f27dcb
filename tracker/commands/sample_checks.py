"""sample show, reading, claim, verdict: what a sample measured, and what that means."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from tracker.commands import values
from tracker.commands.outcome import WrongUse
from tracker.commands.printing import json_text
from tracker.desk import attachments, claims, readings, samples, verdicts
from tracker.desk.opening import Desk
from tracker.desk.sample_checks import check_sample
from tracker.desk.sample_json import record_object
from tracker.desk.sample_numbers import number_said
from tracker.desk.samples import Sample, chance_words

if TYPE_CHECKING:
    from tracker.desk.sample_checks import PropertyChecked
    from tracker.desk.samples import SampleEvent


def describe_show(parser: argparse.ArgumentParser) -> None:
    """For a person or a program."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def describe_reading(parser: argparse.ArgumentParser) -> None:
    """Readings, how they were taken."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("property", metavar="PROPERTY", help="what was measured, for example caliper or grammage")
    parser.add_argument("values", metavar="VALUE", nargs="*", help="the readings")
    parser.add_argument(
        "--take-back", action="store_true", help="take these readings off again; without a VALUE all of this property"
    )
    parser.add_argument(
        "--unit", metavar="UNIT", default="", help="their unit, for example pt; else the property's own"
    )
    parser.add_argument("--on", metavar="DATE", type=values.day, help="the day they were taken; else today")
    air = parser.add_mutually_exclusive_group()
    air.add_argument("--conditioned", action="store_true", help="taken at 23 °C and 50 %% relative humidity")
    air.add_argument("--unconditioned", action="store_true", help="not so; marked wherever they are shown")
    parser.add_argument("--method", metavar="TEXT", default="", help="standard or instrument, where worth keeping")


def describe_claim(parser: argparse.ArgumentParser) -> None:
    """Caliper and basis weight come from the vendor's price sheet; what else is claimed is typed."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("property", metavar="PROPERTY", help="what is claimed, for example brightness")
    parser.add_argument("value", metavar="VALUE", nargs="?", help="the figure claimed")
    parser.add_argument("--take-back", action="store_true", help="forget what was typed; the price sheet's word counts")
    parser.add_argument("--unit", metavar="UNIT", default="", help="its unit; else the property's own")
    parser.add_argument("--source", metavar="TEXT", default="", help="who says so; else 'data sheet'")


def describe_verdict(parser: argparse.ArgumentParser) -> None:
    """With words either way."""
    parser.add_argument("number", metavar="NUMBER", help="the sample's number")
    parser.add_argument("verdict", metavar="VERDICT", choices=["approved", "rejected"], help="approved or rejected")
    parser.add_argument("words", metavar="WORDS", nargs="?", default="", help="approved for what, or rejected why")


def show(desk: Desk, options: argparse.Namespace) -> str:
    """The whole record of one sample."""
    number = number_said(options.number)
    found, checked, kept = (
        samples.sample(desk, number),
        check_sample(desk, number, us_units=not options.json),
        attachments.attachments(desk, number),
    )
    if options.json:
        return json_text(record_object(found, checked.properties, kept), 3)
    lines = [_headline(found), *(f"  {each.on.isoformat()}  {_event(each)}" for each in found.events)]
    lines += [f"  {sentence}" for each in checked.properties for sentence in _told(each)]
    lines += [f"  {checked.why_not}"] if checked.why_not else []
    lines += [f"  {each.name}, {each.size:,} bytes" for each in kept]
    lines += [f"  {found.verdict[0].upper()}{found.verdict[1:]}."] if found.verdict else []
    return "\n".join(lines)


def reading(desk: Desk, options: argparse.Namespace) -> str:
    """Stores them and says what they come to, or takes them off."""
    number = number_said(options.number)
    if options.take_back:
        edit = readings.take_back(desk, number, options.property, options.values, options.unit)
        return f"{edit.text[0].upper()}{edit.text[1:]}."
    if not options.values:
        raise WrongUse("Give the readings, or --take-back to take them off.")
    conditioned = True if options.conditioned else False if options.unconditioned else None
    edit = readings.add(
        desk, number, options.property, options.values, options.unit, options.on, conditioned, options.method
    )
    key = readings.property_said(options.property).key
    told = [_told(each) for each in check_sample(desk, number, us_units=True).properties if each.property.key == key]
    return "\n".join([f"{edit.text}.", *told[0]])


def claim(desk: Desk, options: argparse.Namespace) -> str:
    """Keeps it."""
    number = number_said(options.number)
    if options.take_back == (options.value is not None):
        raise WrongUse("Give either the figure that is claimed, or --take-back.")
    edit = (
        claims.take_back(desk, number, options.property)
        if options.take_back
        else claims.claim(desk, number, options.property, options.value, options.unit, options.source)
    )
    return f"{edit.text[0].upper()}{edit.text[1:]}."


def verdict(desk: Desk, options: argparse.Namespace) -> str:
    """Decides."""
    if options.verdict == "rejected" and not options.words:
        raise WrongUse("Say why it is rejected, after the word: the vendor will ask.")
    edit = verdicts.decide(desk, number_said(options.number), options.verdict == "approved", options.words)
    return f"{edit.text[0].upper()}{edit.text[1:]}."


def _headline(sample: Sample) -> str:
    caliper = "" if sample.caliper_um is None else f" {float(sample.caliper_um) / 25.4:.4g} pt"
    parts = [f"{sample.label} {sample.vendor}", sample.board, f"{sample.grade}{caliper}", sample.quantity]
    parts += [f"for {sample.for_what}" if sample.for_what else "", f"asked for {sample.requested.isoformat()}"]
    parts += [sample.state.value, f"{sample.overdue_days} days overdue" if sample.overdue else ""]
    if sample.chance_of_a_week is not None:
        parts.append(chance_words(sample))
    return ", ".join(part for part in parts if part)


def _event(event: SampleEvent) -> str:
    until = f" for {event.until.isoformat()}" if event.until else ""
    how = " ".join(part for part in (event.carrier, event.tracking) if part)
    return f"{event.kind}{until}" + (f" by {how}" if how else "") + (f": {event.note}" if event.note else "")


def _told(checked: PropertyChecked) -> tuple[str, ...]:
    """What to know of one property, who claims what last; points and lb/MSF first, the property's own unit behind."""
    claimed = (f"Claimed by {checked.claim.source}.",) if checked.claim is not None else ()
    also = (checked.also,) if checked.also else ()
    return (*checked.sentences[:1], *also, *checked.sentences[1:], *claimed)
