"""Charges in rows of their own below each board are that board's; in one place below all, everybody's."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Description", "Caliper", "Weight", "Amount", "Per"]
_SBS = ["SBS C1S", "16 pt", "68 lb/MSF", 1182, "ST"]
_CUK = ["CUK", "20 pt", "83 lb/MSF", 55.6, "CWT"]
_URB = ["URB", "28 pt", "98 lb/MSF", 702, "ST"]


def charges(*rows):
    found = lines([["US dollars, f.o.b. mill"], _HEAD, *rows])
    return [
        [(charge.label, f"{charge.price:f}", str(charge.basis)) for charge in line.offer.charges]
        for line in found.values()
    ]


@pytest.mark.parametrize("word", ["freight", "Fracht", "flete", "frakt", "port"])
def test_each_board_has_those_below_it(word):
    found = charges(_SBS, [f"+ {word}", None, None, 1.95, "CWT"], _CUK, [f"+ {word}", None, None, 41, "ST"], _URB)
    assert [[rest for _, *rest in each] for each in found] == [[["1.95", "cwt"]], [["41", "short_ton"]], []]


def test_a_name_that_is_no_known_charge_is_one_behind_a_plus():
    wrap = ["+ moisture-proof wrap", None, None, 0.35, "CWT"]
    found = charges(_SBS, wrap, _CUK, wrap, _URB)
    assert [len(each) for each in found] == [1, 1, 0]


def test_a_board_behind_a_plus_is_a_board():
    found = lines([["US dollars"], _HEAD, ["+ SBS 16 pt", "16 pt", "68 lb/MSF", 1182, "ST"], _CUK])
    assert list(found) == ["D3", "D4"]
    assert all(line.offer.charges == () for line in found.values())


def groups(*fees):
    """Boards below sub-headings, each of which a charge may follow right away."""
    boards = {
        "SBS": [["SBS C1S", 16, 1240]],
        "CRB": [["CRB A", 20, 820], ["CRB B", 22, 830]],
        "URB": [["URB A", 20, 620]],
    }
    rows = [["Grade", "Caliper pt", "USD/short ton"]]
    for (name, own), fee in zip(boards.items(), fees, strict=True):
        rows += [[name], *([["Energy surcharge", None, fee]] if fee else []), *own]
    return [[float(charge.price) for charge in line.offer.charges] for line in lines(rows).values()]


def test_charges_right_below_a_heading_are_of_the_boards_that_follow():
    assert groups(None, 45, 30) == [[], [45], [45], [30]]
    assert groups(25, 45, 30) == [[25], [45], [45], [30]]


def test_charges_of_one_group_alone_leave_the_others_open():
    assert groups(None, 45, None) == [[0]] * 4


def test_below_all_boards_they_are_everybody_s():
    assert [len(each) for each in charges(_SBS, _CUK, _URB, ["Freight", None, None, 1.95, "CWT"])] == [1, 1, 1]


def test_in_the_midst_of_the_boards_it_is_open_whose_they_are():
    found = lines([["US dollars, f.o.b. mill"], _HEAD, _SBS, _CUK, ["Freight", None, None, 1.95, "CWT"], _URB]).values()
    assert all("number-ambiguous" in codes(line) for line in found)
    assert {line.offer.delivered for line in found} == {False}


def test_below_several_boards_without_a_heading_their_sum_is_not_known():
    rows = [_SBS, _CUK, ["Freight", None, None, 1.95, "CWT"], _URB, ["Freight", None, None, 41, "ST"]]
    found = list(lines([["US dollars, f.o.b. mill"], _HEAD, *rows]).values())
    assert ["number-ambiguous" in codes(line) for line in found] == [True, True, False]


@pytest.mark.parametrize("figures", [(18, 2.15), ("18.00", "2.15")])
def test_the_unit_of_a_charge_may_stand_before_its_figure_and_below_a_measure(figures):
    rows = [["Item", "Caliper", "Basis weight", "Amount"], ["SBS C1S rolls", "16 pt", "66 lb/MSF", "1,222.00"],
            ["CCNB rolls", "20 pt", "80 lb/MSF", "889.00"], ["plus, on every item:"],
            ["Fuel surcharge", None, "per short ton", figures[0]],
            ["Freight to Millbury", None, "per cwt", figures[1]]]  # fmt: skip
    found = lines([["U.S. dollars per short ton, FOB mill"], *rows])
    assert list(found) == ["D3", "D4"]
    assert [[(float(one.price), one.basis) for one in line.offer.charges] for line in found.values()] == [
        [(18.0, "short_ton"), (2.15, "cwt")]
    ] * 2


_ALL_GRADES = {
    "en": "Energy surcharge, all grades",
    "de": "Energiezuschlag, alle Sorten",
    "fr": "Supplément énergie, toutes qualités",
    "es": "Recargo de energía, todas las calidades",
    "sv": "Energitillägg, alla kvaliteter",
}


def across(*below, heads=("GC1", "GC2", "GD2")):
    """How many charges each price of a matrix has."""
    boards = [[230, 1118, 1074, 760][: len(heads) + 1], [260, 1110, 1066, 741][: len(heads) + 1]]
    found = lines([["EUR per tonne, delivered"], [], ["g/m²", *heads], *boards, *below])
    return [[f"{charge.price:f}" for charge in line.offer.charges] for line in found.values()][: len(heads)]


@pytest.mark.parametrize("label", _ALL_GRADES.values(), ids=_ALL_GRADES)
def test_one_said_to_be_of_all_is_every_price_s_though_it_stands_below_the_first(label):
    assert across([label, 38]) == [["38"]] * 3
    assert across([label.partition(",")[0], 38]) == [["38"], [], []]


def test_so_is_one_apart_from_the_boards_or_with_a_unit_of_its_own():
    assert across([], ["Surcharges"], ["Energy surcharge", "38.00 EUR per tonne"]) == [["38.00"]] * 3
    assert across(["Energy surcharge", "38.00 EUR per tonne"]) == [["38.00"]] * 3


def test_one_below_another_price_or_below_sheets_is_theirs_alone():
    assert across([], ["Energy surcharge", None, 38]) == [[], ["38"], []]
    assert across([], ["Sheeting", 38], heads=("Sheets", "Rolls")) == [["38"], []]
