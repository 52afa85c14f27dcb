"""Where a text says that a time is counted from the order: 'after order', 'from the day we have your PO'."""

from collections.abc import Iterator

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def counted_from(text: str) -> list[tuple[int, int]]:
    """Its words as a whole, and in languages whose words for 'of the order' take many forms the words for 'after', for
    how it is taken up and for the order, one behind the other: 'tras la recepción de su pedido'."""
    joined = list(_joined(text))
    whole = (match.span for match in phrases("from_order").find(text))
    # The 'de recibir su pedido' of 'después de recibir su pedido'.
    return joined + [span for span in whole if not any(low < span[1] and span[0] < high for low, high in joined)]


def _joined(text: str) -> Iterator[tuple[int, int]]:
    found = tokens_of(text)
    for after in phrases("counted_after").find(text):
        taken = phrases("order_taken").at(found, after.after)
        order = phrases("the_order").at(found, taken.after if taken is not None else after.after)
        if order is not None:
            yield after.start, order.end


def with_short_forms(text: str) -> str:
    """The text with 'ARO' for each of these, as all languages know it."""
    for start, end in sorted(counted_from(text), reverse=True):
        text = f"{text[:start]}{_SHORT}{text[end:]}"
    return text


_SHORT = "ARO"
