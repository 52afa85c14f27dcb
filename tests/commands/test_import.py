"""import, from a vendor's file to stored offers: the plainest price list and a workbook, read for real."""

import os
import sqlite3
import sys
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest
from openpyxl import Workbook

from tests.commands.conftest import Tracker
from tracker.commands.outcome import Status

here = pytest.mark.usefixtures("reading_here")
HEADER = (
    "vendor,product,grade,coated_sides,caliper_pt,basis_weight_lb_msf,price,currency,basis,from_kg,below_kg,"
    "lead_days,valid_until,received"
)
PLAIN = f"""{HEADER}
Quillmere Board Works,Fenlight White,SBS,1,18,78,1240.50,USD,short_ton,,10000,28,2026-12-31,2026-11-03
Quillmere Board Works,Fenlight White,SBS,1,18,78,1215,USD,short_ton,10000,,28,2026-12-31,2026-11-03
Marrowby Paper,Greyfold,CRB,1,20,80,44.20,USD,msf,,,21,2026-12-31,2026-11-10
"""


@pytest.fixture
def plain(tmp_path: Path) -> Path:
    path = tmp_path / "plain.csv"
    path.write_text(PLAIN, encoding="utf-8")
    return path


@pytest.fixture
def tons(tmp_path: Path) -> Path:
    """A vendor's list whose 'ton' may be either."""
    path = tmp_path / "tons.xlsx"
    book = Workbook()
    sheet = book.active
    sheet.append(["Ostrel Karton"])
    sheet.append([])
    sheet.append(["Board", "Grade", "Caliper (pt)", "Basis weight (g/m²)", "Price USD/ton"])
    for caliper, weight in ((16, 300), (18, 335), (20, 365)):
        sheet.append([f"Fenlight {caliper}", "SBS", caliper, weight, 1200 + caliper])
    book.save(path)
    return path


def test_the_plainest_list_is_read_without_a_question_and_stored(tracker: Tracker, plain: Path) -> None:
    ended = tracker("import", str(plain), "--json")
    assert (ended.status, ended.err) == (Status.DONE, "")
    (told,) = ended.document["files"]
    assert [line["state"] for line in told["lines"]] == ["accepted"] * 3
    assert [line["cell"] for line in told["lines"]] == ["G2", "G3", "G4"]
    first, second, third = told["lines"]
    assert (first["price"], first["basis"], first["below_kg"], first["lead_days"]) == (
        "1240.5",
        "short_ton",
        "10000",
        [28, 28],
    )
    assert (second["from_kg"], second["below_kg"]) == ("10000", None)
    assert third["vendor"] == "Marrowby Paper"
    offers = tracker("quotes", "--as-of", "2026-11-25", "--json").document["offers"]
    assert sorted((offer["vendor"], offer["received"]) for offer in offers) == [
        ("Marrowby Paper", "2026-11-10"),
        ("Quillmere Board Works", "2026-11-03"),
        ("Quillmere Board Works", "2026-11-03"),
    ]


def test_a_dry_run_stores_nothing_and_makes_no_database(
    tmp_path: Path, plain: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    from tracker.commands import run

    nowhere = tmp_path / "folder" / "none.sqlite"
    assert run(["--database", str(nowhere), "import", str(plain), "--dry-run"]) == Status.DONE
    assert capsys.readouterr().out.startswith("plain.csv: 3 accepted, 0 held by a question, 0 refused")
    assert not nowhere.parent.exists()


@here
def test_the_same_file_again_adds_nothing_and_says_so(tracker: Tracker, plain: Path) -> None:
    assert tracker("import", str(plain)).status == Status.DONE
    again = tracker("import", str(plain))
    assert again.status == Status.DONE
    assert f"already taken in on {date.today().isoformat()}" in again.out
    assert len(tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]) == 3
    noted = tracker("import", str(plain), "--dry-run", "--json").document["files"][0]["lines"]
    assert all(line["notes"][-1]["code"] == "already-imported" for line in noted)


