"""Who is due for a chase, and what the draft to one vendor says and never says."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from email import message_from_bytes
from email.policy import default
from pathlib import Path

import pytest

from tracker.desk import contacts, samples
from tracker.desk.chase_templates import example, keep_own, make_own, original, template_in
from tracker.desk.chasing import chases, draft, mark_chased, preview, sign_as, signature
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.sample_life import EventKind
from tracker.desk.trouble import Trouble
from tracker.reports.message import LANGUAGES

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
    sign_as(desk, "A. Buyer")
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
    drafted = draft(owing, VENDOR.upper(), tmp_path, templates=tmp_path)
    assert (drafted.message.vendor, drafted.message.numbers) == (VENDOR, (1, 2))
    body = read(drafted.path).get_body().get_content()
    assert "S-0001" in body
    assert "S-0002" in body
    assert "S-0003" not in body
    assert "S-0004" not in body
    assert OTHER not in drafted.path.read_text(encoding="utf-8")
    assert "secret" not in drafted.path.read_text(encoding="utf-8")
    assert body.rstrip().endswith("A. Buyer")


def test_a_draft_is_no_chase_until_it_is_said_to_be_sent(owing: Desk, tmp_path: Path) -> None:
    drafted = draft(owing, VENDOR, tmp_path, templates=tmp_path)
    assert [each.chased for each in samples.samples(owing)] == [0, 0, 0, 0]
    assert len(chases(owing)) == 2
    edit = mark_chased(owing, drafted.message.numbers)
    assert edit.text == "2 samples marked as chased"
    assert [each.chased for each in sorted(samples.samples(owing), key=lambda each: each.number)] == [1, 1, 0, 0]
    assert [each.vendor for each in chases(owing)] == [OTHER]
    undo(owing, edit)
    assert [each.chased for each in samples.samples(owing)] == [0, 0, 0, 0]


@pytest.mark.parametrize(("number", "why"), [(4, "arrived on 2026-11-09"), (9, "no sample 9")])
def test_all_are_marked_as_chased_or_none(owing: Desk, number: int, why: str) -> None:
    with pytest.raises(Trouble, match=why):
        mark_chased(owing, (1, number))
    assert all(each.chased == 0 for each in samples.samples(owing))


def test_a_message_is_signed_with_the_name_that_was_given_and_never_the_login(owing: Desk, tmp_path: Path) -> None:
    assert "Ada" not in preview(owing, VENDOR, templates=tmp_path).text
    assert preview(owing, VENDOR, "B. Stand-in", tmp_path).text.endswith("B. Stand-in")
    with pytest.raises(Trouble, match="name that chases are signed with"):
        sign_as(owing, "  ")
    assert signature(owing) == "A. Buyer"


def test_nobody_signs_for_the_user(desk: Desk, tmp_path: Path) -> None:
    samples.log(desk, VENDOR, "SBS", on=nov(2))
    with pytest.raises(Trouble, match="Nobody is named to sign"):
        draft(desk, VENDOR, tmp_path, templates=tmp_path)
    edit = sign_as(desk, " C.  Buyer ")
    assert signature(desk) == "C. Buyer"
    undo(desk, edit)
    assert signature(desk) == ""


def test_a_preview_says_what_the_draft_will_say_and_what_it_lacks(owing: Desk, tmp_path: Path) -> None:
    shown = preview(owing, OTHER, templates=tmp_path)
    assert (shown.to, shown.numbers) == ("", (3,))
    assert shown.text.startswith("To: (no address is known)\nSubject: Samples we are waiting for (1)\n")
    assert list(tmp_path.glob("*.eml")) == []
    contacts.set_contact(owing, OTHER, "Frau Weiß", "muster@ostrane.example")
    drafted = draft(owing, OTHER, tmp_path, templates=tmp_path)
    assert drafted.message.to == "Frau Weiß <muster@ostrane.example>"
    assert drafted.message == preview(owing, OTHER, templates=tmp_path)


def test_a_line_says_when_it_was_needed_and_how_late_it_is(desk: Desk, tmp_path: Path) -> None:
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=nov(2), needed=nov(20))
    samples.record(desk, 1, EventKind.PROMISED, nov(3), nov(10))
    text = preview(desk, VENDOR, "A. Buyer", tmp_path).text
    assert "asked for on 2026-11-02, promised for 2026-11-10, needed by 2026-11-20; days overdue: 15" in text


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


@pytest.mark.parametrize(
    ("language", "told"),
    [("fr", "25 feuilles 70 x 100 cm"), ("de", "25 Bogen 70 x 100 cm"), ("es", "25 hojas"), ("en", "25 sheets")],
)
def test_sheets_are_called_as_the_vendor_calls_them(desk: Desk, tmp_path: Path, language: str, told: str) -> None:
    samples.log(desk, VENDOR, "SBS", quantity="25 sheets 70 x 100 cm", on=nov(2))
    samples.log(desk, VENDOR, "SBS", quantity="1 sheet", on=nov(2))
    contacts.set_contact(desk, VENDOR, language=language)
    text = preview(desk, VENDOR, "A. Buyer", tmp_path).text
    assert told in text
    assert ("1 feuille," in text) == (language == "fr")


def test_the_user_s_own_template_stands_before_the_shipped_one(owing: Desk, tmp_path: Path) -> None:
    own = make_own("en", tmp_path / "chase")
    own.write_text(own.read_text(encoding="utf-8").replace("Kind regards", "Cheers"), encoding="utf-8")
    assert make_own("en", tmp_path / "chase") == own
    assert "Cheers" in own.read_text(encoding="utf-8")
    body = read(draft(owing, VENDOR, tmp_path, templates=tmp_path / "chase").path).get_body().get_content()
    assert "Cheers" in body


def test_words_are_changed_kept_and_put_back(owing: Desk, tmp_path: Path) -> None:
    words = original("de")
    mine = replace(words, subject='"Muster" \\ $count', body="$greeting\n$list\nMit Gruß\n$buyer\n")
    own = keep_own("de", mine, tmp_path)
    assert own == tmp_path / "de.toml"
    assert template_in("de", tmp_path) == mine
    assert original("de") == words
    assert keep_own("de", words, tmp_path) is None
    assert not own.exists()
    assert template_in("de", tmp_path) == words
    assert "Mit Gruß" in (tmp_path / "de.before.toml").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("changed", "why"),
    [({"subject": "$nobody"}, "nobody"), ({"body": "Hello $buyer"}, r"\$list"), ({"line": "$"}, "field")],
)
def test_words_that_make_no_message_are_refused_and_the_kept_ones_stay(
    tmp_path: Path, changed: dict[str, str], why: str
) -> None:
    mine = replace(original("en"), subject="Waiting: $count")
    keep_own("en", mine, tmp_path)
    with pytest.raises(Trouble, match=why):
        keep_own("en", replace(mine, **changed), tmp_path)
    assert template_in("en", tmp_path) == mine


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_example_shows_every_word_of_a_language(language: str) -> None:
    text = example(original(language))
    assert "$" not in text
    assert all(shown in text for shown in ("(2)", "(contact)", "S-0012", "S-0015", "26", "(your name)"))


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
