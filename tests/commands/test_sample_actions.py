"""Everything the window does with samples, from a shell: requests, templates, claims, verdicts, papers."""

import json
from email import message_from_bytes
from email.policy import default
from pathlib import Path

import pytest

from tests.commands.conftest import Tracker
from tests.desk.filing import file
from tests.store.making import line
from tracker.commands.outcome import Status
from tracker.desk.opening import open_desk

VENDOR = "Quillmere Board Works"


@pytest.fixture
def quoted(tracker: Tracker, database: Path) -> Tracker:
    """A vendor has quoted SBS of 18 pt and 78 lb/MSF, and sample 1 of it has come."""
    desk = open_desk(str(database))
    file(desk, line())
    desk.close()
    tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--caliper-pt", "18", "--on", "2026-11-04")
    tracker("sample", "event", "S-0001", "arrived", "--on", "2026-11-09")
    return tracker


def shown(tracker: Tracker, number: str = "1") -> dict:
    return tracker("sample", "show", number, "--json").document


def test_several_vendors_and_calipers_in_one_go(tracker: Tracker) -> None:
    ended = tracker(
        "sample", "log", "--vendor", "Aldermoor", "--vendor", "Brackly", "--grade", "fbb", "--caliper-pt", "16", "18",
        "20",
        "--quantity", "20 sheets 28 x 40 in", "--contact", "Ms Tamsin", "--on", "2026-11-02",
    )  # fmt: skip
    assert ended.out.split() == ["1", "2", "3", "4", "5", "6"]
    last = tracker("samples", "--json").document["samples"][-1]
    assert (last["form"], last["pieces"], last["size_mm"], last["contact"]) == (
        "sheets",
        20,
        [711.2, 1016.0],
        "Ms Tamsin",
    )


def test_a_template_is_kept_listed_and_used(tracker: Tracker) -> None:
    words = ("--vendor", VENDOR, "--grade", "SBS", "--caliper-pt", "16", "18")
    assert tracker("sample", "template", "White board", *words).status == Status.DONE
    assert tracker("sample", "template").out == f"White board: SBS 16 pt, 18 pt from {VENDOR}\n"
    assert tracker("sample", "log", "--template", "white board", "--for", "Tea").out.split() == ["1", "2"]
    assert tracker("sample", "template", "white board", "--forget").status == Status.DONE
    assert tracker("sample", "template").out == "No template is kept.\n"


@pytest.mark.parametrize(
    ("arguments", "status"),
    [
        (("log",), Status.WRONG_USE),
        (("log", "--vendor", VENDOR), Status.WRONG_USE),
        (("template", "x"), Status.WRONG_USE),
        (("log", "--template", "none"), Status.FAILED),
        (("show", "tea"), Status.FAILED),
        (("show", "7"), Status.FAILED),
        (("event", "1", "burnt"), Status.WRONG_USE),
        (("labels", "x.pdf", "9"), Status.FAILED),
        (("verdict", "1", "approved"), Status.FAILED),
    ],
)
def test_wrong_use_is_one_sentence(tracker: Tracker, arguments: tuple[str, ...], status: Status) -> None:
    ended = tracker("sample", *arguments)
    assert ended.status == status
    assert ended.out == ""
    assert "Traceback" not in ended.err
    assert ended.err.strip()


def test_sent_by_whom_and_lost(tracker: Tracker) -> None:
    tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--on", "2026-11-02")
    sent = ("sent", "--on", "2026-11-05", "--carrier", "Ostrel Parcel", "--tracking", "OP 123")
    assert tracker("sample", "event", "1", *sent).status == Status.DONE
    assert tracker("sample", "event", "1", "arrived", "--carrier", "X").status == Status.WRONG_USE
    assert tracker("sample", "event", "1", "lost", "--on", "2026-11-20").status == Status.DONE
    document = shown(tracker)
    assert (document["state"], document["carrier"], document["tracking"]) == ("lost", "Ostrel Parcel", "OP 123")
    assert [event["kind"] for event in document["events"]] == ["sent", "lost"]
    assert tracker("samples", "--outstanding", "--json").document["samples"] == []


def test_readings_against_the_price_sheet_and_a_data_sheet(quoted: Tracker) -> None:
    ended = quoted(
        "sample", "reading", "1", "caliper", "18.1", "18.0", "17.9", "18.0", "18.2", "--unit", "pt", "--conditioned"
    )
    assert "agrees with the claimed 18 pt (held to ± 5 %)" in ended.out
    assert quoted("sample", "claim", "1", "gloss75", "50").status == Status.DONE
    document = shown(quoted)
    caliper, _, gloss = document["measured"]
    assert (caliper["property"], caliper["check"], caliper["claimed"]) == ("caliper", "agrees", 457.2)
    assert caliper["claimed_by"].startswith("price sheet list.xlsx (Prices, D5)")
    assert (gloss["check"], gloss["more_readings"], gloss["claimed_by"]) == ("cannot be said yet", 5, "data sheet")
    assert "agrees with the claimed" in quoted("sample", "show", "S-0001").out
    assert quoted("sample", "claim", "1", "gloss75").status == Status.WRONG_USE
    assert quoted("sample", "claim", "1", "gloss75", "--take-back").status == Status.DONE
    assert len(shown(quoted)["measured"]) == 2