@here
def test_what_is_left_open_is_asked_with_status_three(tracker: Tracker, tons: Path) -> None:
    ended = tracker("import", str(tons), "--json")
    assert ended.status == Status.ASKED
    assert "tonne" in ended.err
    (told,) = ended.document["files"]
    assert {line["state"] for line in told["lines"]} == {"question"}
    assert all("basis-unknown" in [note["code"] for note in line["notes"]] for line in told["lines"])
    assert tracker("quotes", "--json").document["offers"] == []


@here
def test_an_option_answers_for_the_whole_file_and_is_remembered_for_the_vendor(
    tracker: Tracker, tons: Path, tmp_path: Path
) -> None:
    answered = tracker("import", str(tons), "--ton", "short", "--vendor", "Ostrel Karton", "--received", "2026-11-03")
    assert (answered.status, answered.err) == (Status.DONE, "")
    offers = tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]
    assert {offer["basis"] for offer in offers} == {"short_ton"}
    assert {offer["received"] for offer in offers} == {"2026-11-03"}
    later = tmp_path / "later.xlsx"
    from openpyxl import load_workbook

    book = load_workbook(tons)
    book.active["E4"] = 1300
    book.save(later)
    assert tracker("import", str(later), "--dry-run").status == Status.DONE


def test_an_unreadable_file_is_told_and_the_others_are_still_read(
    tracker: Tracker, plain: Path, tmp_path: Path
) -> None:
    broken = tmp_path / "broken.xlsx"
    broken.write_bytes(b"PK\x03\x04 not really a workbook")
    ended = tracker("import", str(broken), str(plain), str(tmp_path / "gone.csv"), "--json")
    assert ended.status == Status.WRONG_USE
    told = ended.document["files"]
    assert [file["file"] for file in told] == ["broken.xlsx", "plain.csv", "gone.csv"]
    assert told[0]["unreadable"]
    assert told[1]["unreadable"] is None
    assert told[2]["unreadable"].startswith("gone.csv is not there; check the name")
    assert len(tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]) == 3


@here
def test_a_file_that_can_not_be_stored_does_not_keep_the_others_out(
    tracker: Tracker, database: Path, plain: Path, tmp_path: Path
) -> None:
    long = tmp_path / "long.csv"
    long.write_text(f"{HEADER}\nMarrowby Paper,Greyfold,CRB,1,20,80,44.20,USD,msf,,,21,,2026-11-10\n")
    with closing(sqlite3.connect(database)) as connection:
        refusing = "CREATE TRIGGER full BEFORE INSERT ON price_file WHEN NEW.name = 'long.csv' "
        connection.execute(f"{refusing} BEGIN SELECT RAISE(ABORT, 'refused'); END")
    ended = tracker("import", str(long), str(plain), "--json")
    assert ended.status == Status.FAILED
    assert [file["file"] for file in ended.document["files"]] == ["long.csv", "plain.csv"]
    assert ended.err.startswith("long.csv: Nothing was stored")
    assert len(tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]) == 3


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="names of files are letters there")
def test_a_file_whose_name_is_no_letters_is_taken_in(tracker: Tracker, plain: Path, tmp_path: Path) -> None:
    odd = tmp_path / os.fsdecode(b"pr\xfcis.csv")
    odd.write_bytes(plain.read_bytes())
    ended = tracker("import", str(odd), "--json")
    assert ended.status == Status.DONE
    assert ended.document["files"][0]["file"] == r"pr\xfcis.csv"
    offers = tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]
    assert {offer["source"]["file"] for offer in offers} == {r"pr\xfcis.csv"}


@pytest.mark.parametrize("words", ["Fenlight", "=SBS", "Fenlight="])
def test_an_answer_about_a_grade_needs_words_and_a_code(tracker: Tracker, plain: Path, words: str) -> None:
    ended = tracker("import", str(plain), "--grade", words)
    assert ended.status == Status.WRONG_USE
    assert "WORDS=CODE" in ended.err


