"""Money allowed to those who collect, board delivered straight from its works, and stores named by their town."""

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import lines
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.freight_of_prices import freight_of_prices


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


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Direkt ab Werk, Lieferung frei Haus gegen Frachtzuschlag", None),
        ("Direkt ab Werk; frei Haus zzgl. 25 EUR/t.", None), ("Direct ex mill, delivered $25/ST extra.", None),
        ("Ware direkt ab Werk 1.120 EUR/t, frei Haus 1.150 EUR/t", None),
        ("Directo de fábrica, franco con recargo de 25 EUR/t", None), ("Direct usine, franco en sus 25 EUR/t.", None),
        ("Lieferung frei Haus gegen 20 EUR/t.", None), ("Levererat mot 20 SEK/t", None),
        ("Shipped direct ex mill, delivered, energy surcharge $12/ST", True),
        ("Delivered prices plus energy surcharge $12/ST", True), ("Prices delivered, sheeting $60/ST extra", True),
        ("Delivered prices in USD per short ton, plus VAT", True), ("Price delivered: 1,120 USD/ST", True),
        ("Net price delivered = base price + paper supplement", True),
    ],
)  # fmt: skip
def test_delivery_that_has_its_own_price_is_in_no_other(text, delivered):
    assert freight_of_prices(text).delivered is delivered


@pytest.mark.parametrize("text", ["Store", "Hull store", "Ex stock Hull", "Ex every other store"])
def test_a_store_alone_says_nothing(text):
    assert find_delivery(text) is None
