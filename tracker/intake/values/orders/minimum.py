"""The smallest order a vendor takes: 'Minimum order 10,000 lb per item', 'MOQ 2 t', 'Mindestmenge 5 t'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.figures.numbers_in_words import says_unread_number
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.masses import MASS_UNITS, Mass, find_masses
from tracker.intake.values.orders.orders_refused import refused_below, refuses_small, speaks_of_money
from tracker.intake.values.orders.pieces_weighed import times_pieces
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found

_SLASH = re.compile(r"\s*/\s*([^\W\d]+)")
_PIECES = frozenset({"pallet", "roll"})


@dataclass(frozen=True, slots=True)
class Minimum:
    """A smallest order. `grades`: of which boards; () of all."""

    mass: Mass
    grades: tuple[str, ...] = ()


def _without_per_item(clause: str) -> str:
    """'3 t/item' and '2 t/Sorte' are weights of each order; '75 lb/MSF' is none."""
    return _SLASH.sub(lambda per: " " if phrases("minimum_per").whole(per[1]) else per[0], clause)


@lru_cache(maxsize=8192)
def find_minimum(text: str) -> Mass | None:
    """The one weight behind words for a minimum order, or right before them, in the same clause.

    None where there is none, two that differ, or one for each of several boards.
    """
    found = {}
    for clause in map(weights_in_figures, clauses(text)):
        if says_unread_number(clause) and phrases("minimum").find(clause):
            return None
        refused = refused_below(clause, find_masses(_without_per_item(clause)))
        if refused is not None:
            found[(refused.amounts, refused.units)] = refused
        if refuses_small(clause):
            continue
        clause = _before_other_lists(_with_unit_behind(clause))
        words = _words_for_least(clause)
        others = phrases("yearly").find(clause) or phrases("other_lists").find(clause)
        if not words or _denies_orders_something(clause, words[0]) or others or _tells_of_another(clause, words[0]):
            continue
        behind = find_masses(_without_per_item(clause[words[0].start :]))
        if len(behind) > 1 and find_grade(clause) is not None:
            # 'Min order 20,000 lb SBS, 10,000 lb CRB' is one a board.
            return None
        least = behind[0] if behind else _right_before(_without_as(clause, words[0]))
        if behind:
            least = times_pieces(clause[words[0].end :], behind[0])
            if least is None:
                return None
        if least is not None:
            found[(least.amounts, least.units)] = least
    return next(iter(found.values())) if len(found) == 1 else None


def _words_for_least(clause: str) -> list[Found[str]]:
    """'Je Sorte fertigen wir ab drei Tonnen' tells a smallest order, and 'rote Ware fertigen wir ab' one of that."""
    first = (
        match
        for match in phrases("minimum_at_first").find(clause)
        if not _says_more(clause[: match.start], "before_a_minimum")
    )
    return phrases("minimum").find(clause) or list(first)


def _tells_of_another(clause: str, said: Found[str]) -> bool:
    """'Last year's minimum was 10 t', 'minimum reduced from 10 t to 5 t', 'forklift of 2 t minimum': of a smallest
    order of today it says nothing for certain."""
    once = phrases("was_once").find(clause) or phrases("lifting").find(clause)
    changed = phrases("least_changed").find(clause) and len(find_masses(clause)) > 1
    for_a_discount = names_discount(clause[: said.start])
    return bool(once) or bool(changed) or for_a_discount or _of_a_piece(clause, said)


def _of_a_piece(clause: str, said: Found[str]) -> bool:
    """'Les bobines pèsent au minimum 400 kg', 'Peso mínimo de bobina 500 kg': what one roll weighs, and not an order of
    rolls; 'Mindestmenge: 2 Rollen, Rollengewicht 650 kg' is one."""
    pieces = any(match.value in _PIECES for match in phrases("bracket").find(clause))
    weighed = [
        match
        for match in phrases("piece_weighs").find(clause)
        if match.start < said.end or not any(sign.isdigit() or sign == "," for sign in clause[said.end : match.start])
    ]
    named = any(match.value == "piece" for match in weighed)
    return bool(weighed) and (pieces or named) and not phrases("order_words").find(clause)


def _denies_orders_something(clause: str, said: Found[str]) -> bool:
    """'No order below 5 t earns a rebate', 'Kein Auftrag unter 5 t wird frei geliefert': smaller orders are taken."""
    refused = bool(phrases("negations").find(clause[said.start : said.end]))
    return refused and (speaks_of_money(clause) or find_delivery(clause) is not None)


def _before_other_lists(clause: str) -> str:
    """'Minimum order 5 ST' of 'Minimum order 5 ST, sheets see separate price list'; in 'Stock by its own list, minimum
    2 t' the list is named first, and the order is one from it."""
    parts = COMMA.split(clause)
    other = next((at for at, part in enumerate(parts) if phrases("other_lists").find(part)), 0)
    return ",".join(parts[:other]) or clause


