"""Claims of a price sheet and a data sheet against readings; verdicts; files kept with a sample."""

from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from tests.desk.filing import file
from tests.store.making import VENDOR, line
from tracker.desk import attachments, claims, readings, sample_requests, samples, verdicts
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.sample_checks import PropertyChecked, check_sample, outlying
from tracker.desk.sample_life import EventKind
from tracker.desk.trouble import Trouble
from tracker.trade.claims import Verdict
from tracker.trade.offer import GrammageFrom

FIVE_POINTS = ["18.1", "18.0", "17.9", "18.0", "18.1"]


def nov(day: int) -> date:
    return date(2026, 11, day)


@pytest.fixture
def arrived(desk: Desk) -> Desk:
    """Sample 1 of 18 pt SBS has come; the vendor's sheet offers one such board, of 380.8 g/m²."""
    file(desk, line())
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=nov(4))
    samples.record(desk, 1, EventKind.ARRIVED, nov(9))
    return desk


def checked(desk: Desk, key: str) -> PropertyChecked:
    (found,) = [each for each in check_sample(desk, 1).properties if each.property.key == key]
    return found


def test_the_price_sheet_claims_caliper_and_weight(arrived: Desk) -> None:
    found = claims.claims(arrived, 1)
    assert (found.board, found.why_not) == ("Fenlight White", "")
    assert found.by_property["caliper"].value == Decimal("457.2")
    assert found.by_property["grammage"].source == "price sheet list.xlsx (Prices, D5) of 2026-11-03"


def test_a_claim_is_kept_and_one_is_broken(arrived: Desk) -> None:
    readings.add(arrived, 1, "caliper", FIVE_POINTS, "pt", conditioned=True)
    readings.add(arrived, 1, "grammage", ["405", "404", "406", "405", "404"], conditioned=True)
    assert checked(arrived, "caliper").check.verdict is Verdict.AGREES
    weight = checked(arrived, "grammage").check
    assert weight.verdict is Verdict.OFF
    assert weight.difference_percent == pytest.approx(6.3, abs=0.05)
    assert "6.3 % above the claimed 380.8 g/m² (held to ± 5 %)" in weight.sentence


def test_where_several_boards_fit_their_names_are_the_choices(desk: Desk) -> None:
    products = ("Fenlight White", "Fenlight Cream", "fenlight  white", "")
    file(desk, *(line(product=product) for product in products))
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=nov(4))
    found = check_sample(desk, 1)
    assert found.choices[0] == "Fenlight Cream"
    assert len(found.choices) == 2
    assert "fit: Fenlight Cream" in found.why_not
    assert " and one that its sheet gives no name. " in found.why_not
    sample_requests.name_board(desk, 1, found.choices[0])
    assert (check_sample(desk, 1).choices, check_sample(desk, 1).board) == ((), "Fenlight Cream")


def test_without_readings_it_says_how_many_are_needed(arrived: Desk) -> None:
    caliper = checked(arrived, "caliper")
    assert caliper.check.verdict is Verdict.OPEN
    assert caliper.sentences == (
        "Caliper: claimed 457.2 µm (held to ± 5 %); no readings so far. Take 5 for a first answer, 20 for a firm one.",
    )


def test_an_estimated_weight_is_no_claim(desk: Desk) -> None:
    file(desk, line(grammage_from=GrammageFrom.ESTIMATED))
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=nov(4))
    assert list(claims.claims(desk, 1).by_property) == ["caliper"]


def test_two_boards_that_fit_are_not_guessed_between(desk: Desk) -> None:
    file(desk, line(), line("D6", product="Fenlight Plus"))
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=nov(4))
    samples.record(desk, 1, EventKind.ARRIVED, nov(9))
    found = claims.claims(desk, 1)
    assert found.by_property == {}
    assert "Fenlight Plus, Fenlight White" in found.why_not
    with pytest.raises(Trouble, match="which board"):
        verdicts.decide(desk, 1, True, "Tea")
    sample_requests.name_board(desk, 1, "fenlight  plus")
    assert claims.claims(desk, 1).by_property["caliper"].source.startswith("price sheet list.xlsx (Prices, D6)")
    sample_requests.name_board(desk, 1, "Nothing Like It")
    assert "no board called Nothing Like It" in claims.claims(desk, 1).why_not


