"""A smallest order is read from the part between commas that tells it, and only where nothing in that part is left
over; what is told and not understood is a note, never a weight."""

import pytest

from tests.intake.sheets import codes, lines


def told(*notes):
    """The smallest order of a list with these notes below it, in kg, and whether it is told not to be understood."""
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 260, 410, 1210], *([note] for note in notes)]
    line = lines(rows)["D3"]
    assert str(line.state) == "accepted"
    least = line.offer.minimum_kg
    return None if least is None else round(float(least)), "bracket-unread" in codes(line)


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Net 30 days, no cash discount, min. 4 t per item", 4000),
        ("1 % Skonto 10 Tage, Mindestmenge 4 t, Lieferzeit 3 Wochen", 4000),
        ("2 % d'escompte à 8 jours, commande minimum 4 t", 4000),
        ("Descuento 1 % pronto pago, pedido mínimo 4 t", 4000),
        ("1 % kassarabatt 10 dagar, minsta order 4 ton", 4000),
        ("Minimum order 4 t, the goods were weighed at the mill", 4000),
        ("Mindestabnahme 4 t, Entladung mit Stapler", 4000),
        ("Commande minimum 4 t, à confirmer avant le 10 du mois", 4000),
        ("Pedido mínimo 4 t, 2 semanas antes de la carga", 4000),
        ("Minsta order 4 ton, var snäll och ring för mindre kvantiteter", 4000),
        ("El pedido mínimo es de 4 t y el plazo de entrega, de tres semanas", 4000),
        ("Minimum weight 4 t per item, full reels only", 4000),
        ("Minimum weight 9 t, reels or pallets", 9000),
    ],
)
def test_other_parts_of_the_clause_are_another_matter(note, kg):
    assert told(note) == (kg, False)


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Minimum order 4 t (was 2 t)", 4000), ("MOQ 4 t (previously 2 t)", 4000),
        ("The minimum order was raised to 4 t", 4000), ("Mindestmenge 4 t, bisher 2 t", 4000),
        ("Mindestmenge bisher 2 t, neu 4 t", 4000), ("Mindestmenge wie bisher 4 t", 4000),
        ("Commande minimum 4 t, auparavant 2 t", 4000), ("Commande minimum 4 t, comme auparavant", 4000),
        ("Pedido mínimo 4 t, antes 2 t", 4000), ("Minimum order 4 t instead of 2 t", 4000),
        ("El pedido mínimo, que el año pasado era de 9 t, es ahora de 4 t", 4000),
        ("Minsta order 4 ton, tidigare 2 ton", 4000),
    ],
)  # fmt: skip
def test_what_was_is_told_from_what_is(note, kg):
    assert told(note) == (kg, False)


@pytest.mark.parametrize(
    "note",
    [
        "The minimum order was 4 t", "Last year's minimum was 4 t", "Minimum order cut from 8 t to 4 t",
        "Minimum order 4 t from 1 January", "Mindestmenge 4 t frei Haus", "Minimum order 4 t by rail",
        "Minimum order for export 20 t", "Für den Export gilt eine Mindestmenge von 20 t, im Inland 4 t",
        "Minimum order 4 t, 9 t per order", "Minimum weight 700 kg, in rolls",
        "We deliver not less than 95 % and not more than 105 % of orders over 5 t",
        "Anfertigungen ab 10 t frei Haus", "Für Anfertigungen ab 10 t gelten Sonderpreise",
        "Below 5 t, minimum per item 1 t",
    ],
)  # fmt: skip
def test_what_is_left_over_makes_it_a_note(note):
    assert told(note) == (None, True)


