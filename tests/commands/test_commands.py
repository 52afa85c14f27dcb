"""Each command does what its help says, and prints what the contract names."""

import csv
import json
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from tests.commands.conftest import Tracker
from tests.desk.filing import file
from tests.store.making import VENDOR, line
from tracker.commands.outcome import Status
from tracker.desk.opening import Desk


@pytest.fixture
def filed(database: Path) -> Path:
    """Two boards on offer, one of which a vendor wrote like a formula."""
    desk = Desk(str(database), "Ada")
    file(desk, line("D5"), line("D6", product="=HYPERLINK(1)", grade="CRB"))
    desk.close()
    return database


def test_a_level_is_set_and_listed(tracker: Tracker) -> None:
    wanted = ("--per-tonne", "1300", "--currency", "usd", "--from", "2026-10-01", "--source", "our estimate")
    assert tracker("level", "sbs", *wanted, "--spread", "12.5").status == Status.DONE
    assert tracker("level", "--json").document == {
        "levels": [
            {
                "grade": "SBS",
                "from": "2026-10-01",
                "per_tonne": "1300",
                "currency": "USD",
                "said": {"price": "1300", "basis": "tonne"},
                "source": "our estimate",
                "spread": "12.5",
                "carried_by": None,
            }
        ],
        "ratios": [],
        "sensitivity": "careful",
    }
    assert "SBS  2026-10-01  USD 1,300 per tonne ± 12.5 %" in tracker("level").out


def test_a_level_that_lacks_something_says_what(tracker: Tracker) -> None:
    ended = tracker("level", "SBS", "--per-tonne", "1300")
    assert (ended.status, ended.err) == (Status.WRONG_USE, "A level needs --currency, --from, --source too.\n")


def test_quotes_as_json(tracker: Tracker, filed: Path) -> None:
    document = tracker("quotes", "--as-of", "2026-11-25", "--currency", "EUR", "--json").document
    assert (document["as_of"], document["currency"]) == ("2026-11-25", "EUR")
    assert [offer["grade"] for offer in document["offers"]] == ["SBS", "CRB"]
    assert document["offers"][0]["rate"]["source"]


def test_prices_that_no_rate_can_bring_over_are_not_left_empty_in_silence(tracker: Tracker, filed: Path) -> None:
    ended = tracker("quotes", "--as-of", "2026-11-25", "--currency", "XAU", "--json")
    assert {offer["per_tonne"] for offer in ended.document["offers"]} == {None}
    assert "No rate from USD to XAU is known on 2026-11-25" in ended.err
    assert tracker("quotes", "--as-of", "2026-11-25", "--json").err == ""


def test_a_vendor_nobody_knows_is_said_to_be_unknown(tracker: Tracker, filed: Path) -> None:
    ended = tracker("quotes", "--as-of", "2026-11-25", "--vendor", "Quillmere", "--json")
    assert ended.document["offers"] == []
    assert f"No vendor is called Quillmere here; those known are: {VENDOR}." in ended.err
    assert tracker("quotes", "--as-of", "2026-11-25", "--vendor", VENDOR.upper(), "--json").err == ""


def test_a_rate_of_the_user_s_own_is_used(tracker: Tracker, filed: Path) -> None:
    assert tracker("rate", "USD", "0.5", "--on", "2026-11-25").status == Status.DONE
    (offer, _) = tracker("quotes", "--as-of", "2026-11-25", "--currency", "EUR", "--json").document["offers"]
    assert offer["per_tonne"] == pytest.approx(1240.5 / 0.90718474 / 2)
    assert offer["rate"]["factor"] == 0.5


def test_a_level_per_short_ton_is_kept_as_it_was_said(tracker: Tracker) -> None:
    wanted = ("--per-short-ton", "1320", "--currency", "USD", "--from", "2026-10-01", "--source", "our estimate")
    assert tracker("level", "SBS", *wanted).status == Status.DONE
    (level,) = tracker("level", "--json").document["levels"]
    assert (level["per_tonne"], level["source"]) == ("1455.05", "our estimate")
    assert level["said"] == {"price": "1320", "basis": "short_ton"}
    assert "USD 1,320 per short ton  our estimate" in tracker("level").out
    assert tracker("level", "SBS", *wanted, "--per-tonne", "1455").status == Status.WRONG_USE


