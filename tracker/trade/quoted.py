"""A price as a buyer writes it down: '$1,240 /ST', 'SEK 9,450 /t'. Currency and basis are the vendor's own."""

from decimal import Decimal

from tracker.trade.basis import Basis

_MONEY_SIGNS = {"USD": "$", "EUR": "€", "GBP": "£"}
"""Signs that name one currency here: a bare $ is USD wherever this program writes it."""

_BASIS_SIGNS = {
    Basis.SHORT_TON: "ST",
    Basis.TONNE: "t",
    Basis.MSF: "MSF",
    Basis.M2: "m²",
    Basis.THOUSAND_M2: "1,000 m²",
    Basis.THOUSAND_SHEETS: "1,000 sheets",
}


def basis_sign(basis: Basis) -> str:
    """'ST', 'cwt', '1,000 sheets': short enough for a column."""
    return _BASIS_SIGNS.get(basis, basis.value)


def money_text(price: Decimal, currency: str) -> str:
    """'$1,240.50', '€900', 'SEK 9,450'."""
    return f"{money_sign(currency)}{digits_text(price)}"


def digits_text(price: Decimal) -> str:
    """Every digit as quoted, thousands apart; money has no single decimal: 57.5 is written 57.50."""
    text = f"{price:,f}"
    return f"{text}0" if text[-2:-1] == "." else text


def money_sign(currency: str) -> str:
    """What stands before a figure: '$', or 'SEK ' with its space."""
    return _MONEY_SIGNS.get(currency) or f"{currency} "
