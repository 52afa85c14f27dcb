"""Last days in whole sentences, and days until which something else than the prices holds."""

import pytest

from tests.intake.sheets import lines


def last_day(note):
    rows = [["Offer of 1 July 2026"], ["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180], [note]]
    found = lines(rows)["D4"].offer.valid_until
    return None if found is None else found.isoformat()


@pytest.mark.parametrize(
    ("note", "day"),
    [
        ("They are euros a tonne and stand for thirty days from the date above.", "2026-07-31"),
        ("We shall keep to these prices until 31 October 2026.", "2026-10-31"),
        ("Offers close on 11 December 2026.", "2026-12-11"),
        ("La tarifa vale hasta el 30 de septiembre de 2026.", "2026-09-30"),
        ("Mantendremos la oferta hasta el 31 de julio de 2026.", "2026-07-31"),
        ("L'offre vous est faite jusqu'au 30 juillet 2026.", "2026-07-30"),
        ("Offre ferme jusqu'au 30 septembre 2026", "2026-09-30"),
        ("All prices hold until 31 December 2026; the office is closed until 7 January 2027.", "2026-12-31"),
    ],
)
def test_last_days(note, day):
    assert last_day(note) == day


@pytest.mark.parametrize(
    "note",
    [
        "The wage agreement is valid until 31 March 2027.",
        "Der Tarifvertrag gilt bis 31.03.2027.",
        "Le bureau est fermé jusqu'au 4 janvier 2027.",
        "The trial period is until 30 June 2027.",
        "Stock reservations are valid 7 days.",
        "Rolls held at customer request are stored free for 10 days.",
        "Tissue prices are valid until 30 September 2026.",
    ],
)
def test_days_of_something_else(note):
    assert last_day(note) is None


@pytest.mark.parametrize(
    "note",
    ["Lead time: 4 weeks approximately. Prices valid until 30 April 2027.",
     "Lead time: 4 weeks approx. Prices valid until 30 April 2027.",
     "Lieferzeit: 4 Wochen ungefähr. Preise gültig bis 30.04.2027.",
     "Délai de livraison : 4 semaines environ. Tarif applicable jusqu'au 30/04/2027.",
     "Plazo: 4 semanas aproximadamente. Oferta válida hasta el 30 de abril de 2027.",
     "Leveranstid: 4 veckor ungefär. Priserna gäller till 30 april 2027."],
)  # fmt: skip
def test_a_lead_time_that_is_about_so_long_ends_its_sentence(note):
    (line,) = lines([["Grade", "µm", "g/m²", "EUR/tonne"], ["GC1", 450, 300, 1100], [], [note]]).values()
    assert (line.offer.lead_days, str(line.offer.valid_until)) == ((28, 28), "2027-04-30")
