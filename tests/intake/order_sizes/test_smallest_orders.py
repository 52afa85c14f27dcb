"""The smallest order: of all boards or of some, in notes, remarks and number formats."""

from decimal import Decimal

import pytest

from tests.intake.readings import read_rows
from tests.intake.sheets import codes, lines
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import find_minimum


def test_a_smallest_order_in_pounds_is_no_basis_weight():
    reading = read_rows(
        [["Min order 40,000 pounds/item"], ["USD per ST"], [], ["Grade", '.012"', '.014"'], ["SBS", 1370, 1365]]
    )
    assert {line.offer.grammage_from for line in reading.lines} == {"estimated"}


HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


@pytest.mark.parametrize(
    ("note", "sbs", "crb"),
    [
        ("Min order 20,000 lb SBS, 10,000 lb CRB", 20000, 10000),
        ("min SBS 20,000 lb", 20000, None),
        ("Mindestmenge SBS 20,000 lb; CRB 10,000 lb", 20000, 10000),
        ("Minimum order 20,000 lb", 20000, 20000),
    ],
)
def test_a_smallest_order_holds_for_the_boards_it_names(note, sbs, crb):
    kg = [None if pounds is None else pounds * Decimal("0.45359237") for pounds in (sbs, crb)]
    assert [line.offer.minimum_kg for line in lines([[note], HEAD, SBS, CRB]).values()] == kg


@pytest.mark.parametrize(
    ("said", "kilograms"),
    [("Min order 3 t/item", 3000), ("Mindestabnahme 2 t/Sorte", 2000), ("Minsta order 2 ton/kvalitet", 2000)],
)
def test_a_smallest_order_for_each_item(said, kilograms):
    rows = [["EUR/t"], [said], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]]
    assert lines(rows)["D4"].offer.minimum_kg == kilograms


@pytest.mark.parametrize(
    ("said", "kg"),
    [("One tonne minimum per line", 1000), ("Minst ett ton per kvalitet", 1000), ("One side coated", None)],
)
def test_a_smallest_order_in_words(said, kg):
    found = lines([[said], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC2", 250, 410, 1098]])
    assert [line.offer.minimum_kg for line in found.values()] == [kg]


def test_a_line_of_text_may_name_its_smallest_order():
    rows = [["All FOB mill, minimum order 10,000 lb."], ["SBS C1S 16 pt, 67 lb/MSF - $1,228.00 per short ton"]]
    rows += [["CCNB 18 pt, 71 lb/MSF - $42.15 per cwt, 40,000 lb min"]]
    found = [line.offer.minimum_kg for line in lines(rows).values()]
    assert [round(least) for least in found] == [4536, 18144]


TONNE_HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]


@pytest.mark.parametrize(
    ("note", "kilograms"),
    [
        ("We don't run orders below 6M lb.", 2722),
        ("Minimum order 10M lb per item", 4536),
        ("Aufträge unter 5 t fertigen wir nicht", 5000),
        ("No fabricamos pedidos inferiores a 5 t", 5000),
        ("Nous ne fabriquons pas de commandes inférieures à 5 t", 5000),
        ("Vi tillverkar inte order under 5 t", 5000),
        ("We make no charge for orders over 10,000 lb", None),
    ],
)
def test_orders_that_are_not_made(note, kilograms):
    found = lines([TONNE_HEAD, *OLD, [], [note]])
    assert {line.offer.minimum_kg and round(line.offer.minimum_kg) for line in found.values()} == {kilograms}


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


def test_a_minimum_whose_unit_stands_in_the_number_format_alone():
    rows = [["Qualité", "g/m²", "µm", "EUR/t", "Mini cde"], ["GC1", 250, 400, 1230, 2]]
    assert offer(rows, "D2").minimum_kg is None
    found = lines(rows, formats={(1, 4): '0" t"'})["D2"]
    assert found.offer.minimum_kg == 2000


def test_a_remark_that_orders_begin_at_less_overrides_the_general_minimum():
    rows = [["Pedido mínimo: 2 toneladas por referencia, salvo indicación. EUR por tonelada métrica"]]
    rows += [["Calidad", "g/m²", "µm", "Precio", "Observaciones"], ["GD2", 300, 380, 836, "desde 500 kg"]]
    offer = lines(rows)["D3"].offer
    assert (offer.from_kg, offer.minimum_kg) == (None, 500)


AMERICAN_HEAD = ["Board", "pt", "lb/MSF"]
AMERICAN_SBS, AMERICAN_CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


def test_an_order_larger_than_any_mill_makes_is_asked_and_such_a_minimum_left_out():
    rows = [[*AMERICAN_HEAD, "From kg", "Price USD/ST"], [*AMERICAN_SBS, "99999999999999999999999999", 1100]]
    assert [codes(line) for line in lines(rows).values()] == [{"bracket-unread"}]
    rows = [[*AMERICAN_HEAD, "Minimum kg", "Price USD/ST"], [*AMERICAN_SBS, Decimal(10) ** 24, 1100]]
    assert [line.offer.minimum_kg for line in lines(rows).values()] == [None]


_HEAD = ["Grade", "g/m²", "µm"]


@pytest.mark.parametrize("said", ["Unter 1.000 kg keine Lieferung.", "Ingen leverans under 1 000 kg."])
def test_no_delivery_below_a_weight_is_the_smallest_order(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.minimum_kg == 1000


POINTS = ["Grade", "Caliper pt", "lb/MSF", "USD per MSF"]
BOARDS = [["SBS C1S", 18, 76, 41], ["SBS C1S", 20, 84, 45], ["SBS C1S", 24, 98, 53], ["SBS C2S", 12, 54, 39]]


def below(*notes):
    return [line.offer for line in lines([POINTS, *BOARDS, [], *([note] for note in notes)]).values()]


@pytest.mark.parametrize(
    ("note", "kilograms"),
    [
        ("18 pt and 24 pt: minimum 20,000 lb", [9072, None, 9072, None]),
        ("18 to 24 pt: minimum 20,000 lb", [9072, 9072, 9072, None]),
        ("Between 18 and 24 pt: minimum 20,000 lb", [9072, 9072, 9072, None]),
        # Which boards these are is not told apart, and no other has that minimum.
        ("20 pt C2S and lighter than 14 pt: minimum run 20,000 lb", [None, None, None, None]),
        ("All calipers: minimum 20,000 lb", [9072, 9072, 9072, 9072]),
    ],
)
def test_a_minimum_of_boards_of_several_measures(note, kilograms):
    assert [offer.minimum_kg and round(offer.minimum_kg) for offer in below(note)] == kilograms


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
