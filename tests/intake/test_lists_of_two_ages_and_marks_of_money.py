"""Void lists above valid ones, what empty unit cells mean, and words for last days, minimums and firms."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read

HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]
NEW = [["GD2", 300, 390, 822], ["GC2", 270, 435, 1083], ["GC2", 300, 490, 1071]]


def two_lists(first, second):
    return lines([["Ardelune Board Mill"], [], [first], HEAD, *OLD, [], [second], HEAD, *NEW])


@pytest.mark.parametrize(
    ("void", "valid"),
    [
        ("LIST 11 - VOID, replaced by list 12 (below)", "LIST 12 - valid until 28 February 2027"),
        ("Preisliste 11 - UNGÜLTIG, ersetzt durch Preisliste 12 (unten)", "Preisliste 12"),
        ("Tarif 11 - ANNULÉ, remplacé par le tarif 12 (ci-dessous)", "Tarif 12 - en vigueur"),
        (
            "LISTA 11 - ANULADA, sustituida por la lista 12 (más abajo)",
            "LISTA 12 - vigente hasta el 28 de mayo de 2027",
        ),
        ("Prislista 11 - UPPHÄVD, ersatt av prislista 12 (nedan)", "Prislista 12"),
    ],
)
def test_a_void_list_above_a_valid_one(void, valid):
    assert [line.offer.price for line in two_lists(void, valid).values()] == [822, 1083, 1071]


@pytest.mark.parametrize(
    ("void", "further"),
    [
        ("LIST 11 - VOID", "Part 2: sheets"),
        ("LIST 11 - VOID", "Price list 11, part 2: sheets"),
        ("SUPERSEDED price list 2025", "Price list - part 2"),
    ],
)
def test_a_void_list_that_goes_on(void, further):
    assert not two_lists(void, further)


PESOS = ["Board", "g/m2", "µm", "Price per kg", "Currency"]
IN_PESOS = [[30.4], [29.9], [1.68, "USD"], [25.1], [1.41, "USD"], [18.7]]


def priced(notes, rows=IN_PESOS):
    shown = {(2 + place, 3): "$#,##0.00" for place in range(len(rows))}
    boards = [["SBS C1S", 280 + 10 * place, 400 + 10 * place, *row] for place, row in enumerate(rows)]
    found = lines(
        [["Cartones del Llano, S.A. de C.V."], PESOS, *boards, [], *([note] for note in notes)], formats=shown
    )
    return [line.offer.currency for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Los precios sin moneda indicada son pesos mexicanos.",
        "Prices without a currency are Mexican pesos.",
        "Preise ohne Währungsangabe in mexikanischen Pesos (MXN)",
        "Les prix sans devise sont en MXN.",
        "Priser utan valuta är i MXN.",
    ],
)
def test_what_an_empty_currency_means(note):
    assert priced([note]) == ["MXN", "MXN", "USD", "MXN", "USD", "MXN"]
    assert priced([note], [[1.68, "USD"], [29.9], [25.1]]) == ["USD", "MXN", "MXN"]


def test_a_currency_once_written_holds_for_the_rows_below_it():
    rows = [["Board", "g/m2", "µm", "Price/kg", "Currency"], ["GC1", 280, 400, 1.2, "EUR"], ["GC1", 300, 430, 1.19]]
    rows += [["SBS C1S", 280, 350, 1.68, "USD"], ["SBS C1S", 300, 380, 1.7]]
    assert [line.offer.currency for line in lines(rows).values()] == ["EUR", "EUR", "USD", "USD"]


QUEBEC = [
    ["Produit", "Calibre (points)", "lb/1000 pi²", "Prix", "Unité"],
    ["SBS couché 1 face", 18, 76, "1 490,00", "tonne courte"],
    ["Kraft couché non blanchi", 18, 75, "68,5 ¢", "livre"],
    ["CCNB", 24, 94, "1 240,00", "tonne métrique"],
    ["Carton gris", 28, 98, "880,00", "ton"],
]


def test_the_sign_for_cents_explained_makes_no_price_cents():
    for note in ("Les prix sont en dollars canadiens. ¢ = cents canadiens.", "Prices in CAD. ¢ = Canadian cents"):
        found = list(lines([*QUEBEC, [], [note]]).values())
        assert [line.offer.price for line in found] == [1490, Decimal("0.685"), 1240, 880]
        assert {line.offer.currency for line in found} == {"CAD"}


def test_a_ton_beside_tonnes_is_asked_and_one_among_pounds_is_short():
    note = ["Les prix sont en dollars canadiens."]
    mixed = list(lines([*QUEBEC, [], note]).values())
    assert mixed[-1].offer.basis is None
    assert codes(mixed[-1]) == {"basis-unknown"}
    pounds = list(lines([*QUEBEC[:3], QUEBEC[4], [], note]).values())
    assert pounds[-1].offer.basis == "short_ton"


@pytest.mark.parametrize(
    ("terms", "delivered"),
    [
        ("Prix franco départ usine (FAB usine)", False),
        ("Prix franco départ", False),
        ("Prix franco usine client", True),
        ("Franco usine du client", True),
        ("FAB destination", True),
    ],
)
def test_franco_from_the_mill_and_franco_to_the_buyer(terms, delivered):
    found = lines([[terms], HEAD, *OLD])
    assert {line.offer.delivered for line in found.values()} == {delivered}


@pytest.mark.parametrize(
    ("note", "kilograms"),
    [
        ("We don't run orders below 6M lb.", 2722),
        ("Minimum order 10M lb per item", 4536),
        ("Aufträge unter 5 t fertigen wir nicht", 5000),
        ("No fabricamos pedidos inferiores a 5 t", 5000),
        ("Nous ne fabriquons pas de commandes inférieures à 5 t", 5000),
        ("Vi tillverkar inte order under 5 t", 5000),
        ("We make no charge for orders over 10,000 lb", None),
    ],
)
def test_orders_that_are_not_made(note, kilograms):
    found = lines([HEAD, *OLD, [], [note]])
    assert {line.offer.minimum_kg and round(line.offer.minimum_kg) for line in found.values()} == {kilograms}


@pytest.mark.parametrize(
    ("title", "until"),
    [
        ("Offer to 18 October 2026, delivered free", date(2026, 10, 18)),
        ("Prices to 30 September 2026 in EUR", date(2026, 9, 30)),
        ("Preise laufen bis 30.9.2026", date(2026, 9, 30)),
        ("Le tarif court jusqu'au 30 septembre 2026", date(2026, 9, 30)),
        ("Offer to Pellow Cartons, 12 September 2026", None),
    ],
)
def test_a_day_that_an_offer_runs_to(title, until):
    assert {line.offer.valid_until for line in lines([[title], HEAD, *OLD]).values()} == {until}


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("expired", "valid until 31 December 2026"),
        ("abgelaufen", "gültig bis 31.12.2026"),
        ("périmé", "valable jusqu'au 31/12/2026"),
        ("caducado", "vigente hasta el 31/12/2026"),
        ("utgången", "gäller t.o.m. 2026-12-31"),
    ],
)
def test_ages_in_the_row_below_the_heads(old, new):
    rows = [
        ["EUR per tonne, delivered"],
        ["Grade", "g/m²", "µm", "Price 2025", "Price 2026"],
        [None, None, None, old, new],
    ]
    found = lines([*rows, ["GC1", 240, 385, 1300, 1320], ["GC2", 300, 490, 1220, 1250]])
    assert [line.offer.price for line in found.values()] == [1320, 1250]
    assert {line.offer.valid_until for line in found.values()} == {date(2026, 12, 31)}


def test_a_price_that_has_expired_in_a_row_of_boards_heads_nothing():
    rows = [["EUR per tonne"], ["Grade", "g/m²", "µm", "Price 2025", "Price 2026"], ["GC1", 240, 385, "expired", 1320]]
    found = lines([*rows, ["GC2", 300, 490, 1220, 1250]])
    assert [line.offer.price for line in found.values()] == [1320, 1250]


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Hermanos Ardelune, cartón y papel", "Hermanos Ardelune, cartón y papel"),
        ("Kartonfabrik Ardelune, Karton und Papier", "Kartonfabrik Ardelune, Karton und Papier"),
        ("Papeteries Ardelune, papiers et cartons", "Papeteries Ardelune, papiers et cartons"),
        ("Ardelunes Bruk, kartong och papper", "Ardelunes Bruk, kartong och papper"),
        ("Ardelune Board Mills, board and paper", "Ardelune Board Mills, board and paper"),
        ("Ardelune Board Mills, paperboard", "Ardelune Board Mills"),
        ("Ardelune Board Mills, board and paper prices", "Ardelune Board Mills"),
    ],
)
def test_what_a_firm_deals_in_is_a_part_of_its_name(title, vendor):
    assert read([[title], HEAD, *OLD]).vendor == vendor
