"""Lead times behind the boards that a sub-heading names: they hold for the rows below it, and end with it."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["µm", "g/m²", "EUR/t"]


def below(first, second, *above):
    """The lead times below the two headings; and whether any note tells of one unread."""
    rows = [["EUR/t"], *above, HEADS, [first], [405, 250, 1200], [490, 300, 1180], [second], [470, 350, 850]]
    found = list(lines(rows).values())
    assert len(found) == 3
    return [line.offer.lead_days for line in found], set().union(*map(codes, found))


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Solid bleached sulfate, coated one side, 3 weeks", "CUK (2 weeks)"),
        ("GC1 – 3 weeks", "GD2, 10 working days"),
        ("GC1 – 3 Wochen", "Graukarton (2 Wochen)"), ("GC1, 3 semaines", "GD2 (2 semaines)"),
        ("GC1, 3 semanas", "GD2 (2 semanas)"), ("GC1, 3 veckor", "GD2 (2 veckor)"),
        ("SBS - 3 weeks", "CUK: 2 weeks"), ("SBS 18 pt - 3 weeks", "Folding boxboard — 2 weeks"),
        ("GZ - 3 Wochen", "Graukarton: 2 Wochen"), ("SBS : 3 semaines", "GD – 2 semaines"),
        ("SBS: 3 semanas", "GD - 2 semanas"), ("SBS: 3 veckor", "GD - 2 veckor"),
    ],
)  # fmt: skip
def test_a_time_behind_the_board_is_its_lead_time(first, second):
    assert below(first, second) == ([(21, 21), (21, 21), (14, 14)], set())
    assert below(first, second, ["Lead time 8 weeks"])[0] == [(21, 21), (21, 21), (14, 14)]


@pytest.mark.parametrize(
    "heading", ["GD2 – ex stock", "Graukarton – ab Lager", "GD2, sur stock", "GD2, de stock", "GD2, från lager"]
)
def test_so_are_boards_from_stock(heading):
    assert below("GC1 (5-6 weeks)", heading)[0] == [(35, 42), (35, 42), (0, 0)]


def test_a_heading_without_a_time_ends_that_of_the_one_before():
    assert below("GC1, 3 weeks", "GD2")[0] == [(21, 21), (21, 21), None]
    assert below("GC1, 3 weeks", "GD2", ["Lead time 8 weeks"])[0] == [(21, 21), (21, 21), (56, 56)]


@pytest.mark.parametrize(
    "heading",
    ["GC1, valid 3 weeks", "GC1, new prices in 3 weeks", "GC1, payment 30 days", "GC1 special offer, 3 weeks",
     "GC1, prices firm 3 weeks", "GC1, gültig 3 Wochen", "GC1, neue Preise in 3 Wochen", "GC1, Zahlung 30 Tage",
     "GC1 Aktion, 3 Wochen", "GC1, valable 3 semaines", "GC1, nouveaux prix dans 3 semaines", "GC1, paiement 30 jours",
     "GC1, válido 3 semanas", "GC1, nuevos precios en 3 semanas", "GC1, pago 30 días", "GC1, nya priser om 3 veckor",
     "GC1, betalning 30 dagar"],
)  # fmt: skip
def test_what_else_is_timed_is_no_lead_time(heading):
    leads, told = below(heading, "GD2")
    assert leads == [None] * 3
    assert "lead-time-unread" not in told


@pytest.mark.parametrize(
    ("heading", "days"), [("SBS 2 - 3 weeks", None), ("SBS transit - 3 weeks", None), ("SBS - 2 - 3 weeks", (14, 21)),
                          ("SBS: 2-3 weeks", (14, 21))],
)  # fmt: skip
def test_a_dash_that_spans_figures_and_one_behind_something_else(heading, days):
    assert below(heading, "GD2")[0] == [days, days, None]


@pytest.mark.parametrize("heading", ["GC1, 30 days", "GC1, 3 weeks after approval of samples"])
def test_a_time_that_need_not_be_one_is_told(heading):
    leads, told = below(heading, "GD2", ["Lead time 8 weeks"])
    assert leads == [None, None, (56, 56)]
    assert told == {"lead-time-unread"}
