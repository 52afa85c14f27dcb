"""Which board the prices of a list are for, by what a title, the first words of a letter or a note says."""

from dataclasses import replace
from functools import lru_cache

from tracker.intake.values.boards.board_words import names_board_and_price, names_only_board
from tracker.intake.values.boards.coated_lines import coats_some_lines
from tracker.intake.values.boards.grade import GradeReading, find_grade, names_grade
from tracker.intake.values.figures.sheetsize import without_sheet_sizes
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

LONGEST_TITLE = 80
"""Signs of a title; a longer text says more than what the list is called."""


@lru_cache(maxsize=4096)
def board_of_list(text: str, *, note: bool = False) -> GradeReading | None:
    """What a text says of the grade and coating of the prices around it; `note`: it stands below them.

    Of 'Folding boxboard GC1, reels. Prices EUR per tonne, DAP, fixed until 31 December' the first sentence names the
    board. 'Also available in GC2', 'not for SBS' and 'replaces our GD2' name another one.
    """
    if len(text) > LONGEST_TITLE:
        return _read(board_named_first(text))
    whole = find_grade(text)
    if whole is None or not whole.grades:
        return whole
    if note:
        return _read(board_named_first(text))
    others = [clause for clause in clauses(text) if _of_another(clause)]
    said = whole if not others else _read("; ".join(each for each in clauses(text) if each not in others))
    if said is not None and said.coated_sides is not None and coats_some_lines((text,), said.coated_sides):
        # 'All grades coated one side; CRB on both': the first part is not of the board.
        return replace(said, coated_sides=None)
    return said


def board_named_first(text: str) -> str:
    """What the clauses of a long text that name the board say of it: 'GC1, 250 g/m², 405 µm' of 'Faltschachtelkarton
    GC1, 250 g/m², 405 µm, frei Haus, …'."""
    return "; ".join(_named_alone(text))


def _read(text: str) -> GradeReading | None:
    return find_grade(text) if text else None


def _named_alone(text: str) -> list[str]:
    """The clauses that name a board and at the most what its prices are in, or the names that a clause begins with."""
    found = []
    for clause in clauses(text):
        if _of_another(clause):
            continue
        if names_grade(clause) and names_board_and_price(clause):
            found.append(clause)
        elif first := _first_names(clause):
            found.append(first)
    return found


def _first_names(clause: str) -> str:
    """'GC2 Faltschachtelkarton, Rollen' of 'GC2 Faltschachtelkarton, Rollen, Lieferung in 3 Wochen'; '' where the rest
    names a board too: 'GC2, Zuschlag gegen GC1'."""
    named: list[str] = []
    for part in COMMA.split(clause):
        if not names_only_board(without_sheet_sizes(part)):
            break
        named.append(part)
    first = ",".join(named)
    return first if names_grade(first) and not names_grade(clause[len(first) :]) else ""


_CLOSE = 4
"""Words that may stand between 'not' and the grade that it is said of."""


def _of_another(clause: str) -> bool:
    """Whether a clause names a board that the prices around it are not for."""
    reading = find_grade(clause)
    if reading is None or not reading.grades:
        return False
    before, _, behind = clause.partition(reading.words.split()[0])
    if any(charge.label in before for charge in find_charges(clause)):
        # 'Energy surcharge GD2 12 EUR/t' may be one board's among others.
        return True
    # 'GC2, samples on request' is the list's board all the same.
    if phrases("other_boards").find(before) or phrases("other_boards").find(COMMA.split(behind)[0]):
        return True
    near = tokens_of(before)[-_CLOSE:]
    close = before[near[0][1] :] if near else ""
    return any(phrases(section).find(close) for section in ("not_this_board", "exceptions", "replaces"))
