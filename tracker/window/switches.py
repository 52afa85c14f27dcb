"""The switches of what every price on the screen means, and of how the screen looks, one key each."""

from PySide6.QtCore import QObject, Slot

from tracker.desk.comparison import Per
from tracker.window.look.figures import Units
from tracker.window.session import Session


class Switches(QObject):
    """Carries out the switching actions of actions.py on the session."""

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self.session = session

    @Slot()
    def switch_per(self) -> None:
        self.session.choose_footing(per=next(per for per in Per if per is not self.session.footing.per))

    @Slot()
    def switch_units(self) -> None:
        self.session.choose_units(next(units for units in Units if units is not self.session.units))

    @Slot()
    def switch_delivered(self) -> None:
        self.session.choose_footing(delivered=not self.session.footing.delivered)

    @Slot()
    def switch_weight(self) -> None:
        self.session.choose_footing(measured_weight=not self.session.footing.measured_weight)

    @Slot()
    def switch_current(self) -> None:
        self.session.choose_footing(current_only=not self.session.footing.current_only)

    @Slot()
    def switch_theme(self) -> None:
        name = "light" if self.session.theme.name == "dark" else "dark"
        self.session.theme.choose(name)
        self.session.settings.keep(theme=name)