def test_a_round_metric_caliper_is_the_one_asked_for_in_points(desk: Desk) -> None:
    file(desk, line(caliper_um=Decimal(400)), line("D6", caliper_um=Decimal(450)))
    samples.log(desk, VENDOR, "SBS", Decimal("406.4"), on=nov(4))
    assert claims.claims(desk, 1).by_property["caliper"].value == 400
    samples.log(desk, VENDOR, "SBS", Decimal("431.8"), on=nov(4))
    assert "no SBS of this caliper" in claims.claims(desk, 2).why_not


def test_a_data_sheet_s_claim_is_typed_corrected_and_taken_back(arrived: Desk) -> None:
    claims.claim(arrived, 1, "bending_moment_md", "150", "taber", "data sheet of May 2026")
    claims.claim(arrived, 1, "bending_moment_md", "160", "taber")
    found = claims.claims(arrived, 1).by_property["bending_moment_md"]
    assert (found.value, found.source) == (Decimal("15.69064"), "data sheet")
    claims.claim(arrived, 1, "caliper", "18.5", "pt")
    assert claims.claims(arrived, 1).by_property["caliper"].value == Decimal("469.9")
    claims.take_back(arrived, 1, "caliper")
    assert claims.claims(arrived, 1).by_property["caliper"].value == Decimal("457.2")
    with pytest.raises(Trouble, match="Nobody typed"):
        claims.take_back(arrived, 1, "caliper")