@here
def test_an_answer_to_a_sheet_taken_in_before_lets_its_held_lines_through(tracker: Tracker, tons: Path) -> None:
    assert tracker("import", str(tons)).status == Status.ASKED
    again = tracker("import", str(tons))
    assert "nothing was added. What is held waits for its answers" in again.out
    answered = tracker("import", str(tons), "--ton", "metric")
    assert answered.status == Status.DONE
    assert "already taken in" not in answered.out
    offers = tracker("quotes", "--json").document["offers"]
    assert [offer["basis"] for offer in offers] == ["tonne"] * 3
    assert "nothing was added" in tracker("import", str(tons), "--ton", "metric").out
    assert len(tracker("quotes", "--json").document["offers"]) == 3


@pytest.fixture
def open_points(tmp_path: Path) -> Path:
    """A list that leaves its ton, a grade and a currency open, and holds prices that can't be used."""
    path = tmp_path / "open.xlsx"
    book = Workbook()
    sheet = book.active
    sheet.title = "Offer"
    sheet.append(["Ostrel Karton"])
    sheet.append(["Board", "Caliper (pt)", "Basis weight (g/m²)", "Price", "Unit"])
    sheet.append(["SBS board", 18, 380, 1240, "USD/ton"])
    sheet.append(["Fenlight White", 18, 380, 47.50, "USD/MSF"])
    sheet.append(["SBS board", 20, 410, "=D3-D4", "USD/MSF"])
    sheet.append(["SBS board", 22, 449, 0, "USD/MSF"])
    sheet.append(["SBS board", 24, 478, 44.50, "USD/MSF"])
    book.save(path)
    return path


@here
def test_a_question_names_its_cells_and_the_option_that_answers_it(tracker: Tracker, open_points: Path) -> None:
    said = tracker("import", str(open_points)).err.splitlines()
    (ton,) = (line for line in said if "ton of" in line)
    assert ton.startswith("open.xlsx, sheet “Offer”, cell D3: ")
    assert ton.endswith("--ton short or --ton metric.")
    (grade,) = (line for line in said if "Which grade" in line)
    assert "cell D4" in grade
    assert '--grade "Fenlight White=CODE"' in grade
    answered = tracker("import", str(open_points), "--ton", "short", "--grade", "Fenlight White=SBS")
    assert "Offer”, cell D5" in answered.err
    assert "Answer it" not in answered.err


