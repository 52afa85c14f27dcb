"""What marks a price without a word beside it: comments, struck boards, and words that make it indicative."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.grid import Grid
from tracker.intake.read import read_workbook
from tracker.intake.values.prices.indicative import marks_indicative
from tracker.trade.offer import Answers


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_a_note_on_struck_prices_leaves_the_list_standing():
    rows = [
        ["Preisliste 8, EUR/t"],
        ["Durchgestrichene Preise sind nicht mehr gültig."],
        ["Sorte", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert prices(lines(rows)) == {"D4": ("accepted", "1320", "tonne")}


HEAD = ["Product", "Grade", "g/m²", "EUR/t"]
BOARD = ["White", "GC1", 250, 1145]
GREY = ["Grey", "GD2", 300, 905]


def marked(where=(1, 3), answers=None, **marks):
    """The first line of a list with one marked cell, and the second, which has none."""
    plain = grid([HEAD, BOARD, GREY])
    cells = {**plain.cells, where: plain.cells[where]._replace(**marks)}
    return read_workbook(book(Grid(plain.sheet, cells)), Answers(answers or {})).lines


@pytest.mark.parametrize(
    "text",
    [
        "Indicative prices", "BUDGETARY ONLY", "Quotation, not binding", "Richtpreise", "Angebot freibleibend",
        "Prix donnés à titre indicatif", "Precios orientativos", "Riktpriser, ej bindande",
    ],
)  # fmt: skip
def test_prices_marked_indicative_are_accepted_with_a_note(text):
    (line,) = lines([[text], HEAD, BOARD]).values()
    assert (str(line.state), codes(line)) == ("accepted", {"number-ambiguous"})
    assert any(text in note.text for note in line.notes)
    remarked, plain = lines([[*HEAD, "Remarks"], [*BOARD, text], GREY]).values()
    assert (codes(remarked), codes(plain)) == ({"number-ambiguous"}, set())


def test_a_head_or_the_cell_itself_may_mark_them_so():
    (line,) = lines([[*HEAD[:3], "Indicative price EUR/t"], BOARD]).values()
    assert (str(line.state), codes(line)) == ("accepted", {"number-ambiguous"})
    (line,) = lines([HEAD, [*BOARD[:3], "1145 (indicative)"]]).values()
    assert (str(line.state), codes(line)) == ("accepted", {"number-ambiguous"})


@pytest.mark.parametrize(
    "text",
    [
        "Lead times are indicative", "Basis weights indicative", "Budget order", "Prices are firm, not indicative",
        "Lieferzeit unverbindlich 4 Wochen", "Délais indicatifs", "Grammages indicatifs", "Unit 4, Ind. Estate",
    ],
)  # fmt: skip
def test_what_else_is_indicative_leaves_prices_firm(text):
    (line,) = lines([[text], HEAD, BOARD]).values()
    assert "number-ambiguous" not in codes(line)


@pytest.mark.parametrize(
    "comment",
    ["withdrawn, ask for new price", "less 5 %", "abzüglich 3 % Rabatt", "remise 3 %", "descuento 5 %", "rabatt 5 %"],
)
def test_a_comment_that_changes_its_price_is_asked(comment):
    changed, plain = marked(comment=comment)
    assert (str(changed.state), str(plain.state)) == ("question", "accepted")
    assert any(comment in note.text for note in changed.notes)
    answered, _ = marked(comment=comment, answers={f"price-change:{comment}": "stand"})
    assert str(answered.state) == "accepted"


def test_terms_in_a_comment_are_its_prices_own():
    held, plain = marked(comment="valid until 31 Oct 2026")
    assert (held.offer.valid_until, plain.offer.valid_until) == (date(2026, 10, 31), None)
    late, _ = marked(comment="Lieferzeit 6 Wochen")
    assert late.offer.lead_days == (42, 42)
    charged, plain = marked(comment="plus energy surcharge 3 %")
    assert [(each.label, each.price) for each in charged.offer.charges] == [("energy surcharge", Decimal(3))]
    assert plain.offer.charges == ()


@pytest.mark.parametrize("comment", ["checked by K.", "valid until 31 Oct 2026", "indicative", "Anna:\nnur Rolle"])
def test_every_comment_at_a_price_is_told(comment):
    told, plain = marked(comment=comment)
    assert (str(told.state), codes(told), codes(plain)) == ("accepted", {"number-ambiguous"}, set())
    assert any("A comment at this price" in note.text for note in told.notes)


@pytest.mark.parametrize("column", [0, 1, 2])
def test_a_struck_board_beside_a_price_is_asked_about(column):
    struck, plain = marked((1, column), struck=True)
    assert (str(struck.state), str(plain.state)) == ("question", "accepted")
    assert any("struck through" in note.text for note in struck.notes)
    answered, _ = marked((1, column), {f"price-change:{BOARD[column]}".lower(): "stand"}, struck=True)
    assert str(answered.state) == "accepted"


def test_a_struck_price_is_none():
    (line,) = marked(struck=True)
    assert line.offer.product == "Grey"


@pytest.mark.parametrize(
    ("note", "marked"),
    [("Prices are estimates.", True), ("Estimated prices.", True), ("Budget figures.", True),
     ("Die Preise sind Schätzungen.", True), ("Geschätzte Preise.", True), ("Budgetzahlen.", True),
     ("Les prix sont des estimations.", True), ("Prix estimés.", True), ("Los precios son estimaciones.", True),
     ("Priserna är uppskattningar.", True), ("Lead times are estimates.", False), ("Weights are estimated.", False),
     ("Lieferzeiten sind geschätzt.", False), ("Les délais sont des estimations.", False),
     ("Los plazos son estimados.", False), ("Leveranstiderna är uppskattade.", False),
     ("Prices are not estimates.", False)],
)  # fmt: skip
def test_prices_called_estimates_are_noted(note, marked):
    assert marks_indicative(note) is marked
