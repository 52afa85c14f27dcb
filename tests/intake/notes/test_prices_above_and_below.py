"""A line between two lots of boards, or two tables, is about the prices above only where it begins with them."""

from datetime import date

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "g/m²", "Price EUR/t"]
_ABOVE, _BELOW = [["SBS", 300, 1200], ["CUK", 350, 900]], [["CRB", 300, 700], ["URB", 350, 600]]


def _offers(note, *, between=()):
    """The first line above the note and the first below it."""
    found = [line.offer for line in lines([_HEAD, *_ABOVE, *between, [note], *between, *_BELOW]).values()]
    return found[0], found[2]


def _delivered(note, **more):
    return [offer.delivered for offer in _offers(note, **more)]


@pytest.mark.parametrize(
    "note",
    [
        "Same as the above, FOB mill", "As the above but FOB mill:", "Unlike the above, FOB mill:",
        "Contrary to the above: FOB mill", "In addition to the prices above, FOB mill",
        "Export: replaces the above prices, FOB mill", "Special grades (not in the above prices) - FOB mill",
        "Heavier than the above, FOB mill", "Substitutes for the above grades, FOB mill",
        "Seconds of the above grades, FOB mill", "The above grades in jumbo rolls, FOB mill",
        "The above grades made to order, FOB mill", "Not included in the above prices: FOB mill",
        "Gleiche Bedingungen wie obige Sorten, jedoch ab Werk", "Anders als obige Preise: ab Werk",
        "Alternativ zu obigen Sorten, ab Werk", "Obige Sorten in Bogen, ab Werk",
        "Ergänzend zu obige Preise: ab Werk", "Contrairement aux prix ci-dessus, départ usine :",
        "Mêmes conditions que les qualités ci-dessus, départ usine", "Los artículos de arriba en hojas, en fábrica",
        "Como los precios de arriba, en fábrica", "Som ovanstående kvaliteter, fritt fabrik",
    ],
)  # fmt: skip
def test_what_only_points_at_rows_above_is_said_of_the_rows_below(note):
    assert _delivered(note) == [None, False]


@pytest.mark.parametrize(
    "note",
    ["Prices above 20 tonnes, delivered", "Prices above 10,000 lb, delivered", "Prices above 300 g/m²: delivered"],
)
def test_prices_above_a_figure_are_those_of_more(note):
    assert _delivered(note) == [None, True]


@pytest.mark.parametrize(
    "note",
    [
        "The above and below prices are FOB mill", "Prices above/below FOB mill",
        "All the above and the following: FOB mill", "Die obigen und die folgenden Preise gelten ab Werk.",
        "Les prix ci-dessus et ci-dessous s'entendent départ usine.",
        "Los precios de arriba y de abajo son en fábrica.", "Priserna ovan och nedan gäller fritt fabrik.",
    ],
)  # fmt: skip
def test_what_is_said_of_both_holds_for_both(note):
    assert _delivered(note) == [False, False]


@pytest.mark.parametrize("between", [(), ([],), ([], [])])
@pytest.mark.parametrize(
    "note",
    [
        "Above prices FOB mill. Prices below delivered.", "Above prices FOB mill, below delivered:",
        "The above are FOB mill, the following prices are delivered.",
        "Prices in EUR. Those above FOB mill, those below delivered.",
        "Obige Preise ab Werk, untenstehende Preise frei Haus.",
        "Die obigen Preise verstehen sich ab Werk, die unteren frei Haus.",
        "Les prix ci-dessus s'entendent départ usine. Les prix ci-dessous s'entendent rendus chez vous.",
        "Los precios de arriba son en fábrica; los de abajo, puestos en destino.",
        "Priserna ovan gäller fritt fabrik, priserna nedan fritt levererat.",
    ],
)  # fmt: skip
@pytest.mark.parametrize("headed", [False, True])
def test_each_sentence_goes_to_its_own_side(note, between, headed):
    rows = [_HEAD, *_ABOVE, *between, [note], *between, *([_HEAD] if headed else []), *_BELOW]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, False, True, True]


