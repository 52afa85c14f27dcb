"""What careful buyers read without a second thought, in invented sheets; each beside its opposite."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import book, grid, lines, merged, read
from tracker.intake.read import read_workbook
from tracker.intake.values.added_on_top import added_on_top
from tracker.intake.values.charges import find_charges
from tracker.intake.values.delivery import find_delivery
from tracker.intake.values.grade import find_grade
from tracker.intake.values.list_boards import LONGEST_TITLE
from tracker.intake.values.statements import statements
from tracker.intake.values.validity import Validity
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers

US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def of_book(*grids):
    return {
        (line.offer.source.sheet, line.offer.source.cell): line for line in read_workbook(book(*grids), Answers()).lines
    }


class TestUnitsByCode:
    HEADS = (*US, "Price", "Basis")

    def test_a_column_of_codes_that_a_key_explains_says_what_prices_are_per(self):
        rows = [self.HEADS, ["SBS C1S", 14, 60, 1228, "A"], ["CUK", 18, 74, 54.8, "B"]]
        key = [["Basis codes"], ["A", "US dollars per short ton"], ["B", "US dollars per cwt (100 lb)"]]
        found = of_book(grid(rows, "Prices"), grid(key, "Key"))
        assert [line.offer.basis for line in found.values()] == [Basis.SHORT_TON, Basis.CWT]

    def test_a_code_that_nothing_explains_is_asked_about(self):
        found = lines([["US dollars"], self.HEADS, ["SBS C1S", 14, 60, 1228, "A"], ["CUK", 18, 74, 54.8, "B"]])
        assert {str(line.state) for line in found.values()} == {"question"}

    def test_a_basis_with_figures_is_a_weight(self):
        found = lines([["USD/ST"], ["Board", "pt", "Basis", "Price"], ["SBS C1S", 14, 60, 1228]])
        assert found["D3"].offer.basis is Basis.SHORT_TON


class TestTonsOfPages:
    US_PAGE = (["On this page a ton is 2,000 lb. US dollars."], [*US, "Price/ton"], ["SBS C2S", 12, 54, 1262])
    PAGE = (["On this page a ton is 1,000 kg. US dollars."], [*METRIC, "Price/ton"], ["SBS C2S", 260, 305, 1412])
    NEITHER = (["US dollars."], [*METRIC, "Price/ton"], ["SBS C2S", 260, 305, 1412])

    def test_each_page_has_its_own(self):
        found = of_book(grid(self.US_PAGE, "Home"), grid(self.PAGE, "Abroad"), grid(self.NEITHER, "Other"))
        assert [line.offer.basis for line in found.values()] == [Basis.SHORT_TON, Basis.TONNE, None]

    def test_one_definition_holds_for_the_whole_file(self):
        found = of_book(grid(self.PAGE, "Abroad"), grid(self.NEITHER, "Other"))
        assert {line.offer.basis for line in found.values()} == {Basis.TONNE}


@pytest.mark.parametrize(
    ("text", "grade"),
    [
        ("Solid bleeched sulfate C1S", "SBS"),
        ("Coated unbleeched kraft", "CUK"),
        ("Faltschachtelkarten", "FBB"),
        ("Carton gris-blanc (GD2)", "CRB"),
        ("Graukarton GD2", "CRB"),
        ("cartón gris GT2", "CRB"),
        ("carton gris", "URB"),
        ("gråkartong", "URB"),
    ],
)
def test_grades_misspelt_and_grey_on_the_back(text, grade):
    assert find_grade(text).grade == grade


@pytest.mark.parametrize(
    "text", ["Graukarton SBS", "carton gris GC1", "solid unbleeched kraft", "Solid blended sulfate"]
)
def test_words_that_contradict_each_other_or_are_others_name_no_grade(text):
    reading = find_grade(text)
    assert reading is None or reading.grade is None


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
    "text", ["Volumes livrés en 2025 : 3 480 t", "Volume delivered in 2025: 3,480 t", "Levererad volym 2025: 3 480 t"]
)
def test_what_was_bought_is_no_term_of_delivery(text):
    assert find_delivery(text) is None
    assert find_delivery("Prix livrés").delivered
    assert find_delivery("Prices delivered").delivered


def test_departure_beside_a_unit_is_a_term_and_beside_a_day_a_date():
    assert find_delivery("€/t départ").delivered is False
    assert find_delivery("Départ lundi") is None
    assert find_delivery("€/t départ lundi") is None


def test_middle_dots_part_what_a_line_says():
    (said,) = (one for one in statements("Valid to 30 April 2027 · Ships 6 to 8 weeks") if isinstance(one, Validity))
    assert said.words == "Valid to 30 April 2027"


class TestSignsOfUnits:
    BOARDS = ("GC1 240 g/m² 0,38 mm", "GC2 275 g/m² 0,45 mm", "CUK 330 g/m² 0,44 mm")

    def test_prices_in_two_units_lie_far_apart(self):
        rows = [["Sorte", "Preis"], *zip(self.BOARDS, ["1.142,50 €/t", "1.230 €/t", "1,155 €/kg"], strict=True)]
        assert {f"{line.offer.price:f}" for line in lines(rows).values()} == {"1142.50", "1230", "1.155"}

    def test_prices_in_one_unit_do_not(self):
        rows = [["Sorte", "Preis"], *zip(self.BOARDS, ["1.142,50 €/t", "1.230 €/t", "1,155 €/t"], strict=True)]
        assert "question" in {str(line.state) for line in lines(rows).values()}


class TestVendors:
    def test_the_firm_that_the_offers_begin_with_behind_an_index(self):
        index = [["Índice de materias primas"], ["Mes", "Índice"], ["sep-26", 118.4]]
        offer = [["Cartonajes Riofrondo"], ["€/t"], [*METRIC, "Precio"], ["GC1", 250, 405, 1266]]
        other = [["Papelera Altamina"], ["€/t"], [*METRIC, "Precio"], ["GC1", 250, 405, 1255]]
        found = of_book(grid(index, "Índice"), grid(offer, "Oferta"))
        assert {line.offer.vendor for line in found.values()} == {"Cartonajes Riofrondo"}
        found = of_book(grid(index, "Índice"), grid(offer, "Oferta"), grid(other, "Otra"))
        assert found["Otra", "D4"].offer.vendor != "Cartonajes Riofrondo"

    def test_a_column_of_firms_says_who_offers_whatever_it_is_called(self):
        rows = [
            ["House", "Goods", "Ask"],
            ["Larkfell Board Inc.", "SBS C1S 18 pt 75 lb/MSF", "$1,145/ST"],
            ["Ostrander Chip Co.", "URB 30 pt 108 lb/MSF", "$687/ST"],
        ]
        assert {cell: line.offer.vendor for cell, line in lines(rows).items()} == {
            "C2": "Larkfell Board Inc.",
            "C3": "Ostrander Chip Co.",
        }


def test_how_far_two_vendors_are_apart_is_no_offer():
    rows = [
        ["€/t"],
        [*METRIC, "Prix"],
        ["GC1", 250, 400, 1268],
        ["GD2", 300, 390, 797],
        [],
        ["Ecart moyen A/B", None, None, -46],
    ]
    assert set(lines(rows)) == {"D3", "D4"}
    assert read(rows).lines


@pytest.mark.parametrize(
    ("title", "size"),
    [
        ("Oferta en hojas 72 x 102 cm. Portes incluidos (DAP). Válida hasta el 30 de noviembre de 2026.", [720, 1020]),
        (
            "Offer for sheets 28 x 40 in, FOB mill, good until 30 November 2026, all in US dollars as usual",
            [711.2, 1016],
        ),
        (
            "Carton GD2 en feuilles de 70 x 100 cm, prix par mille de feuilles, départ usine, sans engagement",
            [700, 1000],
        ),
        ("Sheets from 70 x 100 cm to order, EUR per tonne, delivered, good until 30 November 2026 as usual", None),
        ("Pallets 80 x 120 cm are included, EUR per tonne, delivered, good until 30 November 2026 as usual", None),
    ],
)
def test_the_size_of_sheets_in_a_long_title(title, size):
    assert len(title) > LONGEST_TITLE
    (line,) = lines([[title], ["Board", "g/m²", "µm", "EUR/t"], ["GD2", 350, 460, 896]]).values()
    assert line.offer.sheet_mm == (None if size is None else tuple(Decimal(str(side)) for side in size))


def test_two_loads_that_one_sentence_defines():
    rows = [
        ["US$/ST. For this list one roll is 2,100 lb and a truckload is 42,000 lb."],
        [*US, "Less than 5 rolls", "5 rolls up to a truckload", "1 truckload or more", "Railcar"],
        ["SBS C1S", 18, 76, 1255, 1190, 1150, 1128],
    ]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted", "accepted", "question"]
    rolls, load = 5 * 2100 * Decimal("0.45359237"), 42000 * Decimal("0.45359237")
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()][:3] == [
        (None, rolls),
        (rolls, load),
        (load, None),
    ]


@pytest.mark.parametrize("size", ["5 rolls up to a truckload", "5 rolls - TL", "5 Rollen bis LKW"])
def test_sizes_up_to_a_load_that_nothing_weighs_are_asked_about(size):
    found = lines([["US$/ST, one roll is 2,100 lb"], [*US, size], ["SBS C1S", 18, 76, 1190]])
    assert [str(line.state) for line in found.values()] == ["question"]


def test_rows_of_charges_whose_units_stand_in_another_column():
    board = ["Board", "pt", "lb/MSF", "Price"]
    rows = [["US$ per short ton, FOB mill"], board, ["SBS C1S", 14, 60, 1180]]
    rows += [["Freight to Midvale", None, "US$/ST", 38], ["Energy surcharge", None, "% of price", 2.75]]
    found = lines(rows)
    assert set(found) == {"D3"}
    assert [(charge.label, float(charge.price)) for charge in found["D3"].offer.charges] == [
        ("Freight", 38.0),
        ("Energy surcharge", 2.75),
    ]
    found = lines([*rows[:3], ["URB", None, "85", 730]])
    assert set(found) == {"D3", "D4"}


@pytest.mark.parametrize("top", ["Supplier", None])
@pytest.mark.parametrize("names", [("Kestrelwick Ltd", "Nordhaven AB"), ("Kestrelwick", "Nordhaven")])
def test_days_below_a_comparison_are_each_vendors_own(top, names):
    rows = [["All € per tonne delivered to us."], [None, None, None, top], ["Board", "gsm", "micron", *names]]
    rows += [["GC1", 250, 405, 1195, 1210], ["GC2", 275, 470, 1120, 1098]]
    rows += [["Lead time", None, None, "4 weeks", "6 weeks"]]
    ends = date(2026, 7, 31), date(2026, 12, 31)
    found = lines([*rows, ["Valid until", None, None, *ends]], merged=merged((1, 3, 1, 4)) if top else ())
    assert [found[cell].offer.valid_until for cell in ("D4", "E4", "D5", "E5")] == [*ends, *ends]
    assert [found[cell].offer.lead_days for cell in ("D4", "E4")] == [(28, 28), (42, 42)]
    found = lines([*rows, ["Valid until", None, None, ends[0]]], merged=merged((1, 3, 1, 4)) if top else ())
    assert {line.offer.valid_until for line in found.values()} <= {ends[0], None}


def test_a_unit_of_prices_that_the_first_words_say_with_a_term_of_delivery():
    rows = [["Quality", "230 gsm", "250 gsm"], ["GC1", 1248, 1236]]
    money = {(row, column): "[$£-809]#,##0" for row in (1, 2) for column in (1, 2)}
    found = lines([["Per tonne delivered, in force until 31 March 2027."], *rows], formats=money)
    assert {line.offer.basis for line in found.values()} == {Basis.TONNE}
    found = lines([["Freight per tonne delivered, in force until 31 March 2027."], *rows], formats=money)
    assert {line.offer.basis for line in found.values()} == {None}


def test_the_boards_name_in_the_corner_over_the_order_sizes():
    block = ["14 pt", "16 pt"], ["menos de 2.000 kg", 1390, 1381], ["más de 2.000 kg", 1310, 1301]
    rows = [["USD por tonelada métrica"], ["SBS C1S", *block[0]], *block[1:], [], ["CUK", *block[0]], *block[1:]]
    assert {line.offer.grade for line in list(lines(rows).values())[:4]} == {"SBS"}
    assert {line.offer.grade for line in list(lines(rows).values())[4:]} == {"CUK"}
    rows[1][0] = "SBS orders"
    assert None in {line.offer.grade for line in list(lines(rows).values())[:4]}


@pytest.mark.parametrize("size", ["any", "beliebig", "toutes quantités", "cualquier cantidad", "valfri"])
def test_a_price_for_orders_of_any_size(size):
    heads = ["Board", "pt", "lb/MSF", "Quantity", "Price"]
    found = lines([["USD/cwt"], heads, ["SBS", 18, 76, "10,000 lb and over", 52.4], ["CUK", 21, 88, size, 51]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
    found = lines([["USD/cwt"], heads, ["SBS", 18, 76, "10,000 lb and over", 52.4], ["CUK", 21, 88, "some", 51]])
    assert [str(line.state) for line in found.values()] == ["accepted", "question"]


def test_a_charge_per_t_in_a_list_without_calipers_is_per_tonne():
    rows = [["Preise in EUR/t. Energiezuschlag 38,00 EUR/t auf alle Sorten."], ["Sorte", "230 g/m²", "250 g/m²"]]
    found = lines([*rows, ["GC1", 1290, 1284]])
    assert {(float(one.price), one.basis) for line in found.values() for one in line.offer.charges} == {
        (38.0, Basis.TONNE)
    }
    rows = [["Prices in USD/ST. Energy surcharge USD 38.00/t on all grades."], ["Board", "75 lb/MSF", "80 lb/MSF"]]
    found = lines([*rows, ["SBS", 1290, 1284]])
    assert {one.basis for line in found.values() for one in line.offer.charges} != {Basis.TONNE}


def test_a_web_beside_a_length_is_a_side_of_sheets_where_these_are_priced():
    heads = ["Qualité", "g/m²", "µm", "Laize mm", "Longueur mm"]
    found = lines([[*heads, "€ les 1000 feuilles"], ["GC2", 270, 440, 700, 1000, 248.2]])
    assert found["F2"].offer.sheet_mm == (Decimal(700), Decimal(1000))
    found = lines([[*heads, "€/t bobines"], ["GC2", 270, 440, 700, 1000, 1248]])
    assert found["F2"].offer.sheet_mm is None
