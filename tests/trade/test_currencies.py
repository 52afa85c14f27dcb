import pytest

from tracker.trade.currencies import is_currency


@pytest.mark.parametrize("code", ["USD", "EUR", "SEK", "JPY", "DEM"])
def test_codes_of_the_standard_are_known(code):
    assert is_currency(code)


@pytest.mark.parametrize("code", ["UDS", "usd", "US$", "XQX", ""])
def test_a_slip_of_the_finger_is_no_currency(code):
    assert not is_currency(code)
