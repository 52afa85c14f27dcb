"""What is taken out as a file, from a real database: offers, report, backup, drafts; each says where it is."""

import pytest
from PySide6.QtWidgets import QFileDialog

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui
SHEET = """vendor,product,grade,coated_sides,caliper_pt,basis_weight_lb_msf,price,currency,basis
Tolmere Board,Bleached C1S,SBS,1,14,58,1310,USD,short_ton
Tolmere Board,"=HYPERLINK(""x"")",SBS,1,16,65,1295,USD,short_ton
"""


@pytest.fixture
def window(real_window: MainWindow, qtbot, tmp_path) -> MainWindow:
    window = real_window
    sheet = tmp_path / "tolmere.csv"
    sheet.write_text(SHEET, encoding="utf-8")
    window.take_in_files([sheet])
    settle(qtbot, window)
    window.take_in.agree.click()
    settle(qtbot, window)
    return window


@pytest.fixture
def save_as(monkeypatch, tmp_path):
    def choose(name: str):
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / name) if name else "", ""))
        monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path / name))
        return tmp_path / name

    return choose


@pytest.mark.parametrize("name", ["offers.csv", "offers.xlsx"])
def test_the_offers_shown(window: MainWindow, qtbot, save_as, name: str) -> None:
    path = save_as(name)
    window.files.save_offers()
    settle(qtbot, window)
    assert window.message.text == f"2 offers saved in {path}."
    assert path.stat().st_size > 100
    if name.endswith("csv"):
        text = path.read_text(encoding="utf-8-sig")
        assert text.count("Tolmere Board") == 2
        assert ",=HYPERLINK" not in text


def test_the_table_is_saved_with_its_own_heads_units_and_days(window: MainWindow, qtbot, save_as) -> None:
    from openpyxl import load_workbook

    path = save_as("offers.xlsx")
    window.files.save_offers()
    settle(qtbot, window)
    sheet, meaning = load_workbook(path).worksheets
    heads, *lines = sheet.iter_rows(values_only=True)
    told = [dict(zip(heads, line, strict=True)) for line in lines]
    assert [(line["Caliper, pt"], line["Weight, lb/MSF"], line["As quoted"]) for line in told] == [
        (14, 58, "$1,310 /ST"),
        (16, 65, "$1,295 /ST"),
    ]
    assert told[0]["Received"].date() == window.session.comparison.footing.as_of
    assert meaning["A1"].value.startswith("Every price below: per 1,000 ft²")
    # 1,310 a short ton at 58 lb on 1,000 ft²: 1,310 × 58 / 2,000
    assert {line["USD per MSF"] for line in told if line["Caliper, pt"] == 14} == {37.99}


def test_everything_known_of_the_offers_is_saved_where_that_is_chosen(
    window: MainWindow, qtbot, monkeypatch, tmp_path
) -> None:
    path = tmp_path / "all.csv"
    every = "CSV, everything that is known (*.csv)"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), every))
    window.files.save_offers()
    settle(qtbot, window)
    assert "source_sha256" in path.read_text(encoding="utf-8-sig")


def test_the_report_and_a_backup(window: MainWindow, qtbot, save_as) -> None:
    report = save_as("report.pdf")
    window.files.write_report()
    settle(qtbot, window)
    assert report.read_bytes().startswith(b"%PDF")
    backup = save_as("copy.sqlite")
    window.files.back_up()
    settle(qtbot, window)
    assert backup.read_bytes().startswith(b"SQLite format 3")
    assert str(backup) in window.message.text


def test_a_report_of_another_kind_is_refused_in_a_sentence(window: MainWindow, qtbot, save_as) -> None:
    path = save_as("report.docx")
    window.files.write_report()
    settle(qtbot, window)
    assert not path.exists()
    assert ".pdf" in window.message.text


def test_a_name_without_an_ending_gets_that_of_the_kind_chosen(
    window: MainWindow, qtbot, monkeypatch, tmp_path
) -> None:
    typed = str(tmp_path / "november")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (typed, "CSV, as shown (*.csv)"))
    window.files.save_offers()
    settle(qtbot, window)
    written = (tmp_path / "november.csv").read_text(encoding="utf-8-sig")
    assert written.count("Tolmere Board") == 2
    (tmp_path / "november.csv").write_text("mine", encoding="utf-8")
    window.files.save_offers()
    settle(qtbot, window)
    assert (tmp_path / "november.csv").read_text(encoding="utf-8") == "mine"
    assert "is there already and was left as it is" in window.message.text
    assert not (tmp_path / "november").exists()


def test_leaving_the_file_dialog_does_nothing(window: MainWindow, qtbot, save_as) -> None:
    save_as("")
    window.message.hide()
    for task in (window.files.save_offers, window.files.write_report, window.files.back_up, window.files.save_picture):
        task()
    settle(qtbot, window)
    assert window.message.text == ""


def test_nobody_is_chased_who_owes_nothing(window: MainWindow, qtbot, save_as) -> None:
    folder = save_as("drafts")
    window.draft_chases()
    settle(qtbot, window)
    assert window.message.text == "Nobody is due for a chase today."
    assert not folder.exists()
