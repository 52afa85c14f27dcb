"""The window: places at the top, the footing under them, one place at a time below, a message at the foot."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QCloseEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QFileDialog, QStackedWidget, QWidget

from tracker.window.actions import actions_of
from tracker.window.file_tasks import FileTasks
from tracker.window.foot import Foot
from tracker.window.footing_line import FootingLine
from tracker.window.guides import Guides
from tracker.window.import_aside import import_aside
from tracker.window.message_bar import MessageBar
from tracker.window.other_database import OtherDatabase
from tracker.window.other_hands import OtherHands
from tracker.window.pieces import column
from tracker.window.places_bar import PlacesBar
from tracker.window.reference.place import ReferencePlace
from tracker.window.samples.place import SamplesPlace
from tracker.window.session import Session
from tracker.window.sheet_at_hand import SheetAtHand
from tracker.window.sheet_drop import FILE_KINDS, SheetDrop
from tracker.window.sheets.place import SheetsPlace
from tracker.window.steps import Steps
from tracker.window.switches import Switches
from tracker.window.take_in.kept_sheet import KeptSheet
from tracker.window.take_in.place import TakeInPlace
from tracker.window.today.place import TodayPlace
from tracker.window.work import Work

if TYPE_CHECKING:
    from tracker.window.quotes.place import QuotesPlace

TITLES = ("Today", "Quotes", "Samples", "Reference", "Sheets")
TODAY, QUOTES, SAMPLES, REFERENCE, SHEETS, TAKE_IN, SHEET = range(7)
_WITH_FOOTING = (TODAY, QUOTES)


class MainWindow(QWidget):
    """Holds the places and carries out the actions of actions.py."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self.setObjectName("window")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle("Paperboard tracker")
        self.resize(1280, 800)
        self.setMinimumSize(1000, 660)
        self.session = session
        self.bar, self.footing = PlacesBar(TITLES), FootingLine(session)
        self.stack, self.message = QStackedWidget(), MessageBar()
        self._started = False
        self._aside = Work(self)
        self._other_hands = OtherHands(session, self)
        self._came_from = QUOTES
        foot = Foot(session, self.message)
        self.setLayout(column(self.bar, self.footing, self.stack, foot, grow=2))
        session.theme.dress(self.bar, self.footing, foot)
        self._make_doers()
        self._make_places()
        self._make_actions()
        self._watch_drops()
        self._connect()
        self.go(TODAY)

    def _make_doers(self) -> None:
        session = self.session
        self.files = FileTasks(session, self, lambda: self.quotes)
        self.databases = OtherDatabase(session, self)
        self.guides = Guides(session, self, lambda: self.actions_by_key)
        self.switches = Switches(session, self)
        self.steps = Steps(session.undo_stack, self.message, self)

    def _make_places(self) -> None:
        self.today = TodayPlace(self.session)
        self.samples = SamplesPlace(self.session)
        self.samples.written.connect(self.message.say)
        self.samples.open_wanted.connect(self.files.open_elsewhere)
        self.reference = ReferencePlace(self.session)
        self.sheets = SheetsPlace(self.session)
        self.take_in = TakeInPlace(self.session)
        self.sheet = KeptSheet(self.session)
        self._until_quotes = QWidget()
        places = (self.today, self._until_quotes, self.samples, self.reference, self.sheets, self.take_in, self.sheet)
        for place in places:
            self.stack.addWidget(place)
        self.session.theme.dress(self.today)
        self.session.theme.dress_in_turn(*(place for place in places if place is not self.today))
        self.today.offer_wanted.connect(self._show_offer)
        self.today.sample_wanted.connect(self._show_sample)
        self.today.cell_wanted.connect(self._show_cell)
        self.today.sheets_wanted.connect(self.choose_sheets)
        self.today.demo_wanted.connect(self.databases.open_demo)
        self.sheets.sheet_wanted.connect(self._show_cell)
        self.take_in.left.connect(self._left_take_in)
        self.take_in.another_wanted.connect(self.choose_sheets)
        self.sheet.left.connect(lambda: self.go(self._came_from))

    def _make_actions(self) -> None:
        self.at_hand = SheetAtHand(self.take_in, self.stack, self.bar, lambda: self.go(TAKE_IN), self)
        self.at_hand.lead_back_from(self.today, self.session, self.message)
        self.sheets.anew_wanted.connect(self.at_hand.answer_anew)
        doers = (self.files, self.databases, self.guides, self.switches, self.steps, self.at_hand, self.session)
        self.actions_by_key = actions_of(self, (self, *doers))

    def _connect(self) -> None:
        session = self.session
        for said in (self.files.written, self.databases.said, self.guides.said, self.at_hand.said):
            said.connect(self.message.say)
        self.bar.chosen.connect(self.go)
        self.bar.take_in.clicked.connect(self.choose_sheets)
        self.bar.log_sample.clicked.connect(self.log_sample)
        self.bar.do.clicked.connect(self.guides.open_do)
        session.troubled.connect(self.message.warn)
        session.work.busy.connect(self.bar.show_busy)
        session.said.connect(self.steps.say_done)
        session.today_changed.connect(self._settle_focus)

    def _watch_drops(self) -> None:
        drop = SheetDrop(self, self.message)
        self.today.files_dropped.connect(drop.take)
        # The program it was dragged from has the keys until then.
        drop.dropped.connect(lambda _: self.activateWindow())
        drop.dropped.connect(self.take_in_files)

    @cached_property
    def quotes(self) -> QuotesPlace:
        """The Quotes place, made when first wanted: the pictures' library takes a quarter of a second to import."""
        from tracker.window.quotes.place import QuotesPlace

        place = QuotesPlace(self.session)
        place.counted.connect(self.footing.show_count)
        place.sheet_wanted.connect(self._show_sheet_of)
        place.picture.level_wanted.connect(self._show_level)
        self.stack.insertWidget(QUOTES, place)
        self.session.theme.dress_in_turn(place)
        self.stack.removeWidget(self._until_quotes)
        self._until_quotes.deleteLater()
        return place

    @Slot(int)
    def go(self, place: int) -> None:
        """Shows a place."""
        if place == QUOTES:
            _ = self.quotes
        if place == REFERENCE:
            self.reference.ask_for_levels()
        if place == SHEETS:
            self.sheets.ask()
        self.stack.setCurrentIndex(place)
        self.bar.stand_at(place if place < len(TITLES) else -1)
        self.footing.setVisible(place in _WITH_FOOTING)
        self.footing.stand_by(a_list=place == QUOTES)
        self.session.turns.catch_up()

    @Slot()
    def go_today(self) -> None:
        self.go(TODAY)
        self.today.setFocus()

    @Slot()
    def go_quotes(self) -> None:
        self.go(QUOTES)
        self.quotes.table.setFocus()

    @Slot()
    def go_samples(self) -> None:
        self.go(SAMPLES)
        self.samples.table.setFocus()

    @Slot()
    def go_reference(self) -> None:
        self.go(REFERENCE)

    @Slot()
    def go_yardsticks(self) -> None:
        self.go(REFERENCE)
        self.reference.show_yardsticks()

    @Slot(str)
    def _show_level(self, grade: str) -> None:
        self.go(REFERENCE)
        self.reference.show_level(grade)

    @Slot()
    def go_sheets(self) -> None:
        self.go(SHEETS)
        self.sheets.table.setFocus()

    @Slot()
    def choose_sheets(self) -> None:
        names, _ = QFileDialog.getOpenFileNames(self, "Choose price sheets", "", FILE_KINDS)
        self.take_in_files([Path(name) for name in names])

    def take_in_files(self, paths: Sequence[Path]) -> None:
        """Reads files and shows what was understood; nothing is stored yet."""
        if paths:
            self.go(TAKE_IN)
            self.take_in.setFocus()
            self.take_in.read(paths)

    @Slot()
    def log_sample(self) -> None:
        self.go(SAMPLES)
        self.samples.start_logging()

    @Slot()
    def log_from_template(self) -> None:
        self.go(SAMPLES)
        self.samples.start_from_template()

    @Slot()
    def find_sample(self) -> None:
        self.go(SAMPLES)
        self.samples.find_number()

    @Slot()
    def print_labels(self) -> None:
        self.go(SAMPLES)
        self.samples.print_labels()

    @Slot()
    def draft_chases(self) -> None:
        """One message a vendor that is due, for the user's own mail program; nothing is sent."""
        self.samples.chasing.draft_due()

    @Slot()
    def find_offer(self) -> None:
        self.go(QUOTES)
        self.quotes.filters.field.setFocus()
        self.quotes.filters.field.selectAll()

    @Slot()
    def show_in_sheet(self) -> None:
        self._show_sheet_of(self.session.selected)

    def _begin(self) -> None:
        """After the first paint: the data and, beside it, what takes a quarter of a second to import."""
        self.session.start()
        self._other_hands.start()
        import_aside("tracker.window.quotes.place", self._aside, self, lambda _: self.quotes)

    def _settle_focus(self) -> None:
        """Once there is something to settle, the keys are about it, unless the user is elsewhere by then."""
        self.session.today_changed.disconnect(self._settle_focus)
        if self.stack.currentIndex() == TODAY and not self.stack.isAncestorOf(QApplication.focusWidget() or self):
            self.today.setFocus()

    def _show_offer(self, offer: int) -> None:
        self.go(QUOTES)
        self.quotes.go_to(offer)

    def _show_sample(self, number: object) -> None:
        self.go(SAMPLES)
        self.samples.go_to(number)

    def _show_sheet_of(self, offer: int) -> None:
        if offer < 0:
            self.message.say("Choose an offer first: in the table, or in the picture.")
            return
        self._came_from = QUOTES
        self.sheet.show_offer(offer)
        self.go(SHEET)

    def _show_cell(self, file: int, sheet: str, cell: str) -> None:
        self._came_from = self.stack.currentIndex()
        self.sheet.show_cell(file, sheet, cell)
        self.go(SHEET)

    def _left_take_in(self, stored: int) -> None:
        if stored:
            self.go_quotes()
            self.quotes.show_taken_in(self.take_in.stored_files)
        else:
            # Back to the row, or the list, that one came from.
            backs = self.go_today, self.go_quotes, self.go_samples, self.go_reference, self.go_sheets
            backs[self.at_hand.came_from]()

    # Qt's own names from here on

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._started:
            self._started = True
            QTimer.singleShot(0, self._begin)

    def closeEvent(self, event: QCloseEvent) -> None:
        # A file that is being read ends first, so that closing never waits for it.
        self.take_in.put_away()
        self._aside.finish()
        self.session.work.finish()
        self.session.door.close()
        super().closeEvent(event)
