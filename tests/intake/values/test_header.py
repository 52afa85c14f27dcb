"""Headers and unit words."""

from decimal import Decimal

import pytest

from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.trade.basis import Basis
from tracker.trade.quantities import WeightUnit

HEADERS = [
    ("Item", "item"),
    ("Grade", "grade"),
    ("Caliper (pt)", "caliper"),
    ("Thk", "caliper"),
    ("Cal. pt", "caliper"),
    ("Basis Wt (lb/MSF)", "weight"),
    ("BW", "weight"),
    ("lb/MSF", "weight"),
    ("#/M SF", "weight"),
    ("lbs/M sq. ft.", "weight"),
    ("g/m²", "weight"),
    ("Price (USD/short ton)", "price"),
    ("$/ST", "price"),
    ("£ per 1000 sheets", "price"),
    ("Price per ton", "price"),
    ("Delivered US$/MSF", "price"),
    ("Lead Time", "lead_time"),
    ("LT", "lead_time"),
    ("Availability", "lead_time"),
    ("UOM", "basis"),
    ("Unit", "basis"),
    ("Unit price (USD)", "price"),
    ("Sheet size", "sheet_size"),
    ("Size (mm)", "sheet_size"),
    ("Sheets per pallet", "packing"),
    ("Freight\nUS$/cwt", "freight"),
    ("Energy\nsurcharge %", "energy"),
    ("Min. order (lb)", "minimum"),
    ("List", "list_price"),
    ("Discount", "discount"),
    ("Net price", "net_price"),
    ("Old price", "previous_price"),
    ("Roll width", "roll_width"),
    ("Description", "product"),
    ("Remarks", "remarks"),
    ("Currency", "currency"),
    ("Valid until", "validity"),
    ("caliper_pt", "caliper"),
    ("basis_weight_lb_msf", "weight"),
    ("from_kg", "from_quantity"),
    ("below_kg", "below_quantity"),
    ("lead_days", "lead_time"),
    ("valid_until", "validity"),
    ("coated_sides", "coating"),
    ("vendor", "vendor"),
    ("received", "received"),
    ("Sorte", "grade"),
    ("Flächengewicht g/m²", "weight"),
    ("Dicke µm", "caliper"),
    ("Preis EUR/t", "price"),
    ("Lieferzeit", "lead_time"),
    ("Mindestmenge", "minimum"),
    ("Preis je 1.000 Bogen (EUR)", "price"),
    ("Energiezuschlag %", "energy"),
    ("Désignation", "product"),
    ("Grammage (g/m²)", "weight"),
    ("Épaisseur (µm)", "caliper"),
    ("Prix par mille feuilles", "price"),
    ("Délai", "lead_time"),
    ("Prix net HT €/tonne", "net_price"),
    ("Calidad", "grade"),
    ("Gramaje", "weight"),
    ("Espesor (micras)", "caliper"),
    ("Precio por millar de hojas", "price"),
    ("Plazo de entrega", "lead_time"),
    ("Pedido mínimo", "minimum"),
    ("Kvalitet", "grade"),
    ("Ytvikt g/m²", "weight"),
    ("Tjocklek µm", "caliper"),
    ("Pris SEK/ton", "price"),
    ("Leveranstid", "lead_time"),
    ("Minsta order", "minimum"),
    ("Calliper", "caliper"),
    ("Grde", "grade"),
    ("U/M", "basis"),
    ("#/MSF", "weight"),
    ("#", "item"),
    ("B.W., lb per 1,000 sq ft", "weight"),
    ("inches", "caliper"),
    ("Stock", "product"),
    ("Price valid to", "validity"),
    ("Tj. [µm]", "caliper"),
    ("Gr.vikt [g/m2]", "weight"),
    ("Esp. micron", "caliper"),
    ("Thicknes µm", "caliper"),
    ("Gramage g/m²", "weight"),
    ("Prise £/tonne", "price"),
    ("Saltwick EUR/t", "price"),
    ("PESO (g/m2)", "weight"),
    ("desde (t)", "from_quantity"),
    ("hasta menos de (t)", "below_quantity"),
    ("flächenbez. Masse [g/m2]", "weight"),
    ("netto CHF/Tonne", "net_price"),
    ("Preis netto inkl. 19 % MwSt. CHF/Tonne", "list_price"),
    ("Price per", "per_quantity"),
    ("PPS µm", "property"),
    ("ITEM_DESC", "product"),
    ("Ert pris\nSEK/1000 kg", "price"),
    ("Prix CAD/tonne courte (2 000 lb)", "price"),
    ("Basiss Weigth", "weight"),
    ("Fläcengewicht", "weight"),
    ("Leadtime", "lead_time"),
    ("Discription", "product"),
    ("Grammmage", "weight"),
]


