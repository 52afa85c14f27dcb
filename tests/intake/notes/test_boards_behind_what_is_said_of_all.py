"""A board named behind what a note says of all, with another lead time, smallest order or last day of its own."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1, GD2 = ["GC1", 450, 300, 1100], ["GD2", 480, 350, 760]


def both(text, *, above=False):
    around = ([[text]], []) if above else ([], [[text]])
    return lines([*around[0], HEAD, GC1, GD2, *around[1]]).values()


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 4 weeks, GD2 ex stock", "Lead time 4 weeks; GD2 from stock", "Lieferzeit 4 Wochen (GD2 ab Lager)",
        "Lieferzeit 4 Wochen, außer GD2 ab Lager", "Délai 4 semaines, GD2 sur stock", "Plazo 4 semanas; GD2 en stock",
        "Leveranstid 4 veckor, GD2 från lager", "Lead time 4 weeks; 350 g/m² from stock",
    ],
)  # fmt: skip
@pytest.mark.parametrize("above", [False, True])
def test_a_board_from_stock(text, above):
    gc1, gd2 = both(text, above=above)
    assert (gc1.offer.lead_days, gd2.offer.lead_days) == ((28, 28), (0, 0))


@pytest.mark.parametrize(
    "text", ["Lead time 4 weeks, ex stock Hamburg", "Lieferzeit 4 Wochen, GC1 und GD2 frei Haus", "Délai 4 semaines"]
)
def test_a_lead_time_of_all(text):
    for line in both(text):
        assert line.offer.lead_days == (28, 28)


def test_several_boards_from_stock():
    assert [line.offer.lead_days for line in both("Lieferzeit 4 Wochen, GC1 und GD2 ab Lager")] == [(0, 0), (0, 0)]


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Valid until 15 December 2026, GD2 until 30 November 2026", date(2026, 11, 30)),
        ("Preise gültig bis 15.12.2026; GD2 bis 30.11.2026", date(2026, 11, 30)),
        ("Prix valables jusqu'au 15 décembre 2026 (GD2 : 30 novembre)", None),
        ("Oferta válida hasta el 15 de diciembre de 2026 (GD2: 30 de noviembre)", None),
        ("Priserna gäller t.o.m. 2026-12-15, GD2 t.o.m. 2026-11-30", date(2026, 11, 30)),
        ("Valid until 15 December 2026 (GC1 and GD2)", date(2026, 12, 15)),
    ],
)
def test_a_board_with_a_last_day_of_its_own(text, day):
    gc1, gd2 = both(text)
    assert (gc1.offer.valid_until, gd2.offer.valid_until) == (date(2026, 12, 15), day)
    assert ("validity-unread" in codes(gd2)) == (day is None)


def test_a_board_with_a_smallest_order_of_its_own():
    for text in ("Minimum order 5 t, GD2 2 t", "Mindestmenge 5 t (GD2: 2 t)", "Minsta order 5 t; GD2 2 t"):
        assert [line.offer.minimum_kg for line in both(text)] == [5000, 2000]
