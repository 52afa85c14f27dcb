"""What the size of an order decides: 'From 5 t delivered; below that ex works plus 48 EUR/t freight', 'Freight 48
EUR/t, on orders under 5 t only', 'Orders below 3 t: a supplement of 35 EUR/t on top of the price shown'."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.rates import masses_of_orders
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charges import ChargeWords, find_charges
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.not_included import not_included
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.masses import Mass, alike, find_masses
from tracker.intake.values.orders.small_orders import signs_of_small, size_of_small
from tracker.intake.values.orders.supplements import on_top_of_prices
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked, tokens_of

_OPENS = ("from", "above")
_CLOSE = 3
"""Words between 'from' and its weight, or between the weight and 'and more', at the most."""


@dataclass(frozen=True, slots=True)
class DeliveredFrom:
    """Orders from this weight on are delivered. `collected`: smaller ones are said not to be; `freight`: what they are
    charged for it, where that is told. `words`: what is said of the smaller ones."""

    least: Mass
    collected: bool = False
    freight: ChargeWords | None = None
    words: str = ""


@dataclass(frozen=True, slots=True)
class SmallOrderCharge:
    """Orders of less than `below` are charged this, and no others. `words`: the clause that says so."""

    charge: ChargeWords
    below: Mass
    words: str


@lru_cache(maxsize=4096)
def terms_by_size(text: str) -> tuple[DeliveredFrom | SmallOrderCharge, ...]:
    """From what weight on a note's prices are delivered, and the charges that it gives small orders; the freight of
    small orders once, also where the note says it beside the weight from which on it is free."""
    delivered = _delivered_from(weights_in_figures(text))
    charged = _small_order_charges(text)
    if delivered is None:
        return charged
    freight = delivered.freight
    others = (
        one
        for one in charged
        if freight is None or one.charge.kind is not freight.kind or not alike(one.below, delivered.least)
    )
    return (delivered, *others)


def _delivered_from(text: str) -> DeliveredFrom | None:
    """What a note says so of all boards; None where it says nothing of it, or names two such weights."""
    parts = [part for clause in clauses(text) for part in _parts(clause)]
    told = [(place, least) for place, part in enumerate(parts) if (least := _least(part)) is not None]
    if len(told) != 1 or find_grade(text) is not None:
        return None
    ((place, least),) = told
    below = [part for part in parts[place + 1 :] + parts[:place] if _of_smaller(part, least)]
    if len(below) > 1:
        # 'Bestellungen unter 5 t tragen zudem einen Mindermengenzuschlag' is another matter.
        below = [part for part in below if _tells_of_freight(part)]
    if len(below) != 1:
        return DeliveredFrom(least)
    words = below[0]
    rest = _without_size(words, least)
    terms = find_delivery(rest)
    freights = [one for one in find_charges(rest) if one.kind is ChargeKind.FREIGHT and one.amounts]
    collected = (terms is not None and terms.delivered is False) or (bool(freights) and terms is None)
    return DeliveredFrom(least, collected, freights[0] if len(freights) == 1 and collected else None, words)


def _parts(clause: str) -> Iterator[str]:
    """Between commas; the 'From 5 t' of 'From 5 t, delivered' goes with what follows, and 'for orders from 5 t' at the
    end with what it stands behind."""
    ahead = ""
    *parts, last = list(filter(None, map(str.strip, COMMA.split(clause)))) or [""]
    if parts and _is_of_larger_orders(last):
        parts[-1] = f"{parts[-1]} {last}"
        last = ""
    for part in filter(None, (*parts, last)):
        ahead = f"{ahead}, {part}" if ahead else part
        only_size = bracket_text(ahead) is not None or phrases("small_orders").whole(ahead) is not None
        if not only_size:
            yield ahead
            ahead = ""


def _is_of_larger_orders(part: str) -> bool:
    """'For orders from 20 t', 'ab 20 t', and no word more."""
    masses = find_masses(part)
    if len(masses) != 1:
        return False
    start = part.find(masses[0].words)
    opens = [match for match in phrases("bracket").find(part) if match.value in _OPENS]
    spans = [(start, start + len(masses[0].words)), *(match.span for match in opens)]
    return bool(opens) and not rest_of(part, spans, "about_lines", "order_words")


def _least(part: str) -> Mass | None:
    """The weight of 'free delivery from 10 t', 'orders of 10 t and more: delivered', 'från 5 ton bjuder vi på
    frakten'."""
    masses = find_masses(part)
    terms = find_delivery(part)
    borne = (terms is not None and terms.delivered is True) or bool(phrases("freight_borne").find(part))
    if len(masses) != 1 or not borne or phrases("minimum").find(part) or ton_definition(part) is not None:
        return None
    start = part.find(masses[0].words)
    end = start + len(masses[0].words)
    opens = any(
        _between(part, match.end, start) or _between(part, end, match.start)
        for match in phrases("bracket").find(part)
        if match.value in _OPENS
    )
    return masses[0] if opens else None


def _between(part: str, first: int, second: int) -> bool:
    return first <= second and len(tokens_of(part[first:second])) <= _CLOSE


def _of_smaller(part: str, least: Mass) -> bool:
    """'Below that ex works', 'orders under 5 t plus freight'; of another weight it is another matter."""
    return bool(signs_of_small(part)) and all(alike(mass, least) for mass in masses_of_orders(part))


def _tells_of_freight(part: str) -> bool:
    freights = (one.kind is ChargeKind.FREIGHT for one in find_charges(part))
    return find_delivery(part) is not None or any(freights)


def _without_size(part: str, least: Mass) -> str:
    """What is said of the smaller orders, without the words for their size."""
    rest = blanked(part, (match.span for match in signs_of_small(part)))
    return " ".join(rest.replace(least.words, " ", 1).split()).strip(" :,")


def _small_order_charges(text: str) -> tuple[SmallOrderCharge, ...]:
    """The charges that a note gives small orders by name, and what they come to."""
    if not phrases("charges").find(text):
        return ()
    pieces = clauses(text)
    told = (_charge_told(clause, behind) for clause, behind in zip(pieces, [*pieces[1:], ""], strict=True))
    return tuple(one for one in told if one is not None)


def _charge_told(clause: str, behind: str) -> SmallOrderCharge | None:
    """That of a clause, which the one behind it may only say not to be in the prices: 'orders under 5 t bear a
    supplement of 35 €/t; it is not included in the prices'."""
    told = _charge_in(f"{clause}, {behind}") if behind and not_included(behind) else None
    return replace(told, words=clause) if told is not None else _charge_in(clause)


def _charge_in(clause: str) -> SmallOrderCharge | None:
    figures = weights_in_figures(clause)
    size = size_of_small(figures)
    if size is None or find_grade(clause) is not None:
        return None
    supplement = on_top_of_prices(figures)
    if supplement is not None:
        return SmallOrderCharge(supplement, size.below, clause.strip())
    ahead, behind = figures[: size.start], figures[size.end :].lstrip(" :,")
    for match in reversed(phrases("about_lines").find(ahead)):
        # Without the 'on' of 'freight 48 EUR/t on orders under 5 t'.
        ahead = ahead[: match.start] if not ahead[match.end :].strip() else ahead
    told = find_charges(ahead.rstrip(" ,(")) or find_charges(behind)
    # What is called no more than a surcharge may be one for the small order, which is told beside the price.
    known = len(told) == 1 and bool(told[0].amounts) and told[0].kind is not ChargeKind.OTHER
    return SmallOrderCharge(told[0], size.below, clause) if known else None
