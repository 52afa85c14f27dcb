"""Parts of a sentence that say once more that a charge comes on top: '…, which is not included in the prices, …'."""

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases


def not_included(part: str) -> bool:
    """'Which is not included in the price', 'in den Tabellenpreisen ist er nicht enthalten', and no more than that."""
    within = [match for match in phrases("relieved").find(part) if match.value == "within" and denied(part, match)]
    return bool(within) and not rest_of(part, (match.span for match in within), *_BESIDE_INCLUDED)


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
