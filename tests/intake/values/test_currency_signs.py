"""Which money a sign, a code, an address or a number format names."""

import pytest

from tracker.intake.values.figures.formats import format_words, number_format_currency
from tracker.intake.values.firms.addresses import countries
from tracker.intake.values.prices.currency import currency_text, find_currencies
from tracker.intake.values.prices.money import price_text


def test_shared_signs_name_every_country():
    dollar, crown, yen = currency_text("$"), currency_text("kr"), currency_text("¥")
    assert dollar is not None
    assert crown is not None
    assert yen is not None
    assert (dollar.code, dollar.bare_dollar, "CAD" in dollar.codes) == (None, True, True)
    assert crown.codes[:3] == ("SEK", "NOK", "DKK")
    assert set(yen.codes) == {"JPY", "CNY"}


def test_a_dollar_and_its_code_are_one_currency():
    found = price_text("$1145.00 CAD")
    assert found is not None
    assert found.currency is not None
    assert (found.currency.code, found.currency.bare_dollar) == ("CAD", False)


@pytest.mark.parametrize("text", ["C1S $/ST", "SBS C2S - $/ST", "C1S$"])
def test_a_coating_before_a_dollar_names_no_country(text):
    (found,) = find_currencies(text)
    assert found.bare_dollar


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("C1S C$/t", "CAD"), ("S$/t", "SGD"), ("grade 1 S$/t", "SGD"), ("$ CAN/t", "CAD"), ("$CAN la tonne", "CAD"),
        ("$ canadiens/t", "CAD"), ("Col$/TM", "COP"), ("$MN/TM", "MXN"), ("dls/TM", "USD"),
        # Whose dollar 'TT$' is the list of words does not know, and 'can' may be a verb.
        ("prices in $ can change", None),
    ],
)  # fmt: skip
def test_a_letter_by_itself_does(text, code):
    assert [found.code for found in find_currencies(text)] == [code]


@pytest.mark.parametrize(
    ("text", "code"),
    [("¢ CA", "CAD"), ("cents canadiens", "CAD"), ("US ¢", "USD"), ("Rp.", "CHF"), ("centavos de dólar", "USD")],
)
def test_whose_cents(text, code):
    found = currency_text(text)
    assert found is not None
    assert (found.code, found.cents) == (code, True)


def test_a_sign_behind_unknown_letters_is_nobodys_dollar():
    assert find_currencies("TT$/t") == ()
    assert [found.code for found in find_currencies("Price$/MSF")] == [None]


def test_words_that_only_look_like_money_are_left_alone_in_sentences():
    assert find_currencies("Sheets 28 x 40, 1000 sq ft, c/o the mill") == ()
    assert find_currencies("KC: GC2, Faltschachtelkarton") == ()
    assert [found.code for found in find_currencies("Ceny v Kč za tunu")] == ["CZK"]


def test_the_countries_that_an_address_names():
    assert countries("12 Harbour Street, Toronto, Ontario") == {"CA"}
    assert countries("1180 Millrace Road, Quillmere Landing, Wisconsin") == {"US"}
    assert countries("Hauptstraße 4, Deutschland") == {"DE"}


@pytest.mark.parametrize(
    ("code", "words", "currency"),
    [
        ("[$€-407] #,##0.00", "€", "EUR"),
        ('"USD" 0.00', "USD", "USD"),
        ("[$kr-41D] #,##0", "SEK", "SEK"),
        ("[$kr-414] #,##0", "NOK", "NOK"),
        ("[$$-1009]#,##0.00", "CAD", "CAD"),
        ("[$$-en-US]#,##0.00", "USD", "USD"),
        ("[$£-809]#,##0.00", "£", "GBP"),
        ("[$-409]d-mmm", "", None),
        ('#,##0.00 "USD/t"', "USD/t", "USD"),
        ("\\€#,##0.00", "€", "EUR"),
        ("[Red]#,##0.00 [$SEK]", "SEK", "SEK"),
        ("General", "", None),
        ('0.0 "pt"', "pt", None),
        ('#,##0.00;"EUR" -0', "", None),
        ('0 "wks"', "wks", None),
    ],
)
def test_number_formats(code, words, currency):
    found = number_format_currency(code)
    assert (format_words(code), found and found.code) == (words, currency)


