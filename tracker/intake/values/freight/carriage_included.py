"""Freight, perhaps where it leads, and whether prices bear it: 'entrega en Bogotá incluida', 'die Lieferung bis zu
Ihrem Werk ist darin enthalten', 'Preise schließen die Anlieferung ein', 'les prix ne comprennent pas le port'."""

import re
from collections.abc import Iterator

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.freight.prices_hold import prices_hold
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.subjects import left_over
from tracker.intake.values.prices.money import price_text
from tracker.intake.words.lists import pattern, phrases, without_words


def carriage_included(text: str) -> tuple[bool, str] | None:
    """Whether the freight to a place is in the prices, and the words that say so; None where they don't."""
    ways = (_in_part, _enclosed, _borne)
    left_out = next(filter(_is_left_out, clauses(text)), None)
    if left_out is not None:
        return False, left_out.strip(" .")
    listed = next((said for clause in clauses(text) if (said := _listed(clause)) is not None), None)
    if listed is not None:
        return listed
    return next((said for part in COMMA.split(text) for tells in ways if (said := tells(part)) is not None), None)


def _is_left_out(clause: str) -> bool:
    """'Prices include energy but not freight'."""
    said = prices_hold(clause)
    beside = said is not None and bool(said.held) and not phrases("carriage").find(said.held)
    return said is not None and beside and bool(phrases("carriage").find(said.left_out))


def _listed(clause: str) -> tuple[bool, str] | None:
    """'Prices include: freight, energy surcharge', 'Not included: freight': freight among what a list holds, all of
    which is known."""
    head, _, listed = clause.partition(":")
    found = [*phrases("freight_included").find(head), *phrases("bears").find(head), *phrases("relieved").find(head)]
    holds = [match for match in found if match.value in ("in_price", "included", "within")]
    spans = [match.span for match in holds]
    if not listed or not holds or rest_of(head, spans, "price_words", "these_prices", "negations", "beside_included"):
        return None
    items = [item.strip(" .") for item in _ITEMS.split(listed)]
    carried = any(phrases("carriage").whole(item) is not None for item in items)
    if not carried or not all(item and not left_over(item, "carriage", *_BESIDE_FREIGHT) for item in items):
        return None
    return not phrases("negations").find(head), clause.strip(" .")


_ITEMS = re.compile(rf",|\s{pattern('range', 'and')}\s", re.IGNORECASE)


def without_amount_included(text: str) -> str:
    """'Freight ($42/ST) is included' without what it comes to; 'Delivered ($42/ST)' may cost that on top."""
    for aside, _ in _included_asides(text):
        text = text[: aside.start()] + text[aside.end() :]
    return text


def costs_elsewhere(text: str) -> bool:
    """'Freight ($42/ST) is included to Ohio', '… included; Texas $60/ST': elsewhere it may cost that."""
    return any(_goes_on(told) for _, told in _included_asides(text))


def _included_asides(text: str) -> Iterator[tuple[re.Match[str], str]]:
    """The brackets with an amount between a freight and 'included', the last first, and what stands from there on."""
    for aside in reversed(list(_ASIDE.finditer(text))):
        price = price_text(aside[1].strip())
        named = any(match.end == aside.start() for match in charges_named(text))
        within = next(
            (match for match in phrases("relieved").find(text[aside.end() :]) if match.value == "within"), None
        )
        if price is None or not price.amounts or price.rest or not named or within is None:
            continue
        between, told = text[aside.end() :][: within.start], text[aside.end() + within.start :]
        if not rest_of(between, (), "copula", "negations", "beside_included"):
            yield aside, told


def _goes_on(told: str) -> bool:
    same, *others = [part for clause in clauses(told) for part in COMMA.split(clause)]
    # Of 'included in the prices shown' the last word belongs to the prices.
    bounded = all(rest_of(same, (), said, *_OF_ALL) for said in ("relieved.within", "freight_included"))
    return bounded or any(amounts_in(other) and not charges_named(other) for other in others)


