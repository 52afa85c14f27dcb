"""Edits leave who, when, what was and what is; and can be put back."""

from datetime import date
from decimal import Decimal

import pytest

from tests.store.making import VENDOR
from tracker.store import answers, levels, measurements, rates, samples, settings, verdicts
from tracker.store.changes import ChangedMeanwhile, Pen, history
from tracker.store.database import Database
from tracker.store.measurements import Taken
from tracker.trade.level import LevelFigure

DAY = date(2026, 11, 1)


def set_level(database: Database, per_tonne: str, source: str = "a talk at the fair") -> int:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", f"level {per_tonne}")
        return levels.put(pen, "SBS", DAY, LevelFigure(Decimal(per_tonne), "USD"), source, Decimal("12.5"))


def reverse(database: Database, *changes: int) -> tuple[int, ...]:
    with database.writing() as connection:
        return Pen(connection, "Bo", "undone").reverse(changes)


def test_the_log_says_who_when_what_was_and_what_is(database: Database) -> None:
    set_level(database, "1200")
    set_level(database, "1250.50")
    with database.reading() as connection:
        latest, first = history(connection, 10)
    assert (latest.who, latest.text, latest.table) == ("Ada", "level 1250.50", "level")
    assert first.was is None
    assert latest.was is not None
    assert latest.now is not None
    assert (latest.was["per_tonne_units"], latest.now["per_tonne_units"]) == (1200, 125050)
    assert latest.now["on_day"] == "2026-11-01"


def test_a_change_undone_and_done_again(database: Database) -> None:
    set_level(database, "1200")
    changed = set_level(database, "1250.50")
    redo = reverse(database, changed)
    with database.reading() as connection:
        (level,) = levels.listing(connection)
    assert (level.per_tonne, level.spread, level.on) == (Decimal(1200), Decimal("12.5"), DAY)
    reverse(database, *redo)
    with database.reading() as connection:
        assert [str(level.per_tonne) for level in levels.listing(connection)] == ["1250.50"]


def test_an_addition_undone_is_gone_and_comes_back_the_same(database: Database) -> None:
    added = set_level(database, "1200")
    with database.reading() as connection:
        before = levels.listing(connection)
    redo = reverse(database, added)
    with database.reading() as connection:
        assert levels.listing(connection) == ()
    reverse(database, *redo)
    with database.reading() as connection:
        assert levels.listing(connection) == before


def test_a_removal_undone_brings_back_answers_with_their_moment(database: Database) -> None:
    from tracker.store.tables import answer

    with database.writing() as connection:
        answers.remember(Pen(connection, "Ada", "x"), VENDOR, "ton", "short", "per ton")
    with database.reading() as connection:
        (before,) = answers.listing(connection, VENDOR)
    with database.writing() as connection:
        removed = Pen(connection, "Ada", "forgot").delete(answer, before.id)
    with database.reading() as connection:
        assert answers.listing(connection, VENDOR) == ()
    reverse(database, removed)
    with database.reading() as connection:
        assert answers.listing(connection) == (before,)


def test_what_was_edited_again_is_not_overwritten(database: Database) -> None:
    first = set_level(database, "1200")
    set_level(database, "1300")
    with pytest.raises(ChangedMeanwhile, match="changed again"):
        reverse(database, first)
    with database.reading() as connection:
        assert [level.per_tonne for level in levels.listing(connection)] == [1300]


def test_an_edit_that_fails_leaves_neither_row_nor_entry(database: Database) -> None:
    class Interrupted(Exception):
        pass

    def interrupted() -> None:
        with database.writing() as connection:
            rates.put(Pen(connection, "Ada", "x"), "USD", DAY, Decimal("0.9"))
            raise Interrupted

    with pytest.raises(Interrupted):
        interrupted()
    with database.reading() as connection:
        assert rates.listing(connection) == ()
        assert history(connection, 5) == ()


def test_the_number_of_a_removed_row_is_never_given_again(database: Database) -> None:
    def log() -> tuple[int, int]:
        with database.writing() as connection:
            values = {"grade": "SBS", "quantity": "", "for_what": "", "requested_on": DAY}
            return samples.log(Pen(connection, "Ada", "log"), VENDOR, values)

    first, change = log()
    reverse(database, change)
    second, _ = log()
    assert second > first


def test_an_answer_said_again_replaces_the_earlier_one(database: Database) -> None:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", "x")
        answers.remember(pen, VENDOR, "ton", "short", "")
        answers.remember(pen, VENDOR.upper(), "ton", "metric", "")
    with database.reading() as connection:
        assert [(each.key, each.value) for each in answers.listing(connection, VENDOR)] == [("ton", "metric")]
        assert answers.listing(connection, "Nobody Ltd") == ()


def test_rates_settings_and_verdicts_come_back(database: Database) -> None:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", "x")
        rates.put(pen, "USD", DAY, Decimal("0.91"))
        rates.put(pen, "USD", DAY, Decimal("0.92"))
        settings.put(pen, "sensitivity", {"cut_off": 3.5})
        settings.put(pen, "sensitivity", {"cut_off": 3.0})
        verdicts.add(pen, VENDOR, "Fenlight", True, "tea cartons", "", DAY, "", None)
    with database.reading() as connection:
        assert rates.listing(connection) == (("USD", DAY, Decimal("0.92")),)
        assert settings.get(connection, "sensitivity") == {"cut_off": 3.0}
        assert settings.get(connection, "unknown") is None
        (verdict,) = verdicts.listing(connection)
    assert (verdict.vendor, verdict.approved, verdict.for_what, verdict.by) == (VENDOR, True, "tea cartons", "Ada")


def test_a_sample_comes_back_with_its_events_in_the_order_of_days(database: Database) -> None:
    with database.writing() as connection:
        pen = Pen(connection, "Ada", "x")
        values = {"grade": "SBS", "caliper_um": Decimal("457.2"), "quantity": "20 sheets", "for_what": "tea"}
        number, _ = samples.log(pen, VENDOR, {**values, "requested_on": DAY, "needed_by": date(2026, 12, 1)})
        samples.add_event(pen, number, "arrived", date(2026, 11, 12), None, "")
        samples.add_event(pen, number, "promised", date(2026, 11, 3), date(2026, 11, 10), "by telephone")
        measurements.add_reading(pen, number, Decimal("18.10"), Taken("caliper", "pt", date(2026, 11, 13)))
    with database.reading() as connection:
        request = samples.get(connection, number)
        assert [str(each.value) for each in measurements.readings_of(connection, number)] == ["18.10"]
        with pytest.raises(KeyError):
            samples.get(connection, number + 1)
    assert [event.kind for event in request.events] == ["promised", "arrived"]
    assert request.events[0].until == date(2026, 11, 10)
    assert (request.caliper_um, request.measured_on) == (Decimal("457.2"), (date(2026, 11, 13),))
