"""A charge is due though an earlier one of its kind has ended, or open where it may be the one that has."""

import pytest

from tests.intake.charges.test_charges_waived_or_in_the_price import DUE, OPEN_ONE, charged, listed_in_march

ENERGY = ("Energy surcharge $30/ST", "Energiezuschlag $30/ST", "Surcharge énergie $30/ST", "Recargo de energía $30/ST")
EN, DE, FR, ES = ENERGY
SV = "Energitillägg $30/ST"


def told(charge, note):
    """What is charged with a note in the same cell, and with one in a cell of its own."""
    return listed_in_march(f"{charge}. {note}"), listed_in_march(charge, note)


@pytest.mark.parametrize(
    ("charge", "note"),
    [
        (EN, "We withdrew the old energy surcharge of $24/ST."), (EN, "Our previous energy surcharge has ended."),
        (EN, "The old energy surcharge came off in January and was replaced."),
        (DE, "Der alte Energiezuschlag von $24/ST ist weggefallen."), (DE, "Der frühere Energiezuschlag entfällt."),
        (FR, "L'ancienne surcharge énergie a pris fin."), (ES, "El antiguo recargo de energía terminó."),
        (SV, "Det tidigare energitillägget föll bort."),
    ],
)  # fmt: skip
def test_an_old_one_that_ended_leaves_the_charge(charge, note):
    assert told(charge, note) == (DUE, DUE)


@pytest.mark.parametrize(
    ("charge", "note"),
    [
        (EN, "The energy surcharge of $24/ST was dropped."), (DE, "Der Energiezuschlag von $24/ST ist entfallen."),
        (EN, "The energy surcharge for exports is gone."), (EN, "The energy surcharge was dropped for exports."),
        (EN, "On 1 January 2026 the surcharge ended for tonnage in stock."),
        (DE, "Der Energiezuschlag für Lagerware ist weggefallen."), (DE, "Der Energiezuschlag entfällt für Lagerware."),
        (FR, "La surcharge énergie pour l'export a pris fin."), (SV, "Energitillägget för lagervaror föll bort."),
        (ES, "El recargo de energía para exportación terminó."),
        (EN, "The energy surcharge, which was suspended in 2025, applies again."),
        (EN, "Energy surcharge suspended in 2025 applies again."), (DE, "Der Energiezuschlag entfiel und gilt wieder."),
    ],
)  # fmt: skip
def test_one_that_may_be_another_or_is_charged_anew_leaves_it_open(charge, note):
    assert told(charge, note) == (OPEN_ONE, OPEN_ONE)


@pytest.mark.parametrize(
    ("charge", "note"),
    [
        (EN, "The energy surcharge of $30/ST is gone."), (EN, "The old energy surcharge of $30/ST has ended."),
        (EN, "The energy surcharge for all boards is gone."), (EN, "The energy surcharge is waived for your order."),
        (DE, "Der Energiezuschlag entfällt für alle Sorten."), (FR, "La surcharge énergie est supprimée pour vous."),
        (ES, "El recargo de energía de $30/ST terminó."), (SV, "Energitillägget utgår för dessa artiklar."),
    ],
)  # fmt: skip
def test_the_charge_itself_that_ended_for_the_whole_list_is_none(charge, note):
    assert told(charge, note) == ([], [])


def test_an_old_one_takes_nothing_from_a_column():
    head = ["Board", "Caliper pt", "lb/MSF", "Price USD/cwt", "Energy surcharge $/cwt"]
    rows = [[], head, ["CUK", 16, 66, 55.4, 2.5]]
    assert charged([["The old energy surcharge has ended."], *rows]) == [[(2.5, False)]]
    assert charged([["The energy surcharge has ended."], *rows]) == [[]]
