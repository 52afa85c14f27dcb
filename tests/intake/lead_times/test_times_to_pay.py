"""Times to pay are no lead times, also where the verb is said once for two kinds of board."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Caliper", "Form", "USD/ST"]
ROLLS, SHEETS = ["SBS", "18 pt", "rolls", 1200], ["CUK", "20 pt", "sheets", 1300]


def leads(note):
    return [line.offer.lead_days for line in lines([HEAD, ROLLS, SHEETS, [], [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Rolls are paid in 15 business days, sheets in five weeks.",
        "Rolls are paid in 3 weeks and sheets in 5 weeks.",
        "SBS is paid in 3 weeks, CUK in five weeks.",
        "SBS is paid in 3 weeks; CUK in 5 weeks.",
        "Rolls are invoiced in 2 weeks, sheets in 5 weeks.",
        "Payment of rolls in 15 days, of sheets in five weeks.",
        "Rollen werden in 15 Tagen bezahlt, Bogen in fünf Wochen.",
        "SBS ist in 3 Wochen zu bezahlen, CUK in 5 Wochen.",
        "Les bobines sont payées sous 15 jours, les feuilles sous 5 semaines.",
        "Las bobinas se pagan en 15 días, los pliegos en 5 semanas.",
        "Rullar betalas inom 15 dagar, ark inom fem veckor.",
        "Rolls are stored free for 4 weeks, sheets for two weeks",
        "Rollen zahlen Sie in 3 Wochen, Bogen in fünf Wochen",
        "Zahlung Rollen in 3 Wochen, Bogen in fünf Wochen",
        "Rolls are paid in 3 weeks, sheets in 5",
    ],
)
def test_the_second_half_of_a_sentence_about_payment_tells_no_lead_time(note):
    assert leads(note) == [None, None]


@pytest.mark.parametrize(
    "note",
    [
        "Rolls are shipped in 15 business days, sheets in five weeks.",
        "Net 30 days, lead time rolls 3 weeks, sheets 5 weeks.",
        "Lieferzeit: Rollen 3 Wochen, Bogen 5 Wochen. Zahlung in 30 Tagen.",
        "Délai : bobines 3 semaines, feuilles 5 semaines. Paiement 30 jours.",
        "Plazo: bobinas 3 semanas, pliegos 5 semanas. Pago a 30 días.",
        "Leveranstid: rullar 3 veckor, ark 5 veckor. Betalning 30 dagar.",
    ],
)
def test_a_time_of_deliveries_is_a_lead_time_beside_one_of_payment(note):
    assert leads(note) == [(21, 21), (35, 35)]


def test_what_leads_with_a_lead_time_holds_beside_a_time_to_pay():
    assert leads("Lead time 3 weeks; rolls are paid in 3 weeks, sheets in five") == [(21, 21), (21, 21)]


@pytest.mark.parametrize(
    "note",
    [
        "Rolls delivered in 3 weeks, sheets in 5", "Rolls are delivered within 3 weeks, sheets within 5",
        "Rolls shipped in 3 weeks, sheets in 5", "Lead time: rolls 3 weeks, sheets 5",
        "Rollen lieferbar in 3 Wochen, Bogen in 5", "Délai bobines 3 semaines, feuilles 5",
        "Bobinas: entrega en 3 semanas, hojas en 5", "Rullar levereras inom 3 veckor, ark inom 5",
    ],
)  # fmt: skip
def test_a_unit_said_once_is_that_of_both_and_tells_nothing_of_freight(note):
    offers = [line.offer for line in lines([HEAD, ROLLS, SHEETS, [], [note]]).values()]
    assert [(offer.lead_days, offer.delivered) for offer in offers] == [((21, 21), None), ((35, 35), None)]


@pytest.mark.parametrize(
    "note", ["Rolls delivered in 3 weeks, sheets in 2 lots", "Lead time: rolls 3 weeks, sheets from 5"]
)
def test_a_count_of_something_else_or_a_limit_is_not_in_its_unit(note):
    offers = [line.offer for line in lines([HEAD, ROLLS, SHEETS, [], [note]]).values()]
    assert [(offer.lead_days, offer.delivered) for offer in offers] == [((21, 21), None), (None, None)]
