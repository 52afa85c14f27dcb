"""A price cell that says terms of its own behind its price: all of them are read, or the cell is asked about."""

import pytest

from tests.intake.sheets import codes, lines, prices
from tracker.intake.values.prices.price_terms import PriceTerms, price_and_terms

HEAD = ["Grade", "Caliper", "Price"]
OTHER = ["CRB", "20 pt", "$860/ST"]
EUROPE = {
    "de": ("Preise in EUR, Tonne = 1000 kg", ["Sorte", "g/m²", "Preis"]),
    "fr": ("Prix en EUR, tonne = 1000 kg", ["Qualité", "g/m²", "Prix"]),
    "es": ("Precios en EUR, tonelada = 1000 kg", ["Calidad", "g/m²", "Precio"]),
    "sv": ("Priser i EUR, ton = 1000 kg", ["Kvalitet", "g/m²", "Pris"]),
}


def offers(text):
    """What is offered in the cell with these words, and what in the cell below it."""
    found = lines([HEAD, ["SBS C1S", "18 pt", text], OTHER])
    assert prices(found)["C3"] == ("accepted", "860", "short_ton")
    return found["C2"], found["C3"]


def terms(line):
    charges = [(each.label, str(each.price), each.basis) for each in line.offer.charges]
    offer = line.offer
    return {
        name: value
        for name, value in (
            ("least", offer.minimum_kg and round(offer.minimum_kg)),
            ("from", offer.from_kg and round(offer.from_kg)),
            ("below", offer.below_kg and round(offer.below_kg)),
            ("lead", offer.lead_days),
            ("charges", charges),
        )
        if value
    }


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("$1,140/ST (min 10 ST)", {"least": 9072}),
        ("$1,140 / ST, min. 10 ST", {"least": 9072}),
        ("$1,140/ST (40M lb min)", {"least": 18144}),
        ("$1,140/ST from 10 ST", {"from": 9072}),
        ("$1,140/ST (< 10 ST)", {"below": 9072}),
        ("$1,140/ST ex stock", {"lead": (0, 0)}),
        ("$1,140/ST (4 weeks)", {"lead": (28, 28)}),
        ("~ $1,140/ST (4-5 weeks)", {"lead": (28, 35)}),
        ("$1,140/ST FOB mill (4 weeks)", {"lead": (28, 28)}),
        ("$1,140/ST (4 weeks, min 10 ST)", {"least": 9072, "lead": (28, 28)}),
        ("$1,140/ST +3% energy", {"charges": [("energy", "3", None)]}),
        ("$1,140/ST plus $20/ST freight", {"charges": [("freight", "20", "short_ton")]}),
        (
            "$1,140/ST + $20/ST freight + 3% energy",
            {"charges": [("freight", "20", "short_ton"), ("energy", "3", None)]},
        ),
    ],
)
def test_terms_behind_a_price_are_that_rows_own(text, said):
    line, other = offers(text)
    assert (str(line.state), line.offer.price, line.offer.basis) == ("accepted", 1140, "short_ton")
    assert terms(line) == said
    assert terms(other) == {}


@pytest.mark.parametrize(
    ("language", "text", "said"),
    [
        ("de", "1.140 €/t ab 5 t", {"from": 5000}),
        ("de", "1.140 €/t (mind. 5 t)", {"least": 5000}),
        ("de", "1.140 €/t ab Lager", {"lead": (0, 0)}),
        ("de", "1.140 €/t zzgl. 3 % Energiezuschlag", {"charges": [("Energiezuschlag", "3", None)]}),
        ("fr", "1 140 €/t (min. 5 t)", {"least": 5000}),
        ("fr", "1 140 €/t à partir de 5 t", {"from": 5000}),
        ("fr", "1 140 €/t départ usine, 4 semaines", {"lead": (28, 28)}),
        ("es", "1.140 €/t (mín. 5 t)", {"least": 5000}),
        ("es", "1.140 €/t desde 5 t", {"from": 5000}),
        ("es", "1.140 €/t más 25 €/t flete", {"charges": [("flete", "25", "tonne")]}),
        ("sv", "1 140 €/ton (minst 5 ton)", {"least": 5000}),
        ("sv", "1 140 €/ton i lager", {"lead": (0, 0)}),
        ("sv", "1 140 €/ton + 3 % energi", {"charges": [("energi", "3", None)]}),
    ],
)
def test_in_every_language(language, text, said):
    title, head = EUROPE[language]
    found = lines([[title], head, ["GC1", 300, text], ["GD2", 350, "860 €/t"]])
    assert prices(found)["C3"] == ("accepted", "1140", "tonne")
    assert terms(found["C3"]) == said
    assert terms(found["C4"]) == {}


def test_order_sizes_behind_the_prices_of_a_board_end_where_the_next_begins():
    title, head = EUROPE["de"]
    texts = ["1.190 €/t ab 1 t", "1.140 €/t ab 5 t", "1.100 €/t ab 20 t"]
    found = lines([[title], head, *(["GC1", 300, text] for text in texts)])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        (1000, 5000),
        (5000, 20000),
        (20000, None),
    ]


def test_a_load_that_nothing_weighs_is_asked_about_and_the_price_kept():
    line, _ = offers("$1,140/ST TL")
    assert (str(line.state), line.offer.price) == ("question", 1140)
    assert codes(line) == {"bracket-unread", "weight-estimated"}