def test_a_level_a_decimal_point_off_is_asked_about(tracker: Tracker) -> None:
    said = ("--currency", "USD", "--from", "2026-10-01", "--source", "our estimate")
    asked = tracker("level", "SBS", "--per-tonne", "145", *said)
    assert (asked.status, asked.out) == (Status.ASKED, "")
    assert "which no carton board costs. Nothing was set; add --yes" in asked.err
    assert tracker("level", "SBS", "--per-tonne", "1450", *said).status == Status.DONE
    far = tracker("level", "SBS", "--per-tonne", "700", *said)
    assert "far from its level of 1 Oct 2026, USD 1,450 per tonne" in far.err
    assert tracker("level", "SBS", "--per-tonne", "700", *said, "--yes").status == Status.DONE


def test_the_ratios_that_bands_rest_on_are_listed_with_who_says_so(tracker: Tracker) -> None:
    assert "CRB  built in    0.60 to 0.85 of SBS" in tracker("level").out
    own = ("--ratio", "0.65:0.80", "--from", "2026-10-01", "--source", "our estimate")
    assert tracker("level", "CRB", *own).status == Status.DONE
    said = tracker("level").out
    assert "CRB  2026-10-01  0.65 to 0.8 of SBS  our estimate" in said
    assert "CRB  built in" not in said


@pytest.mark.parametrize("euros", ["86", "0.0086"])
def test_a_rate_far_from_the_published_one_is_asked_about(tracker: Tracker, euros: str) -> None:
    wanted = ("rate", "USD", euros, "--on", "2026-10-30")
    asked = tracker(*wanted)
    assert (asked.status, asked.out) == (Status.ASKED, "")
    assert "European Central Bank" in asked.err
    assert "add --yes if it is meant" in asked.err
    assert tracker(*wanted, "--yes").status == Status.DONE


@pytest.mark.parametrize(
    ("options", "count"),
    [
        (["--grade", "crb"], 1),
        (["--grade", "FBB"], 0),
        (["--vendor", VENDOR.upper()], 2),
        (["--vendor", "Nobody"], 0),
        (["--caliper-pt", "18:18"], 2),
        (["--caliper-pt", "18"], 2),
        (["--caliper-pt", "18.5:"], 0),
        (["--caliper-pt", ":17.9"], 0),
        (["--order-kg", "5000"], 2),
        (["--order-kg", "50000"], 0),
        (["--as-of", "2027-02-01"], 0),
        (["--as-of", "2027-02-01", "--all"], 2),
    ],
)
def test_quotes_are_picked_by_what_is_asked(tracker: Tracker, filed: Path, options: list[str], count: int) -> None:
    asked = options if "--as-of" in options else [*options, "--as-of", "2026-11-25"]
    assert len(tracker("quotes", "--json", *asked).document["offers"]) == count


def test_calipers_that_end_before_they_begin_are_wrong_use(tracker: Tracker) -> None:
    ended = tracker("quotes", "--caliper-pt", "20:16")
    assert ended.status == Status.WRONG_USE
    assert "ends before it begins" in ended.err


def test_quotes_for_a_person(tracker: Tracker, filed: Path) -> None:
    said = tracker("quotes", "--as-of", "2026-11-25").out
    assert "Quillmere Board Works" in said
    assert "1,367.42" in said


def test_quotes_written_out_run_in_no_spreadsheet(tracker: Tracker, filed: Path, tmp_path: Path) -> None:
    from openpyxl import load_workbook

    assert tracker("quotes", "--as-of", "2026-11-25", "--csv", str(tmp_path / "q.csv")).status == Status.DONE
    with (tmp_path / "q.csv").open(encoding="utf-8-sig", newline="") as opened:
        rows = list(csv.DictReader(opened))
    assert [row["product"] for row in rows] == ["Fenlight White", "'=HYPERLINK(1)"]
    assert float(rows[0]["per_tonne"]) == 1367.42
    assert rows[0]["source_cell"] == "D5"
    assert tracker("quotes", "--as-of", "2026-11-25", "--xlsx", str(tmp_path / "q.xlsx")).status == Status.DONE
    sheet = load_workbook(tmp_path / "q.xlsx")["Quotes"]
    headings = [cell.value for cell in sheet[1]]
    cell = sheet.cell(3, headings.index("product") + 1)
    assert (cell.value, cell.data_type) == ("=HYPERLINK(1)", "s")


def test_a_place_that_can_not_be_written_to_is_said(tracker: Tracker, filed: Path, tmp_path: Path) -> None:
    for option in ("--csv", "--xlsx"):
        ended = tracker("quotes", option, str(tmp_path / "no" / "q"))
        assert ended.status == Status.FAILED
        assert "can't be written" in ended.err


