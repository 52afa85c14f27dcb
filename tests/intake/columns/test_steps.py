"""What a price starts from and what is put on top: steps that the figures show to lead to the price."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.tables.headers.periods import is_later

TITLE = ["USD per short ton, FOB mill"]
SPECS = ["Grade", "Caliper (pt)", "lb/MSF"]


def _offered(heads, *figures):
    boards = (["SBS C1S", 16, 68], ["SBS C2S", 18, 76], ["CRB C1S", 20, 79])
    return lines([TITLE, [*SPECS, *heads], *([*board, *row] for board, row in zip(boards, figures, strict=True))])


@pytest.mark.parametrize("heads", [("Base", "Adder C2S", "Price"), ("Price", "Energy surcharge", "New price")])
def test_the_sum_is_offered_and_its_parts_are_not(heads):
    found = _offered(heads, (1180, 10, 1190), (1170, 45, 1215), (860, 0, 860))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("F3", "F4", "F5"), "accepted")
    assert all(line.offer.charges == () for line in found.values())


@pytest.mark.parametrize("rate", [4, 0.04])
def test_so_is_what_a_rate_leaves(rate):
    found = _offered(("Base price", "Rebate", "Your price"), (1200, rate, 1152), (1150, rate, 1104), (900, rate, 864))
    assert set(found) == {"F3", "F4", "F5"}


def test_a_rebate_that_the_price_bears_already_is_no_doubt():
    found = _offered(("List", "Rebate", "Your price"), (1200, 0.04, 1152), (1150, 0.04, 1104), (900, 0.04, 864))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("F3", "F4", "F5"), "accepted")


def test_a_sum_is_the_price_where_no_column_is_called_one():
    found = _offered(
        ("Current", "Increase %", "New (7/1/26)"), (1150, 3.5, 1190.25), (1100, 3.5, 1138.5), (850, 3.5, 879.75)
    )
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("F3", "F4", "F5"), "accepted")


def test_figures_that_do_not_add_up_are_no_steps():
    found = _offered(("Price", "Adder", "Other price"), (1180, 10, 1191), (1170, 45, 1210), (860, 5, 870))
    assert {"D3", "F3"} <= set(found)


def test_order_sizes_that_chance_to_add_up_are_offers_each():
    found = _offered(
        ("over 20 ST", "Energy surcharge", "under 20 ST"), (1180, 20, 1200), (1170, 20, 1190), (860, 20, 880)
    )
    assert {"D3", "F3", "D4", "F4", "D5", "F5"} == set(found)


def test_averages_below_the_boards_need_not_add_up():
    heads = [*SPECS, "Base", "Supplement", "Net price"]
    rows = [["SBS C1S", 16, 68, 1180, 35, 1215], ["CRB C1S", 20, 79, 860, 20, 880]]
    found = lines([TITLE, heads, *rows, [], ["Mean", None, None, 1020, 27.5, 1100]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"F3": "accepted", "F4": "accepted"}


def test_the_base_is_no_price_where_the_net_price_was_never_reckoned():
    found = _offered(("Base", "Supplement", "Net price"), (1180, 10, "#REF!"), (1170, 45, "#REF!"), (860, 5, "#REF!"))
    assert not any(cell.startswith("D") for cell in found)
    found = _offered(("Price", "Supplement", "Remark"), (1180, 10, "n/a"), (1170, 45, "n/a"), (860, 5, "n/a"))
    assert {"D3", "D4", "D5"} <= set(found)


def test_several_steps_lead_to_the_price_together():
    heads = ("Base", "Energy", "Fibre adder", "Price")
    found = _offered(heads, (1200, 30, 10, 1240), (1250, 30, 12, 1292), (900, 30, 15, 945))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("G3", "G4", "G5"), "accepted")
    found = _offered(heads, (1200, 30, 10, 1240), (1250, 30, 12, 1299), (900, 30, 15, 945))
    assert not any(str(line.state) == "accepted" for line in found.values())


def test_the_smaller_part_of_a_sum_is_what_is_put_on_top():
    found = _offered(("Base price", "Paper", "Final price"), (1180, 35, 1215), (1150, 35, 1185), (770, 22.5, 792.5))
    assert set(found) == {"F3", "F4", "F5"}


def test_a_charge_behind_a_rebate_is_in_the_net_price_where_the_figures_show_it():
    heads = ("List price", "Rebate %", "Energy surcharge", "Net price")
    found = _offered(heads, (1250, 4, 30, 1230), (1200, 4, 30, 1182), (900, 5, 20, 875))
    assert [(line.offer.price, line.offer.charges) for line in found.values()] == [(1230, ()), (1182, ()), (875, ())]
    found = _offered(heads, (1250, 4, 30, 1200), (1200, 4, 30, 1152), (900, 5, 20, 855))
    assert [len(line.offer.charges) for line in found.values()] == [1, 1, 1]


@pytest.mark.parametrize(
    "heads",
    [
        ("Base price (Jan 2025)", "Index adjustment", "Contract price Q3/2026"),
        ("Basispreis 01/2025", "Indexanpassung", "Preis Q3/2026"), ("Prix de base", "Indice", "Prix T3 2026"),
    ],
)  # fmt: skip
def test_a_price_that_an_index_makes_is_the_one_offered(heads):
    found = _offered(heads, (1068, 31.5, 1099.5), (1058, 31.5, 1089.5), (742, -8.25, 733.75))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("F3", "F4", "F5"), "accepted")


@pytest.mark.parametrize("last", ["Price", "Contract price Q3/2026"])
def test_an_index_that_leads_nowhere_leaves_both_prices_to_be_asked_about(last):
    found = _offered(("Base price (Jan)", "Index", last), (1068, 101, 1099.5), (1058, 102, 1089.5), (742, 99, 733.75))
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize("cost", ["Coste base", "Base cost", "Materialkosten", "Coût de base", "Grundkostnad"])
def test_a_cost_before_a_margin_is_not_offered_though_the_sums_are_missing(cost):
    found = _offered((cost, "Margin", "Price"), (940, 90, 1030), (935, 90, None), (700, None, 0))
    assert set(found) == {"F3", "F5"}
    assert [str(line.state) for line in found.values()] == ["accepted", "refused"]


@pytest.mark.parametrize(
    ("text", "other", "later"),
    [("Jan 2025", "Q3 2026", False), ("Q3 2026", "Jan 2025", True), ("Jan", "Dec", True), ("Dec", "Jan", False)],
)
def test_a_month_is_later_in_its_own_year(text, other, later):
    assert is_later(text, other) is later


@pytest.mark.parametrize("rise", ["+ EUR", "+ $", "Mehr $/ST"])
def test_what_two_prices_differ_by_is_no_price(rise):
    found = _offered(
        ("alt: bis 30.04.26 (ersetzt)", "neu: ab 01.05.26", rise), (735, 768, 33), (728, 761, 33), (721, 754, 33)
    )
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("E3", "E4", "E5"), "accepted")


def test_a_third_figure_that_is_no_difference_is_asked_about():
    found = _offered(
        ("alt: bis 30.04.26 (ersetzt)", "neu: ab 01.05.26", "+ $"), (735, 768, 41), (728, 761, 33), (721, 754, 60)
    )
    assert "accepted" not in {str(line.state) for line in found.values()}