def test_a_bare_sign_in_a_number_format_stays_open():
    dollar, crown = number_format_currency('_("$"* #,##0.00_)'), number_format_currency('#,##0 "kr"')
    assert dollar is not None
    assert crown is not None
    assert dollar.bare_dollar
    assert crown.code is None


@pytest.mark.parametrize(
    "text", ["franco pour commandes de cent tonnes", "à partir de cent kilos", "les cent feuilles"]
)
def test_a_hundred_of_a_unit_is_no_money(text):
    assert find_currencies(text) == ()


@pytest.mark.parametrize(
    "text", ["prix en cent par kg", "Cent/kg", "98 cents per lb", "Cent pound", "Price cent pound"]
)
def test_and_a_cent_is(text):
    assert [found.cents for found in find_currencies(text)] == [True]


@pytest.mark.parametrize("text", ["Prices in A $", "PRICES: A $ PER TONNE", "Price A $/t", "A $/t", "Price (A $/t)"])
def test_a_capital_letter_apart_from_the_sign_is_australias(text):
    assert [found.code for found in find_currencies(text)] == ["AUD"]
    priced = price_text("A $ 1,228.00")
    assert priced is not None
    assert priced.currency is not None
    assert priced.currency.code == "AUD"


@pytest.mark.parametrize(
    "text", ["a $45 fee applies", "A $45 fee applies to small orders", "Prices are a $/ST net", "Preis à $/t"]
)
def test_an_article_is_nobodys_dollar(text):
    assert [found.bare_dollar for found in find_currencies(text)] == [True]


@pytest.mark.parametrize(
    ("text", "codes"),
    [
        ("PRICES IN ILS", ["ILS"]), ("PREISE IN TRY", ["TRY"]), ("Currency: mad", ["MAD"]), ("prix en mad", ["MAD"]),
        ("PRECIOS EN PEN POR TONELADA", ["PEN"]), ("Devise : MAD", ["MAD"]), ("PRICES IN BOB'S LIST", []),
        ("Prices in mad rush", []), ("TRY US", []), ("ILS SONT VALABLES", []),
    ],
)  # fmt: skip
def test_codes_that_are_words_too(text, codes):
    assert [found.code for found in find_currencies(text)] == codes


@pytest.mark.parametrize(
    "text",
    ["List A $/ST", "Class A $ per tonne", "Zone A $/t", "Price A $/ST", "Price A $ per short ton, B on request"],
)
def test_the_letter_of_a_class_or_before_an_american_unit_is_not_australias(text):
    assert [found.bare_dollar for found in find_currencies(text)] == [True]


@pytest.mark.parametrize("text", ["Price list: A $ per tonne", "Price in A $ per tonne", "Price A $", "A $"])
def test_and_behind_other_words_it_is(text):
    assert [found.code for found in find_currencies(text)] == ["AUD"]


@pytest.mark.parametrize(
    "text", ["Prices C $/ST", "All prices C $/ST", "Prix C$/ST", "Precios C $/ST", "Preise C $/ST", "Priser C $/ST"]
)
def test_the_letter_of_canadas_dollar_stands_before_american_units_too(text):
    assert [found.code for found in find_currencies(text)] == ["CAD"]


@pytest.mark.parametrize(
    "text", ["Zone C $/cwt", "Class C $/ST", "Price C $/ST", "Net price C $ per short ton", "List C $/cwt",
             "Prix C $/ST", "Precio C $/ST", "Preis C $/ST", "Pris C $/ST"],
)  # fmt: skip
def test_and_that_of_a_zone_class_or_price_is_none(text):
    assert [found.bare_dollar for found in find_currencies(text)] == [True]
