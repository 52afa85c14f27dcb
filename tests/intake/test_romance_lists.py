"""Price lists as French, Québec, Spanish and Mexican vendors send them: what once made the reader ask, miss or err.

All vendors, boards and prices are invented.
"""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize(
    ("title", "basis", "delivered"),
    [
        ("Prix en $ CA les cent livres", "cwt", None),
        ("Prix en $ CA les 100 livres, F.A.B. usine", "cwt", False),
        ("Prix livrés, $ CA la tonne métrique", "tonne", True),
        ("Prix en $ CA par millier de pieds carrés, livré", "msf", True),
        ("Precio en USD por quintal de 100 libras, LAB Hermosillo", "cwt", False),
        ("USD por millar de pies cuadrados, L.A.B. su bodega", "msf", True),
    ],
)
def test_pounds_feet_and_delivery_in_a_title(title, basis, delivered):
    price = 1155.5 if basis == "tonne" else 55.5
    found = offer([[title], [], ["Grade", "Cal. pt", "lb/MSF", "Prix"], ["SBS C1S", 18, 76, price]], "D4")
    assert (found.price, found.basis, found.delivered) == (Decimal(str(price)), basis, delivered)


def test_delivered_in_a_price_is_no_pound():
    found = lines([["Carton", "Calibre pt", "lb/M pi²", "Prix livré $ US"], ["SBS C1S", 18, 76, 1240]])["D2"]
    assert (str(found.state), found.offer.basis, found.offer.delivered) == ("question", None, True)


@pytest.mark.parametrize("unit", ["lb/M pi²", "lb/millar pies²", "lb/1000 pi²"])
def test_pounds_on_a_thousand_feet(unit):
    found = offer([["USD/TM"], [], ["Grado", "Calibre", "Peso", "Precio"], ["URB", "24 pts", f"83 {unit}", 640]], "D4")
    assert float(found.grammage_gsm) == pytest.approx(83 * 4.8824276364, rel=1e-9)


def test_a_lone_mu_behind_a_number_is_microns():
    found = offer([["EUR/t"], ["Désignation", "Prix"], ["SBS couché 1 côté 270 g/m² 345µ", 1405]], "B3")
    assert (found.caliper_um, found.coated_sides) == (345, 1)


@pytest.mark.parametrize(
    ("title", "until"),
    [("Validez de la oferta: 30 días", "2026-06-11"), ("Validité de l'offre : 2 semaines", "2026-05-26")],
)
def test_days_that_an_offer_is_valid_count_from_its_date(title, until):
    rows = [["Fecha: 12 de mayo de 2026"], [title], [], ["Calidad", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1230]]
    assert offer(rows, "D5").valid_until.isoformat() == until


@pytest.mark.parametrize("words", ["Precio medio", "Prix moyen"])
def test_a_mean_below_a_group_is_no_offer(words):
    rows = [["EUR/t"], ["g/m²", "µm", "Prix"], ["GC2"], [250, 400, 1190], [300, 495, 1180], [words, None, 1185]]
    assert set(lines(rows)) == {"C4", "C5"}


@pytest.mark.parametrize(
    ("letterhead", "vendor"),
    [
        ("Cartonneries du Val d'Ormoy SAS", "Cartonneries du Val d'Ormoy SAS"),
        ("Cartons Laurentie-Nord inc.", "Cartons Laurentie-Nord inc."),
        ("Emballages Rive-Saguenay ltée", "Emballages Rive-Saguenay ltée"),
        ("Papeterie de l'Aubrière", "Papeterie de l'Aubrière"),
        ("Cartons de la Vesdre", "Cartons de la Vesdre"),
        ("Cartulinas Sonora Desierto", "Cartulinas Sonora Desierto"),
        ("Cartons Couchés Recyclés", None),
        ("Cartulinas Plegables", None),
    ],
)
def test_who_quotes(letterhead, vendor):
    rows = [[letterhead], [], ["Qualité", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1230]]
    assert offer(rows, "D4").vendor == vendor


def test_a_minimum_whose_unit_stands_in_the_number_format_alone():
    rows = [["Qualité", "g/m²", "µm", "EUR/t", "Mini cde"], ["GC1", 250, 400, 1230, 2]]
    assert offer(rows, "D2").minimum_kg is None
    found = lines(rows, formats={(1, 4): '0" t"'})["D2"]
    assert found.offer.minimum_kg == 2000


@pytest.mark.parametrize(
    ("title", "price", "currency"),
    [
        ("Precios en pesos argentinos por tonelada métrica", "985.400,50", "ARS"),
        ("Valores en pesos chilenos por tonelada métrica", "1.085.000", "CLP"),
        ("Precios en soles por TM", "3,650.50", "PEN"),
        ("Prix en dirhams (MAD) la tonne", "9 250,00", "MAD"),
    ],
)
def test_money_of_other_countries(title, price, currency):
    found = offer([[title], [], ["Tipo", "g/m²", "µm", "Precio"], ["GD2", 300, 395, price]], "D4")
    assert (found.currency, found.basis) == (currency, "tonne")


@pytest.mark.parametrize("money", ["pesos", "dirhams"])
def test_money_that_several_countries_share_is_asked(money):
    found = lines([[f"Precios en {money} por TM"], [], ["Tipo", "g/m²", "µm", "Precio"], ["GD2", 300, 395, 9250]])
    assert {note.code.value for note in found["D4"].notes} == {"currency-unknown"}


