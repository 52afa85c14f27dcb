"""Price columns that a note calls by their heads and says to be shown only: 'The Alder Mills and Tarn & Co columns are
what we hear in the market', 'Column Richtpreis dient nur zur Orientierung'."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Columns, Kind
from tracker.intake.columns.priced.in_force import own_words
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.topics import OF_TERMS
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of

Names = Mapping[int, Sequence[str]]
"""The words of the heads of price columns, by column."""


def set_columns_aside_as_told(columns: Columns, notes: Iterable[str]) -> None:
    """Makes list prices of those that a note names and says to be no offer, where others beside them are left."""
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    names = {price.index: _words(own_words(price.column)) for price in offers} if len(offers) > 1 else {}
    told = frozenset(index for note in notes if names for index in _shown_only(note, names))
    if not told or len(told) == len(offers):
        return
    left = [price for price in offers if price.index not in told]
    # Alone, and called a price, it needs nothing to tell it from others.
    explained = len(left) == 1 and left[0].column.role is not None
    columns.prices = tuple(
        price if price not in offers
        else replace(price, kind=Kind.LIST, unexplained=False) if price.index in told
        else replace(price, unexplained=price.unexplained and not explained)
        for price in columns.prices
    )  # fmt: skip


def _shown_only(note: str, names: Names) -> Iterator[int]:
    """The columns that a clause calls so and says to be shown only, or whose next clause says so of 'them'."""
    parts = clauses(note)
    for place, clause in enumerate(parts):
        named = {index: name for index, name in names.items() if name and _place(_words(clause), name) >= 0}
        if not named or any(phrases(section).find(clause) for section in OF_TERMS):
            continue
        by_word = bool(phrases("column_words").find(clause))
        behind = parts[place + 1] if place + 1 < len(parts) else ""
        told = any(by_word or _are_the_subject(clause[: one.start], named) for one in _said_so(clause))
        if told or (by_word and _goes_on_about_them(behind) and next(_said_so(behind), None) is not None):
            yield from named


def _said_so(clause: str) -> Iterator[Found[str]]:
    return (match for match in phrases("shown_only").find(clause) if not denied(clause, match))


def _goes_on_about_them(clause: str) -> bool:
    return any(match.first == 0 and match.value == "alone" for match in phrases("goods_meant").find(clause))


def _are_the_subject(before: str, named: Names) -> bool:
    """Whether nothing but the columns stands before what is said of them: 'Alder Mills and Tarn & Co are', and not
    'Rolls of Alder Mills are'."""
    words = _words(before)
    for name in named.values():
        place = _place(words, name)
        if place < 0:
            return False
        del words[place : place + len(name)]
    return not rest_of(" ".join(words), (), *_AROUND)


_AROUND = ("copula", "articles", "price_words", "range", "shown_only", "stays_there", "only_these")


def _place(words: Sequence[str], name: Sequence[str]) -> int:
    """Where the words of a name stand one behind the other; -1 where they do not."""
    places = range(len(words) - len(name) + 1)
    return next((place for place in places if list(words[place : place + len(name)]) == list(name)), -1)


def _words(text: str) -> list[str]:
    return [word for word, *_ in tokens_of(text) if word.isalnum()]
