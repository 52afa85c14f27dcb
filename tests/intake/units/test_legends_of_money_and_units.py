"""Codes of money and units that a legend explains, each under its own column's name."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["Quality", "gsm", "Micron", "Sheet mm", "Rate", "Money", "Sold by"]
BOARDS = [
    ["GC1", 255, 410, "720 x 1020", 236.4, "S", "M"],
    ["GC1", 325, 560, "700 x 1000", 33.6, "P", "U"],
    ["GC1", 300, 470, "720 x 1020", 402, "E", "M"],
]


def offered(rows):
    return [(f"{x.offer.price:f}", x.offer.currency, x.offer.basis, str(x.state)) for x in lines(rows).values()]


@pytest.mark.parametrize(
    "legend",
    [
        [
            ["Money: S = pounds sterling, P = pence sterling, E = euro."],
            ["Sold by: M = 1,000 sheets, U = one sheet."],
        ],
        [["S", "pounds sterling"], ["P", "pence"], ["E", "euro"], ["M", "1,000 sheets"], ["U", "one sheet"]],
        [["S = pounds sterling; P = pence; E = euro; M = 1,000 sheets; U = one sheet"]],
    ],
)
def test_codes_stand_for_the_money_and_the_unit_that_a_legend_gives(legend):
    assert offered([HEADS, *BOARDS, [], *legend]) == [
        ("236.4", "GBP", "1000sheets", "accepted"),
        ("0.336", "GBP", "sheet", "accepted"),
        ("402", "EUR", "1000sheets", "accepted"),
    ]


@pytest.mark.parametrize(
    ("heads", "legend"),
    [
        (
            ["Sorte", "g/m²", "µm", "Bogen mm", "Preis", "Währung", "Einheit"],
            [["Währung: F = Schweizer Franken, E = Euro"], ["Einheit: M = 1000 Bogen, U = ein Bogen"]],
        ),
        (
            ["Qualité", "g/m²", "µm", "Format mm", "Prix", "Devise", "Unité"],
            [["Devise : F = francs suisses ; E = euros"], ["Unité : M = mille feuilles ; U = une feuille"]],
        ),
    ],
)
def test_legends_in_other_languages(heads, legend):
    rows = [heads, ["GC1", 255, 410, "720 x 1020", 236, "F", "M"], ["GC1", 300, 470, "720 x 1020", 0.4, "E", "U"]]
    assert [one[1:] for one in offered([*rows, [], *legend])] == [
        ("CHF", "1000sheets", "accepted"),
        ("EUR", "sheet", "accepted"),
    ]


def test_a_code_explained_two_ways_is_asked_about():
    legend = [["Money: S = pounds sterling, S = euro"], ["Sold by: M = 1,000 sheets"]]
    assert "currency-unknown" in codes(lines([HEADS, BOARDS[0], [], *legend])["E2"])


@pytest.mark.parametrize(
    "legend",
    [
        "UM: TN=SHORT TON  CW=CWT (100 LB)  MS=1000 SQ FT", "TN=SHORT TON / CW=CWT / MS=MSF",
        "TN = short ton | CW = cwt | MS = MSF", "UM codes: TN = short ton and CW = cwt and MS = MSF",
    ],
)  # fmt: skip
def test_unit_codes_parted_by_spaces_or_strokes(legend):
    heads = ["ITEM", "DESCRIPTION", "CAL PT", "BW #/MSF", "UM", "NET PRICE US$"]
    rows = [
        ["A210", "SBS C1S", 12, 52, "CW", 65.1],
        ["B105", "CUK C1S", 16, 65, "TN", 1088],
        ["C400", "CRB", 16, 64, "MS", 28.75],
    ]
    found = lines([heads, *rows, [], [None, legend]])
    assert [(str(line.state), line.offer.basis) for line in found.values()] == [
        ("accepted", "cwt"), ("accepted", "short_ton"), ("accepted", "msf"),
    ]  # fmt: skip
    twice = lines([heads, *rows, [], [None, f"{legend}  CW=MSF"]])
    assert str(twice["F2"].state) == "question"