def test_the_peso_that_the_title_names_is_the_dollar_sign_of_the_heads():
    rows = [
        ["Precios en pesos colombianos (COP)"],
        [],
        ["Tipo", "g/m²", "µm", "Precio $/kg"],
        ["GD2", 300, 400, 4120.5],
    ]
    assert offer(rows, "D4").currency == "COP"


def test_amounts_that_carry_their_own_unit_are_prices():
    rows = [["Concepto", "Importe"], ["GC1 250 g/m² 400 µm", "1.259,50 €/t"], ["GD2 350 g/m² 470 µm", "0,858 €/kg"]]
    assert [(cell, line.offer.basis) for cell, line in lines(rows).items()] == [("B2", "tonne"), ("B3", "kg")]
    assert not lines([["Concepto", "Importe"], ["GC1 250 g/m² 400 µm", "1.259,50 €"]])


def test_a_head_that_names_money_heads_prices_and_its_weeks_are_theirs():
    heads = ["Fabrication (mini 5 t, 6 semaines) €/t", "Stock (immédiat) €/t", "Sur commande\n4 semaines\n€/t"]
    rows = [["Qualité", "g/m²", "µm", *heads], ["GC1", 250, 415, 1255, 1340, 1290], ["GD2", 350, 465, 832, 917, 866]]
    found = list(lines(rows).values())[:3]
    assert [str(line.state) for line in found] == ["question", "accepted", "accepted"]
    assert [(line.offer.lead_days, line.offer.minimum_kg) for line in found] == [
        ((42, 42), None),
        (None, None),
        ((28, 28), None),
    ]


def test_notes_by_letter_say_what_the_columns_that_carry_them_are_per():
    notes = [["(a) en euros la tonne"], ["(b) en euros les 1000 feuilles"]]
    rows = [
        ["Qualité", "g/m²", "µm", "Bobines (a)", "Feuilles 72 x 102 cm (b)"],
        ["GC1", 250, 415, 1291, 251.72],
        [],
        *notes,
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["tonne", "1000sheets"]


@pytest.mark.parametrize("place", [1, 2])
def test_units_in_a_column_beside_the_labels_of_a_form(place):
    form = [["Qualité", "GC1"], ["Grammage", 250, "g/m²"], ["Épaisseur", 415, "µm"], ["Prix", 1288, "EUR/t"]]
    other = [["Qualité", "GD2"], ["Grammage", 350, "g/m²"], ["Épaisseur", 465, "µm"], ["Prix", 301.5, "EUR/1000 m²"]]
    rows = [[row[0], *row[2:], row[1]] if place == 1 and len(row) > 2 else row for row in [*form, [], *other]]
    rows = [[*row[:1], None, row[1]] if place == 1 and len(row) == 2 else row for row in rows]
    found = [(line.offer.basis, float(line.offer.grammage_gsm)) for line in lines(rows).values()]
    assert found == [("tonne", 250), ("1000m2", 350)]
    rows = [
        [row[0], f"{row[1]} {row[2]}"] if row and row[0] in ("Grammage", "Épaisseur") else row
        for row in [*form, [], *other]
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["tonne", "1000m2"]


@pytest.mark.parametrize("head", ["Port €/t", "Transport €/t", "Flete €/t"])
def test_freight_beside_the_price(head):
    found = offer([["Carton", "g/m²", "µm", "Prix départ €/t", head], ["GC2", 260, 420, 1188, 62]], "D2")
    assert [(charge.price, charge.basis) for charge in found.charges] == [(62, "tonne")]


@pytest.mark.parametrize("head", ["Qté minimale", "Quantité mini", "Cantidad mín."])
def test_a_least_quantity_is_no_order_size(head):
    found = offer([["Carton", "g/m²", "µm", "€/t", head], ["GC2", 260, 420, 1188, "5 t"]], "D2")
    assert (found.minimum_kg, found.from_kg) == (5000, None)


def test_a_misspelt_gramaje_is_still_in_grams():
    found = offer([["Qualite", "Gramage", "Epaiseur (mic)", "Prix EUR/T"], ["GD2", 350, 470, "843,50"]], "D2")
    assert (found.grammage_gsm, found.basis) == (350, "tonne")


@pytest.mark.parametrize("title", ["Tarifa 2026 €/t", "Tarif 2026 €/t", "Liste de prix 2026 €/t"])
def test_a_list_of_a_year_names_its_unit(title):
    assert offer([[title], [], ["Qualité", "g/m²", "µm", "Prix"], ["GD2", 350, 470, 843]], "D4").currency == "EUR"


@pytest.mark.parametrize(
    ("unit", "basis"),
    [("/mille pi² (MPC)", "msf"), ("/MPC", "msf"), ("/cwt (100 lb)", "cwt"), ("/tonne courte", "short_ton")],
)
def test_thousands_of_square_feet_in_french(unit, basis):
    rows = [["Prix en dollars canadiens"], ["Produit", "Épaisseur (pt)", "Poids (lb/1000 pi²)", "Prix", "Unité"]]
    found = lines([*rows, ["Carton gris (URB)", 30, 104, 50.4 if basis != "short_ton" else 980, unit]])
    assert [line.offer.basis for line in found.values()] == [basis]
