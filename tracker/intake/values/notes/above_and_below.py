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
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.not_included import denied_within, not_included
from tracker.intake.values.notes.clauses import sentences_of, stops_in
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.notes.told_of_below import ends_below
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked, tokens_of


class Side(Enum):
    """Where the prices stand that a text is about; `UNKNOWN`: it names those above and may be about either."""

    ABOVE = auto()
    BELOW = auto()
    BOTH = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True)
class SidePart:
    """A part of a text and the prices that it is about."""

    side: Side
    text: str


_SECTIONS = ("prices_above", "prices_below", "prices_above_and_below")
_SIDES = dict(zip(_SECTIONS, (Side.ABOVE, Side.BELOW, Side.BOTH), strict=True))
_STOP = re.compile(r"[.;!?]\s|,(?!\d)|:\s|\n|\s[-–—]\s")
_FULL_STOP = re.compile(r"[.!?]\s+|\n")
_FIGURE = re.compile(r"\s*(?:[$€£]|[A-Z]{3}\s)?\s*\d")
_END_OF_SUBJECT = re.compile(r"\s*(?:[:.;,=!?]|[-–—]\s|$)")


@lru_cache(maxsize=4096)
def parts_by_side(text: str) -> tuple[SidePart, ...]:
    """The parts of a text that say, in their first words, whether they are about prices above or below, and those that
    name the prices above otherwise, of which that is not known; () where it doesn't tell of either side alone."""
    if (excluded := _excluded(text)) is not None:
        return (excluded,)
    if (side := _added_to(text)) is not None:
        return (SidePart(side, _without_those_below(text) if side is Side.BELOW else text),)
    found = _subjects(text)
    if not found:
        return _about_the_end(text) or tuple(_doubted(text))
    sides = [_SIDES[match.value] for match in found]
    starts = [_start(text, match) for match in found]
    # 'FOB mill, above prices in dollars': what stands before is said of nothing that is known.
    leading = text[: starts[0]].strip()
    if leading and not _FULL_STOP.search(text[: starts[0]] + " ", len(text[: starts[0]].rstrip()) - 1):
        return tuple(_doubted(text))
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


def _excluded(text: str) -> SidePart | None:
    """'Not included in the above: freight' as 'freight, not included', of the prices that it names."""
    line, _, names = (part.strip() for part in text.partition(":"))
    named = joined(*_SECTIONS).find(line)
    sides = {match.value for match in named}
    if len(sides) != 1 or not charges_named(names) or any(map(str.isdigit, names)):
        return None
    plain = " ".join(blanked(line, (match.span for match in named)).split())
    # Without the 'in the' that led to them.
    denial = [*denied_within(plain, "within"), *phrases("negations").find(plain)]
    told = f"{names} {plain[: max((one.end for one in denial), default=None)]}"
    said = statements(told)
    says = any(isinstance(one, ChargeWords) or (isinstance(one, Delivery) and one.delivered is False) for one in said)
    return SidePart(_SIDES[sides.pop()], told) if not_included(plain) and says else None


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
    stops = [stop.end() for stop in stops_in(text, _STOP) if stop.end() <= match.start]
    stops += [word.end for word in phrases("and_words").find(text) if word.end <= match.start]
    return max(stops, default=0)


def _leads(text: str, match: Found[str]) -> bool:
    """Whether nothing but 'all the', 'please note' or 'for' stands before a phrase in its part of the sentence; behind
    it may stand what is added: 'Added to the above prices: energy 3 %'."""
    ahead = text[_start(text, match) : match.start]
    if not _left(ahead, "leads_to_prices_above", *_TOPICS):
        return True
    added = any(isinstance(one, ChargeWords) for one in statements(text[match.end :]))
    return added and not _left(ahead, "leads_to_prices_above", "says_of_prices_above")


_TOPICS = ("topics_of_prices", "charges")
"""The 'lead time for' of 'Lead time for the above: 4 weeks', the 'freight to' of 'Freight to the above: $40/ST'."""


def _left(ahead: str, *sections: str) -> bool:
    return any(map(str.isalnum, blanked(ahead, (one.span for one in joined(*sections).find(ahead)))))


def _says_something(text: str, match: Found[str]) -> bool:
    """Whether a verb, a stop or a term follows: 'Above prices are …', 'Above prices: …', 'Above prices FOB mill'. The
    prices above 20 tons are others, and so are 'the above grades in rolls'."""
    behind = text[match.end :]
    if _FIGURE.match(behind):
        return False
    sentence = _up_to(behind, _FULL_STOP)
    leads_on = sentence.rstrip().endswith(":") and not phrases("prices_below").find(sentence)
    if leads_on and _SIDES[match.value] is not Side.BELOW:
        return False
    tells = joined("copula", "charge_verbs").at(tokens_of(behind), 0) is not None
    if tells or _may_be_earlier(text, match):
        return tells
    if _END_OF_SUBJECT.match(behind):
        return True
    near = _first_said(behind)
    said = any(map(statements, (text[match.start : match.end] + near, near.strip())))
    return said and not joined("forms", "made_so.to_order").find(near)


def _may_be_earlier(text: str, match: Found[str]) -> bool:
    """'Precios anteriores' are those above, or those of an older list, over which it stands."""
    return phrases("prices_above").whole(text[match.start : match.end]) == "earlier"


def _up_to(text: str, stop: re.Pattern[str]) -> str:
    first = next(iter(stops_in(text, stop)), None)
    return text if first is None else text[: first.start()]


def _first_said(behind: str) -> str:
    """What stands before the first stop, and behind commas where before these only 'net' and 'excl. VAT' do: 'Above
    prices net, FOB mill'."""
    for stop in stops_in(behind, _STOP):
        near = behind[: stop.start()]
        if stop.group() != "," or rest_of(near, (), "tax", "bare_prices"):
            return near
    return behind


