"""Which money prices are in: written once, named beside others, shared by several countries or denied."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.notes.statements import SaysCurrency, statements
from tracker.intake.values.prices.units_denied import units_denied

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


def test_thousands_of_kronor_are_not_kronor():
    heads = ["Kvalitet", "g/m²", "µm", "Pris tkr/ton (1000 kg)"]
    (line,) = lines([heads, ["GC1", 230, 380, 13.2]], answers={"currency": "SEK"}).values()
    assert str(line.state) == "question"


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize(
    ("title", "price", "currency"),
    [
        ("Precios en pesos argentinos por tonelada métrica", "985.400,50", "ARS"),
        ("Valores en pesos chilenos por tonelada métrica", "1.085.000", "CLP"),
        ("Precios en soles por TM", "3,650.50", "PEN"),
        ("Prix en dirhams (MAD) la tonne", "9 250,00", "MAD"),
    ],
)
def test_money_of_other_countries(title, price, currency):
    found = offer([[title], [], ["Tipo", "g/m²", "µm", "Precio"], ["GD2", 300, 395, price]], "D4")
    assert (found.currency, found.basis) == (currency, "tonne")


@pytest.mark.parametrize("money", ["pesos", "dirhams"])
def test_money_that_several_countries_share_is_asked(money):
    found = lines([[f"Precios en {money} por TM"], [], ["Tipo", "g/m²", "µm", "Precio"], ["GD2", 300, 395, 9250]])
    assert {note.code.value for note in found["D4"].notes} == {"currency-unknown"}


def test_the_peso_that_the_title_names_is_the_dollar_sign_of_the_heads():
    rows = [
        ["Precios en pesos colombianos (COP)"],
        [],
        ["Tipo", "g/m²", "µm", "Precio $/kg"],
        ["GD2", 300, 400, 4120.5],
    ]
    assert offer(rows, "D4").currency == "COP"


def test_a_currency_denied_with_its_small_word():
    text, denied = units_denied("in CAD, not in USD")
    assert text == "in CAD"
    assert [unit.currency.codes for unit in denied] == [("USD",)]


@pytest.mark.parametrize(
    ("first", "second"), [("Importación, USD/t", "Nacional, por kg"), ("Import, USD/t", "Domestic, per kg")]
)
def test_the_money_of_imports_is_not_that_of_the_home_market(first, second):
    head = ["Material", "g/m²", "Calibre (pt)", "Precio"]
    rows = [["Empaques Tlaneco, S.A. de C.V."], ["Calz. de los Fresnos 212, Tlaneco, México"], [], [first], head,
            ["CRB", 340, 18, 980], [], [second], head, ["URB", 450, 26, 12.9]]  # fmt: skip
    found = lines(rows, formats={(9, 3): '"$"#,##0.00'})
    assert found["D6"].offer.currency == "USD"
    assert "currency-unknown" in codes(found["D10"])


@pytest.mark.parametrize(
    "clause",
    [
        "Avviker månadskursen mer än 2,5 % justeras priset i SEK.",
        "If the monthly average deviates by more than 2.5 % the price in SEK is adjusted accordingly.",
        "Weicht der Monatsmittelkurs um mehr als 2,5 % ab, wird der Preis in SEK angepasst.",
        "En cas d'écart de plus de 2,5 %, le prix en SEK sera ajusté.",
        "Si la media mensual se desvía más de 2,5 %, el precio en SEK se ajustará.",
    ],
)
def test_a_currency_clause_says_nothing_of_the_money_of_the_prices(clause):
    assert not [said for said in statements(clause) if isinstance(said, SaysCurrency)]


@pytest.mark.parametrize(
    "clause",
    ["Prices in SEK, adjusted if EUR/SEK moves by more than 2 %.", "Prices in SEK per tonne, revised quarterly"],
)
def test_the_money_beside_such_a_clause_is_the_prices(clause):
    assert [said.currency.codes for said in statements(clause) if isinstance(said, SaysCurrency)] == [("SEK",)]


@pytest.mark.parametrize(
    "note",
    ["EUR pallets are exchanged", "EUR-Paletten werden getauscht", "Palettes EUR consignées", "Palets EUR retornables",
     "EUR-pallar i retur"],
)  # fmt: skip
def test_the_mark_of_a_pallet_is_no_money(note):
    assert not [said for said in statements(note) if isinstance(said, SaysCurrency)]
    found = lines([["Board", "g/m²", "µm", "SEK/t"], ["GC1", 250, 400, 12100], [], [note]])
    assert [(str(line.state), line.offer.currency) for line in found.values()] == [("accepted", "SEK")]


@pytest.mark.parametrize("note", ["Prices in EUR, pallets included", "EUR/pallet", "Preise in EUR je Palette"])
def test_money_beside_pallets_is_money(note):
    assert [said.currency.codes for said in statements(note) if isinstance(said, SaysCurrency)] == [("EUR",)]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("Skid stock in dollars U.S. Add nothing.", "USD"), ("All prices in dollars, US", "USD"),
        ("Prix en dollars U.S.", "USD"), ("All prices in dollars (Canadian)", "CAD"),
        ("All prices in U.S. Funds per ST", "USD"),
    ],
)  # fmt: skip
def test_whose_dollars_they_are_may_stand_behind(text, code):
    (line,) = lines([[text], [], ["Board", "pt", "lb/MSF", "Price/ST"], ["SBS C1S", 18, 76, 1259]]).values()
    assert (str(line.state), line.offer.currency) == ("accepted", code)


def test_dollars_of_nobody_abroad_are_asked_about():
    rows = [["Brunsmoor Mills, Ontario, Canada"], ["All prices in dollars"], [], ["Board", "pt", "lb/MSF", "Price/ST"]]
    assert "currency-unknown" in codes(lines([*rows, ["SBS C1S", 18, 76, 1259]])["D5"])
