"""Order sizes in words, signs before figures, and stock that is told in a note of its own."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

_HEAD = ["Grade", "g/m²", "µm"]


def asked(found):
    return {cell for cell, line in found.items() if line.state is State.QUESTION}


@pytest.mark.parametrize(
    "heads",
    [
        ("less than three tonnes", "three to ten tonnes", "over ten tonnes"),
        ("unter drei Tonnen", "von drei bis zehn Tonnen", "über zehn Tonnen"),
        ("moins de trois tonnes", "de trois à dix tonnes", "plus de dix tonnes"),
        ("menos de tres toneladas", "de tres a diez toneladas", "más de diez toneladas"),
        ("under tre ton", "tre till tio ton", "över tio ton"),
    ],
)
def test_order_sizes_whose_figures_are_written_out(heads):
    found = lines([["EUR per 1000 kg"], [*_HEAD, *heads], ["GC2", 250, 410, 1240, 1186, 1152]])
    assert asked(found) == set()
    sizes = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert sizes == [(None, 3000), (3000, 10000), (10000, None)]


def test_one_lot_of_a_weight_is_no_span():
    found = lines([["EUR/t"], [*_HEAD, "Price", "Remark"], ["GC2", 250, 410, 1240, "for one lot of 20 t"]])
    assert [line.offer.from_kg for line in found.values()] in ([None], [20000])


@pytest.mark.parametrize("sign", ["*", "†", "°"])
@pytest.mark.parametrize(
    "said",
    [
        "CHF per tonne delivered. Those marked with {}: EUR per tonne, ex works (EXW).",
        "Francs suisses (CHF) la tonne franco. Les lignes marquées {} : EUR la tonne, départ usine.",
        "CHF per 1000 kg fritt kund. De märkta med {}: EUR per 1000 kg, fritt bruk.",
        "Precios en CHF por 1000 kg, franco destino. Los marcados con {}: EUR por 1000 kg, franco fábrica.",
        "Schweizer Franken je Tonne frei Haus. Die mit {} bezeichneten Zeilen: Euro je Tonne, ab Werk (EXW).",
    ],
)
def test_a_sign_before_a_figure_is_that_of_the_note(sign, said):
    rows = [["GC1", 260, 415, "1'345.00"], ["GC2", 250, 400, f"{sign}1'180.00"]]
    found = lines([[said.format(sign)], [*_HEAD, "Price"], *rows])
    assert asked(found) == set()
    assert [(line.offer.currency, line.offer.delivered) for line in found.values()] == [("CHF", True), ("EUR", False)]


@pytest.mark.parametrize("said", ["From stock.", "Ab Lager lieferbar.", "Sur stock.", "De stock.", "Från lager."])
def test_all_is_from_stock_where_a_note_says_no_more(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.lead_days == (0, 0)


@pytest.mark.parametrize("said", ["Not from stock.", "Some from stock.", "Stock lots on request."])
def test_not_all_is_from_stock_elsewhere(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.lead_days is None


@pytest.mark.parametrize("said", ["Unter 1.000 kg keine Lieferung.", "Ingen leverans under 1 000 kg."])
def test_no_delivery_below_a_weight_is_the_smallest_order(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.minimum_kg == 1000
