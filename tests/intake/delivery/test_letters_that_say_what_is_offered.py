"""'Wir bieten Ihnen an (DAP Ihr Werk)' tells of all prices; freight that somebody else offers is no part of them."""

import pytest

from tests.intake.sheets import lines


def delivered(text):
    rows = [["Farnholt Karton GmbH"], [text], [], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 385, 1165]]
    return {line.offer.delivered for line in lines(rows).values()}


@pytest.mark.parametrize(
    "text",
    ["Sehr geehrte Damen und Herren, wir bieten Ihnen an (DAP Ihr Werk):", "Wir bieten Ihnen an: frei Haus",
     "Gern bieten wir Ihnen an, frei Haus:", "Vi offererar er (fritt levererat):", "We offer you (DAP your works):",
     "Nous vous proposons (franco votre usine) :", "Les ofrecemos (puesto en su fábrica):"],
)  # fmt: skip
def test_a_letter_that_goes_on_to_the_delivery_tells_it_of_all_prices(text):
    assert delivered(text) == {True}


@pytest.mark.parametrize(
    "text",
    ["Preise frei Haus bieten Ihnen an: unsere Verkäufer", "Unsere Verkäufer bieten Ihnen an: frei Haus",
     "Wir bieten Ihnen auf Wunsch an (frei Haus)", "Wir bieten Ihnen frei Haus auf Anfrage",
     "Fritt levererat offererar er våra säljare", "Vi offererar er fritt levererat på begäran",
     "We offer you delivered prices on request", "Nous vous proposons sur demande (franco votre usine)",
     "Les ofrecemos bajo pedido (puesto en su fábrica)"],
)  # fmt: skip
def test_what_somebody_else_offers_or_who_asks_is_offered_is_left_open(text):
    assert delivered(text) == {None}


def test_a_letter_that_goes_on_to_the_works_tells_it_too():
    assert delivered("Wir bieten Ihnen an (ab Werk):") == {False}
