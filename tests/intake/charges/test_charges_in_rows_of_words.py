"""A charge in a row of words, wherever its amount stands: no sub-heading, no head of a table, and never lost."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import OPEN

_WORDS = {
    "en": ("Energy surcharge", "3.5 % of board price", "Freight"),
    "de": ("Energiezuschlag", "3,5 % vom Preis", "Fracht"),
    "fr": ("Supplément énergie", "3,5 % du prix", "Transport"),
    "es": ("Recargo energético", "3,5 % del precio", "Flete"),
    "sv": ("Energitillägg", "3,5 % av priset", "Frakt"),
}
_HEADS = [["Board", "g/m²", "µm", "EUR/t"], ["Board", "g/m²", "µm", "Board price"]]
_GC1, _GD2 = ["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]


def charges(*rows, head=_HEADS[0], **more):
    found = lines([["EUR/t, ex works"], head, *rows], **more)
    return [
        [(charge.label, f"{charge.price.normalize():f}", charge.currency) for charge in line.offer.charges]
        for line in found.values()
    ]


@pytest.mark.parametrize("head", _HEADS, ids=["unit", "words"])
@pytest.mark.parametrize("place", [1, 2, 3, 4])
@pytest.mark.parametrize(("energy", "share", "freight"), _WORDS.values(), ids=_WORDS)
def test_a_share_and_an_amount_in_any_column_are_charged(energy, share, freight, place, head):
    gap = [None] * (place - 1)
    for gone_by in ([], [[]]):
        rows = (_GC1, _GD2, *gone_by, [energy, *gap, share], [freight, *gap, "45,00 €/t"])
        assert [sorted(each) for each in charges(*rows, head=head)] == [
            sorted([(energy, "3.5", None), (freight, "45", "EUR")])
        ] * 2


@pytest.mark.parametrize(("energy", "share", "freight"), _WORDS.values(), ids=_WORDS)
def test_above_the_boards_too(energy, share, freight):
    found = charges(_GC1, _GD2)
    assert found == [[], []]
    above = lines([["EUR/t, ex works"], [energy, share], [freight, "45,00 €/t"], [], _HEADS[0], _GC1])
    assert [len(line.offer.charges) for line in above.values()] == [2]
    below_the_heads = charges([energy, None, None, share], [freight, None, None, "45,00 €/t"], _GC1, _GD2)
    assert [len(each) for each in below_the_heads] == [2, 2]


@pytest.mark.parametrize(("energy", "share", "freight"), _WORDS.values(), ids=_WORDS)
@pytest.mark.parametrize("cells", [1, 2])
def test_below_each_group_they_are_that_group_s(energy, share, freight, cells):
    first, second = ([energy, share], [energy, share.replace("3", "2", 1)])
    first, second = (row if cells > 1 else [" ".join(row)] for row in (first, second))
    found = charges(["GC1"], ["GC1 A", *_GC1[1:]], first, ["GD2"], ["GD2 A", *_GD2[1:]], second)
    assert found == [[(energy, "3.5", None)], [(energy, "2.5", None)]]


def test_one_of_all_among_groups_is_everybody_s():
    rows = (["GC1"], ["GC1 A", *_GC1[1:]], ["Energy surcharge 3.5 % on all grades"], ["GD2"], ["GD2 A", *_GD2[1:]])
    assert charges(*rows) == [[("Energy surcharge", "3.5", None)]] * 2


def test_below_several_tables_and_a_gap_they_are_of_all():
    second = [[], ["GD2"], _HEADS[0], _GD2]
    assert [len(each) for each in charges(_GC1, *second, [], ["Energy surcharge", None, None, "3 %"])] == [1, 1]
    assert [len(each) for each in charges(_GC1, *second, ["Energy surcharge", None, None, "3 %"])] == [0, 1]


@pytest.mark.parametrize(("figure", "format_"), [(0.035, "0.0%"), (45, '0.00" €/t"')])
def test_a_format_says_what_a_figure_in_another_column_is(figure, format_):
    label = "Energy surcharge" if "%" in format_ else "Freight"
    found = charges(_GC1, _GD2, [label, figure], formats={(4, 1): format_})
    assert found == [[(label, "3.5" if "%" in format_ else "45", None if "%" in format_ else "EUR")]] * 2


@pytest.mark.parametrize("row", [["Freight", 45], ["Freight", None, None, "45 €/t", "to the north only"]])
def test_what_is_not_certain_is_open(row):
    assert [[one[2] for one in each] for each in charges(_GC1, _GD2, row)] == [[OPEN]] * 2


@pytest.mark.parametrize("text", ["45", "45.00", "€45"])
def test_a_text_below_the_prices_is_in_their_unit_as_a_number_is(text):
    assert charges(_GC1, _GD2, ["Freight", None, None, text]) == [[("Freight", "45", "EUR")]] * 2


@pytest.mark.parametrize("value", ["incl.", "-", "n/a"])
def test_what_is_in_the_price_or_none_is_no_charge(value):
    found = charges(_GC1, _GD2, ["Energy surcharge", None, None, value], ["Freight", None, None, "45 €/t"])
    assert [[one[0] for one in each] for each in found] == [["Freight"]] * 2


def test_one_to_be_told_is_open():
    found = charges(_GC1, _GD2, ["Energy surcharge", None, None, "TBD"], ["Freight", None, None, "45 €/t"])
    assert [sorted(one[2] for one in each) for each in found] == [["EUR", OPEN]] * 2


def test_freight_to_two_places_and_a_share_of_freight_are_open():
    lanes = charges(_GC1, ["Freight to Northby", "45 €/t"], ["Freight to Southby", "52 €/t"])
    shares = charges(_GC1, ["Fuel surcharge on freight", "22 %"])
    assert [[one[2] for one in each] for each in (*lanes, *shares)] == [[OPEN], [OPEN]]


def test_a_board_whose_name_is_a_charge_s_stays_one():
    found = lines([["EUR/t, ex works"], _HEADS[0], _GC1, ["Extra white GC1", 250, 405, 1310]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]


_TERMS = {
    "en": ("All prices are ex works.", "Lead time 3 weeks"),
    "de": ("Alle Preise ab Werk.", "Lieferzeit 3 Wochen"),
    "fr": ("Tous les prix départ usine.", "Délai de livraison 3 semaines"),
    "es": ("Todos los precios en fábrica.", "Plazo de entrega 3 semanas"),
    "sv": ("Alla priser fritt fabrik.", "Leveranstid 3 veckor"),
}


@pytest.mark.parametrize(("delivery", "lead"), _TERMS.values(), ids=_TERMS)
def test_terms_between_the_boards_and_a_charge_hold_for_the_boards(delivery, lead):
    rows = [["EUR/t"], _HEADS[0], _GC1, _GD2, [], [delivery], [lead], ["Energy surcharge", None, None, 28]]
    for line in lines(rows).values():
        assert line.offer.delivered is False
        assert line.offer.lead_days == (21, 21)


def test_a_line_that_leads_to_charges_says_nothing_of_the_prices():
    rows = [["EUR/t"], _HEADS[0], _GC1, _GD2, [], ["For delivered prices add:"], ["Freight", None, None, 45]]
    assert [line.offer.delivered for line in lines(rows).values()] == [None, None]


def test_a_charge_of_small_orders_below_the_prices_is_no_part_of_them():
    for label in ("Mindermengenzuschlag", "Mindermengenpauschale", "Surcharge for orders below 5 t"):
        (line,) = lines([["EUR/t"], _HEADS[0], _GC1, [label, None, None, 45]]).values()
        assert line.offer.charges == ()
        assert "bracket-unread" in codes(line)
