"""What a file says a vendor's own names stand for: 'Fenlight White = SBS C1S', 'Lindengrau ist ein Graukarton'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.board_words import names_another_board
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.words.lists import pattern, phrases


@dataclass(frozen=True, slots=True)
class LegendEntry:
    """A vendor's own name and what the file says it is."""

    name: str
    grade: GradeReading


_LEGEND = re.compile(r"^\s*(?P<name>[^=:()]{1,60}?)\s*(?:=|:|\s[-–—]\s)\s*(?P<grade>[^=]{2,80})$")
_IN_BRACKETS = re.compile(r"(?P<name>[^,;.=:()]{2,60}?)\s*\((?P<grade>[^()]{2,80})\)")
_PARTS = re.compile(r"[;\n|]|,(?=[^(),;\n|]*[=(])|\.\s")
"""The comma of 'Fenlight White = SBS (GZ), C1S' goes on with what it is; one that a name follows ends it."""


@lru_cache(maxsize=4096)
def legend(text: str) -> tuple[LegendEntry, ...]:
    """The explanations of a vendor's names in a note: 'Fenlight White = SBS C1S, Fenlight Brown = CUK'.

    Only where the explained side names exactly one grade and the name's own side names none.
    """
    entries = []
    label, colon, rest = text.partition(":")
    labelled = rest.count("=") >= _SEVERAL or phrases("legend_labels").whole(label) is not None
    if colon and "=" in rest and "=" not in label and labelled:
        # Whatever a list of several explanations is called, the first name begins behind that.
        text = rest
    for part in (entry for piece in _PARTS.split(text) for entry in entries_side_by_side(piece)):
        for match in (_LEGEND.match(part), _IN_BRACKETS.search(part)):
            entry = None if match is None else _entry(match["name"], match["grade"])
            if entry is not None:
                entries.append(entry)
                break
    return tuple(entries) or tuple(_in_sentences(text))


_NEXT_CODE = re.compile(r"(?:\s{2,}|\s*[|/·•+]\s*)(?=[^\s=:|/]{1,12}\s*=)|\s+(?=[A-Z]{1,4}\s*=)")
_JOINED = re.compile(rf"\s*(?:[|/·•+]|\s{pattern('range', 'and')})\s*$", re.IGNORECASE)


def entries_side_by_side(text: str) -> list[str]:
    """'TN=SHORT TON  CW=CWT (100 LB)', 'PK1 = GC2 | PK2 = GD2': each code with what it is, where only spaces or strokes
    part them; a text with one sign of equality, or a name of several words, as it is."""
    if text.count("=") < _SEVERAL:
        return [text]
    entries = [_JOINED.sub("", entry) for entry in _NEXT_CODE.split(text.strip())]
    return entries if len(entries) == text.count("=") and all(map(str.strip, entries)) else [text]


_SEVERAL = 2


def of_name(name: str, explanation: str) -> tuple[LegendEntry, ...]:
    """What the cell beside a name explains: all of it is about that name, also behind a comma, where it has no other
    name of its own ('100% recycled, clay coated one side (CRB)')."""
    of_others = "=" in explanation or ":" in explanation
    entry = None if of_others else _entry(name, explanation)
    return (entry,) if entry is not None else legend(f"{name} = {explanation}")


_SENTENCES = re.compile(r"[;\n]|\.(?:\s|$)")
_MEMBERS = re.compile(rf",\s|\s{pattern('range', 'and')}\s")
_NAME = r"(?P<name>[^\W\d_a-z][\w'’-]*(?:\s+[^\W\d_a-z][\w'’-]*){0,2})"
_NAMED = re.compile(_NAME + r"\s+(?P<rest>[^\W\d_].*)")


def _in_sentences(text: str) -> Iterator[LegendEntry]:
    """'Lindenblanc ist ein Faltschachtelkarton, Lindengrau ein Graukarton': the verb counts on to the next comma."""
    for sentence in _SENTENCES.split(text):
        if not phrases("copula").find(sentence):
            continue
        for member in _MEMBERS.split(sentence):
            entry = _of_member(member.strip())
            if entry is not None:
                yield entry


def _of_member(member: str) -> LegendEntry | None:
    """A name, then a verb or an article or both, then what the name stands for."""
    match = _NAMED.match(_without_article(member))
    if match is None:
        return None
    rest, led = match["rest"], False
    for section in ("copula", "articles"):
        found = [one for one in phrases(section).find(rest) if one.start == 0]
        if found:
            rest, led = rest[found[0].end :].strip(), True
    return _entry(match["name"], rest) if led else None


def _without_article(text: str) -> str:
    """'Unser Lindenblanc' goes by its own name; the A of 'A1' and of 'A = SBS' is no article."""
    ahead = [match for match in phrases("articles").find(text) if match.start == 0]
    name = text[ahead[0].end :] if ahead else ""
    return name.strip() if name.strip() and not name[:1].isdigit() else text


def _entry(name: str, explanation: str) -> LegendEntry | None:
    name = _without_article(name.strip(" \"'“”*•-"))
    grade = find_grade(explanation)
    own = find_grade(name)
    if (
        grade is None
        or grade.grade is None
        or not name
        or names_another_board(explanation)
        or phrases("legend_labels").whole(name) is not None
        # 'Freight: $40/ST, on SBS only' explains no name.
        or phrases("charges").whole(name) is not None
        or not any(c.isalpha() for c in name)
    ):
        return None
    if own is not None and own.grades:
        return None
    return LegendEntry(name, grade)
