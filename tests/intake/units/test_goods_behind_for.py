"""'Prix pour bobines' says what prices are of; 'prix par bobine' what they are per."""

import pytest

from tests.intake.sheets import lines


def _read(note, head="EUR/t"):
    rows = [["Moosbrunner Karton GmbH"], ["Sorte", "g/m²", head], ["GC1", 250, 1200], ["GD2", 300, 900], [], [note]]
    return {(str(line.state), line.offer.basis) for line in lines(rows).values()}


@pytest.mark.parametrize(
    "note",
    [
        "Prix pour bobines",
        "Prix pour bobines ; formats sur demande",
        "Prix pour rouleaux",
        "Prix pour feuilles",
        "Les prix sont pour bobines",
        "Prices for rolls",
        "Prices for sheets",
        "Preise für Rollen",
        "Preise für Bogen",
        "Precios para bobinas",
        "Precios para hojas",
        "Priser för rullar",
        "Priser för ark",
    ],
)
def test_several_things_behind_for_are_goods(note):
    assert _read(note) == {("accepted", "tonne")}


@pytest.mark.parametrize("note", ["Prix pour feuilles", "Prices for sheets", "Preise für Bogen"])
def test_they_give_no_unit_where_none_is_told(note):
    ((state, basis),) = _read(note, head="EUR")
    assert (state, basis) == ("question", None)


@pytest.mark.parametrize(
    "note",
    [
        "Prix par bobine", "Prix à la bobine", "Prix pour 1 bobine", "Prix pour la bobine", "Price for a roll",
        "Prices per roll", "Preise je Rolle", "Precios por bobina", "Pris per rulle", "Prix pour 1 000 feuilles",
    ],
)  # fmt: skip
def test_one_thing_and_a_counted_one_are_what_prices_are_per(note):
    assert {state for state, _ in _read(note)} == {"question"}
