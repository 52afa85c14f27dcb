"""Labels, calendar and chase messages, each read back by a program that knows the format and not this project."""

from datetime import UTC, date, datetime, timedelta, timezone
from email import message_from_bytes
from email.policy import default
from pathlib import Path

import icalendar
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.reports.calendar import Todo, TodoState, calendar_text
from tracker.reports.labels import LABEL_SHEETS, SampleLabel, number_code, write_labels
from tracker.reports.message import LANGUAGES, Owed, chase_message, chase_template

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
TODO = Todo(
    database="a",
    number="S-0007",
    summary="Sample S-0007: Hesk, SBS 18 pt; due",
    description="Für Müsli-Faltschachtel,\nzweite Zeile \\ Ende",
    due=date(2026, 12, 1),
    state=TodoState.NEEDS_ACTION,
    sequence=2,
)
OWED = (
    Owed("S-0007", "SBS C1S 18 pt", date(2026, 10, 1), date(2026, 10, 20)),
    Owed("S-0009", "Chromokarton für Müsli", date(2026, 11, 2), None),
)


def todos(text: str) -> list[icalendar.Todo]:
    return list(icalendar.Calendar.from_ical(text).walk("VTODO"))


def test_calendar_reads_back_with_its_due_day_and_alarm() -> None:
    (todo,) = todos(calendar_text([TODO], NOON))
    assert str(todo["SUMMARY"]) == TODO.summary
    assert str(todo["DESCRIPTION"]) == TODO.description
    assert todo["DUE"].dt == date(2026, 12, 1)
    assert todo["STATUS"] == "NEEDS-ACTION"
    assert len(todo.walk("VALARM")) == 1


def test_calendar_keeps_its_uid_at_every_export_and_tells_two_databases_apart() -> None:
    first, second = todos(calendar_text([TODO], NOON)), todos(calendar_text([TODO], NOON + timedelta(days=3)))
    assert first[0]["UID"] == second[0]["UID"]
    other = Todo(
        "b", *(getattr(TODO, name) for name in ("number", "summary", "description", "due", "state", "sequence"))
    )
    assert todos(calendar_text([other], NOON))[0]["UID"] != first[0]["UID"]


def test_an_arrived_sample_is_completed_in_utc_and_rings_no_more() -> None:
    east = timezone(timedelta(hours=2))
    done = Todo("a", "S-1", "x", "", date(2026, 1, 1), TodoState.COMPLETED, 3, datetime(2026, 1, 1, 1, tzinfo=east))
    (todo,) = todos(calendar_text([done], NOON))
    assert todo["COMPLETED"].dt == datetime(2025, 12, 31, 23, tzinfo=UTC)
    assert not todo.walk("VALARM")
    with pytest.raises(ValueError, match="time zone"):
        calendar_text([TODO], datetime(2026, 1, 1))


@given(st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=200))
def test_no_line_is_longer_than_75_octets_and_every_text_reads_back(summary: str) -> None:
    """RFC 5545, 3.1: lines of text should not be longer than 75 octets, the break left out."""
    todo = Todo("a", "S-1", summary, "", None, TodoState.NEEDS_ACTION, 0)
    text = calendar_text([todo], NOON)
    assert max(len(line.encode()) for line in text.split("\r\n")) <= 75
    assert str(todos(text)[0]["SUMMARY"]) == summary


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_chase_lists_all_that_is_owed_in_each_language(language: str) -> None:
    written = bytes(
        chase_message(
            OWED, chase_template(language), buyer="A. Buyer", contact="Fr. Weiß", to="w@hesk.example", made=NOON
        )
    )
    read = message_from_bytes(written, policy=default)
    body = read.get_body().get_content()
    assert read["To"].addresses[0].display_name == "Fr. Weiß"
    assert "(2)" in read["Subject"]
    assert read["Date"].datetime == NOON
    for sample in OWED:
        assert sample.number in body
        assert sample.board in body
    assert "A. Buyer" in body
    assert max(len(line) for line in written.split(b"\r\n")) <= 998
    assert b"\r\n" in written


def test_a_template_with_an_unknown_field_is_told_in_a_sentence(tmp_path: Path) -> None:
    own = tmp_path / "own.toml"
    own.write_text(
        'subject="$nobody"\nbody=""\nline=""\npromised=""\ngreeting=""\ngreeting_named=""\nday=""', encoding="utf-8"
    )
    with pytest.raises(ValueError, match="nobody"):
        chase_message(OWED, chase_template("en", own), buyer="A", made=NOON)
    own.write_text("subject=", encoding="utf-8")
    with pytest.raises(ValueError, match=r"own\.toml"):
        chase_template("en", own)
    with pytest.raises(ValueError, match="not a mail address"):
        chase_message(OWED, chase_template("en"), buyer="A", to="nowhere at all", made=NOON)


@pytest.mark.parametrize("number", ["S-0007", "S-1234567"])
def test_the_code_on_a_label_decodes_to_its_number(number: str) -> None:
    import zxingcpp
    from PIL import Image, ImageDraw

    image = Image.new("L", (330, 330), 255)
    draw = ImageDraw.Draw(image)
    drawing = number_code(number, 290)
    for x, y, width, height in dark_squares(drawing):
        draw.rectangle((20 + x, 20 + 290 - y - height, 20 + x + width, 20 + 290 - y), fill=0)
    (found,) = zxingcpp.read_barcodes(image)
    assert found.text == number


def dark_squares(drawing: object) -> list[tuple[float, float, float, float]]:
    """The black rectangles of a drawing, in its own points."""
    code = drawing.contents[0]  # type: ignore[attr-defined]
    scale = drawing.transform[0]  # type: ignore[attr-defined]
    shapes = code.draw().contents
    return [
        (shape.x * scale, shape.y * scale, shape.width * scale, shape.height * scale)
        for shape in shapes
        if getattr(shape, "fillColor", None) is not None and shape.fillColor.rgb() == (0, 0, 0)
    ]


@pytest.mark.parametrize("sheet", LABEL_SHEETS.values(), ids=LABEL_SHEETS)
def test_labels_fill_a_sheet_and_go_on_to_the_next(sheet: object, tmp_path: Path) -> None:
    per_page = sheet.across * sheet.down  # type: ignore[attr-defined]
    label = SampleLabel("S-0007", "A vendor with a very long name indeed, Ltd", "SBS C1S 18 pt", "", date(2026, 1, 1))
    write_labels([label] * (per_page + 1), sheet, tmp_path / "labels.pdf")  # type: ignore[arg-type]
    assert b"/Count 2" in (tmp_path / "labels.pdf").read_bytes()
    right = sheet.left + (sheet.across - 1) * sheet.pitch[0] + sheet.label[0]  # type: ignore[attr-defined]
    bottom = sheet.top + (sheet.down - 1) * sheet.pitch[1] + sheet.label[1]  # type: ignore[attr-defined]
    assert right <= sheet.page[0]  # type: ignore[attr-defined]
    assert bottom <= sheet.page[1]  # type: ignore[attr-defined]


def test_no_sample_no_label(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="No sample"):
        write_labels([], LABEL_SHEETS["a4-21"], tmp_path / "labels.pdf")
