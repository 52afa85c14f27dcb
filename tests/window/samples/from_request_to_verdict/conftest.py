"""A real database with five vendors, and windows on it."""

import shutil
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest

from tests.desk.filing import file
from tests.store.making import line
from tests.window.samples.from_request_to_verdict.keyboard import VENDORS, Keys
from tracker.desk import contacts, samples
from tracker.desk.opening import open_desk
from tracker.desk.sample_life import EventKind
from tracker.trade.exact import as_decimal
from tracker.trade.quantities import WeightUnit, grammage
from tracker.window.door import Door
from tracker.window.main_window import MainWindow


@pytest.fixture(scope="package")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Five vendors are known; one of them has quoted SBS of 18 pt and 72 lb/MSF. Made once: copying it is quicker."""
    path = tmp_path_factory.mktemp("made") / "board.sqlite"
    desk = open_desk(str(path), who="Ada")
    offer = line(
        vendor=VENDORS[0], product="Fenlight", grammage_gsm=as_decimal(grammage(72, WeightUnit.LB_MSF)), charges=(),
        price=Decimal(1280), from_kg=None, below_kg=None, minimum_kg=None, valid_until=None,
    )  # fmt: skip
    file(desk, offer, vendor=VENDORS[0])
    for vendor in VENDORS:
        contacts.set_contact(desk, vendor)
    desk.close()
    return path


@pytest.fixture
def database(made: Path, tmp_path: Path) -> str:
    return str(shutil.copy(made, tmp_path / "board.sqlite"))


@pytest.fixture
def window(open_window, database: str) -> MainWindow:
    return open_window(Door(database))


@pytest.fixture
def owing(open_window, database: str) -> MainWindow:
    """A window in which sample 1 is overdue, and 2, the same vendor's, is not."""
    desk = open_desk(database, who="Ada")
    for days in (30, 2):
        asked = date.today() - timedelta(days=days)
        number = samples.log(desk, VENDORS[0], "SBS", on=asked).number
        samples.record(desk, number, EventKind.PROMISED, asked, asked + timedelta(days=10))
    desk.close()
    return open_window(Door(database))


@pytest.fixture
def keys(qtbot, window: MainWindow) -> Keys:
    return Keys(qtbot, window)
