"""A legend that stands in two columns: 'PK1 | Faltschachtelkarton GC2' under a table whose rows are called PK1, and
'A | US dollars per short ton' where A stands in their unit cells."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.affixed_codes import affixed_codes
from tracker.intake.values.boards.code_figures import figure_counts_sides, of_letters_and_figure
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.legends import LegendEntry, entries_side_by_side, legend, of_name
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.prices.units_of_codes import BEHIND_THE_CODES, units_of_codes
from tracker.intake.words.fold import fold


@dataclass(frozen=True, slots=True)
class UnitEntry:
    """What the file says one of its unit codes means. `text`: all of the text that says so, as it stands."""

    unit: str
    text: str


def names_in_rows(sheets: Iterable[ReadSheet]) -> Iterator[LegendEntry]:
    """What the file says its own names are, name and explanation in two cells side by side.

    Only a name that stands as it is in some row of a table counts: any other pair of cells explains nothing.
    """
    sheets = tuple(sheets)
    called = frozenset(_called(sheets, Role.PRODUCT, Role.GRADE, Role.ITEM))
    for sheet in sheets:
        for name, explanation in _pairs(sheet):
            if fold(name.text).strip(" :=") in called:
                yield from of_name(name.text.strip(" :="), explanation.text.lstrip(" :="))


def names_with_figures(sheets: Iterable[ReadSheet], legends: Iterable[LegendEntry]) -> Iterator[LegendEntry]:
    """Codes of rows made of a letter and a figure, both of which the file explains: 'W1' by 'W = SBS, K = CUK; figure =
    sides coated'. A letter explained two ways explains nothing."""
    sheets = tuple(sheets)
    if not any(figure_counts_sides(text) for sheet in sheets for text in sheet.all_texts()):
        return
    letters: dict[str, GradeReading] = {}
    clashing: set[str] = set()
    for entry in legends:
        letter = fold(entry.name).strip()
        if letters.setdefault(letter, entry.grade).grades != entry.grade.grades:
            clashing.add(letter)
    letters = {letter: grade for letter, grade in letters.items() if letter not in clashing}
    for code in dict.fromkeys(_called(sheets, Role.PRODUCT, Role.GRADE, Role.ITEM)):
        grade = of_letters_and_figure(code, letters) if len(letters) >= _FEWEST_LETTERS else None
        if grade is not None:
            yield LegendEntry(code, grade)


_FEWEST_LETTERS = 2


def names_by_affix(sheets: Iterable[ReadSheet]) -> Iterator[LegendEntry]:
    """Codes of rows that a text explains by how they begin or end: 'all items are GD2, those ending in K are CUK'."""
    sheets = tuple(sheets)
    texts = dict.fromkeys(text for sheet in sheets for text in sheet.all_texts())
    told = [codes for text in texts if (codes := affixed_codes(text)) is not None]
    for code in dict.fromkeys(_called(sheets, Role.PRODUCT, Role.GRADE, Role.ITEM)) if told else ():
        named = find_grade(code)
        grades = [grade for codes in told if (grade := codes.grade_of(code)) is not None]
        if grades and not (named is not None and named.grades):
            yield from (LegendEntry(code, grade) for grade in grades)


def listed_names(sheets: Iterable[ReadSheet]) -> Iterator[str]:
    """Names in some row that stand, folded, beside words elsewhere in the file, whether these explain them or not."""
    sheets = tuple(sheets)
    called = frozenset(_called(sheets, Role.PRODUCT, Role.GRADE, Role.ITEM))
    for sheet in sheets:
        yield from (name for pair in _pairs(sheet) if (name := fold(pair[0].text).strip(" :=")) in called)


def explaining_texts(sheets: Iterable[ReadSheet]) -> frozenset[str]:
    """The texts that explain names which stand in some row: they say what those boards are, and nothing of others."""
    sheets = tuple(sheets)
    called = frozenset(_called(sheets, Role.PRODUCT, Role.GRADE, Role.ITEM))
    all_called = "\n".join(called)
    found = set()
    for sheet in sheets:
        for words in _loose(sheet):
            names = (fold(entry.name).strip() for entry in legend(words.text))
            # A single letter stands in most words.
            if any(name in (all_called if len(name) > 1 else called) for name in names):
                found.add(words.text)
        for name, explanation in _pairs(sheet):
            if fold(name.text).strip(" :=") in called:
                found.add(explanation.text)
    return frozenset(found)


