"""A charge whose amount, or whose being charged, is not certain leaves the delivered cost open."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN, State

HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def both(found):
    """The lines of the two boards, which must be there: what is said of none is true of all."""
    assert len(found) == 2
    return found.values()


@pytest.mark.parametrize(
    "note",
    [
        "An energy surcharge applies.", "Prices exclude energy surcharge",
        "Energy surcharge as per our list will be added",
        "Energy surcharge 3 % on SBS, 2.5 % on CRB", "Energy surcharge $12 or $14 per ton, by month",
        "Zuzüglich Energiezuschlag", "Fuel surcharge: see our monthly notice", "Energy surcharge of 3 % from 1 July",
    ],
)  # fmt: skip
def test_a_surcharge_whose_amount_is_not_told_leaves_the_delivered_cost_open(note):
    for line in both(lines([HEAD, SBS, CRB, [], [note]])):
        assert [charge.currency for charge in line.offer.charges] == [OPEN]
        assert footing(line.offer).delivered_per_tonne is None


@pytest.mark.parametrize(
    "note", ["No energy surcharge at present", "Energy surcharge included", "Energy surcharge waived until June"]
)
def test_a_surcharge_that_is_not_charged_changes_nothing(note):
    for line in both(lines([HEAD, SBS, CRB, [], [note]])):
        assert line.offer.charges == ()
        assert footing(line.offer).delivered_per_tonne is not None


def test_two_rates_of_one_charge_leave_open_what_it_comes_to():
    rows = [HEAD, SBS, ["Energy surcharge, June", None, None, 28], ["Energy surcharge, July", None, None, 31]]
    (line,) = lines(rows).values()
    assert [charge.currency for charge in line.offer.charges] == [OPEN]


@pytest.mark.parametrize(
    "sentence",
    [
        "Der Energiezuschlag von 18 €/t wird wie bisher zusätzlich berechnet.",
        "The energy surcharge of 18 €/t is charged as before.",
        "Le supplément énergie de 18 €/t reste facturé en sus comme auparavant.",
        "El recargo de energía de 18 €/t se sigue cobrando como hasta ahora.",
        "Energitillägget på 18 €/t debiteras som tidigare.",
    ],
)
def test_a_charge_that_goes_on_as_before_is_read(sentence):
    rows = [["GD2", 250, 320, 830], ["GD2", 300, 390, 820]]
    found = lines([[sentence], [], ["Grade", "g/m²", "µm", "€/t"], *rows])
    assert {str(charge.price) for line in found.values() for charge in line.offer.charges} == {"18"}


def test_a_charge_that_was_and_one_that_will_be_stay_open():
    rows = [["GD2", 250, 320, 830], ["GD2", 300, 390, 820]]
    found = lines([["Energiezuschlag bisher 18 €/t, neu 22 €/t"], [], ["Grade", "g/m²", "µm", "€/t"], *rows])
    assert {str(charge.price) for line in found.values() for charge in line.offer.charges} <= {"0", "22"}


AMERICAN_HEAD = ["Board", "pt", "lb/MSF"]
AMERICAN_SBS, AMERICAN_CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize("charge", [5, "5 or 6", "2.50 EUR or USD/ST"])
def test_a_charge_that_is_not_certain_leaves_the_delivered_cost_open(charge):
    rows = [
        [*AMERICAN_HEAD, "Price USD/ST delivered", "Energy surcharge"],
        [*AMERICAN_SBS, 1100, charge],
        [*AMERICAN_CRB, 900, None],
    ]
    charged, plain = lines(rows).values()
    assert charged.state is State.ACCEPTED
    assert [each.currency for each in charged.offer.charges] == [OPEN]
    assert (footing(charged.offer).delivered_per_tonne, footing(charged.offer).delivered_per_msf) == (None, None)
    assert codes(charged) == {"number-ambiguous"}
    assert footing(plain.offer).delivered_per_tonne is not None


def test_a_charge_in_a_sentence_without_a_unit_leaves_the_delivered_cost_open():
    rows = [["Prices delivered, plus energy surcharge USD 30"], [*AMERICAN_HEAD, "Price USD/ST"], [*AMERICAN_SBS, 1100]]
    (line,) = lines(rows).values()
    assert footing(line.offer).per_tonne is not None
    assert footing(line.offer).delivered_per_tonne is None


@pytest.mark.parametrize("name", ["Wrapping", "Pool fee"])
def test_what_stands_unexplained_beside_the_freight_leaves_the_delivered_cost_open(name):
    rows = [
        [*AMERICAN_HEAD, "Price USD/cwt", "Freight", name],
        [*AMERICAN_SBS, 57.8, 2.15, 0.35],
        [*AMERICAN_CRB, 43.2, 2.15, 0.4],
    ]
    for line in lines(rows).values():
        assert line.state is State.ACCEPTED
        assert footing(line.offer).delivered_per_tonne is None


TITLE = ["Marrowgate Board Co."]


def sheet(head, *rows):
    return lines([TITLE, [], head, *rows])


@pytest.mark.parametrize("name", ["Loyalty", "Early pay"])
def test_small_money_that_may_be_taken_off_is_asked_about(name):
    found = sheet(["Grade", "g/m²", "Price EUR/t", f"{name} EUR/t"], ["GD2", 350, 850, 20], ["GC1", 300, 950, 20])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_small_money_under_another_name_is_charged():
    found = sheet(
        ["Grade", "Caliper (pt)", "Board $/cwt", "Skid wrap $/cwt"], ["SBS", 18, 65, 0.85], ["CRB", 20, 45, 0.85]
    )
    assert [[str(charge.price) for charge in line.offer.charges] for line in found.values()] == [["0.85"]] * 2
