"""Currencies and units that a note gives boards by what they measure: 'Prices in USD. 22 pt and up in CAD.'"""

from collections.abc import Iterator

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency


def unit_of_measured(piece: str) -> tuple[str, str]:
    """The boards and what is said of their unit: '22 pt and up' and 'in CAD'; '' and '' where it says more, or less."""
    boards, rest = measures_ahead(piece)
    said = statements(rest) if boards and not boards_named(rest).some else ()
    units = [one for one in said if isinstance(one, SaysCurrency | SaysBasis)]
    return (boards, rest.strip(" :,–-")) if units and len(units) == len(said) else ("", "")


def units_by_measure(text: str) -> tuple[str, ...]:
    """Its texts, each of all boards or of those that it measures; () where none has a unit of its own, or others are
    named beside."""
    pieces = list(_pieces(text))
    own = [bool(unit_of_measured(piece)[0]) for piece in pieces]
    others = (piece for piece, measured in zip(pieces, own, strict=True) if not measured)
    if len(pieces) < 2 or not any(own) or any(boards_named(piece).some for piece in others):
        return ()
    return tuple(pieces)


def _pieces(text: str) -> Iterator[str]:
    for clause in clauses(text):
        begun = ""
        for part in COMMA.split(clause):
            if begun and unit_of_measured(part.strip())[0]:
                yield begun
                begun = part.strip()
            else:
                begun = f"{begun}, {part.strip()}" if begun else part.strip()
        yield begun
