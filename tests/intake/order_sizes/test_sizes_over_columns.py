"""Order sizes over columns of prices whose unit, and sometimes whose sign, stands in the heading above."""

import itertools
from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.intake.values.orders.counted_orders import weighs_deliveries
from tracker.trade.offer import State

BOARD = ["SBS C1S", 18, 75]
LB = Decimal("0.45359237")


def sized(heading, sizes, prices=(62, 60, 58), title="USD per cwt"):
    """The (from, below) of each price in kg, by its order."""
    rows = [[title], ["Board", "pt", "lb/MSF", heading], [None, None, None, *sizes], [*BOARD, *prices]]
    found = lines(rows, merged=merged((1, 3, 1, 2 + len(sizes)))).values()
    return [(line.offer.from_kg, line.offer.below_kg) if line.state is State.ACCEPTED else "asked" for line in found]


@pytest.mark.parametrize(
    ("heading", "sizes"),
    [
        ("Order quantity (lb)", ("Under 20,000", "20,000 - 39,999", "40,000 & over")),
        ("Order quantity (lb)", ("< 20,000", "20,000 to 39,999", "40,000+")),
        ("Order size, lb", ("below 20,000", "20,000 up to 39,999", "40,000 or more")),
    ],
)
def test_sizes_take_the_unit_of_their_heading(heading, sizes):
    least, most = 20000 * LB, 40000 * LB
    assert sized(heading, sizes) == [(None, least), (least, most), (most, None)]


