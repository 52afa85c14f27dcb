"""'Kerne je Stück, Karton je Tonne' says what board is sold by; '$ each' beside a sheet's size is a sheet's price."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["Sorte", "Dicke", "Preis EUR"], ["GZ", "450 µm", 1200], ["Graukarton", "500 µm", 700], []]


def bases(note):
    return [line.offer.basis for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Kerne je Stück, Karton je Tonne.", "Karton je Tonne, Kerne je Stück.", "Karton je Tonne.",
        "Cores per piece, board per tonne.", "Pallets by the piece and board per tonne",
        "Mandrins à la pièce, carton à la tonne.",
        "Mandriles por pieza, cartón por tonelada métrica.", "Hylsor per styck, kartong per 1000 kg.",
    ],
)  # fmt: skip
def test_board_is_priced_by_its_own_unit(note):
    assert bases(note) == ["tonne", "tonne"]


def test_a_kind_of_board_has_its_own():
    assert bases("Graukarton je 1000 kg, Karton je kg") == ["kg", "tonne"]


@pytest.mark.parametrize("note", ["Zorbel je Stück, Karton je Tonne", "Kerne je Stück."])
def test_what_is_of_unknown_goods_settles_nothing(note):
    assert bases(note) == [None, None]


@pytest.mark.parametrize("head", ["$ each", "US$ each", "€ each", "Price $ each", "€ Stück", "kr styck"])
def test_each_beside_money_is_a_sheet_where_it_has_a_size(head):
    rows = [
        ["Grade", "Caliper", "Sheet size", head],
        ["SBS", "18 pt", "28 x 40 in", 0.62],
        ["CUK", "20 pt", "28 x 40 in", 0.55],
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["sheet", "sheet"]


def test_without_a_size_or_with_a_price_of_tons_it_is_asked():
    bare = [["Grade", "Caliper", "$ each"], ["SBS", "18 pt", 0.62], ["CUK", "20 pt", 0.55]]
    assert all("basis-unknown" in codes(line) or str(line.state) == "question" for line in lines(bare).values())
    tons = [["Grade", "Caliper", "Sheet size", "$ each"], ["SBS", "18 pt", "28 x 40 in", 1200]]
    assert [str(line.state) for line in lines(tons).values()] == ["question"]


@pytest.mark.parametrize(
    ("note", "lead"),
    [
        ("Graukarton wird ab Lager Kelmstadt verkauft.", None), ("Graukarton wird ab Lager verkauft.", (0, 0)),
        ("Graukarton ab Lager.", (0, 0)),
    ],
)  # fmt: skip
def test_from_which_store_board_comes_tells_no_time(note, lead):
    line = list(lines([*ROWS, [note]]).values())[1]
    assert (line.offer.lead_days, "lead-time-unread" in codes(line)) == (lead, False)