def unit_codes(sheets: Iterable[ReadSheet]) -> dict[str, UnitEntry]:
    """Code of the unit cells, folded -> the unit that the file says it is; a code explained two ways is left out."""
    sheets = tuple(sheets)
    called = frozenset(_called(sheets, Role.BASIS, Role.CURRENCY))
    money = frozenset(_called(sheets, Role.CURRENCY))
    found: dict[str, UnitEntry] = {}
    clashing: set[str] = set()
    for code, explanation, text in (entry for sheet in sheets for entry in _explanations(sheet)) if called else ():
        if code not in called or not (_says_unit(explanation) or (code in money and _says_currency(explanation))):
            continue
        if code in found and found[code].unit != explanation:
            clashing.add(code)
        found[code] = UnitEntry(explanation, text)
    return {code: entry for code, entry in found.items() if code not in clashing}


def _says_unit(text: str) -> bool:
    unit = price_unit(text)
    return (unit is not None and unit.basis is not None) or basis_text(text) is not None


def _says_currency(text: str) -> bool:
    unit = price_unit(text)
    return unit is not None and unit.currency is not None and unit.basis is None


_PARTS = re.compile(rf"[;\n]|,\s|\.\s+(?=[^\s=:]{{1,12}}\s*[:=])|{BEHIND_THE_CODES.pattern}")
_IN_ONE_TEXT = re.compile(r"\s*(?P<code>[^\s=:]{1,12})\s*(?:=|:|\s[-–—]\s)\s*(?P<unit>[^=:]+)")


def _explanations(sheet: ReadSheet) -> Iterator[tuple[str, str, str]]:
    """Code, explanation and the text that holds the explanation: 'A = USD/ST, B = USD/cwt', or two cells."""
    for name, explanation in _pairs(sheet):
        yield fold(name.text).strip(" :="), explanation.text.lstrip(" :="), explanation.text
    for words in _loose(sheet):
        yield from ((code, unit, words.text) for code, unit in _explained_in(words.text))


def _explained_in(text: str) -> Iterator[tuple[str, str]]:
    for _, code, unit in units_of_codes(text):
        yield code, unit
    parts = _PARTS.split(_without_label(text))
    for part in (entry for piece in parts for entry in entries_side_by_side(piece)):
        found = _IN_ONE_TEXT.fullmatch(part)
        if found is not None:
            unit = found["unit"].strip(" .")
            yield fold(found["code"]).strip(), unit if "(" in unit else unit.rstrip(")")


def is_of_codes(clause: str, text: str) -> bool:
    """Whether a clause of a text that explains units by their codes is about some of these. The 'U.S. dollars.' behind
    'A = per short ton; B = per cwt.' and the 'Prices in US dollars.' before 'M = 1,000 sheets' hold for every code."""
    *entries, behind = BEHIND_THE_CODES.split(text)
    # Where the code stands in the cell before, the text is what it means.
    explains = any(_explained_in(clause)) or not any(_explained_in(text))
    return explains and not (entries and clause in behind)


def _without_label(text: str) -> str:
    """'Sold by: M = 1,000 sheets' without the head of the column whose codes it explains."""
    label, _, rest = text.partition(":")
    return rest if _GIVEN.search(rest) and not _GIVEN.search(label) else text


_GIVEN = re.compile(r"=|\s[-–—]\s")
"""What stands between a code and what it is."""


def _pairs(sheet: ReadSheet) -> Iterator[tuple[Words, Words]]:
    for name, explanation in pairwise(_loose(sheet)):
        if name.row == explanation.row and name.cell.column + 1 == explanation.cell.column:
            yield name, explanation


def _loose(sheet: ReadSheet) -> list[Words]:
    said = [*sheet.found.texts, *(words for read in sheet.tables for words in (*read.table.titles, *read.table.notes))]
    return sorted(dict.fromkeys(said), key=lambda words: (words.row, words.cell.column))


def _called(sheets: Iterable[ReadSheet], *roles: Role) -> Iterator[str]:
    for sheet in sheets:
        for read in sheet.tables:
            for column in read.columns.of(*roles):
                yield from (fold(cell.text).strip() for cell in read.cells(column))
