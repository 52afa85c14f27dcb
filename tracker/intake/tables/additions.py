"""Rows of words below a line that adds them to the prices, each read with that line: 'Mautpauschale 4,80 €/t' below
'Hinzu kommen auf alle Sorten:' is a charge by what stands over it, 'Sheeting $60/ST' below 'Optional:' is none.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from tracker.intake.tables.table import Words
from tracker.intake.values.freight.additions_below import (
    Adds,
    additions_behind,
    additions_of,
    adds_to_one_side,
    is_added_for_certain,
    leads_to_included,
    said_as_added,
    words_unread,
)
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.entry_amounts import entry_as_added
from tracker.intake.values.freight.optional_lines import as_optional, leads_to_extras
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import phrases


def with_additions(rows: Iterable[Sequence[Words]]) -> Iterator[Words]:
    """What the rows say. Such a line holds for the rows below it up to a gap behind the first of them, or to one that
    speaks of something else."""
    line, last = "", -1
    for said in rows:
        if not said:
            continue
        row = said[0].row
        ends = last >= 0 and row > last + 1
        entry = None if not line or ends else _entry(said, line)
        if entry is not None:
            last = row
            yield _on_its_side(entry, line)
            continue
        line, last = (said[0].text if len(said) == 1 and _leads(said[0].text) else ""), -1
        for words in said:
            yield from _with_those_behind(words)


def _leads(text: str) -> bool:
    return additions_of(text) is not None or leads_to_extras(text)


def _entry(said: Sequence[Words], line: str) -> Words | None:
    """One row below the line; None where it is no entry of it."""
    label, *others = said
    text = f"{label.text.strip(' :')}: {' '.join(words.text for words in others)}" if others else label.text
    return _as_added(replace(label, text=text), line)


def _as_added(words: Words, line: str) -> Words | None:
    if leads_to_extras(line):
        return replace(words, text=as_optional(words.text, line)) if entry_as_added(words.text, line) else None
    added = entry_as_added(words.text, line)
    entry = said_as_added(added) if added else None
    if entry is not None and leads_to_included(f"{line.strip(' :')}:") and not words_unread(entry.said):
        return replace(words, text=_as_included(entry.name, line.strip(" :")))
    told = statements(words.text)
    charged = any(isinstance(one, ChargeWords) and one.amounts for one in told)
    if charged and (entry is None or is_added_for_certain(entry)):
        return words
    if added:
        return replace(words, text=added)
    # 'Energy surcharge: at cost'.
    named = charges_named(words.text) and (not told or any(isinstance(one, ChargeWords) for one in told))
    always = additions_of(f"{line.strip(' :')}:") is Adds.ALWAYS
    if always and not told and not named and phrases("tax").find(words.text):
        # The 'Sales tax' below 'Prices do not include:', which more may follow.
        return words
    return replace(words, text=_without_amount(words.text, line)) if named and always else None


def _without_amount(name: str, line: str) -> str:
    """'Energy surcharge, added to all prices:', and of 'Freight' below 'Prices do not include:' whichever says so."""
    name, line = name.strip(" .:-•"), line.strip(" :")
    told = (f"{name}, {line}:", f"{line} {name}", f"{name} {line}")
    return next(
        (one for one in told if any(isinstance(said, ChargeWords | Delivery) for said in statements(one))), told[0]
    )


def _as_included(name: str, line: str) -> str:
    """'The prices include freight' and 'freight included in the prices', whatever it comes to."""
    told = (f"{line} {name}", f"{name} {line}")
    return next((one for one in told if any(isinstance(said, Delivery) for said in statements(one))), told[0])


def _with_those_behind(words: Words) -> Iterator[Words]:
    """The entries behind such a line in one cell, each by itself."""
    line, entries = additions_behind(words.text)
    if not entries:
        yield from _names_behind(words) or (words,)
    for entry in entries:
        part = replace(words, text=entry)
        yield _on_its_side(_as_added(part, line) or part, line)


def _names_behind(words: Words) -> tuple[Words, ...]:
    """'Prices do not include: freight, sales tax' as a text for each; () where any of them is no name alone."""
    line, _, rest = words.text.partition(":")
    if not rest.strip() or any(map(str.isdigit, rest)) or statements(words.text):
        return ()
    if additions_of(f"{line.strip()}:") is not Adds.ALWAYS:
        return ()
    told = [_as_added(replace(words, text=name.strip()), line) for name in COMMA.split(rest)]
    entries = tuple(one for one in told if one is not None)
    said = any(statements(one.text) for one in entries)
    return entries if said and len(entries) == len(told) else ()


def _on_its_side(entry: Words, line: str) -> Words:
    """The 'energy 3 %' of 'Added to the above prices: energy 3 %' with what it is added to: it is said of no others."""
    if said_as_added(entry.text) is not None or not adds_to_one_side(line):
        return entry
    return replace(entry, text=f"{line.strip(' :')}: {entry.text}")
