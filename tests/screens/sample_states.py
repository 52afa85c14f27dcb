"""The states of the Samples place in which it is drawn."""

from __future__ import annotations

from collections.abc import Callable

from tracker.window.main_window import MainWindow
from tracker.window.samples.chase_dialogs import ChaseText
from tracker.window.samples.chase_words import ChaseWords
from tracker.window.samples.contact_fields import ContactDialog
from tracker.window.samples.label_dialog import LabelDialog
from tracker.window.samples.listing import LINES, TURN_ROUND
from tracker.window.samples.record_panel import KEPT, MEASURED

MEASURED_SAMPLE = 4


def _asking_many(window: MainWindow) -> None:
    window.log_sample()
    form = window.samples.form
    form.show_more(True)
    form.vendor.setText("Brackendell Mills Inc.; Fennimoor Board Inc.; Ullingstow Board Ltd")
    form.grade.setText("SBS")
    form.caliper.setText("16 18 20")
    form.needed.setText("3/4")
    form.log()


def _measured(window: MainWindow) -> None:
    _asked_none(window)
    window.samples.go_to(MEASURED_SAMPLE)
    window.samples.record.turn_to(MEASURED)
    window.samples.record.measured.year.volume.setText("30,000")


def _decided(window: MainWindow) -> None:
    _measured(window)
    window.samples.record.turn_to(KEPT)


def _lines(window: MainWindow) -> None:
    _asked_none(window)
    window.samples.listing.turn_to(LINES)


def _turn_round(window: MainWindow) -> None:
    _asked_none(window)
    window.samples.listing.turn_to(TURN_ROUND)


def _labels(window: MainWindow) -> None:
    _asked_none(window)
    window.samples.listing.turn_to(0)
    window.print_labels()
    window.setProperty("popup", window.samples.findChild(LabelDialog))


def _chases(window: MainWindow) -> None:
    _asked_none(window)
    door = window.session.door
    door.sign_as("Tamsin Ort")
    window.samples.chasing._show_before(door.preview_chases())
    window.setProperty("popup", window.samples.findChildren(ChaseText)[-1])


def _contact(window: MainWindow) -> None:
    _asked_none(window)
    window.setProperty("popup", ContactDialog(window.session, window.session.vendors[:3], window.samples))
    window.property("popup").open()


def _words(window: MainWindow) -> None:
    _asked_none(window)
    window.setProperty("popup", ChaseWords(window.session, window.samples))
    window.property("popup").open()


def _asked_none(window: MainWindow) -> None:
    """The form as it is before anything is typed."""
    window.go_samples()
    window.samples.form.show_more(False)
    window.samples.form.begin_next()
    window.samples.listing.show_all()
    window.samples.listing.show_samples(window.session.samples)


SAMPLE_STATES: dict[str, Callable[[MainWindow], None]] = {
    "10-asking-many": _asking_many,
    "11-measured": _measured,
    "12-verdict": _decided,
    "13-lines": _lines,
    "14-turn-round": _turn_round,
    "15-labels": _labels,
    "16-chases": _chases,
    "17-contact": _contact,
    "18-words": _words,
}
