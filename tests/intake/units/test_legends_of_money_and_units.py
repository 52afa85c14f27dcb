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


CODED = [["GC1", 255, 410, 1242, "A"], ["GC1", 325, 560, 402.5, "B"], ["GC2", 300, 470, 417, "D"]]


@pytest.mark.parametrize(
    ("head", "legend"),
    [
        (
            "Code",
            ["Code A: figure is euros per metric tonne", "Code B: euros per 1,000 m²", "Code D: euros per roll"],
        ),
        ("Kz", ["Kz A: Preis in Euro je 1.000 kg; Kz B: Preis in Euro je 1.000 m²; Kz D: Preis in Euro je Rolle"]),
        ("Code", ["Code A : prix en euros par tonne", "Code B : euros par 1000 m²", "Code D : euros par bobine"]),
        ("Clave", ["Clave A: precio en euros por tonelada métrica", "Clave B: importe en euros por 1.000 m²"]),
        ("Kod", ["Kod A: priset är i euro per 1000 kg", "Kod B: priset anges i euro per 1000 m²"]),
    ],
)
def test_codes_that_sentences_explain_by_the_head_of_their_column(head, legend):
    rows = [["Board", "gsm", "Micron", "Figure", head], *CODED, [], *([line] for line in legend)]
    told = offered(rows)
    assert told[:2] == [("1242", "EUR", "tonne", "accepted"), ("402.5", "EUR", "1000m2", "accepted")]
    assert told[2][2:] == (None, "question")


@pytest.mark.parametrize(
    "legend",
    [
        ["Code A: coated one side", "Code B: coated two sides"],
        ["Code A: euros per tonne", "Code A: euros per 1,000 m²"],
        ["Class A: figure is euros per tonne", "Class B: figure is euros per 1,000 m²"],
        ["Code A: figure is euros per tonne before the yearly bonus", "Code B: euros per 1,000 m² if on stock"],
    ],
)
def test_codes_that_are_no_units_or_not_certain_settle_none(legend):
    rows = [["Board", "gsm", "Micron", "Figure", "Code"], *CODED, [], *([line] for line in legend)]
    assert {one[3] for one in offered(rows)} == {"question"}


PRICED = [
    ["CRB", 18, 70, 886, "A"],
    ["CRB", 20, 77, 43.4, "B"],
    ["URB", 24, 83, 0.36, "C"],
    ["URB", 30, 104, 1008, "D"],
]
KEY = [["A", "US$ per short ton"], ["B", "US$ per cwt"], ["C", "US$ per lb"]]


@pytest.mark.parametrize(
    "rows",
    [
        [*PRICED, [], *KEY],
        [*PRICED, [], ["A = US$ per short ton; B = US$ per cwt; C = US$ per lb"]],
        [[*row, None, None, *key] for row, key in zip(PRICED, [*KEY, []], strict=True)],
    ],
)
@pytest.mark.parametrize("head", ["Code", "PE", "Ref.", "Kz"])
def test_codes_under_any_head_stand_for_the_units_of_a_key(rows, head):
    told = offered([["Board", "pt", "lb/MSF", "Price", head], *rows])
    assert [one[1:] for one in told[:3]] == [
        ("USD", "short_ton", "accepted"), ("USD", "cwt", "accepted"), ("USD", "lb", "accepted"),
    ]  # fmt: skip
    assert told[3][3] == "question"


def test_figures_are_codes_where_a_key_says_so():
    rows = [["GC1", 250, 405, None, 1235, 1], ["GC1", 250, 405, "70 x 100", 231, 2], ["GT2", 320, 415, None, 88.5, 3]]
    key = [["PE = Preiseinheit:"], ["1 = EUR je Tonne (1.000 kg)"], ["2 = EUR je 1.000 Bogen"], ["3 = EUR je 100 kg"]]
    told = offered([["Sorte", "g/m²", "Dicke µm", "Format cm", "Preis", "PE"], *rows, [], *key])
    assert [one[1:] for one in told] == [
        ("EUR", "tonne", "accepted"), ("EUR", "1000sheets", "accepted"), ("EUR", None, "question"),
    ]  # fmt: skip


def test_a_code_that_a_key_explains_says_nothing_of_the_others():
    rows = [["Board", "pt", "lb/MSF", "Price", "Kz"], *PRICED, [], ["A = US$ per short ton"]]
    assert [one[3] for one in offered(rows)] == ["accepted", "question", "question", "question"]


@pytest.mark.parametrize(
    ("note", "currency"),
    [
        ("A = per tonne; B = per kg (net). Prices in pounds sterling.", "GBP"),
        ("A = je Tonne; B = je kg (netto). Alle Preise in Euro.", "EUR"),
        ("A = la tonne ; B = le kg (net). Tous les prix en euros.", "EUR"),
        ("A = por tonelada; B = por kg (neto). Todos los precios en euros.", "EUR"),
        ("A = per ton; B = per kg (netto). Alla priser i euro.", "EUR"),
    ],
)
def test_a_sentence_behind_the_codes_holds_for_all_of_them(note, currency):
    rows = [["Grade", "g/m²", "µm", "Unit", "Price"], ["GC1", 250, 400, "A", 1149], ["GC2", 260, 440, "B", 1.125]]
    found = lines([*rows, [], [note]])
    assert [(str(line.state), line.offer.currency) for line in found.values()] == [("accepted", currency)] * 2


def test_what_the_last_code_says_holds_for_it_alone():
    rows = [["Grade", "g/m²", "µm", "Unit", "Price"], ["GC1", 250, 400, "A", 1149], ["GC2", 260, 440, "B", 1.125]]
    found = lines([*rows, [], ["A = per tonne; B = euros per kg."]])
    assert [line.offer.currency for line in found.values()] == [None, "EUR"]
