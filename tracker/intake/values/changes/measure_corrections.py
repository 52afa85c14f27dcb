"""Notes that correct what a list says of a board: 'CUK is 24 pt, not 20 pt', 'SBS: 280 g/m² statt 300 g/m²', 'GC2 is
C1S, not C2S'."""

import re
from dataclasses import replace
from functools import lru_cache

from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.lines_counted import line_words
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases, without_article

_FIGURE = re.compile(r"\d+(?:[.,]\d+)?")
_STOPS = " ,;:.(–-"


@lru_cache(maxsize=4096)
def printed_wrongly(clause: str) -> BoardsMeant | None:
    """The boards as a list is said to have them wrongly: the CUK of 20 pt of 'CUK is 24 pt, not 20 pt'. A line that has
    it right already is none of them. None where nothing is said of a board, or something of its price or its time."""
    told = [(_by_contrast, said) for said in phrases("instead_of").find(clause)]
    told += [(_by_verb, said) for said in phrases("corrections").find(clause)]
    for read, said in told:
        behind = COMMA.split(clause[said.end :])[0]
        if not _is_of_another(f"{clause[: said.end]}{behind}"):
            boards = read(clause[: said.start], _without_leading(behind))
            if boards is not None:
                return boards
    return None


def _is_of_another(said: str) -> bool:
    """Whether it is of money, times or weights of orders, or of lines by their number."""
    of_orders = counts_time(said) or find_masses(said) or line_words(said)
    return bool(of_orders or find_currencies(said) or find_charges(said))


def _without_leading(behind: str) -> str:
    """The '20 pt' of 'no de 20 pt'."""
    return without_article(behind.lstrip(_STOPS))


def _by_contrast(before: str, behind: str) -> BoardsMeant | None:
    """'24 pt, not 20 pt', 'not 20 pt but 24 pt', '24 pt instead of 20'; 'not below 24 pt' and 'not in 20 pt' are no
    such thing."""
    meant = _measures(before)[-1:] or _measures(behind)[1:2]
    if _FIGURE.match(behind) is not None and meant:
        return _wrong(before or behind, meant[0], _with_unit(behind, meant[0]))
    return _wrong_side(before, behind)


def _by_verb(before: str, behind: str) -> BoardsMeant | None:
    """'CUK 20 pt should read 24 pt'."""
    before = before.rstrip(_STOPS)
    meant, printed = _measures(behind)[:1], _measures(before)[-1:]
    beside = bool(printed) and before.endswith(printed[0].rstrip("."))
    if not (meant and beside and behind.startswith(meant[0])):
        return None
    return _wrong(before, meant[0], printed[0])


def _measures(text: str) -> list[str]:
    """The words of its measures as they stand."""
    found = [reading.words for reading in find_calipers(text)]
    found += [reading.words for reading in find_weights(text)]
    return sorted(dict.fromkeys(found), key=text.find)


def _with_unit(behind: str, meant: str) -> str:
    """The '20' of '24 pt, not 20' with the unit of the other."""
    own = next((words for words in _measures(behind) if behind.startswith(words)), None)
    figure = _FIGURE.match(behind)
    return own or (_FIGURE.sub(figure[0], meant, count=1) if figure is not None else "")


def _wrong(boards: str, meant: str, printed: str) -> BoardsMeant | None:
    grade = boards_named(boards).grade
    right, wrong = boards_named(meant).spans, boards_named(printed).spans
    alike = {span.of_caliper for span in right} & {span.of_caliper for span in wrong}
    if grade is None or not grade.grades or not alike or right == wrong:
        return None
    return BoardsMeant(grade, tuple(span for span in wrong if span.of_caliper in alike))


def _wrong_side(before: str, behind: str) -> BoardsMeant | None:
    """'SBS is C1S, not C2S'."""
    named, wrong = find_grade(before), find_grade(behind)
    if named is None or wrong is None or not named.grades or wrong.grades or not behind.startswith(wrong.words):
        return None
    if wrong.coated_sides is None or named.coated_sides in (None, wrong.coated_sides):
        return None
    return BoardsMeant(replace(named, coated_sides=wrong.coated_sides))
