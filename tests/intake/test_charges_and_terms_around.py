"""Charges and lead times that stand around the prices: in notes, in rows of their own, grade by grade."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN

HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def both(found):
    """The lines of the two boards, which must be there: what is said of none is true of all."""
    assert len(found) == 2
    return found.values()


def charges(line):
    return [(charge.label, charge.price, charge.currency, charge.basis) for charge in line.offer.charges]


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


def test_a_surcharge_in_a_whole_sentence_is_read():
    (line,) = lines([HEAD, SBS, [], ["An energy surcharge of $35 per short ton applies to all items."]]).values()
    assert charges(line) == [("energy surcharge", 35, "USD", "short_ton")]


def test_a_charge_in_a_row_of_its_own_is_in_the_prices_currency_and_unit():
    rows = [HEAD, SBS, CRB, ["Plus, on all items:"], ["Energy surcharge", None, None, 28]]
    for line in both(lines(rows)):
        assert charges(line) == [("Energy surcharge", 28, "USD", "short_ton")]


@pytest.mark.parametrize("figure", [3.5, 12])
def test_a_small_figure_in_a_row_of_its_own_may_be_per_cent(figure):
    (line,) = lines([HEAD, SBS, ["Energy surcharge", None, None, figure]]).values()
    assert [charge.currency for charge in line.offer.charges] == [OPEN]


def test_two_rates_of_one_charge_leave_open_what_it_comes_to():
    rows = [HEAD, SBS, ["Energy surcharge, June", None, None, 28], ["Energy surcharge, July", None, None, 31]]
    (line,) = lines(rows).values()
    assert [charge.currency for charge in line.offer.charges] == [OPEN]


def test_a_charge_for_some_orders_only_is_no_charge_of_all():
    (line,) = lines([HEAD, SBS, ["Small order surcharge under 5 tons", None, None, 60]]).values()
    assert line.offer.charges == ()


@pytest.mark.parametrize(
    ("note", "sbs", "crb"),
    [
        ("Lead times: SBS 4-5 weeks; CRB 3 weeks", (28, 35), (21, 21)),
        ("Lead time SBS 4 weeks, CRB in stock", (28, 28), (0, 0)),
        ("Lead time for SBS four weeks", (28, 28), None),
        ("SBS ships in 3 weeks; all other grades 5 weeks", (21, 21), (35, 35)),
        ("Lead time: rolls 3 weeks; sheets 5 weeks", None, None),
        ("Ships three to four weeks after receipt of order.", (21, 28), (21, 28)),
    ],
)
def test_a_lead_time_holds_for_the_grades_it_names(note, sbs, crb):
    assert [line.offer.lead_days for line in lines([HEAD, SBS, CRB, [], [note]]).values()] == [sbs, crb]


def test_a_rows_own_lead_time_comes_before_that_of_its_grade():
    rows = [[*HEAD, "Lead time"], [*SBS, "2 weeks"], [*CRB, "TBA"], [], ["Lead times: SBS 4 weeks; CRB 3 weeks"]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [(14, 14), None]


def test_rates_below_a_heading_that_names_a_charge_are_no_offers():
    rows = [
        HEAD,
        SBS,
        [],
        ["Freight, US$ per short ton"],
        ["Zone 1", None, None, 38],
        ["CRB C1S 18 pt", None, None, 900],
    ]
    assert [line.offer.price for line in lines(rows).values()] == [1100, 900]


@pytest.mark.parametrize(
    ("note", "sbs", "crb"),
    [
        ("Min order 20,000 lb SBS, 10,000 lb CRB", 20000, 10000),
        ("min SBS 20,000 lb", 20000, None),
        ("Mindestmenge SBS 20,000 lb; CRB 10,000 lb", 20000, 10000),
        ("Minimum order 20,000 lb", 20000, 20000),
    ],
)
def test_a_smallest_order_holds_for_the_boards_it_names(note, sbs, crb):
    kg = [None if pounds is None else pounds * Decimal("0.45359237") for pounds in (sbs, crb)]
    assert [line.offer.minimum_kg for line in lines([[note], HEAD, SBS, CRB]).values()] == kg


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Prices for orders of 40,000 lb and over; smaller orders add $60/ST", Decimal("18143.6948")),
        ("Preise ab 10.000 kg; Mindermengenzuschlag 40 EUR/t", 10000),
        ("Prix pour commandes à partir de 5000 kg ; en dessous nous consulter", 5000),
        ("Prices are for full truckloads (40,000 lb). LTL add $75/ST.", Decimal("18143.6948")),
        ("Freight rates for 40,000 lb and over on request", None),
        ("Prices per 100 lb", None),
    ],
)
def test_prices_hold_for_the_orders_that_a_note_names(note, kg):
    for line in both(lines([HEAD, SBS, CRB, [], [note]])):
        assert (line.offer.from_kg, line.offer.below_kg) == (kg, None)


@pytest.mark.parametrize(
    ("head", "words"),
    [("Fracht", ("inkl.", "frei")), ("Freight", ("Prepaid", "prepaid")), ("Frakt", ("ingår", "fritt"))],
)
def test_a_freight_column_with_words_and_a_figure_keeps_both(head, words):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "EUR/t", head]]
    rows += [["GC1", 250, 405, 1290, words[0]], ["GC1", 300, 480, 1280, 45]]
    rows += [["GC2", 300, 490, 1230, words[1]], ["GC2", 320, 520, 1225, "n. Aufwand"]]
    found = [line.offer for line in lines(rows).values()]
    assert [offer.delivered for offer in found] == [True, None, True, None]
    assert [[charge.price for charge in offer.charges] for offer in found] == [[], [45], [], []]


@pytest.mark.parametrize(
    ("title", "charges"),
    [
        ("Preise zzgl. 35 EUR/t Energiezuschlag", [35]),
        ("Die Preise verstehen sich zzgl. eines Energiezuschlags von 35 EUR/t", [35]),
        ("zzgl. Frachtkostenpauschale 48,00 €/t", [48]),
        ("Vi debiterar ett energitillägg på 320 EUR/ton", [320]),
    ],
)
def test_charges_in_whole_sentences(title, charges):
    rows = [[title], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290]]
    (line,) = lines(rows).values()
    assert [charge.price for charge in line.offer.charges] == charges


def test_freight_paid_from_an_order_size_on_is_no_order_size_of_the_prices():
    rows = [["Preise frei Haus ab 5 t"], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290]]
    (line,) = lines(rows).values()
    assert (line.offer.from_kg, line.offer.delivered) == (None, None)
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["Frei Haus ab 5 t"], ["GC1", 250, 405, 1290], ["Frei Haus ab 10 t"],
            ["GC1", 250, 405, 1260]]  # fmt: skip
    found = [line.offer for line in lines(rows).values()]
    assert [(offer.from_kg, offer.below_kg) for offer in found] == [(5000, 10000), (10000, None)]


@pytest.mark.parametrize("note", ["Mindermengenzuschlag 60 USD/t", "Anbruchzuschlag: 10 %", "Småordertillägg 600 SEK"])
def test_what_small_orders_cost_more_is_told_and_charged_to_none(note):
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290], [], [note]]
    (line,) = lines(rows).values()
    assert (line.offer.charges, line.offer.currency, str(line.state)) == ((), "EUR", "accepted")
    assert [note.code.value for note in line.notes] == ["bracket-unread"]
