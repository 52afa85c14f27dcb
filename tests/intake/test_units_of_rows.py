"""What a row says of its own price's unit comes before what the sheet says of all prices.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import codes, lines

HEADS = {
    "en": ["Product", "Caliper (pt)", "Price", "Remarks"],
    "unheaded": ["Product", "Caliper (pt)", "Price"],
    "de": ["Sorte", "Dicke µm", "Preis", "Bemerkung"],
    "fr": ["Qualité", "Épaisseur µm", "Prix", "Remarques"],
    "es": ["Calidad", "Espesor µm", "Precio", "Observaciones"],
    "sv": ["Kvalitet", "Tjocklek µm", "Pris", "Anmärkning"],
}


def remarked(head, price, text, title="Prices in USD per short ton unless noted"):
    caliper = 18 if "Caliper (pt)" in head else 457
    rows = [[title], head, ["SBS", caliper, 1145], ["SBS", caliper + 2, price, text], ["CRB", caliper + 4, 905, "FSC"]]
    found = lines(rows)
    assert [found[cell].offer.basis for cell in ("C3", "C5")] == ["short_ton"] * 2
    return found["C4"]


@pytest.mark.parametrize(
    ("language", "price", "text", "basis"),
    [
        ("en", 1290, "per tonne", "tonne"),
        ("en", 48.5, "per MSF", "msf"),
        ("en", 1290, "MT", "tonne"),
        ("en", 58, "cwt", "cwt"),
        ("en", 58, "rolls only, sold by the cwt", "cwt"),
        ("en", 48.5, "MSF basis", "msf"),
        ("unheaded", 48.5, "/MSF", "msf"),
        ("unheaded", 1290, "metric ton", "tonne"),
        ("de", 1290, "pro Tonne", "tonne"),
        ("de", 1.29, "Einheit: kg", "kg"),
        ("fr", 1290, "à la tonne métrique", "tonne"),
        ("fr", 1.29, "vendu au kilo", "kg"),
        ("es", 1290, "por tonelada métrica", "tonne"),
        ("es", 1.29, "se factura por kg", "kg"),
        ("sv", 1.29, "per kg", "kg"),
    ],
)
def test_a_remark_that_is_a_unit_is_the_price_s(language, price, text, basis):
    line = remarked(HEADS[language], price, text)
    assert (line.state, line.offer.basis) == ("accepted", basis)


@pytest.mark.parametrize("text", ["min 5 t", "500 sheets per pallet", "rolls", "pallet", "FSC 100 %"])
def test_a_remark_on_packing_or_orders_says_nothing_of_the_price(text):
    line = remarked(HEADS["en"], 1290, text)
    assert (line.state, line.offer.basis) == ("accepted", "short_ton")


@pytest.mark.parametrize("text", ["1000 kg", "per 100 kg", "per pallet", "1,000 sheets, per M"])
def test_what_may_be_an_order_s_weight_or_is_no_known_unit_is_asked_about(text):
    assert codes(remarked(HEADS["en"], 1290, text)) >= {"basis-unknown"}


def test_a_remark_contradicts_what_is_said_of_all_prices():
    line = remarked(HEADS["en"], 1290, "per tonne", title="Prices in USD per short ton")
    assert codes(line) >= {"basis-unknown"}


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        (["Grade", "g/m²", "µm", "Price USD", "Ton"], ["1000 kg", "2000 lb", "2240 lb"]),
        (["Grade", "g/m²", "µm", "USD/ton", "Ton"], ["1,000 kg", "2,000 lb", "long ton"]),
        (["Grade", "g/m²", "µm", "Price USD", "Type of ton"], ["metric", "short", "long"]),
        (["Sorte", "g/m²", "µm", "Preis USD", "Tonne"], ["1000 kg", "2000 lb", "2240 lb"]),
        (["Qualité", "g/m²", "µm", "Prix USD", "Tonne"], ["métrique", "courte", "longue"]),
        (["Calidad", "g/m²", "µm", "Precio USD", "Tonelada"], ["1.000 kg", "corta", "larga"]),
        (["Kvalitet", "g/m²", "µm", "Pris USD", "Ton"], ["1000 kg", "2000 lb", "2240 lb"]),
    ],
)
def test_a_column_of_tons_is_the_price_s_unit_row_by_row(head, cells):
    boards = [["GC1", 250, 405, 1190], ["GC1", 300, 495, 1085], ["GD2", 350, 465, 880]]
    found = lines([head, *([*board, cell] for board, cell in zip(boards, cells, strict=True))])
    assert [(cell, line.offer.basis) for cell, line in found.items()] == [
        ("D2", "tonne"), ("D3", "short_ton"), ("D4", None),
    ]  # fmt: skip
    assert [found[cell].state for cell in ("D2", "D3", "D4")] == ["accepted", "accepted", "question"]
