"""Columns whose heads say from which day on their prices hold, beside those that they have taken the place of."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

BOARDS = [["GD2", 300, 390, 912], ["GD2", 400, 530, 901], ["GC2", 280, 450, 1262]]


def states(*heads, below=(), boards=BOARDS):
    """The states of prices by column, each head's a little below those of the head before it."""
    rows = [["Preise in EUR/t"], [], ["Sorte", "g/m²", "µm", *heads]]
    if below:
        rows.append([None, None, None, *below])
    rows += [[*board, *(board[-1] - 15 * place for place in range(1, len(heads)))] for board in boards]
    return {cell[0]: line.state for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("abgelöst", "gültig ab 01.07.2026"),
        ("superseded", "valid from 1 July 2026"),
        ("remplacé", "en vigueur à partir du 01/07/2026"),
        ("derogado", "vigente desde 01/07/2026"),
        ("upphävt", "gäller från 2026-07-01"),
    ],
)
def test_the_prices_from_a_day_on_are_offered_and_those_before_them_are_not(old, new):
    assert states(old, new) == {"E": State.ACCEPTED}


def test_days_and_ages_may_stand_in_either_row_of_a_head():
    heads = ["abgelöst", "abgelöst", "gültig ab 01.07.2026"]
    assert states(*heads, below=["01.01.2026", "01.04.2026", "aktuell"]) == {"F": State.ACCEPTED}


def test_prices_from_a_day_on_may_be_a_lists_only_ones():
    assert states("gültig ab 01.07.2026") == {"D": State.ACCEPTED}


@pytest.mark.parametrize("other", ["Lohnstufe", "gültig ab 01.04.2026"])
def test_which_of_two_holds_is_asked_where_the_other_does_not_say_that_it_ended(other):
    assert set(states(other, "gültig ab 01.07.2026").values()) == {State.QUESTION}


def test_days_below_such_a_head_are_no_prices():
    rows = [["Sorte", "g/m²", "µm", "EUR/t", "gültig ab"], *([*board, "01.07.2026"] for board in BOARDS)]
    assert {cell[0] for cell in lines(rows)} == {"D"}


@pytest.mark.parametrize("earlier", ["01.04.2026", "Apr 2026", "Q1 2026"])
def test_bare_times_before_the_day_are_a_history(earlier):
    assert states(earlier, "gültig ab 01.07.2026") == {"E": State.ACCEPTED}


@pytest.mark.parametrize("later", ["01.10.2026", "Okt 2026", "Q4 2026"])
def test_what_follows_the_prices_from_a_day_on_is_asked_about(later):
    assert State.ACCEPTED not in states("gültig ab 01.07.2026", later).values()
