"""Texts that name the part of an offer that they are about: 'Terms for B: …', 'Villkor del 1: …', 'Bobines : …'.

They say nothing of the tables of other parts.
"""

import re
from collections.abc import Sequence

from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.tables_named import parts_by_table
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_MARK = re.compile(r"\s*(?:(?P<word>[^\W\d_]+)\s+)?(?P<mark>[A-Z]|[IVX]{1,4}|\d{1,2})(?:\s*[.):–-]|$)")
"""'A. Folding boxboard', '2) Sheets', 'Del 1: importkartong', 'Lot 3'."""
_NAMED_LAST = re.compile(r"(?P<words>[^\W\d_].*)[\s.](?P<mark>[A-Z]|[IVX]{1,4}|\d{1,2})")
"""'Terms for B', 'Villkor del 1'; a bare 'B' may explain a letter of the table."""
_LONGEST = 40
_MOST_WORDS = 3
_TERMS = frozenset({
    Role.LEAD_TIME, Role.VALIDITY, Role.MINIMUM, Role.DELIVERY_TERMS, Role.PAYMENT, Role.PRICE, Role.CURRENCY,
    Role.FREIGHT, Role.ENERGY, Role.CHARGE, Role.SHEETING, Role.VENDOR, Role.DISCOUNT,
})  # fmt: skip


def of_other_parts(texts: Sequence[Words], read: ReadTable, tables: Sequence[ReadTable]) -> frozenset[Words]:
    """The texts that name another table's part and not this one's."""
    others = [table for table in tables if table is not read]
    if not others or not read.table.titles:
        return frozenset()
    return frozenset(
        words
        for words in texts
        if not _tells_several(words.text, tables)
        and not _is_about(words, read, others)
        and any(_is_about(words, other, [read]) for other in others)
    )


def _tells_several(text: str, tables: Sequence[ReadTable]) -> bool:
    """'Table A: kr = SEK; table B: kr = DKK' says something of each."""
    heads = [piece.partition(":")[0] for piece in _PIECES.split(text) if ":" in piece]
    named = [[place for place, table in enumerate(tables) if _named(head, table)] for head in heads]
    return len({tuple(places) for places in named if len(places) == 1}) > 1 or len(parts_by_table(text)) > 1


_PIECES = re.compile(r"[,;.\n]\s")


def _is_about(words: Words, read: ReadTable, others: Sequence[ReadTable]) -> bool:
    """Whether what stands before a text's colon names this table by its mark or its title, and none of the others."""
    head, colon, _ = words.text.partition(":")
    if not colon or len(head) > _LONGEST or words in read.table.titles:
        return False
    own = _named(head, read)
    return own and not any(_named(head, other) for other in others)


def _named(head: str, read: ReadTable) -> bool:
    titles = [title.text for title in read.table.titles]
    mark = _NAMED_LAST.fullmatch(head.strip())
    if mark is not None:
        named = [
            found for title in titles if (found := _MARK.match(title)) is not None and found["mark"] == mark["mark"]
        ]
        return any(_speaks_of_parts(mark["words"], found["word"] or "") for found in named)
    return _names_no_term(head) and any(f" {_plain(head)} " in f" {_plain(title)} " for title in titles)


def _speaks_of_parts(words: str, own: str) -> bool:
    """'Terms for', 'Villkor del' and the title's own word; 'Note 1' numbers notes and 'Class B' boards."""
    return all(word == own or phrases("part_words").whole(word) is not None for word in re.findall(r"\w+", words))


def _names_no_term(head: str) -> bool:
    """'Bobines', not 'Délai' or 'Preise'."""
    roles = header_roles(head.strip())
    named = bool(roles) and roles[0].role in _TERMS
    return 0 < len(head.split()) <= _MOST_WORDS and not named and not phrases("price_words").find(head)


def _plain(text: str) -> str:
    return " ".join(re.findall(r"\w+", fold(text)))
