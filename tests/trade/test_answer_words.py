"""What an answer says, and what else could be said in its place."""

import pytest

from tracker.trade.answer_words import answer_words, other_answers
from tracker.trade.answers import objection


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("", "prices are in EUR"),
        ("€/t", "“€/t” is EUR"),
        ("Price USD/ST / Prices in EUR", "where “Price USD/ST” and “Prices in EUR” differ, prices are in EUR"),
    ],
)
def test_what_settles_a_contradiction_names_both_sides(words: str, said: str) -> None:
    assert answer_words("currency:x" if words else "currency", "EUR", words) == said


@pytest.mark.parametrize("key", ["grade:x", "currency:x", "ton", "weight-basis", "decimal", "date-order", "basis:x"])
def test_what_else_is_offered_answers_the_question_and_leaves_out_what_holds(key: str) -> None:
    offered = [choice.value for choice in other_answers(key, "")]
    assert len(offered) > 1
    assert all(objection(key, value) is None for value in offered)
    assert offered[0] not in [choice.value for choice in other_answers(key, offered[0])]


def test_nothing_is_offered_where_any_figures_may_stand() -> None:
    assert other_answers("bracket:x", "5000:") == ()
