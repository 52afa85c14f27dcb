"""Whole columns come out alike on both databases, and many may write at once."""

import threading
from datetime import UTC, date, datetime

from sqlalchemy import func, select

from tests.store.making import DAY, VENDOR, line, reading
from tracker.store import columns, files, rates
from tracker.store.changes import Pen
from tracker.store.database import Database
from tracker.store.tables import offer, price_file, rate
from tracker.store.types import STORED_UNITS


def store(database: Database, content: bytes, *cells: str) -> int:
    with database.writing() as connection:
        made = reading(*(line(cell) for cell in cells), content=content)
        return files.add(Pen(connection, "Ada", "import"), made, content, DAY, {})


def test_columns_hold_what_was_stored(database: Database) -> None:
    file_id = store(database, b"first", "D5", "D6")
    with database.reading() as connection:
        loaded = columns.load(connection)
    assert loaded.columns["cell"] == ("D5", "D6")
    assert loaded.columns["price_units"] == (124050, 124050)
    assert loaded.columns["price_scale"] == (2, 2)
    assert loaded.columns["caliper_um"][0] / STORED_UNITS == 457.2
    assert loaded.columns["valid_until"][0] == date(2026, 12, 31)
    assert loaded.columns["delivered"] == (False, False)
    assert list(loaded.vendors.values()) == [VENDOR]
    assert loaded.files == {file_id: ("list.xlsx", reading(content=b"first").sha256)}
    assert loaded.charges["freight"] == (True, False, True, False)
    assert loaded.charges["offer_id"] == tuple(each for each in loaded.columns["id"] for _ in range(2))


def test_columns_of_an_empty_database_are_empty(database: Database) -> None:
    with database.reading() as connection:
        loaded = columns.load(connection)
    assert set(map(len, loaded.columns.values())) == {0}
    assert set(map(len, loaded.charges.values())) == {0}


def test_a_withdrawn_file_is_left_out(database: Database) -> None:
    withdrawn = store(database, b"first", "D5")
    store(database, b"second", "D6")
    with database.writing() as connection:
        Pen(connection, "Ada", "withdrew").update(price_file, withdrawn, {"withdrawn_at": datetime.now(UTC)})
    with database.reading() as connection:
        assert columns.load(connection).columns["cell"] == ("D6",)


def test_what_is_read_together_is_of_one_moment_while_another_writes(database: Database) -> None:
    store(database, b"first", "D5")
    with database.reading() as connection:
        before = connection.execute(select(func.count()).select_from(offer)).scalar()
        store(database, b"second", "D6")
        assert connection.execute(select(func.count()).select_from(offer)).scalar() == before


def test_four_who_read_and_write_at_once_never_find_it_locked(database: Database) -> None:
    troubles: list[BaseException] = []

    def work(worker: int) -> None:
        try:
            for number in range(10):
                with database.writing() as connection:
                    count = connection.execute(select(func.count()).select_from(rate)).scalar_one()
                    assert count >= number
                    day = date.fromordinal(738_000 + 100 * worker + number)
                    rates.put(Pen(connection, f"worker {worker}", "rate"), "USD", day, 1 + line().offer.price)
        except BaseException as trouble:
            troubles.append(trouble)

    threads = [threading.Thread(target=work, args=(worker,)) for worker in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert troubles == []
    with database.reading() as connection:
        assert len(rates.listing(connection)) == 40
