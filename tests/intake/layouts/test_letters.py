"""Offers written as letters: boards and prices in lines of text, and sentences that tell prices by the way."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.validity import Validity
from tracker.trade.offer import State


def test_bare_figures_behind_boards_in_a_letter_are_asked():
    rows = [["We offer, in EUR per tonne:"], ["GC1 250 g/m² 400 µm", 1050], ["Kind regards"], ["Telephone", 5550123]]
    assert set(lines(rows)) == {"B2"}


METRIC = ["Sorte", "g/m²", "Dicke µm", "Preis", "ME"]


def _accepted(found) -> set[str]:
    return {cell for cell, line in found.items() if str(line.state) == "accepted"}


def test_a_line_that_asks_for_several_things_is_read_one_by_one():
    form = ["Lieferant", "Kartonwerk Südhang AG", None, "Währung", "EUR", "Lieferbedingung", "DAP"]
    found = lines([form, METRIC, ["GD2", 300, 385, "905,00", "t"], ["GC2", 275, 470, "1.236,50", "t"]])
    offer = found["D3"].offer
    assert _accepted(found) == {"D3", "D4"}
    assert (offer.vendor, offer.currency, offer.delivered) == ("Kartonwerk Südhang AG", "EUR", True)


def test_rows_of_dots_lead_to_a_price_and_are_no_minus():
    found = lines(
        [
            ["DELIVERED PRICES"],
            ["SBS C1S 12 pt 51 lb/MSF ............ $1,262/ST"],
            ["CCNB 18 pt 70 lb/MSF ..... $930/ST"],
        ]
    )
    assert found["A2"].offer.price == 1262


@pytest.mark.parametrize(
    ("letter", "current", "new"),
    [
        ("From 1 October 2026 the prices in the right column apply.", "Current price", "New price 01/10"),
        ("Ab 1. Oktober 2026 gelten die Preise der rechten Spalte.", "Preis aktuell", "Preis neu ab 01.10."),
        ("À partir du 1 octobre 2026, nous appliquerons les prix de droite.", "Prix actuel", "Nouveau prix 01/10"),
        ("A partir del 1 de octubre de 2026 aplicaremos los precios nuevos.", "Precio actual", "Precio nuevo 01/10"),
        ("Från den 1 oktober 2026 gäller de nya priserna.", "Nuvarande pris", "Nytt pris 1/10"),
    ],
)
def test_a_letter_of_new_prices_offers_the_new_ones_and_asks_without_it(letter, current, new):
    rows = [["Qualité", "g/m²", "µm", current, new], ["GC2", 260, 430, 1290, 1325], ["GD2", 320, 410, 845, 880]]
    found = read([[letter], ["EUR/t"], [], *rows]).lines
    assert [(line.offer.source.cell, str(line.state)) for line in found] == [("E5", "accepted"), ("E6", "accepted")]
    assert {str(line.state) for line in read([["EUR/t"], [], *rows]).lines} == {"question"}


def test_a_greeting_estimates_no_price_and_a_department_is_no_firm():
    rows = [["Calidad", "g/m²", "µm", "€/t"], ["GC2", 260, 430, 1290]]
    reading = read([["Papelera Valtuerto, S.L."], ["Estimado cliente:"], [], *rows, [], ["Dpto. Comercial"]])
    assert (reading.vendor, {note.code.value for note in reading.lines[0].notes}) == ("Papelera Valtuerto, S.L.", set())
    assert read([["Precio estimado:"], [], *rows]).lines[0].notes


@pytest.mark.parametrize(("gap", "states"), [([None], ["accepted", "accepted"]), ([], ["accepted", "accepted"])])
def test_a_letter_s_boards_and_their_prices_with_an_empty_column_between(gap, states):
    rows = [
        ["Nordvik Carton AB"],
        ["GC2 270 g/m² 440 µm", *gap, "1 312 €/tonne"],
        ["GD2 300 g/m² 385 µm", *gap, "884,50 €/tonne"],
    ]
    assert [str(line.state) for line in lines(rows).values()] == states


def test_bare_figures_of_a_letter_are_prices_by_the_sentence_above_them():
    said = "Our prices, in US dollars per short ton delivered, are:"
    offers = ["14 pt SBS C1S 58 lb/MSF: 1225", "20 pt CRB C1S 77 lb/MSF – 885"]
    found = lines([["Acme Mill Inc."], [said], *([offer] for offer in offers)])
    assert [(cell, str(line.state), str(line.offer.price)) for cell, line in found.items()] == [
        ("A3", "accepted", "1225"),
        ("A4", "accepted", "885"),
    ]
    assert not lines([["Acme Mill Inc."], ["Weeks from order:"], *([offer] for offer in offers)])


def test_middle_dots_part_what_a_line_says():
    (said,) = (one for one in statements("Valid to 30 April 2027 · Ships 6 to 8 weeks") if isinstance(one, Validity))
    assert said.words == "Valid to 30 April 2027"


def test_a_letters_boards_are_offers_though_one_row_looks_like_a_header():
    rows = [
        ["Harrow Creek Trading LLC"],
        ["Per your mail, here is where we are:"],
        ["18 pt SBS C1S, 75 lb/MSF", "1,168 USD per short ton"],
        ["18 pt CUK, 76 lb/MSF", "54 ½ cents/lb"],
        ["16 pt CCNB, 63 lb/MSF", "43.85 cents/lb"],
        ["28 pt chipboard, 97 lb/MSF", "waiting on mill"],
        ["22 pt CCNB, 85 lb/MSF", "$41.40/cwt"],
    ]
    found = {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}
    assert found == {
        "B3": ("accepted", "1168"),
        "B4": ("accepted", "0.545"),
        "B5": ("accepted", "0.4385"),
        "B7": ("accepted", "41.40"),
    }


HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(
    ("texts", "asked"),
    [
        (["Prices per short ton.", "We can offer SBS C1S 18 pt at $1,190 while stock lasts at the mill."], "A2"),
        (["We can offer", "SBS C1S 18 pt", "at $1,190 per short ton"], "A3"),
        (["SBS C1S 18 pt 75 lb/MSF: reels $1,190/ST, sheets $1,260/ST"], "A1"),
        (["SBS prices will go up by $40 per ton.", "Freight $45 per ton"], None),
    ],
)
def test_in_a_letter_without_an_offer_any_price_is_asked_about(texts, asked):
    reading = read([[text] for text in texts])
    assert {line.offer.source.cell: line.state for line in reading.lines} == ({asked: State.QUESTION} if asked else {})
    assert [passed.why for passed in reading.passed_over] == ([] if asked else ["no prices"])


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        (
            "We can offer SBS C1S 18 pt 75 lb/MSF at $1,190 per short ton, and would like to hear whether it suits.",
            True,
        ),
        ("Our CRB, 18 pt, is $880 per short ton or $31.68 per MSF as long as the stock at the mill lasts.", True),
        ("SBS 18 pt will go up by $40 per short ton.", False),
        ("Sheeting SBS 18 pt costs $1,000 per ton.", False),
        ("SBS 18 pt weighs 75 lb/MSF.", False),
    ],
)
def test_a_price_told_within_a_sentence_is_asked(text, asked):
    for rows in ([["Dear buyer,"], [text]], [[*HEAD, "Price USD/ST"], [*CRB, 900], [], [text]]):
        found = lines(rows)
        assert [found[cell].state for cell in found if cell[0] == "A"] == [State.QUESTION] * asked


def test_a_word_that_a_narrow_column_parts_is_one():
    rows = [["Sorte", "g/m²", "µm", "Grund-\npreis", "Mindest-\nabnahme"], [None, None, None, "€/t", "kg"]]
    (line,) = lines([*rows, ["GD2", 280, 365, 845, 3000]]).values()
    assert line.offer.minimum_kg == 3000


@pytest.mark.parametrize(
    ("line", "note"),
    [
        ("GD2 450 g/m² 590 µm    €860 - €895 depending on reel width", "not one price"),
        ("GD2 450 g/m² 590 µm    860-895 € je nach Rollenbreite", "not one price"),
        ("GD2 450 g/m² 590 µm    €935 depending on reel width", "not understood"),
        ("GD2 450 g/m² 590 µm    935 € selon laize", "not understood"),
    ],
)
def test_a_line_whose_price_goes_by_something_is_asked_about(line, note):
    found = lines([["EUR per tonne, delivered"], [], ["GC1 240 g/m² 390 µm    €1355"], [line]])
    assert [str(one.state) for one in found.values()] == ["accepted", "question"]
    assert any(note in one.text for one in found["A4"].notes)


def test_a_line_without_a_price_that_goes_by_something_is_none():
    rows = [["EUR per tonne, delivered"], [], ["GC1 240 g/m² 390 µm    €1355"], ["GD2 450 g/m²: depending on stock"]]
    assert list(lines(rows)) == ["A3"]
