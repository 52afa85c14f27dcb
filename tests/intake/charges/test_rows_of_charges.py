"""Charges in rows of their own below the boards, and the unit that stands beside their figure."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN

HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def both(found):
    """The lines of the two boards, which must be there: what is said of none is true of all."""
    assert len(found) == 2
    return found.values()


def charges(line):
    return [(charge.label, charge.price, charge.currency, charge.basis) for charge in line.offer.charges]


def test_a_charge_in_a_row_of_its_own_is_in_the_prices_currency_and_unit():
    rows = [HEAD, SBS, CRB, ["Plus, on all items:"], ["Energy surcharge", None, None, 28]]
    for line in both(lines(rows)):
        assert charges(line) == [("Energy surcharge", 28, "USD", "short_ton")]


@pytest.mark.parametrize("figure", [3.5, 12])
def test_a_small_figure_in_a_row_of_its_own_may_be_per_cent(figure):
    (line,) = lines([HEAD, SBS, ["Energy surcharge", None, None, figure]]).values()
    assert [charge.currency for charge in line.offer.charges] == [OPEN]


def test_a_quantity_below_the_boards_makes_no_charge_of_one_that_costs_as_much():
    head = ["Board", "12 pt", "16 pt", "18 pt"]
    rows = [
        ["USD per short ton"], head, ["SBS C1S", 1300, 1289, 1278], ["CUK", 1180, 1169, 1158],
        ["SBS premium white", 1342, 1331, 1320], [], ["Tons shipped 2025", 48210],
    ]  # fmt: skip
    assert {"B5", "C5", "D5"} <= {cell for cell, line in lines(rows).items() if not codes(line) & {"number-ambiguous"}}
    rows[4] = ["SBS premium white", 42, 31, 20]
    assert not any(str(line.state) == "accepted" for cell, line in lines(rows).items() if cell in ("B5", "C5", "D5"))


def test_charges_in_rows_below_the_boards_are_in_the_delivered_cost():
    rows = [
        ["FOB mill"], ["Item", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1000],
        ["Freight to your plant, all items", None, None, 62], ["Energy surcharge, all items", None, None, "2.5 %"],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert float(footing(line.offer).delivered_per_tonne) == pytest.approx(1087 / 0.90718474)


@pytest.mark.parametrize("rate", ["2 or 3 %", "2-3 %", "2 to 3 %", "2 %/3 %"])
def test_a_charge_row_that_is_not_understood_leaves_the_delivered_cost_open(rate):
    rows = [
        ["FOB mill"], ["Item", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1000],
        ["Freight", None, None, 62], ["Energy surcharge", None, None, rate],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert footing(line.offer).delivered_per_tonne is None


def test_a_charge_row_may_say_its_unit_beside_its_figure():
    rows = [
        ["US$ per short ton"], ["Board", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 1140], [],
        ["Energy surcharge", None, None, 18.5, "US$ per short ton"],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert [(charge.price, charge.currency) for charge in line.offer.charges] == [(Decimal("18.5"), "USD")]


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


@pytest.mark.parametrize(
    ("amounts", "charges"), [((44.73, 30.38), ["44.73", "30.38"]), ((3.5, 3.5), ["3.5", "3.5"])]
)  # fmt: skip
def test_amounts_below_a_stated_rate_are_money(amounts, charges):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Preis", "Energiezuschlag 3,5 %"],
            ["GC1", 250, 405, 1278, amounts[0]], ["GD2", 350, 465, 868, amounts[1]]]  # fmt: skip
    found = [line.offer.charges[0] for line in lines(rows).values()]
    assert [str(charge.price) for charge in found] == charges
    assert {charge.basis for charge in found} == ({None} if charges[0] == "3.5" else {"tonne"})


@pytest.mark.parametrize("title", ["Tillägg som gäller alla kvaliteter", "Surcharges for all grades"])
def test_a_charge_its_amount_and_its_unit_under_heads_of_other_things(title):
    rows = [
        ["Priser fritt fabrik"], ["Ytvikt", "Tjocklek", "GC2", "GD2"], ["g/m²", "µm", "SEK/ton", "SEK/ton"],
        [250, 345, 13250, 9350], [300, 410, 13120, 9240], [], [title], ["Frakt till kund", 410, "SEK/ton"],
        ["Energitillägg", 2.5, "%"], ["Emballage", 0.06, "SEK/kg"], [],
        ["Priser och tillägg gäller till och med 30 november 2026"],
    ]  # fmt: skip
    found = lines(rows)
    assert len(found) == 4
    for line in found.values():
        assert [(charge.label, str(charge.price)) for charge in line.offer.charges] == [
            ("Frakt", "410"), ("Energitillägg", "2.5"), ("Emballage", "0.06"),
        ]  # fmt: skip


def test_a_board_that_is_called_premium_is_no_charge():
    rows = [["Board", "Price", "Unit"], ["Premium", 1250, "EUR/t"], ["GC1 250 g/m²", 1150, "EUR/t"]]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]
    assert all(not line.offer.charges for line in found.values())


def test_a_premium_far_below_the_prices_is_one():
    rows = [["Board", "Price", "Unit"], ["GC1 250 g/m²", 1150, "EUR/t"], ["Premium", 50, "EUR/t"]]
    (line,) = lines(rows).values()
    assert [str(charge.price) for charge in line.offer.charges] == ["50"]


def test_a_board_called_extra_that_costs_as_much_in_every_column_is_one():
    rows = [["Graupappe (URB), Preise EUR/t"], ["Ausführung", "1,0 mm", "1,5 mm"], ["Standard", 668, 655],
            ["Extra glatt", 712, 699]]  # fmt: skip
    assert [str(line.state) for line in lines(rows).values()] == ["accepted"] * 4


@pytest.mark.parametrize(
    ("freight", "unit", "energy", "share"),
    [
        ("Frakt till er dörr", "SEK/1000 kg", "Energitillägg", "% på grundpriset"),
        ("Fracht bis zu Ihnen", "SEK je 1000 kg", "Energiezuschlag", "% vom Preis"),
        ("Freight to your door", "SEK/1000 kg", "Energy surcharge", "% of price"),
    ],
)
def test_a_unit_with_a_figure_in_it_stands_before_an_amount_in_any_column(freight, unit, energy, share):
    head = ["Board", "g/m²", "mm", "Price, SEK per 1000 kg"]
    rows = [["EXW"], [], head, ["GC1", 230, 0.365, 13050], ["GD2", 300, 0.385, 8890], [], ["Tillägg, alla varor"]]
    found = lines([*rows, [freight, None, unit, 615], [energy, None, share, 2.5]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D4": "accepted", "D5": "accepted"}
    charges = [sorted((str(one.price), str(one.basis)) for one in line.offer.charges) for line in found.values()]
    assert [charge[1] for charge in charges] == [("615", "tonne")] * 2
    assert [charge[0][0] for charge in charges] == ["2.5"] * 2


def test_a_figure_that_is_not_its_unit_s_says_no_unit():
    head = ["Board", "g/m²", "mm", "Price, SEK per 1000 kg"]
    found = lines([["EXW"], [], head, ["GC1", 230, 0.365, 13050], ["Frakt", None, "zon 4", 615]])
    assert all(str(one.basis) != "tonne" or str(one.price) == "615" for one in found["D4"].offer.charges)
