"""What a shell or a colleague wrote to the database shows in an open window."""

from datetime import date, timedelta
from decimal import Decimal

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tracker.desk.opening import open_desk
from tracker.desk.sample_requests import Enquiry, log_all


def _log_elsewhere(database: str) -> None:
    desk = open_desk(database, date(2026, 11, 25), "Ada")
    try:
        log_all(desk, Enquiry(("Fenlight Board Mills",), "SBS", (Decimal("457.2"),)))
    finally:
        desk.close()


def test_coming_back_to_the_window_shows_what_was_written_meanwhile(real_window, database, qtbot):
    _log_elsewhere(database)
    QApplication.sendEvent(real_window, QEvent(QEvent.Type.WindowActivate))
    settle(qtbot, real_window)
    assert [each.vendor for each in real_window.session.samples] == ["Fenlight Board Mills"]


def test_nothing_is_read_again_where_nobody_wrote(real_window, qtbot):
    with qtbot.assertNotEmitted(real_window.session.changed_elsewhere):
        real_window.actions_by_key["look"].trigger()
        settle(qtbot, real_window)


def test_a_window_left_open_overnight_is_of_the_new_day(real_window, qtbot):
    session = real_window.session
    evening = session.footing.as_of
    session.door.desk.said_today = evening + timedelta(1)
    real_window.actions_by_key["look"].trigger()
    settle(qtbot, real_window)
    assert session.footing.as_of == session.comparison.footing.as_of == evening + timedelta(1)
    chosen = date(2026, 1, 15)
    session.choose_footing(as_of=chosen)
    session.door.desk.said_today = evening + timedelta(2)
    real_window.actions_by_key["look"].trigger()
    settle(qtbot, real_window)
    assert session.footing.as_of == chosen