def test_a_sample_from_request_to_readings(tracker: Tracker) -> None:
    logged = tracker(
        "sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--caliper-pt", "18", "--quantity", "20 sheets",
        "--on", "2026-11-02", "--needed", "2026-11-20", "--for", "Tea",
    )  # fmt: skip
    assert (logged.status, logged.out) == (Status.DONE, "1\n")
    assert tracker("sample", "event", "1", "promised", "--on", "2026-11-03", "--until", "2026-11-10").status == 0
    assert tracker("sample", "event", "1", "chased", "--on", "2026-11-12", "--note", "by telephone").status == 0
    (owed,) = tracker("samples", "--outstanding", "--overdue", "--as-of", "2026-11-15", "--json").document["samples"]
    contract = {
        "number": 1,
        "vendor": VENDOR,
        "grade": "SBS",
        "caliper_um": 457.2,
        "quantity": "20 sheets",
        "requested": "2026-11-02",
        "needed": "2026-11-20",
        "promised": "2026-11-10",
        "sent": None,
        "arrived": None,
        "state": "promised",
        "waiting_days": 13,
        "due": "2026-11-10",
        "due_from": "promise",
        "overdue_days": 5,
        "chased": 1,
        "for": "Tea",
        "verdict": None,
    }
    assert {key: owed[key] for key in contract} == contract
    assert tracker("sample", "event", "1", "arrived", "--on", "2026-11-16").status == 0
    reading = tracker("sample", "reading", "1", "caliper", "18.1", "18.0", "17.9", "--unit", "pt", "--on", "2026-11-17")
    assert reading.status == Status.DONE
    assert reading.out.startswith("3 readings of caliper on sample 1.\nCaliper: 3 readings, mean 18 pt;")
    document = tracker("samples", "--as-of", "2026-11-18", "--json").document
    assert (document["as_of"], document["samples"][0]["state"]) == ("2026-11-18", "tested")
    assert tracker("samples", "--outstanding", "--as-of", "2026-11-18", "--json").document["samples"] == []


def test_what_was_logged_is_said_beside_its_bare_number(tracker: Tracker) -> None:
    ended = tracker(
        "sample", "log", "--vendor", VENDOR, "--grade", "gc1", "--caliper-pt", "18", "20", "--needed", "2027-01-20",
        "--on", "2026-11-02", "--for", "Tea",
    )  # fmt: skip
    assert ended.out == "1\n2\n"
    first, second = ended.err.splitlines()
    assert first == f"Logged no. 1: {VENDOR}, FBB, 18 pt, needed by 2027-01-20, for Tea."
    assert "no. 2" in second
    assert "20 pt" in second


def test_a_caliper_ten_times_too_thick_is_not_logged(tracker: Tracker) -> None:
    ended = tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--caliper-pt", "180")
    assert (ended.status, ended.out) == (Status.FAILED, "")
    assert ended.err.startswith("A caliper of 180 pt (4572 µm) is no carton board's")


def test_a_list_with_nothing_in_it_says_why(tracker: Tracker, filed: Path) -> None:
    day = ("--as-of", "2026-11-25")
    for asked, said in (
        (("quotes", "--grade", "FBB", "--vendor", VENDOR, *day), "None of the 2 offers that hold on 2026-11-25 is of"),
        (("quotes", "--as-of", "2027-02-01"), "No offer holds on 2027-02-01: --all shows"),
        (("quotes", "--as-of", "2020-01-01"), "No offer had come by 2020-01-01; the first is of 2026-11-03."),
        (("quotes", "--order-kg", "50000", *day), "for an order of 50,000 kg"),
        (("samples", *day), "No sample was asked for by 2026-11-25"),
    ):
        ended = tracker(*asked)
        assert (ended.status, ended.out) == (Status.DONE, "")
        assert said in ended.err
    tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--on", "2026-11-02")
    assert "Of 1 sample none is overdue on 2026-11-03." in tracker("samples", "--overdue", "--as-of", "2026-11-03").err


def test_samples_for_a_person_and_as_csv(tracker: Tracker, tmp_path: Path) -> None:
    tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--on", "2026-11-02")
    assert VENDOR in tracker("samples").out
    assert tracker("samples", "--csv", str(tmp_path / "s.csv")).status == Status.DONE
    assert VENDOR in (tmp_path / "s.csv").read_text(encoding="utf-8-sig")


def test_waits_count_what_is_still_awaited(tracker: Tracker) -> None:
    for number, arrived in enumerate(("2026-10-11", "2026-10-21", None), start=1):
        tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--on", "2026-10-01")
        if arrived:
            tracker("sample", "event", str(number), "arrived", "--on", arrived)
    document = tracker("waits", "--json", "--as-of", "2026-11-25").document
    whole = document["all"]
    assert (whole["n"], whole["arrived"], whole["outstanding"], whole["median_days"]) == (3, 2, 1, 20.0)
    assert [row["vendor"] for row in document["vendors"]] == [VENDOR]
    assert document["lead_times"]["all"]["n"] == 0
    assert VENDOR in tracker("waits").out