@pytest.mark.parametrize(
    ("name", "value", "unit", "words"),
    [
        ("colour", "1", "", "not a property"),
        ("gloss75", "x", "", "not kept"),
        ("caliper", "18", "stone", "not measured in"),
    ],
)
def test_a_claim_that_can_not_be_is_refused(arrived: Desk, name: str, value: str, unit: str, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        claims.claim(arrived, 1, name, value, unit)


def test_readings_that_stand_apart_are_pointed_at_and_counted(arrived: Desk) -> None:
    readings.add(arrived, 1, "caliper", [*FIVE_POINTS, "20.5"], "pt", conditioned=False)
    found = checked(arrived, "caliper")
    assert found.outlying == (5,)
    assert found.spread.n == 6
    assert any("520.7 (no. 6) µm stands apart" in sentence for sentence in found.sentences)
    assert any("6 of 6 readings taken outside the standard air" in sentence for sentence in found.sentences)


def test_the_steps_of_a_gauge_are_no_outliers() -> None:
    assert outlying([18.0, 18.0, 18.0, 18.0, 18.1]) == ()
    assert outlying([18.0, 18.0, 18.0, 18.0, 18.9]) == (4,)
    assert outlying([18.0, 18.0, 18.0, 25.0]) == ()


def test_whether_readings_were_conditioned_is_asked_for_by_saying_it_is_not_known(arrived: Desk) -> None:
    readings.add(arrived, 1, "moisture", ["7.1", "7.0"])
    readings.add(arrived, 1, "moisture", ["7.2"], conditioned=True)
    found = checked(arrived, "moisture")
    assert (found.unsaid, found.unconditioned, found.claim) == (2, 0, None)
    assert "Nobody said whether 2 of these 3 readings were conditioned." in found.sentences


def test_a_mistyped_reading_is_taken_off_and_brought_back(arrived: Desk) -> None:
    readings.add(arrived, 1, "moisture", ["7.1", "70"], method="oven")
    wrong = readings.readings(arrived, 1)[1]
    edit = readings.remove(arrived, wrong.id, 1)
    assert [str(each.value) for each in readings.readings(arrived, 1)] == ["7.1"]
    undo(arrived, edit)
    assert readings.readings(arrived, 1)[1] == wrong
    with pytest.raises(Trouble, match="no such reading"):
        readings.remove(arrived, 99, 1)


def values(desk: Desk, key: str = "caliper") -> list[str]:
    return [str(each.value) for each in readings.readings(desk, 1) if each.property == key]


def test_readings_are_taken_back_by_their_values_or_all_of_one_property(arrived: Desk) -> None:
    readings.add(arrived, 1, "caliper", ["15", "16", "15"], "pt")
    readings.add(arrived, 1, "moisture", ["7.1"])
    edit = readings.take_back(arrived, 1, "caliper", ["15", "16"], "pt")
    assert edit.text == "took 2 readings of caliper off sample 1: 381, 406.4 µm"
    assert values(arrived) == ["381"]
    undo(arrived, edit)
    assert sorted(map(float, values(arrived))) == [381, 381, 406.4]
    readings.take_back(arrived, 1, "caliper")
    assert (values(arrived), values(arrived, "moisture")) == ([], ["7.1"])


def test_what_was_never_recorded_is_not_taken_back(arrived: Desk) -> None:
    readings.add(arrived, 1, "caliper", ["15", "16"], "pt")
    with pytest.raises(Trouble, match=r"431.8 µm is none of this sample's \(381, 406\.4 µm\)"):
        readings.take_back(arrived, 1, "caliper", ["15", "17"], "pt")
    with pytest.raises(Trouble, match="no readings of moisture"):
        readings.take_back(arrived, 1, "moisture")
    assert len(values(arrived)) == 2


def test_a_verdict_is_on_the_board_and_by_whom(arrived: Desk) -> None:
    verdicts.decide(arrived, 1, True, "tea cartons")
    (found,) = verdicts.verdicts(arrived)
    assert (found.vendor, found.product, found.sample) == (VENDOR, "Fenlight White", 1)
    assert verdicts.said(found) == "approved for tea cartons (Ada, 25 Nov 2026)"
    with pytest.raises(Trouble, match="why"):
        verdicts.decide(arrived, 1, False, " ")


def test_what_has_not_arrived_can_not_be_judged(arrived: Desk) -> None:
    samples.log(arrived, VENDOR, "SBS", Decimal("457.2"))
    with pytest.raises(Trouble, match="has not arrived"):
        verdicts.decide(arrived, 2, True, "tea cartons")


def test_a_file_is_kept_whole_taken_off_and_brought_back(arrived: Desk, tmp_path: Path) -> None:
    photograph = tmp_path / "edge.jpg"
    photograph.write_bytes(bytes(range(256)) * 40)
    edit = attachments.attach(arrived, 1, photograph)
    (kept,) = attachments.attachments(arrived, 1)
    assert (kept.name, kept.size) == ("edge.jpg", 10_240)
    assert attachments.content(arrived, kept.id) == photograph.read_bytes()
    attachments.save_copy(arrived, kept.id, tmp_path / "copy.jpg")
    assert (tmp_path / "copy.jpg").read_bytes() == photograph.read_bytes()
    redo = undo(arrived, edit)
    assert attachments.attachments(arrived, 1) == ()
    undo(arrived, redo)
    assert attachments.attachments(arrived, 1) == (kept,)
    with pytest.raises(Trouble, match="already, as"):
        attachments.attach(arrived, 1, photograph)
    undo(arrived, attachments.take_off(arrived, 1, "edge.jpg"))
    assert attachments.content(arrived, kept.id) == photograph.read_bytes()


def test_files_that_can_not_be_kept_are_said(arrived: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "empty.pdf").touch()
    with pytest.raises(Trouble, match="is empty"):
        attachments.attach(arrived, 1, tmp_path / "empty.pdf")
    with pytest.raises(Trouble, match="can't be read"):
        attachments.attach(arrived, 1, tmp_path / "none.pdf")
    monkeypatch.setattr(attachments, "LARGEST_BYTES", 1024 * 1024)
    (tmp_path / "large.jpg").write_bytes(bytes(1024 * 1024 + 1))
    with pytest.raises(Trouble, match="at most 1 MB"):
        attachments.attach(arrived, 1, tmp_path / "large.jpg")
    with pytest.raises(Trouble, match="no sample 7"):
        attachments.attach(arrived, 7, _written(tmp_path))
    with pytest.raises(Trouble, match="has no file"):
        attachments.take_off(arrived, 1, "none.pdf")


def _written(folder: Path) -> Path:
    path = folder / "sheet.pdf"
    path.write_bytes(b"data sheet")
    return path