def _with_unit_behind(clause: str) -> str:
    """'Minimum order (lb): 5,000' -> 'Minimum order: 5,000 lb', as a form has the unit with the label; 'Minimum charge
    (lb)' and 'Minimum stock (lb)' are none of orders, and what 'Minimum order (1,000 lb): 5' counts is not read."""
    said = _LABELLED.fullmatch(clause)
    if said is None:
        return clause
    if any(map(str.isdigit, said["unit"])):
        return said["label"] if find_masses(said["unit"]) else clause
    if phrases("basis").whole(said["unit"]) not in MASS_UNITS:
        return clause
    label = said["label"]
    label = without_words(label, "minimum", "least_labelled")
    if _says_more(label, "refusal_filler"):
        return clause
    return f"{said['label']}: {said['figure']} {said['unit']}"


_LABELLED = re.compile(
    r"(?P<label>[^\d:()\[\]]+?)\s*(?:[(\[](?P<unit>[^()\[\]]{1,12})[)\]])\s*:?\s*(?P<figure>\d[\d.,' ]*)\.?"
)


@lru_cache(maxsize=4096)
def begins_at(text: str) -> Mass | None:
    """The smallest order that a remark on one board names: 'min. 5 t', 'from 500 kg' and nothing else."""
    size = bracket_text(text)
    opens = size is not None and size.end is None and not size.alone and not size.not_weight
    return size.start if size is not None and opens else find_minimum(text)


def _without_as(clause: str, said: Found[str]) -> str:
    """'We make 10,000 lb' of 'We make 10,000 lb as a minimum'; as a minimum of a truck, of what is delivered free, of a
    charge or of what is kept in stock it is no order's."""
    before = clause[: said.start]
    joined = [match for match in phrases("as_a_minimum").find(before) if match.end == len(before.rstrip())]
    if not joined:
        return before
    weight = before[: joined[0].start]
    loaded = any(match.value in (*VEHICLES, *_PIECES) for match in phrases("bracket").find(clause))
    other = loaded or find_delivery(clause) is not None or phrases("charges").find(clause)
    ahead = next(iter(find_masses(weight)), None)
    if other or ahead is None or _says_more(weight[: weight.rfind(ahead.words)], "before_a_minimum"):
        return before
    return before if _says_more(clause[said.end :], "refusal_filler") else weight


def _says_more(words: str, filler: str) -> bool:
    """It has words besides those for orders and those that go without saying around a smallest one."""
    words = without_words(words, filler, "order_words", "ordered", "minimum", "minimum_per")
    return any(map(str.isalnum, words))


def _right_before(text: str) -> Mass | None:
    """The weight that a text ends with: '10,000 lb' of '10,000 lb minimum per item', not 'Truckload = 40,000 lb' or
    'rolls of 1,500 lb'; that of 'Rolls only, 10,000 lb' is no roll's."""
    vehicles = any(match.value in VEHICLES for match in phrases("bracket").find(text))
    if vehicles or any(match.value in _PIECES for match in phrases("bracket").find(COMMA.split(text)[-1])):
        return None
    ahead = find_masses(text)
    return ahead[-1] if ahead and text.rstrip(" (").endswith(ahead[-1].words) else None


@lru_cache(maxsize=8192)
def minimums(text: str) -> tuple[Minimum, ...]:
    """What a note says of smallest orders: one of all boards, or those of the boards it names; () where neither."""
    if not any(phrases(section).find(text) for section in ("minimum", "minimum_at_first", "orders_refused")):
        return ()
    named = [_of_part(part) for clause in clauses(text) for part in COMMA.split(clause)]
    of_boards = tuple(one for one in named if one is not None and one.grades)
    if of_boards:
        return of_boards
    general = find_minimum(text)
    return () if general is None else (Minimum(general),)


def _of_part(part: str) -> Minimum | None:
    masses = find_masses(_without_per_item(part))
    named = find_grade(part)
    least = times_pieces(part, masses[0]) if len(masses) == 1 else None
    return Minimum(least, named.grades if named is not None else ()) if least is not None else None