def _doubted(text: str) -> Iterator[SidePart]:
    """The sentences of a text that names prices above, apart from those that do not; none of any other text."""
    sentences = sentences_of(text)
    doubted = [_names_those_above(sentence) for sentence in sentences]
    if any(doubted):
        for sentence, unknown in zip(sentences, doubted, strict=True):
            yield SidePart(Side.UNKNOWN if unknown else Side.BELOW, sentence.strip(" ;"))


def _names_those_above(sentence: str) -> bool:
    """Not 'Same as the above, delivered' and 'The above grades in rolls: delivered', which are about other boards, nor
    a heading of what follows and '10 t and above'."""
    found = [match for match in phrases("prices_above").find(sentence) if match.value == "any"]
    apart = [
        _FIGURE.match(sentence, match.end)
        or _is_set_against(sentence[: match.start])
        or joined("forms", "made_so.to_order").find(_up_to(sentence[match.end :], _STOP))
        for match in found
    ]
    return not (sentence.rstrip().endswith(":") or all(apart))


def _is_set_against(ahead: str) -> bool:
    """Whether what stands before the prices above ends in words that set something else against them."""
    return any(not ahead[match.end :].strip() for match in phrases("set_against_prices_above").find(ahead))


def _about_the_end(text: str) -> tuple[SidePart, ...]:
    """'Freight is included in the above prices.', 'Energie 3 % kommt zu den Preisen unten hinzu': a sentence that ends
    with them; 'Add $46/ST to every item below.'"""
    below = ends_below(text)
    if below and not any(map(str.isalnum, text[below[-1].end :])) and statements(text):
        return (SidePart(Side.BELOW, text),)
    last = next(reversed(joined("prices_above", "prices_below").find(text)), None)
    if last is None or text.rstrip().endswith(":") or rest_of(text[last.end :], (), "added_behind"):
        return ()
    ahead = text[: last.start].rstrip()
    leads = any(one.end >= len(ahead) for one in phrases("says_of_prices_above").find(ahead))
    side = _SIDES[last.value]
    text = _without_earlier(text) if side is Side.ABOVE else _without_those_below(text)
    if _is_set_against(ahead) or not (leads and statements(text)):
        return ()
    return (SidePart(side, text),)


def _without_those_below(text: str) -> str:
    """A text about the prices below without the words for them, which are a limit elsewhere."""
    return " ".join(blanked(text, (match.span for match in phrases("prices_below").find(text))).split())


def _without_earlier(text: str) -> str:
    """A text about the prices above with blanks for words that may call them earlier ones."""
    found = phrases("prices_above").find(text)
    return blanked(text, (match.span for match in found if match.value == "earlier"))


def _leading(text: str, sides: list[Side]) -> list[SidePart]:
    """Sentences before the first that tells sides apart: of both where both are told of. Terms before what is said of
    the prices below may be of those above alone: 'Lead time 3 weeks. All prices below are delivered.'"""
    if not text:
        return []
    side = sides[0] if len(set(sides)) == 1 else Side.BOTH
    terms = side is Side.BELOW and any(isinstance(one, _TERMS) for one in statements(text))
    return [SidePart(Side.UNKNOWN if terms else side, text)]


_TERMS = (Delivery, LeadTime, LeadUnread, Validity, ChargeWords, SaysMinimum, LeastUnread)


def _ended(parts: list[SidePart]) -> list[SidePart]:
    """'Above prices FOB mill. Special offers:' ends with a heading of what follows."""
    last = parts[-1]
    stops = stops_in(last.text, _FULL_STOP)
    if last.side is Side.BELOW or not stops or not last.text.endswith(":"):
        return parts
    cut = stops[-1].end()
    return [*parts[:-1], replace(last, text=last.text[:cut].strip()), SidePart(Side.BELOW, last.text[cut:])]


def _whole(parts: list[SidePart]) -> list[SidePart]:
    """'The above prices are valid to 31 December, those below to 31 January' leaves out what it would repeat: it is
    taken from the part before, up to the word that the shorter part begins with."""
    whole: list[SidePart] = []
    topic = ""
    for part in parts:
        before = whole[-1].text if whole else ""
        topic = _topic(part.text) or topic
        told = next(filter(statements, _filled(part.text, before, topic)), part.text)
        whole.append(replace(part, text=told))
    return whole


def _topic(text: str) -> str:
    """The 'lead time' of 'Lead time for the above is 4 weeks', with which its part begins."""
    first = next(iter(joined(*_TOPICS).find(text)), None)
    subject = next(iter(joined(*_SECTIONS).find(text)), None)
    leads = first is not None and subject is not None and first.start == 0 and first.end < subject.start
    return text[: first.end] if first is not None and leads else ""


def _filled(text: str, before: str, topic: str) -> Iterator[str]:
    """A part as it stands, without its subject, and with what it leaves out."""
    subject, other = (next(iter(joined(*_SECTIONS).find(said)), None) for said in (text, before))
    own = text[subject.end :].strip(" :,") if subject is not None else ""
    if topic and subject is not None:
        yield f"{topic}: {own}"
    if subject is not None and text[subject.end :].lstrip().startswith(":"):
        # In 'unten: frei Haus' an entry of a list might have the name, and be free.
        yield own
    yield _without_earlier(text)
    if subject is None:
        return
    told = before[other.end :] if other is not None else ""
    yield own
    first = next((word for word, _, _ in tokens_of(own)), "")
    places = [start for word, start, _ in tokens_of(told) if word == first]
    if len(places) == 1:
        yield f"{told[: places[0]].strip()} {own}"
