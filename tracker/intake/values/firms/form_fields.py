"""What stands behind a firm's name on its line: 'Supplier: Ferrowick Board Ltd Completed by: R. Ingle', 'Ferrowick
Board rec'd by e-mail'."""

import re

from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import phrases

_SENTENCE = re.compile(r"\.\s+(?=[^\W\d_])")
_CODE = re.compile(r"(?P<part>[^\W\d_][^\W\d]*(?:[ .-][^\W\d_]+)*\.?)\s+[A-Z]{0,2}\d{2,}\s+(?=[^\W\d_])")


def before_the_next_field(name: str, rest: str) -> str | None:
    """What `rest`, the text behind a label, begins with, up to the next label; None where `name` ends at none."""
    if not rest.strip().removeprefix(name).startswith(":"):
        return None
    fields = [match for match in phrases("company").find(name) if match.value == "signs" and match.first > 0]
    return name[: fields[-1].start].strip() if fields and fields[-1].end == len(name) else name


def first_sentence(name: str) -> str:
    """'Ferrowick Board Ltd' of 'Ferrowick Board Ltd. Freight not included.': what follows says something of the offer,
    as the 'Marlow' of 'St. Marlow Board' does not."""
    for stop in _SENTENCE.finditer(name):
        behind = _SENTENCE.split(name[stop.end() :], maxsplit=1)[0]
        if any(statements(behind)):
            return name[: stop.start()]
    return name


def behind_asides(text: str) -> str:
    """'Verkaufsorganisation 1200 Ruhlsbach Karton AG' without the part of the firm that a system numbers,
    'Freibleibend. Ruhlsbach Karton AG' without the remark."""
    before, stop, name = text.partition(". ")
    if stop and any(phrases(section).whole(before) is not None for section in ("indicative", "marks")):
        text = name.strip()
    code = _CODE.match(text)
    return text[code.end() :] if code is not None and phrases("firm_parts").whole(code["part"]) else text


def without_receipt(name: str) -> str:
    """'Ferrowick Board rec'd by e-mail' without the buyer's note of how or when the offer reached him."""
    notes = [match for match in phrases("receipts").find(name) if match.first > 0]
    return name[: min(match.start for match in notes)].rstrip(" ([,;:–—-") if notes else name
