"""Which three letters name a currency."""


def is_currency(code: str) -> bool:
    """True for a code of ISO 4217, of today or withdrawn, in capitals: 'USD', 'DEM'. Source: Unicode CLDR, by Babel."""
    from babel.core import get_global

    return code in get_global("all_currencies")


def no_currency(code: str) -> str | None:
    """Why these letters name none, in a sentence; None where they do."""
    return None if is_currency(code) else f"“{code}” is no currency: write its three letters, such as USD or EUR."
