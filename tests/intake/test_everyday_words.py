"""Words of every day that look like a unit, a currency or a price: 'per cent', 'in %', 'ready to ship', 'int. cost'."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

HEAD = ["Board", "pt", "lb/MSF", "Price"]
ROW = ["SBS C1S", 18, 76, 60.75]
SOLD = "Prices are in U.S. dollars per hundredweight"


@pytest.mark.parametrize("share", ["10 per cent", "5 per cent under 20,000 lb", "cinq pour cent"])
def test_a_share_makes_no_cents_of_the_prices(share):
    (line,) = lines([[SOLD], [f"Quantity tolerance is {share}"], HEAD, ROW]).values()
    assert (str(line.state), line.offer.price) == ("accepted", Decimal("60.75"))


def test_cents_are_still_heard():
    (line,) = lines([["Prices are in U.S. cents per pound"], HEAD, ROW]).values()
    assert line.offer.price == Decimal("0.6075")


def test_a_change_in_per_cent_is_no_caliper_in_inches():
    head = ["Qualität", "g/m²", "Dicke µm", "Preis alt", "Preis neu EUR/t", "in %"]
    (line,) = lines([head, ["GC1", 230, 365, 1210, 1245, 2.9]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 365)


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


def test_when_goods_are_ready_stands_beside_the_words_for_it():
    rows = [
        ["", "Item A", "Item B"],
        ["Board", "SBS, C1S", "CUK"],
        ["Caliper", "18 pt", "21 pt"],
        ["Basis weight, lb per MSF", 77, 88],
        ["PRICE, US$ per cwt", 58.40, 52.75],
        ["Ready to ship", "4 weeks", "stock"],
    ]
    assert [line.offer.lead_days for line in lines(rows).values()] == [(28, 28), (0, 0)]


@pytest.mark.parametrize(
    ("cost", "margin"), [("Int. cost", "Mgn %"), ("Mfg cost", "Mrgn %"), ("Std cost", "Mark up %")]
)
def test_what_a_board_costs_its_maker_is_no_offer(cost, margin):
    head = ["Board", "pt", "lb/MSF", cost, margin, "Price"]
    assert [line.offer.price for line in lines([[SOLD], head, ["SBS C1S", 18, 76, 51.2, 15.7, 60.75]]).values()] == [
        Decimal("60.75")
    ]


def test_a_firm_ends_where_the_number_of_its_paper_is_asked_for():
    form = ["Seller:", "Arlescote Paper Products, Inc.", "", "Quote no.", "Q-61180"]
    (line,) = lines([form, [SOLD], HEAD, ROW]).values()
    assert line.offer.vendor == "Arlescote Paper Products, Inc."


@pytest.mark.parametrize(
    "note",
    [
        "Franco de port à négocier", "Franco : nous consulter", "Free delivery negotiable",
        "Frei Haus nach Vereinbarung", "Portes pagados a convenir", "Fritt levererat enligt överenskommelse",
    ],
)  # fmt: skip
def test_freight_that_is_to_be_agreed_is_in_no_price(note):
    (line,) = lines([["EUR / 1000 kg"], [note], ["Board", "µm", "g/m²", "EUR/t"], ["GC1", 400, 250, 1195]]).values()
    assert line.offer.delivered is None


def test_an_export_calls_prices_conditions_and_order_sizes_scales():
    head = ["MATNR", "MATL_DESC", "GRAMM_GM2", "CAL_UM", "SCALE_FROM", "SCALE_UM", "COND_VAL", "CURR", "PER", "UOM"]
    rows = [
        ["7001", "FBB GC1 240 G", 240, 380, 0, "KG", "1142.50", "EUR", 1000, "KG"],
        ["7001", "FBB GC1 240 G", 240, 380, 5000, "KG", "1098.00", "EUR", 1000, "KG"],
    ]
    small, large = lines([head, *rows]).values()
    assert [line.offer.price for line in (small, large)] == [Decimal("1142.50"), Decimal("1098.00")]
    assert (small.offer.below_kg, large.offer.from_kg) == (5000, 5000)
