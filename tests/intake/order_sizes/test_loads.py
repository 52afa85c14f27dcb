"""Order sizes in truckloads and railcars: what one weighs is in the file, or is asked."""

from decimal import Decimal

import pytest

from tests.intake.readings import accepted, by_cell, note_codes, pounds, read_rows
from tests.intake.sheets import codes, lines
from tracker.trade.offer import NoteCode

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_a_truckload_beside_the_unit_is_an_order_size_that_nothing_weighs():
    reading = read_rows([[*HEAD, "LTL $/cwt", "Full truckload $/cwt"], [*BOARD, 62.5, 58.4]])
    assert accepted(reading) == {}
    assert all(NoteCode.BRACKET_UNREAD in note_codes(line) for line in reading.lines)


def test_one_truckload_of_a_stated_weight_is_no_range_from_one_pound():
    head = ["GRADE", "CALIPER", "WEIGHT", "QTY", "PRICE"]
    reading = read_rows([head, ["SBS C1S", "18 PT", "75# PER MSF", "1 TRUCKLOAD (42,000 LB)", "$ 58.75 CWT"]])
    line = by_cell(reading)["E2"]
    assert accepted(reading) == {"E2": ("SBS", "58.75", "USD", "cwt")}
    assert (line.offer.from_kg, line.offer.below_kg) == (pounds(42_000), None)


EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


def test_a_railcar_is_no_truckload():
    rows = [
        ["TL = 40,000 lb or more; LTL = less"],
        [*EXPORT_HEAD, "LTL $/ST", "TL $/ST", "Railcar $/ST"],
        [*BOARD, 1250, 1190, 1160],
    ]
    found = lines(rows)
    assert (found["E3"].state, found["F3"].state) == ("accepted", "question")
    assert codes(found["F3"]) == {"bracket-unread"}
    weighed = lines([["Railcar = 160000 lb"], [*EXPORT_HEAD, "Railcar $/ST"], [*BOARD, 1160]])["D3"]
    assert (str(weighed.state), round(weighed.offer.from_kg)) == ("accepted", 72575)


@pytest.mark.parametrize(
    ("note", "heads", "bounds"),
    [
        ("Komplettladung = 24 t und mehr, Teilladung = unter 24 t.", ("Teilladung", "Komplettladung"), 24000),
        ("En pall väger 800 kg.", ("under 5 pallar", "5 pallar och mer"), 4000),
        ("Une palette pèse 800 kg", ("moins de 5 palettes", "5 palettes et plus"), 4000),
        ("Part load = under 24 t", ("Part load", "Full load"), 24000),
    ],
)
def test_what_a_load_weighs_can_be_said_in_a_sentence(note, heads, bounds):
    rows = [[f"EUR/t. {note}"], [], ["Sorte", "g/m²", "µm", *heads], ["GD2", 300, 390, 958, 911]]
    small, large = lines(rows).values()
    assert (small.offer.from_kg, small.offer.below_kg) == (None, bounds)
    assert (large.offer.from_kg, large.offer.below_kg) == (bounds, None)


US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def test_two_loads_that_one_sentence_defines():
    rows = [
        ["US$/ST. For this list one roll is 2,100 lb and a truckload is 42,000 lb."],
        [*US, "Less than 5 rolls", "5 rolls up to a truckload", "1 truckload or more", "Railcar"],
        ["SBS C1S", 18, 76, 1255, 1190, 1150, 1128],
    ]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted", "accepted", "question"]
    rolls, load = 5 * 2100 * Decimal("0.45359237"), 42000 * Decimal("0.45359237")
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()][:3] == [
        (None, rolls),
        (rolls, load),
        (load, None),
    ]


@pytest.mark.parametrize("size", ["5 rolls up to a truckload", "5 rolls - TL", "5 Rollen bis LKW"])
def test_sizes_up_to_a_load_that_nothing_weighs_are_asked_about(size):
    found = lines([["US$/ST, one roll is 2,100 lb"], [*US, size], ["SBS C1S", 18, 76, 1190]])
    assert [str(line.state) for line in found.values()] == ["question"]


def test_loads_under_a_head_for_lots_size_orders():
    rows = [["TL = 42,000 lb or more. LTL = 10,000 lb up to (not including) 42,000 lb."]]
    rows += [[*EXPORT_HEAD, "Lot", "USD/MSF"], [*BOARD, "LTL", 48.2], [None, None, None, "TL", 46.35]]
    found = [(round(line.offer.from_kg), line.offer.below_kg) for line in lines(rows).values()]
    assert found[0] == (4536, found[1][0]) or (found[0][0], round(found[0][1])) == (4536, 19051)
    numbers = [[*EXPORT_HEAD, "Lot", "USD/MSF"], [*BOARD, "M6120", 48.2], ["CRB", 20, 78, "M6121", 36.35]]
    assert {str(line.state) for line in lines(numbers).values()} == {"accepted"}


def test_truckloads_counted_in_the_heads():
    reading = read_rows(
        [
            ["Sable Creek Mills Inc. – 2026 cwt prices"],
            ["FOB Sable Creek, US$ per cwt"],
            [],
            ["Board", "Caliper (pt)", "Basis wt (lb/MSF)", "1 T/L", "2-4 T/L", "5+ T/L"],
            ["SBS C1S", 18, 76, 59.5, 58.75, 58],
            ["CUK C1S", 18, 74, 54, 53.25, 52.5],
            [],
            ["T/L = truckload = 40,000 lb"],
        ]
    )
    assert set(accepted(reading)) == {"D5", "E5", "F5", "D6", "E6", "F6"}
    lines = by_cell(reading)
    sizes = [(lines[cell].offer.from_kg, lines[cell].offer.below_kg) for cell in ("D5", "E5", "F5")]
    assert sizes == [
        (pounds(40000), pounds(80000)),
        (pounds(80000), pounds(200000)),
        (pounds(200000), None),
    ]


@pytest.mark.parametrize(
    ("head", "bounds"),
    [
        ("ab 1 LKW (24 t)", (24_000, None)),
        ("1 LKW (24 t) und mehr", (24_000, None)),
        ("dès 1 camion (24 t)", (24_000, None)),
        ("desde 1 camión (24 t)", (24_000, None)),
        ("från 1 bil (24 t)", (24_000, None)),
        ("under 1 truckload (24 t)", (None, 24_000)),
    ],
)
def test_a_limit_of_one_weighed_load_is_its_weight_and_no_range_from_one(head, bounds):
    (line,) = lines([["EUR/t"], ["Sorte", "g/m²", "µm", head], ["GC1", 250, 400, 1141]]).values()
    assert (line.state, line.offer.from_kg, line.offer.below_kg) == ("accepted", *bounds)


@pytest.mark.parametrize("head", ["ab 2 LKW (48 t)", "from 2 truckloads (24 t)", "dès 6 palettes (6 t)"])
def test_the_weight_beside_a_limit_of_several_loads_is_asked_about(head):
    (line,) = lines([["EUR/t"], ["Sorte", "g/m²", "µm", head], ["GC1", 250, 400, 1141]]).values()
    assert (line.state, codes(line)) == ("question", {"bracket-unread"})
