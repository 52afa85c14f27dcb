"""A firm's name behind what it is called by beside others: 'Supplier 2: Tarn Kartong AB', 'Bid – Tarn Kartong AB'."""

import re

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_COUNTED = r"(?:\s*(?:#|no\.?|nr\.?|n[º°]\.?)?\s*\d{1,2}|\s+(?:#|no\.?|nr\.?|n[º°]\.?)?\s*[A-Z])"
_BEHIND = re.compile(rf"(?:{_COUNTED})?(?:\s*:\s*|\s+[-–—]\s+|\s*\n\s*|\s+)(?P<name>[^\s:–—-].*)", re.DOTALL)
_NUMBER = re.compile(rf"(?<=\w\w){_COUNTED}$")


def behind_bidder(text: str) -> str | None:
    """What stands behind 'Lieferant', 'Supplier B –' or 'Fournisseur n° 2 :'; None where nothing does."""
    return _behind(text, "who")


def behind_bid(text: str) -> str | None:
    """The same behind 'Bid', 'Angebot 2:' and 'Oferta –', where a text can only be about who makes it: over a price."""
    return _behind(text, "bid")


def without_number(label: str) -> str:
    """'Supplier 2' and 'Vendor A' as 'Supplier' and 'Vendor'."""
    return _NUMBER.sub("", label.rstrip()).rstrip()


def _behind(text: str, kind: str) -> str | None:
    called = phrases("bidders").at(tokens_of(text), 0)
    if called is None or called.value != kind or text[: called.start].strip():
        return None
    behind = _BEHIND.fullmatch(text[called.end :])
    return None if behind is None else behind["name"].strip()
