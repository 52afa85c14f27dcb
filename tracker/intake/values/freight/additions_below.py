"""Lines that say that what follows comes on top of the prices, 'Added to every item above:', 'Hinzu kommen auf alle
Sorten:', and what stands below or behind them: there every name with an amount is a charge, whatever it is called.
"""

import re
from collections.abc import Iterator
from functools import lru_cache
from itertools import chain

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charge_parts import PARTS
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_LONGEST = 80
_SAYING_NO_MORE = ("charges", "charge_filler", "all_of_them", "price_words", "every_board", "adds_to_prices")
_OF_SOME = ("optional", "small_orders", "only_if", "exceptions")


@lru_cache(maxsize=4096)
def leads_to_additions(line: str) -> bool:
    """Whether a line says no more than that what follows is added to the prices. 'Freight, add to all prices:' leads to
    freights, and 'Extras:' to what a buyer may do without."""
    text = without_sign(line).strip()
    if not text or len(text) > _LONGEST or any(map(str.isdigit, text)):
        return False
    adds = phrases("leads_to_additions").find(text)
    if not adds or not (text.endswith(":") or phrases("all_of_them").find(text)):
        return False
    if any(found.value != ChargeKind.OTHER for found in charges_named(text)):
        return False
    return not any(phrases(section).find(text) for section in _OF_SOME) and says_no_more_than_that(text)


def says_no_more_than_that(title: str) -> bool:
    """Whether every word of a title is of charges, of all boards, of prices, or one that adds to them."""
    sections = (*_SAYING_NO_MORE, "leads_to_additions")
    spans = (found.span for found in chain.from_iterable(phrases(section).find(title) for section in sections))
    return not any(map(str.isalpha, blanked(title, spans)))


def additions_behind(text: str) -> tuple[str, list[str]]:
    """Such a line and the entries behind its colon: 'Hinzu kommen: Energie 6 %, Maut 4 €/t'; none for other texts."""
    line, colon, rest = text.partition(":")
    if not rest.strip() or not leads_to_additions(f"{line}{colon}"):
        return "", []
    parts = (part.strip(" .;-–•") for one in re.split(r"[\n;]", rest) for part in PARTS.split(one))
    return line, [part for part in parts if part]


def entry_as_added(entry: str, line: str) -> str:
    """'Mautpauschale 4,80 €/t' with the line that it stands below, as one would write them in a line; '' where no
    amount of money and no share of the price stands in it."""
    amounts = [*_priced(entry), *(found.span() for found in _SHARE.finditer(entry))]
    if not amounts:
        return ""
    start = min(min(amounts)[0], *(found.start() for found in _FIGURE.finditer(entry)))
    name, rest = entry[:start].strip(_AROUND), entry[start:]
    if not name:
        # '4,80 €/t Maut'.
        end = max(end for begins, end in amounts if begins == min(amounts)[0])
        name, rest = entry[end:].strip(_AROUND), entry[start:end]
    return f"{name}: {rest.strip()}, {line.strip(' :')}:" if name else ""


_AROUND = " :=–—-+•*()"
_SHARE = re.compile(r"\d+(?:[.,]\d+)?\s*%")
_FIGURE = re.compile(r"(?<![^\W_])\d")
"""One that no letter stands before: not that of 'CO2'."""


def _priced(entry: str) -> Iterator[tuple[int, int]]:
    return ((start, end) for _, start, end, _ in prices_within(entry, unit=False))


def said_as_added(clause: str) -> tuple[str, str] | None:
    """The name and the amount of an entry that stands before such a line: those of 'Maut: 4 €/t, Hinzu kommen:'."""
    entry, comma, line = clause.rpartition(", ")
    name, colon, amount = entry.partition(":")
    return (name.strip(), amount.strip()) if comma and colon and leads_to_additions(line) else None


def words_beside_amount(amount: str) -> str:
    """What is left of an amount without figures, units and the words that change nothing of it."""
    spans = [*_priced(amount), *(share.span() for share in _SHARE.finditer(amount))]
    spans += [found.span for section in (*_SAYING_NO_MORE, "share_of") for found in phrases(section).find(amount)]
    return "".join(filter(str.isalnum, blanked(amount, spans)))
