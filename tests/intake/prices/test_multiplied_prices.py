"""Figures that a note or a head multiplies are not the prices themselves: they are asked about, once."""

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.intake.values.prices.multiples import multiplied
from tracker.trade.offer import State

HEAD = ["Board", "µm", "g/m²"]
GC1 = ["GC1", 450, 300]


def listed(note="", head="EUR/t", price=1100, **more):
    return read([[note], [*HEAD, head], [*GC1, price], ["GD2", 400, 280, 700]], **more)


@pytest.mark.parametrize(
    "note",
    [
        "Prices subject to a factor of 0.95", "Multiply by 0.95", "List x 0.95 = your net", "Your multiplier: 0.95",
        "Faktor 0,95 anzuwenden", "Auf alle Preise ist der Faktor 0,95 anzuwenden", "Teuerungsfaktor 1,03",
        "Coefficient 0,95 à appliquer", "Appliquer un facteur de 0,95", "Aplicar un factor de 0,95",
        "Coeficiente 0,95 a aplicar", "Precios por 0,95 desde mayo", "Faktor 0,95 tillämpas", "Alla priser gånger 0,95",
        "Prices in thousands of EUR", "EUR thousands", "Prices in EUR (000s)", "EUR '000 per t", "Preise in Tsd. EUR",
        "Prix en milliers d'euros", "Precios en miles de EUR", "Priser i tusental",
    ],
)  # fmt: skip
def test_a_note_that_multiplies_is_one_question(note):
    assert [str(line.state) for line in listed(note).lines] == ["question"] * 2
    assert len(listed(note).questions) == 1


@pytest.mark.parametrize(
    "head",
    [
        "EUR/t x1000", "EUR/t ×1000", "EUR/t ('000)", "Price x1000 EUR/t", "EUR 000/t", "Price (thousands) EUR/t",
        "Preis Tsd. EUR/t", "Prix (milliers EUR/t)", "Precio (miles EUR/t)", "EUR ×10³/t", "Price EUR/t (in 1000)",
    ],
)  # fmt: skip
@pytest.mark.parametrize("price", [1.1, 1100])
def test_a_head_that_multiplies_is_one_question(head, price):
    reading = read([[*HEAD, head], [*GC1, price]])
    assert [str(line.state) for line in reading.lines] == ["question"]
    assert len(reading.questions) == 1


@pytest.mark.parametrize(
    "note",
    [
        "Lead times 2.5 weeks. Prices firm.", "Conversion factor lb/MSF to g/m² 4.882", "Umrechnungsfaktor 1,102",
        "Multiply points by 25.4 to get microns", "To convert to short tons multiply by 0.907",
        "Stacking factor 2.5 high", "Rolls 3 x 1000 kg", "Sheets 700 x 1000 per pallet",
        "Capital 1 200 000 €", "Stammkapital 1.200.000 EUR",
    ],
)  # fmt: skip
def test_other_multiples_are_none_of_the_prices(note):
    assert [str(line.state) for line in listed(note).lines] == ["accepted"] * 2


def test_what_a_price_is_per_is_no_factor():
    assert multiplied("Precios por 0,95")
    assert not any(map(multiplied, ("Precios por 1.000 hojas", "Precio por 0,5 m2", "Precio por tonelada")))


@pytest.mark.parametrize("head", ["EUR per thousand sheets", "EUR/1,000 sheets", "Preis/Tsd. Bogen EUR", "EUR/M"])
def test_a_price_per_thousand_sheets_counts_no_thousands(head):
    (line,) = lines([[*HEAD, "Sheet", head], [*GC1, "700 x 1000 mm", 320]]).values()
    assert (line.state, line.offer.basis) == (State.ACCEPTED, "1000sheets")


def test_the_answer_that_the_figures_stand_takes_them_as_they_are():
    (question,) = listed("All prices less 3 %").questions
    assert [choice.value for choice in question.choices] == ["stand"]
    assert {str(line.offer.price) for line in listed("All prices less 3 %").lines} == {"1100", "700"}
    assert {line.state for line in listed("All prices less 3 %", answers={question.key: "stand"}).lines} == {"accepted"}


AMERICAN_HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(
    "said",
    [
        "Precios en miles de CLP por tonelada métrica",
        "Prices in thousands of JPY per tonne",
        "Prix en milliers de MAD par tonne",
    ],
)
def test_figures_that_count_thousands_of_a_currency_are_asked_about(said):
    found = lines([[said], ["Tipo", "g/m²", "µm", "Precio"], ["GC1", 250, 400, 1085.5]])
    assert (str(found["D3"].state), codes(found["D3"])) == ("question", {"currency-unknown"})


def test_a_price_per_thousand_sheets_counts_no_thousands_of_money():
    rows = [
        ["Prices in EUR per thousand sheets"],
        ["Board", "g/m²", "µm", "Sheet mm", "Price"],
        ["GC1", 250, 400, "700 x 1000", 215],
    ]
    assert str(lines(rows)["E3"].state) == "accepted"


@pytest.mark.parametrize(
    "note",
    [
        "Multiply all prices by 1.05",
        "Price = index × 10",
        "All prices x 1.02",
        "Prices in thousands",
        "Preise in Tausend",
    ],
)
def test_figures_that_a_note_multiplies_are_asked(note):
    (line,) = lines([[*AMERICAN_HEAD, "Price USD/ST"], [*SBS, 1100], [], [note]]).values()
    assert line.state is State.QUESTION
