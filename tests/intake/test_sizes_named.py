"""Order sizes by a name of the file's own, freight beside a price per something else, and prices paid before."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Board", "Cal.", "Lb/MSF", "Lot", "USD/MSF"]
_ROWS = [["SBS C1S", "18 pt", 76, "Small lot", 50.9], [None, None, None, "TL", 48.2]]


def test_a_name_that_the_file_explains_is_a_size():
    found = lines([_HEAD, *_ROWS, ["Small lot = under 10,000 lb."], ["TL: 10,000 lb and up"]])
    assert [(line.offer.from_kg is None, line.offer.below_kg is None) for line in found.values()] == [
        (True, False), (False, True),
    ]  # fmt: skip


def test_a_name_without_a_word_on_it_is_asked():
    found = lines([_HEAD, *_ROWS, ["Small lot = under 10,000 lb."]])
    assert [str(line.state) for line in found.values()] == ["accepted", "question"]
    assert "bracket-unread" in codes(found["E3"])


def test_freight_a_ton_is_charged_beside_a_price_per_area_of_its_height():
    head = ["Description", "pt", "lb/MSF", "Base USD/ST", "Same, USD/MSF", "Freight to you USD/ST"]
    rows = [["Base price USD/ST at mill"], head,
            ["SBS C1S", 16, 68, 1205, 40.97, 46], ["SBS C1S", 18, 76, 1192, 45.3, 46]]  # fmt: skip
    found = lines(rows)
    assert list(found) == ["D3", "D4"]
    assert [[float(charge.price) for charge in line.offer.charges] for line in found.values()] == [[46.0]] * 2


@pytest.mark.parametrize(
    "head", ["Last order", "Letzte Bestellung", "Dernière commande", "Último pedido", "Senaste order", "Last PO"]
)
def test_what_was_paid_before_is_not_offered(head):
    rows = [
        ["EUR/t"],
        ["Board", "g/m²", "µm", head, "Price"],
        ["GD2", 300, 395, 861, 842],
        ["GC2", 275, 460, 1230, 1204],
    ]
    assert list(lines(rows)) == ["E3", "E4"]


@pytest.mark.parametrize("head", ["Book", "Published", "Catalogue"])
def test_a_book_price_beside_the_net_one_is_not_offered_though_a_sum_is_missing(head):
    rows = [["US$/cwt"], ["Grade", "Cal pt", "lb/MSF", head, "Allowance", "Net"], ["SBS C1S", 14, 60, 64, 1.5, 62.5],
            ["CUK", 18, 75, 56, 1.25, None]]  # fmt: skip
    assert set(lines(rows)) == {"F3"}
