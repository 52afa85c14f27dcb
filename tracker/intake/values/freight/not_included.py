"""Parts of a sentence that say once more that a charge comes on top: '…, which is not included in the prices, …'."""

from collections.abc import Iterator

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked


def not_included(part: str) -> bool:
    """'Which is not included in the price', 'in den Tabellenpreisen ist er nicht enthalten', and no more than that."""
    within = list(denied_within(part, "within"))
    return bool(within) and not rest_of(part, (match.span for match in within), *_BESIDE_INCLUDED)


def denied_within(text: str, *meanings: str) -> Iterator[Found[str]]:
    """The 'included' of 'not included': what it is said of comes on top of the prices."""
    return (match for match in phrases("relieved").find(text) if match.value in meanings and denied(text, match))


def without_denied(text: str) -> str:
    """'Energy surcharge $15/ST not included', 'prices do not include 3 % energy surcharge', without the words that free
    nothing of it."""
    within = [match.span for match in denied_within(text, "within", "holds")]
    negations = [match.span for match in phrases("negations").find(text)] if within else []
    return blanked(text, (*within, *negations))


def leads_to_its_amount(part: str) -> bool:
    """'Not included: 46.50 €/t' behind a comma goes on with the charge before it."""
    told, colon, amount = part.partition(":")
    return bool(colon) and not_included(told) and any(map(str.isdigit, amount))


_BESIDE_INCLUDED = (
    "relative_words", "negations", "copula", "price_words", "beside_included", "list_names", "prices_shown", "articles",
)  # fmt: skip


def without_not_included(clause: str) -> str:
    """A clause without such parts behind its first, also amid it: what stands behind goes on with what is before."""
    first, *parts = COMMA.split(clause)
    told = [part for part in parts if not not_included(part)]
    if len(told) == len(parts):
        return clause
    amid = bool(told) and not not_included(parts[-1])
    return f"{first}{''.join(told)}" if amid and len(told) == 1 else ",".join((first, *told))
