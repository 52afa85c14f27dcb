"""What only some boards, or some widths of rolls, are charged is never lost, and never charged on the others."""

import pytest

from tests.intake.sheets import lines

_HEADS = {
    "en": ("Grade", "Weight g/m²", "Price EUR/t"),
    "de": ("Sorte", "Gewicht g/m²", "Preis EUR/t"),
    "fr": ("Sorte", "Grammage g/m²", "Prix EUR/t"),
    "es": ("Calidad", "Gramaje g/m²", "Precio EUR/t"),
    "sv": ("Kvalitet", "Ytvikt g/m²", "Pris EUR/t (1000 kg)"),
}
_WIDTHS = {"en": "Roll width mm", "de": "Rollenbreite mm", "fr": "Laize mm", "es": "Ancho mm", "sv": "Rullbredd mm"}


def _charges(language, note):
    boards = (["GC1", 250, 1200], ["GD2", 300, 900], ["GZ", 280, 1300])
    found = lines([list(_HEADS[language]), *boards, [], [note]]).values()
    return [[(str(one.price), one.basis) for one in line.offer.charges] for line in found]


def _by_width(language, note):
    grade, weight, price = _HEADS[language]
    rolls = (["GC1", 250, 500, 1200], ["GC1", 250, 800, 1180], ["GD2", 300, 1500, 900])
    found = lines([[grade, weight, _WIDTHS[language], price], *rolls, [], [note]]).values()
    return [[str(one.price) for one in line.offer.charges] for line in found]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge 25 EUR/t on recycled grades"),
        ("de", "Energiezuschlag 25 EUR/t auf Recyclingkarton"),
        ("fr", "Surcharge énergie 25 EUR/t sur carton recyclé"),
        ("sv", "Energitillägg 25 EUR/t på returfiberkartong"),
    ],
)
def test_boards_of_a_kind_bear_what_is_charged_on_it(language, note):
    assert [[price for price, _ in charged] for charged in _charges(language, note)] == [[], ["25"], []]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge 3% of the price (currently 36 EUR/t for GC1)"),
        ("de", "Energiezuschlag 3 % vom Preis (derzeit 36 EUR/t für GC1)"),
        ("fr", "Surcharge énergie 3 % du prix (actuellement 36 EUR/t pour GC1)"),
        ("es", "Recargo energético 3 % del precio (actualmente 36 EUR/t para GC1)"),
        ("sv", "Energitillägg 3 % av priset (för närvarande 36 EUR/t för GC1)"),
    ],
)
def test_what_a_share_comes_to_for_one_board_today_leaves_it_to_all(language, note):
    assert _charges(language, note) == [[("3", None)]] * 3


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge 25 EUR/t on GC1 only, freight 42 EUR/t on all"),
        ("de", "Energiezuschlag 25 EUR/t nur auf GC1, Fracht 42 EUR/t auf alle Sorten"),
        ("fr", "Surcharge énergie 25 EUR/t sur GC1 uniquement, transport 42 EUR/t pour tous"),
        ("es", "Recargo energético 25 EUR/t solo para GC1, transporte 42 EUR/t para todos"),
        ("sv", "Energitillägg 25 EUR/t endast för GC1, frakt 42 EUR/t för alla"),
    ],
)
def test_what_follows_for_all_is_borne_by_all(language, note):
    found = [sorted(price for price, _ in charged) for charged in _charges(language, note)]
    assert found == [["25", "42"], ["42"], ["42"]]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Rolls under 600 mm wide: add 40 EUR/t"),
        ("de", "Rollen bis 500 mm Breite +35 EUR/t"),
        ("fr", "Laizes inférieures à 600 mm : + 40 EUR/t"),
        ("es", "Anchos menores de 600 mm: +40 EUR/t"),
    ],
)
def test_what_is_added_by_no_name_is_open_for_the_rolls_that_bear_it(language, note):
    assert _by_width(language, note) == [["0"], [], []]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GC1 rolls under 600 mm: surcharge 40 EUR/t"),
        ("de", "GC1 Rollen unter 600 mm: Zuschlag 40 EUR/t"),
        ("fr", "GC1 bobines de moins de 600 mm : supplément 40 EUR/t"),
        ("es", "GC1 bobinas de menos de 600 mm: recargo 40 EUR/t"),
        ("sv", "GC1 rullar under 600 mm: tillägg 40 EUR/t"),
    ],
)
def test_a_board_and_a_width_are_both_needed(language, note):
    narrow, wide, other = _by_width(language, note)
    assert narrow != []
    assert (wide, other) == ([], [])


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Energy surcharge EUR/t", "Energy surcharge will be dropped from January 1, 2027"),
        ("Energy surcharge EUR/t", "Energy surcharge will be dropped from January 2027"),
        ("Energiezuschlag EUR/t", "Energiezuschlag entfällt ab Januar 2027"),
        ("Surcharge énergie EUR/t", "La surcharge énergie sera supprimée à partir de janvier 2027"),
        ("Energitillägg EUR/t", "Energitillägget slopas från januari 2027"),
    ],
)
@pytest.mark.parametrize(("day", "charged"), [("5 October 2026", "25"), ("5 February 2027", None)])
def test_what_is_dropped_later_is_charged_until_then(head, note, day, charged):
    rows = [[f"Price list of {day}"], ["Grade", "g/m²", "Price EUR/t", head], ["GC1", 250, 1200, 25], [], [note]]
    offers = [line.offer for line in lines(rows).values()]
    prices = [str(one.price) for one in offers[0].charges]
    assert prices in ([[charged], ["0"]] if charged else [[]])
