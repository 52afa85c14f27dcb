"""Boards on two lines, where the earlier price stands on the second line, below the one to pay."""

import pytest

from tests.intake.sheets import lines, prices

_FIGURES = [(250, 400, "1.148,00", "1.121,00"), (280, 370, "839,50", None), (300, 495, "1.131,00", "1.104,00")]
_BOARDS = ["GC2", "GD2", "GC2"]


def _rows(old, *, numbered=True, numbers=False):
    """Each board's name and price over its measures and, for some, its earlier price."""
    rows = []
    for place, (board, (gsm, um, price, before)) in enumerate(zip(_BOARDS, _FIGURES, strict=True)):
        ahead = [[str(10 * (place + 1))], [None]] if numbered else [[], []]
        exact = float(price.replace(".", "").replace(",", ".")) if numbers else price
        rows.append([*ahead[0], board, exact])
        rows.append([*ahead[1], f"{gsm} g/m², {um} µm", old.format(before) if before else None])
    return rows


def _read(head, rows):
    titles = [["Weidenfurter Kartonagen GmbH"], ["Preise in EUR/t netto, FCA Werk"], []]
    return lines([*titles, head if len(rows[0]) == 3 else head[1:], *rows])


_HEAD = ["Pos.", "Artikel", "Preis EUR/t"]


@pytest.mark.parametrize(
    "old",
    [
        "(bisher {})", "(alter Preis: {})", "(statt {})", "(Vorjahr {})", "(was {})", "(old price: {})",
        "(previously {})",
        "(ancien prix : {})", "(au lieu de {})", "(antes {})", "(precio anterior: {})", "(tidigare {})",
        "(gammalt pris: {})",
    ],
)  # fmt: skip
@pytest.mark.parametrize("numbered", [True, False])
def test_an_earlier_price_below_the_price_begins_no_board(old, numbered):
    found = _read(_HEAD, _rows(old, numbered=numbered, numbers=True))
    column = "C" if numbered else "B"
    assert {cell: state for cell, (state, *_) in prices(found).items()} == {
        f"{column}{row}": "accepted" for row in (5, 7, 9)
    }
    measured = [(float(one.offer.grammage_gsm), float(one.offer.caliper_um)) for one in found.values()]
    assert measured == [(250, 400), (280, 370), (300, 495)]
    assert [float(one.offer.price) for one in found.values()] == [1148, 839.5, 1131]


@pytest.mark.parametrize("more", ["(a. P. {})", "(ab 10 t: {})", "(from 10 t: {})"])
@pytest.mark.parametrize("numbers", [True, False])
def test_another_figure_below_the_price_is_asked_about_and_begins_no_board(more, numbers):
    found = _read(_HEAD, _rows(more, numbers=numbers))
    assert {cell: state for cell, (state, *_) in prices(found).items()} == {
        "C5": "question", "C7": "accepted", "C9": "question",
    }  # fmt: skip
    assert [float(one.offer.grammage_gsm) for one in found.values()] == [250, 280, 300]


def test_a_board_of_its_own_whose_earlier_price_alone_is_told_describes_no_other():
    rows = [["GC2 250 g/m² 400 µm", 1148], ["GC2 280 g/m² 450 µm", "(bisher 1.121,00)"], ["GC2 300 g/m² 495 µm", 1131]]
    found = lines([["Preise in EUR/t netto"], [], ["Artikel", "Preis EUR/t"], *rows])
    assert {cell: state for cell, (state, *_) in prices(found).items()} == {
        "B4": "accepted", "B5": "question", "B6": "accepted",
    }  # fmt: skip
    assert [float(found[cell].offer.grammage_gsm) for cell in ("B4", "B6")] == [250, 300]


def test_boards_whose_grade_is_written_once_keep_their_own_prices():
    rows = [["GC2", "250 g/m²", "£1,100/t"], [None, "300 g/m²", "£1,090/t"], ["GD2", "350 g/m²", "£760/t"]]
    rows.append([None, "400 g/m²", "£752/t"])
    assert sorted(lines([["Grade", "Substance", "Price"], *rows])) == ["C2", "C3", "C4", "C5"]


@pytest.mark.parametrize(
    "old", ["previously 1.150,00", "bisher 1.150,00", "ancien prix : 1.150,00", "antes 1.150,00", "tidigare 1.150,00"]
)
@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("Delivered, 2 weeks", (True, (14, 14), None)), ("min. 5 t", (None, None, 5000)),
        ("Lieferung frei Haus", (True, None, None)), ("franco", (True, None, None)),
        ("portes pagados", (True, None, None)), ("fritt levererat", (True, None, None)),
        ("Coated both sides", (None, None, None)),
    ],
)  # fmt: skip
def test_what_stands_beside_an_earlier_price_is_said_of_the_board_above(old, words, told):
    rows = [["GC1", 250, "1.200,00"], [words, None, old], ["GD2", 300, "900,00"]]
    above, below = (line.offer for line in lines([["Sorte", "g/m²", "Preis EUR/t"], *rows]).values())
    assert (above.delivered, above.lead_days, above.minimum_kg) == told
    assert (below.delivered, below.lead_days, below.minimum_kg, below.coated_sides) == (None,) * 4


def test_a_line_without_an_earlier_price_heads_the_boards_below_it():
    rows = [["GC1", 250, "1.200,00"], ["Delivered, 2 weeks"], ["GD2", 300, "900,00"]]
    found = lines([["Sorte", "g/m²", "Preis EUR/t"], *rows]).values()
    assert [line.offer.delivered for line in found] == [None, True]
