"""Taking in a sheet: remembered answers settle what they may, the same bytes add nothing, an answer given later counts.

What a sheet says is the business of intake's own tests; here a reader stands in that asks for the ton until it is
told.
"""

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from hashlib import sha256
from pathlib import Path

import pytest

from tests.store.making import FULL, TON, VENDOR, held, line
from tracker.desk import files, questions, take_in
from tracker.desk.contract import file_object
from tracker.desk.edits import history, undo
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.desk.trouble import Trouble
from tracker.store.held import lines as held_lines
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers, NoteCode, PassedOver, Reading

TONS = {"short": Basis.SHORT_TON, "metric": Basis.TONNE}


def understand(path: Path, answers: Answers) -> Reading:
    """A sheet of one sure price in D5 and one per 'ton' in D9; one that begins 'no vendor' names none."""
    content = path.read_bytes()
    digest = sha256(content).hexdigest()
    if content.startswith(b"%PDF"):
        return Reading(path.name, digest, f"{path.name} is a PDF, not a price sheet: ask for a spreadsheet.")
    vendor = answers.settled.get("vendor") if content.startswith(b"no vendor") else VENDOR
    ton = TONS.get(answers.settled.get("ton", ""))
    second, asked = (held("D9"), (TON,)) if ton is None else (line("D9", basis=ton, product="Fenlight Cream"), ())
    passed = (PassedOver("Terms", "1-14", "no prices"),)
    return Reading(path.name, digest, None, vendor, (line("D5"), second), passed, asked)


@pytest.fixture(autouse=True)
def reads(monkeypatch: pytest.MonkeyPatch) -> list[dict[str, str]]:
    """The answers with which each reading was made."""
    made: list[dict[str, str]] = []

    def read(path: Path, answers: Answers, manner: take_in.Manner) -> tuple[Reading, None]:
        made.append(dict(answers.settled))
        return understand(path, answers), None

    monkeypatch.setattr(take_in, "_read_sheet", read)
    return made


@pytest.fixture
def sheet(tmp_path: Path) -> Callable[..., Path]:
    def make(content: bytes = b"autumn list", name: str = "list.xlsx") -> Path:
        path = tmp_path / name
        path.write_bytes(content)
        return path

    return make


Sheet = Callable[..., Path]


def test_reading_stores_nothing(desk: Desk, sheet: Sheet) -> None:
    taken = take_in.read(desk, sheet())
    assert len(taken.reading.lines) == 2
    assert files.files(desk) == ()
    assert history(desk) == ()


def test_without_a_desk_no_database_is_needed(sheet: Sheet) -> None:
    taken = take_in.read(None, sheet())
    assert (taken.imported_on, len(taken.reading.questions)) == (None, 1)


def test_what_was_accepted_is_stored_and_what_was_asked_waits(desk: Desk, sheet: Sheet) -> None:
    stored = take_in.store(desk, take_in.read(desk, sheet()))
    assert (stored.offers, stored.held, stored.questions, stored.already) == (1, 1, 1, False)
    assert len(load_snapshot(desk)) == 1
    (asked,) = questions.open_questions(desk)
    assert (asked.question, asked.lines) == (TON, 1)
    with desk.store.reading() as connection:
        assert [each.cell for each in held_lines(connection, stored.file_id)] == ["D9"]
    assert files.content(desk, stored.file_id) == b"autumn list"


def bases_of(desk: Desk) -> list[str]:
    snapshot = load_snapshot(desk)
    return [snapshot.bases[code] for code in snapshot.basis]


def test_a_wrong_answer_is_mended_by_withdrawing_the_file_and_taking_it_in_again(desk: Desk, sheet: Sheet) -> None:
    wrong = take_in.store(desk, take_in.read(desk, sheet(), Answers({"ton": "metric"})))
    assert bases_of(desk) == ["short_ton", "tonne"]
    files.withdraw(desk, wrong.file_id)
    again = take_in.read(desk, sheet(), Answers({"ton": "short"}))
    assert again.imported_on is None
    mended = take_in.store(desk, again)
    assert (mended.file_id, mended.already, mended.offers) == (wrong.file_id, False, 2)
    assert bases_of(desk) == ["short_ton", "short_ton"]
    assert not files.find(desk, mended.file_id).withdrawn
    assert take_in.store(desk, again).already


