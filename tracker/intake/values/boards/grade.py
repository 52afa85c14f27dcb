"""Grades by the trade's names, codes and coatings.

A name the trade does not share stays unknown until a legend explains it.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from itertools import pairwise

from tracker.intake.values.boards.coined_names import surely_meant
from tracker.intake.values.boards.loose_names import Named, without_loose_names
from tracker.intake.values.boards.open_grades import GRADES, by_coating, contradicted
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import nearest_word, words_misspelt
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Phrases, Token, tokens_of


@dataclass(frozen=True, slots=True)
class GradeReading:
    """The grades a text may mean: one is certain, several contradict each other, none is a word that settles nothing.

    `coated_sides`: 0, 1 or 2 only where the text says so. `coated`: it says coated (or uncoated) at all. `words`: the
    names found. `kinds`: what kinds of words that settle nothing alone are among these.
    """

    grades: tuple[str, ...]
    coated_sides: int | None
    words: str
    coated: bool | None = None
    kinds: tuple[str, ...] = ()

    @property
    def grade(self) -> str | None:
        """The one grade, or None."""
        return self.grades[0] if len(self.grades) == 1 else None

    @property
    def tells_board(self) -> bool:
        """A grade or a coating, and not only that something is coated."""
        return bool(self.grades) or self.coated_sides is not None


@cache
def _names() -> Phrases[str]:
    together = {
        grade: tuple(run for name in names for run in _run_together(name)) for grade, names in words("grades").items()
    }
    return Phrases({grade: names + together[grade] for grade, names in words("grades").items()})


def _run_together(name: str) -> Iterator[str]:
    """'whitelined chipboard' and 'claycoated newsback', which would be a chipboard and nothing without their first
    words: words of a name written as one."""
    parts = name.split()
    for place, (word, following) in enumerate(pairwise(parts)):
        if len(word) >= _WHOLE_WORD and len(following) >= _WHOLE_WORD and (word + following).isalpha():
            joined = [*parts[:place], word + following]
            yield " ".join([*joined, *parts[place + 2 :]])
            yield from (" ".join([*joined, rest]) for rest in _run_together(" ".join(parts[place + 2 :])))


_WHOLE_WORD = 4
"""Letters; 'of', 'GC' and 'C1S' are not run together with what stands beside them."""


@cache
def _codes() -> Phrases[str]:
    return phrases("grade_codes")


@lru_cache(maxsize=16384)
def find_grade(text: str) -> GradeReading | None:
    """What a product name, heading, sheet name or header says of grade and coating; None where it says neither.

    'Unbleached kraft' without coated or uncoated gives a reading with no grade: the words are known, the grade is not.
    'Solid bleeched sulfate' is read as it is meant, where it names no grade as it stands.
    """
    found = _spelt_out(tokens_of(_without_rates(text)))
    reading = _read(text, found)
    if reading is not None and reading.grades:
        return _with_meant(reading, _read_as_meant(text, found, short=True))
    mended = [(nearest_word(word, "grades") or word, start, end) for word, start, end in found]
    meant = _read(text, mended) if mended != found and surely_meant(text, found, mended, _names()) else None
    if meant is None or meant.grade is None:
        one_slip = list(_read_as_meant(text, found))
        alike = len({one.grades for one, _ in one_slip}) == 1
        meant = next((one for one, surely in one_slip if surely and alike), None)
    return meant if meant is not None and meant.grade is not None else reading


def _without_rates(text: str) -> str:
    """The 'un 4' of 'cobramos un 4 %' is no 'UN4', and 'GC 2 %' is two percent on all GC. All else keeps its place."""
    return _RATE.sub(lambda match: " " * len(match[0]), text)


_RATE = re.compile(r"(?<=[^\W\d_]\s)\d{1,2}(?:[.,]\d+)?(?=\s?%)")


def _with_meant(reading: GradeReading, meant: Iterable[tuple[GradeReading, bool]]) -> GradeReading:
    """'Coate chipboard' names an uncoated board, and a coated one where a letter is missing: it may be either."""
    others = dict.fromkeys(one.grade for one, _ in meant if one.grade is not None and one.grade not in reading.grades)
    return replace(reading, grades=(*reading.grades, *others), coated_sides=None) if others else reading


def _read_as_meant(text: str, found: Sequence[Token], *, short: bool = False) -> Iterator[tuple[GradeReading, bool]]:
    """What the text says with one of its words as it may be meant, and whether it surely is where nothing else is;
    `short`: a word of four letters may be meant as well, the 'line' of 'White lime chipboard'."""
    for place, (word, start, end) in enumerate(found):
        for meant in words_misspelt(word, "grades", "coating", short=short):
            mended = [*found[:place], (meant, start, end), *found[place + 1 :]]
            reading = _read(text, mended)
            if reading is not None and reading.grades:
                yield reading, surely_meant(text, found, mended, _names())


def names_grade(text: str) -> bool:
    """Whether a text names a grade, be it two of them; a coating or a word that settles nothing names none."""
    reading = find_grade(text)
    return reading is not None and bool(reading.grades)


def _read(text: str, found: Sequence[Token]) -> GradeReading | None:
    sides, coated = _coating(text, found)
    named, unsettled, names = _named(text, found)
    pieces = [one.words for one in names]
    if named and sides is None and coated is not False:
        sides = _sides_counted(text, pieces)
    if unsettled and not named:
        named = by_coating(unsettled, sides, coated)
    named = contradicted(without_loose_names(text, named, names), sides, coated)
    if not named and not unsettled and sides is None and coated is None:
        return None
    return GradeReading(tuple(named), sides, " ".join(pieces), coated, tuple(unsettled))


def _spelt_out(found: Sequence[Token]) -> list[Token]:
    """'Ctd unblchd kraft' in whole words; each keeps its place in the text."""
    short = _short_words()
    return [(short.get(word, word), start, end) for word, start, end in found]


@cache
def _short_words() -> dict[str, str]:
    return {fold(short): fold(whole) for whole, cut in words("cut_short").items() for short in cut}


def _named(text: str, found: Sequence[Token]) -> tuple[list[str], list[str], list[Named]]:
    """Grades named outright, words that settle nothing alone, and all of them as written."""
    named: list[Named] = []
    place = 0
    while place < len(found):
        other = phrases("no_grades").at(found, place)
        if other is not None:
            # 'Die Liste ist in Kraft', 'rolls kraft wrapped'.
            place = other.after
            continue
        match = _names().at(found, place)
        code = _codes().at(found, place)
        if code is not None and (match is None or code.after > match.after):
            match = code if _stands_as_code(text, found, place) else match
        if match is None:
            place += 1
            continue
        words = text[match.start : match.end]
        # 'Folding 250 g/m²' is a grade's name; 'C1S folding' says what a board is for.
        said_too_late = place > 0 and phrases("grades_said_first").whole(words) is not None
        named.append(Named("any_board" if said_too_late else match.value, words, match.start, match.end))
        place = match.after
    meant = dict.fromkeys(one.meant for one in named)
    return [one for one in meant if one in GRADES], [one for one in meant if one not in GRADES], named


def _stands_as_code(text: str, found: Sequence[Token], place: int) -> bool:
    """Two capital letters by themselves, or before a digit or two: 'GT', 'GT 2', not 'gt' and not 'GT' in 'GT 280'."""
    _, start, end = found[place]
    return text[start:end].isupper()


def _coating(text: str, found: Sequence[Token]) -> tuple[int | None, bool | None]:
    said = set(_coatings_named(text, found))
    sides = {int(value) for value in said if value.isdigit()}
    if "face" in said:
        # 'Recto couché' is one side, unless the back is said to be coated too.
        sides.add(2 if "reverse" in said else 1)
    coated = True if said & {"coated", "1", "2", "face", "reverse"} else None
    if sides == {0}:
        return (0, False) if coated is None else (None, None)
    if len(sides) == 1:
        return sides.pop(), True
    return None, (coated if not sides else None)


def _coatings_named(text: str, found: Sequence[Token]) -> Iterator[str]:
    place = 0
    while place < len(found):
        match = phrases("coating").at(found, place)
        if match is None or _out_of_a_code(text, match.start, match.end):
            place += 1
        else:
            yield match.value
            place = match.after


def _out_of_a_code(text: str, start: int, end: int) -> bool:
    """The '2 C' of 'GC2 C1S' is the end of one code and the beginning of the next, and no two sides."""
    cut_before = text[start].isdigit() and text[max(0, start - 1) : start].isalnum()
    return cut_before or (text[end - 1].isalpha() and text[end : end + 1].isdigit())


_SIDES = re.compile(r"(?<![\w.,])([12])[\s-](?P<sides>[^\W\d_]+)")
_BRACKETS = re.compile(r"[()]")
_GOES_ON = re.compile(r"\s+[^\W\d_]")
_UNIT_OR_CODE = re.compile(r"(?:µm|um|g|gsm|pt|mm|g/m[²2]|\S*\d\S*|[,;:(/–—-])$")
"""What may stand right before '1 face' that says not what else one face is: 'kraft frictionné 1 face' is glazed."""


def _sides_counted(text: str, pieces: list[str]) -> int | None:
    """'GC1 1 face', 'GD2 400 µm, 2 caras', 'SBS una cara': behind a grade or a measure the sides counted are those that
    are coated, where written out only at the end of what is said ('una cara gris' is grey)."""
    figures = in_figures(text)
    for found in _SIDES.finditer(figures):
        before = figures[: found.start()].rstrip()
        written = found[0] not in text
        if written and _GOES_ON.match(figures, found.end()):
            continue
        named = _BRACKETS.sub("", before).endswith(tuple(pieces))
        told = not before or named or _UNIT_OR_CODE.search(before)
        if told and phrases("sides_behind").whole(found["sides"]) is not None:
            return int(found[1])
    return None


_COUNT = re.compile(r"\s*([012])(?:\s*[-\s]?\s*(?P<sides>[^\W\d_]+))?\.?\s*")


def coated_count(text: str) -> int | None:
    """How many sides a cell below 'Coating' counts: '1', '2-seitig', 'none'; None for any other text."""
    if phrases("no_coating").whole(text) == "any":
        return 0
    count = _COUNT.fullmatch(text)
    if count is None or (count["sides"] and phrases("side_words").whole(count["sides"]) is None):
        return None
    return int(count[1])
