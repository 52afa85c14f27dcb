"""'Available for 6 weeks' tells how long an offer lasts, and 'available in 6 weeks' how long the board takes."""

from datetime import date

import pytest

from tests.intake.sheets import lines

ROWS = [["Price list, 2 November 2026"], ["Grade", "Caliper", "USD/ST"], ["SBS", "18 pt", 1200], []]


def told(note):
    (line,) = lines([*ROWS, [note]]).values()
    return line.offer.lead_days, line.offer.valid_until


@pytest.mark.parametrize(
    "note",
    [
        "Available for 6 weeks.", "Offer open for 6 weeks.", "This offer is open for six weeks.",
        "Prices available for 6 weeks.", "Verfügbar für 6 Wochen.", "Das Angebot ist offen für 6 Wochen.",
        "Disponible pendant 6 semaines.", "Offre ouverte pendant 6 semaines.", "Disponible durante 6 semanas.",
        "Oferta abierta durante 6 semanas.", "Tillgängligt i 6 veckor.", "Erbjudandet är öppet i 6 veckor.",
    ],
)  # fmt: skip
def test_how_long_an_offer_lasts_is_its_validity(note):
    assert told(note) == (None, date(2026, 12, 14))


@pytest.mark.parametrize(
    "note",
    [
        "Available in 6 weeks.", "Available: 6 weeks", "Available for shipment in 6 weeks.", "Lieferbar in 6 Wochen.",
        "Disponible sous 6 semaines.", "Livrable sous 6 semaines.", "Plazo de entrega: 6 semanas.",
        "Leveranstid 6 veckor.",
    ],
)  # fmt: skip
def test_how_long_a_board_takes_is_its_lead_time(note):
    assert told(note) in (((42, 42), None), (None, None))
    assert told(note)[1] is None


@pytest.mark.parametrize("note", ["Samples are available for 6 weeks.", "The certificate is available for 6 weeks."])
def test_what_else_lasts_so_long_is_neither(note):
    assert told(note) == (None, None)


def test_both_are_told_beside_each_other():
    assert told("Lead time 4 weeks, offer open for 6 weeks.") == ((28, 28), date(2026, 12, 14))
