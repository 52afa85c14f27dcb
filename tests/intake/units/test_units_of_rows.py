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


UNLESS = [
    "All prices US$ per short ton unless the row says otherwise", "Prices USD/ST except where marked",
    "Prices USD/ST, if not stated otherwise", "Prices USD/ST unless a different unit is shown",
    "Preise USD je Short Ton, soweit in der Zeile nichts anderes steht",
    "Preise USD/Short Ton, sofern nicht anders gekennzeichnet", "Preise USD/Short Ton, außer wo anders vermerkt",
    "Prix USD par tonne courte, sauf si la ligne indique autre chose",
    "Prix USD par tonne courte, à défaut d'indication contraire",
    "Precios USD por tonelada corta salvo que la fila diga otra cosa",
    "Precios USD por tonelada corta a menos que se indique lo contrario",
    "Priser USD per short ton om inte raden anger annat", "Priser USD per short ton såvida inget annat anges",
]  # fmt: skip


@pytest.mark.parametrize("title", UNLESS)
def test_what_holds_unless_a_row_says_otherwise_gives_way_to_a_price_s_own_unit(title):
    rows = [["Board", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 1198], ["SBS", 18, 76, "59.40 /cwt"]]
    found = lines([[title], *rows])
    assert [(line.offer.basis, line.state, codes(line)) for line in found.values()] == [
        ("short_ton", "accepted", set()), ("cwt", "accepted", set()),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "title", ["Prices USD per short ton", "Prices USD per short ton unless paid within 10 days", "USD/ST, CUK excepted"]
)
def test_what_makes_no_exception_of_rows_contradicts_it(title):
    rows = [["Board", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 1198], ["SBS", 18, 76, "59.40 /cwt"]]
    assert codes(lines([[title], *rows])["D4"]) == {"basis-unknown"}


def test_a_head_may_give_way_too():
    rows = [["Board", "pt", "lb/MSF", "USD/ST unless noted"], ["SBS", 16, 68, 1198], ["SBS", 18, 76, "59.40 /cwt"]]
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton", "cwt"]


@pytest.mark.parametrize(
    ("head", "unit", "again"),
    [
        (["Sorte", "g/m²", "µm", "Preis"], "EUR/t", "EUR je 1000 m²"),
        (["Sorte", "g/m²", "µm", "Preis EUR/t"], None, "EUR/1000 m²"),
        (["Grade", "g/m²", "µm", "Price EUR"], "per tonne", "per 1000 sq m"),
        (["Qualité", "g/m²", "µm", "Prix"], "EUR/t", "EUR les 1000 m²"),
        (["Calidad", "g/m²", "µm", "Precio"], "EUR/t", "EUR por 1000 m²"),
        (["Kvalitet", "g/m²", "µm", "Pris"], "EUR/1000 kg", "EUR per 1000 m²"),
    ],
)
@pytest.mark.parametrize("label", [None, "Bogen"])
def test_a_unit_said_again_half_way_down_holds_for_the_rows_below(head, unit, again, label):
    above = [["GC2", 230, 375, 1205], ["GD2", 300, 400, 852]]
    below = [["GC2", 250, 410, 305.5], ["GD2", 350, 470, 301]]
    found = lines([head, *([[None, None, None, unit]] if unit else []), *above, [label, None, None, again], *below])
    assert [(line.state, line.offer.basis, line.offer.grammage_gsm) for line in found.values()] == [
        ("accepted", "tonne", 230), ("accepted", "tonne", 300),
        ("accepted", "1000m2", 250), ("accepted", "1000m2", 350),
    ]  # fmt: skip


def test_where_the_head_says_more_than_the_unit_the_two_contradict():
    rows = [["Sorte", "g/m²", "µm", "ab Werk EUR/t"], ["GC2", 230, 375, 1205], [None, None, None, "EUR/1000 m²"]]
    assert codes(lines([*rows, ["GC2", 250, 410, 305.5]])["D4"]) == {"basis-unknown"}
