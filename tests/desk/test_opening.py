from datetime import date

import pytest

from tracker.desk import opening
from tracker.desk.edits import writing
from tracker.desk.opening import Desk
from tracker.store import settings


class Calendar(date):
    """A calendar that a test turns."""

    day = date(2026, 11, 25)

    @classmethod
    def today(cls) -> date:
        return cls.day


def test_the_calendars_day_is_looked_up_anew_and_a_day_that_is_set_stays(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A window left open overnight would else log the samples of the morning under the day before."""
    monkeypatch.setattr(opening, "date", Calendar)
    open_overnight = Desk(desk.database, "Ada")
    assert open_overnight.today == date(2026, 11, 25)
    monkeypatch.setattr(Calendar, "day", date(2026, 11, 26))
    assert open_overnight.today == date(2026, 11, 26)
    open_overnight.close()
    with writing(desk, "set the day") as pen:
        settings.put(pen, settings.TODAY, "2026-11-20")
    of_a_set_day = Desk(desk.database, "Ada")
    assert of_a_set_day.today == date(2026, 11, 20)
    of_a_set_day.close()
    assert Desk(desk.database, "Ada", date(2026, 1, 2)).today == date(2026, 1, 2)
