"""Charges, delivery terms and the names of firms."""

import pytest

from tracker.intake.values.firms.company import company_name, may_be_a_name
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charges import beside_charges, find_charges
from tracker.intake.values.freight.delivery import find_delivery, terms_under
from tracker.trade.basis import Basis


@pytest.mark.parametrize(
    ("text", "kind", "currency", "basis", "percent"),
    [
        ("Freight\nUS$/cwt", "freight", "USD", Basis.CWT, False),
        ("Energy\nsurcharge %", "energy", None, None, True),
        ("Fracht EUR/Tonne", "freight", "EUR", Basis.TONNE, False),
        ("Energiezuschlag %", "energy", None, None, True),
        ("Supplément énergie (%)", "energy", None, None, True),
        ("Flete USD/cwt", "freight", "USD", Basis.CWT, False),
        ("Frakt SEK/kg", "freight", "SEK", Basis.KG, False),
        ("Sheeting $/cwt", "sheeting", None, Basis.CWT, False),
        ("Small order surcharge", "other", None, None, False),
    ],
)
def test_charge_headers(text, kind, currency, basis, percent):
    found = charge_header(text)
    assert found is not None
    assert found.kind is ChargeKind(kind)
    assert (found.currency and found.currency.code, found.basis and found.basis.basis, found.percent) == (
        currency,
        basis,
        percent,
    )


@pytest.mark.parametrize(
    "text", ["Price, freight included", "Price FOB mill US$/ST", "Preis frei Haus", "Grade", "Franco EUR/t"]
)
def test_headers_without_a_charge(text):
    assert charge_header(text) is None


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("plus 3 % energy surcharge", [("energy", "3", True, None)]),
        ("freight $1.85/cwt extra", [("freight", "1.85", False, Basis.CWT)]),
        (
            "zzgl. Fracht 45 EUR/Tonne und Energiezuschlag 3,5 %",
            [("freight", "45", False, Basis.TONNE), ("energy", "3.5", True, None)],
        ),
        ("Supplément énergie 4 % en sus", [("energy", "4", True, None)]),
        ("Recargo energético del 3 %", [("energy", "3", True, None)]),
        ("Frakt tillkommer med 350 SEK/kg", [("freight", "350", False, Basis.KG)]),
        ("Freight: USD 45 per short ton", [("freight", "45", False, Basis.SHORT_TON)]),
        (
            "Freight $1.85/cwt, energy surcharge 3%",
            [("freight", "1.85", False, Basis.CWT), ("energy", "3", True, None)],
        ),
        ("Fracht 45 EUR/Tonne bis zu Ihrem Werk", [("freight", "45", False, Basis.TONNE)]),
        ("Freight $48/cwt to your mill", [("freight", "48", False, Basis.CWT)]),
        ("Freight to your dock quoted apart", []),
        ("Freight included", []),
        ("Energy surcharge in % of the board price.", []),
        ("2% discount for payment in 10 days", []),
        ("Freight $1.50-$2.00/cwt", []),
        ("Overruns of 10% are normal", []),
    ],
)
def test_charges_in_notes(text, expected):
    found = [(str(c.kind), str(c.amounts[0].value), c.percent, c.basis and c.basis.basis) for c in find_charges(text)]
    assert found == expected


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("FOB mill, US dollars", False),
        ("EXW", False),
        ("FCA", False),
        ("ex works", False),
        ("ab Werk", False),
        ("départ usine", False),
        ("puesto en fábrica", False),
        ("fritt fabrik", False),
        ("Freight collect", False),
        ("zzgl. Fracht", False),
        ("excluding freight", False),
        ("FOB Ferrowick Forks", False),
        ("DAP", True),
        ("DDP", True),
        ("CPT", True),
        ("Delivered prices, freight included", True),
        ("Preise frei Haus", True),
        ("franco", True),
        ("rendu", True),
        ("fritt levererat", True),
        ("portes pagados", True),
        ("FOB destination", True),
        ("freight prepaid and allowed", True),
        ("Freight allowed", True),
        ("CIF Nordhaven", None),
        ("DAP or FOB mill", None),
        ("Preise EUR/t frei Wien", True),
        ("Frachtkosten trägt der Käufer", False),
        ("frei deutsche Empfangsstation", True),
        ("Sonderposten ab Lager Kassel, solange Vorrat reicht", False),
        ("frei Frachtführer", False),
        ("frei Grenze", None),
        ("precios más IVA, entrega en Bogotá incluida", True),
        ("Transport jusqu'à Lyon compris", True),
        ("Transport jusqu'à Lyon non compris", False),
    ],
)
def test_delivery(text, delivered):
    found = find_delivery(text)
    assert found is not None
    assert found.delivered is delivered


@pytest.mark.parametrize(
    ("head", "text", "delivered"),
    [
        ("Freight included?", "Yes", True),
        ("Freight included?", "No", False),
        ("Frei Haus", "nein", False),
        ("Freight", "Prepaid", True),
        ("Ex works?", "no", None),
    ],
)
def test_terms_under_a_head_that_asks(head, text, delivered):
    found = terms_under(text, head)
    assert found is not None
    assert found.delivered is delivered


