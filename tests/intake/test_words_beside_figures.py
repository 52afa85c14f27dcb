"""Notes that are written in another way than the figures of their sheet, or say two things in one breath."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.charges import ChargeWords
from tracker.intake.values.clauses import clauses
from tracker.intake.values.minimum import find_minimum
from tracker.intake.values.statements import SaysCurrency, SaysMinimum, statements
from tracker.trade.footing import footing

HEAD = ["Sorte", "g/m²", "µm"]
POINTS = [["GC1", 240, 375, "1'345.00"], ["GC2", 260, 430, "1'268.50"]]
COMMAS = [["GC1", 240, 375, "1.345,00"], ["GC2", 260, 430, "1.268,50"]]


@pytest.mark.parametrize(
    ("note", "rows"),
    [
        ("Franko Domizil. Energiezuschlag 4,5 % auf alle Preise, Mindestmenge 2,5 t.", POINTS),
        ("Franco. Supplément énergie 4,5 % sur tous les prix. Minimum 2,5 t.", POINTS),
        ("Portes pagados. Recargo energético 4,5 % sobre todos los precios. Pedido mínimo 2,5 t.", POINTS),
        ("Delivered. Energy surcharge 4.5% on all prices. Minimum order 2.5 t.", COMMAS),
        ("Fritt levererat. Energitillägg 4.5 % på alla priser. Minsta order 2.5 t.", COMMAS),
    ],
)
def test_a_note_is_read_as_it_is_written_whatever_sign_the_figures_have(note, rows):
    found = lines([[note], [], [*HEAD, "EUR/t"], *rows])
    offer = found["D4"].offer
    assert [(str(charge.price), charge.basis) for charge in offer.charges] == [("4.5", None)]
    assert offer.minimum_kg == 2500
    assert footing(offer).delivered_per_tonne == pytest.approx(1345 * 1.045)


def test_a_weight_that_the_sheets_sign_makes_grams_of_is_still_told():
    (line, _) = lines([["Minimum order 20,000 kg"], [], [*HEAD, "EUR/t"], *COMMAS]).values()
    assert line.offer.minimum_kg is None
    assert "bracket-unread" in codes(line)


@pytest.mark.parametrize(
    "note",
    [
        "Preise exkl. MWST. Energiezuschlag 4,5 % auf alle Preise.", "Preise zzgl. MwSt. Energiezuschlag 4,5 %.",
        "Precios sin I.V.A. Recargo energético 4,5 %.", "Prix hors T.V.A. Supplément énergie 4,5 %.",
    ],
)  # fmt: skip
def test_a_sentence_ends_with_the_tax(note):
    charged = [said for said in statements(note) if isinstance(said, ChargeWords)]
    assert [(charge.percent, str(charge.amounts[0].value)) for charge in charged] == [(True, "4.5")]


@pytest.mark.parametrize("text", ["zzgl. MwSt. 19 %", "zzgl. gesetzl. MwSt. und Fracht", "inkl. MwSt. ab Werk"])
def test_a_tax_that_goes_on_ends_no_sentence(text):
    assert len(clauses(text)) == 1


@pytest.mark.parametrize(
    "text",
    [
        "Majoration pour commande inférieure à 3 tonnes : 50 € par tonne.",
        "Supplément de 50 €/t pour toute commande inférieure à 3 t", "Commande inférieure à 3 t : nous consulter",
        "Toute commande inférieure à 3 t sera majorée de 50 €/t", "Zuschlag für Aufträge unter 3 t: 50 €/t",
    ],
)  # fmt: skip
def test_what_small_orders_cost_is_no_smallest_order(text):
    assert find_minimum(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "Commande inférieure à 3 t refusée", "Aucune commande inférieure à 3 t", "No item is accepted below 3 t",
        "Unter 3 t nehmen wir nichts an", "Kein Auftrag unter 3 t", "Ningún artículo se acepta por debajo de 3 t",
        "Ingen artikel under 3 t accepteras",
    ],
)  # fmt: skip
def test_what_is_refused_below_is_one(text):
    assert [said.mass.words for said in statements(text) if isinstance(said, SaysMinimum)] == ["3 t"]


@pytest.mark.parametrize(
    "text",
    [
        "Minimum 3 t ; en dessous, majoration de 50 €/t.", "Mindestmenge 3 t; darunter, Zuschlag 50 €/t.",
        "For orders under 5 tons, surcharge $50/ton.", "Pedido mínimo 3 t; por debajo, recargo de 50 €/t.",
        "Minsta order 3 ton; därunter, tillägg 500 kr/ton.",
    ],
)  # fmt: skip
def test_a_surcharge_behind_small_orders_is_theirs_alone(text):
    assert not [said for said in statements(text) if isinstance(said, ChargeWords)]


def test_an_energy_surcharge_behind_small_orders_is_everybodys():
    said = statements("Small orders on request, energy surcharge 3%")
    assert len([one for one in said if isinstance(one, ChargeWords)]) == 1


@pytest.mark.parametrize(
    "clause",
    [
        "Avviker månadskursen mer än 2,5 % justeras priset i SEK.",
        "If the monthly average deviates by more than 2.5 % the price in SEK is adjusted accordingly.",
        "Weicht der Monatsmittelkurs um mehr als 2,5 % ab, wird der Preis in SEK angepasst.",
        "En cas d'écart de plus de 2,5 %, le prix en SEK sera ajusté.",
        "Si la media mensual se desvía más de 2,5 %, el precio en SEK se ajustará.",
    ],
)
def test_a_currency_clause_says_nothing_of_the_money_of_the_prices(clause):
    assert not [said for said in statements(clause) if isinstance(said, SaysCurrency)]


@pytest.mark.parametrize(
    "clause",
    ["Prices in SEK, adjusted if EUR/SEK moves by more than 2 %.", "Prices in SEK per tonne, revised quarterly"],
)
def test_the_money_beside_such_a_clause_is_the_prices(clause):
    assert [said.currency.codes for said in statements(clause) if isinstance(said, SaysCurrency)] == [("SEK",)]


@pytest.mark.parametrize("heads", [("0–5 t", "5–15 t"), ("0-5 ton", "5-15 ton"), ("0 bis 5 t", "5 bis 15 t")])
def test_an_order_size_from_nought_is_open_below(heads):
    found = lines([["Preise in EUR je 1000 kg"], [], [*HEAD, *heads], ["GC1", 240, 375, 1100, 1050]])
    sizes = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert sizes == [(None, 5000), (5000, 15000)]


def test_what_names_no_end_is_no_other_last_day():
    rows = [
        ["Effective with shipments on and after January 4, 2027 the prices below apply"],
        ["Prices hold through March 31, 2027"], [], ["Board", "Caliper (in.)", "lb per MSF", "USD/ST"],
        ["SBS", 0.018, 74, 1140],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert str(line.offer.valid_until) == "2027-03-31"