_OF_ALL = (
    "price_words", "these_prices", "prices_above", "prices_shown", "beside_included", "to_the_buyer", "all_goods",
    "all_of_them", "articles",
)  # fmt: skip
_ASIDE = re.compile(r"\s*\(([^()]*\d[^()]*)\)")


def _in_part(text: str) -> tuple[bool, str] | None:
    carried = phrases("carriage").find(text)
    for match in phrases("freight_included").find(text) if carried else ():
        before = [one for one in carried if one.end < match.start]
        between = text[before[-1].end : match.start].split() if before else []
        names = [word for word in between if not _denies(word)]
        if text[match.start - 1] in "-–":
            # The 'Fri' of 'delivery Mon-Fri' is no 'free'.
            continue
        included = len(names) == len(between)
        by_itself = match.value == "in_price" and bool(before) and not left_over(" ".join(names), *_LINKS)
        if by_itself or _to_a_place(names) or _to_the_buyer(" ".join(names)):
            return included, text[before[-1].start : match.end]
    return None


def _denies(word: str) -> bool:
    return phrases("answers").whole(word) == "no" or bool(phrases("negations").find(word))


def _to_a_place(between: list[str]) -> bool:
    """A small word, perhaps, and a name with a capital; the 'not' and 'NOT' before 'included' are none, nor are the
    'Samstag' and the 'Muster' of what is delivered then, or beside the board."""
    names = between[1:] if between and between[0][0].islower() else between
    other = any(phrases(section).find(" ".join(names)) for section in _NO_PLACES)
    return 0 < len(names) <= _LONGEST_NAME and all(word.istitle() for word in names) and not other


_LONGEST_NAME = 3
_NO_PLACES = ("days_off", "samples", "things_sent", "other_dealings", "charges")
_LINKS = ("copula", "beside_included")


def _to_the_buyer(between: str) -> bool:
    """'Bis zu Ihrem Werk ist darin', and nothing but such words."""
    rest = without_words(between, "to_the_buyer", *_LINKS)
    return bool(phrases("to_the_buyer").find(between)) and not rest.strip()


def _enclosed(part: str) -> tuple[bool, str] | None:
    """The German verb in two pieces around the freight: 'schließen die Lieferung an Ihre Rampe ein'."""
    verb = next(iter(phrases("encloses").find(part)), None)
    behind = part[verb.end :].rstrip(" .") if verb is not None else ""
    end = _ENDS.search(behind)
    if verb is None or end is None:
        return None
    what = behind[: end.start()]
    carried = [
        match for match in phrases("carriage").find(what) if phrases("articles").whole(what[: match.start].strip())
    ]
    leads = carried[0].end if carried else len(what)
    if not carried or (what[leads:].strip() and not _to_the_buyer(what[leads:])):
        return None
    return end["not"] is None, part[verb.start : verb.end + end.end()]


_ENDS = re.compile(r"\s+(?P<not>nicht\s+)?ein$")


def _borne(part: str) -> tuple[bool, str] | None:
    """'Ne comprennent pas le transport', 'include packing and freight', 'exclude VAT and freight'."""
    for verb in phrases("bears").find(part):
        behind = part[verb.end :]
        carried = next(iter(phrases("carriage").find(behind)), None)
        # The full stop of 'inkl.' ends no sentence.
        between = behind[: carried.start].lstrip(".") if carried is not None else ""
        if carried is None or _STOP.search(between) or left_over(between, *_BESIDE_FREIGHT):
            continue
        denied = phrases("negations").find(f"{part[: verb.start]} {between}")
        return (verb.value == "included") != bool(denied), part[verb.start : verb.end + carried.end]
    return None


_STOP = re.compile(r"[.;:]")
_BESIDE_FREIGHT = ("articles", "negations", "charges", "and_words", "all_of_them", "tax", "taxes", "packed")
