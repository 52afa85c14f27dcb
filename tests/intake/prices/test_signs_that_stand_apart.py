"""Signs beside each other that are not one word: the t of a weight before a price, a definition before what follows."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.freight.relieved_charges import no_charges
from tracker.intake.values.prices.currency import find_currencies


@pytest.mark.parametrize(
    ("text", "words"), [("4.2 t - €795", "€"), ("6 t – €860", "€"), ("in T€", "T€"), ("in T €", "T €")]
)
def test_the_t_of_a_weight_counts_no_thousands(text, words):
    assert [reading.words for reading in find_currencies(text)] == [words]


def test_a_lot_with_its_weight_ahead_of_its_price_is_offered_at_that():
    found = lines([["Stock lots"], ["GC2 295 gsm / 500 micron, reels 780mm, 4.2 t - €795 per tonne"]])
    assert [(str(line.state), line.offer.price, line.offer.currency) for line in found.values()] == [
        ("accepted", 795, "EUR")
    ]


@pytest.mark.parametrize(
    "title",
    [
        "Preise in EUR je Tonne (1.000 kg) netto, frei Haus",
        "Prices in EUR per tonne (1,000 kg) net",
        "EUR/t (1000 kg) netto",
    ],
)
def test_what_follows_the_definition_of_a_unit_is_a_word_of_its_own(title):
    found = lines([[title], ["Sorte", "g/m²", "µm", "Preis"], ["GC1", 230, 365, 1315]])
    assert [line.offer.basis for line in found.values()] == ["tonne"]


@pytest.mark.parametrize(
    "text", ["mandrin 152 mm, Ø max. 1.250 mm", "Hülse 152 mm, Durchmesser max. 1.250 mm", "diamètre maximal 1.250 mm"]
)
def test_the_most_that_a_roll_may_measure_is_no_caliper(text):
    assert find_calipers(text) == ()


def test_the_most_that_a_board_may_measure_is_one():
    assert find_calipers("Karton max. 0,450 mm")


def test_what_is_borne_behind_a_charge_is_not_that_charge():
    assert no_charges("Sheeting charge is added to the rate. Trim loss up to 3% is for our account.") == ()
    assert no_charges("Sheeting charge $60/ST. Currently waived.")
