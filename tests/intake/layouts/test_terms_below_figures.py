"""Terms in a row of their own right below each board, under its weight, caliper or price, are that board's."""

import pytest

from tests.intake.sheets import codes, lines

METRIC, POINTS = ["Grade", "Weight g/m²", "Price EUR/t"], ["Grade", "Caliper (pt)", "Price USD/short ton"]
PAIRS = {
    "en": ("Lead time 4 weeks, FOB mill", "Lead time 3 weeks, delivered"),
    "de": ("Lieferzeit 4 Wochen, ab Werk", "Lieferzeit 3 Wochen, frei Haus"),
    "fr": ("Délai 4 semaines, départ usine", "Délai 3 semaines, franco"),
    "es": ("Plazo 4 semanas, franco fábrica", "Plazo 3 semanas, portes pagados"),
    "sv": ("Leveranstid 4 veckor, fritt fabrik", "Leveranstid 3 veckor, fritt levererat"),
}
SLOW, FAST = ((28, 28), False), ((21, 21), True)


def terms(*rows):
    return [(line.offer.lead_days, line.offer.delivered) for line in lines(list(rows)).values()]


@pytest.mark.parametrize("at", [1, 2])
@pytest.mark.parametrize("said", PAIRS.values(), ids=PAIRS)
@pytest.mark.parametrize("gap", [(), ([],)])
def test_each_board_has_what_stands_below_it(said, at, gap):
    first, second = ([*[""] * at, one] for one in said)
    assert terms(METRIC, ["GC1", 250, 1200], first, *gap, ["GD2", 300, 900], second) == [SLOW, FAST]
    three = terms(METRIC, ["GC1", 250, 1200], first, *gap, ["GD2", 300, 900], second, *gap, ["GZ", 280, 1300], first)
    assert three == [SLOW, FAST, SLOW]


@pytest.mark.parametrize("said", PAIRS.values(), ids=PAIRS)
def test_without_heads_too(said):
    first, second = (["", one] for one in said)
    rows = ["GC1", "250 g/m²", "€1200/t"], first, ["GD2", "300 g/m²", "€900/t"], second
    assert terms(["Moosbrunner Karton GmbH"], *rows) == [SLOW, FAST]


@pytest.mark.parametrize("said", PAIRS.values(), ids=PAIRS)
def test_above_each_board_they_are_those_of_the_board_below(said):
    first, second = (["", one] for one in said)
    assert terms(METRIC, first, ["GC1", 250, 1200], second, ["GD2", 300, 900]) == [SLOW, FAST]


TIMES = {
    "en": ("Lead time 4 weeks", "Lead time 3 weeks"), "de": ("Lieferzeit 4 Wochen", "Lieferzeit 3 Wochen"),
    "fr": ("Délai 4 semaines", "Délai 3 semaines"), "es": ("Plazo 4 semanas", "Plazo 3 semanas"),
    "sv": ("Leveranstid 4 veckor", "Leveranstid 3 veckor"),
}  # fmt: skip


@pytest.mark.parametrize("said", TIMES.values(), ids=TIMES)
def test_below_a_bare_caliper_they_are_no_part_of_it(said):
    rows = ["SBS", 18, 1200], ["", said[0]], ["CUK", 20, 900], ["", said[1]], ["CRB", 22, 800], ["", said[0]]
    found = list(lines([POINTS, *rows]).values())
    assert [round(float(line.offer.caliper_um)) for line in found] == [457, 508, 559]
    assert [line.offer.lead_days for line in found] == [(28, 28), (21, 21), (28, 28)]
    assert not any("caliper-unknown" in codes(line) for line in found)


@pytest.mark.parametrize(
    "said",
    [("FOB mill", "Delivered"), ("ab Werk", "frei Haus"), ("départ usine", "franco"),
     ("franco fábrica", "portes pagados"), ("fritt fabrik", "fritt levererat")],
)  # fmt: skip
def test_nor_do_they_head_prices_there(said):
    rows = ["SBS", 18, 1200], ["", said[0]], ["CUK", 20, 900], ["", said[1]]
    assert terms(POINTS, *rows) == [(None, False), (None, True)]
    assert terms(POINTS, rows[0], rows[3], rows[2], rows[1]) == [(None, True), (None, False)]


def test_units_below_prices_are_still_theirs():
    found = lines([["Grade", "Caliper (pt)", "Price"], ["SBS", 18, 60], ["", "", "USD/cwt"], ["CUK", 20, 900],
                   ["", "", "USD/ST"]])  # fmt: skip
    assert [line.offer.basis for line in found.values()] == ["cwt", "short_ton"]


@pytest.mark.parametrize("said", PAIRS.values(), ids=PAIRS)
def test_some_boards_may_have_none(said):
    first, second = (["", one] for one in said)
    rows = ["GC1", 250, 1200], first, ["GD2", 300, 900], ["GZ", 280, 1300], second
    assert terms(METRIC, *rows) == [SLOW, (None, None), FAST]
    # Below the last board alone they are a note on all.
    assert terms(METRIC, *rows[:1], *rows[2:]) == [FAST] * 3
