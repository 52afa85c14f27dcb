"""What every place of the window shares: the offers on their footing, what is selected, the units, the undo stack."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QUndoStack

from tracker.desk.comparison import ChosenFooting, Comparison, Per
from tracker.desk.standing import standings
from tracker.window.door import Door
from tracker.window.errors import sentence_for
from tracker.window.look.figures import Units
from tracker.window.look.theme import Theme
from tracker.window.quotes.board_names import board_names
from tracker.window.settings import Settings
from tracker.window.work import Work

if TYPE_CHECKING:
    from tracker.desk.samples import Sample
    from tracker.desk.today import Today


class Session(QObject):
    """State and the asking for more of it. Places listen to its signals and draw what they find here."""

    compared = Signal()
    units_changed = Signal()
    offer_selected = Signal(int)
    samples_changed = Signal()
    today_changed = Signal()
    begun_changed = Signal()
    other_opened = Signal()
    changed_elsewhere = Signal()
    said = Signal(str)
    troubled = Signal(str)

    def __init__(self, door: Door, theme: Theme, settings: Settings, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.door = door
        self.theme = theme
        self.turns = theme.turns
        self.settings = settings
        self.work = Work(self)
        self.work.failed.connect(self.tell_trouble)
        self.undo_stack = QUndoStack(self)
        self.units = Units(settings.units)
        self.footing = ChosenFooting(date.today(), settings.currency, Per(settings.per), settings.delivered)
        self.comparison: Comparison | None = None
        self.marks: NDArray[np.int8] = np.empty(0, dtype=np.int8)
        self.selected = -1
        self._comparing = 0
        self._latest_change = 0
        self._today = self.footing.as_of
        self.samples: tuple[Sample, ...] = ()
        self.todays: Today | None = None
        self.currencies: tuple[str, ...] = ("USD", "EUR")
        self.vendors: tuple[str, ...] = ()

    def start(self) -> None:
        """Opens the database and loads what the places show; called once the window has been painted."""
        # The day comes first: everything else is as of it.
        self.work.ask(self.door.today, self._begin_day)

    def reload(self) -> None:
        """Reads everything again: something was stored."""
        self.work.ask(self.door.latest_change, self._note_change)
        self.work.ask(self.door.load, lambda _: None)
        self._compare()
        self.reload_samples()

    @Slot()
    def look_for_changes(self) -> None:
        """Reads everything again if another program or a colleague wrote to the database meanwhile, or a day began."""
        self.work.ask(self.door.latest_change, self._reload_if_changed)
        self.work.ask(self.door.today, self._follow_day)

    def reload_samples(self) -> None:
        self.work.ask(self.door.samples, self._set_samples)
        self.work.ask(self.door.vendors, self._set_vendors)
        self._ask_todays()

    def choose_footing(self, **changes: Any) -> None:
        """Changes pieces of the footing and compares anew."""
        footing = replace(self.footing, **changes)
        if footing == self.footing:
            return
        self.footing = footing
        self.settings.keep(currency=footing.currency, per=footing.per.value, delivered=footing.delivered)
        self._compare()

    def choose_units(self, units: Units) -> None:
        """Shows measures in other units; nothing stored changes."""
        if units is not self.units:
            self.units = units
            self.settings.keep(units=units.value)
            self.units_changed.emit()

    def select_offer(self, offer: int) -> None:
        """Makes one offer (an index of the snapshot, -1 none) the one that table, picture and panel show."""
        if offer != self.selected:
            self.selected = offer
            self.offer_selected.emit(offer)

    def tell_trouble(self, error: Exception) -> None:
        """Says what went wrong in the message bar."""
        self.troubled.emit(sentence_for(error))

    def show_comparison(self, comparison: Comparison) -> None:
        """Takes a new comparison; the selected offer is kept by its database id."""
        kept = -1
        if self.comparison is None or comparison.snapshot is not self.comparison.snapshot:
            # What waits today names offers by their place in a snapshot: another snapshot, other places.
            self.todays = None
        if self.comparison is not None and 0 <= self.selected < len(self.comparison.snapshot):
            known = self.comparison.snapshot.id[self.selected]
            found = np.flatnonzero(comparison.snapshot.id == known)
            kept = int(found[0]) if found.size else -1
        self.comparison = comparison
        self.marks = standings(comparison)
        self.selected = kept
        self.compared.emit()
        # Whoever drew it may have let go of an offer that is no longer there to be seen.
        self.offer_selected.emit(self.selected)

    def _note_change(self, latest: int) -> None:
        self._latest_change = latest

    def _reload_if_changed(self, latest: int) -> None:
        if latest < self._latest_change:
            # A backup was put back: what could be undone is not what stands there any more.
            self.undo_stack.clear()
        if latest != self._latest_change:
            self.reload()
            self.changed_elsewhere.emit()

    def _follow_day(self, today: date) -> None:
        """A window left open overnight is of the new day, unless the user looks at a day of their own choice."""
        if today == self._today:
            return
        if self.footing.as_of == self._today:
            self.footing = replace(self.footing, as_of=today)
        self._today = today
        self._compare()
        self.reload_samples()

    def _compare(self) -> None:
        footing = self.footing
        self.work.drop(self._comparing)
        self._comparing = self.work.ask(lambda: self._compared(footing), self._set_comparison)

    def _compared(self, footing: ChosenFooting) -> Comparison:
        """With it the boards' names, which places look for words in. Runs on the desk's thread."""
        comparison = self.door.compare(footing)
        board_names(comparison.snapshot)
        return comparison

    def _set_comparison(self, comparison: Comparison) -> None:
        self.show_comparison(comparison)
        self._ask_todays()

    def _ask_todays(self) -> None:
        comparison = self.comparison
        if comparison is not None:
            self.work.ask(lambda: self.door.todays(comparison), lambda todays: self._take_todays(comparison, todays))

    def _take_todays(self, comparison: Comparison, todays: Today) -> None:
        """An answer about a snapshot that was replaced meanwhile names offers that are no longer there."""
        if self.comparison is not None and comparison.snapshot is self.comparison.snapshot:
            self._set_todays(todays)

    def _begin_day(self, today: date) -> None:
        self._today = today
        self.footing = replace(self.footing, as_of=today)
        self.reload()
        self.work.ask(self.door.currencies, self._set_currencies)
        self.work.ask(self.door.keep_ready, lambda _: None)

    def _set_currencies(self, currencies: tuple[str, ...]) -> None:
        self.currencies = currencies

    def _set_vendors(self, vendors: tuple[str, ...]) -> None:
        self.vendors = vendors

    def _set_samples(self, samples: tuple[Sample, ...]) -> None:
        self.samples = samples
        self.samples_changed.emit()

    def _set_todays(self, todays: Today) -> None:
        self.todays = todays
        self.today_changed.emit()
