"""Signs of footnotes that a letter calls by their names: 'rows with a star', 'unless a row carries an asterisk'."""

import re

from tracker.intake.values.notes.note_signs import NOT, SIGN
from tracker.intake.words.lists import phrases

_LEADS = ("marked_with", "without_mark", "unless_signed")
# 'Sofern eine Zeile kein * trägt, …' has its verb behind the sign.
_SIGNED = re.compile(rf"\s*({SIGN})\s*(?:[^\W\d_]+\s*)?,\s*(?P<rest>\S.*)", re.DOTALL)


def with_signs(text: str) -> str:
    """'Rows with a star' as 'Rows with *', only right behind words that say that lines carry it; 'starred items' as
    'marked with * items'."""
    for match in reversed(phrases("starred").find(text)):
        text = f"{text[: match.start]}{match.value}{text[match.end :]}"
    for match in reversed(phrases("sign_names").find(text)):
        before = text[: match.start].rstrip()
        if any(lead.end == len(before) for section in _LEADS for lead in phrases(section).find(before)):
            text = f"{before} {match.value}{text[match.end :]}"
    return text


def but_for_signed(sentence: str) -> str | None:
    """'Unless a row carries *, prices are EUR/t' as the note '[not *] prices are EUR/t'; None for any other."""
    led = next(iter(phrases("unless_signed").find(sentence)), None)
    signed = _SIGNED.match(sentence, led.end) if led is not None and not sentence[: led.start].strip() else None
    return None if signed is None else f"[{NOT}{signed[1]}] {signed['rest']}"


def marks_unseen(text: str) -> bool:
    """'Rows in italics are invoiced in US dollars': which lines that is said of can't be seen."""
    return bool(phrases("marks_unseen").find(text))
