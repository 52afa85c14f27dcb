"""'A. Bleached board' over one table and 'B. Kraft board' over the next: a note calls them A and B."""

import pytest

from tests.intake.sheets import codes, read

HEADS = {
    "en": (["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200], ["CUK", 18, 980], "FOB mill", "delivered", "List"),
    "de": (["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 250, 800], "ab Werk", "frei Haus", "Liste"),
    "fr": (["Qualité", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 250, 800], "départ usine", "franco", "Liste"),
    "es": (["Calidad", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 250, 800], "en fábrica", "franco destino",
           "Lista"),
    "sv": (["Kvalitet", "g/m²", "SEK/t"], ["GC1", 250, 12000], ["GD2", 250, 8000], "fritt fabrik", "fritt levererat",
           "Lista"),
}  # fmt: skip


def two(language, first, second, *notes):
    head, one, other, *_ = HEADS[language]
    rows = [[first], head, one, [], [second], head, other, [], *([note] for note in notes)]
    return read([["Fairhaven Board Co."], *rows]).lines


@pytest.mark.parametrize("mark", ["{}. Board", "{}) Board", "({}) Board"])
@pytest.mark.parametrize("language", HEADS)
def test_each_hears_what_is_said_of_its_letter(language, mark):
    *_, works, free, _ = HEADS[language]
    found = two(language, mark.format("A"), mark.format("B"), f"A: {works}, B: {free}")
    assert [line.offer.delivered for line in found] == [False, True]


@pytest.mark.parametrize("language", HEADS)
def test_lists_have_letters_too(language):
    *_, works, free, name = HEADS[language]
    found = two(language, f"{name} A", f"{name} B", f"{name} A: {works}. {name} B: {free}.")
    assert [line.offer.delivered for line in found] == [False, True]


def test_smallest_orders_by_letter():
    found = two("en", "A. Bleached board", "B. Kraft board", "A: minimum 5,000 lb. B: minimum 10,000 lb.")
    assert [round(line.offer.minimum_kg) for line in found] == [2268, 4536]
    assert not any("bracket-unread" in codes(line) for line in found)


def test_a_letter_of_no_table_says_nothing():
    found = two("en", "A. Bleached board", "B. Kraft board", "A: FOB mill, C: delivered")
    assert [line.offer.delivered for line in found] == [None, None]


def test_letters_in_cells_are_codes():
    head, first, second = ["Grade", "Code", "Caliper (pt)", "USD/ST"], ["SBS", "B", 16, 1200], ["CUK", "A", 18, 980]
    rows = [["A. Board"], head, first, [], ["B. Board"], head, second, [], ["A: delivered, B: FOB mill"]]
    assert [line.offer.delivered for line in read(rows).lines] != [True, False]
