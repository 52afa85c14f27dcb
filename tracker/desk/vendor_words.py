"""What to ask a vendor where its sheet can't settle a question, as words to send; nothing is sent from here."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.trade.offer import Question

_MOST_CELLS = 6


def words_to_vendor(file: str, questions: Sequence[Question]) -> str:
    """A short message in English about a file's open questions, each with its cells and the sheet's own words."""
    told = "\n\n".join(f"{number}. {_asked(question)}" for number, question in enumerate(questions, 1))
    return (
        f"Good day,\n\nin your price list “{file}” the following is not clear to us:\n\n{told}\n\n"
        "Could you tell us what is meant, or send the list again with these cells mended?\n\nThank you."
    )


def _asked(question: Question) -> str:
    cells = [f"{sheet}!{cell}" if sheet else cell for sheet, cell in question.cells]
    more = f" and {len(cells) - _MOST_CELLS} more" if len(cells) > _MOST_CELLS else ""
    where = f"Cell{'s' if len(cells) > 1 else ''} {', '.join(cells[:_MOST_CELLS])}{more}" if cells else ""
    words = f" (“{question.words}”)" if question.words else ""
    return f"{where}{words}: {question.text}" if where else question.text
