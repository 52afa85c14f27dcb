"""Prices that a buyer named, repeated beside the vendor's offer, are nobody's offer."""

import pytest

from tests.intake.sheets import lines, prices

_UNIT = "USD per short ton, delivered"


def _sheet(*heads: str) -> list[list[str | int]]:
    rows = [["SBS C1S", str(14 + row), *(1100 + 7 * row + 40 * place for place in range(len(heads)))] for row in (0, 1)]
    return [["Ossiter Board LLC"], [_UNIT], [], ["Grade", "Caliper (pt)", *heads], *rows]


def _states(*heads: str) -> dict[str, str]:
    return {cell: state for cell, (state, *_) in prices(lines(_sheet(*heads))).items()}


@pytest.mark.parametrize(
    "heads",
    [
        ("Your target", "Your current price", "Our quote"),
        ("Your current price ($/ST)", "Our quote ($/ST)"),
        ("You pay today", "Our quote"),
        ("Your price", "Our offer"),
        ("Ihr Zielpreis", "Ihr derzeitiger Preis", "Unser Angebot"),
        ("Ihr Preis", "Unser Angebot"),
        ("Votre prix cible", "Votre prix actuel", "Notre offre"),
        ("Vous payez aujourd'hui", "Notre offre"),
        ("Su precio objetivo", "Su precio actual", "Nuestra oferta"),
        ("Ert målpris", "Ert nuvarande pris", "Vår offert"),
        ("Ni betalar idag", "Vår offert"),
    ],
)
def test_of_a_buyers_figures_and_a_quote_the_quote_is_the_offer(heads: tuple[str, ...]) -> None:
    quoted = "ABCDEF"[len(heads) + 1]
    assert _states(*heads) == {f"{quoted}5": "accepted", f"{quoted}6": "accepted"}


@pytest.mark.parametrize(
    "heads",
    [("Our quote", "Your current price"), ("Unser Angebot", "Ihr aktueller Preis"), ("Vår offert", "Ert målpris")],
)
def test_the_quote_may_stand_first(heads: tuple[str, ...]) -> None:
    assert _states(*heads) == {"C5": "accepted", "C6": "accepted"}


@pytest.mark.parametrize(
    "head", ["Your price", "Your current price", "Ihr Preis", "Votre prix", "Su precio", "Ert pris"]
)
def test_where_nothing_else_is_offered_it_is_the_vendors_price_for_this_buyer(head: str) -> None:
    assert _states(head) == {"C5": "accepted", "C6": "accepted"}
    assert _states("List price", head) == {"D5": "accepted", "D6": "accepted"}


@pytest.mark.parametrize(
    "heads",
    [
        ("Our offer", "Your price"),
        ("Unser Angebot", "Ihr Preis"),
        ("Our price", "Your price"),
        ("Your current price", "Your new price"),
    ],
)
def test_what_may_be_left_for_the_buyer_to_pay_is_asked(heads: tuple[str, str]) -> None:
    assert set(_states(*heads).values()) == {"question"}
