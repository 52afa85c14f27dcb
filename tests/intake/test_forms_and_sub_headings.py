"""Fields of a form, and vendors named over the rows that are theirs."""

import pytest

from tests.intake.sheets import lines, read

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


def test_an_initial_is_no_thousand():
    found = lines([["Quoted by: M. Trennick"], ["USD per cwt"], [], *_ROWS])
    assert {line.offer.basis for line in found.values()} == {"cwt"}


def test_the_number_of_a_quotation_heads_no_column():
    rows = [
        ["QUOTATION", None, None, "Quote #", "Q-26-2209"],
        ["Brackwater Board Sales LLC", None, None, "Date", "2026-07-15"],
        ["77 Ferry Landing", None, None, "Expires", "2026-08-14"], ["Quote to:", "Dunmore Folding Box Corp."], [],
        [*_HEAD[:3], "Price USD/cwt"], *_ROWS[1:],
    ]  # fmt: skip
    found = read(rows).lines
    assert [str(line.offer.valid_until) for line in found] == ["2026-08-14"] * 2
    assert {line.offer.vendor for line in found} == {"Brackwater Board Sales LLC"}


@pytest.mark.parametrize("label", ["Proveedor", "Supplier", "Lieferant", "Fournisseur", "Leverantör"])
def test_each_vendor_s_rows_stand_below_his_name(label):
    rows = [["Board", "g/m²", "µm", "EUR/t"], [f"{label}: Cartonera Valdeluz (EXW)"], ["GC2", 250, 410, 1156],
            [f"{label}: Norteboard Lda."], ["GC2", 250, 410, 1167]]  # fmt: skip
    assert [line.offer.vendor for line in lines(rows).values()] == ["Cartonera Valdeluz", "Norteboard Lda."]


def test_a_board_over_rows_is_no_vendor():
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["Folding boxboard"], ["GC2", 250, 410, 1156]]
    assert [line.offer.vendor for line in lines(rows).values()] == [None]


@pytest.mark.parametrize("head", ["Kondition", "Konditionen", "Terms"])
def test_terms_of_delivery_below_a_loose_word_are_read(head):
    rows = [["Sorte", "g/m²", "EUR/t", head], ["GC2", 250, 1098, "ab Werk"], ["GC2", 300, 1098, "frei Haus"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


@pytest.mark.parametrize(
    ("said", "kg"),
    [("One tonne minimum per line", 1000), ("Minst ett ton per kvalitet", 1000), ("One side coated", None)],
)
def test_a_smallest_order_in_words(said, kg):
    found = lines([[said], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC2", 250, 410, 1098]])
    assert [line.offer.minimum_kg for line in found.values()] == [kg]


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("Plazo de entrega: 4 semanas salvo fin de existencias", (28, 28)), ("Plazo de entrega: existencias", (0, 0)),
        ("Délai : 4 semaines sauf rupture de stock", (28, 28)), ("Lead time 4 weeks, stock permitting", (28, 28)),
    ],
)  # fmt: skip
def test_as_long_as_there_is_stock_is_no_delivery_from_it(said, days):
    found = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [said]])
    assert [line.offer.lead_days for line in found.values()] == [days]
