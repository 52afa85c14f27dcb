"""Rows of terms among the prices of several columns: below each board its own, in one place all boards'."""

import datetime

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["EUR/t", "250 g/m²", "300 g/m²", "350 g/m²"]
_GC1, _GD2 = ["GC1", 1200, 1180, 1160], ["GD2", 900, 880, 860]
_WEEKS = [
    ("Lead time", "{} weeks"), ("Lieferzeit", "{} Wochen"), ("Délai", "{} semaines"), ("Plazo", "{} semanas"),
    ("Leveranstid", "{} veckor"),
]  # fmt: skip
_LEASTS = ["Minimum order", "MOQ", "Mindestmenge", "Minimum de commande", "Pedido mínimo", "Minsta order"]


def _offers(*rows):
    return [line.offer for line in lines([_HEAD, *rows]).values()]


def _alike(label, text):
    return [label, text, text, text]


@pytest.mark.parametrize(("label", "weeks"), _WEEKS)
def test_lead_times_below_each_board_are_its_own(label, weeks):
    found = _offers(_GC1, _alike(label, weeks.format(3)), _GD2, _alike(label, weeks.format(5)))
    assert [offer.lead_days for offer in found] == [(21, 21)] * 3 + [(35, 35)] * 3


@pytest.mark.parametrize(("label", "weeks"), _WEEKS)
def test_above_each_board_they_are_its_own_too(label, weeks):
    found = _offers(_alike(label, weeks.format(3)), _GC1, _alike(label, weeks.format(5)), _GD2)
    assert [offer.lead_days for offer in found] == [(21, 21)] * 3 + [(35, 35)] * 3


def test_bare_figures_under_a_label_with_a_unit_are_those_of_the_board_above():
    found = _offers(_GC1, ["Lead time (weeks)", 3, 3, 4], _GD2, ["Lead time (weeks)", 5, 5, 6])
    assert [offer.lead_days for offer in found] == [(21, 21), (21, 21), (28, 28), (35, 35), (35, 35), (42, 42)]


@pytest.mark.parametrize("label", _LEASTS)
def test_so_are_smallest_orders(label):
    found = _offers(_GC1, _alike(label, "5 t"), _GD2, _alike(label, "10 t"))
    assert [offer.minimum_kg for offer in found] == [5000] * 3 + [10_000] * 3
    assert all(offer.from_kg is None and offer.currency == "EUR" for offer in found)


def test_so_are_delivery_and_validity():
    found = _offers(_GC1, _alike("Delivery", "delivered"), _GD2, _alike("Delivery", "FOB mill"))
    assert [offer.delivered for offer in found] == [True] * 3 + [False] * 3
    days = "31 December 2026", "31 January 2027"
    found = _offers(_GC1, _alike("Valid until", days[0]), _GD2, _alike("Valid until", days[1]))
    assert [offer.valid_until for offer in found] == [datetime.date(2026, 12, 31)] * 3 + [
        datetime.date(2027, 1, 31)
    ] * 3


@pytest.mark.parametrize(("label", "weeks"), _WEEKS)
@pytest.mark.parametrize("last", [True, False])
def test_one_row_above_or_below_all_boards_is_of_all(label, weeks, last):
    row = _alike(label, weeks.format(3))
    found = _offers(*((_GC1, _GD2, row) if last else (row, _GC1, _GD2)))
    assert [offer.lead_days for offer in found] == [(21, 21)] * 6


@pytest.mark.parametrize(("label", "text", "code"), [
    ("Lead time", "3 weeks", "lead-time-unread"), ("Minimum order", "5 t", "bracket-unread"),
])  # fmt: skip
def test_in_the_midst_of_the_boards_it_is_open_whose_it_is(label, text, code):
    found = lines([_HEAD, _GC1, _alike(label, text), _GD2])
    assert len(found) == 6
    for line in found.values():
        assert (line.offer.lead_days, line.offer.minimum_kg) == (None, None)
        assert code in codes(line)


