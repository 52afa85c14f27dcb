"""Order sizes that a file gives a name of its own: 'Small lot = under 10,000 lb'."""

import re
from collections.abc import Iterable

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.words.fold import fold

_ENTRY = re.compile(r"\s*(?P<name>[^\d=:]{2,25}?)\s*[=:]\s*(?P<said>[^=:]+)")


def sizes_named(texts: Iterable[str]) -> dict[str, Bracket]:
    """Name, folded -> the size that it stands for; one explained two ways is left out."""
    found: dict[str, Bracket] = {}
    clashing: set[str] = set()
    for entry in (match for text in texts for clause in clauses(text) if (match := _ENTRY.fullmatch(clause))):
        name, size = fold(entry["name"]).strip(), bracket_text(entry["said"].strip(" ."))
        if size is None or size.alone or size.not_weight:
            continue
        if found.setdefault(name, size) != size:
            clashing.add(name)
    return {name: size for name, size in found.items() if name not in clashing}
