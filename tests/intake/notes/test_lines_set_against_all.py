"""What 'but' and 'however' say of some lines by their numbers, and lines called by their references."""

import pytest

from tests.intake.sheets import lines

_BOARDS = [("GD2", 250, 330, 838), ("GD2", 300, 395, 830), ("GC2", 300, 500, 1215), ("GT2", 350, 475, 912)]


def _told(note, field, head="Pos.", first=1):
    rows = [[first + place, *board] for place, board in enumerate(_BOARDS)]
    found = lines([["EUR/t"], [], [head, "Sorte", "g/m²", "µm", "EUR/t"], *rows, [], [note]])
    return [getattr(line.offer, field) for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Mindestmenge 5 t je Position, für Pos. 3 und 4 jedoch 10 t.",
        "Mindestmenge 5 t; für Pos. 3 und 4 jedoch 10 t.",
        "Mindestmenge 5 t, für Pos. 3 und 4 10 t.",
        "Minimum 5 t per item, but 10 t for items 3 and 4.",
        "Minimum 5 t per item, for items 3 and 4 however 10 t.",
        "Mínimo 5 t por partida, para las partidas 3 y 4 sin embargo 10 t.",
        "Minsta order 5 ton per position, för position 3 och 4 dock 10 ton.",
    ],
)
def test_the_least_weight_of_some_lines_is_their_own(note):
    assert _told(note, "minimum_kg") == [5000, 5000, 10000, 10000]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum 5 t, for items 3 and 4 twice that, 10 t.",
        "Minimum 5 t par poste, mais 10 t pour les postes 3 et 4.",
    ],
)
def test_of_two_weights_that_are_not_told_apart_none_is_taken(note):
    assert _told(note, "minimum_kg") == [None] * 4


@pytest.mark.parametrize(
    "note",
    ["Lieferzeit 3 Wochen, für Pos. 3 und 4 jedoch 5 Wochen.", "Lead time 3 weeks, but 5 weeks for items 3 and 4."],
)
def test_the_time_of_some_lines_is_their_own(note):
    assert _told(note, "lead_days") == [(21, 21), (21, 21), (35, 35), (35, 35)]


@pytest.mark.parametrize(
    ("note", "head"),
    [
        ("Lead time: 3 weeks; references 212 and 213 in stock.", "Reference"),
        ("Lead time: 3 weeks; the items 212 and 213, from stock.", "Item"),
        ("Lieferzeit: 3 Wochen; Referenzen 212 und 213 ab Lager.", "Ref."),
        ("Délai : 3 semaines ; références 212 et 213 en stock.", "Réf."),
        ("Plazo de entrega: 3 semanas; referencias 212 y 213 en stock.", "Ref."),
        ("Plazo de entrega: 3 semanas; las referencias 212 y 213, de stock.", "Ref."),
        ("Leveranstid: 3 veckor; artiklarna 212 och 213 i lager.", "Artikel"),
    ],
)
def test_lines_may_be_called_by_their_references(note, head):
    assert _told(note, "lead_days", head, first=210) == [(21, 21), (21, 21), (0, 0), (0, 0)]


@pytest.mark.parametrize(
    ("note", "head"),
    [
        ("References 210 to 211 are ex works; all others delivered.", "Reference"),
        ("Referenzen 210 bis 211 ab Werk; alle übrigen frei Haus.", "Ref."),
        ("Les références 210 à 211 s'entendent départ usine ; toutes les autres, rendu.", "Réf."),
        ("Las referencias 210 a 211 se entienden en fábrica; todas las demás, puesto en destino.", "Ref."),
        ("Artiklarna 210 till 211 fritt fabrik; alla övriga fritt kund.", "Artikel"),
    ],
)
def test_freight_of_references_and_of_all_others(note, head):
    assert _told(note, "delivered", head, first=210) == [False, False, True, True]


@pytest.mark.parametrize("note", ["Your reference 3, delivery 4 weeks.", "Su ref. 3. Plazo de entrega 4 semanas."])
def test_a_papers_reference_is_no_lines(note):
    assert _told(note, "lead_days") == [(28, 28)] * 4


def test_lines_whose_time_is_not_read_have_not_that_of_all():
    note = "Lieferzeit 3 Wochen; die Positionen 3 und 4 liegen bei uns am Lager bereit."
    assert _told(note, "lead_days") == [(21, 21), (21, 21), None, None]
    assert _told("Lead time: 3 weeks; items 3 and 4 with PE coating.", "lead_days") == [(21, 21)] * 4


def _charged(note):
    return [[int(charge.price) for charge in charges] for charges in _told(note, "charges")]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 20 EUR/t, but not on items 3 and 4.",
        "Energiezuschlag 20 EUR/t, jedoch nicht auf Pos. 3 und 4.",
        "Energitillägg 20 EUR/ton, dock inte på position 3 och 4.",
    ],
)
def test_what_is_denied_of_some_lines_holds_for_the_others(note):
    assert _charged(note) == [[20], [20], [], []]


def test_another_amount_of_some_lines_is_their_own():
    note = "Energy surcharge 20 EUR/t, but 30 EUR/t for items 3 and 4."
    assert _charged(note) == [[20], [20], [30], [30]]


def test_of_two_last_days_that_are_not_told_apart_none_is_taken():
    note = "Prices valid until 31 December 2026, items 3 and 4 however until 30 November 2026."
    assert _told(note, "valid_until") == [None] * 4


@pytest.mark.parametrize(
    "note",
    [
        "All items coated one side; items 3 and 4 coated two sides.",
        "All items coated one side; items 3 and 4 on both",
        "All items coated two sides; item 3 on one",
        "Alle Positionen einseitig gestrichen; Pos. 3 und 4 beidseitig",
        "Tous les articles couchés une face ; articles 3 et 4 deux",
        "Todos los artículos estucados una cara; artículos 3 y 4 ambas",
        "Alla artiklar bestrukna på en sida; artiklar 3 och 4 på båda",
        "Alle Positionen einseitig gestrichen; Pos. 3 und 4 beidseitig gestrichen.",
        "Alle Positionen einseitig gestrichen, ausgenommen Pos. 3 und 4: beidseitig gestrichen.",
    ],
)
def test_a_coating_of_all_is_none_where_some_lines_have_another(note):
    assert set(_told(note, "coated_sides")) == {None}


def test_a_coating_of_all_lines_is_theirs():
    assert _told("All items coated one side.", "coated_sides") == [1] * 4
    assert _told("All items coated one side; items 3 and 4 on two pallets", "coated_sides") == [1] * 4
