"""A file and its offers: stored whole or not at all, and read back as they were."""

from dataclasses import replace
from datetime import UTC, date, datetime
from decimal import Decimal

import pytest
from sqlalchemy import func, insert, select
from sqlalchemy.exc import IntegrityError

from tests.store.making import DAY, FULL, TON, VENDOR, held, line, reading
from tracker.store import files, offers, vendors
from tracker.store import held as open_matters
from tracker.store.changes import Pen, history
from tracker.store.database import Database
from tracker.store.tables import held_line, metadata, offer
from tracker.store.types import NotKept
from tracker.trade.offer import Evidence, Line, State


def store(database: Database, *lines: Line, content: bytes = b"a sheet", **more: object) -> int:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", "took in list.xlsx")
        return files.add(pen, reading(*lines, content=content, **more), content, DAY, {"ton": "short"})


def test_an_offer_comes_back_as_it_was_read(database: Database) -> None:
    file_id = store(database, line())
    with database.reading() as connection:
        only = connection.execute(select(offer.c.id)).scalar_one()
        stored = offers.get(connection, only)
    assert stored.offer == replace(FULL, vendor=VENDOR)
    assert str(stored.offer.price) == "1240.50"
    assert stored.notes == line().notes
    assert (stored.file_id, stored.position) == (file_id, 0)


def test_what_a_sheet_leaves_open_stays_open(database: Database) -> None:
    bare = line(
        caliper_um=None, grammage_gsm=None, grammage_from=None, sheet_mm=None, from_kg=None, below_kg=None,
        minimum_kg=None, lead_days=None, valid_until=None, delivered=None, charges=(), received=None, grade=None,
        coated_sides=None,
    )  # fmt: skip
    store(database, bare)
    with database.reading() as connection:
        only = connection.execute(select(offer.c.id)).scalar_one()
        assert offers.get(connection, only).offer == replace(bare.offer, vendor=VENDOR, received=DAY)


def test_the_file_and_what_said_each_field_are_kept(database: Database) -> None:
    file_id = store(database, line("D5"), line("D6"), content=b"\x00sheet" * 1000)
    with database.reading() as connection:
        assert files.content(connection, file_id) == b"\x00sheet" * 1000
        assert files.evidence(connection, file_id, 1)[0] == Evidence("price", "D6", "1,240.50")
        assert files.evidence(connection, file_id, 1)[1].against == "a footnote"
        kept = files.listing(connection)[0]
    assert (kept.name, kept.vendor, kept.offers, kept.held, kept.withdrawn) == ("list.xlsx", VENDOR, 2, 0, False)
    assert kept.imported_by == "Ada"
    assert abs((datetime.now(UTC) - kept.imported_at).total_seconds()) < 60


def test_the_same_bytes_can_not_be_stored_twice(database: Database) -> None:
    store(database, line())
    with pytest.raises(IntegrityError):
        store(database, line())
    with database.reading() as connection:
        assert connection.execute(select(func.count()).select_from(offer)).scalar() == 1


def test_one_price_that_can_not_be_kept_leaves_the_whole_file_out(database: Database) -> None:
    with pytest.raises(NotKept, match=r"Prices.*D7.*digits"):
        store(database, line("D5"), line("D6"), line("D7", price=Decimal("1.23456789012345678901")))
    with pytest.raises(NotKept, match=r"Prices.*D6.*larger than any measure"):
        store(database, line("D5"), line("D6", from_kg=Decimal(10) ** 20))
    with database.reading() as connection:
        rows = {
            table.name: connection.execute(select(func.count()).select_from(table)).scalar()
            for table in metadata.sorted_tables
        }
    assert set(rows.values()) == {0}


def test_a_line_that_is_not_fully_known_is_never_stored_as_an_offer(database: Database) -> None:
    with pytest.raises(ValueError, match="D5"):
        store(database, replace(line(), offer=replace(FULL, currency=None)))


