"""Units and money as people mistype them, where the word before a ton is no sheet."""

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies

ROWS = [["SBS C1S", 14, 59, 1262], ["CRB C1S", 22, 86, 934]]


def _list(price, title="prcs in US dolars, dlvd"):
    return [["Fernhollow Mill"], [title], [], ["Grd", "Calliper (pts)", "Bas. Wt. #/MSF", price], *ROWS]


@pytest.mark.parametrize(
    "price", ["Prce / sht tn", "Price per shrt tn", "Price/shtn", "Price / sht. tn.", "Price / sh tn"]
)
def test_a_short_ton_cut_short_is_no_sheet(price):
    found = lines(_list(price))
    assert [(str(one.state), str(one.offer.basis)) for one in found.values()] == [("accepted", "short_ton")] * 2
    assert {one.offer.currency for one in found.values()} == {"USD"}


def test_a_sheet_before_a_ton_is_asked_about():
    found = lines(_list("Price / sheet ton"))
    assert all(codes(one) == {"basis-unknown"} for one in found.values())


@pytest.mark.parametrize("price", ["Price / sht", "Price per sheet"])
def test_a_sheet_stays_a_sheet(price):
    assert {str(basis) for basis in find_basis(price).bases} == {"sheet"}


@pytest.mark.parametrize(("money", "code"), [("US dolars", "USD"), ("US dollers", "USD"), ("Canadian dolars", "CAD")])
def test_dollars_misspelt_are_dollars(money, code):
    assert [found.codes for found in find_currencies(f"prices in {money}")] == [(code,)]


def test_dollars_misspelt_without_a_country_are_any_dollars():
    found = read([*_list("Price / sht tn", "prices in dolars"), ["Canadian customers: prices in Canadian dolars"]])
    assert "USD" in find_currencies("prices in dolars")[0].codes
    assert all(one.offer.currency != "USD" for one in found.lines if str(one.state) == "accepted")


@pytest.mark.parametrize(
    ("head", "basis"),
    [
        ("Px € / Tonnne", "tonne"), ("EUR per tonnnes", "tonne"), ("€ pro Tonnnen", "tonne"), ("€/kiloo", "kg"),
        ("precio €/tonelaada métrica", "tonne"), ("€/feuillle", "sheet"),
    ],
)  # fmt: skip
def test_a_letter_too_many_leaves_the_unit_what_it_is(head, basis):
    assert {str(one) for one in find_basis(head).bases} == {basis}
    if basis == "tonne":
        (line,) = lines([["Sorte", "g/m²", "µm", head], ["GC1", 240, 390, 1288]]).values()
        assert (str(line.state), str(line.offer.basis), line.offer.currency) == ("accepted", "tonne", "EUR")


@pytest.mark.parametrize("head", ["€ / Toon", "€ / Tunnel", "€ / Tonnerre", "€ / 10000 kg"])
def test_another_word_and_a_ton_of_either_kind_are_asked_about(head):
    found = find_basis(head)
    assert found is None or found.basis is None