@pytest.mark.parametrize(
    "note",
    [
        "The above prices are valid to 31 December 2026, those below to 31 January 2027",
        "Die obigen Preise gelten bis 31.12.2026, die unteren bis 31.1.2027",
        "Les prix ci-dessus sont valables jusqu'au 31 décembre 2026, ceux ci-dessous jusqu'au 31 janvier 2027",
        "Los precios de arriba son válidos hasta el 31 de diciembre de 2026, los de abajo hasta el 31 de enero de 2027",
        "Ovanstående priser gäller till 31 december 2026, nedanstående till 31 januari 2027",
    ],
)
def test_what_the_second_side_leaves_out_is_that_of_the_first(note):
    assert [offer.valid_until for offer in _offers(note)] == [date(2026, 12, 31), date(2027, 1, 31)]


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Freight is included in the above prices.", True), ("In den obigen Preisen ist die Fracht enthalten.", True),
        ("Le transport est inclus dans les prix ci-dessus.", None),
        ("El transporte está incluido en los precios de arriba.", None), ("Frakten ingår i ovanstående priser.", None),
    ],
)  # fmt: skip
def test_a_sentence_that_ends_with_the_prices_above_is_not_about_those_below(note, told):
    assert _delivered(note) == [told, None]


@pytest.mark.parametrize(
    "note",
    [
        "Zu den obigen Preisen kommen 3 % Energie hinzu.",
        "Obigen Preisen liegt ein Energiezuschlag von 3 % zugrunde",
    ],
)
def test_so_are_charges_on_top_of_them(note):
    above, below = _offers(note)
    assert ([charge.price for charge in above.charges], below.charges) == ([3], ())


ENERGY = {
    "en": ("Added to the above prices: energy 3 %", "Added to the prices below: energy 3 %"),
    "de": ("Zu den obigen Preisen kommt hinzu: Energie 3 %", "Zu den Preisen unten kommt hinzu: Energie 3 %"),
    "fr": ("S'ajoute aux prix ci-dessus : énergie 3 %", "S'ajoute aux prix ci-dessous : énergie 3 %"),
    "es": ("Se añade a los precios de arriba: energía 3 %", "Se añade a los precios de abajo: energía 3 %"),
    "sv": ("Tillkommer på priserna ovan: energi 3 %", "Tillkommer på priserna nedan: energi 3 %"),
}
"""What is added to the prices above, and to those below."""


@pytest.mark.parametrize("said", ENERGY.values(), ids=ENERGY)
@pytest.mark.parametrize("gap", [[], [[]], [[], _HEAD], [_HEAD]], ids=["lot", "gap", "table", "touching"])
def test_what_is_added_to_one_side_is_charged_on_it_alone(said, gap):
    for side, note in enumerate(said):
        rows = [_HEAD, *_ABOVE, [note], *gap, *_BELOW]
        charged = [[charge.price for charge in line.offer.charges] for line in lines(rows).values()]
        assert charged == ([[3], [3], [], []] if side == 0 else [[], [], [3], [3]])


LED = {
    "en": ("Energy 3 % is added to the above prices", "Energy 3 % is added to the prices below"),
    "de": ("Energie 3 % kommt zu den obigen Preisen hinzu", "Energie 3 % kommt zu den Preisen unten hinzu"),
    "fr": ("Énergie 3 % en sus des prix ci-dessus", "Énergie 3 % en sus des prix ci-dessous"),
    "es": ("Energía 3 % se añade a los precios de arriba", "Energía 3 % se añade a los precios de abajo"),
    "sv": ("Energi 3 % tillkommer på priserna ovan", "Energi 3 % tillkommer på priserna nedan"),
}
"""The same as sentences that begin with the charge."""


@pytest.mark.parametrize("said", LED.values(), ids=LED)
@pytest.mark.parametrize("gap", [[], [[]], [[], _HEAD]], ids=["lot", "gap", "table"])
def test_so_it_is_where_the_charge_is_named_first(said, gap):
    for side, note in enumerate(said):
        rows = [_HEAD, *_ABOVE, [note], *gap, *_BELOW]
        charged = [[charge.price for charge in line.offer.charges] for line in lines(rows).values()]
        assert charged == ([[3], [3], [], []] if side == 0 else [[], [], [3], [3]])


def test_a_charge_that_names_no_side_is_still_of_its_lot():
    rows = [_HEAD, ["SBS"], *_ABOVE, ["Energy 3 %"], ["CRB"], *_BELOW, ["Energy 4 %"]]
    charged = [[charge.price for charge in line.offer.charges] for line in lines(rows).values()]
    assert charged == [[3], [3], [4], [4]]


@pytest.mark.parametrize("gap", [[], [[], _HEAD], [_HEAD]], ids=["lot", "table", "touching"])
def test_so_are_entries_in_rows_below_such_a_line(gap):
    rows = [_HEAD, *_ABOVE, ["Added to the prices above:"], ["Energy 3 %"], ["Toll 4 EUR/t"], *gap, *_BELOW]
    charged = [[charge.price for charge in line.offer.charges] for line in lines(rows).values()]
    assert charged == [[3, 4], [3, 4], [], []]


def test_a_heading_at_the_end_is_of_what_follows():
    assert _delivered("Above prices FOB mill. Special offers, delivered:") == [False, True]


