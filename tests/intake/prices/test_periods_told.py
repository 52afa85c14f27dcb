"""Prices of several months beside each other: which of them holds, where a note names the months."""

import pytest

from tests.intake.sheets import lines


def offered(note, heads=("Apr 2026", "May 2026", "Jun 2026")):
    """The figures that are accepted, and how many are asked about."""
    rows = [["CUK", 18, 74, 1035, 1040, 1065], ["CRB", 20, 79, 880, 885, 890]]
    heading = [None, None, None, "Price, US$ per short ton, FOB mill"]
    found = lines([heading, ["Board", "pt", "lb/MSF", *heads], *rows, [], [note]])
    accepted = [int(line.offer.price) for line in found.values() if line.state == "accepted"]
    return accepted, sum(line.state == "question" for line in found.values())


@pytest.mark.parametrize(
    "note",
    [
        "April and May columns are superseded.",
        "April to May prices are shown for reference only (expired).",
        "The June column is the price in force.",
        "June prices apply until the next adjustment date.",
        "Die Preise für April und Mai sind abgelaufen.",
        "Es gelten die Preise der Spalte Juni.",
        "Les prix d'avril et mai sont périmés.",
        "Seuls les prix de juin sont en vigueur.",
        "Los precios de abril y mayo están vencidos.",
        "Rigen los precios de junio.",
        "Priserna för april och maj har upphört att gälla.",
        "Junipriserna: juni gäller nu.",
    ],
)
def test_a_note_says_which_months_price_holds(note):
    assert offered(note) == ([1065, 890], 0)


@pytest.mark.parametrize(
    "note",
    [
        "Prices apply until 30 June 2026.",
        "All prices are valid through June.",
        "Prices apply from April.",
        "April prices are superseded.",
        "Prices valid April to June.",
        "April and May prices are superseded, June is superseded too.",
        "June prices are not in force yet.",
        "The June column does not apply to contracts.",
        "Other charges may apply.",
        "Orders may not be cancelled.",
        "Lead times valid for June: 4 weeks.",
        "June fuel surcharge expired.",
        "Prices may no longer apply.",
    ],
)
def test_what_leaves_several_is_asked(note):
    assert offered(note)[0] == []
