"""The names by which notes speak of a table's price columns: of a zone, a place, or the firm that quotes."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TypeVar

from tracker.intake.columns.column import PriceColumn
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.columns_meant import ColumnNames
from tracker.intake.values.notes.ways_named import ways_named
from tracker.intake.words.phrases import tokens_of

_ASIDE = re.compile(r"\s*\([^()]*\)")
_COUNTED = re.compile(r"([^\W\d_]{3,})(?: ([a-z])| ?(\d{1,3}))")
_SHORTEST = 3

Name = tuple[str, ...]


def names_of(offers: Sequence[PriceColumn]) -> ColumnNames:
    """What tells price columns apart: 'Zone 1 (to 250 mi) | Zone 2' by number, 'Delivered Arkham | Delivered Salem' by
    place, 'Pellgate Board | Dunmarrow Mill' by firm. Boards, forms and order sizes are told apart elsewhere."""
    labels = {price.index: _label(price) for price in offers}
    counted = {index: match for index, words in labels.items() if (match := _COUNTED.fullmatch(" ".join(words)))}
    words = {match[1] for match in counted.values()}
    firms = _by_name(
        (name, price.index) for price in offers if price.vendor for name in _of_firm(labels[price.index], labels)
    )
    others = [price.index for price in offers if not price.vendor and price.index not in counted]
    places = _by_name((own, index) for index in others if (own := _of_place(labels[index], labels)))
    numbers = {word: _by_name((m[2] or m[3], index) for index, m in counted.items() if m[1] == word) for word in words}
    return ColumnNames(frozenset(labels), {**places, **firms}, numbers, frozenset(firms))


def names_of_vendors(vendors: Sequence[str]) -> ColumnNames:
    """What tells vendors apart whose names stand in a column, each by its number: 'Pellgate Board' and 'Pellgate'."""
    labels = {number: _words(name) for number, name in enumerate(vendors)}
    firms = _by_name((name, number) for number, label in labels.items() for name in _of_firm(label, labels))
    return ColumnNames(frozenset(labels), firms, firms=frozenset(firms))


K = TypeVar("K")


def _by_name(named: Iterable[tuple[K, int]]) -> dict[K, frozenset[int]]:
    found: dict[K, frozenset[int]] = {}
    for name, index in named:
        found[name] = found.get(name, frozenset()) | {index}
    return found


def _label(price: PriceColumn) -> Name:
    """The words of a price's name, without what stands in brackets; none where another reader knows what they mean."""
    if price.grade is not None or price.caliper is not None or price.weights:
        return ()
    label = _ASIDE.sub("", price.vendor or price.label)
    return _words(label)


def _words(name: str) -> Name:
    return tuple(word for word, *_ in tokens_of(name) if word.isalnum())


def _of_firm(label: Name, labels: Mapping[int, Name]) -> Iterator[Name]:
    """A firm's name, and its first word where no other begins so: 'Pellgate' for 'Pellgate Paperboard'."""
    if label:
        yield label
        alike = {other for other in labels.values() if other[:1] == label[:1]}
        if len(alike) == 1 and len(label[0]) > _SHORTEST:
            yield label[:1]


def _of_place(label: Name, labels: Mapping[int, Name]) -> Name:
    """What a label says that the others do not all say, such as 'delivered'; () where that names a form or a way."""
    own = tuple(word for word in label if not all(word in other for other in labels.values()))
    said = " ".join(own)
    told = own and max(map(len, own)) >= _SHORTEST and own[0].isalpha()
    return own if told and not ways_named(said) and find_delivery(said) is None else ()
