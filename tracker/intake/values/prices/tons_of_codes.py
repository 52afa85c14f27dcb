"""Which ton is meant for codes that begin or end so: "Ton in items beginning with DOM is the short ton"."""

from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.values.boards.affixed_codes import Affix, affixes_named, items_named
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit


@lru_cache(maxsize=4096)
def tons_of_codes(text: str) -> tuple[tuple[Affix, MassUnit | None], ...]:
    """The ton of codes with an affix, None where more is said than is understood; () where a text tells of none."""
    return tuple(told for clause in clauses(text) for told in _told(clause))


def _told(clause: str) -> Iterable[tuple[Affix, MassUnit | None]]:
    named = affixes_named(clause) if phrases("ton_words").find(clause) else []
    ton = ton_definition(clause) if named else None
    if not named or (ton is None and not phrases("ton_definitions").find(clause)):
        return
    spans = [*((start, end) for _, start, end in named), *items_named(clause)]
    certain = len(named) == 1 and not rest_of(clause, spans, *_AROUND)
    yield from ((affix, ton if certain else None) for affix, _, _ in named)


_AROUND = (
    "ton_words", "ton_definitions", "basis", "copula", "articles", "stands_for", "board_goods", "all_goods", "those_of",
    "relative_words", "code_affixes.verbs",
)  # fmt: skip


def ton_of(codes: Iterable[str], tons: Iterable[tuple[Affix, MassUnit | None]]) -> MassUnit | None:
    """The one ton that is meant in a row with these codes; None where none or several are."""
    tons = tuple(tons)
    meant = {ton for code in codes for affix, ton in tons if affix.fits(code)}
    return meant.pop() if len(meant) == 1 else None
