"""Order sizes in pallets, rolls and truckloads whose weight a sentence of the list states, and sentences that state
none."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.loads import load_definitions

EACH = [
    "Every pallet is made up to 750 kg net, whatever the board.", "A pallet holds 750 kg", "Each skid carries 750 kg",
    "We pack 750 kg to the pallet", "A pallet is 750 kg, excluding VAT",
    "750 kg on each pallet, whatever the grade", "Pallet weight 750 kg throughout",
    "Our pallets hold 750 kg of board", "Every pallet weighs 750 kg regardless of grade", "1 Palette = 750 kg netto",
    "Paletten zu je 750 kg", "Eine Palette fasst 750 kg, unabhängig von der Sorte", "Palettengewicht 750 kg",
    "Die Palette wird mit 750 kg gepackt", "Wir packen 750 kg auf jede Palette", "Chaque palette pèse 750 kg",
    "Chaque palette contient 750 kg quelle que soit la qualité", "Les palettes font 750 kg nets",
    "Nous mettons 750 kg sur chaque palette", "Los palés pesan 750 kg", "Cada palé lleva 750 kg netos",
    "Ponemos 750 kg en cada palé", "Cada tarima pesa 750 kg sea cual sea la calidad", "Varje pall väger 750 kg",
    "En pall rymmer 750 kg", "Varje pall packas med 750 kg, oavsett kvalitet", "Pallvikt 750 kg",
]  # fmt: skip
OPEN = [
    "A pallet holds about 750 kg", "Pallets hold up to 750 kg", "Pallets are made up to 750 kg",
    "Pallets are made up to 750 kg at most",
    "A pallet weighs 600-800 kg", "A pallet weighs 750 kg gross", "Each pallet weighs 750 kg including the wood",
    "Each pallet is 750 kg, except GD2", "Cada palé pesa 750 kg, menos GD2",
    "Pallets weigh 750 kg, GD2 800 kg", "Pallets weigh 750 kg; GD2 pallets 800 kg",
    "GC1 pallets weigh 750 kg", "Minimum for pallets: 750 kg", "Palette ca. 750 kg", "Paletten bis zu 750 kg",
    "Jede Palette wiegt 750 kg, GD2 800 kg", "Une palette pèse environ 750 kg", "Palettes jusqu'à 750 kg",
    "Chaque palette pèse 750 kg, sauf GD2", "Un palé pesa unos 750 kg", "Palés de hasta 750 kg",
    "Los palés pesan 750 kg, excepto GD2", "En pall väger cirka 750 kg", "Pallar upp till 750 kg",
    "Varje pall väger 750 kg, utom GD2",
]  # fmt: skip


def by_pallets(note):
    heads = ["Grade", "g/m²", "µm", "under 5 pallets", "5 to 11 pallets", "12 pallets and over"]
    rows = [["GC1", 250, 405, 1290, 1200, 1100], ["GD2", 350, 470, 900, 850, 820]]
    return lines([["EUR/t"], heads, *rows, [], [note]])


@pytest.mark.parametrize("note", EACH)
def test_pallets_are_weighed_by_a_sentence(note):
    found = by_pallets(note)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    sizes = [(found[cell].offer.from_kg, found[cell].offer.below_kg) for cell in ("D3", "E3", "F3", "F4")]
    assert sizes == [(None, 3750), (3750, 9000), (9000, None), (9000, None)]


@pytest.mark.parametrize("note", OPEN)
def test_pallets_that_need_not_all_weigh_the_same_are_asked_about(note):
    assert all("bracket-unread" in codes(line) for line in by_pallets(note).values())


@pytest.mark.parametrize(
    ("text", "kind"),
    [("All rolls weigh 750 kg", "roll"), ("Jede Rolle wiegt 750 kg", "roll"), ("Les bobines font 750 kg", "roll"),
     ("Cada bobina lleva 750 kg", "roll"), ("Varje rulle har 750 kg", "roll")],
)  # fmt: skip
def test_rolls_likewise(text, kind):
    assert [(one.kind, one.weight.kg()) for one in load_definitions(text)] == [(kind, 750)]


def by_trucks(note):
    heads = ["Grade", "g/m²", "µm", "LTL", "1 truckload"]
    return lines([["EUR per tonne"], heads, ["GC1", 250, 405, 1290, 1200], [], [note]])


@pytest.mark.parametrize(
    "note", ["A truckload is 24 tonnes", "Every truckload is made up to 24 tonnes, whatever the mix."]
)
def test_truckloads_are_weighed_by_a_sentence(note):
    found = by_trucks(note)
    assert (found["D3"].offer.below_kg, found["E3"].offer.from_kg) == (24000, 24000)


@pytest.mark.parametrize(
    "note",
    ["A truckload is about 24 tonnes", "Truckloads hold up to 24 tonnes", "Truckloads are made up to 24 tonnes",
     "Max. 24 tonnes per truckload",
     "A truckload is 24 tonnes, except GD2", "Un camion = 24 tonnes environ", "LKW ca. 24 Tonnen",
     "Camión de hasta 24 tonnes", "Lastbil cirka 24 ton"],
)  # fmt: skip
def test_truckloads_that_need_not_weigh_as_much_are_asked_about(note):
    assert all("bracket-unread" in codes(line) for line in by_trucks(note).values())
