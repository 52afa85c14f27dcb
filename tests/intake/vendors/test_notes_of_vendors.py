"""Notes about one vendor of a comparison whose names stand in a column are kept from the rows of the others."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Vendor", "Board", "Pt", "lb/MSF", "Quoted $/ST"]
ROWS = [
    ["Ostrim Paper Co", "SBS C1S", 16, 66, 1165],
    [None, "SBS C1S", 18, 75, 1150],
    ["Verrick Board Inc", "SBS C1S", 16, 66, 1484],
    ['"', "SBS C1S", 18, 75, 1461],
    ['"', "CRB C1S", 20, 79, 1077],
    ["Tolland Mills", "SBS C1S", 18, 75, 1139],
]


def offers(*notes, above=""):
    found = lines([*([[above]] if above else []), HEAD, *ROWS, [], *([note] for note in notes)])
    return [line.offer for line in found.values()]


def test_a_vendor_written_once_holds_for_the_rows_below_beside_dittos():
    named = [offer.vendor for offer in offers()]
    assert named == ["Ostrim Paper Co"] * 2 + ["Verrick Board Inc"] * 3 + ["Tolland Mills"]


def test_terms_of_a_vendor_are_his_alone():
    found = offers("Ostrim: firm to 30 June 2026, FOB mill.", "Verrick: delivered, 5 weeks.")
    assert [offer.delivered for offer in found] == [False] * 2 + [True] * 3 + [None]
    assert [offer.lead_days for offer in found] == [None] * 2 + [(35, 35)] * 3 + [None]
    assert [offer.valid_until is not None for offer in found] == [True] * 2 + [False] * 4


@pytest.mark.parametrize(
    "note",
    ["Verrick quotes in Canadian dollars, the other two in US dollars.",
     "Verrick bietet in kanadischen Dollar, die beiden anderen in US-Dollar.",
     "Verrick: Canadian dollars; all others: US dollars"],
)  # fmt: skip
def test_money_of_a_vendor_is_his_alone(note):
    assert [offer.currency for offer in offers(above=note)] == ["USD"] * 2 + ["CAD"] * 3 + ["USD"]


def test_what_a_title_with_a_name_says_holds_for_all():
    assert {offer.currency for offer in offers(above="Verrick Board and others, USD per short ton")} == {"USD"}
    assert {offer.delivered for offer in offers("All prices delivered")} == {True}


def test_what_a_vendor_charges_for_some_boards_is_theirs():
    found = offers("Verrick: FOB mill, freight $38/ST to be added to SBS; recycled board is picked up by us.")
    assert [[str(charge.price) for charge in offer.charges] for offer in found] == [[], [], ["38"], ["38"], [], []]
    assert [offer.delivered for offer in found] == [None] * 2 + [False] * 3 + [None]


@pytest.mark.parametrize(
    "note",
    ["Verrick: EXW. All prices valid until 30 June 2026. Energy surcharge 3 % on every price.",
     "Verrick: ab Werk. Alle Preise gültig bis 30. Juni 2026. Energiezuschlag 3 % auf alle Preise.",
     "Verrick : départ usine. Tous les prix valables jusqu'au 30 juin 2026. Supplément énergie 3 % sur tous les prix.",
     "Verrick: en fábrica. Todos los precios válidos hasta el 30 de junio de 2026. Recargo de energía 3 %.",
     "Verrick: fritt fabrik. Alla priser gäller till 30 juni 2026. Energitillägg 3 % på alla priser."],
)  # fmt: skip
def test_all_prices_behind_a_vendors_terms_are_those_of_every_vendor(note):
    found = offers(note)
    assert [offer.delivered for offer in found] == [None] * 2 + [False] * 3 + [None]
    assert all(offer.valid_until is not None for offer in found)
    assert all([str(charge.price) for charge in offer.charges] == ["3"] for offer in found)


@pytest.mark.parametrize(
    "note",
    ["Verrick: EXW. Valid until 30 June 2026. Energy surcharge 3 %.",
     "Verrick: all prices EXW. Valid until 30 June 2026. Energy surcharge 3 %."],
)  # fmt: skip
def test_a_vendors_further_sentences_are_his(note):
    found = offers(note)
    assert [offer.valid_until is not None for offer in found] == [False] * 2 + [True] * 3 + [False]
    assert [bool(offer.charges) for offer in found] == [False] * 2 + [True] * 3 + [False]


def test_a_vendor_named_behind_all_prices_is_told_apart():
    found = offers("Verrick: EXW. All prices valid until 30 June 2026. Tolland: delivered.")
    assert [offer.delivered for offer in found] == [None] * 2 + [False] * 3 + [True]
    assert all(offer.valid_until is not None for offer in found)
