"""A database of the first version keeps its samples and readings when the later columns come."""

from datetime import date

import pytest
from sqlalchemy import inspect

from tracker.store import measurements, samples, schema
from tracker.store.database import Database, connect


@pytest.fixture
def first_version(where: str) -> Database:
    database = connect(where)
    with database.writing() as connection:
        for table in inspect(connection).get_table_names():
            connection.exec_driver_sql(f'DROP TABLE "{table}"' + ("" if database.path else " CASCADE"))
    schema.migrate(database, "0001")
    return database


def test_samples_of_the_first_version_are_kept(first_version: Database) -> None:
    with first_version.writing() as connection:
        for statement in (
            "INSERT INTO vendor (id, name, folded) VALUES (1, 'Quillmere Board Works', 'quillmere board works')",
            (
                "INSERT INTO sample_request (id, vendor_id, grade, quantity, for_what, requested_on, logged_by) "
                "VALUES (1, 1, 'SBS', '20 sheets', 'Tea', '2026-11-02', 'Ada')"
            ),
            (
                "INSERT INTO reading (id, sample_request_id, property, value_units, value_scale, unit, taken_on, "
                "taken_by) VALUES (1, 1, 'caliper', 457, 0, 'µm', '2026-11-09', 'Ada')"
            ),
        ):
            connection.exec_driver_sql(statement)
    schema.migrate(first_version)
    with first_version.reading() as connection:
        request = samples.get(connection, 1)
        (reading,) = measurements.readings_of(connection, 1)
    assert (request.quantity, request.requested, request.contact, request.pieces) == (
        "20 sheets",
        date(2026, 11, 2),
        "",
        None,
    )
    assert (str(reading.value), reading.conditioned, reading.method) == ("457", None, "")
    first_version.close()
