"""Whose dollar a bare $ is: the addresses of letterheads, and what is said of other prices of the file."""

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.intake.values.firms.addresses import abroad
from tracker.trade.offer import Answers

HEAD = ["Board", "pt", "lb/MSF"]
SBS = ["SBS C1S", 18, 75]


@pytest.mark.parametrize(
    "letterhead",
    [
        "40 Sawmill Road, Brindle Falls, Ontario", "18, chemin des Billots, Sainte-Ourse (Québec)",
        "Box 12, Brindle Falls, Ont. P0T 2A0", "5 Dam Road, Larch River, QC", "Larch River  G0X 1A0",
        "Blvd. Encinar 88, Monterrey, México", "Cartulinas del Encinar, S.A. de C.V.", "Col. Centro, C.P. 64000",
        "Calle del Encinar 14", "Lindenstraße 9", "Tel. +52 81 5550 1200", "Phone 1-705-555-0144",
        "sales@larchriver.ca", "Prices exclude HST",
    ],
)  # fmt: skip
def test_an_address_abroad_leaves_a_bare_dollar_open(letterhead):
    assert abroad(letterhead)
    (line,) = lines([["Larch River Paperboard"], [letterhead], [*HEAD, "$/ST"], [*SBS, 1100]]).values()
    assert (str(line.state), codes(line)) == ("question", {"currency-unknown"})


@pytest.mark.parametrize(
    "letterhead",
    [
        "1200 Pine Avenue, Ontario, California", "Ontario, CA 91761", "12 Canada Street, Brindle, New York",
        "Toronto, Ohio 43964", "Phone 608-555-0144", "sales@larchriver.us", "1400 Calle Alta, Brindle, California",
        "+45.50 per 1,000 lb", "ch. 4 of our terms", "Santa Brindle, New Mexico", "Ships from Vancouver, Washington",
    ],
)  # fmt: skip
def test_places_of_the_united_states_with_a_name_from_abroad_do_not(letterhead):
    assert not abroad(letterhead)


def test_us_dollars_of_other_prices_do_not_say_what_a_bare_dollar_abroad_is():
    home = [["5 Dam Road, Larch River, Ontario"], [*HEAD, "$/ST"], [*SBS, 1500]]
    export = [[*HEAD, "US$/ST"], [*SBS, 1100]]

    def currencies(first, second):
        found = read_workbook(book(grid(first, "Home"), grid(second, "Export")), Answers()).lines
        return [line.offer.currency for line in found]

    assert currencies(home, export) == [None, "USD"]
    assert currencies([["All prices in US dollars"], *home], export) == ["USD", "USD"]
    assert currencies(home[1:], export) == ["USD", "USD"]


@pytest.mark.parametrize(
    ("export", "home", "head", "currencies"),
    [
        ("Schedule 1 — cross-border lanes, US$/ST", "Schedule 2 — domestic lanes, $/ST", "Price", ["USD", None]),
        ("Cross-border, US$/ST", "Domestic", "$/ST", ["USD", None]),
        ("Quotation 418, all prices US$/ST", "Domestic lanes, $/ST", "Price", ["USD", "USD"]),
        ("Prices in Canadian dollars per ST", "Domestic lanes, $/ST", "Price", ["CAD", "CAD"]),
    ],
)
def test_us_dollars_over_one_table_are_not_the_plain_ones_over_another(export, home, head, currencies):
    rows = [["Larch River Paperboard"], ["5 Dam Road, Larch River, Ontario"], []]
    rows += [[export], [*HEAD, "Price"], [*SBS, 1300], [], [home], [*HEAD, head], ["CUK", 21, 87, 1118]]
    assert [line.offer.currency for line in lines(rows).values()] == currencies


def test_plain_dollars_beside_us_dollars_are_the_same_at_home():
    rows = [["Larch River Paperboard"], ["5 Dam Road, Larch River, Ohio 43964"], [], ["Export, US$/ST"]]
    rows += [[*HEAD, "Price"], [*SBS, 1300], [], ["Domestic, $/ST"], [*HEAD, "Price"], ["CUK", 21, 87, 1118]]
    assert [line.offer.currency for line in lines(rows).values()] == ["USD", "USD"]


