"""A unit that is said of a row, of marked rows or of those below a heading is nearer than the one over the column,
where board costs what the figure says in the one and not in the other, or where the words set these rows apart.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import codes, lines

HEADS = {
    "en": ["Board", "g/m²", "µm", "EUR/t", "Remarks"],
    "de": ["Sorte", "g/m²", "µm", "EUR/t", "Bemerkung"],
    "fr": ["Qualité", "g/m²", "µm", "EUR/t", "Remarques"],
    "es": ["Calidad", "g/m²", "µm", "EUR/t", "Observaciones"],
    "sv": ["Kvalitet", "g/m²", "µm", "EUR/t", "Anmärkning"],
}


def remarked(language, price, text):
    rows = [HEADS[language], ["GC2", 250, 405, 1180, None], ["GD2", 320, 420, price, text]]
    found = lines(rows)
    assert found["D2"].offer.basis == "tonne"
    return found["D3"]


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "price is for 1,000 sheets 72 x 102 cm"),
        ("en", "per 1,000 sheets 72 x 102 cm"),
        ("de", "Preis gilt für 1000 Bogen 72 x 102 cm"),
        ("fr", "prix au mille feuilles 72 x 102 cm"),
        ("es", "precio por millar de hojas 72 x 102 cm"),
        ("sv", "priset avser 1000 ark 72 x 102 cm"),
    ],
)
def test_a_price_for_sheets_beside_prices_per_tonne(language, text):
    line = remarked(language, 201.5, text)
    assert (line.state, line.offer.basis, line.offer.sheet_mm) == ("accepted", "1000sheets", (720, 1020))


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "price is per kg"), ("de", "Preis je kg"), ("de", "Kilopreis"), ("fr", "prix au kilo"),
        ("es", "precio por kg"), ("sv", "pris per kg"),
    ],
)  # fmt: skip
def test_a_price_per_kilogram_beside_prices_per_tonne(language, text):
    line = remarked(language, 0.842, text)
    assert (line.state, line.offer.basis) == ("accepted", "kg")


@pytest.mark.parametrize(
    "text", ["price per short ton", "price per 1000 m²", "price per kg", "price per short ton; this item from stock"]
)
def test_where_board_may_cost_both_or_neither_it_is_asked(text):
    assert codes(remarked("en", 840, text)) >= {"basis-unknown"}


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "price refers to one ream"), ("de", "Preis für 100 Bogen 72 x 102 cm"),
        ("de", "Preis bezieht sich auf 100 kg"),
        ("fr", "prix pour 500 feuilles"), ("es", "precio por resma"), ("sv", "priset avser 500 ark"),
    ],
)  # fmt: skip
def test_a_remark_on_what_the_price_is_for_is_never_passed_over(language, text):
    assert codes(remarked(language, 840, text)) >= {"basis-unknown"}


@pytest.mark.parametrize(
    "text", ["price, 500 sheets per pallet", "price valid for 5 t lots", "special price", "price for reels 1000 mm"]
)
def test_a_remark_on_packing_or_orders_leaves_the_head_s_unit(text):
    line = remarked("en", 840, text)
    assert (line.state, line.offer.basis) == ("accepted", "tonne")


CARD = ["Item", "Board", "pt", "lb/MSF", "Price"]
TONS = [[None, None, None, None, "USD per short ton"], ["A1", "SBS C1S", 18, 75, 1185]]


@pytest.mark.parametrize(("heading", "prices", "basis"), [
    ("ITEMS BELOW ARE PRICED PER MSF", [34.6, 37.2], "msf"),
    ("Recycled grades, priced per MSF", [34.6, 37.2], "msf"),
    ("Recycled grades - US$ per cwt", [47.1, 46.8], "cwt"),
])  # fmt: skip
def test_a_heading_among_the_rows_is_nearer_than_the_unit_row(heading, prices, basis):
    below = [["B1", "CRB C1S", 18, 71, prices[0]], ["B2", "CRB C1S", 20, 79, prices[1]]]
    found = lines([CARD, *TONS, [heading], *below])
    assert [(line.state, line.offer.basis) for line in found.values()] == [
        ("accepted", "short_ton"), ("accepted", basis), ("accepted", basis),
    ]  # fmt: skip


def test_of_two_units_that_both_may_be_a_heading_s_words_set_its_rows_apart():
    rows = [["pt", "lb/MSF", "US$/MSF"], ["SBS, coated one side"], [14, 59, 36.4], [18, 75, 44.9]]
    heavy = [[24, 98, 58.8], [28, 114, 58.1]]
    found = lines([*rows, ["SBS, heavy weights: these two in US$ / cwt"], *heavy])
    assert [line.offer.basis for line in found.values()] == ["msf", "msf", "cwt", "cwt"]
    found = lines([*rows, ["SBS, heavy weights, US$ / cwt"], *heavy])
    assert [line.offer.basis for line in found.values()] == ["msf", "msf", None, None]


def test_a_note_on_marked_rows_is_nearer_than_the_head():
    rows = [["Board", "pt", "lb/MSF", "$/short ton"], ["SBS C1S", 14, 59, 1204], ["SBS C1S *", 18, 75, 59.8], []]
    found = lines([*rows, ["* this line only: dollars per hundredweight (100 lb)."]])
    assert [(line.state, line.offer.basis) for line in found.values()] == [
        ("accepted", "short_ton"), ("accepted", "cwt"),
    ]  # fmt: skip
    rows[2][3] = 1190
    assert codes(lines([*rows, ["* dollars per metric ton."]])["D3"]) >= {"basis-unknown"}
