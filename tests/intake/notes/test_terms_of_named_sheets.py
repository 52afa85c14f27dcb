"""Terms on a sheet of their own that call the sheets of prices by their names: each takes what is said of it."""

import pytest

from tests.intake.sheets import book, codes, grid
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


def _read(*terms, names=("Rolls EU", "Rolls US"), head="Price per ton", last="Terms"):
    europe = [["Northolme Board Group"], [], ["Grade", "g/m²", "µm", head], ["FBB GC1", 250, 405, 1262]]
    states = [["Northolme Board Group"], [], ["Grade", "pt", "lb/MSF", head], ["SBS C1S", 14, 59, 1239]]
    sheets = grid(europe, names[0]), grid(states, names[1]), grid([[text] for text in terms], last)
    return read_workbook(book(*sheets), Answers({})).lines


def _told(found):
    return [(str(line.state), line.offer.currency, line.offer.basis) for line in found]


APART = [("accepted", "EUR", "tonne"), ("accepted", "USD", "short_ton")]


@pytest.mark.parametrize(
    "terms",
    [
        ["Rolls US: US$ per short ton; Rolls EU: EUR per tonne"],
        ["Rolls US – US$ per short ton", "Rolls EU – EUR per tonne"],
        ["Sheet 'Rolls US': US$ per short ton", "Sheet 'Rolls EU': EUR per tonne"],
        ["Rolls EU: prices in euro per ton of 1,000 kg", "Rolls US: prices in US dollars per ton of 2,000 lb"],
        ["Prices on Rolls US are US$ per short ton, those on Rolls EU are EUR per tonne"],
        ["Rolls US is in US$ per short ton and Rolls EU is in EUR per tonne"],
        ["Blatt Rolls US: US$ je short ton", "Blatt Rolls EU: EUR je Tonne"],
        ["Onglet Rolls US : US$ par short ton", "Onglet Rolls EU : EUR par tonne métrique"],
        ["Hoja Rolls US: US$ por short ton", "Hoja Rolls EU: EUR por tonelada métrica"],
        ["Flik Rolls US: US$ per short ton", "Flik Rolls EU: EUR per 1000 kg"],
    ],
)
def test_each_sheet_has_its_own_unit(terms):
    assert _told(_read(*terms)) == APART


def test_lead_times_and_minimums_are_those_of_the_sheet_that_they_are_said_of():
    terms = "Rolls EU: EUR per tonne, DAP. Lead time 5 weeks.", "Rolls US: US$ per short ton. Minimum order 20,000 lb."
    europe, states = (line.offer for line in _read(*terms))
    assert (europe.lead_days, europe.minimum_kg, europe.delivered) == ((35, 35), None, True)
    assert (states.lead_days, round(states.minimum_kg), states.delivered) == (None, 9072, None)


def test_what_names_no_sheet_or_all_of_them_is_said_of_all():
    found = _read(
        "Rolls EU and Rolls US: lead time 4 weeks", "Prices in USD per short ton. Minimum order 5 short tons."
    )
    assert _told(found) == [("accepted", "USD", "short_ton")] * 2
    assert [line.offer.lead_days for line in found] == [(28, 28)] * 2
    assert all(line.offer.minimum_kg is not None for line in found)


def test_a_sheet_that_nothing_is_said_of_is_asked_about():
    europe, states = _read("Prices on Rolls US are US$ per short ton.")
    assert codes(europe) >= {"currency-unknown", "basis-unknown"}
    assert str(states.state) == "accepted"


def test_a_sheet_called_by_a_grade_takes_nothing_from_the_boards_of_that_grade_elsewhere():
    found = _read("SBS: lead time 4 weeks", "Prices in USD per short ton", names=("Boards", "SBS"))
    assert [line.offer.lead_days for line in found] == [None, (28, 28)]
