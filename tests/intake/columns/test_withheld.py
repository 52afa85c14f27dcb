"""Figures like prices under heads that say something else: asked, and never passed over in silence."""

import pytest

from tests.intake.sheets import read

BOARD = ["Grade", "µm", "g/m²"]
ROWS = [["GD2", 450, 300, 900, 850], ["GT2", 400, 280, 880, 840]]


@pytest.mark.parametrize(
    "heads",
    [
        ["Rückseite weiß", "Rückseite grau"], ["Q1 2027", "Q2 2027"], ["Januar", "Februar"], ["Jan 2027", "Feb 2027"],
        ["2026", "2027"], ["MOQ 1 t", "MOQ 5 t"],
    ],
)  # fmt: skip
def test_two_such_columns_beside_measured_boards_are_asked(heads):
    reading = read([["EUR/t"], [*BOARD, *heads], *ROWS])
    assert {line.offer.source.cell for line in reading.lines} == {"D3", "E3", "D4", "E4"}
    assert {str(line.state) for line in reading.lines} == {"question"}
    assert {line.offer.minimum_kg for line in reading.lines} == {None}


@pytest.mark.parametrize("rows", [[row[:4] for row in ROWS], ROWS[:1]])
def test_quarters_that_nothing_compares_are_asked_under_a_title_that_names_money(rows):
    asked = read([["EUR/t"], [*BOARD, "Q1 2027", "Q2 2027"][: len(rows[0])], *rows])
    assert {str(line.state) for line in asked.lines} == {"question"}


@pytest.mark.parametrize(
    ("title", "heads", "figures"),
    [
        ("Technical data", ["Stiffness MD", "Stiffness CD"], [30, 15]),
        ("Technical data", ["Brightness top", "Brightness back"], [90, 88]),
        ("Price development EUR/t", ["Jan", "Feb", "Mar", "Apr", "May"], [900, 910, 920, 930, 940]),
    ],
)
def test_properties_and_histories_are_not(title, heads, figures):
    reading = read([[title], [*BOARD, *heads], ["GC1", 450, 300, *figures], ["GC2", 400, 280, *figures]])
    assert not reading.lines
    assert [passed.why for passed in reading.passed_over] == ["no prices offered"]


@pytest.mark.parametrize(
    "heads",
    [
        ["Ship Jul 27", "Ship Aug 27", "Ship Sep 27", "Ship Oct 27", "Ship Nov 27"],
        ["For Oct. delivery", "For Nov. delivery"], ["Lieferung Juli", "Lieferung August"],
        ["Abnahme im 3. Quartal", "Abnahme im 4. Quartal"], ["Livraison T3 2027", "Livraison T4 2027"],
        ["Entrega julio", "Entrega agosto"], ["Leverans juli", "Leverans augusti"],
    ],
)  # fmt: skip
def test_prices_by_the_month_in_which_board_leaves_are_asked(heads):
    figures = [[900 - 20 * row + column for column in range(len(heads))] for row in range(2)]
    reading = read([["EUR/1000 kg"], [*BOARD, *heads], ["GD2", 450, 300, *figures[0]], ["GT2", 400, 280, *figures[1]]])
    assert len(reading.lines) == 2 * len(heads)
    assert {str(line.state) for line in reading.lines} == {"question"}
    assert [question.key for question in reading.questions] == ["price-column"]


@pytest.mark.parametrize("heads", [["3. Quartal", "4. Quartal"], ["3rd quarter", "4th quarter"]])
def test_quarters_in_words_are_asked_as_quarters_are(heads):
    reading = read([["EUR/1000 kg"], [*BOARD, *heads], *ROWS])
    assert {str(line.state) for line in reading.lines} == {"question"}
    assert "several periods" in reading.questions[0].text


def test_days_until_board_leaves_are_none_beside_a_price():
    reading = read([["EUR/1000 kg"], [*BOARD, "Price", "Ship Jul (days)"], *[[*row[:4], 20] for row in ROWS]])
    assert {line.offer.source.cell for line in reading.lines} == {"D3", "D4"}
    assert {str(line.state) for line in reading.lines} == {"accepted"}
