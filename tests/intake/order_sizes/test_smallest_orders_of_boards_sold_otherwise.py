"""A smallest order is told of all boards, and how one of them is sold otherwise stands in another sentence."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]
_GREY = {"en": "Greyboard", "de": "Graukarton", "fr": "Carton gris", "es": "Cartón gris", "sv": "Gråkartong"}
_OF_ALL = {
    "en": "The smallest order we take is 3 tonnes.", "de": "Mindestmenge 3 t.", "fr": "Commande minimum 3 t.",
    "es": "Pedido mínimo 3 t.", "sv": "Minsta order 3 ton.",
}  # fmt: skip


def _leasts(language, *notes):
    """The smallest order of a folding boxboard and of the greyboard in kg, 'unread' where a note says so of it."""
    rows = [["GC1", 230, 360, 1165], [_GREY[language], 800, 1200, 625]]
    found = lines([["Holmbeck Board Ltd"], [], _HEAD, *rows, [], [_OF_ALL[language]], *([note] for note in notes)])
    return [_told(found[cell]) for cell in ("D4", "D5")]


def _told(line):
    if "bracket-unread" in codes(line):
        return "unread"
    return None if line.offer.minimum_kg is None else int(Decimal(line.offer.minimum_kg))


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Greyboard is the exception: it is sold ex warehouse Holm, from stock, in lots of 1 tonne or more."),
        ("en", "Greyboard is sold in lots of 1 tonne or more."),
        ("en", "Greyboard is sold from 1 tonne."),
        ("de", "Graukarton bildet die Ausnahme: den verkaufen wir ab Werk, in Partien von 1 t oder mehr."),
        ("de", "Graukarton verkaufen wir ab 1 t."),
        ("fr", "Le carton gris fait exception : il est vendu départ dépôt Holm, par lots de 1 tonne ou plus."),
        ("fr", "Le carton gris est vendu à partir de 1 tonne."),
        ("es", "El cartón gris es la excepción: se vende de stock, en lotes de 1 tonelada o más."),
        ("es", "El cartón gris se vende desde 1 tonelada."),
        ("sv", "Gråkartong är undantaget: den säljs fritt lager Holm, från lager, i poster om 1 ton eller mer."),
        ("sv", "Gråkartong säljs från 1 ton."),
    ],
)
def test_boards_that_are_sold_from_a_weight_have_this_one(language, note):
    assert _leasts(language, note) == [3000, 1000]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Greyboard is sold in lots of 1 tonne."),
        ("en", "Greyboard is sold ex works from 1 tonne."),
        ("en", "Greyboard may be sold from 1 tonne."),
        ("de", "Graukarton verkaufen wir in Partien zu 1 t."),
        ("de", "Graukarton ist ausgenommen, hier sind es 1 t."),
        ("fr", "Le carton gris est vendu départ usine à partir de 1 tonne."),
        ("es", "El cartón gris se vende en lotes de 1 tonelada."),
        ("sv", "Gråkartong säljer vi i poster om 1 ton."),
    ],
)
def test_of_steps_and_of_weights_beside_terms_of_delivery_the_smallest_order_is_not_known(language, note):
    assert _leasts(language, note) == [3000, "unread"]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Greyboard is sold ex works on pallets of 1 tonne."),
        ("en", "Greyboard is delivered free from 5 tonnes."),
        ("de", "Graukarton verkaufen wir auf Paletten zu 1 t."),
        ("fr", "Le carton gris est vendu sur palettes de 1 tonne."),
        ("es", "El cartón gris se vende en palés de 1 tonelada."),
        ("sv", "Gråkartong säljs på pallar om 1 ton."),
    ],
)
def test_what_they_come_on_and_what_is_delivered_free_changes_nothing(language, note):
    assert _leasts(language, note) == [3000, 3000]


def _of_marked(note):
    rows = [["GC1", 230, 360, 1165], ["GD2 *", 420, 560, 860]]
    found = lines([["Holmbeck Board Ltd"], [], _HEAD, *rows, [], [note]])
    return [_told(found[cell]) for cell in ("D4", "D5")]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order 3 t. Those marked * from 1 t.",
        "Minimum order 3 t. Items marked * are sold in lots of 1 t or more.",
        "Minimum order 3 t. Items marked * minimum 1 t unless mixed.",
        "Mindestmenge 3 t. Die mit * gekennzeichneten geben wir ab 1 t ab.",
        "Commande minimum 3 t. Les articles marqués * sont vendus à partir de 1 tonne.",
        "Pedido mínimo 3 t. Los marcados con * se venden desde 1 tonelada.",
        "Minsta order 3 ton. De som är märkta med * säljs från 1 ton.",
    ],
)
def test_marked_lines_sold_from_another_weight_leave_theirs_open(note):
    assert _of_marked(note) == [3000, "unread"]


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Minimum order 3 t. Items marked * minimum 1 t.", 1000),
        ("Minimum order 3 t. Items marked * are delivered free from 5 t.", 3000),
        ("Minimum order 3 t. Items marked * come on pallets of 1 t.", 3000),
    ],
)
def test_marked_lines_with_a_smallest_order_or_something_else_from_a_weight(note, kg):
    assert _of_marked(note) == [3000, kg]
