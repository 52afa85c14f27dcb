"""A price cell that names an earlier price beside the one in force: 'was $1,240 – now $1,085', '1.085 statt 1.240'."""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without

_AROUND = " ,;:.!–—-()[]/|"


class Parted(NamedTuple):
    """The words of the price in force, and those of the earlier one; '' where only the one in force is named."""

    in_force: str
    earlier: str


@lru_cache(maxsize=8192)
def parted_by_age(text: str) -> Parted | None:
    """The two prices of a cell by what stands beside each; None where the words leave open which one is to be paid."""
    pieces = _figures(list(_pieces(text)))
    ages = [age for age, _ in pieces]
    if ages == ["in_force"]:
        return Parted(pieces[0][1], "")
    if len(pieces) != 2 or sorted(filter(None, ages)) not in (["in_force"], ["old"], ["in_force", "old"]):
        return None
    # '1,085 (was 1,240)' and '1,240, now 1,085': the one without a word is the other.
    new = ages.index("in_force") if "in_force" in ages else 1 - ages.index("old")
    return Parted(pieces[new][1], pieces[1 - new][1])


@lru_cache(maxsize=8192)
def earlier_price_alone(text: str) -> str:
    """The '1.121,00' of '(bisher 1.121,00)', 'was $1,240', 'Old price: £1,121'; '' where a text may say anything but
    what a price was."""
    led = _LED.fullmatch(text.strip().strip("()[]"))
    if led is None:
        return ""
    label = led["label"].strip(_AROUND)
    plain = without(label, phrases("price_words").find(label)).strip(_AROUND)
    said = {phrases(section).whole(words) for section in _AGES for words in (label, plain)}
    was = phrases("headers").whole(label) == _PREVIOUS or phrases("was_once").whole(label) is not None
    return led["price"].strip() if was or "old" in said else ""


_LED = re.compile(r"(?P<label>[^\W\d_][^\d$€£]*?)(?P<price>[$€£]?\s?\d[^()\[\]]*)")
_PREVIOUS = "previous_price"


_BRACKETS = re.compile(r"[(\[]([^()\[\]]*)[)\]]")


def without_earlier(name: str) -> str:
    """A board's name without what it was before: 'SBS 18 (was 20 pt) C1S' measures no 20 pt."""
    return _BRACKETS.sub(lambda match: " " if _is_earlier(match[1]) else match[0], name)


def _is_earlier(words: str) -> bool:
    said = [match for section in _AGES for match in phrases(section).find(words)]
    return any(map(str.isdigit, words)) and any(one.first == 0 and one.value == "old" for one in said)


def _pieces(text: str) -> Iterator[tuple[str, str]]:
    """The text cut before each word for an age: that age, and what stands behind the word."""
    marks = sorted((match for section in _AGES for match in phrases(section).find(text)), key=lambda match: match.start)
    age, start = "", 0
    for match in marks:
        yield age, text[start : match.start].strip(_AROUND)
        age, start = match.value, match.end
    yield age, text[start:].strip(_AROUND)


_AGES = ("price_ages", "was_now")


def _figures(pieces: list[tuple[str, str]]) -> list[tuple[str, str]]:
    """The pieces with figures. A word for an age that none follows is said of the one before, as in '1,085 now, was
    1,240', or twice, as in 'new price now 1,085'; () where it is said of nothing."""
    found: list[tuple[str, str]] = []
    for place, (age, words) in enumerate(pieces):
        if any(map(str.isdigit, words)):
            found.append((age, words))
        elif age and found and not found[-1][0]:
            found[-1] = age, found[-1][1]
        elif age and (place + 1 == len(pieces) or pieces[place + 1][0] != age):
            return []
    return found