@here
def test_a_question_that_no_option_answers_is_sent_to_the_window(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "per_what.csv"
    path.write_text("Board,Grade,Caliper (pt),Price USD/ream\nFenlight,SBS,18,1240\nFenlight,SBS,20,1250\n", "utf-8")
    ended = tracker("import", str(path))
    assert ended.status == Status.ASKED
    assert "per_what.csv, cells D2, D3: " in ended.err
    assert "1,000 sheets; " in ended.err
    assert "Answer it in the window, under Today." in ended.err


@here
def test_a_refused_line_says_why(tracker: Tracker, open_points: Path) -> None:
    ended = tracker("import", str(open_points))
    assert "2 refused" in ended.out
    said = [line for line in ended.err.splitlines() if "D5" in line or "D6" in line]
    assert "was never calculated" in said[0]
    assert "The price is 0" in said[1]


@here
def test_of_many_refused_lines_the_first_are_told(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "noughts.csv"
    rows = "".join(f"Marrowby,Greyfold {number},CRB,1,20,80,0,USD,msf,,,21,,\n" for number in range(20))
    path.write_text(f"{HEADER}\n{rows}", encoding="utf-8")
    said = tracker("import", str(path)).err.splitlines()
    assert len(said) == 11
    assert said[-1] == "noughts.csv: 10 more lines were refused; --json tells of each."


@here
def test_a_sheet_that_names_nobody_gets_its_vendor_afterwards(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "nobody.csv"
    rows = "Fenlight,SBS,18,1240\nFenlight,SBS,20,1250\n"
    path.write_text(f"Board,Grade,Caliper (pt),Price USD/short ton\n{rows}", "utf-8")
    first = tracker("import", str(path))
    assert "import it again with --vendor NAME" in first.out
    named = tracker("import", str(path), "--vendor", "Ostrel Karton")
    assert "named Ostrel Karton as the vendor of nobody.csv" in named.err
    assert {offer["vendor"] for offer in tracker("quotes", "--json").document["offers"]} == {"Ostrel Karton"}
    again = tracker("import", str(path), "--vendor", "Another Mill")
    assert again.err == ""
    assert {offer["vendor"] for offer in tracker("quotes", "--json").document["offers"]} == {"Ostrel Karton"}


@here
def test_a_vendor_is_the_known_one_whatever_its_legal_form(tracker: Tracker, tons: Path, tmp_path: Path) -> None:
    asked = tracker("sample", "log", "--vendor", "Ostrel Karton AB", "--grade", "SBS")
    assert asked.err.count("\n") == 1
    path = tmp_path / "nobody.csv"
    path.write_text("Board,Grade,Caliper (pt),Price USD/short ton\nFenlight,SBS,18,1240\n", "utf-8")
    taken = tracker("import", str(path), "--vendor", "ostrel karton")
    assert "“ostrel karton” is taken as Ostrel Karton AB." in taken.err
    assert (
        tracker("quotes", "--vendor", "Ostrel Karton", "--json").document["offers"][0]["vendor"] == "Ostrel Karton AB"
    )
    slip = tracker("sample", "log", "--vendor", "Ostrell Karton", "--grade", "SBS")
    assert "Ostrell Karton is a new vendor; did you mean Ostrel Karton AB?" in slip.err
    assert slip.out == "2\n"


@here
def test_a_figure_that_can_not_be_kept_holds_back_its_own_line(tracker: Tracker, tmp_path: Path) -> None:
    long = tmp_path / "long.csv"
    rest = "USD,msf,,,21,,2026-11-10"
    prices = {20: "44.2012345678901234567", 21: "45.10"}
    rows = [f"Marrowby Paper,Greyfold,CRB,1,{points},80,{price},{rest}" for points, price in prices.items()]
    long.write_text("\n".join([HEADER, *rows, ""]))
    ended = tracker("import", str(long), "--json")
    assert [line["state"] for line in ended.document["files"][0]["lines"]] == ["question", "accepted"]
    assert len(tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]) == 1


def _unlabelled(path: Path, first: int, quotation: str) -> Path:
    """A list whose title is a firm's name that nothing marks as one, with a trade name and two currencies said."""
    book = Workbook()
    sheet = book.active
    sheet.append(["Tillerow Converting Supply"])
    sheet.append([f"{quotation}. Prices in EUR."])
    sheet.append([])
    sheet.append(["Board", "Caliper (pt)", "Basis weight (lb/MSF)", "Price USD/short ton"])
    for number, caliper in enumerate((18, 20)):
        sheet.append(["Snowgate", caliper, 70 + 8 * number, first + number])
    book.save(path)
    return path


@here
def test_answers_serve_the_next_list_of_a_vendor_known_by_name_alone(tracker: Tracker, tmp_path: Path) -> None:
    november = _unlabelled(tmp_path / "november.xlsx", 980, "Quotation 5521, 12 Nov 2026")
    assert tracker("import", str(november)).status == Status.ASKED
    answers = ("--vendor", "Tillerow Converting Supply", "--grade", "Snowgate=CRB", "--currency", "USD")
    assert tracker("import", str(november), *answers).status == Status.DONE
    december = _unlabelled(tmp_path / "december.xlsx", 990, "Quotation 5602, 9 Dec 2026")
    told = tracker("import", str(december), "--json")
    assert told.status == Status.DONE
    (file,) = told.document["files"]
    assert {(line["vendor"], line["grade"], line["currency"]) for line in file["lines"]} == {
        ("Tillerow Converting Supply", "CRB", "USD")
    }


@here
def test_a_stored_file_is_not_asked_about_again_once_it_is_answered(tracker: Tracker, tons: Path) -> None:
    assert tracker("import", str(tons)).status == Status.ASKED
    assert tracker("import", str(tons), "--ton", "short").status == Status.DONE
    again = tracker("import", str(tons))
    assert (again.status, again.err) == (Status.DONE, "")
    assert "nothing was added" in again.out


@here
@pytest.mark.parametrize("options", [(), ("--dry-run",), ("--json",)])
def test_a_file_without_prices_says_what_to_do_and_is_no_failure(tracker: Tracker, tmp_path: Path, options) -> None:
    path = tmp_path / "phones.csv"
    path.write_text("Name,Telephone\nA. Quill,555 0101\nB. Reed,555 0102\n", "utf-8")
    ended = tracker("import", str(path), *options)
    assert ended.status == Status.DONE
    assert "phones.csv: No prices were found" in ended.err
    assert "open it in the window and mark its table by hand" in ended.err


@here
def test_a_blank_sheet_is_said_to_be_blank(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "blank.xlsx"
    Workbook().save(path)
    assert tracker("import", str(path)).err.startswith("blank.xlsx: Nothing stands in it. ")


@here
def test_a_dry_run_shows_each_line_and_says_that_nothing_is_stored(tracker: Tracker, plain: Path, tons: Path) -> None:
    shown = tracker("import", str(plain), str(tons), "--dry-run").out.splitlines()
    assert shown[0] == "plain.csv: 3 accepted, 0 held by a question, 0 refused. A dry run: nothing was stored"
    assert [row.split() for row in shown[1:4]] == [
        ["G2", "$1,240.50", "/ST", "SBS", "18", "pt", "Fenlight", "White"],
        ["G3", "$1,215", "/ST", "SBS", "18", "pt", "Fenlight", "White"],
        ["G4", "$44.20", "/MSF", "CRB", "20", "pt", "Greyfold"],
    ]
    assert shown[5].endswith("held by a question")
    assert "nothing was stored" not in tracker("import", str(plain)).out


@here
def test_of_many_lines_a_dry_run_shows_the_first(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "many.csv"
    rows = "".join(f"Marrowby,Greyfold {number},CRB,1,20,80,44.20,USD,msf,,,21,,\n" for number in range(70))
    path.write_text(f"{HEADER}\n{rows}", encoding="utf-8")
    shown = tracker("import", str(path), "--dry-run").out.splitlines()
    assert (len(shown), shown[-1]) == (62, "  and 10 more; --json has every line")


@here
def test_an_option_says_what_prices_are_per_that_name_no_unit(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "per_what.csv"
    head = "Ostrel Karton Ltd,,,\n\nBoard,Grade,Caliper (pt),Price USD\n"
    path.write_text(f"{head}Fenlight,SBS,18,1240\nFenlight,SBS,20,1250\n", "utf-8")
    asked = tracker("import", str(path), "--dry-run")
    assert "Answer it with --per CODE, where CODE is one of short_ton, tonne" in asked.err
    assert tracker("import", str(path), "--per", "short_ton").status == Status.DONE
    offers = tracker("quotes", "--json").document["offers"]
    assert {offer["basis"] for offer in offers} == {"short_ton"}


@here
def test_per_leaves_alone_what_the_sheet_says(tracker: Tracker, plain: Path) -> None:
    tracker("import", str(plain), "--per", "kg")
    offers = tracker("quotes", "--json", "--as-of", "2026-11-25").document["offers"]
    assert {offer["basis"] for offer in offers} == {"short_ton", "msf"}


@here
def test_a_dry_run_sends_nobody_to_what_waits_under_today(tracker: Tracker, tmp_path: Path) -> None:
    path = tmp_path / "ream.csv"
    path.write_text("Board,Grade,Caliper (pt),Price USD/ream\nFenlight,SBS,18,124\nFenlight,SBS,20,125\n", "utf-8")
    assert "Open the file in the window to answer it." in tracker("import", str(path), "--dry-run").err
    assert "Answer it in the window, under Today." in tracker("import", str(path)).err
