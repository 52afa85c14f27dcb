"""An answer is of the kind that its question asks for."""

import pytest

from tracker.trade.answers import objection
from tracker.trade.offer import LEAVE_OUT, Choice


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("currency", "SEK"), ("currency:kr/mt", "NOK"), ("ton", "short"), ("grade:fenlight", "SBS"),
        ("basis:per roll", "1000m2"), ("bracket:1 truckload", "18000:"), ("bracket:1 truckload", ":18000"),
        ("bracket:1 truckload", "5000:18000"), ("weight-basis", "gsm"), ("decimal", ","), ("date-order", "dmy"),
        ("vendor", "Tolmere Board"), ("weight", LEAVE_OUT), ("currency:kr", LEAVE_OUT),
    ],
)  # fmt: skip
def test_an_answer_of_its_kind_is_taken(key: str, value: str) -> None:
    assert objection(key, value) is None


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("currency", "crowns"), ("currency:kr", "ZZZ"), ("currency", "usd"), ("grade:fenlight", "BAR"), ("ton", "long"),
        ("basis:", "ream"), ("bracket:1 pallet", "a lot"), ("bracket:1 pallet", "5:2"), ("bracket:1 pallet", ":"),
        ("bracket:1 pallet", "-1:"), ("bracket:1 pallet", "NaN:"), ("weight-basis", "acre"),
    ],
)  # fmt: skip
def test_any_other_is_refused_in_one_sentence_that_shows_it(key: str, value: str) -> None:
    said = objection(key, value)
    assert said is not None
    assert f"“{value}”" in said


def test_only_what_the_question_offers_answers_it() -> None:
    crowns = (Choice("SEK", "SEK"), Choice("NOK", "NOK"))
    assert objection("currency:kr", "NOK", crowns) is None
    assert objection("currency:kr", "USD", crowns) == "“USD” is not among the answers to this question: SEK, NOK."
