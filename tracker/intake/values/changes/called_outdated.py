"""Whether a note calls the prices that it names outdated, or names those above by words that may mean earlier ones:
'Los precios anteriores no incluyen transporte' is said of the prices above it."""

from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.notes.denials import denied
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, tokens_of

_SAID_OF_PRICES = ("copula", "charge_verbs", "relieved", "tax", "tells_of_prices")


def calls_outdated(clause: str) -> bool:
    """'These prices are withdrawn', and 'Precios anteriores' that nothing is said of."""
    named = [match for match in phrases("prices_above").find(clause) if match.value == "earlier"]
    above = [match for match in named if _says_of_them(clause, match)]
    found = phrases("superseded").find(clause)
    return any(not any(one.start <= match.start and match.end <= one.end for one in above) for match in found)


def ends_outdated(clause: str) -> bool:
    """'The CRB prices are superseded', 'Die GD2-Preise sind überholt': what a clause says of prices last; not of a
    surcharge, of an earlier list, or of a day to come."""
    prices = phrases("price_words").find(clause)
    # 'Prices' is what a list may be called as well.
    spans = {price.span for price in prices}
    lists = [match for match in phrases("price_lists").find(clause) if match.span not in spans]
    if lists or any(phrases(section).find(clause) for section in _OF_ELSE):
        return False
    marks = (mark for mark in phrases("superseded").find(clause) if mark.value == "state" and not denied(clause, mark))
    ends = [mark.start for mark in marks if not clause[mark.end :].strip(" .!)*")]
    return any(price.end <= start for price in prices for start in ends)


_OF_ELSE = ("until", "only_if", "will_be_so", "charges", "reductions", "list_names", "replaces")


def _says_of_them(clause: str, name: Found[str]) -> bool:
    """Whether something is said of the prices so named that is said of prices to be paid: 'son netos', 'sin IVA', or
    what comes on top of them. What was so then, 'eran más bajos', is said of earlier ones."""
    behind = tokens_of(clause[name.end :])
    words = [word for word, _, _ in behind]
    if not words or phrases("was_then").find(clause) or clause[name.end :].lstrip().startswith((":", ",", "(")):
        return False
    negated = phrases("negations").at(behind, 0)
    starts = (0, negated.after) if negated is not None else (0,)
    if any(joined(*_SAID_OF_PRICES).at(behind, start) is not None for start in starts):
        return True
    leads = phrases("says_of_prices_above").find(clause[: name.start])
    return any(match.start == 0 for match in leads) and bool(find_charges(clause))
