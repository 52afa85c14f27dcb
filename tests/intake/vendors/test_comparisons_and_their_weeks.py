"""Lead times in a comparison of vendors: whose each column or row of weeks and days is."""

from datetime import date

import pytest

from tests.intake.sheets import lines, merged

WEEKS = ["Sorte", "g/m²", "µm", "Fenwold Karton AG", "Lieferzeit", "Orrick Board AS", "Lieferzeit"]
IN_UNITS = [None, None, None, "EUR/t", "Wo.", "EUR/t", "Wo."]


def test_weeks_right_behind_each_price_are_its_own():
    found = lines([WEEKS, IN_UNITS, ["GC2", 230, 370, 1265, 4, 1248, 6], ["GC2", 275, 455, "–", None, 1236, 2]])
    assert [found[cell].offer.lead_days for cell in ("D3", "F3", "F4")] == [(28, 28), (42, 42), (14, 14)]


def test_weeks_right_before_each_price_are_its_own():
    head = ["Kvalitet", "g/m²", "µm", "Leveranstid veckor", "Fenwold AB SEK/t", "Leveranstid veckor", "Orrick AB SEK/t"]
    found = lines([head, ["GC2", 230, 370, 4, 12650, 6, 12480]])
    assert [found[cell].offer.lead_days for cell in ("E2", "G2")] == [(28, 28), (42, 42)]


def test_weeks_behind_several_prices_are_of_them_all():
    head = ["Qualité", "g/m²", "µm", "Départ usine €/t", "Rendu €/t", "Délai (semaines)"]
    found = lines([head, ["GC2", 230, 370, 1265, 1240, 4]])
    assert [found[cell].offer.lead_days for cell in ("D2", "E2")] == [(28, 28), (28, 28)]


def test_a_lead_time_beside_delivered_prices_is_of_the_others_too():
    rows = [
        ["Board", "Thickness", "Basis weight", "Price", None, "Time"],
        [None, None, None, "FOB mill", "Delivered", None],
        [None, "pt", "lb/MSF", "US$/ST", "US$/ST", "weeks"],
        ["CUK", 18, 74, 1062, 1101, 6],
    ]
    found = lines(rows, merged=merged((0, 3, 0, 4), (1, 4, 1, 5)))
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42)]


def test_weeks_between_two_vendors_prices_are_the_firsts():
    head = ["Grade", "g/m²", "µm", "Fenwold Ltd EUR/t", "Lead time (weeks)", "Orrick Ltd EUR/t"]
    found = lines([head, ["GC2", 230, 370, 1265, 6, 1248]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), None]
    one_vendor = [*head[:3], "EXW EUR/t", head[4], "Delivered EUR/t"]
    found = lines([one_vendor, ["GC2", 230, 370, 1265, 6, 1248]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42)]


def test_a_price_under_no_name_has_no_weeks_from_under_anothers():
    head = ["Grade", "g/m²", "µm", "EUR/t", "Orrick Ltd", None]
    rows = [head, [None, None, None, None, "EUR/t", "Lead time (weeks)"], ["GC2", 230, 370, 1265, 1248, 6]]
    found = lines(rows, merged=merged((0, 4, 0, 5)))
    assert [found[cell].offer.lead_days for cell in ("D3", "E3")] == [None, (42, 42)]


def test_weeks_behind_two_prices_of_each_vendor_are_of_both():
    units = ["EUR/t", "USD/t", "Lead time (weeks)"]
    head = ["Grade", "g/m²", "µm", "Fenwold Ltd", None, None, "Orrick Ltd", None, None]
    rows = [head, [None, None, None, *units, *units], ["GC2", 230, 370, 1265, 1390, 6, 1248, 1370, 3]]
    found = lines(rows, merged=merged((0, 3, 0, 5), (0, 6, 0, 8)))
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42), (21, 21), (21, 21)]
    one = ["Fenwold Ltd EUR/t", "Fenwold Ltd USD/t", "Lead time", "Orrick Ltd EUR/t", "Orrick Ltd USD/t", "Lead time"]
    found = lines([[*head[:3], *one], ["GC2", 230, 370, 1265, 1390, "6 weeks", 1248, 1370, "3 weeks"]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42), (21, 21), (21, 21)]


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
