"""The fields over the table: words, vendors, calipers, only what stands out."""

from collections.abc import Sequence

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtWidgets import QCheckBox, QFrame, QLineEdit, QListWidget, QListWidgetItem, QPushButton, QWidget

from tracker.window.look.figures import Units, caliper_um_of, caliper_unit, counted
from tracker.window.pieces import button, column, restyle, row, words

_TYPING_PAUSE_MS = 150


class VendorPopup(QFrame):
    """A list of vendors to tick; none ticked means all."""

    changed = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Popup)
        self.setProperty("kind", "popup")
        self._find = QLineEdit()
        self._find.setPlaceholderText("find a vendor")
        self._find.setAccessibleName("Find a vendor")
        self._list = QListWidget()
        self._list.setAccessibleName("Vendors to show")
        self._list.setFrameShape(QFrame.Shape.NoFrame)
        self._list.setProperty("kind", "ticks")
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        everyone = button("Show all vendors", "word")
        everyone.clicked.connect(self._untick)
        self.setLayout(column(self._find, self._list, row(everyone, None), margins=10, gap=6))
        self.resize(280, 340)
        self._find.textChanged.connect(self._narrow)
        self._list.itemChanged.connect(lambda _: self.changed.emit())
        # A click on the words ticks as well as one on the box.
        self._list.itemActivated.connect(self._turn)

    def chosen(self) -> frozenset[str]:
        return frozenset(item.text() for item in self._items() if item.checkState() is Qt.CheckState.Checked)

    def offer(self, vendors: Sequence[str]) -> None:
        """Lists these vendors; ticks are kept."""
        ticked = self.chosen()
        self._list.blockSignals(True)
        self._list.clear()
        for vendor in vendors:
            item = QListWidgetItem(vendor, self._list)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if vendor in ticked else Qt.CheckState.Unchecked)
        self._list.blockSignals(False)

    def tick(self, vendors: frozenset[str]) -> None:
        self._list.blockSignals(True)
        for item in self._items():
            item.setCheckState(Qt.CheckState.Checked if item.text() in vendors else Qt.CheckState.Unchecked)
        self._list.blockSignals(False)
        self.changed.emit()

    def _untick(self) -> None:
        self.tick(frozenset())
        self.hide()

    def _items(self) -> list[QListWidgetItem]:
        return [self._list.item(place) for place in range(self._list.count())]

    def _turn(self, item: QListWidgetItem) -> None:
        checked = item.checkState() is Qt.CheckState.Checked
        item.setCheckState(Qt.CheckState.Unchecked if checked else Qt.CheckState.Checked)

    def _narrow(self, text: str) -> None:
        for item in self._items():
            item.setHidden(text.casefold() not in item.text().casefold())


class Filters(QWidget):
    """What else narrows the offers. `changed` says so a moment after the last key."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._units = Units.US
        self._of_vendors = 0
        self.field = QLineEdit()
        self.field.setPlaceholderText("vendor or board")
        self.field.setAccessibleName("Find a vendor or board")
        self.field.setClearButtonEnabled(True)
        self.field.setToolTip("Ctrl+F")
        self._vendors = button("all", "field")
        self._vendors.setAccessibleName("Vendors")
        self._popup = VendorPopup(self)
        self._low, self._high = self._caliper_field("from"), self._caliper_field("to")
        self._unit = words("pt", "quiet")
        self.standing_out = QCheckBox("Only what stands out")
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_TYPING_PAUSE_MS)
        self._pause.timeout.connect(self.changed)
        self.field.setFixedWidth(230)
        self._vendors.setFixedWidth(190)
        for end in (self._low, self._high):
            end.setFixedWidth(64)
        self.setLayout(
            row(
                words("Find", "rail"), self.field, 10, words("Vendor", "rail"), self._vendors, 10,
                words("Caliper", "rail"), self._low, words("–", "quiet"), self._high, self._unit, 14,
                self.standing_out, None,
                gap=8,
            )
        )  # fmt: skip
        for field in (self.field, self._low, self._high):
            field.textChanged.connect(lambda _: self._pause.start())
        self._vendors.clicked.connect(self._open_vendors)
        self._popup.changed.connect(self._vendors_changed)
        self.standing_out.toggled.connect(lambda _: self.changed.emit())

    def offer_vendors(self, vendors: Sequence[str]) -> None:
        """The vendors there are to choose from."""
        self._of_vendors = len(vendors)
        self._popup.offer(vendors)
        self._say_vendors()

    def show_units(self, units: Units) -> None:
        """Calipers typed from now on are in these units; what was typed is dropped, not reread."""
        if units is not self._units:
            self._units = units
            self._unit.setText(caliper_unit(units))
            self._low.clear()
            self._high.clear()

    @property
    def vendors(self) -> frozenset[str]:
        return self._popup.chosen()

    def choose_vendors(self, vendors: frozenset[str]) -> None:
        self._popup.tick(vendors)

    def clear(self) -> None:
        """Nothing narrows any more."""
        for field in (self.field, self._low, self._high):
            field.clear()
        self.standing_out.setChecked(False)
        self.choose_vendors(frozenset())

    def calipers_um(self) -> tuple[float | None, float | None]:
        """The bounds typed, in µm; None where empty or not a number (then the field is marked)."""
        return self._typed(self._low), self._typed(self._high)

    def _typed(self, field: QLineEdit) -> float | None:
        text = field.text().strip().replace(",", ".")
        try:
            value = float(text) if text else None
        except ValueError:
            value = None
        wrong = bool(text) and (value is None or value <= 0)
        if (field.property("wrong") == "true") is not wrong:
            field.setProperty("wrong", "true" if wrong else "false")
            restyle(field)
        return None if value is None or wrong else caliper_um_of(value, self._units)

    def _caliper_field(self, name: str) -> QLineEdit:
        field = QLineEdit()
        field.setPlaceholderText(name)
        field.setAccessibleName(f"Caliper {name}")
        return field

    def _open_vendors(self) -> None:
        below: QPushButton = self._vendors
        self._popup.move(below.mapToGlobal(QPoint(0, below.height() + 2)))
        self._popup.show()

    def _vendors_changed(self) -> None:
        self._say_vendors()
        self.changed.emit()

    def _say_vendors(self) -> None:
        chosen = self._popup.chosen()
        if len(chosen) == 1:
            text = next(iter(chosen))
        elif chosen:
            text = f"{len(chosen)} of {self._of_vendors}"
        else:
            text = f"all {counted(self._of_vendors, 'vendor')}" if self._of_vendors > 1 else "all"
        self._vendors.setText(text.replace("&", "&&"))
