"""Lists that a program wrote: many columns, the names of fields, a stamp above, and figures that are nobody's offer."""

import pytest

from tests.intake.sheets import codes, lines

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_a_stamp_above_the_heads_is_no_head():
    rows = [
        ["RPT_ID", "PRICES_V4", "RUN", "2026-11-12 06:14", "CO", "010", "NAME", "Larchmoor"],
        ["ITEM_NO", "ITEM_DESC", "CAL_PT", "BW_LBMSF", "WHSE", "QTY_OH_LB", "LAST_PRC", "PRC_CUR", "CURR", "PRC_UOM"],
        ["2001", "BOARD SBS C1S RL", "14", "59", "03", "0", "60.87", "62.75", "USD", "CWT"],
        ["2002", "BOARD SBS C1S RL", "18", "74", "03", "7000", "59.56", "61.40", "USD", "CWT"],
    ]
    found = lines(rows)
    assert {cell: (str(line.state), line.offer.basis) for cell, line in found.items()} == {
        "H3": ("accepted", "cwt"),
        "H4": ("accepted", "cwt"),
    }


def test_days_over_two_prices_head_them():
    rows = [[None, None, None, "until 31 Dec 2026", "from 1 Jan 2027"], [*HEAD, "$/ST", "$/ST"], [*BOARD, 1150, 1190]]
    assert {line.offer.source.cell for line in lines(rows).values()} == {"D3", "E3"}


@pytest.mark.parametrize(
    "cost", ["Avg cost", "Std cost", "Standard price", "Coût moyen", "Durchschnittskosten", "Costo promedio"]
)
def test_what_board_costs_on_average_is_no_offer(cost):
    assert list(lines([[*HEAD, "USD/short ton", cost], [*BOARD, 1190, 1015], ["CRB", 18, 70, 850, 722]])) == [
        "D2",
        "D3",
    ]


@pytest.mark.parametrize("last", ["Last price", "LAST_PRC", "Letzter EK", "Dern. PA", "Últ. precio", "Senaste pris"])
def test_what_was_paid_last_is_no_offer(last):
    rows = [[*HEAD, last, "Price USD/short ton"], [*BOARD, 1150, 1190], ["CRB", 18, 70, 830, 850]]
    assert list(lines(rows)) == ["E2", "E3"]


def test_an_average_price_by_itself_is_still_asked_about():
    assert {str(line.state) for line in lines([[*HEAD, "Average price USD/ST"], [*BOARD, 1190]]).values()} == {
        "question"
    }


def test_what_a_buyer_pays_is_offered_where_only_an_earlier_price_stands_beside_it():
    rows = [["Désignation", "µm", "g/m²", "Dern. PA €/t", "PA HT €/t"], ["GC1", 410, 250, 1259, 1312]]
    assert list(lines(rows)) == ["E2"]


@pytest.mark.parametrize(
    ("number", "name", "vendor"),
    [
        ("0000103377", "Kalmwater Board NV", "Kalmwater Board NV"),
        ("CA5501", "Papeteries Delmont", "Papeteries Delmont"),
        ("0000103377", None, None),
    ],
)
def test_a_vendors_number_is_not_his_name(number, name, vendor):
    rows = [
        ["Vendor", "Vendor name", *HEAD, "USD/ST"],
        [number, name, *BOARD, 1190],
        [number, name, "CRB", 18, 70, 850],
    ]
    assert {line.offer.vendor for line in lines(rows).values()} == {vendor}


@pytest.mark.parametrize(
    "head", ["Vendor remark", "Mill note", "Bemerkung Lieferant", "Remarques fournisseur", "Notas del proveedor"]
)
def test_a_vendors_remark_names_no_vendor(head):
    rows = [[*HEAD, "USD/ST", head], [*BOARD, 1190, "FOB mill"], ["CRB", 18, 70, 850, "delivered, min 22,000 lb"]]
    found = list(lines(rows).values())
    assert [line.offer.vendor for line in found] == [None, None]
    assert [line.offer.delivered for line in found] == [False, True]


def test_a_day_may_be_written_without_hyphens():
    rows = [[*HEAD, "USD/ST", "Valid to"], [*BOARD, 1190, "20270331"]]
    assert str(lines(rows)["D2"].offer.valid_until) == "2027-03-31"
    assert lines([rows[0], [*BOARD, 1190, "20271331"]])["D2"].offer.valid_until is None


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("OLD (thru 12/31/26)", "NEW (eff. 1/1/27)"),
        ("alt (bis 31.12.2026)", "neu (ab 1.1.2027)"),
        ("ancien (jusqu'au 31/12/2026)", "nouveau (à partir du 1/1/2027)"),
    ],
)
def test_an_old_price_with_its_last_day_is_no_offer_beside_the_new(old, new):
    assert list(lines([["USD per short ton"], [*HEAD, old, new], [*BOARD, 1150, 1190], ["CRB", 18, 70, 830, 850]])) == [
        "E3",
        "E4",
    ]