def test_lines_that_wait_and_their_question_are_kept(database: Database) -> None:
    file_id = store(database, line(), held("D9"), held("D10"), questions=[TON])
    with database.reading() as connection:
        (asked,) = open_matters.open_questions(connection)
        waiting = open_matters.lines(connection, file_id)
    assert (asked.question, asked.file, asked.vendor, asked.lines) == (TON, "list.xlsx", VENDOR, 2)
    assert [(each.cell, each.state) for each in waiting] == [("D9", State.QUESTION), ("D10", State.QUESTION)]


def test_an_answer_adds_what_it_settles_and_keeps_what_is_there(database: Database) -> None:
    file_id = store(database, line("D5"), held("D9"), questions=[TON])
    with database.writing() as connection:
        before = connection.execute(select(offer.c.id)).scalar_one()
        added = files.add_settled(
            Pen(connection, "Ada", "answered"), file_id, reading(line("D5"), line("D9")), {"ton": "short"}
        )
        after = connection.execute(select(offer.c.id, offer.c.cell).order_by(offer.c.id)).all()
        assert open_matters.open_questions(connection) == ()
        assert open_matters.lines(connection, file_id) == ()
    assert added == 1
    assert [cell for _, cell in after] == ["D5", "D9"]
    assert after[0].id == before


def test_what_said_a_field_stays_with_its_offer_where_another_reading_finds_lines_before_it(database: Database) -> None:
    """An answer, or a reader that has learned more since, may add lines above those that are stored."""
    file_id = store(database, line("D6"), line("D7"), line("D8"), held("D9"), questions=[TON])
    fuller = reading(line("D5"), line("D6"), line("D8"), line("D9"))
    with database.writing() as connection:
        assert files.add_settled(Pen(connection, "Ada", "answered"), file_id, fuller, {"ton": "short"}) == 2
    with database.reading() as connection:
        said = {}
        for row in connection.execute(select(offer.c.id, offer.c.cell, offer.c.position)):
            said[row.cell] = [each.said_by for each in files.evidence(connection, file_id, row.position)[:1]]
            assert len(offers.charges_of(connection, row.id)) == 2
    # Of D7 this reading says nothing, and neither do we.
    assert said == {"D5": ["D5"], "D6": ["D6"], "D7": [], "D8": ["D8"], "D9": ["D9"]}
    with database.writing() as connection:
        less = reading(line("D8"), held("D9"), questions=[TON])
        assert files.take_back(Pen(connection, "Ada", "taken back"), file_id, less, {}) == 4
        assert files.evidence(connection, file_id, connection.execute(select(offer.c.position)).scalar_one())[0] == (
            Evidence("price", "D8", "1,240.50")
        )


def test_a_vendor_is_the_same_in_other_capitals(database: Database) -> None:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", "asked")
        first = vendors.id_of(pen, "Quillmere  Board Works")
        assert vendors.id_of(pen, "QUILLMERE BOARD WORKS") == first
        assert vendors.id_of(pen, "Ärlunda Kartong") == vendors.id_of(pen, "ÄRLUNDA kartong")
        assert [entry.now and entry.now["name"] for entry in history(connection, 9)] == [
            "Ärlunda Kartong",
            "Quillmere Board Works",
        ]
        assert vendors.names(connection)[first] == "Quillmere Board Works"


def test_an_import_is_in_the_change_log(database: Database) -> None:
    store(database, line())
    with database.reading() as connection:
        entry, made = history(connection, 10)
    assert (made.table, made.text) == ("vendor", "took in list.xlsx")
    assert (entry.who, entry.text, entry.was) == ("Ada", "took in list.xlsx", None)
    assert entry.now is not None
    assert entry.now["offers"] == 1


def test_a_reference_to_nothing_is_refused(database: Database) -> None:
    with pytest.raises(IntegrityError), database.writing() as connection:
        connection.execute(
            insert(held_line).values(price_file_id=99, sheet="", cell="", state="", product="", as_written="", notes=[])
        )


def test_the_day_of_import_is_known_by_the_bytes(database: Database) -> None:
    store(database, line())
    with database.reading() as connection:
        assert files.imported_on(connection, reading().sha256) == datetime.now().astimezone().date()
        assert files.imported_on(connection, "0" * 64) is None
    assert isinstance(DAY, date)
