"""Lead times in the words of a letter: 'please reckon with eight weeks', 'from the day we have your order', and goods
that one has in stock while others are made to order."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Form", "µm", "g/m²", "EUR/tonne"]
SBS, GD2 = ["SBS C1S", "Rolls", 400, 300, 1290], ["GD2", "Sheets 70 x 100 cm", 480, 350, 790]


def leads(note, *, above=False):
    table = [HEAD, SBS, GD2]
    found = lines([[note], [], *table] if above else [*table, [], [note]]).values()
    return [line.offer.lead_days for line in found]


@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize(
    "note",
    ["Delivery is four weeks from order, for the GD2 please reckon with eight weeks.",
     "Lead time is four weeks; for GD2 you should count on eight weeks.",
     "Die Lieferzeit beträgt 4 Wochen, bei GD2 rechnen Sie bitte mit 8 Wochen.",
     "Die Lieferzeit beträgt 4 Wochen, für GD2 bitte mit 8 Wochen rechnen.",
     "Die Lieferzeit beträgt 4 Wochen, für GD2 planen Sie bitte 8 Wochen ein.",
     "Le délai est de 4 semaines, pour le GD2 veuillez compter 8 semaines.",
     "El plazo es de 4 semanas, para el GD2 cuente con 8 semanas.",
     "El plazo es de 4 semanas, para el GD2 rogamos calcular 8 semanas.",
     "Leveranstiden är 4 veckor, för GD2 får ni räkna med 8 veckor."],
)  # fmt: skip
def test_boards_with_which_to_reckon_otherwise(note, above):
    assert leads(note, above=above) == [(28, 28), (56, 56)]


@pytest.mark.parametrize(
    "note",
    ["Figure on three weeks from the day we have your PO.",
     "Please allow three weeks from the day we receive your purchase order.",
     "Three weeks from the date we get your order.",
     "Rechnen Sie mit drei Wochen ab dem Tag, an dem wir Ihre Bestellung haben.",
     "Comptez trois semaines à compter du jour où nous avons votre commande.",
     "Cuente con tres semanas desde el día en que tengamos su pedido.",
     "Räkna med tre veckor från den dag vi har er order."],
)  # fmt: skip
def test_times_from_the_day_of_the_order(note):
    assert leads(note) == [(21, 21)] * 2


@pytest.mark.parametrize(
    "note",
    ["Payment is due three weeks from the day we have your PO.",
     "Samples come in three weeks from the day we have your PO.",
     "Figure on a price rise three weeks from the day we have your PO.",
     "Zahlung drei Wochen ab dem Tag, an dem wir Ihre Bestellung haben.",
     "Paiement trois semaines à compter du jour où nous avons votre commande.",
     "Pago a tres semanas desde el día en que tengamos su pedido.",
     "Betalning tre veckor från den dag vi har er order."],
)  # fmt: skip
def test_what_else_is_counted_from_that_day(note):
    assert leads(note) == [None] * 2


@pytest.mark.parametrize(
    "note",
    ["Sheets are kept in stock, for rolls please reckon with 4 weeks.",
     "Sheets are in stock, rolls are made to order with a lead time of 4 weeks.",
     "Bogen liefern wir ab Lager, für Rollen rechnen Sie bitte mit 4 Wochen.",
     "Bogen haben wir auf Lager, Rollen werden auf Bestellung gefertigt und brauchen 4 Wochen.",
     "Les feuilles sont en stock, pour les bobines comptez 4 semaines.",
     "Las hojas están en stock, las bobinas se fabrican bajo pedido con un plazo de 4 semanas.",
     "Ark finns i lager, rullar tillverkas på order med 4 veckors leveranstid."],
)  # fmt: skip
def test_a_form_in_stock_and_the_other_to_order(note):
    assert leads(note) == [(28, 28), (0, 0)]


@pytest.mark.parametrize(
    "note",
    ["Sheets are not in stock, rolls come in 4 weeks.", "Sheets may be in stock, for rolls please reckon with 4 weeks.",
     "Bogen sind nicht auf Lager, für Rollen rechnen Sie bitte mit 4 Wochen.",
     "Ark finns inte i lager, för rullar räkna med 4 veckor."],
)  # fmt: skip
def test_a_form_that_is_perhaps_in_stock(note):
    assert leads(note)[1] is None


@pytest.mark.parametrize(
    "note", ["GD2 finns i lager, övriga kvaliteter har 4 veckors leveranstid.",
             "GD2 is in stock, the other grades have a lead time of 4 weeks."]
)  # fmt: skip
def test_the_time_of_all_others_behind_a_board_in_stock(note):
    assert leads(note) == [(28, 28), (0, 0)]


@pytest.mark.parametrize(
    "note", ["Leveranstid 10 arbetsdagars produktion.", "Två veckors leveranstid.", "14 dagars leveranstid."]
)
def test_swedish_times_before_what_takes_them(note):
    assert leads(note) == [(14, 14)] * 2
