"""A word below a header of several rows that says what the figures down the first column are."""

import pytest

from tests.intake.sheets import lines, merged

TITLES = [["Karton Ostra GmbH"], ["EUR/t"], []]
LANGUAGES = [
    ("Delivery", "ex works", "delivered", "Grade", "Order", "g/m²"),
    ("Lieferung", "ab Werk", "frei Haus", "Sorte", "Auftrag", "Flächengewicht g/m²"),
    ("Livraison", "Départ usine", "Franco domicile", "Sorte", "Commande", "Grammage"),
    ("Entrega", "ex works", "entregado", "Calidad", "Pedido", "gramaje"),
    ("Leverans", "fritt fabrik", "fritt levererat", "Kvalitet", "Order", "ytvikt"),
]


@pytest.mark.parametrize(("freight", "collected", "delivered", "grade", "order", "unit"), LANGUAGES)
@pytest.mark.parametrize("gap", ["g/m²", None])
def test_delivery_grade_and_order_size_across(freight, collected, delivered, grade, order, unit, gap):
    found = lines(
        [*TITLES, [freight, collected, None, delivered], [grade, "GC1", None, "GD2"],
         [order, "< 10 t", "≥ 10 t", "< 10 t", "≥ 10 t"], [gap or unit], [250, 1240, 1210, 886, 856],
         [300, 1233, 1203, 879, "n/a"]],
        merged=merged((3, 1, 3, 2), (3, 3, 3, 4), (4, 1, 4, 2), (4, 3, 4, 4)),
    )  # fmt: skip
    told = {(line.offer.grade, line.offer.grammage_gsm, line.offer.delivered) for line in found.values()}
    assert told == {("FBB", 250, False), ("FBB", 300, False), ("CRB", 250, True), ("CRB", 300, True)}
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert len(found) == 7


@pytest.mark.parametrize(("unit", "field"), [("µm", "caliper_um"), ("g/m²", "grammage_gsm")])
def test_grades_alone_across(unit, field):
    found = lines([*TITLES, ["Sorte", "GC1", "GC2"], [unit], [400, 1240, 1210], [450, 1233, 1203]])
    assert [getattr(line.offer, field) for line in found.values()] == [400, 400, 450, 450]


def test_a_grade_alone_is_a_heading():
    found = lines([*TITLES, ["g/m²", "< 10 t", "≥ 10 t"], ["GC1"], [250, 1240, 1210], ["GD2"], [300, 886, 856]])
    assert [(line.offer.grade, line.offer.grammage_gsm) for line in found.values()] == [
        ("FBB", 250), ("FBB", 250), ("CRB", 300), ("CRB", 300),
    ]  # fmt: skip


def test_below_a_head_that_names_a_measure_itself_a_unit_is_none_for_certain():
    found = lines([*TITLES, ["g/m²", "GC1", "GC2"], ["µm"], [250, 1240, 1210], [300, 1233, 1203]])
    assert {line.offer.caliper_um for line in found.values()} == {None}