@pytest.mark.parametrize(
    "text",
    [
        "$1,140/ST (10 ST)",
        "$1,140/ST + $20",
        "$1,140/ST +3%",
        "$1,140/ST energy $20/ST",
        "$1,140/ST incl. 3% energy",
        "$1,140/ST $1,160/ST",
        "$1,140/ST or $1,160/ST TL",
        "$1,140/ST / $1,160/ST ex stock",
        "$1,140/ST min 10 ST, $1,160/ST min 5 ST",
        "$1,140-1,160/ST (4 weeks)",
        "$1,140/ST (30 days)",
        "$1,140/ST net 30",
        "$1,140/ST rolls",
        "$1,140/ST (min 10 ST or 5% extra)",
        "$1,140/ST (4-5 weeks, 6 weeks)",
        "$1,140/ST +3% energy from June",
        "$1,140/ST (4 weeks) on request",
        "$1,140/ST (+$60 sheets)",
    ],
)
def test_what_is_not_wholly_read_is_asked_as_it_stands(text):
    line, _ = offers(text)
    assert (str(line.state), line.offer.price) == ("question", None)
    assert terms(line) == {}


def test_terms_are_not_taken_where_a_column_or_a_remark_says_such_terms():
    beside = lines([[*HEAD, "Lead time"], ["SBS C1S", "18 pt", "$1,140/ST (4 weeks)", "3 weeks"], [*OTHER, "4 weeks"]])
    assert str(beside["C2"].state) == "question"
    remarked = lines([[*HEAD, "Remarks"], ["SBS C1S", "18 pt", "$1,140/ST (4 weeks)", "6 weeks"], [*OTHER, "x"]])
    assert str(remarked["C2"].state) == "question"


def test_terms_of_one_of_several_prices_are_not_the_rows():
    heads = [*HEAD[:2], "FOB mill", "Delivered"]
    found = lines([heads, ["SBS C1S", "18 pt", "$1,140/ST (4 weeks)", "$1,240/ST"], [*OTHER, "$960/ST"]])
    found = {cell: line for cell, line in found.items() if cell.endswith("2")}
    assert {cell: str(line.state) for cell, line in found.items()} == {"C2": "question", "D2": "accepted"}


def test_a_bare_figure_ends_where_brackets_begin_and_its_row_heads_nothing():
    rows = [["Prices in USD/ST"], HEAD, ["SBS C1S", "18 pt", "1140 (ex stock)"], ["CRB", "20 pt", "860 (min 5 ST)"]]
    found = lines([*rows, ["CRB", "22 pt", "850"]])
    assert prices(found) == {
        "C3": ("accepted", "1140", "short_ton"),
        "C4": ("accepted", "860", "short_ton"),
        "C5": ("accepted", "850", "short_ton"),
    }
    assert list(map(terms, found.values())) == [{"lead": (0, 0)}, {"least": 4536}, {}]


@pytest.mark.parametrize("text", ["$1,140/ST", "4 weeks", "240 g/m² (min. 5 t)", "EUR/t ab 5 t", "", "860"])
def test_what_is_no_price_with_terms(text):
    assert price_and_terms(text) is None


def test_sizes_are_told_from_other_terms():
    assert price_and_terms("$1,140/ST TL (4 weeks)") == PriceTerms("$1,140/ST", "TL", "4 weeks")


@pytest.mark.parametrize(
    ("told", "head", "beside", "least", "days"),
    [
        ("€1140/t (min 10 t)", "Lead time", "4 weeks", 10000, (28, 28)),
        ("€1140/t (4 weeks)", "Minimum order", "10 t", 10000, (28, 28)),
        ("€1140/t (4 weeks)", "Remarks", "in sheets", None, (28, 28)),
        ("€1140/t (4 weeks)", "Remarks", "min 10 t", 10000, (28, 28)),
        ("1140 €/t (mind. 10 t)", "Lieferzeit", "4 Wochen", 10000, (28, 28)),
        ("1140 €/t (4 Wochen)", "Bemerkungen", "in Bogen", None, (28, 28)),
        ("1 140 €/t (minimum 10 t)", "Délai", "4 semaines", 10000, (28, 28)),
        ("1140 €/t (mínimo 10 t)", "Plazo de entrega", "4 semanas", 10000, (28, 28)),
        ("1 140 €/t (minst 10 t)", "Leveranstid", "4 veckor", 10000, (28, 28)),
    ],
)
def test_terms_of_another_kind_than_the_columns_beside_are_taken(told, head, beside, least, days):
    rows = [["Grade", "g/m²", "Price", head], ["GC1", 300, told, beside]]
    offer = lines(rows)["C2"].offer
    assert (float(offer.price), offer.minimum_kg and float(offer.minimum_kg), offer.lead_days) == (1140, least, days)


@pytest.mark.parametrize(
    ("told", "head", "beside"),
    [
        ("€1140/t (min 10 t)", "Remarks", "min 5 t"), ("€1,140/t (min 10 t)", "Minimum order", "5 t"),
        ("€1140/t (min 10 t, 4 weeks)", "Lead time", "3 weeks"), ("€1,140/t (4 weeks)", "Remarks", "allow 6 weeks"),
        ("€1140/t +3% energy", "Remarks", "energy surcharge 5%"),
    ],
)  # fmt: skip
def test_terms_of_the_same_kind_as_beside_are_asked_about(told, head, beside):
    assert str(lines([["Grade", "g/m²", "Price", head], ["GC1", 300, told, beside]])["C2"].state) == "question"
