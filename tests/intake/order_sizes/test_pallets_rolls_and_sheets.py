"""Orders in pallets, rolls and sheets: asked about, but where the file says or lets be reckoned what they weigh."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.loads import load_definitions


@pytest.mark.parametrize(
    ("by_pallet", "below"),
    [
        ("Par palette (dès 500 kg)", "Moins de 500 kg"),
        ("Per pallet (from 500 kg)", "Below 500 kg"),
        ("Je Palette (ab 500 kg)", "Unter 500 kg"),
        ("Por palet (desde 500 kg)", "Menos de 500 kg"),
        ("Per pall (från 500 kg)", "Under 500 kg"),
    ],
)
def test_pallets_with_a_weight_behind_them_size_orders(by_pallet, below):
    head = ["Carton", "mm", "g/m²", "µm", by_pallet, below]
    rows = [["GC1", "700 x 1000", 250, 405, 252.4, 281], ["GD2", "700 x 1000", 400, 525, 291, 325.2]]
    found = lines([["Prices in CHF per 1000 sheets"], [], head, [None, None, None, None, "CHF", "CHF"], *rows])
    assert {(str(line.state), line.offer.basis) for line in found.values()} == {("accepted", "1000sheets")}
    assert (found["E5"].offer.from_kg, found["F5"].offer.below_kg) == (500, 500)


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


@pytest.mark.parametrize("text", ["1 palet = 800 kg en todas las calidades", "1 Palette = 800 kg bei allen Sorten"])
def test_what_a_pallet_of_any_grade_weighs_is_a_definition(text):
    assert [definition.each.words for definition in load_definitions(text)] == ["800 kg"]


def test_about_what_a_pallet_weighs_defines_nothing():
    assert load_definitions("1 pallet = max. 800 kg for all grades") == ()


HEADS = ["Grade", "µm", "g/m²"]
ROWS = [["SBS", 355, 290, 1390, 1345], ["SBS", 457, 375, 1380, 1335]]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("1 pallet EUR/t", "5 pallets EUR/t"),
        ("1-4 rolls EUR/t", "5+ rolls EUR/t"),
        ("EUR/t 1 Palette", "EUR/t 5 Paletten"),
        ("1 palette EUR/t", "5 palettes EUR/t"),
        ("1 palé EUR/t", "5 palés EUR/t"),
        ("1 pall EUR/t", "5 pallar EUR/t"),
        ("Skid price EUR/t", "TL price EUR/t"),
        ("Palettenpreis EUR/t", "Ladungspreis EUR/t"),
    ],
)
def test_prices_by_the_pallet_or_roll_are_each_asked_about(one, other):
    found = lines([[*HEADS, one, other], *ROWS])
    assert sorted(found) == ["D2", "D3", "E2", "E3"]
    assert {frozenset(codes(line)) for line in found.values()} == {frozenset({"bracket-unread"})}


@pytest.mark.parametrize(("one", "other"), [("Rolls EUR/t", "Sheets EUR/t"), ("Price incl. pallet EUR/t", None)])
def test_how_board_comes_is_no_order_size(one, other):
    found = lines([[*HEADS, one, other], *([*row[:4], row[4] if other else None] for row in ROWS)])
    assert {str(line.state) for line in found.values()} == {"accepted"}


BOARD = ["GC1", 400, 250, "70 x 100 cm"]


@pytest.mark.parametrize(
    ("size", "quantity", "unit", "count"),
    [
        ("Sheet", "Quantity", "EUR/1000 sheets", "24,000 sheets"),
        ("Format", "Menge", "EUR/1000 Bogen", "24.000 Bogen"),
        ("Format", "Menge", "EUR/1000 Bogen", "24.000 Bg."),
        ("Format", "Quantité", "EUR/1000 feuilles", "24 000 feuilles"),
        ("Format", "Quantité", "EUR/1000 feuilles", "24 000 flles"),
        ("Formato", "Cantidad", "EUR/1000 hojas", "24.000 hojas"),
        ("Format", "Kvantitet", "EUR/1000 ark", "24 000 ark"),
    ],
)
def test_sheets_weigh_what_their_size_and_basis_weight_make(size, quantity, unit, count):
    line = lines([["Grade", "µm", "g/m²", size, quantity, unit], [*BOARD, count, 240]])["F2"]
    assert str(line.state) == "accepted"
    assert line.offer.from_kg == 4200


def test_order_sizes_in_sheets_end_where_the_next_begins():
    heads = ["Grade", "µm", "g/m²", "Sheet", "Order size", "EUR/1000 sheets"]
    found = lines(
        [heads, [*BOARD, "500-999 sheets", 260], [*BOARD, "1,000-4,999 sheets", 250], [*BOARD, "5,000+ sheets", 240]]
    )
    sizes = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert sizes == [(Decimal("87.5"), 175), (175, 875), (875, None)]
    across = lines([[*heads[:4], "1,000 sheets EUR/1000 sheets", "5,000 sheets EUR/1000 sheets"], [*BOARD, 250, 240]])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in across.values()] == [(175, 875), (875, None)]


def test_one_stated_quantity_that_cannot_be_weighed_is_left_open_and_several_are_asked():
    heads = ["Grade", "µm", "Sheet", "Quantity", "EUR/1000 sheets"]
    row = ["GC1", 400, "70 x 100 cm"]
    one = lines([heads, [*row, "24,000 sheets", 240]])["E2"]
    assert (str(one.state), one.offer.from_kg) == ("accepted", None)
    several = lines([heads, [*row, "1,000 sheets", 260], [*row, "24,000 sheets", 240]])
    assert all("bracket-unread" in codes(line) for line in several.values())


def test_one_quantity_of_each_board_is_read_in_whatever_it_is_counted():
    heads = ["Pos.", "Menge", "Bezeichnung", "Format", "Preis EUR", "je"]
    sheets = [10, "24.000 Bg.", "GC1, 250 g/m², 400 µm", "70 x 100 cm", 240, "1.000 Bg."]
    rolls = [20, "4 t", "GD2, 300 g/m², 390 µm", "Rolle 72 cm", 880, "t"]
    pallets = [30, "4 Paletten", "GD2, 350 g/m², 455 µm", "70 x 100 cm", 250, "1.000 Bg."]
    found = lines([["Kartonhaus Elbtal GmbH"], heads, sheets, rolls, pallets])
    assert [(str(one.state), one.offer.from_kg) for one in found.values()] == [
        ("accepted", 4200),
        ("accepted", 4000),
        ("question", None),
    ]


@pytest.mark.parametrize(
    "load", ["Railcar", "Single pallet", "ganze Palette", "Palet suelto", "palette unique", "enstaka pall"]
)
def test_a_load_among_weights_of_order_is_asked_what_it_weighs(load):
    found = lines([["Board", "pt", "lb/MSF", "5,000 lb", load], ["SBS C1S", 18, 74, 1250, 1180], ["USD per short ton"]])
    assert (found["E2"].state, codes(found["E2"])) == ("question", {"bracket-unread"})


@pytest.mark.parametrize("packed", ["Bg/Pal", "BOG/PAL", "Bogen/Pal", "flles/pal", "shts/plt", "Bg/Ries", "sht/bdl"])
def test_sheets_of_a_pallet_are_no_orders_and_no_prices(packed):
    found = lines(
        [[*HEADS, "Sheet", packed, "EUR/1000 sheets"], [*BOARD, 1400, 240], [*BOARD[:2], 260, BOARD[3], 1200, 250]]
    )
    assert [(cell, str(one.state), one.offer.from_kg) for cell, one in found.items()] == [
        ("F2", "accepted", None),
        ("F3", "accepted", None),
    ]


ROLLS = [["SBS C1S", 18, 75, 63.1], ["CUK", 18, 74, 54.75]]


def test_pallet_lots_behind_order_sizes_are_one_more_and_asked_for_their_weight():
    head = ["Grade", "pt", "lb/MSF", "TL (42,000 lb and up)", "LTL (10,000 to 41,999 lb)", "Pallet lots"]
    rows = [[*ROLLS[0], 65.4, 71], [*ROLLS[1], 56.9, 62.5]]
    found = lines([["Delivered, US dollars per cwt"], [], head, *rows])
    assert [str(found[cell].state) for cell in ("D4", "E4", "F4")] == ["accepted", "accepted", "question"]


def test_pallets_of_a_list_are_no_prices():
    found = lines([["Grade", "pt", "lb/MSF", "US$ per cwt", "Pallets"], [*ROLLS[0], 24], [*ROLLS[1], 20]])
    assert {cell[0] for cell in found} == {"D"}


@pytest.mark.parametrize(
    "head",
    ["Rolls per truck", "Rolls/TL", "Skids/load", "Reels per load", "Rollen je LKW", "Paletten/LKW",
     "Bobines par camion", "Palettes/camion", "Rollos por camión", "Palés/camión", "Rullar per bil", "Pallar/bil"],
)  # fmt: skip
def test_what_a_truck_holds_is_no_price(head):
    rows = [["US$ per short ton"], ["Grade", "pt", "lb/MSF", "Price", head]]
    found = lines([*rows, ["SBS C1S", 12, 51, 1268, 22], ["SBS C1S", 18, 76, 1232, 19]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D3": "accepted", "D4": "accepted"}


def test_figures_like_prices_below_such_a_head_are_not_left_out():
    rows = [["US$ per short ton"], ["Grade", "pt", "lb/MSF", "Rolls/TL", "Rolls/LTL"]]
    found = lines([*rows, ["SBS C1S", 12, 51, 1268, 1322], ["SBS C1S", 18, 76, 1232, 1319]])
    assert {"D3", "D4"} <= found.keys()


@pytest.mark.parametrize("head", ["Sheets/packet", "Bogen/Paket", "Feuilles/paquet", "Hojas/paquete", "Ark/paket"])
def test_sheets_of_a_packet_are_no_prices(head):
    rows = [["Sorte", "g/m²", "µm", "cm", head, "EUR/100 kg"], ["GC1", 250, 405, "50 x 70", 100, 114.8]]
    assert set(lines([*rows, ["GC2", 325, 530, "50 x 70", 100, 117.9]])) == {"F2", "F3"}


@pytest.mark.parametrize(
    ("part", "whole"),
    [
        ("Part pallet", "Full pallet"), ("Partial skid", "Full skid"), ("Anbruchpalette", "Volle Palette"),
        ("Teilpalette", "Vollpalette"), ("Palette incomplète", "Palette complète"),
        ("Palette entamée", "Palette pleine"),
        ("Palé incompleto", "Palé completo"), ("Delpall", "Hel pall"), ("Bruten pall", "Helpall"),
    ],
)  # fmt: skip
def test_part_and_full_pallets_are_order_sizes_that_nothing_weighs(part, whole):
    heads = ["Grade", "g/m²", "µm", part, whole, "3 t +"]
    found = lines([["EUR/t"], heads, ["GC1", 250, 405, 1590, 1470, 1369], ["GD2", 350, 470, 1130, 1040, 956]])
    assert all(codes(found[cell]) == {"bracket-unread"} for cell in ("D3", "E3", "D4", "E4"))
    assert {str(found[cell].state) for cell in ("F3", "F4")} == {"accepted"}
