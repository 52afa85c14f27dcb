"""The vendors that were ever asked or quoted, and which of them a name that was typed means."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher
from functools import cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


@dataclass(frozen=True, slots=True)
class VendorMeant:
    """Whom a typed name means. `name` is the known vendor's where `known`, else as typed; `close`: known vendors whose
    names are so like a new one that it may be a slip."""

    name: str
    known: bool
    close: tuple[str, ...] = ()


def vendors(desk: Desk) -> tuple[str, ...]:
    """Names in the order of the alphabet, whatever their capitals."""
    from tracker.store import vendors as kept

    with desk.store.reading() as connection:
        return tuple(sorted(kept.names(connection).values(), key=str.casefold))


def vendor_meant(typed: str, known: Sequence[str]) -> VendorMeant:
    """Which known vendor a name means: the one it names but for capitals, punctuation and legal form.

    Where two known vendors would fit, or none quite does, the name is taken as it stands and those like it are named.
    """
    name = " ".join(typed.split())
    exact = [each for each in known if each.casefold() == name.casefold()]
    alike = exact or [each for each in known if _core(each) == _core(name)]
    if len(alike) == 1:
        return VendorMeant(alike[0], True)
    return VendorMeant(name, False, tuple(alike or (each for each in known if _is_close(_core(each), _core(name)))))


_ALIKE = 0.85
"""One letter in seven or so is another: a slip of the hand, seldom another firm (our choice, assumed)."""


def _is_close(one: tuple[str, ...], other: tuple[str, ...]) -> bool:
    shorter, longer = sorted((one, other), key=len)
    if shorter and shorter == longer[: len(shorter)]:
        return True
    return SequenceMatcher(None, " ".join(one), " ".join(other)).ratio() >= _ALIKE


def _core(name: str) -> tuple[str, ...]:
    """A name's words without the legal forms at its end: 'Ferrowick Mills, L.L.C.' is ferrowick mills."""
    words = _words(name)
    end = len(words)
    while end > 1 and words[end - 1] in _legal_words():
        end -= 1
    return words[:end]


def _words(name: str) -> tuple[str, ...]:
    return tuple(re.findall(r"\w+", name.casefold().replace(".", "").replace("'", "")))


@cache
def _legal_words() -> frozenset[str]:
    """As the word lists for reading sheets have them, so that a form added there is known here."""
    from tracker.intake.words.lists import words

    return frozenset(word for form in words("company").get("legal", ()) for word in _words(form))
