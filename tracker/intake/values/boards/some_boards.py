"""The boards that a part of a note is about, however it tells them: by grade or family ('the recycled items'), by what
they measure, by the size of their sheets, by their form, or beside those told before ('all heavier ones', 'others')."""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.boards.boards_meant import ALL_BOARDS, BoardsMeant, MeasureSpan, measures_meant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.notes.rest import Span
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

FAMILIES: dict[str, tuple[str, ...]] = {
    "recycled": ("CRB", "URB"),
    "unbleached": ("CUK", "UUK"),
    "kraft": ("CUK", "UUK"),
    "bleached": ("SBS",),
    "grey": ("URB",),
}
"""What the words for a family mean where no more is said of a board."""


@dataclass(frozen=True, slots=True)
class SomeBoards:
    """`coated`: whether they are, where only this is said. `sizes`: of their sheets. `form`: 'roll' or 'sheet'.
    `beside`: 'others', 'heavier' or 'lighter' than those `told` before. `either`: those of a grade, and those of a
    measure. `rest`: the text without the words for them; `certain`: whether these words tell them for certain, if no
    other word does."""

    boards: BoardsMeant = ALL_BOARDS
    coated: bool | None = None
    sizes: tuple[tuple[Decimal, Decimal], ...] = ()
    form: str = ""
    beside: str = ""
    told: tuple["SomeBoards", ...] = ()
    certain: bool = True
    either: bool = False
    rest: str = field(default="", compare=False)

    @property
    def some(self) -> bool:
        return bool(self.boards.some or self.coated is not None or self.sizes or self.beside)


@lru_cache(maxsize=8192)
def some_boards(text: str) -> SomeBoards | None:
    """The boards that a part of a note names; None where it names none."""
    named = boards_named(text)
    measured = [(span.start, span.stop) for span, _ in measures_meant(text)]
    plain = blanked(text, measured)
    sizes = tuple(dict.fromkeys(size.mm for size in find_sheet_sizes(plain)))
    plain = _without(plain, (size.words for size in find_sheet_sizes(plain)))
    coated, reading, plain = _grades(plain)
    forms = phrases("forms_named").find(plain)
    beside = joined("the_others", "heavier_boards", "lighter_boards").find(plain)
    plain = blanked(plain, (match.span for match in (*forms, *beside)))
    kinds = {match.value for match in forms}
    found = SomeBoards(
        BoardsMeant(reading, named.spans),
        coated,
        sizes,
        kinds.pop() if len(kinds) == 1 else "",
        _BESIDE[beside[0].value] if beside else "",
        certain=len(beside) < 2 and _is_certain(reading, named.spans),
        either=reading is not None and _are_joined(text, measured, plain),
        rest=plain,
    )
    return found if found.some else None


_BESIDE = {"the_others": "others", "heavier_boards": "heavier", "lighter_boards": "lighter"}


def _grades(text: str) -> tuple[bool | None, GradeReading | None, str]:
    """Whether they are coated, where that is all that is said; the grades named; and the text without the words."""
    found = find_grade(text)
    # 'Recycled' is a word of a grade's name where there is one, and so is 'coated'.
    without = text if found is None else _without(text, found.words.split())
    families = phrases("families").find(without if found is not None and found.grades else text)
    grades = tuple(dict.fromkeys(grade for match in families for grade in FAMILIES[match.value]))
    without = blanked(without, (match.span for match in families))
    if found is None:
        return None, (GradeReading(grades, None, "") if grades else None), without
    of_kinds = [grade for kind in found.kinds if kind in FAMILIES for grade in FAMILIES[kind]]
    # The CRB of 'recycled board, coated' is its kind's own; 'SBS and the recycled items' are others beside.
    of_kinds = [] if set(found.grades) & set(of_kinds) else of_kinds
    named = (*found.grades, *grades, *of_kinds)
    without = blanked(without, (match.span for match in phrases("coating").find(without)))
    if not named and found.coated_sides is None:
        return found.coated, None, without
    return None, replace(found, grades=tuple(dict.fromkeys(named))), without


def _are_joined(text: str, measured: list[Span], plain: str) -> bool:
    """'SBS and boards over 390 µm' are two kinds of boards, 'SBS over 390 µm' one."""
    named = [place for place, sign in enumerate(text) if plain[place] != sign and not _within(place, measured)]
    for start, stop in measured:
        before = [place + 1 for place in named if place < start]
        behind = [place for place in named if place >= stop]
        between = (text[before[-1] : start] if before else "", text[stop : behind[0]] if behind else "")
        if any("," in piece or phrases("and_words").find(piece) for piece in between):
            return True
    return False


def _within(place: int, spans: list[Span]) -> bool:
    return any(start <= place < stop for start, stop in spans)


def _without(text: str, pieces: Iterable[str]) -> str:
    for piece in pieces:
        start = text.find(piece) if piece else -1
        if start >= 0:
            text = blanked(text, [(start, start + len(piece))])
    return text


def _is_certain(grade: GradeReading | None, spans: tuple[MeasureSpan, ...]) -> bool:
    """Of 'SBS and CRB 18 pt' and '18 pt, 300 g/m²' it is not told apart which goes with which."""
    several = grade is not None and len(grade.grades) > 1
    both = {True, False} <= {span.of_caliper for span in spans}
    return not (several and spans) and not both
