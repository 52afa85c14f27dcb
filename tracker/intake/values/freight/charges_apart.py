"""A charge with another rate for some boards, or none: 'Energy surcharge $15/ST, $10/ST for CRB', 'Energiezuschlag 2 %,
GD2 frei'. Read as one it would be that board's alone, at the others' rate."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.not_only import not_of_these_only
from tracker.intake.values.figures.numbers import NumberReading, percent
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charge_parts import tells_another_rate
from tracker.intake.values.freight.charges import ChargeWords, find_charges
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.charged_boards import charged_boards
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.words.lists import pattern, phrases, without_words

_BREAK = re.compile(r",\s+|\s*\(|\)\s*")
_JOINT = re.compile(rf"{_BREAK.pattern}|\s+{pattern('range', 'and')}\s+")
"""Between a rate of all boards and one of some: 'Freight is 30 EUR/t and 45 EUR/t for greyboard'."""
_STOPS = " ,;:.()–-="
_NEAR = 10
"""How many times one board's rate another's may be: '$874/ST' behind a surcharge of 15 is a price."""


@dataclass(slots=True)
class _Rate:
    """What a piece says of all boards, and what those behind it say of some."""

    piece: str
    charge: ChargeWords
    excepted: list[str] = field(default_factory=list)
    own: list[str] = field(default_factory=list)

    def texts(self) -> Iterator[str]:
        yield f"{self.piece} except {', '.join(self.excepted)}" if self.excepted else self.piece
        yield from self.own

    def take(self, piece: str) -> bool:
        """Takes what a piece says of some boards; False where it is about something else."""
        return any(self._take(board, rest) for board, rest in _boards_in(piece))

    def _take(self, board: str, rest: str) -> bool:
        bare = _without_names(rest)
        own = without_words(bare, "charge_verbs").strip(_STOPS)
        freed = self.charge.kind is ChargeKind.FREIGHT and _delivers(rest)
        if freed or _is_exempt(bare) or _is_exempt(own):
            self.excepted.append(board)
            self.own.extend([f"{board}: {rest.strip(_STOPS)}"] if freed else [])
            return True
        kinds = {match.value for match in charges_named(rest)} - {ChargeKind.OTHER.value, self.charge.kind.value}
        if kinds or not (self._is_rate(own) or tells_another_rate(own)):
            return False
        self.excepted.extend([board] if not self._is_rate(own) else [])
        self.own.append(f"{board}: {self.charge.label} {own}")
        return True

    def _is_rate(self, words: str) -> bool:
        if percent(words):
            return True
        said = price_text(words)
        known = said is not None and not said.rest and (said.currency is not None or said.basis is not None)
        return known and _first(said.amounts if said is not None else ()) <= _NEAR * _first(self.charge.amounts)


def _is_exempt(bare: str) -> bool:
    """'Frei', 'is free of it', 'von dem … befreit ist'; what is not exempt bears the charge."""
    found = phrases("charge_exempt").find(bare)
    return len(found) == 1 and not rest_of(bare, (found[0].span,), "of_the_charge", "copula", "relative_words")


def boards_freed(piece: str) -> BoardsMeant | None:
    """The boards of which a clause says no more than that they are free of the charge named before."""
    freed = (board for board, rest in _boards_in(piece) if _is_exempt(_without_names(rest)))
    return next((boards_named(board) for board in freed), None)


def charges_apart(text: str) -> tuple[str, ...]:
    """Its texts, each about one rate and the boards that bear it; () where it tells no rates apart."""
    if not phrases("charges").find(text) or not boards_named(text).some or not_of_these_only(text):
        return ()
    found: list[str] = []
    rate: _Rate | None = None
    apart = False
    for piece in _pieces(text):
        if rate is not None and rate.take(piece):
            apart = True
            continue
        apart = apart or (rate is not None and (_says_a_term(piece) or charged_boards(piece) is not None))
        found.extend(rate.texts() if rate is not None else ())
        charge = _charge_in(piece)
        # 'CRB bears no surcharge; energy $25/ST on all' goes on about all of them.
        apart = apart or (charge is not None and bool(phrases("all_of_them").find(piece)) and _named_before(found))
        rate = _Rate(piece, charge) if charge is not None else None
        found.extend(() if rate is not None else (piece,))
    found.extend(rate.texts() if rate is not None else ())
    return tuple(found) if apart else ()


def _named_before(pieces: list[str]) -> bool:
    return bool(pieces) and boards_named(pieces[-1]).some


def _pieces(text: str) -> Iterator[str]:
    """Its clauses, and their parts between commas and brackets behind one that names a charge with its rate."""
    for clause in clauses(text):
        rest = clause
        for match in _JOINT.finditer(clause):
            before, behind = clause[: match.start()], clause[match.end() :].strip(" )")
            if _charge_in(before) is not None and any(_boards_in(_BREAK.split(behind)[0])):
                yield before
                yield from filter(None, map(str.strip, _BREAK.split(behind)))
                rest = ""
                break
        if rest:
            yield rest


def _says_a_term(piece: str) -> bool:
    """'Lead time for GD2 6 weeks' behind a charge says nothing of who bears it."""
    return boards_named(piece).some and any(
        isinstance(one, LeadTime | SaysMinimum | LeastUnread) for one in statements(piece)
    )


def _charge_in(piece: str) -> ChargeWords | None:
    found = find_charges(piece)
    known = len(found) == 1 and bool(found[0].amounts) and not boards_named(piece).some
    return found[0] if known else None


def _boards_in(piece: str) -> Iterator[tuple[str, str]]:
    """The boards that a piece may be about, and what it says of them: 'CRB $10/ST', '$10/ST for CRB', 'not CRB'."""
    words = piece.strip(_STOPS)
    lead = next((match for match in phrases("but_words").find(words) if match.start == 0), None)
    words = words[lead.end :].strip(_STOPS) if lead is not None else words
    board, rest = boards_ahead(_without_lead(words))
    if board:
        yield board, rest
    for match in phrases("about_lines").find(words):
        board, rest = boards_ahead(words[match.end :].strip())
        if board:
            yield board, f"{words[: match.start].strip()} {rest}"
    for match in phrases("charge_exempt").find(words):
        board, rest = boards_ahead(_without_lead(words[match.end :].strip()))
        if board and not rest.strip(_STOPS):
            yield board, words[: match.end]


def _without_lead(words: str) -> str:
    """'Graukarton befreit ist' of 'von dem der Graukarton befreit ist'."""
    for section in ("of_the_charge", "articles"):
        lead = next((match for match in phrases(section).find(words) if match.start == 0), None)
        words = words[lead.end :].lstrip() if lead is not None else words
    return words


def _without_names(rest: str) -> str:
    for match in sorted(charges_named(rest), key=lambda match: -match.start):
        rest = f"{rest[: match.start]} {rest[match.end :]}"
    return " ".join(rest.split()).strip(_STOPS)


def _delivers(rest: str) -> bool:
    said = find_delivery(rest)
    return said is not None and said.delivered is True


def _first(amounts: tuple[NumberReading, ...]) -> float:
    return float(amounts[0].value) if amounts else 0.0