@pytest.mark.parametrize(
    ("over_first", "over_second", "currency"),
    [
        ("Currency: CAD", "Kraft", "CAD"),
        ("Canadian funds", "Kraft", "CAD"),
        ("Quoted in Canadian dollars, f.o.b. mill.", "Kraft", "CAD"),
        ("Währung: CAD", "Kraft", "CAD"),
        ("Devise : CAD", "Kraft", "CAD"),
        ("Moneda: CAD", "Kraft", "CAD"),
        ("Valuta: CAD", "Kraft", "CAD"),
        # A board, a market or a country on either side may set their dollars apart.
        ("SBS in CAD", "Kraft", None),
        ("Export prices in CAD", "Kraft", None),
        ("Cross-border, CAD", "Kraft", None),
        ("Currency: CAD", "For U.S. customers", None),
        ("Currency: CAD", "Export", None),
    ],
)
def test_the_currency_over_the_first_table_is_that_of_the_same_sign_in_the_next(over_first, over_second, currency):
    rows = [["Larch River Paperboard"], [], [over_first], [*HEAD, "Price $/ST"], [*SBS, 1300], []]
    rows += [[over_second], [*HEAD, "Price $/ST"], ["CUK", 21, 87, 1118]]
    assert [line.offer.currency for line in lines(rows).values()] == ["CAD", currency]


def test_a_currency_over_the_second_table_says_nothing_of_the_first():
    rows = [["Larch River Paperboard"], ["5 Dam Road, Larch River, Ontario"], [], [*HEAD, "Price $/ST"], [*SBS, 1300]]
    rows += [[], ["Kraft"], ["Currency: USD"], [*HEAD, "Price $/ST"], ["CUK", 21, 87, 1118]]
    assert [line.offer.currency for line in lines(rows).values()] == [None, "USD"]


@pytest.mark.parametrize(
    ("first", "second", "currency"),
    [
        (["Currency: CAD"], ["For customers in the States"], None),
        (["Currency: CAD"], ["FOB Buffalo, NY"], None),
        (["Toronto mill", "Currency: CAD"], ["Dayton mill"], None),
        (["Prices from Toronto in CAD"], ["Prices from Dayton, Ohio"], None),
        (["Sheets, CAD"], ["Rolls"], None),
        (["SBS prices in CAD"], ["CUK"], None),
        (["Currency: CAD"], ["Kraft board"], "CAD"),
        (["All prices in CAD"], ["Dayton mill"], "CAD"),
    ],
)
def test_the_dollar_over_one_table_is_that_of_the_next_only_where_no_title_sets_it_apart(first, second, currency):
    one, other = [[*HEAD, "Price $/ST"], [*SBS, 1228]], [[*HEAD, "Price $/ST"], ["CUK", 21, 84, 1010]]
    rows = [["Ferrowick Board Inc"], [], *([text] for text in first), *one, [], *([text] for text in second), *other]
    assert [line.offer.currency for line in lines(rows).values()] == ["CAD", currency]


@pytest.mark.parametrize("told", ["$ U.S. per short ton", "All prices in $U.S. per short ton", "US ($) per short ton"])
def test_the_dollar_before_its_country_is_no_peso(told):
    found = lines([[told], ["Grade", "pt", "lb/MSF", "Price"], ["SBS C1S", 14, 58, 1217]])
    assert [line.offer.currency for line in found.values()] == ["USD"]


def test_the_peso_of_uruguay_stays_one():
    found = lines([["Precios en $U por tonelada"], ["Grado", "g/m²", "µm", "Precio"], ["GC2", 320, 500, 51217]])
    assert [line.offer.currency for line in found.values()] == ["UYU"]


def test_converting_is_a_trade_and_no_conversion_of_prices():
    title = "Hobart Converting Supply: board avail., USD per CWT"
    found = lines([[title], ["Lot", "Stuff", "Ask"], ["101", "C1S SBS 18pt 75#/MSF 40in rolls", 56.5]])
    assert [(line.offer.currency, line.offer.basis) for line in found.values()] == [("USD", "cwt")]
