"""Last days whose day is written out in words, by themselves or with the same day in figures behind."""

from datetime import date

import pytest

from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.validity import validity

_LAST = date(2026, 12, 31)
_SENTENCES = {
    "en": "Prices firm until the thirty-first of December 2026",
    "de": "Preise gültig bis zum einunddreißigsten Dezember 2026",
    "fr": "Prix fermes jusqu'au trente et un décembre 2026",
    "es": "Precios firmes hasta el treinta y uno de diciembre de 2026",
    "sv": "Priserna gäller till och med den trettioförsta december 2026",
}


@pytest.mark.parametrize("sentence", _SENTENCES.values(), ids=_SENTENCES)
@pytest.mark.parametrize("behind", ["", ".", " (31/12/2026)", " (31.12.2026)."])
def test_a_day_in_words_is_one(sentence, behind):
    said = validity(f"{sentence}{behind}")
    assert said.until.readings == (_LAST,)
    assert not said.unread


@pytest.mark.parametrize("sentence", [*_SENTENCES.values(), "Prices firm until 31 December 2026"])
def test_another_day_in_brackets_leaves_it_open(sentence):
    assert validity(f"{sentence} (30/11/2026)").unread


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("first March 2027", 1), ("the twenty-second of March 2027", 22), ("premier mars 2027", 1),
        ("quinze mars 2027", 15), ("vingt-huit mars 2027", 28), ("primero de marzo de 2027", 1),
        ("veintidós de marzo 2027", 22), ("zweiundzwanzigster März 2027", 22), ("den tjugoandra mars 2027", 22),
    ],
)  # fmt: skip
def test_the_whole_number_is_the_day(words, day):
    assert [found.readings for found in find_dates(words)] == [(date(2027, 3, day),)]


@pytest.mark.parametrize(
    "words",
    [
        "first half of March 2027",
        "our second list of March 2027",
        "thirty-first February 2027",
        "the first March delivery",
    ],
)
def test_other_words_before_a_month_are_no_day(words):
    assert find_dates(words) == ()
