"""Order sizes that a note names for its prices, or that the file explains a name by."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def both(found):
    """The lines of the two boards, which must be there: what is said of none is true of all."""
    assert len(found) == 2
    return found.values()


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


_HEAD = ["Board", "Cal.", "Lb/MSF", "Lot", "USD/MSF"]
_ROWS = [["SBS C1S", "18 pt", 76, "Small lot", 50.9], [None, None, None, "TL", 48.2]]


def test_a_name_that_the_file_explains_is_a_size():
    found = lines([_HEAD, *_ROWS, ["Small lot = under 10,000 lb."], ["TL: 10,000 lb and up"]])
    assert [(line.offer.from_kg is None, line.offer.below_kg is None) for line in found.values()] == [
        (True, False), (False, True),
    ]  # fmt: skip


def test_a_name_without_a_word_on_it_is_asked():
    found = lines([_HEAD, *_ROWS, ["Small lot = under 10,000 lb."]])
    assert [str(line.state) for line in found.values()] == ["accepted", "question"]
    assert "bracket-unread" in codes(found["E3"])


@pytest.mark.parametrize(
    "said", ["Discount from 20 ST", "Free storage up to 20 ST", "Rabatt ab 20 t", "Remise dès 5 t"]
)
def test_sizes_of_discounts_and_storage_bound_no_price(said):
    rows = [["Grade", "pt", "USD/ST"], [said], ["SBS", 18, 1200], ["CUK", 20, 900]]
    assert {(line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()} == {(None, None)}
