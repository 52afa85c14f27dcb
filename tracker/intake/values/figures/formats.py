"""What a spreadsheet's number format says in words: a currency or a unit that no cell's text carries."""

import re
from functools import lru_cache

from tracker.intake.values.prices.currency import CurrencyReading, combined, find_currencies
from tracker.intake.values.prices.money import PriceUnit, price_unit

# Language codes that tell apart the countries of a shared sign: Windows numbers ([MS-LCID], from memory) and tags.
_DOLLARS: dict[int | str, str] = {
    0x409: "USD", 0x1009: "CAD", 0xC0C: "CAD", 0xC09: "AUD", 0x1409: "NZD", 0xC04: "HKD", 0x3C09: "HKD",
    0x1004: "SGD", 0x4809: "SGD", 0x80A: "MXN", 0x404: "TWD",
    "us": "USD", "ca": "CAD", "au": "AUD", "nz": "NZD", "hk": "HKD", "sg": "SGD", "mx": "MXN", "tw": "TWD",
}  # fmt: skip
_CROWNS: dict[int | str, str] = {
    0x41D: "SEK", 0x81D: "SEK", 0x414: "NOK", 0x814: "NOK", 0x406: "DKK", 0x40F: "ISK",
    "se": "SEK", "fi": "SEK", "no": "NOK", "dk": "DKK", "is": "ISK",
}  # fmt: skip
_BY_LOCALE: dict[str, dict[int | str, str]] = {
    "$": _DOLLARS,
    "kr": _CROWNS,
    "¥": {0x411: "JPY", 0x804: "CNY", "jp": "JPY", "cn": "CNY"},
}
_BRACKETED = re.compile(r"\[\$([^\]-]*)(?:-([0-9A-Za-z-]+))?(?:,[^\]]*)?\]")
_COLOUR_OR_CONDITION = re.compile(r"\[[^\]$]*\]")
_LITERAL = re.compile(r'"([^"]*)"|\\(.)|_.|\*.|([€£¥$¢])|([#0?][#0?.,]*)')


@lru_cache(maxsize=4096)
def format_words(code: str) -> str:
    """The literal words of a number format's first section: '#,##0.00 "USD/t"' -> 'USD/t'. '' where it has none.

    A sign with a language code becomes its ISO code: '[$kr-41D]' -> 'SEK'. '[$-409]' says nothing.
    """
    section = _first_section(code)
    section = _BRACKETED.sub(lambda match: f'"{_signed(match[1], match[2])}"', section)
    section = _COLOUR_OR_CONDITION.sub("", section)
    pieces = []
    for match in _LITERAL.finditer(section):
        quoted, escaped, sign, digits = match.groups()
        pieces.append(" " if digits else (quoted or escaped or sign or ""))
    return re.sub(r"\s+", " ", "".join(pieces)).strip(" ()-")


def _first_section(code: str) -> str:
    quoted = False
    for place, sign in enumerate(code):
        if sign == '"':
            quoted = not quoted
        elif sign == ";" and not quoted:
            return code[:place]
    return code


def _signed(sign: str, locale: str | None) -> str:
    """'$' with a language code as its ISO code; the sign itself where the code names no country it knows."""
    known = _BY_LOCALE.get(sign.strip().rstrip(".").lower())
    if known is None or not locale:
        return sign
    _, hyphen, country = locale.rpartition("-")
    if hyphen:
        return known.get(country.lower(), sign)
    is_number = all(letter in "0123456789ABCDEFabcdef" for letter in locale)
    return known.get(int(locale, 16) & 0xFFFF, sign) if is_number else sign


@lru_cache(maxsize=4096)
def number_format_currency(code: str) -> CurrencyReading | None:
    """The currency of a number format: '[$€-407] #,##0.00' -> EUR, '"kr" 0' -> several. None where it names none.

    A '$' of a format without a language code is a bare dollar, which spreadsheets also show in the reader's own
    currency.
    """
    said = format_words(code)
    if not said:
        return None
    unit = price_unit(said)
    if unit is not None and unit.currency is not None:
        return unit.currency
    named = find_currencies(said)
    if not named:
        return None
    currency = named[0]
    for other in named[1:]:
        currency = combined(currency, other)
    return currency


@lru_cache(maxsize=1024)
def unit_of_format(code: str) -> PriceUnit | None:
    """Currency and unit that a number format's words carry: '#,##0.00 "USD/t"'."""
    if code in ("", "General"):
        return None
    unit = price_unit(format_words(code))
    currency = number_format_currency(code)
    if unit is None:
        return PriceUnit(currency, None, code) if currency is not None else None
    return PriceUnit(currency or unit.currency, unit.basis, code)