@pytest.mark.parametrize(
    "note", ["Prices below are delivered.", "Nachstehende Preise frei Haus.", "Les prix ci-dessous sont franco."]
)
def test_prices_below_are_not_those_of_the_table_above(note):
    rows = [_HEAD, *_ABOVE, [], [note], [], _HEAD, *_BELOW]
    assert [line.offer.delivered for line in lines(rows).values()] == [None, None, True, True]


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Above prices incl. freight", True), ("Above prices excl. freight", False),
        ("Above prices net, FOB mill", False), ("All of the above are delivered.", True),
        ("All of the above: FOB mill", False), ("Everything above FOB mill", False),
        ("Items listed above: ex works", False), ("Delivery terms for the above: FOB mill", False),
        ("Terms for all the above: delivered", True),
        ("Obige Preise inkl. Fracht", True), ("Obige Preise netto, ab Werk", False),
        ("Sämtliche obigen Preise ab Werk", False), ("Alle vorgenannten Preise ab Werk", False),
        ("Oben: ab Werk", False), ("Prix ci-dessus H.T., départ usine", False), ("Prix ci-dessus nets, franco", True),
        ("L'ensemble des prix ci-dessus s'entend franco", True),
        ("Precios arriba indicados netos, franco fábrica", False),
        ("La totalidad de los precios de arriba, franco fábrica", False),
        ("Los precios anteriores son franco fábrica.", False),
        ("El transporte no está incluido en los precios anteriores.", False),
        ("Ovanstående priser inkl. frakt", True), ("Ovanstående priser exkl. moms, fritt fabrik", False),
        ("Samtliga ovanstående priser fritt fabrik", False),
    ],
)  # fmt: skip
@pytest.mark.parametrize("between", [(), ([],)])
def test_what_is_said_of_all_prices_above_is_said_of_them_alone(note, told, between):
    found = list(lines([_HEAD, *_ABOVE, *between, [note], *between, *_BELOW]).values())
    assert [line.state for line in found] == ["accepted"] * 4
    assert [line.offer.delivered for line in found] == [told, told, None, None]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time for the above: 4 weeks", "Lead time for the above grades is 4 weeks",
        "Lieferzeit für obige Sorten: 4 Wochen", "Délai pour les qualités ci-dessus : 4 semaines.",
        "Plazo para las calidades anteriores: 4 semanas", "Leveranstid för ovanstående: 4 veckor",
    ],
)  # fmt: skip
def test_a_lead_time_for_the_above_is_theirs(note):
    assert [offer.lead_days for offer in _offers(note)] == [(28, 28), None]


@pytest.mark.parametrize(
    "note",
    [
        "Add 40 EUR/t freight to the above prices",
        "Zu den obigen Preisen kommen 40 EUR/t Fracht hinzu.",
        "A los precios anteriores se añade un flete de 40 EUR/t",
    ],
)
def test_freight_is_added_to_the_above_alone(note):
    above, below = _offers(note)
    assert ([charge.price for charge in above.charges], below.charges) == ([40], ())


@pytest.mark.parametrize(
    "note",
    [
        "We deliver the above grades to your works", "Some of the above prices are delivered",
        "FOB mill, above prices in euro", "Wir liefern die obigen Sorten frei Haus",
        "Nous livrons franco les qualités ci-dessus", "Vi levererar ovanstående kvaliteter fritt",
    ],
)  # fmt: skip
def test_of_what_names_the_prices_above_and_is_not_understood_neither_side_has_anything(note):
    assert _delivered(note) == [None, None]


def test_nor_has_it_anything_said_of_the_list_before():
    rows = [["All prices delivered"], _HEAD, *_ABOVE, ["FOB mill, above prices in euro"], *_BELOW]
    assert [line.offer.delivered for line in lines(rows).values()] == [None] * 4


def test_money_and_age_that_may_be_of_either_side_are_asked_about():
    for note in ("We quote the above in CHF", "Old prices above, new prices below"):
        found = lines([_HEAD, *_ABOVE, [note], *_BELOW]).values()
        assert [line.state for line in found] == ["question"] * 4


@pytest.mark.parametrize("note", ["Precios anteriores", "Precios anteriores (hasta el 31 de marzo de 2026)"])
def test_earlier_prices_stand_below_their_heading(note):
    assert [line.offer.price for line in lines([_HEAD, *_ABOVE, [note], *_BELOW]).values()] == [1200, 900]


@pytest.mark.parametrize("note", ["10 tonnes and above: FOB mill", "FOB mill, see conditions above"])
def test_a_limit_and_a_reference_are_no_prices_above(note):
    assert _delivered(note)[0] is None
