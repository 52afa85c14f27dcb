"""A wrong answer that is remembered is said anew: what was stored by it follows, and nothing else does."""

import pytest

from tests.desk.test_take_in import Sheet, bases_of, reads, sheet
from tracker.desk import files, questions, take_in
from tracker.desk.changed_answers import change_answer
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.desk.trouble import Trouble
from tracker.trade.offer import Answers

__all__ = ["reads", "sheet"]


@pytest.fixture
def answered(desk: Desk, sheet: Sheet) -> Desk:
    """Two files of one vendor read with a wrong answer that is remembered, the second withdrawn."""
    for name in (b"autumn list", b"winter list"):
        taken = take_in.read(desk, sheet(name), Answers({"ton": "metric"}))
        stored = take_in.store(desk, taken, remember={"ton": "metric"})
    files.withdraw(desk, stored.file_id)
    return desk


def test_what_was_stored_by_a_wrong_answer_follows_the_new_one_and_back(answered: Desk) -> None:
    assert bases_of(answered) == ["short_ton", "tonne"]
    (kept,) = questions.remembered(answered)
    changed = change_answer(answered, kept.id, "short")
    assert changed.text.endswith("the ton is a short ton (2,000 lb); 1 stored offer follows")
    assert (bases_of(answered), changed.offers) == (["short_ton", "short_ton"], 1)
    assert [each.value for each in questions.remembered(answered)] == ["short"]
    change_answer(answered, changed.answer_id, changed.was)
    assert bases_of(answered) == ["short_ton", "tonne"]


def test_a_withdrawn_file_stays_as_it_was(answered: Desk) -> None:
    (kept,) = questions.remembered(answered)
    change_answer(answered, kept.id, "short")
    newest = files.files(answered)[0]
    assert (newest.withdrawn, files.answers(answered, newest.id).settled["ton"]) == (True, "metric")


def test_an_offer_that_the_answer_has_no_part_in_keeps_its_row(answered: Desk) -> None:
    before = load_snapshot(answered).id
    (kept,) = questions.remembered(answered)
    change_answer(answered, kept.id, "short")
    after = load_snapshot(answered).id
    assert (after[0] == before[0], after[1] == before[1]) == (True, False)


@pytest.mark.parametrize(("value", "said"), [("long", "“long” is no ton"), ("leave", "“leave” is no ton")])
def test_an_answer_of_another_kind_changes_nothing(answered: Desk, value: str, said: str) -> None:
    (kept,) = questions.remembered(answered)
    with pytest.raises(Trouble, match=said):
        change_answer(answered, kept.id, value)
    assert questions.remembered(answered) == (kept,)
    assert bases_of(answered) == ["short_ton", "tonne"]


def test_a_forgotten_answer_can_not_be_changed(answered: Desk) -> None:
    with pytest.raises(Trouble, match="forgotten already"):
        change_answer(answered, 99, "short")