def test_the_same_bytes_under_any_name_add_nothing_and_that_is_said(desk: Desk, sheet: Sheet) -> None:
    first = take_in.store(desk, take_in.read(desk, sheet()))
    again = take_in.read(desk, sheet(name="renamed.xlsx"))
    assert again.imported_on is not None
    stored = take_in.store(desk, again)
    assert (stored.already, stored.offers, stored.file_id) == (True, 0, first.file_id)
    assert len(load_snapshot(desk)) == 1
    for told in file_object(again)["lines"]:
        assert told["notes"][-1]["code"] == NoteCode.ALREADY_IMPORTED


def test_a_file_taken_in_twice_at_the_same_moment_is_stored_once(desk: Desk, sheet: Sheet) -> None:
    first, second = take_in.read(desk, sheet()), take_in.read(desk, sheet())
    assert not take_in.store(desk, first).already
    assert take_in.store(desk, second).already
    assert len(files.files(desk)) == 1


def test_an_answer_given_while_taking_in_is_remembered_for_the_vendor(desk: Desk, sheet: Sheet, reads: list) -> None:
    taken = take_in.read_again(desk, take_in.read(desk, sheet()), Answers({"ton": "short"}))
    assert take_in.store(desk, taken, remember={"ton": "short"}).offers == 2
    reads.clear()
    later = take_in.read(desk, sheet(b"winter list"))
    assert reads == [{}, {"ton": "short"}]
    assert later.reading.questions == ()
    assert later.answers.settled == {"ton": "short"}


def test_a_sheet_without_questions_is_read_once(desk: Desk, sheet: Sheet, reads: list) -> None:
    take_in.read(desk, sheet(), Answers({"ton": "metric"}))
    assert reads == [{"ton": "metric"}]


def test_what_is_said_now_comes_before_what_is_remembered(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet(), Answers({"ton": "short"})), remember={"ton": "short"})
    later = take_in.read(desk, sheet(b"winter list"), Answers({"ton": "metric"}))
    assert later.reading.lines[1].offer.basis is Basis.TONNE


def test_a_question_answered_later_adds_its_offers_and_is_remembered_with_its_words(desk: Desk, sheet: Sheet) -> None:
    first = take_in.store(desk, take_in.read(desk, sheet()))
    before = load_snapshot(desk).id.tolist()
    (asked,) = questions.open_questions(desk)
    stored = questions.answer(desk, asked.id, "short")
    assert (stored.file_id, stored.offers, stored.held, stored.questions) == (first.file_id, 1, 0, 0)
    snapshot = load_snapshot(desk)
    assert snapshot.id.tolist()[:1] == before
    assert snapshot.cell == ["D5", "D9"]
    assert questions.open_questions(desk) == ()
    (kept,) = questions.remembered(desk, VENDOR)
    assert (kept.key, kept.value, kept.words, kept.said_by) == ("ton", "short", "ton", "Ada")


def test_an_answer_to_a_kept_file_is_taken_back_and_given_again(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet()))
    before, asked = load_snapshot(desk), questions.open_questions(desk)
    answered = questions.answer(desk, asked[0].id, "short").answered
    assert answered is not None
    questions.take_back(desk, answered)
    after = load_snapshot(desk)
    assert (after.id.tolist(), after.cell) == (before.id.tolist(), before.cell)
    assert [each.question for each in questions.open_questions(desk)] == [asked[0].question]
    assert questions.remembered(desk) == ()
    again = questions.answer_again(desk, answered).answered
    assert again is not None
    assert load_snapshot(desk).cell == ["D5", "D9"]
    with pytest.raises(Trouble, match="no longer open"):
        questions.answer_again(desk, answered)
    questions.take_back(desk, again)
    with pytest.raises(Trouble, match="other answers since then"):
        questions.take_back(desk, again)


