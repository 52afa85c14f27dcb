"""Who is due for a chase, and what the draft to one vendor says and never says."""

from datetime import date
from decimal import Decimal
from email import message_from_bytes
from email.policy import default
from pathlib import Path

import pytest

from tracker.desk import contacts, samples
from tracker.desk.chase_templates import make_own, template_in
from tracker.desk.chasing import chases, draft
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.sample_life import EventKind
from tracker.desk.trouble import Trouble

VENDOR, OTHER = "Quillmere Board & Paper", "Ostrane Karton"


def nov(day: int) -> date:
    return date(2026, 11, day)


@pytest.fixture
def owing(desk: Desk) -> Desk:
    """1: overdue; 2: the same vendor's, due later; 3: another vendor's, overdue; 4: arrived."""
    for vendor, until in ((VENDOR, 10), (VENDOR, 30), (OTHER, 12), (VENDOR, 12)):
        number = samples.log(
            desk, vendor, "SBS", Decimal("457.2"), "20 sheets", on=nov(2), for_what=f"secret of {OTHER}"
        ).number
        samples.record(desk, number, EventKind.PROMISED, nov(3), nov(until))
    samples.record(desk, 4, EventKind.ARRIVED, nov(9))
    return desk


def read(path: Path):
    return message_from_bytes(path.read_bytes(), policy=default)


def test_the_overdue_are_due_and_all_that_is_owed_is_listed(owing: Desk) -> None:
    first, second = chases(owing)
    assert (first.vendor, [each.number for each in first.due], [each.number for each in first.owed]) == (
        VENDOR,
        [1],
        [1, 2],
    )
    assert (second.vendor, len(second.owed)) == (OTHER, 1)


def test_what_was_chased_waits_five_days(owing: Desk) -> None:
    samples.record(owing, 1, EventKind.CHASED, nov(21))
    assert [each.vendor for each in chases(owing)] == [OTHER]
    assert [each.vendor for each in chases(owing, nov(26))] == [VENDOR, OTHER]


def test_a_draft_lists_one_vendor_s_samples_and_no_other_s_name(owing: Desk, tmp_path: Path) -> None:
    drafted = draft(owing, VENDOR.upper(), tmp_path, "A. Buyer", tmp_path)
    assert drafted.numbers == (1, 2)
    body = read(drafted.path).get_body().get_content()
    assert "S-0001" in body
    assert "S-0002" in body
    assert "S-0003" not in body
    assert "S-0004" not in body
    assert OTHER not in drafted.path.read_text(encoding="utf-8")
    assert "secret" not in drafted.path.read_text(encoding="utf-8")
    assert "A. Buyer" in body
    assert [each.chased for each in sorted(samples.samples(owing), key=lambda each: each.number)] == [1, 1, 0, 0]
    assert [each.vendor for each in chases(owing)] == [OTHER]
    undo(owing, drafted.edit)
    assert len(chases(owing)) == 2


def test_a_second_draft_lets_the_first_lie(owing: Desk, tmp_path: Path) -> None:
    one, two = (draft(owing, VENDOR, tmp_path, templates=tmp_path).path for _ in range(2))
    assert one != two
    assert one.exists()


@pytest.mark.parametrize(
    ("language", "subject"), [("de", "Muster"), ("fr", "chantillons"), ("es", "uestras"), ("en", "Samples")]
)
def test_in_the_vendor_s_language(owing: Desk, tmp_path: Path, language: str, subject: str) -> None:
    contacts.set_contact(owing, OTHER, "Frau Weiß", "muster@ostrane.example", language)
    message = read(draft(owing, OTHER, tmp_path, templates=tmp_path).path)
    assert subject in message["Subject"]
    assert message["To"].addresses[0].addr_spec == "muster@ostrane.example"
    assert "Frau Weiß" in message.get_body().get_content()


def test_the_user_s_own_template_stands_before_the_shipped_one(owing: Desk, tmp_path: Path) -> None:
    own = make_own("en", tmp_path / "chase")
    own.write_text(own.read_text(encoding="utf-8").replace("Kind regards", "Cheers"), encoding="utf-8")
    assert make_own("en", tmp_path / "chase") == own
    assert "Cheers" in own.read_text(encoding="utf-8")
    body = read(draft(owing, VENDOR, tmp_path, templates=tmp_path / "chase").path).get_body().get_content()
    assert "Cheers" in body


def test_a_broken_template_is_named_and_nothing_is_recorded(owing: Desk, tmp_path: Path) -> None:
    own = make_own("en", tmp_path)
    own.write_text("subject = ", encoding="utf-8")
    with pytest.raises(Trouble, match=r"Mend or delete .*en\.toml"):
        draft(owing, VENDOR, tmp_path, templates=tmp_path)
    with pytest.raises(Trouble, match="languages are"):
        template_in("sv", tmp_path)
    assert all(each.chased == 0 for each in samples.samples(owing))
    assert list(tmp_path.glob("*.eml")) == []


def test_where_nothing_can_be_written_nothing_is_recorded(owing: Desk, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x")
    with pytest.raises(Trouble, match="can't be written"):
        draft(owing, VENDOR, tmp_path / "file", templates=tmp_path)
    assert all(each.chased == 0 for each in samples.samples(owing))


def test_who_owes_nothing_is_not_chased(owing: Desk, tmp_path: Path) -> None:
    with pytest.raises(Trouble, match="owes no sample"):
        draft(owing, "Newcomer Mill", tmp_path)
