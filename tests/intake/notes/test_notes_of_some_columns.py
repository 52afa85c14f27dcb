"""Notes about some of the price columns only: a zone's, a place's or a vendor's, by words, letter or sign."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import lines


def zones(*notes, heads=("Zone 1", "Zone 2 (150-400 mi)", "Zone 3"), title="Delivered prices, US$/cwt"):
    return [
        [title],
        ["Board", "pt", "lb/MSF", *heads],
        ["SBS C1S", 16, 68, 58.2, 59.1, 60.3],
        ["CUK", 18, 74, 53.4, 54.2, 55.1],
        [],
        *([note] for note in notes),
    ]


def charged(found):
    return {
        cell[0]: [(c.label, c.price) for c in line.offer.charges] for cell, line in found.items() if cell[1:] == "3"
    }


@pytest.mark.parametrize(
    "note",
    [
        "Zone 3 only: plus 4% fuel surcharge",
        "Zone 3: fuel surcharge 4 %",
        "Fuel surcharge 4 % in zone 3 only",
        "A fuel surcharge of 4 % applies to zone 3.",
        "Column F: fuel surcharge 4 %",
        "Nur Zone 3: zzgl. 4 % Dieselzuschlag",
        "Supplément carburant 4 % pour la zone 3 uniquement",
        "Solo zona 3: recargo por combustible 4 %",
        "Endast zon 3: drivmedelstillägg 4 %",
    ],
)
def test_a_charge_of_one_zone_is_put_on_no_other(note):
    found = charged(lines(zones(note)))
    assert found["D"] == found["E"] == []
    assert [price for _, price in found["F"]] == [Decimal(4)]


def test_a_sign_in_a_head_tells_which_zone_a_charge_is_of():
    found = charged(lines(zones("* plus 4 % fuel surcharge", heads=("Zone 1", "Zone 2", "Zone 3 *"))))
    assert found == {"D": [], "E": [], "F": [("fuel surcharge", Decimal(4))]}


@pytest.mark.parametrize(
    ("note", "heads"),
    [
        ("Fuel surcharge 4 %", ("Zone 1", "Zone 2", "Zone 3")),
        ("Zones 1 to 3: fuel surcharge 4 %", ("Zone 1", "Zone 2", "Zone 3")),
        ("* Fuel surcharge 4 %", ("Zone 1 *", "Zone 2 *", "Zone 3 *")),
        ("Zones 1 to 7: fuel surcharge 4 %", ("Zone 1", "Zone 2", "Zone 3")),
    ],
)
def test_what_is_said_of_all_zones_holds_for_each(note, heads):
    assert {price for charges in charged(lines(zones(note, heads=heads))).values() for _, price in charges} == {4}


@pytest.mark.parametrize("note", ["Zone 7: fuel surcharge 4 %", "Zone 7 – plus 4 % fuel surcharge"])
def test_what_is_said_of_a_zone_without_prices_is_charged_on_none(note):
    assert charged(lines(zones(note))) == {"D": [], "E": [], "F": []}
    others = charged(lines(zones("Zone 7: fuel surcharge 4 %, all other zones 3 %")))
    assert {price for charges in others.values() for _, price in charges} == {3}


@pytest.mark.parametrize(
    "note",
    [
        "Fuel surcharge 3 %, zone 1 free",
        "Fuel surcharge 3 % (zone 1: none)",
        "Fuel surcharge 3 %, zone 1 without",
        "Fuel surcharge 3 %, waived in zone 1",
        "Fuel surcharge 3 % (included in zone 1)",
        "Fuel surcharge 3 % in zones 2 and 3, zone 1 free",
        "Dieselzuschlag 3 %, Zone 1 frei",
        "Dieselzuschlag 3 %, entfällt in Zone 1",
        "Supplément carburant 3 % (zone 1 : aucun)",
        "Recargo por combustible 3 %, zona 1 sin recargo",
        "Drivmedelstillägg 3 %, zon 1 utan",
    ],
)
def test_a_figure_before_a_zone_that_is_free_is_that_of_the_others(note):
    found = charged(lines(zones(note)))
    assert {cell: [price for _, price in charges] for cell, charges in found.items()} == {"D": [], "E": [3], "F": [3]}


@pytest.mark.parametrize(
    ("note", "rates"),
    [
        ("Fuel surcharge 3 %, zone 1 2 %", (2, 3, 3)),
        ("Fuel surcharge 3 % (zone 1: 1 %, zone 2: 2 %)", (1, 2, 3)),
        ("Fuel surcharge 3 %, zone 1", (3, None, None)),
        ("Fuel surcharge 3 % in zone 1, none elsewhere", (3, None, None)),
        ("Fuel surcharge 3 %, not included in zone 1", (3, None, None)),
        ("Fuel surcharge 2 % in zone 1, 3 % in zone 2, none in zone 3", (2, 3, None)),
    ],
)
def test_a_figure_is_that_of_the_zone_behind_it_unless_that_has_its_own(note, rates):
    found = charged(lines(zones(note)))
    assert tuple(charges[0][1] if charges else None for charges in found.values()) == rates


def test_energy_is_charged_beside_the_fuel_of_some():
    found = charged(lines(zones("Energy surcharge 2 % on all zones.", "Zone 3: plus 4 % fuel surcharge")))
    assert {cell: sorted(price for _, price in each) for cell, each in found.items()} == {
        "D": [2],
        "E": [2],
        "F": [2, 4],
    }
    found = charged(lines(zones("Fuel surcharge 2 % on all zones.", "Zone 3: fuel surcharge 4 %")))
    assert {cell: [price for _, price in each] for cell, each in found.items()} == {"D": [2], "E": [2], "F": [4]}


@pytest.mark.parametrize(("general", "rates"), [("Energy surcharge 2 %", [2, 3]), ("Fuel surcharge 2 %", [3])])
def test_a_signed_charge_replaces_only_its_own_name(general, rates):
    heads = ("Rolls *", "Sheets")
    rows = [["Delivered, US$/ST"], ["Board", "pt", *heads], ["SBS", 18, 1200, 1250], [], [general]]
    found = lines([*rows, ["* plus 3 % fuel surcharge"]])
    assert sorted(charge.price for charge in found["C3"].offer.charges) == rates
    assert [charge.price for charge in found["D3"].offer.charges] == [2]


@pytest.mark.parametrize(
    ("heads", "others"),
    [
        (("Sheets EUR/t", "Reels EUR/t"), 0),
        (("Up to 5 t EUR/t", "From 5 t EUR/t"), 0),
        (("Ex works EUR/t", "Delivered EUR/t"), 0),
        (("Zone 1 EUR/t", "Zone 2 EUR/t"), 1),
    ],
)
def test_a_charge_below_one_form_way_or_size_is_on_no_other(heads, others):
    rows = [["Board", *heads], ["GC1 250 g/m²", 1200, 1100], ["GD2 300 g/m²", 900, 850], [], ["Packing", 30, None]]
    found = lines(rows)
    assert [len(found[cell].offer.charges) for cell in ("B2", "C2", "B3", "C3")] == [1, others, 1, others]


def test_several_zones_each_have_their_own():
    found = charged(lines(zones("Fuel surcharge 2 % in zone 1, 3 % in zones 2 and 3")))
    assert {cell: charges[0][1] for cell, charges in found.items()} == {"D": 2, "E": 3, "F": 3}


@pytest.mark.parametrize(
    ("note", "leads"),
    [
        ("Lead time: zone 1 2 weeks, zone 2 3 weeks, all other zones 4 weeks", (14, 21, 28)),
        ("Lead time 4 weeks, except zone 3: 6 weeks", (28, 28, 42)),
        ("Lead time 4 weeks, zone 1 stock", (0, 28, 28)),
        ("Lead time 4 weeks, zone 1 two weeks", (14, 28, 28)),
        ("All zones except zone 3: lead time 4 weeks", (28, 28, None)),
        ("Zones 2 and 3: six weeks. Prices are valid until 30 June 2027.", (None, 42, 42)),
    ],
)
def test_a_zones_own_lead_time(note, leads):
    found = lines(zones(note))
    days = [found[cell].offer.lead_days for cell in ("D3", "E3", "F3")]
    assert [lead and lead[0] for lead in days] == list(leads)
    if "valid" in note:
        assert {line.offer.valid_until for line in found.values()} == {date(2027, 6, 30)}


def test_a_zones_own_lead_time_comes_before_that_of_all():
    found = lines(zones("Lead time 3 weeks", "Zone 3: lead time 7 weeks"))
    assert [found[cell].offer.lead_days[0] for cell in ("D3", "E3", "F3")] == [21, 21, 49]


def test_a_zones_own_minimum_validity_and_currency():
    found = lines(
        zones(
            "Zone 2: minimum order 20,000 lb", "Zone 1: valid until 31 March 2027", "Zone 3 prices in Canadian dollars"
        )
    )
    row = [found[cell].offer for cell in ("D3", "E3", "F3")]
    assert [offer.minimum_kg is None for offer in row] == [True, False, True]
    assert [offer.valid_until for offer in row] == [date(2027, 3, 31), None, None]
    assert [offer.currency for offer in row[:2]] == ["USD", "USD"]
    assert row[2].currency != "USD"


def test_places_over_the_prices():
    heads = ("Delivered Arkham", "Delivered Salem", "Delivered Dunwich")
    found = charged(lines(zones("Salem only: fuel surcharge 3 %", heads=heads)))
    assert found == {"D": [], "E": [("fuel surcharge", Decimal(3))], "F": []}


def test_a_title_that_names_a_place_is_about_all():
    heads = ("Arkham", "Salem", "Dunwich")
    found = lines(zones(heads=heads, title="Price list Salem mill, US$/cwt, valid until 30 June 2027"))
    assert {line.offer.valid_until for line in found.values()} == {date(2027, 6, 30)}


def test_what_changes_the_price_of_one_zone_is_asked_there_alone():
    found = lines(zones("Zone 3: add $0.40/cwt to the price"))
    assert [str(found[cell].state) for cell in ("D3", "E3", "F3")] == ["accepted", "accepted", "question"]


def bids(*notes):
    heads = ("Ebbwood Cartons Ltd", "Eastquill Board Inc.", "Pellgate Paperboard")
    rows = [["Board", "pt", "lb/MSF", *heads], ["SBS C1S", 16, 68, 1190, 1205, 1181], ["CUK", 18, 74, 1050, 1061, 1044]]
    found = lines([["Offers received, US$/ST"], *rows, [], *([note] for note in notes)])
    return [found[cell].offer for cell in ("D3", "E3", "F3")]


def test_what_is_said_of_one_vendor_holds_for_no_other():
    assert [offer.valid_until for offer in bids("Pellgate: valid until 30 June 2027")] == [
        None,
        None,
        date(2027, 6, 30),
    ]
    offers = bids("Eastquill Board Inc. quotes delivered, the others FOB mill")
    assert [offer.delivered for offer in offers] == [False, True, False]
    offers = bids("Lead time: Ebbwood Cartons Ltd 4 weeks, Pellgate Paperboard 6 weeks")
    assert [offer.lead_days and offer.lead_days[0] for offer in offers] == [28, None, 42]
    assert [len(offer.charges) for offer in bids("Energy surcharge 3 % (Pellgate Paperboard only)")] == [0, 0, 1]
    assert {offer.valid_until for offer in bids("All offers are valid until 30 June 2027")} == {date(2027, 6, 30)}


@pytest.mark.parametrize(
    "note",
    [
        "A fuel surcharge of 4 % applies to all zones but zone 1",
        "Fuel surcharge 4 %, does not apply to zone 1",
        "Dieselzuschlag 4 %, gilt nicht für Zone 1",
        "Supplément carburant 4 % sauf zone 1",
        "Recargo por combustible 4 %, excepto zona 1",
        "Drivmedelstillägg 4 % utom zon 1",
    ],
)
def test_an_excepted_zone_bears_no_charge(note):
    assert {cell: len(charges) for cell, charges in charged(lines(zones(note))).items()} == {"D": 0, "E": 1, "F": 1}


def test_points_of_the_compass():
    found = lines(zones("West: FOB mill. East and South delivered.", heads=("East", "West", "South"), title="US$/cwt"))
    assert [found[cell].offer.delivered for cell in ("D3", "E3", "F3")] == [True, False, True]
