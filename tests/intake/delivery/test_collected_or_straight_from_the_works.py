"""Money allowed to those who collect, board delivered straight from its works, and stores named by their town."""

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import lines
from tracker.intake.values.freight.delivery import find_delivery


@pytest.mark.parametrize(
    "text",
    [
        "If you pick up at our dock we allow you $0.60 per cwt off.", "Bei Selbstabholung vergüten wir 12 EUR/t.",
        "Pour enlèvement à l'usine, remise de 10 €/t.", "Si recoge en fábrica, descontamos 10 €/t.",
    ],
)  # fmt: skip
def test_what_is_allowed_for_collecting_says_nothing_of_the_other_prices(text):
    rows = [["Prices delivered to your dock"], ["Grade", "µm", "g/m²", "USD/t"], ["GC1", 450, 300, 1100], [], [text]]
    (line,) = lines(rows).values()
    assert line.offer.delivered is True


@pytest.mark.parametrize("text", ["Collected from our mill, 2% discount for cash", "Selbstabholung ab Werk, EUR/t"])
def test_prices_of_board_that_is_collected(text):
    assert offer_below(text).delivered is False


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Rullar, direkt från bruk, fritt levererat, EUR per ton", True),
        ("Direkt ab Werk, frei Haus", True),
        ("Ab Werk, frei Haus", None),
        ("Direct ex mill or delivered", None),
        ("Ex Hull store", False),
        ("Ex Great Wadden warehouse", False),
    ],
)
def test_the_way_that_board_comes(text, delivered):
    assert find_delivery(text).delivered is delivered


@pytest.mark.parametrize("text", ["Store", "Hull store", "Ex stock Hull", "Ex every other store"])
def test_a_store_alone_says_nothing(text):
    assert find_delivery(text) is None
