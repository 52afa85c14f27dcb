"""Layouts and wordings of lists from mills, merchants and buyers, each beside what it must not be taken for."""

import pytest

from tests.intake.sheets import codes, lines

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_a_letter_is_cents_only_before_a_stroke_or_per():
    appendix = lines([["Appendix C to the Supply Agreement"], ["USD per short ton"], [*HEAD, "Price"], [*BOARD, 59.5]])
    assert str(appendix["D4"].offer.price) == "59.5"
    cents = lines([["Prices in c/lb"], [*HEAD, "Price"], [*BOARD, 59.5]])
    assert (str(cents["D3"].offer.price), cents["D3"].offer.currency) == ("0.595", "USD")


@pytest.mark.parametrize("dash", ["-", " - ", " – ", "–"])
def test_a_spaced_dash_between_two_figures_is_a_span(dash):
    rows = [[f"FCA mill. Delivery 3{dash}4 weeks."], [*HEAD, "USD/ST"], [*BOARD, 1190]]
    assert lines(rows)["D3"].offer.lead_days == (21, 28)


def test_a_spaced_dash_behind_a_figure_of_its_own_parts_sentences():
    rows = [["Minimum order 20 tons – lead time 4 weeks"], [*HEAD, "USD/ST"], [*BOARD, 1190]]
    assert lines(rows)["D3"].offer.lead_days == (28, 28)


def test_how_much_a_lot_weighs_is_no_price_and_no_basis_weight():
    spanish = [["Material", "g/m²", "µm", "bobinas", "kg", "€/kg"], ["GD2", 350, 460, 4, 3120, 0.59]]
    assert list(lines(spanish)) == ["F2"]
    lots = [["Board", "Cal", "lb/MSF", "Rolls", "Weight lb", "¢ per lb"], ["SBS C1S", "12 pt", 52, 6, 14210, 41.5]]
    line = lines(lots)["F2"]
    assert (str(line.state), round(line.offer.grammage_gsm)) == ("accepted", 254)


def test_two_basis_weights_that_differ_are_still_asked_about():
    rows = [["Board", "pt", "lb/MSF", "g/m²", "USD/ST"], ["SBS C1S", 18, 75, 300, 1190]]
    assert codes(lines(rows)["E2"]) == {"weight-implausible"}


def test_a_unit_over_a_column_without_a_head_of_its_own_heads_it():
    rows = [
        ["A. ROLLS", None, None, None, "US$/ST"],
        ["Stock no.", "Kind", "Pt", "Lb/M sq ft", None],
        ["R-14", "SBS C1S", 14, 61, 1210],
        ["R-18", "SBS C1S", 18, 75, 1195],
    ]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"E3": "accepted", "E4": "accepted"}
    form = [["Basis", "US$/ST"], [*HEAD, "Price"], [*BOARD, 1190]]
    assert lines(form)["D3"].offer.basis == "short_ton"


def test_places_with_the_letters_of_their_state_are_no_firms():
    rows = [["Larch Board Ltd"], ["USD/ST delivered"], [*HEAD, "Delivered to"]]
    found = lines([*rows, [None, None, None, "Reno NV", "Tulsa OK"], [*BOARD, 1312, 1288]])
    assert [line.offer.vendor for line in found.values()] == ["Larch Board Ltd"] * 2
    assert list(found) == ["D5", "E5"]


def test_names_in_one_row_over_prices_are_all_vendors_where_one_surely_is():
    rows = [
        ["US$ per short ton, delivered"],
        [*HEAD, "Dunmere Mill", None, "Eastquill Board", None, "Pellgate Paperboard", None],
        [None, None, None, "Bid", "LT wks", "Bid", "LT wks", "Bid", "LT wks"],
        [*BOARD, 1172, 6, 1195, 4, 1180, 8],
        ["CRB C1S", 20, 79, 874, 3, 869, 3, 881, 2],
    ]
    found = lines(rows)
    vendors = ["Dunmere Mill", "Eastquill Board", "Pellgate Paperboard"]
    assert [line.offer.vendor for line in found.values()] == vendors * 2
    places = [["USD/ST"], [*HEAD, "Eastburn", "Westburn"], [*BOARD, 1172, 1195]]
    assert {line.offer.vendor for line in lines(places).values()} == {None}


@pytest.mark.parametrize(
    ("cells", "basis", "price"),
    [([95, "EUR/t"], "tonne", "95"), ([4, "% vom Preis"], "percent", "4"), ([95, None], "1000sheets", "95")],
)
def test_the_unit_of_a_charge_below_the_prices_may_stand_beside_it(cells, basis, price):
    rows = [
        ["Sorte", "g/m²", "µm", "Format", "EUR je 1000 Bogen"],
        ["GC1", 250, 390, "70 x 100 cm", 221.4],
        ["GC1", 300, 485, "72 x 102 cm", 278.95],
        [],
        ["Fracht" if cells[1] != "% vom Preis" else "Energiezuschlag", None, None, None, *cells],
    ]
    charge = lines(rows)["E2"].offer.charges[0]
    assert (charge.basis or "percent", str(charge.price)) == (basis, price)


def test_pounds_that_are_no_boards_weight_on_either_area_are_asked_about():
    rows = [["Board", "pt", "Basis wt (lb)", "US$/ST"], ["CRB C1S", 18, 350, 880], ["CRB C1S", 20, 79, 870]]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("Utgånget pris (t.o.m. 30 april)", "Gällande pris (fr.o.m. 1 maj)"),
        ("Precio vencido (hasta 30 abril)", "Precio vigente (desde 1 mayo)"),
        ("Expired price (through April 30)", "Current price (from May 1)"),
    ],
)
def test_an_expired_price_is_no_offer(old, new):
    rows = [["SEK/kg EXW"], ["Kvalitet", "g/m²", "µm", old, new], ["GC2", 235, 385, 12.6, 12.95]]
    assert list(lines(rows)) == ["E3"]


@pytest.mark.parametrize(
    "said",
    [
        'The prices in the column "Former price" cease to be in force on October 4, 2026.',
        "The former prices remain valid until October 4, 2026.",
        "Les anciens prix restent valables jusqu'au 4 octobre 2026.",
        "De tidigare priserna gäller till och med 4 oktober 2026.",
    ],
)
def test_until_when_former_prices_hold_is_not_said_of_the_new(said):
    rows = [["US dollars per short ton", said], [*HEAD, "Former price", "New price"], [*BOARD, 1150, 1190]]
    assert lines(rows)["E3"].offer.valid_until is None
