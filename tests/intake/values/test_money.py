from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import forms, prices, written
from tracker.intake.values.prices.money import find_price_unit, price_text, price_unit
from tracker.trade.basis import Basis

CURRENCIES = {
    "USD": "USD",
    "US$": "USD",
    "US dollars": "USD",
    "EUR": "EUR",
    "€": "EUR",
    "Euro": "EUR",
    "GBP": "GBP",
    "£": "GBP",
    "CHF": "CHF",
    "SFr.": "CHF",
    "SEK": "SEK",
    "NOK": "NOK",
    "DKK": "DKK",
    "PLN": "PLN",
    "zł": "PLN",
    "CZK": "CZK",
    "Kč": "CZK",
    "CAD": "CAD",
    "C$": "CAD",
    "CA$": "CAD",
    "A$": "AUD",
    "NZ$": "NZD",
    "HK$": "HKD",
    "MX$": "MXN",
}
BASES = {
    "/ST": Basis.SHORT_TON,
    " per short ton": Basis.SHORT_TON,
    "/net ton": Basis.SHORT_TON,
    " per ton of 2,000 lb": Basis.SHORT_TON,
    "/MT": Basis.TONNE,
    " per metric ton": Basis.TONNE,
    "/tonne": Basis.TONNE,
    " je Tonne": Basis.TONNE,
    " la tonne": Basis.TONNE,
    " por tonelada métrica": Basis.TONNE,
    "/cwt": Basis.CWT,
    " per hundredweight": Basis.CWT,
    " per 100 lb": Basis.CWT,
    "/lb": Basis.LB,
    " per pound": Basis.LB,
    "/kg": Basis.KG,
    " je kg": Basis.KG,
    "/MSF": Basis.MSF,
    " per 1,000 sq ft": Basis.MSF,
    "/M sq ft": Basis.MSF,
    "/1000 ft²": Basis.MSF,
    "/m²": Basis.M2,
    " je qm": Basis.M2,
    "/1000 m²": Basis.THOUSAND_M2,
    "/‰ m²": Basis.THOUSAND_M2,
    " per M sheets": Basis.THOUSAND_SHEETS,
    " per 1000 sheets": Basis.THOUSAND_SHEETS,
    " je 1.000 Bogen": Basis.THOUSAND_SHEETS,
    " par mille feuilles": Basis.THOUSAND_SHEETS,
    " por millar de hojas": Basis.THOUSAND_SHEETS,
    " per 1000 ark": Basis.THOUSAND_SHEETS,
    "/Bogen": Basis.SHEET,
    " per sheet": Basis.SHEET,
    " par feuille": Basis.SHEET,
}


def amounts(found) -> list[Decimal]:
    return [reading.value for reading in found.amounts]


@given(prices, forms, st.sampled_from(sorted(CURRENCIES)), st.sampled_from(sorted(BASES)), st.booleans(), st.booleans())
def test_every_price_reads_back(value, form, currency, basis, before, spaced):
    number, space = written(value, form), " " if spaced or currency[-1:].isalpha() or currency.endswith(".") else ""
    text = f"{currency}{space}{number}{basis}" if before else f"{number} {currency}{basis}"
    found = price_text(text)
    assert found is not None
    assert value in amounts(found)
    assert found.rest == ""
    assert found.currency is not None
    assert found.currency.code == CURRENCIES[currency]
    assert found.basis is not None
    assert found.basis.basis == BASES[basis]


@given(
    prices,
    forms,
    st.sampled_from([("¢", "/lb"), ("¢", " per pound"), (" c", "/lb"), (" cts", "/lb"), (" cents", " per lb")]),
)
def test_cents_are_given_in_the_main_unit(value, form, unit):
    found = price_text(f"{written(value, form)}{unit[0]}{unit[1]}")
    assert found is not None
    assert value / 100 in amounts(found)
    assert found.currency is not None
    assert found.currency.cents
    assert found.currency.bare_dollar
    assert found.basis is not None
    assert found.basis.basis is Basis.LB


