"""Units said of all prices, or over one of several tables, that a head or a format contradicts; and texts that leave
room for those of a row or of a column."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Board", "Caliper (pt)", "lb/MSF"]
SBS, CUK = ["SBS C1S", 18, 76], ["CUK", 18, 74]


def states(found):
    return [(str(line.state), str(line.offer.currency), str(line.offer.basis)) for line in found.values()]


@pytest.mark.parametrize(
    "text", ["Every price on this page is in US dollars per short ton, FOB mill.", "All prices in USD per short ton"]
)
def test_what_is_said_of_all_prices_is_held_against_each_table(text):
    first, second = [*HEAD, "USD per metric ton"], [*HEAD, "USD per short ton"]
    found = lines([[text], [], first, [*SBS, 1210], [], [], second, [*CUK, 1085]])
    one, two = found.values()
    assert (str(one.state), codes(one), str(two.state)) == ("question", {"basis-unknown"}, "accepted")


def test_a_title_that_is_not_of_all_prices_leaves_another_table_its_unit():
    first, second = [*HEAD, "USD per metric ton"], [*HEAD, "USD per short ton"]
    found = lines([["USD per short ton"], [], first, [*SBS, 1210], [], [], second, [*CUK, 1085]])
    assert [state for state, *_ in states(found)] == ["accepted", "accepted"]


TABLES = [[*HEAD, "£/MSF"], [*SBS, 48.3], [], ["Imported: EUR per tonne, DDP"]]


def test_a_title_over_a_later_table_is_held_against_its_formats():
    (_, one) = lines([*TABLES, [*HEAD, "Price"], [*CUK, 905]], formats={(5, 3): "[$£-809]#,##0"}).values()
    assert (str(one.state), codes(one)) == ("question", {"currency-unknown"})


def test_and_says_what_one_of_its_own_columns_is_in():
    found = lines([*TABLES, [*HEAD, "EUR", "GBP"], [*CUK, 905, 780]])
    assert [currency for _, currency, _ in states(found)] == ["GBP", "EUR", "GBP"]


@pytest.mark.parametrize(
    "text",
    [
        "Unless a line shows its own unit, quotes are US dollars per MSF.",
        "Wenn eine Zeile keine eigene Einheit nennt, gelten USD je MSF.",
        "Sauf si une ligne porte sa propre unité, les prix sont en USD par MSF.",
        "Salvo que la línea lleve su propia unidad, precios en USD por MSF.",
        "Om en rad inte visar egen enhet är priserna i USD per MSF.",
    ],
)
def test_a_row_s_own_unit_comes_before_the_unit_of_the_rows_without_one(text):
    found = lines([[text], [], [*HEAD, "Quote"], [*SBS, 41.35], [*CUK, "$1,085.00 per short ton"]])
    assert states(found) == [("accepted", "USD", "msf"), ("accepted", "USD", "short_ton")]


@pytest.mark.parametrize(
    "text",
    [
        "All prices in Canadian funds per 1,000 sq ft, except the last column.",
        "Alle Preise in CAD je 1.000 ft², außer der letzten Spalte.",
        "Tous les prix en CAD par MSF, sauf la dernière colonne.",
        "Todos los precios en CAD por MSF, salvo la última columna.",
        "Alla priser i CAD per MSF, utom sista kolumnen.",
    ],
)
def test_a_column_that_is_excepted_is_in_what_stands_over_it(text):
    found = lines([[text], [], [*HEAD, "Domestic price", "Export price US$"], [*SBS, 58.4, 42.6]])
    assert [currency for _, currency, _ in states(found)] == ["CAD", "USD"]


def test_a_grade_that_is_excepted_leaves_the_columns_as_they_are():
    (line,) = lines([["All prices in CAD per MSF, except CUK."], [], [*HEAD, "Price US$"], [*SBS, 58.4]]).values()
    assert codes(line) == {"currency-unknown"}


@pytest.mark.parametrize("head", ["For export: US$", "Export USD", "Export (US$)"])
def test_a_market_and_its_money_name_a_price_beside_another(head):
    found = lines(
        [["Prices are per MSF."], [], [*HEAD, "Domestic price C$", head], [*SBS, 58.4, 42.6], [*CUK, 59.4, 43.6]]
    )
    assert states(found) == [("accepted", "CAD", "msf"), ("accepted", "USD", "msf")] * 2


def test_words_that_name_no_market_leave_it_open_what_stands_below_them():
    found = lines(
        [["Prices are per MSF."], [], [*HEAD, "Price C$", "Ulla: US$"], [*SBS, 58.4, 42.6], [*CUK, 59.4, 43.6]]
    )
    assert [state for state, *_ in states(found)] == ["accepted", "question"] * 2


BOTH = [*HEAD, "USD per short ton", "USD per MSF"]


@pytest.mark.parametrize("text", ["All prices per short ton", "Alle Preise je short ton", "Tous les prix par MSF"])
def test_a_column_beside_one_in_the_unit_of_all_prices_has_its_own(text):
    (line,) = lines([[text], [], BOTH, [*SBS, 1150, 43.7]]).values()
    assert (str(line.state), codes(line)) == ("accepted", set())


def test_and_where_the_two_do_not_come_to_the_same_both_are_asked_about():
    (line,) = lines([["All prices per short ton"], [], BOTH, [*SBS, 1150, 53.7]]).values()
    assert codes(line) == {"prices-disagree"}


ROLLS, SHEETS = [*HEAD, "Price USD/short ton"], [*HEAD, "Price $/MSF"]


@pytest.mark.parametrize(
    "text",
    [
        "All prices per short ton except sheets, which are per MSF",
        "All prices per short ton except sheets",
        "Alle Preise je short ton, außer Formate, die je MSF gelten",
        "Tous les prix par short ton, sauf les formats, par MSF",
        "Todos los precios por short ton, salvo hojas, por MSF",
        "Alla priser per short ton, utom ark, per MSF",
    ],
)
def test_sheets_that_are_excepted_are_in_what_stands_over_them(text):
    found = lines([[text], [], ROLLS, [*SBS, 1150], [], ["Sheets"], SHEETS, [*CUK, 53.2]])
    assert states(found) == [("accepted", "USD", "short_ton"), ("accepted", "USD", "msf")]


def test_and_rolls_are_not():
    text = "All prices per short ton except sheets, which are per MSF"
    found = lines([[text], [], ["Rolls"], SHEETS, [*SBS, 43.2], [], ["Sheets"], SHEETS, [*CUK, 53.2]])
    assert [state for state, *_ in states(found)] == ["question", "accepted"]


def test_what_is_excepted_has_the_unit_behind_it_and_all_others_the_one_before():
    text = "All prices USD per short ton except sheets, which are per MSF"
    found = lines(
        [[text], [], ["Rolls"], [*HEAD, "Price"], [*SBS, 1150], [], ["Sheets"], [*HEAD, "Price"], [*CUK, 53.2]]
    )
    assert states(found) == [("accepted", "USD", "short_ton"), ("accepted", "USD", "msf")]


@pytest.mark.parametrize(
    "text",
    [
        "All prices per short ton are rounded", "Alle Preise je short ton sind gerundet",
        "Tous les prix par short ton sont arrondis", "Todos los precios por short ton son redondeados",
        "Alla priser per short ton är avrundade",
    ],
)  # fmt: skip
def test_what_prices_in_one_unit_are_says_nothing_of_those_in_another(text):
    (line,) = lines([SHEETS, [*CUK, 53.2], [], [text]]).values()
    assert (str(line.state), str(line.offer.basis)) == ("accepted", "msf")


def test_what_all_prices_are_per_is_held_against_them():
    (line,) = lines([SHEETS, [*CUK, 53.2], [], ["All prices per short ton"]]).values()
    assert (str(line.state), codes(line)) == ("question", {"basis-unknown"})
