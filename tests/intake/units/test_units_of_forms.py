"""What a form's price is per, beside it or in a field of its own."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def form(*price, board="SBS C1S", caliper="18 pt", weight="75 lb/MSF", lead="3 weeks"):
    return [["Board", board], ["Caliper", caliper], ["Basis weight", weight], ["Price", *price], ["Lead time", lead]]


@pytest.mark.parametrize(
    ("price", "cell"),
    [
        ((58.4, "USD per cwt"), "B4"),
        ((58.4, "USD", "per cwt (100 lb)"), "B4"),
        ((58.4, None, "USD/cwt"), "B4"),
        (("USD", 58.4, "per cwt"), "C4"),
    ],
)
def test_what_a_forms_price_is_per_may_stand_beside_it(price, cell):
    (line,) = [found for at, found in lines(form(*price)).items() if at == cell]
    assert (line.state, line.offer.currency, line.offer.basis) == (State.ACCEPTED, "USD", "cwt")
    assert line.offer.lead_days == (21, 21)


@pytest.mark.parametrize(
    ("price", "currency", "basis"),
    [
        (["Preis", "298,40", "EUR je 1.000 Bogen"], "EUR", "1000sheets"),
        (["Prix", "1 214,00", "€ la tonne"], "EUR", "tonne"),
        (["Precio", 1214, "USD", "por tonelada métrica"], "USD", "tonne"),
        (["Pris", "12 350", "SEK per ton (1000 kg)"], "SEK", "tonne"),
    ],
)
@pytest.mark.parametrize("kind", ["xlsx", "csv"])
def test_units_beside_a_forms_price_in_other_languages(price, currency, basis, kind):
    rows = [["Material", "GC2"], ["g/m²", "250 g/m²"], ["µm", "410 µm"], ["Format", "700 x 1000 mm"], price]
    (line,) = lines([[str(value) for value in row] for row in rows] if kind == "csv" else rows).values()
    assert (line.state, line.offer.currency, line.offer.basis) == (State.ACCEPTED, currency, basis)


def test_a_unit_beside_a_forms_price_that_its_label_denies_is_asked():
    rows = form(58.4, "USD per cwt")
    rows[3][0] = "Price per short ton"
    assert [line.state for line in lines(rows).values()] == [State.QUESTION]
    rows[3][0] = "Price per ton"
    rows[3][2] = "USD per short ton"
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton"]


_HEAD = ["Board", "Caliper (in.)", "BW (lb/MSF)", "Price"]
_ROWS = [_HEAD, ["SBS C1S", 0.016, 67, 61.35], ["CCNB", 0.018, 70, 45.2]]


@pytest.mark.parametrize(
    ("label", "answer", "basis"),
    [
        ("Prices are per (ton / cwt / MSF)", "cwt", "cwt"), ("Prices per:", "cwt", "cwt"), ("Unit", "cwt", "cwt"),
        ("Preise je (t / 100 lb)", "cwt", "cwt"),
    ],
)  # fmt: skip
def test_a_form_s_field_says_what_prices_are_per(label, answer, basis):
    found = lines([["Quoted by", "M. Trennick"], ["Currency", "USD"], [label, answer], [], *_ROWS])
    assert {line.offer.basis for line in found.values()} == {basis}
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize("place", [1, 2])
def test_units_in_a_column_beside_the_labels_of_a_form(place):
    form = [["Qualité", "GC1"], ["Grammage", 250, "g/m²"], ["Épaisseur", 415, "µm"], ["Prix", 1288, "EUR/t"]]
    other = [["Qualité", "GD2"], ["Grammage", 350, "g/m²"], ["Épaisseur", 465, "µm"], ["Prix", 301.5, "EUR/1000 m²"]]
    rows = [[row[0], *row[2:], row[1]] if place == 1 and len(row) > 2 else row for row in [*form, [], *other]]
    rows = [[*row[:1], None, row[1]] if place == 1 and len(row) == 2 else row for row in rows]
    found = [(line.offer.basis, float(line.offer.grammage_gsm)) for line in lines(rows).values()]
    assert found == [("tonne", 250), ("1000m2", 350)]
    rows = [
        [row[0], f"{row[1]} {row[2]}"] if row and row[0] in ("Grammage", "Épaisseur") else row
        for row in [*form, [], *other]
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["tonne", "1000m2"]


@pytest.mark.parametrize(
    ("pairs", "currency", "basis"),
    [
        (["Currency:", "CAD", "Basis:", "short ton"], "CAD", "short_ton"),
        (["Basis:", "short ton", "Currency:", "CAD"], "CAD", "short_ton"),
        (["Currency: CAD", "Basis: cwt"], "CAD", "cwt"),
        (["Currency:", "CAD", "Basis:", "lb"], "CAD", None),
        (["Currency:", "CAD", "Basis:", "1,000 sq ft"], "CAD", None),
    ],
)
def test_a_basis_that_is_a_mass_of_orders_is_what_prices_are_per(pairs, currency, basis):
    head = ["Grade", "Caliper (pt)", "Basis weight (lb/3000 ft²)", "Price"]
    (line,) = lines([["Tamarack Paperboard Inc."], pairs, head, ["SBS", 16, 170, 1310]]).values()
    assert (line.offer.currency, line.offer.basis) == (currency, basis)
    assert ("basis-unknown" in codes(line)) == (basis is None)


def _bids(unit, head):
    return lines([
        ["Bidder", "Fennick Mills Corporation"], ["Unit of bid", unit], ["Bid currency", "US Dollars"], [],
        ["Spec", "Caliper (pt)", "Basis wt. (lb/1000 sq ft)", head], [None, None, None, "Tulsa OK", "Macon GA"],
        ["SBS C1S", 16, 68, 1268, 1236], ["CRB C1S", 20, 79, 936, 912],
    ])  # fmt: skip


@pytest.mark.parametrize("head", ["Bid price, delivered to", "Delivered to", "Price deliver to"])
def test_a_word_for_places_over_prices_is_no_ton(head):
    found = _bids("Short ton (2000 lb)", head)
    assert [(line.state, str(line.offer.basis)) for line in found.values()] == [(State.ACCEPTED, "short_ton")] * 4


def test_without_the_field_such_a_word_tells_no_unit():
    assert all("basis-unknown" in codes(line) for line in _bids("see each line", "Bid price, delivered to").values())
    (line,) = lines([["Sorte", "g/m²", "µm", "Preis EUR frei Haus to"], ["GC1", 240, 390, 1284]]).values()
    assert (line.state, str(line.offer.basis)) == (State.ACCEPTED, "tonne")