@pytest.mark.parametrize(
    "text",
    [
        "call",
        "Call",
        "n/q",
        "N/Q",
        "n/a",
        "on request",
        "auf Anfrage",
        "a. A.",
        "sur demande",
        "nous consulter",
        "a consultar",
        "på begäran",
        "TBA",
        "tba",
        "-",
        "–",
        "—",
        "---",
        "POA",
        "n.a.",
        "not quoted",
        "(call)",
        "...",
        "bajo pedido",
        "offereras",
    ],
)
def test_words_for_no_price(text):
    found = price_text(text)
    assert found is not None
    assert found.no_price
    assert found.amounts == ()


@pytest.mark.parametrize("text", ["", "SBS C1S", "Fenlight White", "see page"])
def test_other_texts_are_no_price_cell(text):
    assert price_text(text) is None


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("$1,210–1,240/ST", [Decimal("1.210"), Decimal(1210)], [Decimal("1.240"), Decimal(1240)]),
        ("12.50-13.75", [Decimal("12.50")], [Decimal("13.75")]),
        ("USD 1200 to 1240 per MT", [Decimal(1200)], [Decimal(1240)]),
        ("1.150,00 bis 1.180,00 €/t", [Decimal("1150.00")], [Decimal("1180.00")]),
        ("$1,200.00 - $1,250.00", [Decimal("1200.00")], [Decimal("1250.00")]),
    ],
)
def test_a_range_is_flagged(text, low, high):
    found = price_text(text)
    assert found is not None
    assert found.is_range
    assert amounts(found) == low
    assert [reading.value for reading in found.upper] == high


@pytest.mark.parametrize(
    "text", ["from $1,145/ST", "ab 1.145 €/t", "up to 1,200", "à partir de 950 €", "desde 950 USD"]
)
def test_an_open_range_is_flagged(text):
    found = price_text(text)
    assert found is not None
    assert found.is_range


@pytest.mark.parametrize(
    ("text", "value", "marks"),
    [
        ("1145*", "1145", ("*",)),
        ("1145 ¹", "1145", ("¹",)),
        ("1145¹", "1145", ("¹",)),
        ("$1145/ST**", "1145", ("**",)),
        ("1145 ¹)", "1145", ("¹)",)),
        ("1145 (1)", "1145", ("(1)",)),
        ("ca. 1145 USD", "1145", ("ca",)),
        ("~ 1145 USD", "1145", ("~",)),
    ],
)
def test_footnote_marks_are_reported_and_never_become_digits(text, value, marks):
    found = price_text(text)
    assert found is not None
    assert amounts(found) == [Decimal(value)]
    assert found.marks == marks
    assert found.rest == ""


@pytest.mark.parametrize(
    ("text", "amount"),
    [("59½¢/lb", "0.595"), ("48 1/4 ¢/lb", "0.4825"), ("$59 1/2/cwt", "59.5"), ("Rs 1,25,000/MT", "125000")],
)
def test_halves_quarters_and_lakhs_among_money(text, amount):
    (reading,) = price_text(text).amounts
    assert (reading.value, price_text(text).rest) == (Decimal(amount), "")


@pytest.mark.parametrize(
    "text",
    ["12/11/2026", "SBS 18 pt", "$1145/ST ($57.25/cwt)", "£12.5k", "1145 or best", "18 pt", "1145 980", "Q4 2026"],
)
def test_what_is_not_understood_stays_in_the_rest(text):
    found = price_text(text)
    assert found is None or found.rest


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("(1,250.00)", "-1250.00"),
        ("-$5", "-5"),
        ("$-5", "-5"),
        ("$(45.00)", "-45.00"),
        ("USD -890/ST", "-890"),
        ("0", "0"),
        ("$0.00", "0.00"),
    ],
)
def test_negative_and_zero_prices_keep_their_sign(text, value):
    found = price_text(text)
    assert found is not None
    assert amounts(found) == [Decimal(value)]


@pytest.mark.parametrize(
    ("text", "indicative", "delivered"),
    [
        ("1145 indicative", True, None),
        ("budget 1145", True, None),
        ("1145 (Richtpreis)", True, None),
        ("1145 USD/ST FOB mill", False, False),
        ("1145 EUR/t frei Haus", False, True),
        ("1145", False, None),
    ],
)
def test_words_beside_a_price(text, indicative, delivered):
    found = price_text(text)
    assert found is not None
    assert (found.indicative, found.delivered, found.rest) == (indicative, delivered, "")


