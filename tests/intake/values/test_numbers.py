from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import decimals, forms, prices, written
from tracker.intake.values.figures.numbers import (
    NumberReading,
    number_readings,
    percent,
    settled,
)


def values(text: str) -> list[Decimal]:
    return [reading.value for reading in number_readings(text)]


@given(prices, forms)
def test_every_value_reads_back_from_every_form(value, form):
    assert value in values(written(value, form))


@given(decimals("1000", "9999999", 2), forms)
def test_two_decimals_leave_one_reading(value, form):
    assert values(written(value, form)) == [value]


@given(decimals("1", "999", 3), st.sampled_from([".", ","]))
def test_three_decimals_behind_one_sign_are_also_a_thousand(value, sign):
    text = format(value, "f").replace(".", sign)
    assert values(text) == [value, value * 1000]


@given(prices.filter(lambda value: value > 0), forms)
def test_a_minus_or_brackets_turn_every_reading_over(value, form):
    text = written(value, form)
    turned = sorted(-found for found in values(text))
    for negative in (f"-{text}", f"−{text}", f"- {text}", f"({text})", f"{text}-"):
        assert values(negative) == turned


@given(st.text(alphabet="0123456789.,' -()", max_size=12))
def test_nothing_is_dropped_from_what_is_read(text):
    digits = "".join(sign for sign in text if sign.isdigit())
    for value in values(text):
        shown = format(abs(value), "f").replace(".", "")
        assert shown.lstrip("0") == digits.lstrip("0")


@pytest.mark.parametrize(
    "text",
    [
        "1,25,00",
        "1,250,00,000",
        "12/11/2026",
        "1.2.2026",
        "1e5",
        "1_000",
        "NaN",
        "Infinity",
        "٣",
        "12 34",
        "1.234.56",
        "1,234,56",
        "007",
        "",
        "-",
        ".",
        ",",
        "1,,000",
        "1.234'567",
        "12.50-13.75",
        "18 pt",
        "1 2345",
        "½",
        "12 345 6",
        "--5",
        "1,234,",
        "0,000,1",
    ],
)
def test_what_no_rule_accepts_in_full_is_no_number(text):
    assert number_readings(text) == ()


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("1,234", {("1234", "."), ("1.234", ",")}),
        ("1.234", {("1234", ","), ("1.234", ".")}),
        ("1,2345", {("1.2345", ",")}),
        ("0.018", {("0.018", ".")}),
        (".018", {("0.018", ".")}),
        ("0,234", {("0.234", ",")}),
        ("1,234,567", {("1234567", ".")}),
        ("1,02,500", {("102500", ".")}),
        ("12,34,56,789.50", {("123456789.50", ".")}),
        ("1234", {("1234", "")}),
        ("1 250", {("1250", "")}),
        ("1'250.50", {("1250.50", ".")}),
        ("1.250,-", {("1250", ",")}),
        ("1250.–", {("1250", ".")}),
        ("12.500:-", {("12500", ",")}),
        ("890,00-", {("-890.00", ",")}),
        ("(1,250.00)", {("-1250.00", ".")}),
        ("  12,5 ", {("12.5", ",")}),
    ],
)
def test_readings_and_the_decimal_sign_they_imply(text, expected):
    assert set(number_readings(text)) == {NumberReading(Decimal(value), sign) for value, sign in expected}


def test_settled_keeps_what_agrees():
    assert settled(number_readings("1,234"), ",") == (NumberReading(Decimal("1.234"), ","),)
    assert settled(number_readings("1,234"), ".") == (NumberReading(Decimal(1234), "."),)
    assert len(settled(number_readings("1,234"), None)) == 2
    assert settled(number_readings("1234"), ",") == (NumberReading(Decimal(1234)),)


@given(decimals("0.1", "99", 1), st.sampled_from(["%", " %", "\u00a0%", " percent", " Prozent", " procent"]))
def test_percentages_read_back(value, sign):
    assert [reading.value for reading in percent(f"{value}{sign}")] == [value]


@pytest.mark.parametrize(
    ("text", "value"), [("59½", "59.5"), ("43 1/4", "43.25"), ("43-3/8", "43.375"), ("59 3/2", None), ("1/2", None)]
)
def test_halves_quarters_and_eighths(text, value):
    assert [str(reading.value) for reading in number_readings(text)] == ([] if value is None else [value])
