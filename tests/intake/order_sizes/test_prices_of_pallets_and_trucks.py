"""'Pallet price | Truck price' over prices whose unit the title says: how much is ordered so, and no unit of theirs."""

import pytest

from tests.intake.sheets import codes, lines

LANGUAGES = [
    ("EUR per tonne", "Pallet price", "Truck price", "under 15,000 kg", "15,000 kg and more"),
    ("EUR je Tonne", "Palettenpreis", "LKW-Preis", "unter 15.000 kg", "ab 15.000 kg"),
    ("EUR la tonne", "Prix palette", "Prix camion", "moins de 15 000 kg", "à partir de 15 000 kg"),
    ("EUR por tonelada", "Precio palet", "Precio camión", "menos de 15.000 kg", "desde 15.000 kg"),
    ("EUR per 1000 kg", "Pris pall", "Pris bil", "under 15 000 kg", "från 15 000 kg"),
]


def read(title, *heads):
    rows = [[None, None, None, *row] for row in heads]
    rows[0][:3] = ["Sorte", "g/m²", "µm"]
    return list(lines([[title], [], *rows, ["GC2", 240, 400, 1259, 1208], ["GD2", 320, 415, 828, 791]]).values())


@pytest.mark.parametrize(("title", "pallet", "truck", "less", "more"), LANGUAGES)
def test_the_weight_below_or_behind_the_name_is_the_order_size(title, pallet, truck, less, more):
    for heads in ([(pallet, truck), (less, more)], [(f"{pallet} {less}", f"{truck} {more}")]):
        found = read(title, *heads)
        assert {(str(line.state), str(line.offer.basis)) for line in found} == {("accepted", "tonne")}
        assert [(line.offer.from_kg, line.offer.below_kg) for line in found[:2]] == [(None, 15000), (15000, None)]


@pytest.mark.parametrize(("title", "pallet", "truck", "less", "more"), LANGUAGES)
def test_without_a_weight_only_the_order_size_is_asked(title, pallet, truck, less, more):
    assert {frozenset(codes(line)) for line in read(title, (pallet, truck))} == {frozenset({"bracket-unread"})}


@pytest.mark.parametrize(
    "heads",
    [("Price per pallet", "Price per truck"), ("Preis je Palette", "Preis je LKW"), ("Price/pallet", "Price/truck")],
)
def test_a_price_per_pallet_is_by_another_unit_than_the_title_says(heads):
    found = read("EUR per tonne", heads, ("under 15,000 kg", "15,000 kg and more"))
    assert all("basis-unknown" in codes(line) for line in found)


def test_pallets_over_order_sizes_are_no_packing():
    found = read("EUR per tonne", ("Pallet", "Truck"), ("under 15,000 kg", "15,000 kg and more"))
    assert [line.offer.source.cell for line in found] == ["D5", "E5", "D6", "E6"]
