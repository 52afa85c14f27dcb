"""Order sizes of headings and titles in turn, of which only some name a form, a board, a delivery or a mill."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

HEAD = ["Grade", "g/m²", "EUR/t"]
FROM = {"de": "ab", "en": "from", "fr": "à partir de", "es": "desde", "sv": "från"}
FORMS = {
    "de": ("Rollen", "Bogen"),
    "en": ("Rolls", "Sheets"),
    "fr": ("Bobines", "Feuilles"),
    "es": ("Bobinas", "Hojas"),
    "sv": ("Rullar", "Ark"),
}


def read(*titles, headed=False):
    """One board below each title; a list is of titles above each other."""
    rows = [["Tannegg 2027"], *([] if headed else [HEAD])]
    for step, title in enumerate(titles):
        rows += [[text] for text in (title if isinstance(title, list) else [title])]
        rows += [*([HEAD] if headed else []), ["GC1", 250, 1400 - 20 * step], *([[]] if headed else [])]
    return lines(rows)


def bounds(found):
    return [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]


ONE_SCALE = [(1000, 5000), (5000, 20000), (20000, None)]


@pytest.mark.parametrize("headed", [False, True])
@pytest.mark.parametrize("language", FORMS)
def test_a_title_that_names_no_form_goes_on_with_the_one_before(language, headed):
    start, form = FROM[language], FORMS[language][0]
    found = read(f"{form}, {start} 1 t", f"{start} 5 t", f"{start} 20 t", headed=headed)
    assert bounds(found) == ONE_SCALE
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert bounds(read(f"{start} 1 t", f"{start} 5 t", f"{form}, {start} 20 t", headed=headed)) == ONE_SCALE


@pytest.mark.parametrize("language", FORMS)
def test_each_form_goes_on_by_itself(language):
    start, (rolls, sheets) = FROM[language], FORMS[language]
    found = read(f"{rolls}, {start} 1 t", f"{start} 5 t", f"{sheets}, {start} 1 t", f"{start} 3 t")
    assert bounds(found) == [(1000, 5000), (5000, None), (1000, 3000), (3000, None)]


@pytest.mark.parametrize("language", FORMS)
def test_forms_stand_a_row_above(language):
    start, (rolls, sheets) = FROM[language], FORMS[language]
    titles = [[rolls, f"{start} 5 t"], f"{start} 20 t", [sheets, f"{start} 2 t"], f"{start} 10 t"]
    for headed in (False, True):
        assert bounds(read(*titles, headed=headed)) == [(5000, 20000), (20000, None), (2000, 10000), (10000, None)]


def test_a_board_below_a_size_is_no_heading_of_the_next_size():
    rows = [["Tannegg 2027"], HEAD, ["from 5 t"], ["Folding boxboard"], ["GC1", 250, 1400]]
    rows += [["from 20 t"], ["Greyboard"], ["URB", 450, 700]]
    assert bounds(lines(rows)) == [(5000, 20000), (20000, None)]


def test_where_a_later_size_may_end_two_scales_the_farther_one_is_asked_about():
    found = list(read("Rolls, from 5 t", "Sheets, from 5 t", "from 20 t").values())
    assert found[0].state is State.QUESTION
    assert "bracket-unread" in codes(found[0])
    assert found[1].offer.below_kg == 20000


@pytest.mark.parametrize(
    ("one", "other"),
    [("FOB mill", "Delivered"), ("ab Werk", "frei Haus"), ("départ usine", "franco"), ("North mill", "South mill")],
)
def test_deliveries_and_mills_whose_sizes_overlap(one, other):
    found = read(f"{one}, from 5 t", f"{one}, from 20 t", f"{other}, from 10 t")
    assert bounds(found) == [(5000, 20000), (20000, None), (10000, None)]


def test_delivered_from_a_size_on_goes_on_with_what_is_collected():
    assert bounds(read("FOB mill, from 5 t", "Delivered, from 10 t")) == [(5000, 10000), (10000, None)]


def test_sizes_in_turn_downwards_are_one_scale():
    found = read("Orders from 20 t", "Orders from 5 t", "Rolls from 1 t")
    assert bounds(found) == ONE_SCALE[::-1]


WAYS = [("FOB", "Delivered"), ("ab Werk", "frei Haus"), ("Départ usine", "Franco"), ("En fábrica", "Entregado"),
        ("Fritt fabrik", "Fritt levererat")]  # fmt: skip


@pytest.mark.parametrize(("mill", "home"), [*WAYS, ("North", "South")])
def test_ways_of_delivery_and_mills_across(mill, home):
    heads = [f"{mill} from 5 t EUR/t", f"{mill} from 20 t EUR/t", f"{home} from 10 t EUR/t"]
    found = lines([["Tannegg 2027"], ["Grade", "g/m²", *heads], ["GC1", 250, 1200, 1180, 1300]])
    assert bounds(found) == [(5000, 20000), (20000, None), (10000, None)]


def test_delivered_from_a_size_on_across_and_other_words_for_the_last_size():
    heads = ["FOB from 5 t EUR/t", "Delivered from 20 t EUR/t"]
    found = lines([["Tannegg 2027"], ["Grade", "g/m²", *heads], ["GC1", 250, 1200, 1180]])
    assert bounds(found) == [(5000, 20000), (20000, None)]
    heads = ["Price from 1 t EUR/t", "Price from 5 t EUR/t", "Special price from 20 t EUR/t"]
    found = lines([["Tannegg 2027"], ["Grade", "g/m²", *heads], ["GC1", 250, 1200, 1180, 1150]])
    assert bounds(found) == ONE_SCALE


@pytest.mark.parametrize("head", ["Terms", "Lieferbedingung", "Incoterms"])
def test_ways_of_delivery_in_rows(head):
    rows = [["Grade", "g/m²", head, "Order size", "EUR/t"], ["GC1", 250, "EXW", "from 5 t", 1200]]
    rows += [["GC1", 250, "EXW", "from 20 t", 1180], ["GC1", 250, "DAP", "from 10 t", 1300]]
    assert bounds(lines(rows)) == [(5000, 20000), (20000, None), (10000, None)]
    assert bounds(lines([*rows[:2], rows[3]])) == [(5000, 10000), (10000, None)]
