"""Rows of one board that a word beside the price tells apart."""

import pytest

from tests.intake.sheets import codes, lines


def priced(head, first, second):
    rows = [
        ["SBS C1S", 18, first, 1250],
        ["SBS C1S", 18, second, 1200],
        ["CRB", 20, first, 890],
        ["CRB", 20, second, 830],
    ]
    return lines([["Marrowgate Board Co."], [], ["Grade", "Caliper (pt)", head, "USD/short ton"], *rows]).values()


@pytest.mark.parametrize("head", ["Status", "Condition"])
@pytest.mark.parametrize("words", [("List", "Net"), ("Old", "New"), ("alt", "neu"), ("Previous", "Current")])
def test_a_list_price_and_a_net_price_of_one_board_are_not_both_accepted(head, words):
    assert all("prices-disagree" in codes(line) for line in priced(head, *words))


@pytest.mark.parametrize("words", [("Stock", "Making"), ("Prime", "Job lot"), ("Delivered", "FOB mill")])
def test_what_tells_two_lots_apart_asks_nothing(words):
    assert {str(line.state) for line in priced("Status", *words)} == {"accepted"}
