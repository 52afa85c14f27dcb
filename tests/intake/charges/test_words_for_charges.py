"""What vendors call a charge, in whole sentences too, and words like those that charge nothing."""

from decimal import Decimal

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.added_on_top import added_on_top
from tracker.intake.values.freight.charges import find_charges

HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def charges(line):
    return [(charge.label, charge.price, charge.currency, charge.basis) for charge in line.offer.charges]


def test_a_surcharge_in_a_whole_sentence_is_read():
    (line,) = lines([HEAD, SBS, [], ["An energy surcharge of $35 per short ton applies to all items."]]).values()
    assert charges(line) == [("energy surcharge", 35, "USD", "short_ton")]


@pytest.mark.parametrize(
    ("title", "charges"),
    [
        ("Preise zzgl. 35 EUR/t Energiezuschlag", [35]),
        ("Die Preise verstehen sich zzgl. eines Energiezuschlags von 35 EUR/t", [35]),
        ("zzgl. Frachtkostenpauschale 48,00 €/t", [48]),
        ("Vi debiterar ett energitillägg på 320 EUR/ton", [320]),
    ],
)
def test_charges_in_whole_sentences(title, charges):
    rows = [[title], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290]]
    (line,) = lines(rows).values()
    assert [charge.price for charge in line.offer.charges] == charges


@pytest.mark.parametrize(
    "note",
    [
        "Zusätzlich verrechnen wir den LSVA-Zuschlag von CHF 18.00 pro 1000 kg.",
        "Den Energiezuschlag von CHF 18.00 pro 1000 kg stellen wir in Rechnung.",
        "En outre, nous facturons une surcharge énergie de CHF 18.00 par 1000 kg.",
        "Además aplicamos un recargo energético de CHF 18.00 por 1000 kg.",
        "Dessutom tar vi ut ett energitillägg om CHF 18.00 per 1000 kg.",
        "In addition we levy an energy surcharge of CHF 18.00 per 1000 kg.",
    ],
)
def test_what_a_vendor_says_he_bills_is_charged(note):
    (line,) = lines([["CHF / 1000 kg"], [note], ["Board", "µm", "g/m²", "CHF/t"], ["GC1", 400, 250, 1495]]).values()
    assert [(charge.price, charge.currency) for charge in line.offer.charges] == [(Decimal("18.00"), "CHF")]


class TestChargesOfAnyName:
    @pytest.mark.parametrize(
        "note",
        [
            "Edge guards: US$1.15 per cwt, added on the invoice.",
            "Kantenschutz: 12 €/t kommen auf alle Preise",
            "Cornières : 12 €/t facturées en sus",
            "Cantoneras: 12 €/t se añaden en factura",
            "Kantskydd: 120 SEK/ton läggs på fakturan",
        ],
    )
    def test_what_is_invoiced_beside_all_prices_is_charged(self, note):
        assert [bool(charge.amounts) for charge in added_on_top(note)] == [True]

    @pytest.mark.parametrize(
        "note",
        [
            "PE coating: US$120 per ton, added on the invoice.",
            "Rush orders: US$50 per ton, added on the invoice.",
            "SBS: US$1.15 per cwt, added on the invoice.",
            "Edge guards: see our web site, added on the invoice.",
        ],
    )
    def test_what_few_boards_or_orders_bear_is_not(self, note):
        assert not any(charge.amounts for charge in added_on_top(note))

    def test_a_charge_with_words_that_nobody_knows_is_open_and_not_dropped(self):
        (charge,) = find_charges("Packing $12/ST on everything but the grey stuff")
        assert not charge.amounts
        assert [bool(one.amounts) for one in find_charges("Packing charge $12/ST")] == [True]


@pytest.mark.parametrize(
    ("note", "charge"),
    [
        ("Energitillägg om 3 %", (3, None, None)), ("Tillägg om 300 SEK/ton", (300, "SEK", "tonne")),
        ("Frakttillägg om SEK 250 per ton", (250, "SEK", "tonne")), ("Energitillägg om gaspriset stiger", None),
    ],
)  # fmt: skip
def test_om_before_an_amount_is_no_condition(note, charge):
    (line,) = lines([[note], ["Kvalitet", "µm", "g/m²", "Pris SEK/ton"], ["GC1", 450, 300, 11000]]).values()
    assert [(each.price, each.currency, each.basis) for each in line.offer.charges] == ([charge] if charge else [])


def offer(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [note]]).values()
    return line.offer


@pytest.mark.parametrize(
    ("note", "charges"),
    [
        ("Zu allen Nettopreisen kommen hinzu: Energiezuschlag 28,00 €/t und Fracht 34,50 €/t", {28.0, 34.5}),
        ("Zuzüglich LSVA-Zuschlag von EUR 18.– je Tonne auf alle Positionen", {18.0}),
        ("Transportkosten (+ 9 %) sind gestiegen", set()),
    ],
)  # fmt: skip
def test_charges(note, charges):
    assert {float(charge.price) for charge in offer(note).charges} == charges


@pytest.mark.parametrize(
    "said",
    [
        "Zuzüglich LSVA-Zuschlag von EUR 18.– je Tonne auf alle Positionen.",
        "Zuzüglich Energiezuschlag von 18,– EUR je Tonne auf alle Positionen",
        "Mautzuschlag EUR 18,- je Tonne",
        "ETS-surcharge EUR 18 per tonne",
        "Supplément RPLP 18.– EUR la tonne",
    ],
)
def test_surcharges_with_a_dash_for_no_cents_or_a_code_before_their_name(said):
    (charge,) = offer_below(said, apart=True).charges
    assert (f"{charge.price:f}", charge.currency, charge.basis) == ("18", "EUR", "tonne")