def test_below_several_boards_it_is_open_of_how_many_it_is():
    found = lines([_HEAD, _GC1, ["GT1", 1000, 990, 980], _alike("MOQ", "5 t"), _GD2, _alike("MOQ", "10 t")])
    assert [line.offer.minimum_kg for line in found.values()] == [None] * 6 + [10_000] * 3
    assert all("bracket-unread" in codes(line) for line in list(found.values())[:6])


def test_below_a_heading_it_is_that_of_the_whole_group():
    found = _offers(["Rolls"], _GC1, _GD2, _alike("MOQ", "5 t"), ["Sheets"], _GC1, _GD2, _alike("MOQ", "3 t"))
    assert [offer.minimum_kg for offer in found] == [5000] * 6 + [3000] * 6


@pytest.mark.parametrize("nothing", [None, "-", "–", "n/a"])
@pytest.mark.parametrize(("label", "text"), [
    *((label, weeks.format(3)) for label, weeks in _WEEKS), *((label, "5 t") for label in _LEASTS),
    ("Delivery", "FOB mill"), ("Lieferung", "frei Haus"),
])  # fmt: skip
def test_a_column_with_nothing_below_it_is_told_nothing(label, text, nothing):
    found = _offers(_GC1, [label, text, nothing, text])
    told = [(offer.lead_days, offer.minimum_kg, offer.delivered) for offer in found]
    assert told[0] == told[2] != (None, None, None)
    assert told[1] == (None, None, None)


def test_order_sizes_over_boards_named_whole_head_them():
    rows = [_HEAD, _GC1, ["MOQ", "5 t", "10 t", "20 t"], ["GD2 300 g/m²", 900, 880, 860]]
    assert [line.offer.from_kg for line in lines(rows).values()][3:] == [5000, 10_000, 20_000]


@pytest.mark.parametrize(
    ("label", "text"), [("Minimum order", "5 t"), ("Lieferzeit", "3 Wochen"), ("Délai", "3 semaines")]
)
def test_below_one_column_that_is_not_the_first_it_is_of_that_one(label, text):
    found = _offers(_GC1, _GD2, [label, None, text])
    told = [(offer.lead_days, offer.minimum_kg) for offer in found]
    assert told[1] == told[4] != (None, None)
    assert {told[place] for place in (0, 2, 3, 5)} == {(None, None)}


def test_below_the_first_it_may_be_told_of_all():
    assert [offer.minimum_kg for offer in _offers(_GC1, _GD2, ["Minimum order", "5 t"])] == [5000] * 6


def test_several_rows_below_each_board_are_all_its_own():
    below = [[_alike("Lead time", f"{weeks} weeks"), _alike("MOQ", f"{tons} t"), _alike("Delivery", term)]
             for weeks, tons, term in ((3, 5, "FOB mill"), (5, 10, "delivered"))]  # fmt: skip
    found = _offers(_GC1, *below[0], _GD2, *below[1])
    assert [(offer.lead_days, offer.minimum_kg, offer.delivered) for offer in found] == [
        *[((21, 21), 5000, False)] * 3, *[((35, 35), 10_000, True)] * 3,
    ]  # fmt: skip


@pytest.mark.parametrize("label", _LEASTS)
def test_smallest_orders_right_below_heads_of_measures_are_no_order_sizes(label):
    found = _offers([label, "5 t", "6 t", "8 t"], _GC1, _GD2)
    assert [offer.minimum_kg for offer in found] == [5000, 6000, 8000] * 2
    assert all(offer.from_kg is None for offer in found)


def test_terms_above_all_groups_are_those_of_a_group_without_its_own():
    groups = ["Rolls"], _GC1, ["Sheets"], _alike("Lead time", "2 weeks"), _GD2
    assert [offer.lead_days for offer in _offers(_alike("Lead time", "5 weeks"), *groups)] == [
        *[(35, 35)] * 3, *[(14, 14)] * 3,
    ]  # fmt: skip