def test_a_years_usage_is_no_basis_weight():
    rows = [["Item", "Cal.", "Bs. Wt.", "USD/MSF", "Ann. usage MSF"], ["SBS C1S", "14pt", "59#", 36.87, 2200]]
    line = lines(rows)["D2"]
    assert (str(line.state), round(line.offer.grammage_gsm)) == ("accepted", 288)


@pytest.mark.parametrize(
    ("head", "weight"), [("Poids 1000 f. (kg)", 201.96), ("Gewicht 1000 Bg. (kg)", 201.96), ("kg/millar", 201.96)]
)
def test_what_a_thousand_sheets_weigh_is_no_basis_weight(head, weight):
    rows = [["Quality", "g/m²", "µm", "Format (cm)", head, "€ / kg"], ["GC1", 275, 455, "72 x 102", weight, 1.5]]
    line = lines(rows)["F2"]
    assert (str(line.state), line.offer.grammage_gsm) == ("accepted", 275)


@pytest.mark.parametrize(("unit", "basis"), [("cent livres", "cwt"), ("100 livres", "cwt"), ("livre", "lb")])
def test_a_hundred_pounds_are_no_cents(unit, basis):
    rows = [["Prix en dollars canadiens"], ["Produit", "pts", "lb/M pi²", "Prix", "Unité"], ["CUK", 21, 86, 78.4, unit]]
    offer = lines(rows)["D3"].offer
    assert (str(offer.price), offer.currency, offer.basis) == ("78.4", "CAD", basis)


def test_a_head_that_shows_a_fault_leaves_the_others_heads():
    rows = [
        ["Board", "pt", "#NAME?", "lb/MSF", "USD/ST"],
        ["SBS C1S", 18, "x", 74, 1200],
        ["SBS C1S", 20, "y", 81, 1190],
    ]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


def test_a_railcar_is_no_truckload():
    rows = [
        ["TL = 40,000 lb or more; LTL = less"],
        [*HEAD, "LTL $/ST", "TL $/ST", "Railcar $/ST"],
        [*BOARD, 1250, 1190, 1160],
    ]
    found = lines(rows)
    assert (found["E3"].state, found["F3"].state) == ("accepted", "question")
    assert codes(found["F3"]) == {"bracket-unread"}
    weighed = lines([["Railcar = 160000 lb"], [*HEAD, "Railcar $/ST"], [*BOARD, 1160]])["D3"]
    assert (str(weighed.state), round(weighed.offer.from_kg)) == ("accepted", 72575)


@pytest.mark.parametrize(
    "head", ["Qty avail lb", "Available today (lb)", "Menge p.a. kg", "Qté dispo. (lb)", "Cant. anual (kg)"]
)
def test_how_much_there_is_or_is_bought_in_a_year_is_no_order_size(head):
    found = lines([[*HEAD, head, "$/cwt"], [*BOARD, 12400, 62], ["CRB", 18, 70, 31050, 45]])
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [("accepted", None)] * 2


def test_one_order_size_a_board_under_a_head_that_says_orders_is_one():
    found = lines([[*HEAD, "Order qty lb", "$/cwt"], [*BOARD, 20000, 62], ["CRB", 18, 70, 40000, 45]])
    assert [round(line.offer.from_kg) for line in found.values()] == [9072, 18144]


def test_pounds_below_a_price_per_ton_say_how_much_a_ton_is():
    rows = [["Board", "Thickness", "Weight", "USD per ton"], [None, "points", "lb/MSF", "(2000 lb)"], [*BOARD, 1190]]
    line = lines(rows)["D3"]
    assert (str(line.state), line.offer.basis, line.offer.from_kg) == ("accepted", "short_ton", None)


def test_a_sentence_on_freight_says_no_unit_of_the_prices():
    said = "Freight to your dock is quoted beside each item for the lane we use today, truck, in US$/cwt."
    rows = [[said], [*HEAD, "USD per short ton", "Freight US$/cwt"], [*BOARD, 1190, 2.9]]
    line = lines(rows)["D3"]
    assert (str(line.state), line.offer.basis, len(line.offer.charges)) == ("accepted", "short_ton", 1)


@pytest.mark.parametrize(
    ("head", "cell", "gsm"),
    [
        ("Cal./wt (lb/MSF)", "14 pt / 56", 273),
        ("Caliper pt / Basis weight lb/MSF", "14/56", 273),
        ("Basis weight lb/MSF / caliper pt", "56/14", 273),
        ("Dicke/Gewicht", "400 µm / 240", 240),
        ("Épaisseur µm / grammage g/m²", "400/240", 240),
    ],
)
def test_caliper_and_weight_in_one_cell_are_each_read(head, cell, gsm):
    line = lines([["Board", head, "EUR per tonne"], ["GC1" if gsm == 240 else "CRB", cell, 900]])["C2"]
    assert (str(line.state), round(line.offer.grammage_gsm), line.offer.grammage_from) == ("accepted", gsm, "quoted")