def test_a_reading_in_the_wrong_unit_is_taken_back(quoted: Tracker) -> None:
    reading = ("sample", "reading", "1", "caliper")
    quoted(*reading, "457", "458", "--unit", "µm")
    taken = quoted(*reading, "458", "--unit", "µm", "--take-back")
    assert taken.out == "Took 1 reading of caliper off sample 1: 458 µm.\n"
    assert quoted(*reading, "--take-back").status == Status.DONE
    assert quoted(*reading, "--take-back").status == Status.FAILED
    assert shown(quoted)["measured"][0]["readings"] == []
    assert quoted(*reading, "18.0", "18.1", "--unit", "pt").status == Status.DONE


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("event", "1", "promised"), "--until DATE"),
        (("event", "1", "sent", "--until", "2026-11-20"), "--until goes with"),
        (("event", "1", "lost", "--tracking", "7"), "--tracking go with"),
        (("reading", "1", "caliper"), "--take-back"),
        (("verdict", "1", "rejected"), "why it is rejected"),
    ],
)
def test_a_sentence_names_the_option_that_is_missing(quoted: Tracker, arguments: tuple[str, ...], said: str) -> None:
    ended = quoted("sample", *arguments)
    assert ended.status == Status.WRONG_USE
    assert said in ended.err


def test_a_verdict_is_in_the_quotes(quoted: Tracker) -> None:
    assert quoted("sample", "verdict", "1", "rejected", "cracks on folding").status == Status.DONE
    (offer,) = quoted("quotes", "--json").document["offers"]
    assert offer["board_verdict"].startswith("rejected: cracks on folding (")
    assert shown(quoted)["verdict"] == "rejected: cracks on folding"


def test_quotes_at_the_measured_weight(quoted: Tracker) -> None:
    quoted("sample", "reading", "1", "grammage", "82", "82", "81.9", "82.1", "82", "--unit", "lb/MSF")
    (claimed,) = quoted("quotes", "--json").document["offers"]
    (measured,) = quoted("quotes", "--json", "--measured-weight").document["offers"]
    assert measured["per_msf"] / claimed["per_msf"] == pytest.approx(82 / 78)
    assert (claimed["grammage_from"], measured["grammage_from"]) == ("quoted", "measured")


def test_chases_labels_calendar_and_files(tracker: Tracker, tmp_path: Path) -> None:
    for vendor in (VENDOR, "Ostrane Karton"):
        tracker("sample", "log", "--vendor", vendor, "--grade", "SBS", "--on", "2026-11-02", "--needed", "2026-11-10")
    tracker(
        "sample", "contact", "Ostrane Karton", "--name", "Frau Weiß", "--mail", "w@ostrane.example", "--language", "de"
    )
    assert tracker("sample", "chase", "--list").out.count("1 due, 1 owed") == 2
    folder = ("--folder", str(tmp_path / "drafts"))
    unsigned = tracker("sample", "chase", *folder)
    assert (unsigned.status, "--buyer" in unsigned.err) == (Status.WRONG_USE, True)
    drafted = tracker("sample", "chase", *folder, "--buyer", "A. Buyer")
    first, second = drafted.out.splitlines()
    assert "nothing was sent" in first
    assert f'No address is known: sample contact "{VENDOR}" --mail ADDRESS.' in second + first
    assert (first + second).count("No address") == 1
    assert [each["chased"] for each in tracker("samples", "--json").document["samples"]] == [0, 0]
    german = next(path for path in (tmp_path / "drafts").iterdir() if "Ostrane" in path.name)
    message = message_from_bytes(german.read_bytes(), policy=default)
    assert "Muster" in message["Subject"]
    assert VENDOR not in german.read_text(encoding="utf-8")
    again = tracker("sample", "chase", "--folder", str(tmp_path / "again"))
    assert again.status == Status.DONE
    assert all("A. Buyer" in path.read_text(encoding="utf-8") for path in (tmp_path / "again").iterdir())
    for number in ("1", "2"):
        assert tracker("sample", "event", number, "chased").status == Status.DONE
    assert tracker("sample", "chase").out == "No vendor is due for a chase today.\n"
    assert (
        tracker("sample", "labels", str(tmp_path / "l.pdf"), "1", "S-0002", "--sheet", "letter-10").status
        == Status.DONE
    )
    assert tracker("sample", "calendar", str(tmp_path / "c.ics")).out == f"Wrote 2 to-dos to {tmp_path / 'c.ics'}.\n"
    photograph = tmp_path / "edge.jpg"
    photograph.write_bytes(b"a photograph")
    assert tracker("sample", "attach", "1", str(photograph)).status == Status.DONE
    assert shown(tracker)["attachments"][0]["name"] == "edge.jpg"


def test_the_board_is_named(quoted: Tracker) -> None:
    assert quoted("sample", "board", "1", "Fenlight Plus").out == "Sample 1 is Fenlight Plus.\n"
    assert shown(quoted)["board"] == "Fenlight Plus"


def test_every_sample_document_is_json(quoted: Tracker) -> None:
    assert json.loads(quoted("sample", "show", "1", "--json").out)["number"] == 1
