"""Codes that a key says to be of boards not to be had, and sentences below boards that say so of them."""

import pytest

from tests.intake.sheets import codes, lines

_KEYS = [
    ("Status", "active", "discontinued"), ("Status", "aktiv", "eingestellt"), ("Statut", "actif", "supprimé"),
    ("Estado", "activo", "descatalogado"), ("Status", "aktiv", "slutsåld"),
    ("Availability", "available", "not available"), ("Verfügbarkeit", "verfügbar", "nicht verfügbar"),
    ("Disponibilité", "disponible", "indisponible"), ("Disponibilidad", "disponible", "no disponible"),
    ("Tillgänglighet", "tillgänglig", "ej tillgänglig"),
]  # fmt: skip


def _boards(head, *said):
    boards = ["GC1", 250, 1200], ["GD2", 300, 980], ["GT1", 300, 900]
    return [["Grade", "g/m²", "EUR/t", head], *([*board, one] for board, one in zip(boards, said, strict=True))]


def _asked(rows):
    return ["number-ambiguous" in codes(line) for line in lines(rows).values()]


@pytest.mark.parametrize(("head", "good", "gone"), _KEYS)
@pytest.mark.parametrize("as_table", [True, False])
def test_a_code_says_what_its_key_says(head, good, gone, as_table):
    key = [[head, "Meaning"], ["A", good], ["D", gone]] if as_table else [[f"{head}: A = {good}, D = {gone}"]]
    found = lines([*_boards(head, "A", "D", "A"), [], *key])
    told = {cell: "number-ambiguous" in codes(line) for cell, line in found.items()}
    assert not told["C2"]
    assert not told["C4"]
    # 'Sold out' beside a price takes the row out of the offers.
    assert told.get("C3", True)


@pytest.mark.parametrize(("head", "good", "gone"), _KEYS[5:])
def test_so_do_the_words_themselves(head, good, gone):
    assert _asked(_boards(head, good, gone, good)) == [False, True, False]


def test_times_beside_such_a_code_are_times():
    rows = [*_boards("Availability", "S", "N", "W"), [],
            ["Availability: S = in stock, N = not available, W = 4 weeks"]]  # fmt: skip
    assert [line.offer.lead_days for line in lines(rows).values()] == [(0, 0), None, (28, 28)]


def test_codes_of_boards_that_are_all_to_be_had_ask_nothing():
    rows = [*_boards("Status", "A", "N", "A"), [], ["Status: A = active, N = new"]]
    assert _asked(rows) == [False] * 3


@pytest.mark.parametrize("sentence", [
    "The above items are sold out", "The above grades sold out", "Obige Sorten sind ausverkauft",
    "Les qualités ci-dessus sont épuisées", "Las calidades de arriba están agotadas",
    "Ovanstående kvaliteter är slutsålda",
])  # fmt: skip
def test_a_sentence_below_boards_asks_of_those_alone(sentence):
    rows = [["Grade", "g/m²", "EUR/t"], ["GC1", 250, 1200], [sentence], ["GD2", 300, 900]]
    assert _asked(rows) == [True, False]


def test_a_sentence_that_only_points_above_asks_nothing():
    rows = [["Grade", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["Above prices not valid below 5 t"], ["GD2", 300, 900]]
    assert _asked(rows) == [False, False]
