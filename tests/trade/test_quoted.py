from decimal import Decimal

import pytest

from tracker.trade.basis import Basis
from tracker.trade.quoted import basis_sign, digits_text, money_text


@pytest.mark.parametrize(
    ("price", "currency", "said"),
    [
        ("1240", "USD", "$1,240"),
        ("1240.5", "USD", "$1,240.50"),
        ("71.40", "EUR", "€71.40"),
        ("0.5255", "GBP", "£0.5255"),
        ("1E+4", "SEK", "SEK 10,000"),
    ],
)
def test_a_price_is_written_as_money_is(price: str, currency: str, said: str) -> None:
    assert money_text(Decimal(price), currency) == said


def test_digits_are_never_dropped() -> None:
    assert digits_text(Decimal("1050.00")) == "1,050.00"


def test_every_basis_has_a_sign_of_its_own() -> None:
    assert len({basis_sign(basis) for basis in Basis}) == len(Basis)