def test_a_median_that_is_not_reached_is_null(tracker: Tracker) -> None:
    tracker("sample", "log", "--vendor", VENDOR, "--grade", "SBS", "--on", "2026-10-01")
    assert tracker("waits", "--json").document["all"]["median_days"] is None


def test_lead_times_are_those_of_current_offers(tracker: Tracker, filed: Path) -> None:
    document = tracker("waits", "--json", "--as-of", "2026-11-25").document
    row = document["lead_times"]["all"]
    assert (row["n"], row["median_days"], row["low_days"], row["high_days"]) == (2, 35.0, 28.0, 42.0)
    assert tracker("waits", "--json", "--as-of", "2027-11-25").document["lead_times"]["all"]["n"] == 0


def test_backup_check_and_restore(tracker: Tracker, filed: Path, tmp_path: Path) -> None:
    assert tracker("backup", str(tmp_path / "copy.sqlite")).status == Status.DONE
    assert tracker("check").status == Status.DONE
    with closing(sqlite3.connect(filed)) as connection:
        connection.execute("UPDATE offer SET vendor_id = 99")
        connection.commit()
    broken = tracker("check")
    assert broken.status == Status.FAILED
    assert "vendor that is not there" in broken.err
    assert tracker("restore", str(tmp_path / "copy.sqlite")).status == Status.DONE
    assert tracker("check").status == Status.DONE


def test_json_is_json_for_an_empty_database(tracker: Tracker) -> None:
    for command in ("quotes", "samples", "waits", "level"):
        ended = tracker(command, "--json")
        assert ended.status == Status.DONE
        json.loads(ended.out)
        assert ended.err.count("\n") <= 1


def test_an_index_carries_a_level_forward(tracker: Tracker, filed: Path, tmp_path: Path) -> None:
    wanted = ("--per-tonne", "1300", "--currency", "USD", "--from", "2026-10-01", "--source", "our estimate")
    index = tmp_path / "board index.csv"
    index.write_text("date,value\n2026-09,100\n2026-11,110\n", encoding="utf-8")
    ended = tracker("level", "SBS", *wanted, "--index", str(index))
    assert (ended.status, ended.err) == (Status.DONE, "")
    assert tracker("level", "--json").document["levels"][0]["carried_by"] == "board index"
    (offer, _) = tracker("quotes", "--as-of", "2026-11-25", "--json").document["offers"]
    assert offer["verdict"]["band"]["low"] == pytest.approx(1300 * 1.1 * 0.85)
    assert "carried forward to 1 Nov 2026 by board index (+10.0 %)" in offer["verdict"]["band"]["source"]


def test_a_ratio_of_one_s_own_is_set_and_listed(tracker: Tracker) -> None:
    said = ("--from", "2026-10-01", "--source", "our tender")
    assert tracker("level", "FBB", "--ratio", "0.70:0.80", *said).status == Status.DONE
    (ratio,) = tracker("level", "--json").document["ratios"]
    assert ratio == {"grade": "FBB", "from": "2026-10-01", "low": "0.7", "high": "0.8", "source": "our tender"}
    assert "FBB  2026-10-01  0.7 to 0.8 of SBS  our tender" in tracker("level").out
    assert tracker("level", "FBB", "--ratio", "0.70:0.80").err == "A ratio needs --from, --source too.\n"
    assert tracker("level", "FBB", "--ratio", "0.7", *said).status == Status.WRONG_USE
    assert tracker("level", "FBB", "--ratio", "0.9:0.7", *said).status == Status.WRONG_USE


def test_the_sensitivity_is_set_and_chosen_for_once(tracker: Tracker, filed: Path) -> None:
    assert tracker("level", "--sensitivity", "sure").status == Status.DONE
    assert tracker("level", "--json").document["sensitivity"] == "sure"
    assert tracker("quotes", "--sensitivity", "curious", "--json").status == Status.DONE
    assert tracker("quotes", "--sensitivity", "brave").status == Status.WRONG_USE


def test_an_order_that_no_bracket_holds_is_said(tracker: Tracker, filed: Path) -> None:
    ended = tracker("quotes", "--as-of", "2026-11-25", "--order-kg", "1000", "--json")
    assert (ended.status, ended.document["offers"]) == (Status.DONE, [])
    assert ended.err.startswith("2 of the current boards are not offered for an order of 1,000 kg")
    assert tracker("quotes", "--as-of", "2026-11-25", "--order-kg", "10000", "--delivered", "--json").err == ""