@pytest.mark.parametrize(("text", "role"), HEADERS)
def test_header_roles(text, role):
    assert header(text).role is Role(role)


@pytest.mark.parametrize("text", ["SBS C1S", "QB-100", "1145", "", "GC2", "Trade"])
def test_data_is_no_header(text):
    assert header(text).roles == ()


def test_a_header_carries_its_units():
    found = header("Price FOB mill\n(US$/ST)")
    assert found.currency is not None
    assert found.basis is not None
    assert found.delivery is not None
    assert (found.currency.code, found.basis.basis, found.delivery.delivered) == ("USD", Basis.SHORT_TON, False)
    weight = header("Basis Wt (lb/MSF)")
    assert (weight.weight_units, weight.basis) == ((WeightUnit.LB_MSF,), None)
    assert header("MSF").basis is not None
    assert header("< 5 t").bracket is not None
    assert header("18 pt").calipers[0].um == Decimal("457.2")


@pytest.mark.parametrize(
    ("text", "basis"),
    [
        ("ST", Basis.SHORT_TON),
        ("S/T", Basis.SHORT_TON),
        ("net ton", Basis.SHORT_TON),
        ("ton (2000 lbs)", Basis.SHORT_TON),
        ("MT", Basis.TONNE),
        ("m.t.", Basis.TONNE),
        ("Tonne", Basis.TONNE),
        ("CWT", Basis.CWT),
        ("100 lb", Basis.CWT),
        ("#", Basis.LB),
        ("LBS", Basis.LB),
        ("M SF", Basis.MSF),
        ("1000 ft²", Basis.MSF),
        ("qm", Basis.M2),
        ("1000 m²", Basis.THOUSAND_M2),
        ("MSHT", Basis.THOUSAND_SHEETS),
        ("‰ Bogen", Basis.THOUSAND_SHEETS),
        ("M feuilles", Basis.THOUSAND_SHEETS),
        ("Bogen", Basis.SHEET),
        ("T", None),
        ("ton", None),
        ("t", None),
        ("REAM", None),
        ("100 kg", None),
        ("long ton", None),
        ("St", None),
        ("st", None),
    ],
)
def test_unit_words(text, basis):
    found = basis_text(text)
    assert found is not None
    assert found.basis == basis


def test_a_thousand_needs_a_sheet():
    found = basis_text("/M")
    assert found is not None
    assert found.needs_sheet


@pytest.mark.parametrize("text", ["à préciser", "À confirmer", "sur demande"])
def test_words_for_no_price_are_no_slip_for_another_head(text):
    assert header(text).roles == ()


@pytest.mark.parametrize(
    "text",
    [
        "Skid wt lb",
        "Roll weight (lb)",
        "Wt per skid",
        "lbs/skid",
        "Carton weight kg",
        "Gross weight kg",
        "Weight per sheet g",
        "Palettengewicht kg",
        "kg/Rolle",
        "Bruttogewicht",
        "Poids par bobine",
        "Poids brut kg",
        "Peso por tarima",
        "Peso bruto kg",
        "Rullvikt kg",
        "Nettovikt",
    ],
)
def test_what_a_package_weighs_is_no_basis_weight(text):
    said = header(text)
    assert said.role is Role.PACKING
    assert said.weight_units == ()
    assert said.strength(Role.WEIGHT) == 0


@pytest.mark.parametrize(
    "text",
    ["Basis weight", "Wt", "Weight of carton lb/MSF", "Ream weight lb", "Poids carton g/m²", "Rollenware Gewicht g/m²"],
)
def test_what_board_weighs_is(text):
    assert header(text).role is Role.WEIGHT
