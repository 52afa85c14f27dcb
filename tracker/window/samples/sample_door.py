"""What the window asks the desk about samples; the window's one door (door.py) is made of this and more.

Every method is called on the desk's thread (see work.py).
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date
    from pathlib import Path

    from tracker.desk.attachments import Attachment
    from tracker.desk.chase_templates import ChaseTemplate
    from tracker.desk.chasing import ChaseMessage, Drafted
    from tracker.desk.comparison import ChosenFooting
    from tracker.desk.contacts import Contact
    from tracker.desk.edits import Edit
    from tracker.desk.opening import Desk
    from tracker.desk.sample_checks import SampleChecked
    from tracker.desk.sample_requests import Enquiry, LoggedAll
    from tracker.desk.sample_templates import SampleTemplate
    from tracker.desk.samples import EventKind, Sample, SampleEvent
    from tracker.desk.waits import WaitRow
    from tracker.desk.weight_differences import WeightDifference


class SampleDoor:
    """The samples' part of the door."""

    @property
    def desk(self) -> Desk:
        raise NotImplementedError

    def samples(self) -> tuple[Sample, ...]:
        from tracker.desk.samples import samples

        return samples(self.desk)

    def events(self, number: int) -> tuple[SampleEvent, ...]:
        from tracker.desk.samples import events

        return events(self.desk, number)

    def log_samples(self, enquiry: Enquiry) -> LoggedAll:
        from tracker.desk.sample_requests import log_all

        return log_all(self.desk, enquiry)

    def templates(self) -> tuple[SampleTemplate, ...]:
        from tracker.desk.sample_templates import templates

        return templates(self.desk)

    def save_template(self, name: str, enquiry: Enquiry) -> Edit:
        from tracker.desk.sample_templates import save

        return save(self.desk, name, enquiry)

    def record(
        self,
        number: int,
        kind: EventKind,
        on: date | None,
        until: date | None,
        note: str,
        carrier: str = "",
        tracking: str = "",
    ) -> Edit:
        from tracker.desk.samples import record

        return record(self.desk, number, kind, on, until, note, carrier, tracking)

    def check_sample(self, number: int, us_units: bool = False) -> SampleChecked:
        from tracker.desk.sample_checks import check_sample

        return check_sample(self.desk, number, us_units)

    def add_readings(self, number: int, property_key: str, text: str, unit: str, conditioned: bool | None) -> Edit:
        from tracker.desk.readings import add

        return add(self.desk, number, property_key, (text,), unit, conditioned=conditioned)

    def remove_reading(self, number: int, reading: int) -> Edit:
        from tracker.desk.readings import remove

        return remove(self.desk, reading, number)

    def claim(self, number: int, property_key: str, value: str, unit: str, source: str) -> Edit:
        from tracker.desk.claims import claim

        return claim(self.desk, number, property_key, value, unit, source)

    def name_board(self, number: int, board: str) -> Edit:
        from tracker.desk.sample_requests import name_board

        return name_board(self.desk, number, board)

    def decide(self, number: int, approved: bool, words: str) -> Edit:
        from tracker.desk.verdicts import decide

        return decide(self.desk, number, approved, words)

    def weight_differences(self, footing: ChosenFooting, year_msf: float) -> tuple[WeightDifference, ...]:
        from tracker.desk.quotes import load_snapshot
        from tracker.desk.weight_differences import weight_differences

        return weight_differences(self.desk, load_snapshot(self.desk), footing, year_msf)

    def attachments(self, number: int) -> tuple[Attachment, ...]:
        from tracker.desk.attachments import attachments

        return attachments(self.desk, number)

    def attach(self, number: int, path: Path) -> Edit:
        from tracker.desk.attachments import attach

        return attach(self.desk, number, path)

    def take_off(self, number: int, name: str) -> Edit:
        from tracker.desk.attachments import take_off

        return take_off(self.desk, number, name)

    def attachment(self, attachment: int) -> bytes:
        from tracker.desk.attachments import content

        return content(self.desk, attachment)

    def save_attachment(self, attachment: int, path: Path) -> None:
        from tracker.desk.attachments import save_copy

        save_copy(self.desk, attachment, path)

    def contact(self, vendor: str) -> Contact:
        from tracker.desk.contacts import contact

        return contact(self.desk, vendor)

    def set_contact(self, vendor: str, name: str, mail: str, language: str) -> Edit:
        from tracker.desk.contacts import set_contact

        return set_contact(self.desk, vendor, name, mail, language)

    def draft_chases(self, folder: Path) -> tuple[Drafted, ...]:
        """A draft for every vendor that is due for a chase."""
        from tracker.desk.chasing import chases, draft

        return tuple(draft(self.desk, chase.vendor, folder) for chase in chases(self.desk))

    def due_for_chase(self) -> tuple[str, ...]:
        """The vendors that are due for a chase today."""
        from tracker.desk.chasing import chases

        return tuple(chase.vendor for chase in chases(self.desk))

    def preview_chases(self) -> tuple[ChaseMessage, ...]:
        """What the drafts to every vendor that is due would say."""
        from tracker.desk.chasing import chases, preview

        return tuple(preview(self.desk, chase.vendor) for chase in chases(self.desk))

    def mark_chased(self, numbers: Sequence[int]) -> Edit:
        from tracker.desk.chasing import mark_chased

        return mark_chased(self.desk, numbers)

    def signature(self) -> str:
        from tracker.desk.chasing import signature

        return signature(self.desk)

    def sign_as(self, name: str) -> Edit:
        from tracker.desk.chasing import sign_as

        return sign_as(self.desk, name)

    def chase_words(self, language: str) -> ChaseTemplate:
        from tracker.desk.chase_templates import template_in

        return template_in(language)

    def original_chase_words(self, language: str) -> ChaseTemplate:
        from tracker.desk.chase_templates import original

        return original(language)

    def keep_chase_words(self, language: str, template: ChaseTemplate) -> None:
        from tracker.desk.chase_templates import keep_own

        keep_own(language, template)

    def draft_chase(self, vendor: str, folder: Path) -> Drafted:
        from tracker.desk.chasing import draft

        return draft(self.desk, vendor, folder)

    def write_labels(self, numbers: Sequence[int], sheet: str, path: Path) -> None:
        from tracker.desk.sample_papers import write_labels

        write_labels(self.desk, numbers, sheet, path)

    def write_calendar(self, path: Path) -> int:
        from tracker.desk.sample_papers import write_calendar

        return write_calendar(self.desk, path)

    def turn_round(self) -> list[WaitRow]:
        from tracker.desk.waits import turn_round

        return turn_round(self.desk)
