"""A charge between a gross and a net price: in the latter where the figures show it, else open."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC2", 250, 405, 1200], ["GC2", 295, 495, 1160], ["GD2", 300, 400, 800]]
OVER = [
    ("Gross price", "Energy surcharge", "Net price"), ("List price", "Energy surcharge", "Net price"),
    ("Bruttopreis", "Energiezuschlag", "Nettopreis"), ("Prix brut", "Surcharge énergie", "Prix net"),
    ("Precio bruto", "Recargo energético", "Precio neto"), ("Bruttopris", "Energitillägg", "Nettopris"),
]  # fmt: skip


def charged(heads, *more):
    """Of each row the price and what is charged beside it; '?' for a charge that is open."""
    rows = [[*board, *figures] for board, figures in zip(BOARDS, more, strict=True)]
    found = lines([["EUR per tonne"], ["Grade", "g/m²", "µm", *heads], *rows]).values()
    told = ([str(one.price) if one.currency == "EUR" else "?" for one in line.offer.charges] for line in found)
    return [(int(line.offer.price), *charges) for line, charges in zip(found, told, strict=True)]


@pytest.mark.parametrize("heads", [*OVER, ("Gross price", "Freight", "Net price")])
def test_what_makes_the_net_price_of_the_gross_one_is_not_charged_again(heads):
    assert charged(heads, (42, 1242), (42, 1202), (35, 835)) == [(1242,), (1202,), (835,)]


@pytest.mark.parametrize("heads", OVER)
def test_what_the_figures_do_not_show_to_be_in_the_net_price_is_open(heads):
    assert charged(heads, (42, 1140), (42, 1102), (35, 760)) == [(1140, "?"), (1102, "?"), (760, "?")]


@pytest.mark.parametrize("heads", OVER)
def test_so_is_a_surcharge_by_which_the_net_price_is_lower(heads):
    assert charged(heads, (42, 1158), (42, 1118), (35, 765)) == [(1158, "?"), (1118, "?"), (765, "?")]


def test_each_row_is_reckoned_by_itself():
    assert charged(OVER[0], (42, 1242), (42, 1102), (35, 835)) == [(1242,), (1102, "?"), (835,)]


@pytest.mark.parametrize("heads", [(gross, net, energy) for gross, energy, net in OVER])
def test_behind_the_net_price_it_comes_on_top(heads):
    assert charged(heads, (1140, 42), (1102, 42), (760, 35)) == [(1140, "42"), (1102, "42"), (760, "35")]


def test_where_a_discount_makes_the_net_price_the_charge_comes_on_top():
    heads = ("List price", "Discount %", "Energy surcharge", "Net price")
    assert charged(heads, (5, 42, 1140), (5, 42, 1102), (5, 35, 760)) == [(1140, "42"), (1102, "42"), (760, "35")]


TAKEN_OFF = {
    "en": ("List price", "Energy surcharge", "Net price", "list less 5%"),
    "de": ("Listenpreis", "Energiezuschlag", "Nettopreis", "Liste abzgl. 5 %"),
    "fr": ("Prix catalogue", "Surcharge énergie", "Prix net", "catalogue moins 5 %"),
    "es": ("Precio de lista", "Recargo energético", "Precio neto", "lista menos 5 %"),
    "sv": ("Listpris", "Energitillägg", "Nettopris", "lista minus 5 %"),
}  # fmt: skip


@pytest.mark.parametrize(("first", "energy", "net", "how"), TAKEN_OFF.values(), ids=TAKEN_OFF)
def test_so_it_does_where_words_tell_the_discount(first, energy, net, how):
    heads = (first, energy, f"{net} ({how})")
    assert charged(heads, (42, 1140), (42, 1102), (35, 760)) == [(1140, "42"), (1102, "42"), (760, "35")]
    # Not by five per cent: whether the surcharge is in the price stays open.
    assert charged(heads, (42, 1150), (42, 1112), (35, 770)) == [(1150, "?"), (1112, "?"), (770, "?")]


@pytest.mark.parametrize(("first", "energy", "net", "how"), TAKEN_OFF.values(), ids=TAKEN_OFF)
def test_and_where_a_note_does(first, energy, net, how):
    rows = [["Grade", "g/m²", first, energy, net], ["GC2", 250, 1200, 42, 1140], ["GD2", 300, 800, 35, 760]]
    found = lines([["EUR per tonne"], *rows, [], [f"{net}: {how}"]]).values()
    assert [[str(one.price) for one in line.offer.charges] for line in found] == [["42"], ["35"]]
