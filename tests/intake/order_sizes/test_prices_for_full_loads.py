"""Prices that hold for truckloads only: what one weighs is in the file, or is asked."""

from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEAD = ["Product", "Grade", "Caliper (pt)", "Price USD/ST"]
BOARD = ["White", "SBS", 18, 1145]


@pytest.mark.parametrize(
    "text",
    [
        "All prices for full truckloads", "Prices apply to truckload orders only", "Truckload prices",
        "Prices FTL, USD per short ton", "Price list - truckload", "Prices for full pallets only", "LTL prices",
        "Preise für ganze LKW", "Preise gelten für volle Ladungen", "Tarif camion complet",
        "Precios camión completo", "Priser för fullt lass",
    ],
)  # fmt: skip
def test_the_weight_of_the_load_is_asked(text):
    (line,) = lines([[text], HEAD, BOARD]).values()
    assert (str(line.state), codes(line)) == ("question", {"bracket-unread", "weight-estimated"})


def test_a_sheet_or_a_group_may_be_called_by_it():
    (line,) = read_workbook(book(grid([HEAD, BOARD], "Truckload")), Answers({})).lines
    assert codes(line) >= {"bracket-unread"}
    grouped = lines([HEAD, ["Truckload"], BOARD, ["LTL"], [*BOARD[:3], 1205]])
    assert all(codes(line) >= {"bracket-unread"} for line in grouped.values())


def test_a_file_that_says_what_it_weighs_is_asked_nothing():
    (line,) = lines([["Truckload prices"], ["Truckload = 40,000 lb"], HEAD, BOARD]).values()
    assert (str(line.state), line.offer.from_kg) == ("accepted", Decimal("18143.6948"))


@pytest.mark.parametrize(
    "text",
    [
        "Truckload prices on request", "Truckload orders: rebate 3 % at year's end",
        "Freight for truckloads on request", "Minimum order: one truckload", "We load trucks Monday to Friday",
        "Delivered prices, US$ per short ton, truckload", "Offer in 40 ft containers",
        "Preise je t, Abholung mit eigenem LKW", "Transport par nos camions",
    ],
)  # fmt: skip
def test_loads_that_are_spoken_of_otherwise_hold_nothing_back(text):
    (line,) = lines([[text], HEAD, BOARD]).values()
    assert str(line.state) == "accepted"


def test_the_size_before_a_truckload_has_an_end_that_nobody_knows():
    head = [*HEAD[:3], "5M lb", "10M lb", "TL"]
    rows = [["Prices in USD per short ton"], head, ["White", "SBS", 18, 1245, 1195, 1145]]
    five, ten, load = lines(rows).values()
    assert (str(five.state), five.offer.below_kg) == ("accepted", Decimal("4535.9237"))
    assert {str(ten.state), str(load.state)} == {"question"}
    answered = lines(rows, {"bracket:TL": "18143.6948:"}).values()
    assert [line.offer.below_kg for line in answered] == [Decimal("4535.9237"), Decimal("18143.6948"), None]
    (_, weighed, _) = lines([*rows, ["TL = 40,000 lb"]]).values()
    assert (str(weighed.state), weighed.offer.below_kg) == ("accepted", Decimal("18143.6948"))


def test_a_size_that_ends_at_a_load_does_not_say_what_one_weighs():
    """It was read as 'a truckload is 10,000 lb', and the truckload's price then held from there."""
    head = [*HEAD[:3], "Under 10,000 lb", "10,000 lb to truckload", "Truckload"]
    rows = [["Prices in USD per short ton"], head, ["White", "SBS", 18, 1265, 1215, 1180]]
    below, between, load = lines(rows).values()
    assert (str(below.state), below.offer.below_kg) == ("accepted", Decimal("4535.9237"))
    assert {str(between.state), str(load.state)} == {"question"}


def test_also_behind_a_lead_time_in_the_same_sentence():
    text = "US dollars per short ton, lead time 5 weeks, each price for orders of one truckload or more"
    (line,) = lines([[text], HEAD, BOARD]).values()
    assert (codes(line) - {"weight-estimated"}, line.offer.lead_days) == ({"bracket-unread"}, (35, 35))


def test_how_soon_truckloads_come_says_nothing_of_prices():
    (line,) = lines([["Lead time for truckload orders 5 weeks"], HEAD, BOARD]).values()
    assert "bracket-unread" not in codes(line)


@pytest.mark.parametrize(
    "text",
    [
        "All USD per ST delivered in to you, full or part loads.", "Prices for full and part loads",
        "Preise für Voll- und Teilladungen", "Prix pour camions complets ou partiels",
        "Precios para cargas completas o parciales", "Priser för hel- eller dellast",
    ],
)  # fmt: skip
def test_whole_loads_and_parts_of_one_together_bound_nothing(text):
    (line,) = lines([[text], [], HEAD, BOARD]).values()
    assert (str(line.state), line.offer.from_kg, line.offer.below_kg) == ("accepted", None, None)


@pytest.mark.parametrize(("loads", "state"), [("full or part loads", "accepted"), ("part loads", "question")])
def test_so_they_do_in_the_head_of_a_price(loads, state):
    (line,) = lines([["Grade", "Caliper (pt)", f"USD/ST delivered, {loads}"], ["SBS", 18, 1145]]).values()
    assert str(line.state) == state


@pytest.mark.parametrize("text", ["Prices for part loads", "Preise für Teilladungen", "Prix: camion partiel"])
def test_parts_of_a_load_alone_do(text):
    (line,) = lines([[text], [], HEAD, BOARD]).values()
    assert "bracket-unread" in codes(line)
