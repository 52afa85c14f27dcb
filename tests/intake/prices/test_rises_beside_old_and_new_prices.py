"""A rise that a letter announces beside old and new prices: it is in the new ones where they differ by it."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.changes.rises_shown import makes_the_difference
from tracker.trade.basis import Basis

_ROWS = [["GD2", 250, 320, 790, 845], ["GD2", 300, 390, 780, 840]]


def _asked(letter, *, head=("bisheriger Preis", "neuer Preis"), rows=_ROWS):
    heads = ["Sorte", "g/m²", "µm", *(f"{each} EUR/t" for each in head)]
    return ["number-ambiguous" in codes(line) for line in lines([[letter], [], heads, *rows]).values()]


@pytest.mark.parametrize(
    "letter",
    [
        "Wir erhöhen deshalb unsere Preise um 55 bis 60 € je Tonne.",
        "Wir erhöhen unsere Preise um 55 - 60 € je 1000 kg.",
        "Unsere Preise steigen um 7 bis 8 %.",
        "Our prices rise by between 7 and 8 %.",
        "Prices go up 55 to 60 EUR per tonne.",
    ],
)
def test_a_rise_by_which_old_and_new_prices_differ_is_not_asked_about(letter):
    assert _asked(letter) == [False, False]


@pytest.mark.parametrize(
    "letter",
    [
        "Wir erhöhen deshalb unsere Preise um 40 bis 45 € je Tonne.",
        "Unsere Preise steigen um 4 %.",
        "Our prices rise by 12 %.",
    ],
)
def test_another_rise_than_theirs_may_still_come_on_top(letter):
    assert _asked(letter) == [True, True]


def test_without_the_old_prices_nothing_shows_that_it_is_in_them():
    rows = [[*row[:3], row[4]] for row in _ROWS]
    assert _asked("Wir erhöhen unsere Preise um 55 bis 60 € je Tonne.", head=("Preis",), rows=rows) == [True, True]


@pytest.mark.parametrize(
    "text",
    [
        "Der Energiezuschlag von 18,00 EUR/t bleibt unverändert bestehen.",
        "The energy surcharge of 18 EUR/tonne remains in force.",
        "Le supplément énergie de 18 EUR/t reste inchangé.",
        "El recargo energético de 18 EUR/t se mantiene sin cambios.",
        "Energitillägget på 18 EUR/ton kvarstår oförändrat.",
    ],
)
def test_a_charge_that_stays_as_it_is_is_charged(text):
    (line,) = lines([["Delivered"], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC1", 300, 490, 1200], [], [text]]).values()
    assert [charge.price for charge in line.offer.charges] == [18]


@pytest.mark.parametrize(
    "text",
    ["Der Energiezuschlag von 18 EUR/t bleibt ausgesetzt.", "The energy surcharge of 18 EUR/tonne remains suspended."],
)
def test_one_that_stays_suspended_is_not(text):
    (line,) = lines([["Delivered"], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC1", 300, 490, 1200], [], [text]]).values()
    assert line.offer.charges == ()


def test_a_rise_explains_no_fall():
    rise, old, new = "Our prices rise by 50 EUR per tonne.", Decimal(950), Decimal(1000)
    assert makes_the_difference(rise, old, new, Basis.TONNE)
    assert not makes_the_difference(rise, new, old, Basis.TONNE)
