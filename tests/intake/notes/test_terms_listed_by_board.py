"""Lists of terms by board below the boards: 'Grade | Lead time' over 'SBS | 4 weeks'."""

import pytest

from tests.intake.sheets import lines

HEADS = {
    "en": ("Grade", "Code", "Lead time", "weeks", "Minimum order", "Delivery", "Delivered", "FOB mill"),
    "de": ("Sorte", "Artikelnr.", "Lieferzeit", "Wochen", "Mindestmenge", "Lieferung", "frei Haus", "ab Werk"),
    "fr": ("Qualité", "Code", "Délai", "semaines", "Commande minimum", "Livraison", "franco", "départ usine"),
    "es": ("Calidad", "Código", "Plazo", "semanas", "Pedido mínimo", "Entrega", "a portes pagados", "en fábrica"),
    "sv": ("Kvalitet", "Artikelnr", "Leveranstid", "veckor", "Minsta order", "Leverans", "fritt levererat",
           "fritt fabrik"),
}  # fmt: skip


def _read(language, *rows, boards=("SBS", "CUK", "CRB")):
    grade, code, *_ = HEADS[language]
    table = [[f"A{place}", board, 300, 1200 - 100 * place] for place, board in enumerate(boards, 1)]
    found = lines([[code, grade, "g/m²", "EUR/t"], *table, [], *([*row] for row in rows)]).values()
    assert [line.offer.grade for line in found] == list(boards)
    return [(line.offer.lead_days, line.offer.minimum_kg, line.offer.delivered) for line in found]


@pytest.mark.parametrize("language", HEADS)
@pytest.mark.parametrize("by", [0, 1], ids=["grades", "codes"])
def test_each_board_has_its_own(language, by):
    head, labels = HEADS[language][by], [("SBS", "CUK"), ("A1", "A2")][by]
    _, _, lead, weeks, least, delivery, delivered, mill = HEADS[language]
    found = _read(language, [head, lead], [labels[0], f"4 {weeks}"], [labels[1], f"3 {weeks}"])
    assert found == [((28, 28), None, None), ((21, 21), None, None), (None, None, None)]
    found = _read(language, [head, f"{lead} ({weeks})"], [labels[0], 4], [labels[1], 3])
    assert found == [((28, 28), None, None), ((21, 21), None, None), (None, None, None)]
    found = _read(language, [head, least], [labels[0], "5 t"], [labels[1], "10 t"])
    assert found == [(None, 5000, None), (None, 10000, None), (None, None, None)]
    found = _read(language, [head, delivery], [labels[0], delivered], [labels[1], mill])
    assert found == [(None, None, True), (None, None, False), (None, None, None)]


def test_a_list_of_all_boards_leaves_their_grades():
    found = _read("en", ["Grade", "Minimum order"], ["SBS", "5 t"], ["CUK", "10 t"], boards=("SBS", "CUK"))
    assert [least for _, least, _ in found] == [5000, 10000]


def test_a_note_right_below_it_ends_it():
    found = _read("en", ["Code", "Lead time"], ["A1", "4 weeks"], ["A2", "3 weeks"], ["FOB mill"])
    assert found == [((28, 28), None, False), ((21, 21), None, False), (None, None, False)]


@pytest.mark.parametrize(
    "rows",
    [
        [["Grade", "Lead time"], ["Halden", "4 weeks"], ["CUK", "3 weeks"]],
        [["Zone", "Lead time"], ["A1", "4 weeks"], ["A2", "3 weeks"]],
        [["Code", "Lead time"], ["A1", "4 weeks"], ["A1", "3 weeks"]],
        [["Code", "Lead time"], ["A1", "4 weeks"], ["A9", "3 weeks"]],
    ],
    ids=["other names", "another head", "twice", "a code of no board"],
)
def test_what_may_be_of_other_things_is_no_board_s(rows):
    assert [lead for lead, _, _ in _read("en", *rows)] == [None] * 3
