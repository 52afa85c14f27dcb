"""Tables of charges below the prices or beside them: what no rule reads of them leaves the cost open."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_BOARDS = {
    "en": [["Prices are delivered."], ["Grade", "Caliper (pt)", "Price USD/ST"], ["SBS", 18, 1200], ["CUK", 20, 900]],
    "de": [["Preise frei Haus."], ["Sorte", "g/m²", "Preis EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]],
    "fr": [["Prix franco"], ["Sorte", "g/m²", "Prix EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]],
    "es": [["Precios franco destino"], ["Calidad", "g/m²", "Precio EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]],
    "sv": [["Priser fritt levererat"], ["Kvalitet", "g/m²", "Pris EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]],
}


def _charges(language, *below):
    found = lines([*_BOARDS[language], [], *map(list, below)])
    return [
        sorted(f"{one.label} {one.price if one.currency != OPEN else 'open'}" for one in line.offer.charges)
        for line in found.values()
    ]


@pytest.mark.parametrize(
    ("language", "below", "charge"),
    [
        ("en", [["Charge", "USD/ST"], ["Freight", 42], ["Energy surcharge", 25]], "Energy surcharge"),
        ("en", [["Item", "Amount"], ["Energy surcharge", "3%"]], "Energy surcharge"),
        ("en", [["Grade", "Energy surcharge USD/ST"], ["SBS", 25], ["CUK", 20]], "Energy surcharge"),
        ("en", [["Roll width", "Surcharge USD/ST"], ["under 24 in", 40]], "Surcharge"),
        ("en", [["Order size", "Surcharge USD/ST"], ["under 5 ST", 40]], "Surcharge"),
        ("de", [["Position", "Betrag"], ["Energiezuschlag", "25 EUR/t"]], "Energiezuschlag"),
        ("fr", [["Poste", "Montant"], ["Surcharge énergie", "25 EUR/t"]], "Surcharge énergie"),
        ("es", [["Concepto", "EUR/t"], ["Transporte", 42], ["Recargo energético", 25]], "Recargo energético"),
        ("sv", [["Kvalitet", "Energitillägg EUR/t"], ["GC1", 25], ["GD2", 20]], "Energitillägg"),
    ],
)
def test_what_they_name_is_open_on_every_line(language, below, charge):
    assert _charges(language, *below) == [[f"{charge} open"]] * 2


def test_a_list_of_surcharges_opens_each_of_them():
    below = [["Zuschläge", "EUR/t"], ["Schmalrollen unter 600 mm", 40], ["FSC", 15], ["Energie", 25]]
    assert _charges("de", *below) == [["Energie open", "FSC open", "Schmalrollen unter 600 mm open"]] * 2


@pytest.mark.parametrize(
    ("language", "line", "entry", "label"),
    [
        ("en", "Surcharges:", "Rolls under 20 in $1.00/cwt", "Rolls under 20 in"),
        ("de", "Zuschläge:", "Schmalrollen unter 600 mm 40 EUR/t", "Schmalrollen unter 600 mm"),
    ],
)
def test_a_size_with_an_amount_below_such_a_line_is_open_too(language, line, entry, label):
    assert _charges(language, [line], [entry]) == [[f"{label} open"]] * 2


@pytest.mark.parametrize(
    ("language", "below"),
    [
        ("en", [["Surcharges", "USD/ST"], ["Energy", 25]]),
        ("de", [["Zuschlag", "EUR/t"], ["Energie", 25]]),
        ("fr", [["Supplément", "EUR/t"], ["Énergie", 25]]),
        ("es", [["Recargo", "EUR/t"], ["Energía", 25]]),
        ("sv", [["Tillägg", "EUR/t"], ["Energi", 25]]),
    ],
)
def test_what_is_read_is_charged(language, below):
    assert _charges(language, *below) == [[f"{below[1][0]} 25"]] * 2


@pytest.mark.parametrize(
    "below",
    [
        [["Zone", "Freight USD/ST"], ["1", 42], ["2", 60]],
        [["Service", "USD/ST"], ["Sheeting", 60], ["Rewinding", 40]],
        [["Item", "Amount"], ["Energy surcharge (optional)", "3%"]],
        [["Grade", "Lead time"], ["SBS", "4 weeks"]],
    ],
)
def test_freight_to_others_and_what_a_buyer_may_do_without_open_nothing(below):
    assert _charges("en", *below) == [[]] * 2
