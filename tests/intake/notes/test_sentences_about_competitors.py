"""What competitors, other mills and the market ask and promise says nothing of the prices of the list."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["Grade", "gsm", "µm", "EUR/t"], ["GC1", 250, 400, 1250], ["GC2", 250, 430, 1210], ["GD2", 300, 390, 850], []]


def offers(note):
    return [line.offer for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    ["A competitor advertises GC2 at 1,150 euros, though ex works and with a minimum of 20 tonnes.",
     "Competitors ship in stock sizes, freight included.", "Wettbewerber liefern schnell, Fracht inbegriffen.",
     "Les concurrents livrent vite, transport compris.", "Los competidores entregan pronto, portes incluidos.",
     "Konkurrenterna levererar snabbt nu, frakt ingår.",
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
    ["The competition sells ex works, our prices are delivered.",
     "Competitors ship in 6 weeks, prices include freight.", "Our prices are delivered, a competitor's not.",
     "Die Konkurrenz liefert ab Werk, wir dagegen liefern frei Haus.", "Prices follow the market and are delivered.",
     "Am Markt 12, 48143 Osterhausen, Lieferung frei Haus."],
)  # fmt: skip
def test_what_the_vendor_says_of_himself_beside_them_holds(note):
    assert [offer.delivered for offer in offers(note)] == [True] * 3


@pytest.mark.parametrize(
    "note",
    ["The market is firm, prices are in Canadian dollars.", "The market is firm and prices are in Canadian dollars.",
     "The market is short of fibre, prices are net per MSF.", "The market is weak, discount of 5 % on all prices.",
     "The market is tight, all prices increase by 40 EUR/t.", "Other mills have closed, so all prices are in CHF.",
     "Der Markt ist angespannt, Preise in CHF.", "Der Markt ist angespannt, Preise je 1000 m².",
     "Am Markt, 59555 Osterhausen, Preise in CHF.", "Le marché est tendu, prix en USD.",
     "Le marché est tendu et les prix sont en USD.", "El mercado está tenso, precios en USD.",
     "Marknaden är stram, priser i SEK."],
)  # fmt: skip
def test_prices_told_behind_the_market_contradict_the_head(note):
    assert {str(line.state) for line in lines([*ROWS, [note]]).values()} == {"question"}


@pytest.mark.parametrize(
    "note",
    ["The market is firm, a surcharge of 40 EUR/t is added to all prices, lead times are 8 weeks, minimum order 20 t.",
     "Der Markt ist fest, Energiezuschlag 40 EUR/t, Lieferzeit 8 Wochen, Mindestmenge 20 t.",
     "Le marché est ferme, surcharge énergie 40 EUR/t, délai de livraison 8 semaines, commande minimum 20 t.",
     "El mercado está firme, recargo de energía 40 EUR/t, plazo de entrega 8 semanas, pedido mínimo 20 t.",
     "Marknaden är fast, energitillägg 40 EUR/t, leveranstid 8 veckor, minsta order 20 ton."],
)  # fmt: skip
def test_terms_told_behind_the_market_hold(note):
    told = offers(note)
    assert [(offer.lead_days, float(offer.minimum_kg)) for offer in told] == [((56, 56), 20000.0)] * 3
    assert [(str(charge.price), str(charge.basis)) for offer in told for charge in offer.charges] == [
        ("40", "tonne")
    ] * 3


@pytest.mark.parametrize(
    "note",
    ["Other mills are sold out, lead time is 8 weeks.", "Andere Werke sind ausverkauft, Lieferzeit 8 Wochen.",
     "Les autres usines sont fermées, délai de livraison 8 semaines.",
     "Otros proveedores están cerrados, plazo de entrega 8 semanas.", "Andra bruk är stängda, leveranstid 8 veckor."],
)  # fmt: skip
def test_a_time_told_behind_others_may_be_theirs(note):
    found = lines([*ROWS, [note]]).values()
    assert [line.offer.lead_days for line in found] == [None] * 3
    assert all("lead-time-unread" in codes(line) for line in found)


@pytest.mark.parametrize(
    "note",
    ["A competitor advertises GC2 at 1,150 euros, lead time 2 weeks, minimum 10 tonnes, ex works.",
     "The market is at 1,150 euros per tonne, delivered, minimum 10 tonnes.",
     "Market prices are currently quoted delivered in dollars per tonne.",
     "Ein Mitbewerber bietet GC2 zu 1.150 Euro, Lieferzeit 2 Wochen, ab Werk.",
     "Un concurrent vend le GC2 à 1 150 euros, délai 2 semaines, départ usine.",
     "La competencia vende el GC2 a 1.150 euros, plazo 2 semanas, en fábrica.",
     "En konkurrent säljer GC2 till 1 150 euro, leveranstid 2 veckor, fritt bruk."],
)  # fmt: skip
def test_the_terms_of_an_offer_of_others_are_theirs(note):
    told = [(o.delivered, o.lead_days, o.minimum_kg, o.charges, o.currency) for o in offers(note)]
    assert told == [(None, None, None, (), "EUR")] * 3


@pytest.mark.parametrize(
    "title",
    ["The market leader in board, USD per short ton", "Der Markt für Karton, EUR/t", "Le marché du carton, EUR/t"],
)
def test_a_title_about_the_market_tells_its_unit(title):
    rows = [[title], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1250], ["GC2", 250, 430, 1210]]
    units = {(line.offer.currency, str(line.offer.basis)) for line in lines(rows).values()}
    assert units == ({("USD", "short_ton")} if "USD" in title else {("EUR", "tonne")})


@pytest.mark.parametrize(
    "note",
    ["Market price for GC2 is up, freight included.", "The market is short, ex works only, 8 weeks.",
     "Spot market prices, FOB mill, USD per short ton.", "Marktpreise sind gestiegen, frei Haus, USD je Tonne.",
     "Der Markt ist knapp, nur ab Werk, 8 Wochen.", "Le marché est tendu, départ usine seulement, 8 semaines.",
     "El mercado está tenso, solo en fábrica, 8 semanas.", "Marknaden är stram, endast fritt fabrik, 8 veckor."],
)  # fmt: skip
def test_what_has_no_subject_behind_the_market_is_of_the_market(note):
    found = lines([*ROWS, [note]]).values()
    assert {(line.offer.delivered, line.offer.lead_days, str(line.state)) for line in found} == {
        (None, None, "accepted")
    }


@pytest.mark.parametrize(
    "note",
    ["Competitors offer 2 weeks, our lead time is 8 weeks.", "Other mills are sold out, our lead time is 8 weeks.",
     "Andere Werke sind ausverkauft, unsere Lieferzeit beträgt 8 Wochen.",
     "Les autres usines sont fermées, notre délai de livraison est de 8 semaines.",
     "Otros proveedores están cerrados, nuestro plazo de entrega es de 8 semanas.",
     "Andra bruk är stängda, vår leveranstid är 8 veckor."],
)  # fmt: skip
def test_our_own_time_behind_others_is_ours(note):
    assert [offer.lead_days for offer in offers(note)] == [(56, 56)] * 3
