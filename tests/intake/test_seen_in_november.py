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


def test_a_corner_may_say_what_all_prices_of_a_cross_tab_are_in():
    rows = [["SEK/1000 kg", "220 g/m²", "250 g/m²"], ["GC2", 13480, 13350], ["GT2", "-", 9420]]
    found = {cell: (str(line.state), line.offer.grade, line.offer.currency) for cell, line in lines(rows).items()}
    assert found == {
        "B2": ("accepted", "FBB", "SEK"),
        "C2": ("accepted", "FBB", "SEK"),
        "C3": ("accepted", "CRB", "SEK"),
    }
    calipers = [["EUR/1000 kg", "Dicke in mm"], [None, 0.5, 1], ["Graupappe ungestrichen", 640, 632]]
    assert {str(line.state) for line in lines(calipers).values()} == {"accepted"}


def test_a_letters_boards_are_offers_though_one_row_looks_like_a_header():
    rows = [
        ["Harrow Creek Trading LLC"],
        ["Per your mail, here is where we are:"],
        ["18 pt SBS C1S, 75 lb/MSF", "1,168 USD per short ton"],
        ["18 pt CUK, 76 lb/MSF", "54 ½ cents/lb"],
        ["16 pt CCNB, 63 lb/MSF", "43.85 cents/lb"],
        ["28 pt chipboard, 97 lb/MSF", "waiting on mill"],
        ["22 pt CCNB, 85 lb/MSF", "$41.40/cwt"],
    ]
    found = {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}
    assert found == {
        "B3": ("accepted", "1168"),
        "B4": ("accepted", "0.545"),
        "B5": ("accepted", "0.4385"),
        "B7": ("accepted", "41.40"),
    }


@pytest.mark.parametrize(
    ("title", "currency"),
    [
        ("delivered Chicago, dollars U.S./short ton", "USD"),
        ("Schedule RS-14, USD per short ton", "USD"),
        ("Precios en S/ por tonelada corta", "PEN"),
    ],
)
def test_letters_within_other_words_are_no_money(title, currency):
    rows = [[title], [*HEAD, "Price"], [*BOARD, 1262]]
    assert lines(rows)["D3"].offer.currency == currency


def test_a_price_in_another_currency_is_no_charge_however_small():
    rows = [["Material", "pts", "g/m²", "$ por tonelada métrica", "USD por tonelada métrica"]]
    found = lines([["Apodaca, Nuevo León, México"], *rows, ["SBS C1S", 14, 290, 24150, 1310]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D3": "question", "E3": "accepted"}


@pytest.mark.parametrize(("size", "kg"), [("5 tons+ (10,000 lb)", 4536), ("from 5 tons (5,000 kg)", 5000)])
def test_a_size_in_two_units_says_which_ton_is_meant(size, kg):
    found = lines([["USD per cwt"], [*HEAD, size, "20 tons+"], [*BOARD, 47.2, 45.7]])
    assert round(found["D3"].offer.from_kg) == kg


def test_a_size_in_two_units_that_differ_is_asked_about():
    found = lines([["USD per cwt"], [*HEAD, "5 tons+ (30,000 lb)", "20 tons+ (90,000 lb)"], [*BOARD, 47.2, 45.7]])
    assert codes(found["D3"]) >= {"bracket-unread"}


def test_loads_under_a_head_for_lots_size_orders():
    rows = [["TL = 42,000 lb or more. LTL = 10,000 lb up to (not including) 42,000 lb."]]
    rows += [[*HEAD, "Lot", "USD/MSF"], [*BOARD, "LTL", 48.2], [None, None, None, "TL", 46.35]]
    found = [(round(line.offer.from_kg), line.offer.below_kg) for line in lines(rows).values()]
    assert found[0] == (4536, found[1][0]) or (found[0][0], round(found[0][1])) == (4536, 19051)
    numbers = [[*HEAD, "Lot", "USD/MSF"], [*BOARD, "M6120", 48.2], ["CRB", 20, 78, "M6121", 36.35]]
    assert {str(line.state) for line in lines(numbers).values()} == {"accepted"}


@pytest.mark.parametrize("quantity", ["2 rolls", "1 skid", "3 truckloads"])
def test_one_quantity_a_board_that_the_price_was_asked_for_bounds_no_order(quantity):
    found = lines([["Qty", *HEAD, "USD/ST"], [quantity, *BOARD, 1190], ["5 rolls", "CRB", 18, 70, 850]])
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [("accepted", None)] * 2
    sized = lines([["Order size", *HEAD, "USD/ST"], [quantity, *BOARD, 1190], ["5 rolls", "CRB", 18, 70, 850]])
    assert {str(line.state) for line in sized.values()} == {"question"}


def test_pounds_sterling_per_thousand_are_no_thousands_of_pounds():
    rows = [["Prices in pounds sterling per 1,000 sheets"], ["Board", "gsm", "Mic", "Sheet (mm)", "£ /000"]]
    line = lines([*rows, ["GC1", 250, 400, "640 x 920", 171.4]])["E3"]
    assert (str(line.state), line.offer.basis) == ("accepted", "1000sheets")


@pytest.mark.parametrize("rise", ["Anhebung", "Zuwachs", "Hausse", "Subida", "Höjning"])
def test_what_leads_from_the_old_price_to_the_new_is_no_price(rise):
    rows = [["Sorte", "g/m²", "µm", "bisher", rise, "neu ab 01.07.2026"], [None, None, None, "€/t", "€/t", "€/t"]]
    rows += [["GD2", 250, 315, 812.5, 40, 852.5], ["GD2", 300, 385, 800, 40, 840]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"F3": "accepted", "F4": "accepted"}


def test_days_of_the_calendar_are_no_caliper():
    rows = [["Short text", "Net price USD/cwt", "PlDelTime (cal. days)", "GR-IV"]]
    line = lines([*rows, ["SBS C1S 18PT 77#/MSF", 58.75, 21, "X"], ["SBS C1S 16PT 69#/MSF", 59.4, 28, "X"]])["B2"]
    assert (str(line.state), line.offer.lead_days, round(line.offer.caliper_um)) == ("accepted", (21, 21), 457)


def test_a_remark_that_orders_begin_at_less_overrides_the_general_minimum():
    rows = [["Pedido mínimo: 2 toneladas por referencia, salvo indicación. EUR por tonelada métrica"]]
    rows += [["Calidad", "g/m²", "µm", "Precio", "Observaciones"], ["GD2", 300, 380, 836, "desde 500 kg"]]
    offer = lines(rows)["D3"].offer
    assert (offer.from_kg, offer.minimum_kg) == (None, 500)
