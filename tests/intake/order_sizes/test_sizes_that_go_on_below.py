"""Order sizes that go on in the next row or line: both together are the size; one that breaks off is asked about."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.broken_sizes import breaks_off

_LB = 0.45359237


def _limits(found):
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]


def _in_rows(title, *pieces, head="Order size", boards=(("GC1", 405, 250), ("GC2", 495, 300))):
    """Two boards with a price for each size, whose second half stands in the row below."""
    rows = []
    for board in boards:
        for place, (first, second) in enumerate(pieces):
            rows.append([*(board if place == 0 else [None] * 3), first, 1300 - 40 * place])
            rows += [[None, None, None, second]] if second else []
    return lines([[title], [], ["Board", "µm", "g/m²", head, "€/t"], *rows])


_SIZES = [(3000, 10000), (10000, None)]


@pytest.mark.parametrize(
    "pieces",
    [
        [("from 3 t", "to less than 10 t"), ("10 t", "and over")], [("3 t to", "under 10 t"), ("10 t and", "over")],
        [("3 t and up", "to below 10 t"), ("10 t", "or more")], [("von 3 t", "bis unter 10 t"), ("10 t", "und mehr")],
        [("3 t bis", "unter 10 t"), ("10 t und", "darüber")], [("de 3 t", "à moins de 10 t"), ("10 t", "et plus")],
        [("de 3 t a", "menos de 10 t"), ("10 t", "o más")],
        [("från 3 ton", "till under 10 ton"), ("10 ton", "och däröver")],
    ],
)  # fmt: skip
def test_both_rows_together_are_the_size(pieces):
    assert _limits(_in_rows("Price list in g/m² and µm", *pieces)) == _SIZES * 2


def test_a_limit_may_stand_below_its_word():
    found = _in_rows("Price list in g/m² and µm", ("under", "10 t"), ("from", "10 t"))
    assert _limits(found) == [(None, 10000), (10000, None)] * 2


def test_the_unit_may_stand_in_the_head():
    found = _in_rows("Price list", ("3,000 to", "under 10,000"), (10000, "and over"), head="Order size, kg")
    assert _limits(found) == _SIZES * 2


def test_a_size_without_a_price_is_no_part_of_the_one_above():
    found = _in_rows("Price list", ("under 3 t", "up to 10 t"), ("10 t +", None))
    assert next((line.offer.from_kg, line.offer.below_kg) for line in found.values()) == (None, 3000)
    found = _in_rows("Price list", ("from 3 t", "from 5 t"), ("10 t +", None))
    assert next(iter(found.values())).offer.below_kg != 5000


def _across(*heads):
    rows = [["Board", "µm", "g/m²", *(first for first, _ in heads)], [None, None, None, *(last for _, last in heads)]]
    return lines([["Price list, €/t"], [], *rows, ["GC1", 405, 250, 1300, 1260], ["GC2", 495, 300, 1280, 1240]])


@pytest.mark.parametrize(
    "heads",
    [
        [("3 t to", "under 10 t"), ("10 t", "and over")], [("3 –", "9.999 t"), ("10 t", "+")],
        [("von 3 t", "bis unter 10 t"), ("10 t", "und mehr")], [("de 3 t à", "moins de 10 t"), ("10 t", "et plus")],
        [("3 ton till", "under 10 ton"), ("10 ton", "och däröver")],
    ],
)  # fmt: skip
def test_heads_that_go_on_in_the_next_row_are_one_size(heads):
    assert [(start, end and round(end)) for start, end in _limits(_across(*heads))] == _SIZES * 2


def test_a_head_over_several_columns_may_go_on_as_well():
    rows = [
        ["Prices in €/t"], [], [None, None, None, "3 t to"], [None, None, None, "under 10 t"],
        ["Board", "µm", "g/m²", "Rolls €/t", "Sheets €/t"], ["GC1", 405, 250, 1300, 1360],
    ]  # fmt: skip
    assert _limits(lines(rows)) == [(3000, 10000)] * 2


def test_a_head_that_breaks_off_is_asked_about():
    rows = [["Board", "pt", "lb/MSF", "10,000 lb to", "20,000 lb +"], ["SBS", 16, 67, 63.9, 61.4]]
    first, second = lines([["Prices in US$/cwt"], [], *rows]).values()
    assert "bracket-unread" in codes(first)
    assert round(float(second.offer.from_kg) / _LB) == 20000


@pytest.mark.parametrize(
    "text", ["5 to", "ab 5 to", "bis 5 to", "5 t or less", "20,000 lb and over", "5 t max.", "10 t"]
)
def test_a_whole_size_does_not_break_off(text):
    assert not breaks_off(text)


def test_article_codes_are_no_sizes_that_break_off():
    """As in a CSV file, where every figure is a text; 'A' leads to a limit in Spanish."""
    rows = [["Art.-Nr.", "Sorte", "g/m²", "µm", "EUR/t"], ["5377-A", "GC1", "215", "365", "1249"],
            ["5384-A", "GC1", "235", "395", "1231"], ["5391-A", "GD2", "280", "365", "905"]]  # fmt: skip
    assert _limits(lines(rows)) == [(None, None)] * 3


def test_the_sizes_of_two_prices_are_not_one():
    rows = [["Material", "µm", "g/m²", "Volumen", "€/t"], ["GC2", "340", "215", "más de 20 t", "1130"],
            ["GC2", "410", "235", "hasta 3 t", "1225"], ["GC2", "410", "235", "más de 3 t", "1190"]]  # fmt: skip
    assert _limits(lines(rows)) == [(20000, None), (None, 3000), (3000, None)]


@pytest.mark.parametrize("withheld", ["call", None])
@pytest.mark.parametrize(
    ("begins", "ends", "unit"),
    [
        ("from 3 t", "up to 10 t", "€/t"), ("ab 3 t", "bis 10 t", "€/t"), ("de 3 t", "jusqu'à 10 t", "€/t"),
        ("desde 3 t", "hasta 10 t", "€/t"), ("från 3 ton", "till 10 ton", "SEK/t"),
    ],
)  # fmt: skip
def test_the_size_of_the_next_board_is_no_end_of_this_one(begins, ends, unit, withheld):
    rows = [["Price list in g/m² and µm"], ["Board", "µm", "g/m²", "Order size", unit],
            ["GC1", 405, 250, begins, 1300], ["GD2", None, None, ends, withheld],
            ["GT2", 405, 300, begins, 900]]  # fmt: skip
    first = next(iter(lines(rows).values()))
    assert (str(first.state), first.offer.from_kg, first.offer.below_kg) == ("accepted", 3000, None)


@pytest.mark.parametrize(
    ("above", "below", "start"),
    [("ab 10 t", "bis 10 t", 10000), ("from 10 t", "less than 10 t", 10000), ("over 3 t", "under 3 t", 3000),
     ("de 10 t", "jusqu'à 10 t", 10000), ("från 10 ton", "under 10 ton", 10000)],
)  # fmt: skip
def test_sizes_that_only_touch_are_two(above, below, start):
    found = _in_rows("Price list in g/m² and µm", (above, below))
    assert _limits(found)[0] == (start, None)


@pytest.mark.parametrize(
    ("head", "pieces"),
    [
        ("Order size", [("3 t –", "9.999 t"), ("10 t", "+")]),
        ("Order size, kg", [("3,000 -", "9,999"), ("10,000 +", "")]),
        ("Menge", [("3 t -", "9,999 t"), ("10 t +", "")]),
    ],
)  # fmt: skip
def test_a_dash_leads_to_the_limit_in_the_next_row(head, pieces):
    found = _in_rows("Price list in g/m² and µm", *pieces, head=head, boards=[("GC1", 405, 250)])
    assert [(start, end and round(end)) for start, end in _limits(found)] == [(3000, 10000), (10000, None)]


def test_a_dash_before_another_row_leaves_the_size_open():
    found = _in_rows("Price list in g/m² and µm", ("10 t –", None), boards=[("GC1", 405, 250)])
    assert _limits(found) == [(10000, None)]
