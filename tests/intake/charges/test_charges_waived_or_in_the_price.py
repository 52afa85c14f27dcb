"""What is said and then waived, or said to be a part of the price, is no charge; what is denied, or hangs, remains."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import OPEN, Answers, State

HEAD = ["Board", "Caliper pt", "lb/MSF", "Price USD/cwt"]
CUK, CRB = ["CUK", 16, 66, 55.4], ["CRB", 18, 71, 44.9]


def charged(rows):
    """What each line is charged: (figure, True for a part of the price)."""
    return [[(float(each.price), each.basis is None) for each in line.offer.charges] for line in lines(rows).values()]


def titled(*texts):
    return charged([*([text] for text in texts), [], HEAD, CUK, CRB])


def headed(head, figure, note="", head_price="Price USD/cwt"):
    return charged([[note], [], [*HEAD[:3], head_price, head], [*CUK, figure], [*CRB, figure]])


RATE = [(4.5, True)]


@pytest.mark.parametrize(
    "title",
    [
        "Energy surcharge: 4.5 % of invoice, waived for every item of this quotation.",
        "Energy surcharge 4.5 %. Waived.",
        "Energy surcharge 4.5 %; not charged on these items", "The energy surcharge of 4.5 % has been dropped",
        "Energiezuschlag: entfällt seit 1. April 2026 (bis März 45 EUR/t)", "Energiezuschlag 4,5 %, entfällt",
        "Der Energiezuschlag von 4,5 % wird nicht berechnet", "Energiezuschlag 45 EUR/t fällt nicht an",
        "Surcharge énergie 4,5 %, supprimée pour ces articles", "Supplément énergie de 4,5 % : ne s'applique pas",
        "Recargo energético 4,5 %, no se aplica a estos artículos", "Recargo energético del 4,5 % suspendido",
        "Energitillägg 4,5 %, utgår för dessa artiklar", "Energitillägg 4,5 % tas inte ut",
        "Energy surcharge of 21 USD/ST is part of the price",
    ],
)  # fmt: skip
def test_a_charge_that_is_waived_is_none(title):
    assert titled(title) == [[], []]


@pytest.mark.parametrize(
    "title",
    [
        "Energy surcharge 4.5 %, not waived", "Energy surcharge 4.5 % will not be waived",
        "Energy surcharge 4.5 %, waived for orders over 20 t", "Energy surcharge 4.5 %, freight waived",
        "Freight waived and energy surcharge 4.5 %", "Energiezuschlag 4,5 %, Mindermengenzuschlag entfällt",
        "Energitillägg utgår med 4,5 %", "Surcharge énergie 4,5 % en sus", "Recargo energético 4,5 % se aplica",
    ],
)  # fmt: skip
def test_a_charge_that_is_not_waived_for_all_remains(title):
    assert titled(title) == [RATE, RATE]


def test_a_waiver_may_be_of_one_grade_or_of_a_day_to_come():
    assert titled("Energy surcharge 4.5 %, waived for CUK") == [[], RATE]
    rows = [["Energy surcharge 4.5 %, waived from 1 July 2027"], [], HEAD, CUK]
    assert [each.currency for line in lines(rows).values() for each in line.offer.charges] == [OPEN]


@pytest.mark.parametrize(
    "waiver",
    [
        "The energy surcharge is waived for these items", "All surcharges are waived.", "Der Energiezuschlag entfällt.",
        "La surcharge énergie est suspendue.", "No se aplica el recargo energético.", "Energitillägget slopas.",
    ],
)  # fmt: skip
def test_a_waiver_may_stand_apart_from_the_charge(waiver):
    assert titled("Energy surcharge 4.5 %", waiver) == [[], []]
    assert charged([["Energy surcharge 4.5 %"], [], HEAD, CUK, [], [waiver]]) == [[]]
    assert headed("Energy surcharge %", 4.5, waiver) == [[], []]
    prices, terms = grid([["Energy surcharge 4.5 %"], [], HEAD, CUK]), grid([[waiver]], sheet="Terms")
    assert [line.offer.charges for line in read_workbook(book(prices, terms), Answers()).lines] == [()]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Energy surcharge % (waived)", ""), ("Energy surcharge $/cwt (included)", ""), ("davon Energiezuschlag", ""),
        ("dont énergie", ""), ("varav energitillägg", ""), ("Freight (included)", ""), ("Energiezuschlag inkl.", ""),
        ("Energy surcharge $/cwt", "The energy surcharge shown is included in the price."),
        ("Energiezuschlag", "Der Energiezuschlag ist im Preis enthalten."),
        ("Surcharge énergie", "Les prix comprennent la surcharge énergie."),
        ("Recargo energético", "El recargo energético forma parte del precio."),
        ("Energitillägg", "Energitillägget ingår i priset."),
    ],
)  # fmt: skip
def test_a_column_of_what_the_price_bears_is_no_charge_on_top(head, note):
    assert headed(head, 2.5, note) == [[], []]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Energy surcharge $/cwt (not included)", ""), ("Energy surcharge incl. CO2 $/cwt", ""),
        ("Energy surcharge $/cwt", "The energy surcharge is not included in the price."),
        ("Energy surcharge $/cwt", "VAT included"),
        ("Energiezuschlag $/cwt", "Der Energiezuschlag ist nicht im Preis enthalten."),
        ("Surcharge énergie $/cwt", "La surcharge énergie n'est pas comprise dans le prix."),
        ("Recargo energético $/cwt", "El recargo energético no está incluido en el precio."),
        ("Energitillägg $/cwt", "Energitillägg ingår inte i priset."),
    ],
)  # fmt: skip
def test_a_column_of_what_the_price_does_not_bear_is(head, note):
    assert headed(head, 2.5, note) == [[(2.5, False)]] * 2


@pytest.mark.parametrize(
    ("note", "inward", "outward"),
    [
        ("Freight in is what we pay and is part of the price. Freight out comes on top.", "Freight in", "Freight out"),
        ("Inbound freight is included in the price.", "Inbound freight", "Freight"),
        ("Le fret amont fait partie du prix.", "Fret amont", "Fret aval"),
        ("El flete de entrada está incluido en el precio.", "Flete de entrada", "Flete"),
    ],
)
def test_of_two_freights_the_one_that_the_note_names_is_in_the_price(note, inward, outward):
    rows = [[note], [], [*HEAD[:3], "USD/cwt", f"{inward} $/cwt", f"{outward} $/cwt"], [*CUK, 1, 3]]
    assert charged(rows) == [[(3, False)]]


def test_freight_in_that_is_in_the_price_says_nothing_of_the_freight_to_the_buyer():
    assert headed("Freight $/cwt", 3, "Inbound freight is included in the price.") == [[(3, False)]] * 2


def test_a_title_that_says_what_to_do_with_surcharges_names_no_further_one():
    assert headed("Energy surcharge %", 3.5, "The surcharge is added to the price") == [[(3.5, True)]] * 2


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Waste rebate incl.", ""), ("Rabatt (enthalten) %", ""), ("Remise déjà déduite", ""), ("Dto. ya incluido", ""),
        ("Rabatt ingår", ""), ("Waste rebate %", "The waste rebate is already included in the price."),
        ("Rabatt %", "Der Rabatt ist bereits abgezogen."), ("Remise %", "Remise déjà déduite"),
    ],
)  # fmt: skip
def test_a_discount_that_the_prices_bear_asks_nothing(head, note):
    rows = [[note], [], [*HEAD, head], [*CUK, 2], [*CRB, 2]]
    assert [line.state for line in lines(rows).values()] == [State.ACCEPTED] * 2


@pytest.mark.parametrize("head", ["Waste rebate", "Rabatt nicht enthalten %", "Remise non comprise"])
def test_a_discount_that_they_may_not_bear_is_asked_about(head):
    assert [line.state for line in lines([[*HEAD, head], [*CUK, 2]]).values()] == [State.QUESTION]


@pytest.mark.parametrize(
    ("title", "delivered"),
    [
        ("Freight: included to your plant.", True), ("Transport : compris", True), ("Fracht: inklusive", True),
        ("Flete: no incluido", False), ("Frakt: ej inkluderad", False), ("Freight: see below", None),
    ],
)  # fmt: skip
def test_a_label_may_say_that_freight_is_in(title, delivered):
    assert [line.offer.delivered for line in lines([[title], [], HEAD, CUK]).values()] == [delivered]


@pytest.mark.parametrize(
    "note",
    [
        "Fuel surcharge (3 % of freight) does not apply to FOB mill orders",
        "Le supplément carburant (3 % du transport) ne s'applique pas aux livraisons EXW",
        "El recargo de combustible (3 %) no se aplica a precios EXW",
        "Drivmedelstillägg (3 %) debiteras ej vid leverans fritt vårt bruk",
    ],
)
def test_a_charge_that_some_terms_of_delivery_are_free_of_is_charged_on_others(note):
    table = [["Grade", "µm", "g/m²", "EUR/t"], ["GC1", 450, 250, 1100], [], [note]]
    free, charged = (lines([[f"Prices {terms}"], [], *table])["D4"].offer for terms in ("EXW", "DAP"))
    assert (free.delivered, free.charges) == (False, ())
    assert (charged.delivered, len(charged.charges)) == (True, 1)


@pytest.mark.parametrize("title", ["inkl. Fracht frei Haus", "incl. freight, delivered", "transport inclus franco"])
def test_freight_in_the_price_and_delivered_are_one(title):
    found = lines([[title], [], ["Grade", "µm", "g/m²", "EUR/t"], ["GC1", 450, 250, 1100]])
    assert [(line.offer.delivered, line.offer.charges) for line in found.values()] == [(True, ())]


DUE, OPEN_ONE = [(30, False)], [(0, False)]


def listed_in_march(*texts):
    """What the boards of a list of 2 March 2026 are charged: (figure, True for a part of the price)."""
    return charged([["Price list 2 March 2026"], *([text] for text in texts), [], HEAD, CUK])[0]


@pytest.mark.parametrize(
    "note",
    [
        "The rebate on the energy surcharge was withdrawn. Energy surcharge $30/ST.",
        "Fuel surcharge relief ended 1 February 2026; fuel surcharge $30/ST applies.",
        "The freight allowance has lapsed; freight $30/ST.", "Freight $30/ST. Our freight contract has expired.",
        "Free freight ended 1 January 2026. Freight $30/ST.", "Freight $30/ST. The season has ended.",
        "Energy surcharge $30/ST applies. The cap on the energy surcharge is lifted.",
        "Energy surcharge $30/ST, as the suspension of the energy surcharge has ended",
        "Energiezuschlag $30/ST. Die Deckelung des Energiezuschlags ist ausgelaufen.",
        "Surcharge énergie $30/ST. L'exonération de la surcharge énergie a pris fin.",
        "Recargo de energía $30/ST. La exención del recargo de energía terminó.",
        "Energitillägg $30/ST. Undantaget från energitillägget upphörde 1 januari 2026.",
    ],
)  # fmt: skip
def test_where_a_relief_has_ended_the_charge_is_due(note):
    assert listed_in_march(note) == DUE


@pytest.mark.parametrize(
    "note",
    [
        "The energy surcharge was withdrawn.", "Our temporary energy surcharge of last year has ended.",
        "The energy surcharge was withdrawn effective 1 January 2026.", "It ended on 1 January 2026.",
        "Der Energiezuschlag entfiel zum 01.01.2026.", "La surcharge énergie a pris fin le 1er janvier 2026.",
        "El recargo de energía terminó el 1 de enero de 2026.", "Energitillägget upphörde 1 januari 2026.",
        "The energy surcharge is suspended until 31 December 2026.",
    ],
)  # fmt: skip
def test_where_the_charge_itself_has_ended_it_is_none(note):
    assert listed_in_march(f"Energy surcharge $30/ST. {note}") == []


@pytest.mark.parametrize(
    ("note", "charge"),
    [
        ("The energy surcharge was withdrawn effective 1 July 2026.", OPEN_ONE),
        ("The energy surcharge was suspended until 31 December 2025.", DUE),
        ("The energy surcharge was suspended during 2025.", DUE),
        ("Der Energiezuschlag wurde zum 01.07.2026 ausgesetzt.", OPEN_ONE),
        ("La surcharge énergie a été supprimée à compter du 1er juillet 2026.", OPEN_ONE),
        ("Energy surcharge $30/ST, suspended until 31 December 2025.", DUE),
        ("The energy surcharge announced for the mills has been withdrawn.", []),
        ("The board tax energy surcharge ended.", OPEN_ONE),
        ("The $30 per short ton energy surcharge that we brought in during 2022 ended with December 2025.", []),
    ],
)
def test_the_day_of_the_list_tells_whether_a_relief_holds(note, charge):
    assert listed_in_march("Energy surcharge $30/ST" if "$" not in note else note, note) == charge
