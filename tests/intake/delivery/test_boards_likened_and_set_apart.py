"""Delivery told of some boards: beside boards that no word is known for, before others, and of boards likened."""

import pytest

from tests.intake.sheets import lines

ROWS = [
    ["Grade", "Caliper", "USD/ST"], ["White board SBS", "18 pt", 1200], ["CUK", "20 pt", 1000],
    ["Greyboard", "24 pt", 700], [],
]  # fmt: skip


def delivered(note):
    return [line.offer.delivered for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "White board is sold delivered, greyboard ex works.", "Greyboard is sold ex works, white board delivered.",
        "Weißkarton wird frei Haus verkauft, Graukarton ab Werk.",
        "Le carton blanc est vendu franco, le carton gris départ usine.",
        "El cartón blanco se vende entregado, el cartón gris en fábrica.",
        "Vit kartong säljs fritt levererat, gråkartong fritt fabrik.",
    ],
)  # fmt: skip
def test_what_is_said_of_unknown_boards_is_said_of_none(note):
    assert delivered(note) == [None, None, False]


@pytest.mark.parametrize("note", ["Prices are delivered, greyboard ex works.", "Preise frei Haus, Graukarton ab Werk."])
def test_what_is_said_of_all_prices_holds_for_the_others(note):
    assert delivered(note) == [True, True, False]


@pytest.mark.parametrize(
    "note",
    [
        "SBS delivered. Others: 6 weeks.", "SBS delivered, others 6 weeks.", "SBS frei Haus. Übrige: 6 Wochen.",
        "SBS franco. Autres : 6 semaines.", "SBS entregado. Los demás: 6 semanas.",
        "SBS fritt levererat. Övriga: 6 veckor.",
    ],
)  # fmt: skip
def test_others_of_which_something_else_is_told_are_not_delivered(note):
    assert delivered(note) == [True, None, None]


@pytest.mark.parametrize(
    "note",
    [
        "Like SBS, CUK is delivered.",
        "Wie SBS, CUK frei Haus.",
        "Comme le SBS, le CUK est livré franco.",
        "Como el SBS, el CUK se entrega franco.",
        "Liksom SBS, CUK fritt levererat.",
    ],
)
def test_a_board_likened_to_another_is_delivered_as_that(note):
    assert delivered(note) == [True, True, None]


def test_one_that_is_unlike_another_says_nothing_of_it():
    assert delivered("Unlike SBS, CUK is delivered.")[0] is None
    assert delivered("Like all our boards, CUK is delivered.") == [True] * 3
