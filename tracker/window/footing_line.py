"""One line of plain words that says what every price on the screen means; each piece is a control."""

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QCalendarWidget, QLabel, QLineEdit, QMenu, QToolButton, QWidget, QWidgetAction

from tracker.desk.comparison import Per
from tracker.desk.explanation import oldest_rate
from tracker.trade.days import short_day
from tracker.trade.quantities import CaliperUnit, micrometres
from tracker.window.look.figures import Units, caliper, counted, date_text, kg_per_ton, mass
from tracker.window.look.wrapping_rows import WrappingRows
from tracker.window.pieces import column, holder, words
from tracker.window.session import Session

_CALIPERS_PT = (12, 14, 16, 18, 20, 22, 24, 28)
_USUAL_ORDERS = (1, 2, 5, 10, 20, 40)
_COMMON_CURRENCIES = ("USD", "EUR", "GBP", "CAD", "SEK", "PLN")
_ROW_HEIGHT = 36
_DAYS_WITHOUT_RATES = 4
"""Easter: no rate is published from Friday to Monday."""


class FootingLine(QWidget):
    """Pieces of the footing as pills. Whatever changes goes through the session; the pills repeat what it says."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("footing")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._session = session
        self._per = self._pill("Price per", self._fill_per)
        self._currency = self._pill("Currency", self._fill_currency)
        self._day = self._pill("As of", self._fill_day)
        self._delivered = self._pill("Delivered or as quoted", self._fill_delivered)
        self._order = self._pill("Order size", self._fill_order)
        self._weight = self._pill("Basis weight", self._fill_weight)
        self._current = self._pill("Which offers", self._fill_current)
        self._units = self._pill("Units", self._fill_units)
        self._count = QLabel()
        self._count.setProperty("kind", "quiet")
        pills = (self._per, self._currency, self._day, self._delivered, self._order, self._weight, self._current)
        lead = words("Every price below:", "quiet")
        self._rows = WrappingRows(lead, pills, (self._count, self._units), _ROW_HEIGHT, side=24, gap=8)
        self.setLayout(column(self._rows))
        session.compared.connect(self._repeat)
        session.units_changed.connect(self._repeat)
        self._repeat()

    def _pill(self, name: str, fill: Callable[[QMenu], None]) -> QToolButton:
        pill = QToolButton(self)
        pill.setProperty("kind", "pill")
        pill.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        pill.setAccessibleName(name)
        pill.setToolTip(name)
        pill.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        pill.setCursor(Qt.CursorShape.PointingHandCursor)
        menu = QMenu(pill)

        def fill_anew() -> None:
            menu.clear()
            fill(menu)

        menu.aboutToShow.connect(fill_anew)
        pill.setMenu(menu)
        return pill

    def _repeat(self) -> None:
        footing = self._session.footing
        self._per.setText(footing.per_words.replace("1,000 ft²", "MSF"))
        self._currency.setText(f"in {footing.currency}")
        self._day.setText(f"at {date_text(footing.as_of)}{self._older_rate()}")
        self._delivered.setText("delivered if known" if footing.delivered else "as quoted")
        order = footing.order_kg
        self._order.setText("any order size" if order is None else f"order of {mass(order, self._session.units)}")
        self._weight.setText("measured weight" if footing.measured_weight else "claimed weight")
        self._current.setText("current only" if footing.current_only else "lapsed ones too")
        self._units.setText("US units" if self._session.units is Units.US else "metric units")
        self._rows.fit()

    def _older_rate(self) -> str:
        """', rate of 30 Oct' where a rate in these figures is older than a few days without a market explain."""
        comparison, footing = self._session.comparison, self._session.footing
        if comparison is None or comparison.footing != footing:
            return ""
        oldest = oldest_rate(comparison)
        if oldest is None or (footing.as_of - oldest).days <= _DAYS_WITHOUT_RATES:
            return ""
        return f", rate of {short_day(oldest) if oldest.year == footing.as_of.year else date_text(oldest)}"

    def stand_by(self, *, a_list: bool) -> None:
        """How many offers are shown is told beside the list of them alone: elsewhere no filter is in force."""
        self._count.setVisible(a_list)
        self._rows.fit()

    def show_count(self, shown: int, of: int) -> None:
        """'312 of 1,204 offers' at the right."""
        self._count.setText(counted(of, "offer") if shown == of else f"{shown:,} of {counted(of, 'offer')}")
        self._rows.fit()

    def _choices(self, menu: QMenu, choices: dict[str, bool], choose: Callable[[str], None]) -> None:
        group = QActionGroup(menu)
        for title, holds in choices.items():
            action = QAction(title, menu, checkable=True)
            action.setChecked(holds)
            action.triggered.connect(lambda _checked=False, chosen=title: choose(chosen))
            group.addAction(action)
            menu.addAction(action)

    def _fill_per(self, menu: QMenu) -> None:
        footing, units = self._session.footing, self._session.units
        choices: dict[str, tuple[Per, float | None]] = {
            "per MSF (1,000 ft²)": (Per.MSF, None),
            "per tonne (1,000 kg)": (Per.TONNE, None),
        }
        self._choose_per(menu, choices)
        # As if all boards were of one caliper: else per area the thick ones look dear.
        equal = menu.addMenu("per MSF at equal caliper")
        calipers = {caliper(um, units): um for um in (float(micrometres(pt, CaliperUnit.POINT)) for pt in _CALIPERS_PT)}
        self._choose_per(equal, {title: (Per.MSF, um) for title, um in calipers.items()})
        if footing.at_caliper_um is not None:
            equal.setTitle(f"per MSF at equal caliper (now {caliper(footing.at_caliper_um, units)})")

    def _choose_per(self, menu: QMenu, choices: dict[str, tuple[Per, float | None]]) -> None:
        footing = self._session.footing
        now = (footing.per, footing.at_caliper_um)

        def choose(title: str) -> None:
            per, equal = choices[title]
            self._session.choose_footing(per=per, equal_caliper_um=equal)

        self._choices(menu, {title: choice == now for title, choice in choices.items()}, choose)

    def _fill_currency(self, menu: QMenu) -> None:
        now = self._session.footing.currency
        known = self._session.currencies
        common = [code for code in _COMMON_CURRENCIES if code in known]
        rest = sorted(set(known) - set(common))
        self._choices(menu, {code: code == now for code in common}, self._choose_currency)
        if rest:
            more = menu.addMenu("others")
            self._choices(more, {code: code == now for code in rest}, self._choose_currency)

    def _choose_currency(self, code: str) -> None:
        self._session.choose_footing(currency=code)

    def _fill_day(self, menu: QMenu) -> None:
        calendar = QCalendarWidget(menu)
        calendar.setVerticalHeaderFormat(QCalendarWidget.VerticalHeaderFormat.NoVerticalHeader)
        as_of = self._session.footing.as_of
        calendar.setSelectedDate(QDate(as_of.year, as_of.month, as_of.day))

        def choose(day: QDate) -> None:
            menu.close()
            self._session.choose_footing(as_of=date(day.year(), day.month(), day.day()))

        calendar.clicked.connect(choose)
        calendar.activated.connect(choose)
        shown = QWidgetAction(menu)
        shown.setDefaultWidget(calendar)
        menu.addAction(shown)

    def _fill_delivered(self, menu: QMenu) -> None:
        now = self._session.footing.delivered
        choices = {"delivered where known": now, "as quoted, freight apart": not now}
        self._choices(menu, choices, lambda t: self._session.choose_footing(delivered=t.startswith("delivered")))

    def _fill_order(self, menu: QMenu) -> None:
        now = self._session.footing.order_kg
        units = self._session.units
        titles = {mass(tons * kg_per_ton(units), units): tons * kg_per_ton(units) for tons in _USUAL_ORDERS}
        self._choices(menu, {"any order size": now is None}, lambda _: self._session.choose_footing(order_kg=None))
        self._choices(
            menu, {t: kg == now for t, kg in titles.items()}, lambda t: self._session.choose_footing(order_kg=titles[t])
        )
        ton = "short tons" if units is Units.US else "tonnes"
        field = QLineEdit(menu)
        field.setMinimumWidth(190)
        field.setPlaceholderText(f"another, in {ton}")
        field.setAccessibleName(f"Another order size, in {ton}")

        def choose() -> None:
            try:
                tons = float(field.text().replace(",", "."))
            except ValueError:
                tons = 0.0
            if tons > 0:
                menu.close()
                self._session.choose_footing(order_kg=tons * kg_per_ton(units))

        field.returnPressed.connect(choose)
        own = QWidgetAction(menu)
        own.setDefaultWidget(holder(column(field, margins=(8, 4, 8, 4))))
        menu.addAction(own)

    def _fill_weight(self, menu: QMenu) -> None:
        now = self._session.footing.measured_weight
        choices = {"at the weight vendors claim": not now, "at the weight samples measured": now}
        self._choices(menu, choices, lambda t: self._session.choose_footing(measured_weight=t.endswith("measured")))

    def _fill_current(self, menu: QMenu) -> None:
        now = self._session.footing.current_only
        choices = {"current offers only": now, "lapsed and replaced ones too": not now}
        self._choices(menu, choices, lambda t: self._session.choose_footing(current_only=t.startswith("current")))

    def _fill_units(self, menu: QMenu) -> None:
        titles = {"US: points, lb/MSF": Units.US, "metric: µm, g/m²": Units.METRIC}
        now = self._session.units
        self._choices(
            menu,
            {title: units is now for title, units in titles.items()},
            lambda t: self._session.choose_units(titles[t]),
        )
