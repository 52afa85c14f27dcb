"""Surcharges for energy, for the lorry's fuel, for gas and for electricity: each is charged beside the others."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
ROW = ["SBS C1S", 16, 67, 1230]


def charged(*notes, column=None):
    head, row = ([*HEAD, column], [*ROW, 12]) if column else (HEAD, ROW)
    (line,) = lines([head, row, [], *([note] for note in notes)]).values()
    return {charge.label: charge.price for charge in line.offer.charges}


@pytest.mark.parametrize(
    ("note", "named"),
    [
        ("Natural gas surcharge USD 12/ST, energy surcharge USD 20/ST", ("Natural gas surcharge", "energy surcharge")),
        ("Fuel surcharge USD 12/ST; energy surcharge USD 20/ST", ("Fuel surcharge", "energy surcharge")),
        ("Gaszuschlag 12 USD/ST, Stromzuschlag 20 USD/ST", ("Gaszuschlag", "Stromzuschlag")),
        ("Surcharge gaz 12 USD/ST, surcharge électricité 20 USD/ST", ("Surcharge gaz", "surcharge électricité")),
        ("Recargo de gas 12 USD/ST, recargo de electricidad 20 USD/ST", ("Recargo de gas", "recargo de electricidad")),
        ("Gastillägg 12 USD/ST, eltillägg 20 USD/ST", ("Gastillägg", "eltillägg")),
        ("Toll surcharge USD 12/ST, palletising USD 20/ST", ("Toll surcharge", "palletising")),
    ],
)
def test_one_note_charges_both(note, named):
    assert charged(note) == dict(zip(named, (12, 20), strict=True))


def test_so_do_two_notes():
    assert charged("Fuel surcharge USD 12/ST", "Energy surcharge USD 20/ST") == {
        "Fuel surcharge": 12, "Energy surcharge": 20,
    }  # fmt: skip


def test_what_one_surcharge_comes_to_is_open_where_two_notes_differ():
    assert charged("Energy surcharge USD 12/ST", "Energy surcharge USD 20/ST") == {"Energy surcharge": 0}


def test_an_energy_surcharge_in_a_note_comes_on_top_of_a_column_of_fuel():
    assert charged("Energy surcharge USD 20/ST", column="Fuel surcharge USD/ST") == {
        "Fuel surcharge": 12, "Energy surcharge": 20,
    }  # fmt: skip


def test_a_note_without_an_amount_tells_of_the_column():
    assert list(charged("The energy surcharge is reviewed monthly", column="Fuel surcharge USD/ST").values()) == [12]


@pytest.mark.parametrize("note", ["Energy and fuel surcharge of USD 20/ST", "Energy/fuel surcharge USD 20/ST"])
def test_one_for_energy_and_fuel_is_the_columns_own_once_more(note):
    assert list(charged(note, column="Energy surcharge USD/ST").values()) == [12]


def test_a_levy_by_two_names_is_charged_once():
    assert list(charged("CO2 levy USD 5/ST", "CO2 surcharge USD 5/ST").values()) == [5]


def test_a_table_of_surcharges_lists_both():
    head, row = ["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 16, 67, 1230]
    surcharges = [["Surcharges on all prices", "USD/ST"], ["Energy", 38], ["Fuel", 14]]
    (line,) = lines([head, row, [], *surcharges]).values()
    assert sorted(charge.price for charge in line.offer.charges) == [14, 38]


def test_a_joint_surcharge_and_one_of_its_halves_leave_open_what_is_charged():
    assert charged("Energy and fuel surcharge USD 20/ST", "Fuel surcharge USD 14/ST") == {"Energy / fuel surcharge": 0}
