"""What competitors, other mills and the market ask and promise says nothing of the prices of the list."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "gsm", "µm", "EUR/t"], ["GC1", 250, 400, 1250], ["GC2", 250, 430, 1210], ["GD2", 300, 390, 850], []]


def offers(note):
    return [line.offer for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    ["A competitor advertises GC2 at 1,150 euros, though ex works and with a minimum of 20 tonnes.",
     "Another mill quotes GC2 delivered in two weeks.", "The market price for GC2 is 1,150 USD per tonne ex works.",
     "Ein Mitbewerber wirbt mit 1.150 Euro für GC2, allerdings ab Werk.",
     "Bei der Konkurrenz dauert GC2 derzeit neun Wochen, frei Haus.",
     "Ein Mitbewerber verlangt einen Energiezuschlag von 30 Euro je Tonne.",
     "Un concurrent livre le GC2 franco sous trois semaines.", "Le marché demande 1 150 euros la tonne départ usine.",
     "La competencia vende el GC2 a 1.150 euros, en fábrica.", "Otro proveedor entrega el GC2 franco en dos semanas.",
     "En konkurrent säljer GC2 fritt fabrik, minst 5 ton.", "Hos konkurrenten gäller priset på GC2 till 30 juni 2027."],
)  # fmt: skip
def test_what_others_sell_at_is_said_of_no_line(note):
    told = [(o.delivered, o.lead_days, o.minimum_kg, o.charges, o.valid_until, o.currency) for o in offers(note)]
    assert told == [(None, None, None, (), None, "EUR")] * 3


@pytest.mark.parametrize(
    "note",
    ["The competition sells ex works, our prices are delivered.", "Our prices are delivered, a competitor's not.",
     "Die Konkurrenz liefert ab Werk, wir dagegen liefern frei Haus.", "Prices follow the market and are delivered.",
     "Am Markt 12, 48143 Osterhausen, Lieferung frei Haus."],
)  # fmt: skip
def test_what_the_vendor_says_of_himself_beside_them_holds(note):
    assert [offer.delivered for offer in offers(note)] == [True] * 3
