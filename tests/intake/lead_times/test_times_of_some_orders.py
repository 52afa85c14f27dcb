"""Lead times and stock of orders of some size alone: nobody's time for certain, and told."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["Grade", "Caliper (pt)", "Price USD/ST"], ["SBS", 18, 1200], ["CRB", 20, 800]]


def told(note, cell=None):
    """The lead days of both boards, '?' where a note says that one is not read."""
    head, *rows = BOARDS
    rows = [[*row, cell] for row in rows] if cell else rows
    found = lines([[*head, "Remarks"] if cell else head, *rows, [], [note]]).values()
    return ["?" if "lead-time-unread" in codes(line) else line.offer.lead_days for line in found]


@pytest.mark.parametrize(
    "note",
    [
        "5-20 pallets: lead time 3 weeks", "5 to 20 pallets lead time 3 weeks", "5-20 rolls: lead time 3 weeks",
        "Lead time 3 weeks for 5-20 pallets", "5-20 Paletten: Lieferzeit 3 Wochen", "5-20 palettes : délai 3 semaines",
        "5-20 palés: plazo 3 semanas", "5-20 pallar: leveranstid 3 veckor",
    ],
)  # fmt: skip
def test_the_time_of_so_many_pallets_is_not_everybodys(note):
    assert told(note) == ["?", "?"]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks",
        "Lead time 3 weeks, packed on pallets",
        "Lead time 3 weeks, minimum order 5 pallets",
        "Lieferzeit 3 Wochen, auf Paletten",
        "Ships on pallets, lead time 3 weeks",
    ],
)
def test_pallets_that_nobody_counts_leave_it_everybodys(note):
    assert told(note) == [(21, 21), (21, 21)]


IN_SMALL_LOTS = [
    "in stock in small lots", "All grades in stock in small lots", "Available from stock in limited quantities",
    "In kleinen Mengen ab Lager", "En stock en petites quantités", "En stock en pequeñas cantidades",
    "I lager i små partier",
]  # fmt: skip


@pytest.mark.parametrize("words", IN_SMALL_LOTS)
def test_what_is_in_stock_in_small_lots_is_not_so_for_all(words):
    assert told(words) == ["?", "?"]
    assert told("", words) == ["?", "?"]


@pytest.mark.parametrize(
    "note",
    ["SBS in stock in small lots", "SBS in kleinen Mengen ab Lager", "SBS en stock en petites quantités",
     "SBS en stock en pequeñas cantidades", "SBS i lager i små partier"],
)  # fmt: skip
def test_so_it_is_of_one_board(note):
    assert told(note) == ["?", None]


@pytest.mark.parametrize("note", ["In stock", "SBS and CRB in stock", "Ab Lager", "En stock", "I lager"])
def test_what_is_in_stock_is_so_for_all(note):
    assert told(note) == [(0, 0), (0, 0)]


@pytest.mark.parametrize(
    "note",
    [
        "Rolls are paid in 15 business days", "Sheets are payable in 15 business days", "Rolls are paid within 3 weeks",
        "SBS is paid in 3 weeks", "Rollen werden in 15 Arbeitstagen bezahlt", "Rollen sind in 3 Wochen zu bezahlen",
        "Les bobines sont payées en 15 jours ouvrés", "Las bobinas se pagan en 15 días hábiles",
        "Rullar betalas inom 15 arbetsdagar", "Rullar betalas inom 3 veckor",
    ],
)  # fmt: skip
def test_when_goods_are_paid_is_no_lead_time(note):
    assert told(note) == [None, None]
    assert told("", note) == [None, None]
