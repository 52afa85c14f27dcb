"""Order sizes that the head over them counts: so many sheets, weighed by their size and weight, rolls and pallets."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.trade.offer import State

KG = Decimal("0.21")
"""What one sheet of 700 x 1000 mm at 300 g/m² weighs."""


def across(heading, sizes, unit="EUR per 1000 sheets", notes=(), size="Sheet mm", spread=True):
    """The (from, below) of each price in kg, by its order; 'asked' where it is not known."""
    rows = [
        [unit], ["Board", "g/m²", size, heading], [None, None, None, *sizes],
        ["GC1", 300, "700 x 1000", *(268 - 12 * place for place in range(len(sizes)))], [], *([note] for note in notes),
    ]  # fmt: skip
    more = {"merged": merged((1, 3, 1, 2 + len(sizes)))} if spread else {}
    return _sizes(lines(rows, **more))


def down(head, sizes, unit="EUR per 1000 sheets", notes=()):
    rows = [["GC1", 300, 430, "700 x 1000", size, 268 - 12 * place] for place, size in enumerate(sizes)]
    return _sizes(lines([["Board", "g/m²", "µm", "Sheet mm", head, unit], *rows, [], *([note] for note in notes)]))


def _sizes(found):
    sized = [line.offer for line in found.values()]
    asked = any(line.state is not State.ACCEPTED for line in found.values())
    return "asked" if asked else [(offer.from_kg, offer.below_kg) for offer in sized]


SHEETS = [(600 * KG, 3000 * KG), (3000 * KG, 12000 * KG), (12000 * KG, None)]
WRITTEN = [
    ("Sheets ordered", ("600-2,999", "3,000-11,999", "12,000+")),
    ("Order qty (sheets)", ("600 to 2,999", "3,000 to 11,999", "12,000 and over")),
    ("Anzahl Bogen", ("600–2.999", "3.000–11.999", "ab 12.000")),
    ("Nombre de feuilles", ("600 à 2 999", "3 000 à 11 999", "12 000 et plus")),
    ("N.º de hojas", ("600-2.999", "3.000-11.999", "desde 12.000")),
    ("Antal ark", ("600–2 999", "3 000–11 999", "12 000–")),
    ("Number of sheets", (600, 3000, 12000)),
]


@pytest.mark.parametrize("spread", [True, False])
@pytest.mark.parametrize(("heading", "sizes"), WRITTEN)
def test_counts_of_sheets_across_are_weighed(heading, sizes, spread):
    assert across(heading, sizes, spread=spread) == SHEETS


@pytest.mark.parametrize(("head", "sizes"), WRITTEN)
def test_counts_of_sheets_down_a_column_are_weighed(head, sizes):
    assert down(head, sizes) == SHEETS


def test_bare_counts_over_boards_whose_size_has_a_unit_are_no_calipers():
    assert across("Cantidad de hojas", (600, 3000, 12000), size="Formato mm") == SHEETS


@pytest.mark.parametrize("heading", ["Rolls ordered", "Anzahl Rollen", "Antal rullar"])
def test_rolls_weigh_what_a_note_says(heading):
    sizes, weighed = ("1–4", "5–9", "10+"), [(700, 3500), (3500, 7000), (7000, None)]
    note = "1 roll = 700 kg"
    assert across(heading, sizes, "EUR per tonne", [note]) == down(heading, sizes, "EUR per tonne", [note]) == weighed
    assert across(heading, sizes, "EUR per tonne") == down(heading, sizes, "EUR per tonne") == "asked"


def test_sheets_of_no_known_size_are_asked():
    rows = [
        ["EUR per tonne"], ["Board", "g/m²", "Sheets ordered"], [None, None, "600-2,999", "3,000+"],
        ["GC1", 300, 1268, 1240],
    ]  # fmt: skip
    assert _sizes(lines(rows)) == "asked"


def test_one_bare_count_a_board_is_what_the_price_was_asked_for():
    rows = [["Board", "µm", "Order qty (sheets)", "EUR/t"], ["GC1", 430, 6000, 1268], ["GD2", 455, 9000, 802]]
    assert _sizes(lines(rows)) == [(None, None)] * 2


@pytest.mark.parametrize("head", ["Sheets per pallet", "Bogen je Palette", "Ark per pall", "Antal per pall"])
def test_what_a_pallet_holds_is_no_order_size(head):
    boards = [["GC1", 300, 430, count, price] for count, price in ((400, 1268), (500, 1258), (600, 1248))]
    found = lines([["Board", "g/m²", "µm", head, "EUR/t"], *boards]).values()
    assert [(str(line.state), line.offer.from_kg) for line in found] == [("accepted", None)] * 3


def test_a_size_with_a_unit_of_its_own_is_no_count():
    heads = ["Board", "pt", "lb/MSF", "Number of pallets", None, None]
    rows = [heads, [None, None, None, "1-4", "5-9", "20 t and more"], ["SBS", 18, 76, 1240, 1230, 1220]]
    found = lines([["USD per short ton"], *rows, ["1 pallet = 800 kg"]])
    assert found["F4"].offer.from_kg != 16000


def test_the_last_of_a_row_of_sizes_may_end_in_a_dash():
    rows = [
        ["EUR/t"], ["Kartong", "g/m²", "Order (kg)"], [None, None, "500–1 999", "2 000–4 999", "5 000–"],
        ["GC1", 300, 1390, 1370, 1350],
    ]  # fmt: skip
    assert _sizes(lines(rows)) == [(500, 2000), (2000, 5000), (5000, None)]


def test_a_figure_with_a_dash_behind_it_is_no_order_size_among_prices():
    rows = [["SEK/ton"], ["Kartong", "g/m²", "Fritt Åby", "Fritt Berg"], ["GC1", 300, "13 900–", "14 100–"]]
    found = lines(rows)
    assert sorted(found) == ["C3", "D3"]
    assert {line.state for line in found.values()} == {State.REFUSED}
    assert all("bracket-unread" not in codes(line) for line in found.values())


def test_a_price_with_a_dash_beside_an_order_size_heads_nothing():
    rows = [["SEK/ton"], ["Kartong", "Order", "Pris"], ["GC1 300 g/m²", "5–10 t", "13 900–"]]
    found = lines([*rows, ["GC2 300 g/m²", "5–10 t", "13 700–"]])
    assert {cell: line.state for cell, line in found.items()} == {"C3": State.REFUSED, "C4": State.REFUSED}
