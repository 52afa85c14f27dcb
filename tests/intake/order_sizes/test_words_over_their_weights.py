"""Order sizes over columns whose words stand over their weights, also where these are in 'ST' or the last is open."""

import pytest

from tests.intake.sheets import codes, lines

POINTS = ["Grade", "Caliper (pt)"]
METRIC = ["Grade", "g/m²"]
SHORT_TONS = "Prices USD/short ton"
FIVE, TEN, TWENTY = 4536, 9072, 18144
"""Kilograms."""


def read(upper, lower, *, unit=SHORT_TONS, head=POINTS):
    prices = [1250, 1200, 1150][: len(upper)]
    measure = 18 if head is POINTS else 300
    return list(lines([[*head, *upper], ["", "", *lower], ["SBS", measure, *prices], [unit]]).values())


def sizes(found):
    assert {str(line.state) for line in found} == {"accepted"}
    return [
        tuple(None if kg is None else round(kg) for kg in (line.offer.from_kg, line.offer.below_kg)) for line in found
    ]


@pytest.mark.parametrize(
    ("upper", "lower"),
    [
        (["up to", "over"], ["5 ST", "5 ST"]),
        (["under", "over"], ["5 ST", "5 ST"]),
        (["less than", "more than"], ["5 ST", "5 ST"]),
        (["below", "above"], ["5 short tons", "5 short tons"]),
    ],
)
def test_limit_stands_over_its_weight(upper, lower):
    assert sizes(read(upper, lower)) == [(None, FIVE), (FIVE, None)]


def test_each_limit_is_of_its_column():
    found = read(["up to", "up to", "over"], ["5 ST", "20 ST", "20 ST"])
    assert sizes(found) == [(None, FIVE), (FIVE, TWENTY), (TWENTY, None)]


@pytest.mark.parametrize(
    ("upper", "lower"),
    [(["bis", "über"], ["5 St", "5 St"]), (["under", "över"], ["5 st", "5 st"]), (["up to", "over"], ["5 rolls"] * 2)],
)
def test_what_may_be_pieces_is_asked_about(upper, lower):
    found = read(upper, lower, unit="EUR/tonne", head=METRIC)
    assert len(found) == len(upper)
    assert all("bracket-unread" in codes(line) for line in found)


@pytest.mark.parametrize("last", ["and up", "no limit", "open", "no max", None])
@pytest.mark.parametrize("ton", ["ST", "short tons"])
def test_last_size_may_have_no_end(ton, last):
    upper = [f"Min {weight} {ton}" for weight in (5, 10, 20)]
    found = read(upper, [f"max 9.9 {ton}", f"max 19.9 {ton}", last])
    assert [str(line.offer.price) for line in found] == ["1250", "1200", "1150"]
    assert sizes(found) == [(FIVE, TEN), (TEN, TWENTY), (TWENTY, None)]


@pytest.mark.parametrize(
    ("least", "most", "last"),
    [
        ("Min. {} t", "max. {} t", "und mehr"),
        ("mind. {} t", "max. {} t", "kein Maximum"),
        ("Min. {} t", "max. {} t", "sans limite"),
        ("Mín. {} t", "máx. {} t", "sin límite"),
        ("Min {} t", "max {} t", "ingen gräns"),
    ],
)
def test_words_for_no_end_in_every_language(least, most, last):
    upper = [least.format(weight) for weight in (5, 10, 20)]
    found = read(upper, [most.format("9,9"), most.format("19,9"), last], unit="EUR/tonne", head=METRIC)
    assert sizes(found) == [(5000, 10000), (10000, 20000), (20000, None)]
