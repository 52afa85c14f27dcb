"""Order sizes across whose limits stand above each other, and order sizes over the word for price."""

import pytest

from tests.intake.sheets import codes, lines

GC2, GT2 = ["GC2", 235, 375], ["GT2", 320, 420]


def sizes(rows):
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return list(dict.fromkeys((line.offer.from_kg, line.offer.below_kg) for line in found.values()))


IN_KG = [(None, 2500), (2500, 10000), (10000, None)]


@pytest.mark.parametrize(
    "head",
    [
        [
            ["Qualité", "g/m²", "µm", "Tonnage commandé, en kg"],
            [None, None, "de", "—", "2 500", "10 000"],
            [None, None, "à", "2 499", "9 999", "—"],
        ],
        [
            ["Sorte", "g/m²", "µm", "Abnahme in kg"],
            [None, None, "von", 0, 2500, 10000],
            [None, None, "bis", 2499, 9999, None],
        ],
        [
            ["Calidad", "g/m²", "µm", "Pedido en toneladas"],
            [None, None, "desde", 0, "2,5", 10],
            [None, None, "menos de", "2,5", 10, None],
        ],
        [
            ["Kvalitet", "g/m²", "µm"],
            [None, None, "från", None, "2500 kg", "10000 kg"],
            [None, None, "till", "2499 kg", "9999 kg", "och mer"],
        ],
        [
            ["From, kg", None, None, 0, 2500, 10000],
            ["To, kg", None, None, 2499, 9999, None],
            ["Grade", "g/m²", "µm", "Price", "Price", "Price"],
        ],
    ],
)
def test_limits_above_each_other_make_the_order_size_of_their_column(head):
    assert sizes([["EUR/t"], [], *head, [*GC2, 1412, 1338, 1291], [*GT2, 1086, 1018, 972]]) == IN_KG


def test_limits_may_stand_in_the_row_of_the_heads():
    head = [
        ["Sorte", "g/m²", "µm", "von kg", "0", "2.500", "10.000"],
        [None, None, None, "bis kg", "2.499", "9.999", "–"],
    ]
    assert sizes([["EUR/t"], [], *head, [*GC2, None, 1412, 1338, 1291], [*GT2, None, 1086, 1018, 972]]) == IN_KG


def test_limits_in_no_unit_are_asked_about():
    head = [["Qualité", "g/m²", "µm", "Quantité"], [None, None, "de", 0, 5000], [None, None, "à", 4999, None]]
    found = lines([["EUR/t"], [], *head, [*GC2, 1412, 1338], [*GT2, 1086, 1018]])
    assert all("bracket-unread" in codes(line) for line in found.values())


def test_price_below_an_order_in_pounds_is_no_basis_weight():
    head = [[None, None, None, "< 10,000 lb", "10,000 lb +"], ["Grade", "Caliper", "lb/MSF", "Price", "Price"]]
    rows = [["US$ per cwt"], [], *head, ["SBS", 18, 75, 66, 63], ["CRB", 20, 79, 46, 43]]
    assert len(sizes(rows)) == 2


def test_a_column_in_pounds_beside_the_price_is_still_a_basis_weight():
    rows = [["Grade", "Caliper", "Basis weight lb", "Price US$/cwt"], ["SBS", 18, 75, 66], ["CRB", 20, 79, 46]]
    assert [line.offer.price for line in lines(rows).values()] == [66, 46]
