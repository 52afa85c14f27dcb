"""Supply agreements and mails: who sells, the smallest order by what is refused, and until when orders are taken."""

import pytest

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.company import company_name, labelled_company
from tracker.intake.values.orders.minimum import minimums
from tracker.intake.values.times.validity import validity


@pytest.mark.parametrize(
    "text",
    [
        "Orders for less than 5,000 kg per item are not accepted.", "Aufträge unter 5.000 kg werden nicht angenommen.",
        "Les commandes de moins de 5 000 kg ne sont pas acceptées.", "No se aceptan pedidos inferiores a 5.000 kg.",
        "Order under 5 000 kg accepteras inte.", "We accept no orders below 5,000 kg.",
        "I can't do anything under 5,000 kg per item, sorry.",
    ],
)  # fmt: skip
def test_what_is_refused_says_the_smallest_order(text):
    (least,) = minimums(text)
    assert {amount.value for amount in least.mass.amounts} >= {5000}


@pytest.mark.parametrize(
    "text", ["Cancellations of orders over 5 t are not accepted", "Claims are not accepted", "Orders under 5 t: +3 %"]
)
def test_other_refusals_do_not(text):
    assert minimums(text) == ()


def test_a_number_that_begins_with_letters_ends_no_firm_s_name():
    assert company_name("Supply Agreement SA-27-014") is None
    assert company_name("Framework Contract AB/4711") is None
    assert company_name("Papelera Altavega SA - Lista 27") == "Papelera Altavega SA"


def test_the_seller_in_quotes_and_brackets():
    assert labelled_company('Gullspar Board Company ("Seller")') == "Gullspar Board Company"
    assert labelled_company("Kartonwerk Söllbach AG („Verkäufer“)") in ("Kartonwerk Söllbach AG", None)
    assert labelled_company('Lorimer Cartons ("Buyer")') is None


def test_a_person_sends_for_the_firm_in_brackets():
    assert labelled_company("From: Dana Orvik (Fenwick Mills)") == "Fenwick Mills"
    assert labelled_company("From: Fenwick Board Mills (Sales)") == "Fenwick Board Mills (Sales)"
    assert labelled_company("From: Dana Orvik (Sales)") is None


@pytest.mark.parametrize(
    "text",
    [
        "Prices are firm for orders entered and released by December 18, 2026 and include freight.",
        "Prices firm for orders placed by December 18, 2026",
    ],
)
def test_orders_by_a_day_say_how_long_prices_hold(text):
    said = validity(text)
    assert said is not None
    assert str(said.last_day()) == "2026-12-18"


def test_folding_behind_other_words_names_no_grade():
    assert find_grade("SBS C1S folding").grades == ("SBS",)
    assert find_grade("C1S folding").grades == ()
    assert find_grade("Folding 250 g/m²").grades == ("FBB",)
