"""The currency words of the reader against ISO 4217, as Babel carries it from the Unicode CLDR."""

import pytest
from babel.numbers import get_currency_symbol, list_currencies

from tracker.intake.words.lists import words

HOMES = {
    "USD": "en_US",
    "CAD": "en_CA",
    "AUD": "en_AU",
    "MXN": "es_MX",
    "EUR": "de_DE",
    "GBP": "en_GB",
    "CHF": "de_CH",
    "SEK": "sv_SE",
    "NOK": "nb_NO",
    "DKK": "da_DK",
    "JPY": "ja_JP",
    "CNY": "zh_CN",
    "PLN": "pl_PL",
}
BUYERS = ("en_US", "en_GB", "de_DE", "fr_FR", "es_ES", "sv_SE")


def codes():
    return {code: signs for code, signs in words("currency").items() if code.isupper()}


def bare(sign):
    return sign.replace("\xa0", " ").rstrip(".").casefold()


def test_every_code_is_in_iso_4217():
    assert codes()
    assert set(codes()) <= list_currencies()


@pytest.mark.parametrize("code", sorted(HOMES))
def test_a_buyers_likely_currencies_are_known_by_their_code(code):
    assert code in codes()[code]


@pytest.mark.parametrize("locale", BUYERS)
def test_no_sign_is_claimed_for_another_currency_than_a_buyers_country_gives_it(locale):
    claimed = {bare(sign): code for code, signs in codes().items() for sign in signs}
    for code in list_currencies():
        sign = bare(get_currency_symbol(code, locale=locale))
        # At home a dollar or crown is written bare; that is what the shared signs below are for.
        if sign in claimed and code in codes():
            assert claimed[sign] == code, f"{sign} is {code} in {locale}"


@pytest.mark.parametrize("codes_sharing", [("USD", "CAD", "AUD", "MXN"), ("SEK", "NOK", "DKK"), ("JPY", "CNY")])
def test_a_sign_that_several_countries_write_at_home_settles_no_currency(codes_sharing):
    at_home = {bare(get_currency_symbol(code, locale=HOMES[code])).replace("￥", "¥") for code in codes_sharing}
    assert len(at_home) == 1
    claimed = {bare(sign) for signs in codes().values() for sign in signs}
    assert not at_home & claimed
