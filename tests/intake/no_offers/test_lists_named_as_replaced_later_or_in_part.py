"""Tables called 'List 14' and 'List 15' by their titles: what a text says of one of them is of that one, and where it
goes some day, or for some of it, it is asked about."""

import pytest

from tests.intake.sheets import read
from tracker.trade.offer import State

_HEAD = ["Board", "Caliper pt", "lb/MSF", "$/short ton"]
_OLD = [_HEAD, ["SBS C1S", 14, 59, 1190], ["CRB C1S", 20, 79, 860]]
_NEW = [_HEAD, ["SBS C1S", 14, 59, 1225], ["CRB C1S", 20, 79, 895]]


def lists(said, name):
    """The offers of the table with the number 14, and of that with the number 15."""
    rows = [["Prices in US dollars per short ton."], [f"{name} 14"], *_OLD, [], [f"{name} 15"], *_NEW, [], [said]]
    found = read(rows).lines
    return tuple([line for line in found if int(line.offer.source.cell[1:]) in rows_] for rows_ in ((4, 5), (9, 10)))


def states(said, name):
    return tuple({line.state for line in each} for each in lists(said, name))


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("List", "List 14 is replaced by List 15 on 1 January 2027."),
        ("List", "List 14 is void from 1 January 2027."),
        ("Liste", "Liste 14 wird zum 1.1.2027 durch Liste 15 ersetzt."),
        ("Liste", "Liste 14 wird am 1. Januar 2027 ungültig."),
        ("Tarif", "Le tarif 14 est remplacé par le tarif 15 le 1er janvier 2027."),
        ("Lista", "La lista 14 queda sustituida por la lista 15 el 1 de enero de 2027."),
        ("Lista", "Lista 14 ersätts av lista 15 den 1 januari 2027."),
        ("List", "List 15 partly replaces List 14."),
        ("List", "List 15 replaces List 14 for sheets."),
        ("List", "List 15 cancels List 14 except for CRB."),
        ("Liste", "Liste 15 ersetzt teilweise Liste 14."),
        ("Tarif", "Le tarif 15 remplace en partie le tarif 14."),
        ("Lista", "La lista 15 sustituye parcialmente a la lista 14."),
        ("Lista", "Lista 15 ersätter delvis lista 14."),
        ("List", "List 14 is shown for information."),
        ("Liste", "Mit Liste 15 verliert Liste 14 ihre Gültigkeit."),
        ("Lista", "Lista 14 upphör att gälla."),
    ],
)
def test_a_list_that_goes_later_or_in_part_is_asked_about(name, said):
    assert states(said, name) == ({State.QUESTION}, {State.ACCEPTED})


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("List", "List 14 was replaced by List 15 on 1 October 2026."),
        ("List", "Please disregard List 14."),
        ("List", "Lists 13 and 14 are cancelled."),
        ("Liste", "Bitte Liste 14 ignorieren."),
        ("Liste", "Die Listen 13 und 14 sind ungültig."),
        ("Tarif", "Le tarif 14 est remplacé par le tarif 15."),
        ("Tarif", "Le tarif 14 a été remplacé par le tarif 15."),
        ("Tarif", "Le tarif 15 remplace le tarif 14."),
        ("Lista", "La lista 14 ha sido sustituida por la lista 15 el 1 de octubre de 2026."),
        ("Lista", "Lista 14 har ersatts av lista 15."),
    ],
)
def test_a_list_that_is_gone_offers_nothing(name, said):
    assert states(said, name) == (set(), {State.ACCEPTED})


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("List", "List 14 remains valid until 31 December 2026."),
        ("Liste", "Liste 14 ist bis 31.12.2026 gültig."),
        ("Tarif", "Tarif 14 valable jusqu'au 31 décembre 2026."),
        ("Lista", "La lista 14 es válida hasta el 31 de diciembre de 2026."),
        ("Lista", "Lista 14 gäller till 31 december 2026."),
    ],
)
def test_what_is_said_of_one_list_is_not_said_of_the_other(name, said):
    old, new = ({str(line.offer.valid_until) for line in each} for each in lists(said, name))
    assert (old, new) == ({"2026-12-31"}, {"None"})


def test_what_is_said_of_all_prices_is_of_both_lists():
    old, new = ({line.offer.delivered for line in each} for each in lists("All prices FOB mill.", "List"))
    assert old == new == {False}


def test_a_price_list_with_a_number_over_one_table_is_the_whole_file():
    rows = [["Price list 14"], *_OLD, [], ["Sheets"], *_NEW, [], ["Price list 14: US$ per short ton, FOB mill."]]
    assert {line.offer.delivered for line in read(rows).lines} == {False}