def test_an_answer_for_this_file_only_is_not_remembered(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet()))
    (asked,) = questions.open_questions(desk)
    questions.answer(desk, asked.id, "short", remember=False)
    assert questions.remembered(desk) == ()
    assert len(load_snapshot(desk)) == 2


def test_an_answer_that_settles_nothing_changes_nothing(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet()))
    (asked,) = questions.open_questions(desk)
    with pytest.raises(Trouble, match="“long” is no ton"):
        questions.answer(desk, asked.id, "long")
    assert len(questions.open_questions(desk)) == 1
    assert len(load_snapshot(desk)) == 1


def test_a_question_that_is_no_longer_open_is_said(desk: Desk) -> None:
    with pytest.raises(Trouble, match="no longer open"):
        questions.answer(desk, 99, "short")


def test_setting_aside_and_forgetting_are_undone(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet()), remember={"currency": "USD"})
    (asked,) = questions.open_questions(desk)
    aside = questions.set_aside(desk, asked.id)
    assert questions.open_questions(desk) == ()
    undo(desk, aside)
    assert questions.open_questions(desk) == (asked,)
    (kept,) = questions.remembered(desk)
    forgotten = questions.forget(desk, kept.id)
    assert forgotten.text == f"forgot for {kept.vendor} that prices are in USD; offers already stored stay as they are"
    assert questions.remembered(desk) == ()
    with pytest.raises(Trouble, match="forgotten already"):
        questions.forget(desk, kept.id)
    undo(desk, forgotten)
    assert questions.remembered(desk) == (kept,)


def test_who_the_vendor_is_can_not_be_remembered_for_the_vendor(desk: Desk, sheet: Sheet) -> None:
    taken = take_in.read(desk, sheet(b"no vendor here"), Answers({"vendor": "Marrowby Paper"}))
    take_in.store(desk, taken, remember={"vendor": "Marrowby Paper", "ton": "short"})
    assert [kept.key for kept in questions.remembered(desk)] == ["ton"]
    assert load_snapshot(desk).vendors == ["Marrowby Paper"]


def test_the_day_received_is_what_was_said_else_today(desk: Desk, sheet: Sheet) -> None:
    take_in.store(desk, take_in.read(desk, sheet(), Answers(received=date(2026, 8, 18))))
    take_in.store(desk, take_in.read(desk, sheet(b"second")))
    assert [kept.received for kept in files.files(desk)] == [desk.today, date(2026, 8, 18)]


def test_an_unreadable_file_says_why_and_is_not_stored(desk: Desk, sheet: Sheet) -> None:
    taken = take_in.read(desk, sheet(b"%PDF-1.7", "list.pdf"))
    assert file_object(taken)["unreadable"] == "list.pdf is a PDF, not a price sheet: ask for a spreadsheet."
    with pytest.raises(Trouble, match="is a PDF"):
        take_in.store(desk, taken)
    assert files.files(desk) == ()


def test_a_file_that_is_not_there_is_said(desk: Desk, tmp_path: Path) -> None:
    told = take_in.read(desk, tmp_path / "gone.xlsx").reading.unreadable
    assert told is not None
    assert told.startswith("gone.xlsx is not there; check the name")


def test_a_file_not_known_by_its_number_is_said(desk: Desk) -> None:
    with pytest.raises(Trouble, match="number 7"):
        files.content(desk, 7)
    with pytest.raises(Trouble, match="number 7"):
        files.withdraw(desk, 7)


def test_files_are_withdrawn_together_or_not_at_all(desk: Desk, sheet: Sheet) -> None:
    stored = take_in.store(desk, take_in.read(desk, sheet()))
    with pytest.raises(Trouble, match="number 7"):
        files.withdraw(desk, stored.file_id, 7)
    assert not files.find(desk, stored.file_id).withdrawn


