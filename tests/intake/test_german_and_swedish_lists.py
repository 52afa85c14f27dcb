"""What German and Swedish vendors' lists have taught: technical headings, units apart, crowns and öre, legends.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import book, codes, grid, lines, prices, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


def test_an_amount_with_a_price_unit_and_a_unit_of_measure_is_the_price():
    rows = [
        ["Verk.Org", "Materialkurztext", "Flächengew.", "Dicke", "Betrag", "Währg", "Preiseinh.", "ME"],
        [None, None, "g/m²", "µm"],
        [1000, "GC2 Faltschachtelkarton", 230, 375, 1245, "EUR", 1, "TO"],
        [1000, "GD2 Duplexkarton", 350, 465, 788, "EUR", 1000, "KG"],
        [1000, "GD2 Duplexkarton", 300, 400, 79.5, "EUR", 100, "KG"],
    ]
    found = lines(rows)
    assert prices(found) == {
        "E3": ("accepted", "1245", "tonne"),
        "E4": ("accepted", "788", "tonne"),
        "E5": ("question", "79.5", None),
    }
    assert "basis-unknown" in codes(found["E5"])


def test_an_amount_beside_a_price_is_what_the_line_comes_to():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Menge t", "Preis", "Betrag"], ["GC2", 250, 405, 5, 1240, 6200]]
    assert list(lines(rows)) == ["E3"]


def test_figures_that_are_not_of_a_size_are_no_prices_to_places():
    rows = [
        ["EUR je Tonne"],
        ["Sorte", "g/m²", "µm", "Kennziffer", "Losfaktor"],
        ["GD2", 300, 400, 1000, 4],
        ["GD2", 350, 465, 1000, 5],
    ]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


def test_units_of_measure_in_columns_of_their_own():
    rows = [
        ["Kvalitet", "Ytvikt", None, "Tjocklek", None, "Minsta order", None, "Pris", None],
        ["GC1", 250, "g/m²", 405, "µm", 2, "t", 13600, "SEK/ton"],
        ["GD2", 350, "g/m²", 465, "µm", 5, "t", 8700, "SEK/ton"],
    ]
    found = lines(rows)
    assert prices(found) == {"H2": ("accepted", "13600", "tonne"), "H3": ("accepted", "8700", "tonne")}
    assert [int(line.offer.minimum_kg) for line in found.values()] == [2000, 5000]


def test_a_heading_tells_the_coating_of_boards_called_by_their_code():
    rows = [
        ["Artikel", "g/m²", "µm", "EUR/t"],
        ["GZ – Zellstoffkarton, beidseitig gestrichen"],
        ["GZ-250", 250, 310, 1490],
    ]
    assert lines(rows)["D3"].offer.coated_sides == 2


@pytest.mark.parametrize("gap", [[], [None]])
def test_a_form_beside_the_table_is_no_part_of_it(gap):
    rows = [
        ["Sorte", "g/m²", "µm", "EUR/t", *gap, "Anbieter:", "Fährmühl Karton GmbH"],
        ["GC1", 250, 405, 1202, *gap, "Gültig bis:", "31.03.2027"],
        ["GD2", 350, 465, 845, *gap, "Mindestmenge:", "3 t"],
    ]
    offers = [line.offer for line in lines(rows).values()]
    assert {offer.vendor for offer in offers} == {"Fährmühl Karton GmbH"}
    assert {(str(offer.valid_until), offer.minimum_kg) for offer in offers} == {("2027-03-31", 3000)}


def test_weights_across_with_their_calipers_below_them():
    rows = [["SEK/ton"], ["g/m²", 230, 250], ["µm", 375, 405], ["GC1", 13200, 13140], ["GC2", 12700, 12640]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(230, 375), (250, 405)] * 2


def test_one_head_over_the_order_sizes_that_prices_begin_with():
    rows = [["Sorte", "g/m²", "µm", "Preis €/t ab Menge (t)"], [None, None, None, 1, 5], ["GC1", 250, 405, 1290, 1245]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.price, offer.from_kg, offer.below_kg) for offer in offers] == [
        (1290, 1000, 5000),
        (1245, 5000, None),
    ]


def test_a_board_with_a_word_for_a_charge_in_its_name_is_offered():
    rows = [
        ["EUR/t"],
        ["Beschreibung", "Preis"],
        ["GC1, 250 g/m², 405 µm, FSC-C000000", 1204],
        ["FSC-Zuschlag GC1", 12],
    ]
    assert list(lines(rows)) == ["B3"]


def test_freight_to_zones_apart_from_the_boards_is_no_freight_of_their_rows():
    rows = [
        ["Preise EUR/t ab Werk"],
        ["Sorte", "g/m²", "µm", "Preis", None, "Frachtzone", "PLZ", "Fracht EUR/t"],
        ["GC1", 250, 405, 1204, None, "1", "0-1", 38],
        ["GD2", 350, 465, 846, None, "2", "2-5", 52],
    ]
    assert [line.offer.charges for line in lines(rows).values()] == [(), ()]


@pytest.mark.parametrize("hidden", [False, True])
def test_what_a_hidden_sheet_reckons_with_is_charged_to_nobody(hidden):
    boards = grid([["EUR/t"], ["Sorte", "g/m²", "µm", "Preis"], ["GC1", 250, 405, 1204]], "Preise")
    costs = grid([["Energie EUR/t", 118]], "Kalkulation", hidden=hidden)
    (line,) = read_workbook(book(boards, costs), Answers({})).lines
    assert len(line.offer.charges) == (0 if hidden else 1)


@pytest.mark.parametrize(("head", "basis"), [("Preis", None), ("Preis €/t", "tonne")])
def test_a_title_that_names_two_units_leaves_open_which_one_a_price_is_per(head, basis):
    found = lines([["Preise in €/t bzw. €/1000 m²"], ["Sorte", "g/m²", "µm", head], ["GC1", 250, 405, 1204]])
    assert found["D3"].offer.basis == basis


def test_an_order_size_at_the_end_of_a_long_head_beside_a_lead_time_in_weeks():
    heads = [
        "Sorte",
        "g/m²",
        "µm",
        "Preis in Euro je Tonne ab Werk bei Abnahme von mindestens 5 t",
        "Lieferzeit in Wochen",
    ]
    assert lines([heads, ["GC1", 250, 405, 1204, 4]])["D2"].offer.from_kg == 5000


@pytest.mark.parametrize(
    ("first", "second", "figure", "offered"),
    [
        ("SEK/ton exkl. frakt", "SEK/ton inkl. frakt", 12600, [(False, 0), (True, 0)]),
        ("SEK/ton", "plus frakt SEK/ton", 400, [(None, 1)]),
    ],
)
def test_freight_behind_a_price_unit_says_what_the_price_has_in_it(first, second, figure, offered):
    found = lines([["Sort", "g/m²", "µm", first, second], ["GC1", 250, 405, 12200, figure]])
    assert [(line.offer.delivered, len(line.offer.charges)) for line in found.values()] == offered


def test_a_board_on_two_lines_has_the_measures_of_the_line_below_it():
    rows = [["EUR/t"], ["Pos.", "Artikel", "Preis"], [1, "GC1", 1204], [None, "250 g/m², 405 µm"], [2, "GD2", 846]]
    offers = [line.offer for line in lines([*rows, [None, "350 g/m², 465 µm"]]).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(250, 405), (350, 465)]


def test_measures_above_every_board_stay_headings():
    rows = [["EUR/t"], ["Sorte", "Preis"], ["250 g/m², 405 µm"], ["GC1", 1204], ["350 g/m², 465 µm"], ["GD2", 846]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(250, 405), (350, 465)]


def test_a_price_with_its_freight_beside_the_one_at_the_mill():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "ab Werk", "inkl. Fracht"], ["GC1", 250, 405, 1204, 1252]]
    found = lines([*rows, ["GD2", 350, 465, 846, 894]])
    assert [(str(line.state), line.offer.delivered) for line in found.values()] == [
        ("accepted", False), ("accepted", True),
    ] * 2  # fmt: skip


def test_samples_that_were_sent_are_no_offers():
    rows = [["Pris SEK/ton"], ["Kvalitet", "g/m²", "µm", "Pris"], ["GC1", 250, 405, 13200], [], ["Skickade prover"]]
    assert list(lines([*rows, ["Kvalitet", "g/m²", "Antal ark"], ["GC1", 250, 25]])) == ["D3"]


@pytest.mark.parametrize(
    ("title", "measures"),
    [
        ("GC2 250 g/m², 405 µm – pris SEK/ton fritt kund", (250, 405)),
        ("GC2, pris SEK/ton fritt kund, 405 µm", (None, None)),
        ("GC2 från 250 g/m² i SEK/ton", (None, None)),
        ("GC2 250 g/m² +200 SEK/ton", (None, None)),
    ],
)
def test_a_title_that_calls_the_board_first_may_say_its_price_unit_too(title, measures):
    found = lines([["Priser i SEK/ton, falskartong GC2"], [title], ["Från kg", "Pris"], [1000, 12400], [5000, 12100]])
    assert {(line.offer.grammage_gsm, line.offer.caliper_um) for line in found.values()} == {measures}


def test_a_head_over_the_boards_names_the_sheet_that_their_prices_are_for():
    rows = [["Sorte (Format 70 x 100 cm)", "g/m²", "µm", "€/1000 Bogen"], ["GC1", 250, 405, 226]]
    assert lines(rows)["D2"].offer.sheet_mm == (700, 1000)


def test_a_unit_in_the_corner_names_the_numbers_across():
    rows = [["SEK per 1000 kg"], ["Kvalitet / µm", 300, 350], ["GC1", 14100, 13950], ["GD2", 9200, 9050]]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [int(found[cell].offer.caliper_um) for cell in ("B3", "C3")] == [300, 350]


def test_a_legend_in_two_columns_explains_the_codes_of_the_table():
    rows = [
        ["EUR per t"],
        ["Code", "g/m²", "µm", "Preis"],
        ["PK1", 250, 405, 1290],
        ["PK3", 500, 740, 640],
        [],
        ["Legende:"],
        ["PK1", "Faltschachtelkarton GC2"],
        ["PK3", "Graukarton"],
    ]
    assert {cell: line.offer.grade for cell, line in lines(rows).items()} == {"D3": "FBB", "D4": "URB"}


def test_a_range_of_weights_is_asked():
    rows = [["EUR/t"], ["Sorte", "Grammatur", "Preis"], ["GD2", "250 g/m²", 845], ["GD2", "280-330 g/m²", 815]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"C3": "accepted", "C4": "question"}


@pytest.mark.parametrize(
    "spans", [("200-249 g/m²", "250-300 g/m²"), ("ab 200 g/m²", "ab 250 g/m²"), ("12-16 pt", "18-24 pt")]
)
def test_spans_across_are_prices_that_are_asked(spans):
    found = lines([["EUR/t"], ["Sorte", *spans], ["GC1", 1350, 1330], ["GC2", 1300, 1280]])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ("B3", "C3", "B4", "C4"), "question"
    )


@pytest.mark.parametrize("weight", ["800 kg", "800 kg netto", "0,8 t net"])
def test_pallets_that_the_list_weighs(weight):
    rows = [
        [f"GD2, EUR je t; 1 Palette = {weight}"],
        ["Sorte", "g/m²", "µm", "1-4 Paletten", "ab 5 Paletten"],
        ["GD2", 300, 400, 900, 870],
    ]
    found = lines(rows)
    assert int(found["D3"].offer.from_kg) == 800
    assert int(found["D3"].offer.below_kg) == 4000


def test_a_gross_weight_says_nothing_of_the_board_on_a_pallet():
    rows = [
        ["GD2, EUR je t; 1 Palette = 830 kg brutto"],
        ["Sorte", "g/m²", "µm", "ab 5 Paletten"],
        ["GD2", 300, 400, 870],
    ]
    assert "bracket-unread" in codes(lines(rows)["D3"])


def test_a_firm_may_be_called_by_what_it_makes():
    rows = [["Umeå Falskartong AB"], ["SEK/ton"], ["Kvalitet", "g/m²", "µm", "Pris"], ["GC1", 250, 405, 13800]]
    assert read(rows).vendor == "Umeå Falskartong AB"


def test_the_point_that_board_is_shipped_from_is_no_unit_of_a_metric_list():
    rows = [
        ["EUR per tonne"],
        [None, None, None, "FOB shipping point", None],
        ["Sorte", "µm", "g/m²", "< 10 t", "> 10 t"],
        ["GC1", 400, 250, 1050, 1020],
    ]
    assert [int(line.offer.below_kg or 0) for line in lines(rows).values()] == [10000, 0]


@pytest.mark.parametrize("start", ["ab 01.01.2027", "gültig ab 01.01.2027", "fr.o.m. 2027-01-01"])
def test_beside_the_price_so_far_the_figures_from_a_day_on_are_offered(start):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "bisher", "Erhöhung", start], ["GC2", 250, 405, 1240, 40, 1280]]
    assert prices(lines(rows)) == {"F3": ("accepted", "1280", "tonne")}


@pytest.mark.parametrize(
    ("head", "basis"),
    [("Tonpris", "tonne"), ("Tonnenpreis (EUR)", "tonne"), ("Kilopreis", "kg"), ("kvadratmeterpris", "m2")],
)
def test_one_word_that_says_price_and_unit(head, basis):
    found = lines(
        [["EUR"], ["Sort", "g/m²", "µm", head], ["GC2", 250, 405, {"tonne": 1250, "kg": 1.25, "m2": 0.31}[basis]]]
    )
    assert [(str(line.state), line.offer.basis) for line in found.values()] == [("accepted", basis)]


@pytest.mark.parametrize(
    ("unit", "expected"),
    [("1 t", ("accepted", "1265", "tonne")), ("je 1 TO", ("accepted", "1265", "tonne")),
     ("100 kg", ("question", "1265", None))],
)  # fmt: skip
def test_a_price_unit_of_one_is_the_unit_itself(unit, expected):
    rows = [
        ["Kurztext", "Flächengewicht", "Dicke", "Preis", "Währung", "Preiseinheit"],
        ["GC1 Rolle", "240 g/m²", "385 µm", 1265, "EUR", unit],
    ]
    assert prices(lines(rows)) == {"D2": expected}


def test_a_price_on_an_unknown_unit_does_not_hold_back_the_one_beside_it():
    rows = [["Sorte", "g/m²", "µm", "EUR/100 kg", "EUR/t"], ["GC1", 250, 400, 138.5, 1295]]
    assert prices(lines(rows)) == {"D2": ("question", "138.5", None), "E2": ("accepted", "1295", "tonne")}


def test_prices_free_to_places_beside_the_one_at_the_mill():
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", "ab Werk", "frei Hamburg", "frei Wien"],
        ["GD2", 350, 460, 840, 870, 900],
    ]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.delivered for line in found.values()] == [False, True, True]
    with_freight = [
        rows[0],
        ["Sorte", "g/m²", "µm", "ab Werk", "Fracht", "frei Hamburg"],
        ["GD2", 350, 460, 840, 30, 870],
    ]
    assert {cell: len(line.offer.charges) for cell, line in lines(with_freight).items()} == {"D3": 1, "F3": 0}


def test_the_offer_beside_prices_that_have_run_out():
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", "Preis Q2/2026 (abgelaufen)", "Preis Q3/2026 (abgelaufen)", "Angebot Q4/2026"],
        ["GC1", 250, 405, 1232, 1247, 1262],
    ]
    assert prices(lines(rows)) == {"F3": ("accepted", "1262", "tonne")}


@pytest.mark.parametrize(
    ("measure", "expected"),
    [("0,46 mm", ("accepted", "1090", "tonne")), ("0.46 mm", ("question", None, "tonne")),
     ("0.46", ("question", "1.090", "tonne"))],
)  # fmt: skip
def test_a_measure_settles_a_price_by_its_comma_and_never_to_an_absurd_one(measure, expected):
    """Technical data have a decimal point in sheets whose money has a comma."""
    rows = [["Sorte", "g/m²", "Dicke mm", "Preis"], ["GD2", 350, measure, "1.090 €/t"]]
    assert prices(lines(rows)) == {"D2": expected}


def test_a_column_of_brands_that_a_note_explains():
    rows = [["EUR/t"], ["Marke", "g/m²", "µm", "EUR/t"], ["Brunnalux", 240, 385, 1290],
            ["Brunnaduo", 350, 460, 890], [],
            ["Brunnalux = GC1 Faltschachtelkarton; Brunnaduo = GD2 Duplexkarton"]]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "CRB"]


@pytest.mark.parametrize(("coat", "sides"), [("1-seitig", 1), ("2-seitig", 2), ("2", 2), ("2 sidor", 2), ("3", None)])
def test_a_coating_column_counts_sides(coat, sides):
    rows = [["Sorte", "Strich", "g/m²", "µm", "EUR/t"], ["Zellstoffkarton", coat, 250, 305, 1488],
            ["Zellstoffkarton", "1-seitig", 280, 340, 1480]]  # fmt: skip
    assert lines(rows)["E2"].offer.coated_sides == sides


def test_the_buyers_own_price_behind_a_discount_in_money():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Preis", "Rabatt EUR/t", "Ihr Preis"], ["GC1", 250, 405, 1000, 50, 950]]
    assert prices(lines(rows)) == {"F3": ("accepted", "950", "tonne")}


def test_a_vendor_written_once_quotes_every_board_until_the_next_vendor():
    rows = [["EUR/t"], ["Lieferant", "Sorte", "g/m²", "µm", "Preis"]]
    rows += [["A-Karton GmbH", "GC1", 250, 405, 1290], [None, "GD2", 350, 465, 880]]
    rows += [["B-Board AG", "GC1", 250, 405, 1270], [None, "GD2", 350, 465, 870]]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.vendor for line in found.values()] == ["A-Karton GmbH"] * 2 + ["B-Board AG"] * 2


@pytest.mark.parametrize(("note", "caliper"), [("Zwischenlagen 0,4 mm", None), ("Dicke 0,4 mm", 400), ("0,4 mm", 400)])
def test_a_note_below_measures_board_only_where_it_says_so(note, caliper):
    rows = [["EUR/t"], ["Sorte", "g/m²", "Preis"], ["GC1", 250, 1204], ["GC1", 260, 1198], [], [note]]
    assert {line.offer.caliper_um for line in lines(rows).values()} == {caliper}


def test_lots_of_several_widths_are_no_order_sizes_of_one_board():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Breite mm", "Menge kg", "Preis"], ["GC2", 250, 405, 820, 4200, 990]]
    offers = [line.offer for line in lines([*rows, ["GC2", 250, 405, 1020, 2600, 960]]).values()]
    assert [offer.below_kg for offer in offers] == [None, None]


@pytest.mark.parametrize(("second", "offered"), [(278.3, ["C3"]), (290.0, ["C3", "C4"])])
def test_one_price_on_two_bases_line_by_line_is_one_offer(second, offered):
    rows = [["frei Haus"], ["Sorte", "Einheit", "230 g/m²"], ["GC1", "€/t", 1210], [None, "€/1000 m²", second]]
    assert list(lines(rows)) == offered
