"""What a board was before, what is bought of it in a year, and what paying by card costs: none is the line's own."""

import pytest

from tests.intake.sheets import lines

HEAD, GC1 = ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1180]


def only(rows, cell):
    found = lines(rows)
    assert list(found) == [cell]
    return found[cell]


@pytest.mark.parametrize(
    "earlier",
    ["was 20 pt", "formerly 20 pt", "früher 20 pt", "anciennement 20 pt", "antes 20 pt", "tidigare 20 pt"],
)
def test_what_a_board_was_is_not_its_caliper(earlier):
    line = only([["USD/ST"], ["Description", "Price"], [f"SBS 18 ({earlier}) C1S", 1190]], "B3")
    assert (str(line.state), line.offer.caliper_um) == ("question", None)
    own = only([["USD/ST"], ["Description", "Price"], [f"SBS 18 pt ({earlier}) C1S", 1190]], "B3")
    assert (str(own.state), round(own.offer.caliper_um)) == ("accepted", 457)
    bracketed = only([["USD/ST"], ["Description", "Price"], ["SBS (20 pt) C1S", 1190]], "B3")
    assert round(bracketed.offer.caliper_um) == 508


@pytest.mark.parametrize("head", ["Annual volume", "Jahresmenge", "Volume annuel", "Volumen anual", "Årsvolym"])
def test_what_is_bought_in_a_year_bounds_no_order(head):
    assert only([[*HEAD, head], [*GC1, "500 t"]], "D2").offer.from_kg is None


@pytest.mark.parametrize("head", ["Order size", "Abnahmemenge", "Quantité", "Cantidad", "Kvantitet"])
def test_an_order_size_does(head):
    assert only([[*HEAD, head], [*GC1, "≥ 5 t"]], "D2").offer.from_kg == 5000


@pytest.mark.parametrize(
    "note",
    [
        "Restocking charge 15%. Credit card surcharge 3%.", "Kreditkartengebühr 3 %", "Frais de carte 3 %",
        "Recargo por tarjeta 3 %", "Kortavgift 3 %",
    ],
)  # fmt: skip
def test_what_paying_by_card_costs_is_on_no_line(note):
    assert only([HEAD, GC1, [note]], "D2").offer.charges == ()
    with_energy = only([HEAD, GC1, ["Energy surcharge 15 EUR/t."], [note]], "D2")
    assert [str(charge.price) for charge in with_energy.offer.charges] == ["15"]