def test_pounds_on_an_area_of_unknown_name_are_no_estimate():
    rows = [
        ["Board", "pt", "lb/QQX", "USD/ST"],
        ["SBS C1S", 14, 59, 1200],
        ["SBS C1S", 18, 74, 1190],
        ["CRB", 20, 79, 800],
    ]
    assert [line.offer.grammage_from for line in lines(rows).values()] == ["quoted"] * 3
    stock = [["Board", "pt", "Qty (lb)", "USD/ST"], ["SBS C1S", 14, 59, 1200], ["SBS C1S", 18, 74, 1190]]
    assert [line.offer.grammage_from for line in lines(stock).values()] == ["estimated"] * 2


def test_money_too_little_for_board_is_charged_beside_its_price():
    rows = [[*HEAD, "Board $/cwt", "Zorb fee $/cwt"], [*BOARD, 62, 0.85], ["CRB", 18, 70, 45, 0.85]]
    found = lines(rows)
    assert list(found) == ["D2", "D3"]
    assert [str(line.offer.charges[0].price) for line in found.values()] == ["0.85", "0.85"]
    both = [[*HEAD, "Eastburn $/cwt", "Westburn $/cwt"], [*BOARD, 62, 58], ["CRB", 18, 70, 45, 44]]
    assert len(lines(both)) == 4


@pytest.mark.parametrize(("head", "cell"), [("Alt. offered?", "No"), ("Sample sent?", "no"), ("Alternative", "none")])
def test_no_to_another_question_says_nothing_of_coating(head, cell):
    rows = [["Board", "pt", "lb/MSF", "USD/ST", head], ["SBS C1S", 18, 75, 1190, cell], ["CRB C1S", 18, 70, 850, cell]]
    assert [line.offer.coated_sides for line in lines(rows).values()] == [1, 1]


def test_the_unit_right_of_a_quantity_is_the_quantitys():
    rows = [
        ["Line description", "Qty", "UOM", "Price unit", "Bid price USD", "Min order qty", "Min UOM"],
        ["SBS, C1S, 0.018 IN, 76 LB/MSF", 1200, "ST", "1 ST", 1221, 20000, "LB"],
        ["URB, 0.030 IN, 105 LB/MSF, SHEET 30 X 40 IN", 90000, "EA", "1000 EA", 412, 10000, "EA"],
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton", "1000sheets"]


def test_a_class_of_discount_takes_nothing_off():
    rows = [[*HEAD, "Disc. class", "USD/ST"], [*BOARD, "A", 1190], ["CRB", 18, 70, "B", 850]]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


@pytest.mark.parametrize("said", ["Freight included in price, USD per short ton", "Freight extra, USD per short ton"])
def test_what_is_said_behind_freight_may_be_the_prices_unit(said):
    assert lines([[said], [*HEAD, "Price"], [*BOARD, 1190]])["D3"].offer.basis == "short_ton"


def test_heads_of_words_run_together_are_read_as_words():
    rows = [
        ["LevNr", "LevNamn", "Benämning", "Ytvikt_gm2", "Tjocklek_um", "Pris", "Valuta", "Prisenhet", "LedtidDagar"]
    ]
    rows += [["20418", "Kvarnhult Bruk AB", "GC2 rulle", "230", "370", "13,85", "SEK", "kg", "21"]]
    line = next(iter(lines(rows).values()))
    assert (str(line.state), line.offer.vendor, line.offer.lead_days) == ("accepted", "Kvarnhult Bruk AB", (21, 21))


def test_a_name_right_of_a_vendors_number_is_the_vendors():
    rows = [["Lieferant", "Name", "Kurztext", "Nettopreis", "Währg", "pro", "Einheit"]]
    rows += [["0000301877", "Traunegg Papier GmbH", "GC2 230 g/m² 370 µm", 1318, "EUR", 1, "t"]]
    rows += [["0000301877", "Traunegg Papier GmbH", "GC2 260 g/m² 425 µm", 1304.5, "EUR", 1000, "kg"]]
    assert {line.offer.vendor for line in lines(rows).values()} == {"Traunegg Papier GmbH"}
    board = [["Supplier", "Name", "pt", "lb/MSF", "USD/ST"], ["Larch Board Ltd", "SBS C1S", 18, 75, 1190]]
    assert [line.offer.product for line in lines(board).values()] == ["SBS C1S"]