def test_a_price_with_a_dash_for_no_cents_is_still_itself():
    (line,) = lines([["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 260, 415, "1.287,–"]]).values()
    assert f"{line.offer.price:f}" == "1287"


_BOARDS = [["Grade", "Caliper pt", "Price USD/short ton"], ["SBS C1S", 18, 1240], ["CRB", 20, 820]]


def told(note):
    return list(lines([*_BOARDS, [], [note]]).values())


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 3 % on carton 18 pt only.",
        "Energiezuschlag 3 % auf Karton über 400 g/m².", "Energy surcharge 3 % on white carton.",
    ],
)  # fmt: skip
def test_a_rate_on_some_board_is_open(note):
    assert all("number-ambiguous" in codes(line) for line in told(note))


def test_a_rate_on_coated_carton_is_on_all_of_these():
    borne = [line.offer.charges for line in told("Energy surcharge 3 % on coated carton.")]
    assert [[f"{one.price}" for one in each] for each in borne] == [["3"], ["3"]]


@pytest.mark.parametrize(
    ("note", "rate"),
    [
        ("Transportkosten 4,5 % seit 1. Oktober", 4.5), ("Coût de transport 4 % depuis janvier", 4),
        ("Energy cost 3 % since 1 January.", 3), ("Plus 3 % energy cost, higher in winter.", 3),
    ],
)  # fmt: skip
def test_a_cost_with_its_first_day_is_charged(note, rate):
    assert [[float(charge.price) for charge in line.offer.charges] for line in told(note)] == [[rate]] * 2


@pytest.mark.parametrize(
    "note",
    [
        "2 % Skonto auf alle Preise bei Zahlung innerhalb 14 Tagen.", "2 % cash discount is not added to all prices.",
        "Late payment interest of 1.5 % per month will be added to the price.",
        "La hausse de 3 % porte sur toutes les références.",
    ],
)  # fmt: skip
def test_discounts_and_interest_are_no_charges(note):
    assert all(line.offer.charges == () for line in told(note))


def test_an_import_tariff_is_charged():
    rows = [
        ["Grade", "Caliper pt", "Price USD/short ton", "Tariff USD/short ton"],
        ["SBS", 18, 1240, 35],
        ["CRB", 20, 820, 35],
    ]
    assert [[float(charge.price) for charge in line.offer.charges] for line in lines(rows).values()] == [[35.0]] * 2


@pytest.mark.parametrize(
    ("note", "rate"),
    [
        ("An energy surcharge of $18 per short ton applies to all products.", 18),
        ("A fuel surcharge of $1.10/cwt will be added to the invoice.", 1.1),
        ("Ein Energiezuschlag von 18 EUR/t gilt für alle Produkte.", 18),
        ("Ein Dieselzuschlag von 18 EUR/t wird auf der Rechnung hinzugefügt.", 18),
        ("Une surcharge énergie de 18 €/t s'applique à tous les produits.", 18),
        ("Une surcharge énergie de 18 €/t sera ajoutée sur chaque facture.", 18),
        ("Se aplica un recargo energético de 18 €/t a todos los productos.", 18),
        ("Un recargo de combustible de 18 €/t se añadirá a la factura.", 18),
        ("Ett energitillägg på 180 SEK/ton gäller alla produkter.", 180),
        ("Ett bränsletillägg på 180 SEK/ton läggs till på fakturan.", 180),
    ],
)
def test_what_is_charged_on_every_product_or_on_the_invoice(note, rate):
    (charge,) = find_charges(note)
    assert [float(amount.value) for amount in charge.amounts][-1:] == [rate]


def test_what_is_charged_on_some_products_is_not_charged_on_all():
    assert find_charges("An energy surcharge of $18 per short ton applies to all coated products.")[0].amounts == ()


@pytest.mark.parametrize(
    "text",
    [
        "ENERGY $18.00/ST AND FREIGHT $2.15/CWT",
        "Energy surcharge $18.00/ST and freight $2.15/cwt are added",
        "Energiezuschlag 18 USD/ST und Fracht 2,15 USD/cwt sind hinzuzurechnen",
    ],
)
def test_two_charges_joined_by_and(text):
    assert [(charge.kind.value, len(charge.amounts)) for charge in find_charges(text)] == [
        ("energy", 1),
        ("freight", 1),
    ]


@pytest.mark.parametrize(
    ("note", "rate"),
    [
        ("A fuel surcharge of $14 per short ton is added to all invoices for the time being.", "14"),
        ("Dazu kommt ein Treibstoffzuschlag von USD 9.50 pro 1'000 kg.", "9.50"),
        ("Bis auf Weiteres berechnen wir einen Energiezuschlag von 0,018 USD/kg.", "0.018"),
        ("Jusqu'à nouvel ordre, une surcharge énergie de 0,018 USD/kg s'ajoute à chaque facture.", "0.018"),
        ("El paletizado se factura aparte, a 0,012 USD por kilo.", "0.012"),
        ("Tills vidare tillkommer ett energitillägg på 0,018 USD/kg.", "0.018"),
        ("Palletizing is invoiced apart, at $5 per ST.", "5"),
    ],
)
def test_what_is_added_for_the_time_being_or_behind_a_comma(note, rate):
    (line,) = lines([HEAD, SBS, [], [note]]).values()
    assert [charge.price for charge in line.offer.charges] == [Decimal(rate)]


@pytest.mark.parametrize(
    "text",
    ["SBS rolls, freight extra, at $1,085/ST", "Freight extra, $1,085/ST", "Palletizing, if wanted, at $5 per ST"],
)
def test_the_price_of_board_behind_a_charge_is_none(text):
    assert not any(charge.amounts for charge in find_charges(text))
