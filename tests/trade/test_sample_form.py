"""What is asked for, from a buyer's own words."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.sample_form import Form, SampleForm, understood

INCHES = (Decimal("711.2"), Decimal("1016"))


@pytest.mark.parametrize(
    ("words", "form", "pieces", "size"),
    [
        ("20 sheets 28 x 40 in", Form.SHEETS, 20, INCHES),
        ("28 × 40 in, 20 sheets", Form.SHEETS, 20, INCHES),
        ('12 sheets 28x40"', Form.SHEETS, 12, INCHES),
        ("25 Sheets 700 x 1000 mm", Form.SHEETS, 25, (Decimal(700), Decimal(1000))),
        ("70 x 100 cm", Form.SHEETS, None, (Decimal(700), Decimal(1000))),
        ("70 x 100", None, None, None),
        ("10 sheets A4", Form.SHEETS, 10, (Decimal(210), Decimal(297))),
        ("1 roll end", Form.ROLL_END, 1, None),
        ("a roll end", Form.ROLL_END, None, None),
        ("6 made-up blanks", Form.BLANKS, 6, None),
        ("25", None, 25, None),
        ("", None, None, None),
        ("as last time", None, None, None),
    ],
)
def test_words_of_a_request(words: str, form: Form | None, pieces: int | None, size: object) -> None:
    assert understood(words) == SampleForm(form, pieces, size)


@given(st.text(max_size=40))
def test_no_words_are_an_error(words: str) -> None:
    assert isinstance(understood(words), SampleForm)