def test_a_line_as_json_is_what_the_contract_says(desk: Desk, sheet: Sheet) -> None:
    whole = file_object(take_in.read(desk, sheet()))
    assert set(whole) == {"file", "sha256", "unreadable", "vendor", "lines", "passed_over"}
    assert whole["passed_over"] == [{"sheet": "Terms", "rows": "1-14", "why": "no prices"}]
    told = next(whole["lines"])
    assert told == {
        "sheet": "Prices",
        "cell": "D5",
        "also": ["E5", "F5"],
        "state": "accepted",
        "vendor": VENDOR,
        "product": "Fenlight White",
        "grade": "SBS",
        "coated_sides": 1,
        "caliper_um": "457.2",
        "grammage_gsm": "380.829355638",
        "grammage_from": "quoted",
        "price": "1240.5",
        "currency": "USD",
        "basis": "short_ton",
        "sheet_mm": ["711.2", "1016"],
        "from_kg": "4535.9237",
        "below_kg": "18143.6948",
        "minimum_kg": "907.18474",
        "lead_days": [28, 42],
        "valid_until": "2026-12-31",
        "delivered": False,
        "charges": [
            {"label": "Freight", "price": "1.85", "currency": "USD", "basis": "cwt"},
            {"label": "Energy", "price": "3.5", "currency": "USD", "basis": "percent"},
        ],
        "per_tonne": "1367.4171812",
        "per_msf": told["per_msf"],
        "delivered_per_tonne": told["delivered_per_tonne"],
        "delivered_per_msf": told["delivered_per_msf"],
        "notes": [{"code": "hidden", "cell": "D5", "text": "The row is hidden."}],
    }
    assert float(told["delivered_per_tonne"]) > float(told["per_tonne"])


def test_a_line_in_question_leaves_open_what_is_not_certain(desk: Desk, sheet: Sheet) -> None:
    told = list(file_object(take_in.read(desk, sheet()))["lines"])[1]
    assert (told["state"], told["basis"], told["per_tonne"], told["notes"][0]["code"]) == (
        "question",
        None,
        None,
        "basis-unknown",
    )


def test_an_offer_that_names_its_own_vendor_keeps_it(desk: Desk) -> None:
    from tracker.desk.contract import line_object

    own = replace(line(), offer=replace(FULL, vendor="Marrowby Paper"))
    assert line_object(own, VENDOR)["vendor"] == "Marrowby Paper"


def test_a_file_that_changes_while_it_is_read_is_not_taken(
    desk: Desk, sheet: Sheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    def changed(path: Path, answers: Answers, *_: object) -> tuple[Reading, None]:
        path.write_bytes(b"half of a newer list")
        return understand(path, answers), None

    monkeypatch.setattr(take_in, "_read_sheet", changed)
    taken = take_in.read(desk, sheet())
    assert taken.reading.unreadable == (
        "list.xlsx changed while it was read: let the other program finish, then try again."
    )


def test_an_answer_that_is_none_is_refused_before_anything_is_stored(desk: Desk, sheet: Sheet) -> None:
    taken = take_in.read(desk, sheet())
    with pytest.raises(Trouble, match="“CROWNS” is no currency"):
        take_in.read_again(desk, taken, Answers({"currency:kr/mt": "CROWNS"}))
    with pytest.raises(Trouble, match="“BAR” is no grade"):
        take_in.store(desk, taken, remember={"grade:fenlight": "BAR"})
    assert files.files(desk) == ()


def test_an_answer_kept_by_an_older_version_serves_the_words_it_was_asked_about(
    desk: Desk, sheet: Sheet, reads: list
) -> None:
    older, words = {"currency": "SEK", "ton": "short"}, {"currency": "kr/MT", "ton": "USD/ton"}
    take_in.store(desk, take_in.read(desk, sheet()), remember=older, words=words)
    take_in.read(desk, sheet(b"winter list"))
    assert reads[-1] == {"currency:kr/mt": "SEK", "ton": "short"}