@pytest.mark.parametrize(
    ("note", "read"),
    [
        ("Minimum order 4 t, unless mixed with other sizes", None), ("Minimum order 4 t, less on request", None),
        ("Mindestmenge 4 t, außer bei Lagersorten", None), ("Commande minimum 4 t, sauf sur stock", None),
        ("Pedido mínimo 4 t, salvo mezclas", None), ("Minsta order 4 ton, utom från lager", None),
        ("Minimum order 4 t, unless otherwise agreed", 4000), ("Minimum order 4 t unless previously agreed", 4000),
        ("Mindestmenge 4 t, sofern nicht anders vereinbart", 4000),
        ("Commande minimum 4 t, sauf accord contraire", 4000),
        ("Minsta order 4 ton om inte annat avtalats", 4000),
    ],
)  # fmt: skip
def test_a_condition_bounds_it_and_what_may_be_agreed_does_not(note, read):
    assert told(note) == (read, read is None)


@pytest.mark.parametrize(
    ("note", "kg", "noted"),
    [
        ("No orders under 4 t unless mixed with other grades", None, True),
        ("Orders under 4 t cannot be accepted without prior approval", None, True),
        ("Orders under 4 t are not accepted for sheets", None, True),
        ("Aufträge unter 4 t werden für Bogen nicht angenommen", None, True),
        ("Commandes inférieures à 4 t non acceptées en feuilles", None, True),
        ("Orders less than 4 t per delivery address are not accepted", 4000, False),
        ("Claims under 4 t are not accepted", None, False), ("No order under 4 t is delivered free", None, False),
    ],
)  # fmt: skip
def test_orders_refused_on_terms(note, kg, noted):
    assert told(note) == (kg, noted)


@pytest.mark.parametrize(
    "note",
    [
        "Truckload = 20 t minimum", "Rolls weigh 600 kg minimum", "Annual volume 500 t minimum",
        "Discount 2 % at a minimum of 40 t", "Reels of minimum 600 kg", "Lead time 3 weeks",
    ],
)  # fmt: skip
def test_weights_known_to_be_of_something_else_are_not_told(note):
    assert told(note) == (None, False)


@pytest.mark.parametrize(
    "title", ["Export price list 7, EUR/t", "Exportpreisliste 7, EUR/t", "Lista de exportación, EUR/t"]
)
def test_a_list_for_export_has_its_own(title):
    rows = [[title], ["Grade", "g/m²", "µm", "Price"], ["GC1", 260, 410, 1210]]
    line = lines([*rows, ["Minimum order for export 20 t"]])["D3"]
    assert (line.offer.minimum_kg, "bracket-unread" in codes(line)) == (20000, False)
    elsewhere = lines([*rows, ["Minimum order for export outside Norway 20 t"]])["D3"]
    assert (elsewhere.offer.minimum_kg, "bracket-unread" in codes(elsewhere)) == (None, True)


def test_an_export_minimum_beside_one_for_all_is_not_told():
    assert told("Minimum order 4 t. For export the minimum is 20 t.") == (4000, False)
    assert told("Minimum order 4 t", "For export the minimum is 20 t") == (4000, False)


def test_a_second_one_that_is_not_understood_is_told_beside_the_first():
    assert told("Minimum order 4 t", "Minimum order on the small machine 9 t") == (4000, True)
    assert told("Minimum order 4 t. The minimum on the small machine is 9 t.") == (None, True)


def test_a_remark_that_is_not_understood_is_told_of_its_row():
    rows = [["EUR/t; minimum order 4 t"], ["Grade", "g/m²", "µm", "Price", "Remarks"]]
    rows += [["GC1", 260, 410, 1210, "minimum order 9 t by rail"], ["GC2", 260, 420, 1190, "min. 6 t"]]
    first, second = lines(rows).values()
    assert (first.offer.minimum_kg, "bracket-unread" in codes(first)) == (None, True)
    assert (second.offer.minimum_kg, "bracket-unread" in codes(second)) == (6000, False)


def test_boards_that_a_minimum_names_beside_one_for_all():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 260, 410, 1210], ["GD2", 300, 420, 890]]
    found = lines([*rows, ["Minimum 4 t per item (GD2: 8 t)"]])
    assert [line.offer.minimum_kg for line in found.values()] == [4000, 8000]