def test_an_ambiguous_ton_stays_two_things():
    for text in ("$1145/ton", "1145 USD/T", "1145 EUR/t", "1145 USD per ton", "1145 EUR/to", "12450 kr/ton"):
        found = price_text(text)
        assert found is not None
        assert found.basis is not None
        assert found.basis.ambiguous_ton, text


@pytest.mark.parametrize(
    ("text", "foreign"),
    [
        ("$121/ream", "ream"),
        ("612/ROLL", "roll"),
        ("EUR 45 je 100 kg", "100kg"),
        ("$52 per 100 sheets", "100sheets"),
        ("£900/long ton", "long_ton"),
        ("€80/Palette", "pallet"),
        ("95 €/Ries", "ream"),
    ],
)
def test_units_that_are_not_converted(text, foreign):
    found = price_text(text)
    assert found is not None
    assert found.basis is not None
    assert (found.basis.bases, found.basis.foreign) == (frozenset(), foreign)


@pytest.mark.parametrize(
    ("text", "code", "basis"),
    [
        ("USD/ST", "USD", Basis.SHORT_TON),
        ("¢/LB", None, Basis.LB),
        ("M SHEETS", None, Basis.THOUSAND_SHEETS),
        ("€/t", "EUR", None),
        ("£ per 1000 sheets", "GBP", Basis.THOUSAND_SHEETS),
        ("(USD/MT)", "USD", Basis.TONNE),
        ("EUR je 1.000 Bogen", "EUR", Basis.THOUSAND_SHEETS),
        ("US cents per lb", "USD", Basis.LB),
        ("Kč/kg", "CZK", Basis.KG),
    ],
)
def test_price_units(text, code, basis):
    found = price_unit(text)
    assert found is not None
    assert (found.currency and found.currency.code, found.basis and found.basis.basis) == (code, basis)


@pytest.mark.parametrize("text", ["SBS", "18 pt", "lb/MSF x", "Unit", "Price list", "", "12", "1145 USD"])
def test_what_is_no_price_unit(text):
    assert price_unit(text) is None


@pytest.mark.parametrize(
    ("text", "code", "basis"),
    [
        ("All prices in US dollars per ton of 2,000 lb, FOB mill.", "USD", Basis.SHORT_TON),
        ("Preise in Euro je Tonne", "EUR", Basis.TONNE),
        ("Price\nUS$/ST", "USD", Basis.SHORT_TON),
        ("Prix nets en euros la tonne", "EUR", Basis.TONNE),
        ("Precios en USD por tonelada corta", "USD", Basis.SHORT_TON),
        ("Prices in US dollars per cwt (100 lb)", "USD", Basis.CWT),
        ("Prices in GBP, 1,500 sheets per pallet", "GBP", None),
        ("Basis weight lb/MSF", None, None),
    ],
)
def test_price_units_inside_sentences(text, code, basis):
    found = find_price_unit(text)
    currency = found.currency.code if found is not None and found.currency is not None else None
    unit = found.basis.basis if found is not None and found.basis is not None else None
    assert (currency, unit) == (code, basis)


@pytest.mark.parametrize(("text", "cents"), [("GBP p. tonne", False), ("£ p.t.", False), ("GBP p/kg", True)])
def test_p_with_a_full_stop_is_per(text, cents):
    unit = find_price_unit(text)
    assert unit is not None
    assert unit.currency is not None
    assert unit.currency.cents is cents


@pytest.mark.parametrize(
    ("text", "currency"),
    [("54.25 cents per pound, US", "USD"), ("$54.25/cwt US", "USD"), ("$812 a ton, Canadian", "CAD")],
)
def test_a_country_alone_behind_a_price_says_whose_money_it_is(text, currency):
    found = price_text(text)
    assert (found.currency.code, found.rest) == (currency, "")


def test_a_country_behind_money_that_is_another_s_stays_unexplained():
    assert price_text("54.25 €/kg US").rest == "US"
