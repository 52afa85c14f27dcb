"""'Rolls' over 'to 5 t | 5-15 t | over 15 t' and 'Sheets' over 'to 5 t | over 5 t': each ends within its group."""

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.trade.offer import State

OVERLAPPING = ["1-5 t", "5-15 t", "> 15 t", "1-5 t", "> 5 t"]
OWN = [(1000, 5000), (5000, 15000), (15000, None), (1000, 5000), (5000, None)]
STARTS = ["{from_} 1 t", "{from_} 2 t", "{from_} 3 t", "{from_} 5 t", "{from_} 10 t"]
APART = [(1000, 2000), (2000, 3000), (3000, None), (5000, 10000), (10000, None)]
JOINED = [(1000, 2000), (2000, 3000), (3000, 5000), (5000, 10000), (10000, None)]
PRICES = ["GC1", 250, 405, 1415, 1362, 1318, 1490, 1436]
FROM = {"de": "ab", "en": "from", "fr": "à partir de", "es": "desde", "sv": "från"}
FORMS = {
    "de": ("Rollen", "Bogen"),
    "en": ("Reels", "Sheets"),
    "fr": ("Bobines", "Feuilles"),
    "es": ("Bobinas", "Hojas"),
    "sv": ("Rullar", "Ark"),
}


def read(groups, sizes, board="GC1"):
    """The sizes under two merged heads, and with each size in one cell with its head."""
    row = [board, *PRICES[1:]]
    above = [["EUR/t"], ["Grade", "g/m²", "µm", groups[0], None, None, groups[1], None]]
    under = lines([*above, [None, None, None, *sizes], row], merged=merged((1, 3, 1, 5), (1, 6, 1, 7)))
    names = [groups[0]] * 3 + [groups[1]] * 2
    heads = [f"{name} {size}" for name, size in zip(names, sizes, strict=True)]
    return under, lines([["EUR/t"], ["Grade", "g/m²", "µm", *heads], row])


def bounds(found):
    return [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]


@pytest.mark.parametrize("language", FORMS)
def test_sizes_of_one_form_do_not_end_those_of_the_other(language):
    for found in read(FORMS[language], OVERLAPPING):
        assert bounds(found) == OWN
        assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize("language", FORMS)
def test_no_more_so_where_one_form_begins_above_the_other(language):
    for found in read(FORMS[language], [size.format(from_=FROM[language]) for size in STARTS]):
        assert bounds(found) == APART


@pytest.mark.parametrize("groups", [("SBS", "CRB"), ("CRB", "Greyboard")])
def test_boards(groups):
    for found in read(groups, OVERLAPPING, board="Tamarind 7"):
        assert bounds(found) == OWN


@pytest.mark.parametrize("groups", [("Werk Nord", "Werk Süd"), ("North mill", "South mill"), ("Mill A", "Mill B")])
def test_groups_of_unknown_words_whose_sizes_overlap(groups):
    for found in read(groups, OVERLAPPING):
        assert bounds(found) == OWN


@pytest.mark.parametrize("groups", [("Werk Nord", "Werk Süd"), ("North mill", "South mill")])
def test_sizes_that_may_go_on_in_the_next_group_are_asked_about(groups):
    for found in read(groups, [size.format(from_="from") for size in STARTS]):
        assert [line.state for line in found.values()].count(State.QUESTION) == 1
        assert "bracket-unread" in codes(list(found.values())[2])


@pytest.mark.parametrize(
    "groups", [("Kleinmengen", "Großmengen"), ("Part loads", "Full loads"), ("Small orders", "Large orders")]
)
def test_heads_that_speak_of_orders_part_one_scale(groups):
    found, _ = read(groups, [size.format(from_="from") for size in STARTS])
    assert bounds(found) == JOINED


def test_a_head_of_its_own_over_each_size_parts_nothing():
    rows = [
        ["EUR/t"],
        ["Grade", "g/m²", "µm", "Price 1", "Price 2", "Price 3"],
        [None, None, None, "from 1 t", "from 5 t", "from 20 t"],
        ["GC1", 250, 405, 1415, 1362, 1318],
    ]
    assert bounds(lines(rows)) == [(1000, 5000), (5000, 20000), (20000, None)]


@pytest.mark.parametrize("language", FORMS)
@pytest.mark.parametrize("headed", [True, False], ids=["tables", "sub-headings"])
def test_titles_of_one_form_do_not_end_those_of_the_other(language, headed):
    head = ["Grade", "g/m²", "µm", "EUR/t"]
    rows = [["Tannegg 2027"], *([] if headed else [head])]
    names = [FORMS[language][0]] * 3 + [FORMS[language][1]] * 2
    for step, (name, size) in enumerate(zip(names, OVERLAPPING, strict=True)):
        rows += [[f"{name}, {size}"], *([head] if headed else []), ["GC1", 250, 405, 1400 - 20 * step]]
        rows += [["GD2", 350, 460, 900 - 10 * step], *([[]] if headed else [])]
    assert bounds(lines(rows))[::2] == OWN


def test_sizes_of_pages_in_turn_and_of_unknown_mills():
    head = ["Grade", "g/m²", "µm", "EUR/t"]
    titles = ["North mill, from 1 t", "South mill, from 1 t", "North mill, from 5 t", "South mill, from 5 t"]
    rows = [["Tannegg 2027"]]
    for step, title in enumerate(titles):
        rows += [[title], head, ["GC1", 250, 405, 1400 - 20 * step], ["GD2", 350, 460, 900 - 10 * step], []]
    assert bounds(lines(rows))[::2] == [(1000, 5000), (1000, 5000), (5000, None), (5000, None)]


def test_kilos_and_tonnes_are_one_scale():
    head = ["Sorte", "g/m²", "µm", "bis 2.000 kg", "ab 2.000 kg", "ab 8 t", "ab 20 t"]
    found = lines([["EUR/t"], head, ["GC1", 250, 405, 1386, 1338, 1309, 1285]])
    assert bounds(found) == [(None, 2000), (2000, 8000), (8000, 20000), (20000, None)]
