"""Prices that are approximate, a span, cut off or two in one cell: said so or asked about."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.trade.offer import State

HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


def priced(*texts, head="Price USD/ST"):
    """The lines of a list whose boards differ and cost so, in order."""
    rows = [[*HEAD, head], *(["SBS C1S", 12 + place, 60, text] for place, text in enumerate(texts))]
    return list(lines(rows).values())


@pytest.mark.parametrize("text", ["ca. 915", "915+", "~915", "915 approx."])
def test_a_price_that_is_not_exact_says_so(text):
    (line,) = priced(text)
    assert (line.offer.price, line.state) == (Decimal(915), State.ACCEPTED)
    assert codes(line) == {"number-ambiguous"}


@pytest.mark.parametrize(
    ("text", "figures"),
    [
        ("from 915", ["915"]),
        ("900-950", ["900", "950"]),
        ("900.50 to 950", ["900.50", "950"]),
        ("900 / 960", ["900", "960"]),
    ],
)
def test_what_is_not_one_price_is_asked_with_its_figures_to_choose_from(text, figures):
    rows = [[*HEAD, "Price USD/ST"], ["SBS C1S", 12, 60, text]]
    (asked,) = read(rows).questions
    assert [choice.value for choice in asked.choices] == figures
    (line,) = lines(rows, {asked.key: figures[-1]}).values()
    assert (line.state, line.offer.price) == (State.ACCEPTED, Decimal(figures[-1]))


def test_a_cell_too_narrow_to_show_its_figure_is_asked():
    hidden, shown = priced("########", 900)
    assert (hidden.state, codes(hidden)) == (State.QUESTION, {"number-ambiguous"})
    assert shown.state is State.ACCEPTED


def test_a_price_with_more_digits_than_can_be_kept_holds_back_its_own_line_only():
    long, short = priced("1100.1234567890123456789", 900)
    assert (long.state, short.state) == (State.QUESTION, State.ACCEPTED)
    assert read([[*HEAD, "Price USD/ST"], [*SBS, Decimal("1100.1234567890123456789")]]).lines[0].state is State.QUESTION


@pytest.mark.parametrize("head", ["Price rolls / sheets USD/ST", "Price rolls / sheets", "Price USD/ST"])
def test_two_prices_in_one_cell_are_asked(head):
    rows = [[*HEAD, head], [*SBS, "1190 / 1260"], [*CRB, "900 / 960"]]
    assert len(lines(rows)) == 2
    for line in lines(rows).values():
        assert line.state is State.QUESTION
        assert "number-ambiguous" in codes(line)
