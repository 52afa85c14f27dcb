"""Conditions in whole sentences: surcharges that ended, words that look like money, orders that are something else."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.freight.relieved_charges import no_charges
from tracker.intake.values.prices.currency import find_currencies
from tracker.trade.offer import State

BOARDS = [["Board", "µm", "g/m²", "Price (€/t)"], ["GC1", 400, 250, 1445], ["GD2", 450, 350, 895]]


def charged(*notes):
    found = lines([["Alle Preise frei Haus"], *BOARDS, [], *([note] for note in notes)])
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    return [(charge.label, charge.price) for charge in found["D3"].offer.charges]


@pytest.mark.parametrize(
    "text",
    [
        "The 4% energy surcharge introduced in 2022 was withdrawn on 1 October 2026 and no surcharge applies.",
        "Le supplément carburant de 2 % a pris fin le 30 septembre 2026.",
        "Der Energiezuschlag von 3 % ist zum 1. Oktober 2026 entfallen, er ist entfallen.",
        "El recargo energético del 3 % dejó de aplicarse el 1 de octubre de 2026.",
        "Energitillägget på 3 % slopades den 1 oktober 2026.",
    ],
)
def test_a_surcharge_that_has_ended_is_not_charged(text):
    assert charged(text) == []


def test_one_that_is_in_force_is():
    assert charged("A logistics surcharge of 1.5% of the board price is in force until further notice.") == [
        ("surcharge", pytest.approx(1.5))
    ]


def test_one_that_is_suspended_by_its_amount_alone_takes_no_other_away():
    force = "A logistics surcharge of 1.5% of the board price is in force until further notice."
    other = "The surcharge of 30 EUR/t for coating materials was suspended in June 2026."
    assert charged(force, other) == [("surcharge", pytest.approx(1.5))]
    assert charged(other) == []
    assert [one.itself for one in no_charges("The surcharge is suspended.")] == [False]


@pytest.mark.parametrize(
    "text",
    [
        "Orders are ready for loading six weeks after the deposit of 30% has been received.",
        "Die Verladung erfolgt nach Eingang der Anzahlung von 30 %.",
        "Le chargement suit le versement d'un acompte de 30 %.",
    ],
)
def test_a_share_paid_ahead_is_no_charge(text):
    assert find_charges(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "Ils sont valables jusqu'au 28 février 2027.",
        "Try us for other grades.",
        "Orders carry a fee, and the pen is free.",
    ],
)
def test_words_that_are_codes_in_capitals_name_no_money(text):
    assert find_currencies(text) == ()
    assert [reading.codes for reading in find_currencies("Prices in ILS per tonne")] == [("ILS",)]


def test_the_article_before_a_dollar_sign_makes_none_of_australia():
    assert [one.words for one in find_currencies("Same-day orders carry a $45.00 fee")] == ["$"]
    assert [one.codes for one in find_currencies("Prices in A$ per tonne")] == [("AUD",)]


@pytest.mark.parametrize(
    "note",
    [
        "Export utanför Norden sker i dollar enligt särskild lista.",
        "Tauschpaletten (EUR) bitte bereithalten, sonst 12,00 EUR je Stück.",
        "Les clients américains reçoivent une grille distincte en dollars des États-Unis.",
    ],
)
def test_what_is_told_of_other_sales_and_of_pallets_contradicts_no_head(note):
    found = lines([["Preise"], *BOARDS, [], [note]])
    assert {(line.state, line.offer.currency, str(line.offer.basis)) for line in found.values()} == {
        (State.ACCEPTED, "EUR", "tonne")
    }


def test_the_weight_of_an_order_over_its_sizes_heads_prices():
    rows = [
        ["USD per cwt"],
        ["Board", "pt", "lb/MSF", "Total weight of the order", None],
        [None, None, None, "under 1,000 lb", "1,000 lb & over"],
        ["SBS C1S", 12, 52, 96.5, 91],
        ["SBS C1S", 18, 76, 94, 88.5],
    ]
    assert {at: line.state for at, line in lines(rows).items()} == dict.fromkeys(
        ("D4", "E4", "D5", "E5"), State.ACCEPTED
    )
    rows[2] = [None, None, None, "under 3 ST", "3 ST and over"]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


def test_what_a_board_is_used_for_names_no_grade():
    rows = [
        ["Coated unbleached kraft"],
        ["Code", "Use", "pt", "lb/MSF", "USD/ST"],
        ["CK-15", "Folding", 15, 64, 1165],
        ["CK-18", "Beverage", 18, 75, 1180],
    ]
    assert [line.offer.grade for line in lines(rows).values()] == ["CUK", "CUK"]


def test_sailings_within_some_days_are_no_lead_time():
    found = lines([*BOARDS, [], ["The quantity is that of one order, shipped in one or more sailings within 60 days."]])
    assert [line.offer.lead_days for line in found.values()] == [None, None]