@pytest.mark.parametrize("title", ["USD/cwt, by order size in pounds", "USD per cwt by quantity (lbs)"])
def test_bare_sizes_take_the_unit_that_a_title_gives_them(title):
    sizes = ("5,000 - 9,999", "10,000 - 39,999", "40,000 +")
    rows = [[title], [], ["Board", "pt", "lb/MSF", *sizes], [*BOARD, 62, 60, 58]]
    found = [(line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    assert found == [(5000 * LB, 10000 * LB), (10000 * LB, 40000 * LB), (40000 * LB, None)]


@pytest.mark.parametrize("heading", ["Order quantity from (kg)", "Order quantity (kg)"])
def test_bare_figures_begin_where_they_say_and_end_at_the_next(heading):
    assert sized(heading, (1000, 5000, 20000)) == [(1000, 5000), (5000, 20000), (20000, None)]


def test_bare_figures_under_up_to_end_there():
    found = sized("Order quantity up to (kg)", (1000, 5000, 20000))
    step = Decimal("1.000001")
    assert [from_kg for from_kg, _ in found] == [None, *(below for _, below in found[:2])]
    assert all(size <= below < size * step for size, (_, below) in zip((1000, 5000, 20000), found, strict=True))


def test_bare_figures_without_a_unit_are_asked():
    assert sized("Order quantity", (1000, 5000, 20000)) == ["asked"] * 3


def test_the_same_sizes_under_two_places_are_two_offers():
    rows = [
        ["USD per cwt"], ["Board", "pt", "lb/MSF", "East", None, "West", None],
        [None, None, None, "< 20,000 lb", "≥ 20,000 lb", "< 20,000 lb", "≥ 20,000 lb"], [*BOARD, 64, 62, 66, 63],
    ]  # fmt: skip
    found = lines(rows, merged=merged((1, 3, 1, 4), (1, 5, 1, 6))).values()
    assert [(line.state, line.offer.price) for line in found] == [(State.ACCEPTED, price) for price in (64, 62, 66, 63)]


def test_a_unit_over_spans_heads_order_sizes():
    rows = [["SBS C1S", 18, 75, size, price] for size, price in (("1-4", 1290), ("5-19", 1240), ("20+", 1190))]
    found = lines([["US$/ST. Ton = 2,000 lb"], ["Board", "pt", "lb/MSF", "Tons", "Price"], *rows])
    assert [line.offer.below_kg for line in found.values()] == [Decimal("4535.9237"), Decimal("18143.6948"), None]
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_an_order_from_a_weight_to_a_truckload_ends_at_what_one_weighs():
    heads = ["Board", "pt", "lb/MSF", "under 5 ST", "5 short tons to truckload", "Truckload (20 short tons)"]
    found = lines([["USD/ST"], heads, ["SBS C1S", 18, 75, 1290, 1240, 1190]]).values()
    assert {str(line.state) for line in found} == {"accepted"}
    assert [line.offer.below_kg for line in found] == [Decimal("4535.9237"), Decimal("18143.6948"), None]
    assert [line.offer.from_kg for line in found] == [None, Decimal("4535.9237"), Decimal("18143.6948")]


@pytest.mark.parametrize(("title", "measure", "weight"), [("USD/ST", "pt", "lb/MSF"), ("EUR/t", "µm", "g/m²")])
def test_st_is_a_short_ton_in_a_list_in_pounds_and_pieces_in_a_metric_one(title, measure, weight):
    figures = (18, 75) if measure == "pt" else (400, 300)
    rows = [[title], ["Board", measure, weight, "Order", "Price"], ["SBS C1S", *figures, "10 ST and more", 1100]]
    (line,) = lines(rows).values()
    expected = (State.ACCEPTED, Decimal("9071.8474")) if measure == "pt" else (State.QUESTION, None)
    assert (line.state, line.offer.from_kg) == expected


@pytest.mark.parametrize(
    "sizes",
    [
        ("Under 10M lb", "10M - 20M lb", "20M lb +"),
        ("< 10k lb", "10k-20k lb", "20k lb +"),
        ("up to 9,999#", "10M-19,999#", "20M# & over"),
        ("under 10M lb", "10-20M lb", "20M+ lb"),
    ],
)
def test_thousands_of_pounds_may_name_their_unit_once(sizes):
    rows = [["USD per cwt"], ["Board", "pt", "lb/MSF", *sizes], [*BOARD, 65, 63, 61]]
    found = [(line.state, line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    bounds = [None, 10000 * LB, 20000 * LB, None]
    assert found == [(State.ACCEPTED, *each) for each in itertools.pairwise(bounds)]


def test_a_capital_t_is_a_short_ton_in_both_limits_among_pounds_and_points():
    rows = [["USD per short ton"], ["Board", "pt", "lb/MSF", "1-4 T", "5-9 T", "10 T+"], [*BOARD, 1300, 1250, 1200]]
    tons = 2000 * LB
    found = [(line.state, line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    assert found == [
        (State.ACCEPTED, *limits) for limits in ((tons, 5 * tons), (5 * tons, 10 * tons), (10 * tons, None))
    ]


def test_prices_told_apart_by_letters_alone_are_asked():
    rows = [["CAD per tonne"], ["Grade", "pt", "g/m²", "A", "B", "C"], ["SBS C1S", 14, 290, 1760, 1715, 1680]]
    assert [line.state for line in lines(rows).values()] == [State.QUESTION] * 3


@pytest.mark.parametrize(
    ("heads", "expected"),
    [
        (("Kleinmenge\n(< 1 t)", "Normalmenge\n(1 bis 10 t)", "Großmenge\n(> 10 t)"),
         [(None, 1000), (1000, 10000), (10000, None)]),
        (("Kleinmengen bis 999 kg", "Großmengen ab 1000 kg"), [(None, 1000), (1000, None)]),
        (("Stufe 1: < 5 t", "Stufe 2: ab 5 t"), [(None, 5000), (5000, None)]),
        (("Staffel 1: bis 5 t", "Staffel 2: über 5 t"), [(None, 5000), (5000, None)]),
        (("Bulk order (2 t and over)", "Small order (< 2 t)"), [(2000, None), (None, 2000)]),
    ],
)  # fmt: skip
def test_order_sizes_behind_words_and_behind_the_number_of_a_step(heads, expected):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, *range(1290, 1290 - 20 * len(heads), -20)]]
    found = [line.offer for line in lines(rows).values()]
    assert [(offer.from_kg, offer.below_kg) for offer in found] == expected


@pytest.mark.parametrize("heads", [("Kleinmenge", "Großmenge"), ("Småorder", "Storparti"), ("Ware A 5 t", "B 5 t")])
def test_an_order_size_by_name_alone_is_asked(heads):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, 1290, 1270]]
    found = lines(rows).values()
    assert [(str(line.state), "bracket-unread" in codes(line)) for line in found] == [("question", True)] * 2


def test_loads_across_weigh_what_the_note_says_and_a_pallet_is_asked():
    """'Palette' beside them is an order size too: neither the sheets it holds nor what a price is per."""
    head = ["Qualité", "g/m²", "µm", "Camion complet", "Demi-camion", "Palette"]
    boards = [["GC1", 250, 415, 1262, 1300, 1357], ["GD2", 350, 465, 838, 876, 933]]
    found = list(lines([["EUR/t. Camion complet = 24 t, demi-camion = 12 t."], head, *boards]).values())
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found[:2]] == [(24000, None), (12000, 24000)]
    assert [codes(line) for line in found] == [set(), set(), {"bracket-unread"}] * 2


def test_one_pound_short_of_a_round_size_ends_at_the_round_one():
    """Alone and beside '40,000 & over' a bracket is the same one, so that a vendor's next list replaces the last."""
    heads = [["USD per cwt"], ["Board", "pt", "lb/MSF", "Price, 20,000 - 39,999 lb"]]
    (alone,) = lines([*heads, [*BOARD, 60]]).values()
    beside = sized("Order quantity (lb)", ("20,000 - 39,999", "40,000 & over"), prices=(60, 58))[0]
    assert (alone.offer.from_kg, alone.offer.below_kg) == beside == (20000 * LB, 40000 * LB)


@pytest.mark.parametrize(
    "key",
    [
        [["A = less than 10,000 lb"], ["B = 10,000 to 39,999 lb"], ["C = 40,000 lb and over"]],
        [["A = less than 10,000 lb; B = 10,000 to 39,999 lb; C = 40,000 lb and over"]],
        [["A", "less than 10,000 lb"], ["B", "10,000 to 39,999 lb"], ["C", "40,000 lb and over"]],
    ],
)
def test_letters_over_prices_stand_for_the_order_sizes_of_a_key(key):
    rows = [["USD per cwt"], [], ["Board", "pt", "lb/MSF", "A", "B", "C"], [*BOARD, 62, 60, 58], [], *key]
    found = [(line.state, line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    least, most = 10000 * LB, 40000 * LB
    sizes = ((None, least), (least, most), (most, None))
    assert found == [(State.ACCEPTED, *size) for size in sizes]


@pytest.mark.parametrize("joint", ["to", "-", "–", "up to"])
def test_a_size_that_goes_up_to_a_load_ends_where_the_file_says_loads_begin(joint):
    head = ["Grade", "pt", "lb/MSF", "Quantity", "US$ per short ton"]
    rows = [head, [*BOARD, "under 20,000 lb", 1290], [None, None, None, f"20,000 lb {joint} T/L", 1255]]
    rows.append([None, None, None, "T/L and over", 1230])
    found = lines([*rows, ["T/L = one truckload of 42,000 lb."]])
    told = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert told == [(None, 20000 * LB), (20000 * LB, 42000 * LB), (42000 * LB, None)]
    # Without a word on what a load weighs it is asked.
    assert "bracket-unread" in codes(lines(rows)["E3"])


@pytest.mark.parametrize(
    "head",
    ["Tonnes per delivery", "Tonnes/delivery", "Tonnen je Lieferung", "Tonnes par livraison", "Toneladas por entrega",
     "Ton per leverans", "Delivery (tonnes)", "Livraison en tonnes"],
)  # fmt: skip
def test_how_much_goes_out_at_once_is_an_order_size_and_no_time(head):
    assert weighs_deliveries(head)
    sizes = ["Grammage", "Microns", "1 to under 3", "3 and above", "Delivery"]
    rows = [["EUR per tonne"], ["GC2 folding boxboard", None, head], sizes, [240, 380, 1390, 1310, "3-5 days"]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.from_kg, offer.below_kg, offer.lead_days) for offer in offers] in (
        [(1000, 3000, (3, 5)), (3000, None, (3, 5))], [(907, 2721, (3, 5)), (2721, None, (3, 5))],
    )  # fmt: skip


@pytest.mark.parametrize(
    "head", ["Delivery per tonne", "Delivery/t", "Lieferzeit (T)", "Delivery (days)", "Lieferung", "Delivery EUR/t"]
)
def test_a_time_or_a_freight_is_no_order_size(head):
    assert not weighs_deliveries(head)
