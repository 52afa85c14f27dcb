"""Units and currencies said of some boards, as they hold for a price of one board."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TypeVar

from tracker.intake.offers.boards.boards_held import BoardPriced
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.prices.settle import Claim
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases

S = TypeVar("S", SaysBasis, SaysCurrency)


def of_board(said: tuple[Said[S], ...], board: BoardPriced) -> Iterable[Said[S]]:
    """Of several units those that are said of a board, else those said of all: 'CUK per tonne, others per short ton'.
    Where its words may mean the board or not, all of them.

    'GC1, reels per tonne, sheets per 1,000' is about forms, and leaves open which of them a row is.
    """
    several = len({_meant(each.value) for each in said}) > 1
    if board.grade is None or not several or any(phrases("forms").find(each.value.words) for each in said):
        return said
    if any(board.is_of(each.value.perhaps, each.value.called) for each in said):
        return said
    own = [each for each in said if board.is_of(each.value.grades, each.value.called)]
    return own or [each for each in said if not (each.value.grades or each.value.perhaps)] or said


def left_open(of_others: list[Claim[str]]) -> Iterator[Claim[str]]:
    """What is said of other boards, as one: 'SBS in USD, CRB in CAD' leaves open in which of both CUK is."""
    values = frozenset[str]().union(*(claim.values for claim in of_others))
    yield from (replace(claim, values=values, excused=True) for claim in of_others[:1])


def is_of_other_boards(said: SaysBasis | SaysCurrency, board: BoardPriced) -> bool:
    """'GD2 in CHF' contradicts nothing that a head says of GC1."""
    meant = board.is_of((*said.grades, *said.perhaps), said.called)
    return board.grade is not None and bool(said.grades or said.perhaps) and not meant


def is_in_doubt(said: SaysBasis | SaysCurrency, board: BoardPriced) -> bool:
    """Whether a unit is said so that it may be that of a board's price or not: 'GD2 can be invoiced in SEK'."""
    return board.is_of(said.perhaps, said.called) and board.grade not in said.grades


def _meant(said: SaysBasis | SaysCurrency) -> frozenset[object]:
    return frozenset(said.basis.bases if isinstance(said, SaysBasis) else said.currency.codes)