@pytest.mark.parametrize(
    "text",
    [
        "Price for board",
        "freight to your dock quoted apart",
        "SBS C1S",
        "Lead time",
        "for information",
        "ab Lager",
        "holzfrei Papier",
    ],
)
def test_texts_that_say_nothing_of_delivery(text):
    assert find_delivery(text) is None


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Quillmere Board Company", "Quillmere Board Company"),
        ("Mirrowgate Board Ltd – cartonboard tariff", "Mirrowgate Board Ltd"),
        ("Ferrowick Mills LLC quotation 7731", "Ferrowick Mills LLC"),
        ("Tarnwick Karton GmbH", "Tarnwick Karton GmbH"),
        ("Ostervald Board Trading", "Ostervald Board Trading"),
        ("Saltmarrow Paperboard Inc.", "Saltmarrow Paperboard Inc."),
        ("Vendor: Saltmarrow Paperboard Inc.", "Saltmarrow Paperboard Inc."),
        ("Norrtuna Kartong AB", "Norrtuna Kartong AB"),
        ("Harrowdene Paperboard plc", "Harrowdene Paperboard plc"),
        ("Papeteries Vermelle S.A.", "Papeteries Vermelle S.A."),
        ("Cartulinas Oruña, S.L. - Tarifa 2026", "Cartulinas Oruña, S.L."),
        ("Offert från Granvassa Kartong AB", "Granvassa Kartong AB"),
        ("zwischen Kartonwerk Söllbach AG (Lieferant) und dem Besteller", "Kartonwerk Söllbach AG"),
        ("Supplier / Lieferant: Spreewald Cartonboard GmbH", "Spreewald Cartonboard GmbH"),
        ("Oferta de Papelera Monteruelo S.A.", "Papelera Monteruelo S.A."),
        ("Manufacture de carton Noirétang", "Manufacture de carton Noirétang"),
        ("Dépôt carton Mirandelle SARL", "Dépôt carton Mirandelle SARL"),
    ],
)
def test_firms(text, name):
    assert company_name(text) == name


@pytest.mark.parametrize(
    "text",
    [
        "Price List",
        "Offre de prix SARL Dupin",
        "Cartonnages pliants gris",
        "Offer from Arden Board Inc. to Boxes Ltd",
        "Folding carton board price list no. 26-05",
        "1180 Millrace Road, Quillmere Landing, Wisconsin",
        "SBS C1S",
        "Sheeted stock, prices in GBP",
        "Valid until 31.12.2026",
        "Faltschachtelkarton",
        "Carton Board",
        "US$ per short ton",
        "Carton board price matrix 2026-2",
        "EINZELPREIS (€/1000 KG)",
        "EUR/100 KG",
    ],
)
def test_titles_that_are_no_firm(text):
    assert company_name(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "An energy surcharge of £35 per tonne is added to all prices.",
        "Auf alle Preise wird ein Energiezuschlag von 35 €/t berechnet",
        "Une surcharge énergie de 35 €/t s'ajoute à tous les prix",
        "Energitillägg 35 SEK/ton tillkommer på alla priser",
        "Supplément énergie : 35 EUR/t en sus de tous les prix ci-dessus.",
        "Recargo energético: 35 €/t adicional a todos los precios anteriores",
        "Supplément énergie : 35 €/t pour toute la France",
        "Prix hors surcharge énergie (35 €/t)",
        "Recargo energético 35 €/t no incluido",
    ],
)
def test_a_charge_added_to_all_prices(text):
    (charge,) = find_charges(text)
    assert charge.kind is ChargeKind.ENERGY
    assert [amount.value for amount in charge.amounts] == [35]


def test_a_clause_keeps_its_unit_beside_a_charge():
    assert beside_charges("Preise in EUR/t, zuzüglich 3,5 % Energiezuschlag") == "Preise in EUR/t"
    assert beside_charges("Prices in EUR/t, delivered") == "Prices in EUR/t, delivered"


def test_a_board_is_no_firm_and_a_desk_is_no_name():
    assert company_name("Unbleached Kraft Paperboard") is None
    assert company_name("FOB Mill") is None
    assert company_name("From: sales desk, Hobbin & Crake Paperboard LLC") == "Hobbin & Crake Paperboard LLC"


@pytest.mark.parametrize(
    ("text", "may_be"),
    [
        ("Kartonhaus Lindmoor", True),
        ("Solid Bleached Board", False),
        ("Preisliste Herbst", False),
        ("SBS C1S 18 pt", False),
        ("prices per tonne", False),
    ],
)
def test_a_text_written_as_a_name_may_be_a_firm_that_no_list_knows(text: str, may_be: bool) -> None:
    assert may_be_a_name(text) is may_be


@pytest.mark.parametrize(
    "text",
    [
        "Prices and surcharges apply until 30 November 2026", "Preise und Zuschläge gelten bis 30.11.2026",
        "Priser och tillägg gäller till och med 30 november 2026",
    ],
)  # fmt: skip
def test_how_long_prices_and_surcharges_hold_charges_nothing(text):
    assert find_charges(text) == ()
    assert find_charges("Prices plus an energy surcharge of 3 %") != ()
