"""Tables below a list that their title calls an example or a history, and those of years gone by, offer nothing."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Board", "Caliper pt", "lb/MSF", "$/ST"]
_LIST = [
    ["Effective October 1, 2026. US dollars per short ton, FOB mill."],
    _HEAD,
    ["SBS C1S", 12, 52, 1222],
    ["CRB C1S", 20, 79, 872],
    [],
]
_OFFERED = ["D3", "D4"]
_EXAMPLES = [["SBS C1S", 20, 80, 1000], ["CRB C1S", 18, 80, 800]]
_YEARS = [["Board", "Year", "lb/MSF", "$/ST"], ["SBS C1S 18 pt", 2023, 75, 1120], ["SBS C1S 18 pt", 2024, 75, 1150]]


def _cells(title, table):
    return list(lines([*_LIST, [title], *table]))


@pytest.mark.parametrize(
    "title",
    [
        "How to turn a ton price into a price per MSF (example, invented figures, not an offer)",
        "For illustration only",
        "Umrechnung Tonnenpreis in Preis je 1000 m² (Beispiel, erfundene Zahlen, kein Angebot)",
        "Nur zur Veranschaulichung",
        "Example: prices of stock board",
        "Illustration: how a quotation looks",
        "Beispiel: Preise für Lagerware",
        "Exemple : prix du carton en stock",
        "Ejemplo: precios de cartón en almacén",
        "Exempel: priser på lagerkartong",
        "Conversion d'un prix à la tonne (exemple, chiffres fictifs, pas une offre)",
        "À titre d'illustration",
        "Cómo convertir el precio por tonelada (ejemplo, cifras inventadas, no es una oferta)",
        "A título ilustrativo",
        "Omräkning av tonpris (exempel, påhittade siffror, inget erbjudande)",
        "Endast som illustration",
    ],
)
def test_a_table_called_an_example_offers_nothing(title):
    assert _cells(title, [_HEAD, *_EXAMPLES]) == _OFFERED


@pytest.mark.parametrize(
    "title",
    [
        "Prices for stock board (example sizes)",
        "Prices, e.g. for folding cartons",
        "Example: 18 pt at $1,190 comes to $71.40 per MSF",
        "Other grades, price list not an offer",
        "Quality, history, service",
    ],
)
def test_a_table_that_only_speaks_of_examples_is_offered(title):
    assert len(_cells(title, [_HEAD, *_EXAMPLES])) == 4


def test_more_rows_below_an_example_are_a_list_unless_it_denies_offers():
    rows = [["SBS C1S", pt, 60 + pt, 1000 + pt] for pt in (14, 16, 18, 20, 24)]
    assert len(_cells("Prices of other boards (example)", [_HEAD, *rows])) == 7
    assert _cells("Prices of other boards (example, not an offer)", [_HEAD, *rows]) == _OFFERED


@pytest.mark.parametrize(
    "title",
    [
        "SBS prices in US dollars per short ton (example)", "Example: SBS board prices", "Illustration: SBS board",
        "Beispiel: Kartonpreise", "Exemple : prix du carton", "Ejemplo: precios", "Exempel: priser",
    ],
)  # fmt: skip
def test_a_files_only_list_is_asked_about_when_its_title_calls_it_an_example(title):
    rows = [[title], _HEAD, *_EXAMPLES]
    assert [str(line.state) for line in lines(rows).values()] == ["question"] * 2


@pytest.mark.parametrize(
    "title",
    [
        "What this board cost in earlier years (history)",
        "Was der Karton in früheren Jahren kostete (Historie)",
        "Prix d'autrefois (historique)",
        "Lo que costó este cartón en años anteriores (histórico)",
        "Vad kartongen kostade tidigare år (historik)",
        "Prices in earlier years",
        "Preise früherer Jahre",
        "Prix des années précédentes",
        "Precios de años anteriores",
        "Priser tidigare år",
    ],
)
def test_a_table_called_a_history_offers_nothing(title):
    assert _cells(title, [_HEAD, *_EXAMPLES]) == _OFFERED


@pytest.mark.parametrize("head", ["Year", "Jahr", "Année", "Año", "År"])
def test_a_table_of_years_before_the_lists_offers_nothing(head):
    (_, _, weight, price), *rows = _YEARS
    assert _cells("Other boards", [["Board", head, weight, price], *rows]) == _OFFERED


def test_years_to_come_and_the_only_list_are_offered():
    coming = [_YEARS[0], ["SBS C1S 18 pt", 2027, 75, 1120], ["SBS C1S 20 pt", 2028, 82, 1150]]
    assert len(_cells("Contract prices", coming)) == 4
    made = [_YEARS[0], ["SBS C1S 18 pt", 2025, 75, 1120], ["SBS C1S 20 pt", 2024, 82, 1150]]
    assert len(_cells("Stock", made)) == 4
    assert len(lines([["Effective October 1, 2026, USD per short ton"], *_YEARS])) == 2
