"""Texts between rows of prices that say which of them they are about: 'Above prices FOB mill', 'Below: delivered'.

Only what a sentence begins with is what it is about: 'Same as the above, delivered' and 'Heavier than the above
grades' are said of something else.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto
from functools import lru_cache

from tracker.intake.values.freight.additions_below import additions_behind, said_as_added
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked, tokens_of


class Side(Enum):
    """Where the prices stand that a text is about."""

    ABOVE = auto()
    BELOW = auto()
    BOTH = auto()


@dataclass(frozen=True, slots=True)
class SidePart:
    """A part of a text and the prices that it is about."""

    side: Side
    text: str


_SECTIONS = ("prices_above", "prices_below", "prices_above_and_below")
_SIDES = dict(zip(_SECTIONS, Side, strict=True))
_STOP = re.compile(r"[.;!?]\s|,(?!\d)|:\s|\n|\s[-–—]\s")
_FULL_STOP = re.compile(r"[.!?]\s+|\n")
_FIGURE = re.compile(r"\s*(?:[$€£]|[A-Z]{3}\s)?\s*\d")
_END_OF_SUBJECT = re.compile(r"\s*(?:[:.;,=!?]|[-–—]\s|$)")


@lru_cache(maxsize=4096)
def parts_by_side(text: str) -> tuple[SidePart, ...]:
    """The parts of a text that say, in their first words, whether they are about prices above or below; () where it
    doesn't tell of the prices above or below alone, or where that is not certain."""
    if (side := _added_to(text)) is not None:
        # 'Below' is a limit elsewhere.
        below = phrases("prices_below").find(text) if side is Side.BELOW else ()
        return (SidePart(side, blanked(text, (match.span for match in below))),)
    found = _subjects(text)
    if not found:
        return _about_the_end(text)
    sides = [_SIDES[match.value] for match in found]
    starts = [_start(text, match) for match in found]
    # 'FOB mill, above prices in dollars': what stands before is said of nothing that is known.
    leading = text[: starts[0]].strip()
    if leading and not _FULL_STOP.search(text[: starts[0]] + " ", len(text[: starts[0]].rstrip()) - 1):
        return ()
    parts = [
        SidePart(side, text[start:end].strip(" ,;"))
        for side, start, end in zip(sides, starts, [*starts[1:], len(text)], strict=True)
    ]
    return tuple(_whole([*_leading(leading, sides), *_ended(parts)]))


def _added_to(text: str) -> Side | None:
    """The side of 'Hinzu kommt zu den obigen Preisen: Energie 3 %', and of 'toll: 4 €/t, Added to the above prices:',
    an entry before its line."""
    line = text.rpartition(", ")[2] if said_as_added(text) is not None else additions_behind(text)[0]
    sides = {match.value for match in joined(*_SECTIONS).find(line)}
    return _SIDES[sides.pop()] if len(sides) == 1 else None


def _subjects(text: str) -> list[Found[str]]:
    """The phrases that parts of the text begin with. The second of two sides may leave out what is said of both:
    'Above prices FOB mill, below delivered'."""
    found: list[Found[str]] = []
    for match in joined(*_SECTIONS).find(text):
        contrasted = bool(found) and found[-1].value != match.value
        if _leads(text, match) and (
            _says_something(text, match) or (contrasted and not _FIGURE.match(text, match.end))
        ):
            found.append(match)
    return found


def _start(text: str, match: Found[str]) -> int:
    """Where the part of the sentence begins that a phrase stands in: behind the last stop or 'and'."""
    stops = [stop.end() for stop in _STOP.finditer(text, 0, match.start)]
    stops += [word.end for word in phrases("and_words").find(text) if word.end <= match.start]
    return max(stops, default=0)


def _leads(text: str, match: Found[str]) -> bool:
    """Whether nothing but 'all the', 'please note' or 'for' stands before a phrase in its part of the sentence; behind
    it may stand what is added: 'Added to the above prices: energy 3 %'."""
    ahead = text[_start(text, match) : match.start]
    if not _left(ahead, "leads_to_prices_above"):
        return True
    added = any(isinstance(one, ChargeWords) for one in statements(text[match.end :]))
    return added and not _left(ahead, "leads_to_prices_above", "says_of_prices_above")


def _left(ahead: str, *sections: str) -> bool:
    return any(map(str.isalnum, blanked(ahead, (one.span for one in joined(*sections).find(ahead)))))


def _says_something(text: str, match: Found[str]) -> bool:
    """Whether a verb, a stop or a term follows: 'Above prices are …', 'Above prices: …', 'Above prices FOB mill'. The
    prices above 20 tons are others, and so are 'the above grades in rolls'."""
    behind = text[match.end :]
    if _FIGURE.match(behind):
        return False
    sentence = behind[: stop.start()] if (stop := _FULL_STOP.search(behind)) else behind
    leads_on = sentence.rstrip().endswith(":") and not phrases("prices_below").find(sentence)
    if leads_on and _SIDES[match.value] is not Side.BELOW:
        return False
    if _END_OF_SUBJECT.match(behind) or phrases("copula").at(tokens_of(behind), 0) is not None:
        return True
    near = behind[: stop.start()] if (stop := _STOP.search(behind)) else behind
    said = any(map(statements, (text[match.start : match.end] + near, near.strip())))
    return said and not joined("forms", "made_so.to_order").find(near)


def _about_the_end(text: str) -> tuple[SidePart, ...]:
    """'Freight is included in the above prices.': a sentence that ends with them."""
    last = next(reversed(phrases("prices_above").find(text)), None)
    if last is None or any(map(str.isalnum, text[last.end :])) or text.rstrip().endswith(":"):
        return ()
    ahead = text[: last.start].rstrip()
    leads = any(one.end >= len(ahead) for one in phrases("says_of_prices_above").find(ahead))
    return (SidePart(Side.ABOVE, text),) if leads and statements(text) else ()


def _leading(text: str, sides: list[Side]) -> list[SidePart]:
    """Sentences before the first that tells sides apart: of both where both are told of."""
    if not text:
        return []
    return [SidePart(sides[0] if len(set(sides)) == 1 else Side.BOTH, text)]


def _ended(parts: list[SidePart]) -> list[SidePart]:
    """'Above prices FOB mill. Special offers:' ends with a heading of what follows."""
    last = parts[-1]
    stops = list(_FULL_STOP.finditer(last.text))
    if last.side is Side.BELOW or not stops or not last.text.endswith(":"):
        return parts
    cut = stops[-1].end()
    return [*parts[:-1], replace(last, text=last.text[:cut].strip()), SidePart(Side.BELOW, last.text[cut:])]


def _whole(parts: list[SidePart]) -> list[SidePart]:
    """'The above prices are valid to 31 December, those below to 31 January' leaves out what it would repeat: it is
    taken from the part before, up to the word that the shorter part begins with."""
    whole: list[SidePart] = []
    for part in parts:
        before = whole[-1].text if whole else ""
        whole.append(replace(part, text=next(filter(statements, _filled(part.text, before)), part.text)))
    return whole


def _filled(text: str, before: str) -> Iterator[str]:
    """A part as it stands, without its subject, and with what it leaves out."""
    yield text
    subject, other = (next(iter(joined(*_SECTIONS).find(said)), None) for said in (text, before))
    if subject is None:
        return
    own, told = text[subject.end :].strip(" :,"), before[other.end :] if other is not None else ""
    yield own
    first = next((word for word, _, _ in tokens_of(own)), "")
    places = [start for word, start, _ in tokens_of(told) if word == first]
    if len(places) == 1:
        yield f"{told[: places[0]].strip()} {own}"
