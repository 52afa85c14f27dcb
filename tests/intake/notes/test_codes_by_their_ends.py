"""Grades that a note gives codes by the letters that they begin or end with."""

import pytest

from tests.intake.sheets import lines

_CODES = ("R-300", "R-320-K", "R-380-K", "W-250", "R-90K")


def _grades(note, codes=_CODES):
    rows = [[code, 300 + n, 420, 800 + n] for n, code in enumerate(codes)]
    found = lines([["Alder Board, EUR per 1,000 kg"], ["Item", "g/m²", "µm", "Price"], *rows, [], [note]])
    return [line.offer.grade for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "All items are GD2, except those ending in K, which are CUK.",
        "Items ending in K are coated unbleached kraft, all others GD2.",
        "Alle Artikel sind GD2, Artikel, die auf K enden, sind CUK.",
        "Alle Artikel sind GD2, ausgenommen die mit der Endung K, das sind CUK.",
        "Toutes les références sont du GD2, sauf celles se terminant par K, qui sont du CUK.",
        "Todas las referencias son cartoncillo GD2, menos las terminadas en K, que son kraft estucado (CUK).",
        "Alla artiklar är GD2, utom de som slutar på K, som är CUK.",
    ],
)
def test_codes_that_end_so_have_another_grade_than_the_rest(note):
    assert _grades(note) == ["CRB", "CUK", "CUK", "CRB", "CUK"]


@pytest.mark.parametrize(
    "note",
    [
        "Items beginning with W are SBS, all others GD2.",
        "Artikel, die mit W beginnen, sind SBS, alle anderen GD2.",
        "Les références qui commencent par W sont SBS, toutes les autres GD2.",
        "Las referencias que empiezan por W son SBS, todas las demás GD2.",
        "Artiklar som börjar på W är SBS, alla andra GD2.",
    ],
)
def test_so_have_those_that_begin_so(note):
    assert _grades(note) == ["CRB", "CRB", "CRB", "SBS", "CRB"]


def test_of_the_rest_nothing_is_told():
    assert _grades("Items ending in K are CUK.") == [None, "CUK", "CUK", None, "CUK"]


@pytest.mark.parametrize(
    "note",
    [
        "Items ending in K ship in 4 weeks, CUK in 6.",
        "Items ending in K are CUK from January.",
        "Items ending in K are CUK or GD2.",
        "All items are GD2, except CUK ending in 380.",
    ],
)
def test_what_says_more_tells_no_grade(note):
    assert _grades(note) == [None] * 5


def test_letters_within_a_longer_word_are_no_end():
    assert _grades("Items ending in K are CUK.", ("R-30OAK", "R-30K")) == [None, "CUK"]


def test_two_ends_that_fit_settle_nothing():
    note = "Items ending in K are CUK. Items beginning with W are SBS."
    assert _grades(note, ("W-30K", "W-30", "R-30K")) == [None, "SBS", "CUK"]


def test_a_grade_of_its_own_stays():
    assert _grades("All items are GD2, except those ending in K, which are CUK.", ("SBS 30", "R-30")) == ["SBS", "CRB"]
