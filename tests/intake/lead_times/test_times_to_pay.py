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
