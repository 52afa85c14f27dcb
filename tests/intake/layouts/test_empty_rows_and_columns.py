"""Empty rows and columns within a table, and those that part two."""

import pytest

from tests.intake.sheets import lines, merged


def test_a_blank_column_leaves_each_row_its_own_board():
    rows = [
        ["VENDOR", "ITEM_NO", "ITEM_DESC", None, "CALIPER_IN", "UNIT_PRICE", "CURRENCY", "PRICE_UOM"],
        ["Tallowmere Board Corp", "TB12s", "SBS C1S ROLL", None, 0.012, 1205, "USD", "ST"],
        ["Tallowmere Board Corp", "TB21m", "CUK ROLL", None, 0.021, 1044, "USD", "ST"],
        ["Tallowmere Board Corp", "TB20l", "CRB C1S ROLL", None, 0.02, 905, "USD", "ST"],
    ]
    assert [line.offer.grade for line in lines(rows).values()] == ["SBS", "CUK", "CRB"]


def test_an_empty_row_within_a_header_parts_nothing_of_it():
    heads = [["Sort", "g/m²", "µm", "Price / tonne"], [], [None, None, None, "£", "€"]]
    found = lines([*heads, ["GC1", 230, 370, 1240, 1438], ["GD3", 350, 430, 798, 926]])
    assert [(line.offer.grammage_gsm, line.offer.grammage_from) for line in found.values()] == [
        (230, "quoted"), (230, "quoted"), (350, "quoted"), (350, "quoted"),
    ]  # fmt: skip


def test_a_header_without_figures_above_another_whole_one_is_left_apart():
    rows = [["Grade", "µm", "g/m²", "EUR/tonne"], [], ["Board", "gsm", "mic", "EUR/tonne"], ["GC1", 230, 370, 1240]]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [230]


def test_a_shorter_list_behind_an_empty_column_is_read_beside_a_longer_one():
    heads = ["Grade", None, "pt", "lb/MSF", "$/ST", None, "Grade", "pt", "lb/MSF", "$/ST"]
    rows = [
        ["ROLLS", None, None, None, None, None, "SHEETS"], heads,
        ["SBS C1S", None, 14, 60, 1290, None, "SBS C1S", 14, 60, 1390],
        ["SBS C1S", None, 16, 64, 1280, None, "SBS C1S", 18, 66, 1380],
        ["CRB C1S", None, 18, 71, 946], ["CRB C1S", None, 24, 95, 934], ["URB", None, 26, 92, 722],
    ]  # fmt: skip
    assert {"E3", "E4", "E5", "E6", "E7", "J3", "J4"} == set(lines(rows))


LISTED = [
    ["Part", None, "Board", "pt", "lb/MSF", "USD/cwt"],
    ["A1", None, "SBS C1S", 14, 59, 58], ["A2", None, "CRB", 18, 70, 44],
]  # fmt: skip


@pytest.mark.parametrize("gap", [1, 2])
def test_an_empty_column_parts_neither_items_nor_labels_from_what_is_said_of_them(gap):
    form = [["Quoted by", "Mossbarrow Paperboard LLC"], ["Valid until", "2026-10-15"], ["Minimum order", "5,000 lb"]]
    parted = [[label, *[None] * gap, value] for label, value in form]
    for line in lines([*parted, ["Lead time", *[None] * gap, "4 weeks"], [], *LISTED]).values():
        offer = line.offer
        assert (offer.vendor, offer.lead_days) == ("Mossbarrow Paperboard LLC", (28, 28))
        assert (str(offer.valid_until), round(offer.minimum_kg)) == ("2026-10-15", 2268)


def test_boards_behind_an_empty_column_stay_boards_above_sentences():
    rows = [
        ["USD per tonne, delivered"],
        ["Board", None, "Order size", "Caliper (µm)"], [None, None, None, 350, 400],
        ["Folding boxboard GC2", None, "under 2 tonnes", 1196, 1186], [None, None, "2 tonnes and over", 1148, 1138], [],
        ["Quotation open for acceptance until 18 December 2026."], ["Prices are exclusive of VAT, terms 30 days net."],
        ["Errors and omissions are excepted."], ["Goods remain ours until they are paid."],
    ]  # fmt: skip
    found = lines(rows, merged=merged((1, 3, 1, 4)))
    assert {line.offer.grade for line in found.values()} == {"FBB"}


def test_units_parted_from_their_prices_by_an_empty_column_hold_for_them_above_a_total():
    rows = [
        ["Spot offers. A net ton is 2,000 lb."], [],
        ["Lot", "Sold per", None, "US$", "Board", "pt", "lb/MSF"],
        ["L310", "net ton", None, 1148, "SBS C1S", 18, 75], ["L311", "cwt", None, 57.2, "SBS C1S", 20, 83],
        ["L312", "MSF", None, 31.2, "CRB", 18, 69], [], ["Rolls on hand, in all", None, None, None, None, None, 97],
    ]  # fmt: skip
    assert [line.offer.basis.value for line in lines(rows).values()] == ["short_ton", "cwt", "msf"]


def test_a_letterhead_some_columns_beside_a_table_is_none_of_its_columns():
    heads = ["Nature du carton", "µm", "g/m²", "Prix", None, None, None, "Papeteries Montréval SA"]
    beside = ["12 quai de l'Écluse", "Prix nets en EUR / t", "franco"]
    boards = [["GC1", 390, 235, 1290], ["GC1", 440, 270, 1280], ["GT2", 445, 300, 990]]
    rows = [heads, *([*board, None, None, None, said] for board, said in zip(boards, beside, strict=True))]
    assert {(line.offer.currency, line.offer.basis) for line in lines(rows).values()} == {("EUR", "tonne")}
