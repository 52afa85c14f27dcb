"""A group's grade ends where the sheet says so, and nobody gives boards a grade that the sheet calls unknown."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

HEAD = ["Item", "Caliper pt", "lb/MSF", "Price"]
BEFORE, BEHIND = ["S-14", 14, 56, 915], ["X-16", 16, 66, 640]


def below(*between, title="USD per short ton, FOB warehouse", group="CRB C1S"):
    """The state and grade of a row below these lines, which stand below a group of CRB."""
    first, last = lines([[title], [], HEAD, [group], BEFORE, *([text] for text in between), BEHIND]).values()
    assert (first.state, first.offer.grade) == (State.ACCEPTED, "CRB")
    return last


@pytest.mark.parametrize(
    "line",
    [
        "– end of CRB C1S –", "End of CRB", "CRB C1S ends here", "--- end ---", "Ende der Sorte CRB", "– Ende GD2 –",
        "– fin de GD2 –", "Fin de CRB", "– slut på CRB –",
    ],
)  # fmt: skip
def test_a_group_ends_where_a_line_says_so(line):
    assert (below(line).state, codes(below(line))) == (State.QUESTION, {"grade-unknown"})
    assert below(line, title="CRB list, USD per short ton").state is State.QUESTION
    assert below(line, "SBS C1S").offer.grade == "SBS"


@pytest.mark.parametrize(
    "line",
    [
        "Mixed lots, board not identified", "Various grades", "Unsorted", "Gemischte Posten, Karton nicht bestimmt",
        "Verschiedene Sorten", "Sorte unbekannt", "Lots mélangés", "Qualités diverses", "Carton non identifié",
        "Lotes mezclados", "Calidades varias", "Sin clasificar", "Blandade partier", "Osorterat", "Okänd kvalitet",
    ],
)  # fmt: skip
def test_boards_that_nobody_knows_have_no_grade(line):
    assert (below(line).state, codes(below(line))) == (State.QUESTION, {"grade-unknown"})
    assert below(line, title="CRB list, USD per short ton").state is State.QUESTION
    row = [["USD per short ton"], HEAD, ["CRB C1S"], BEFORE, [line, 16, 66, 640]]
    assert [each.state for each in lines(row).values()] == [State.ACCEPTED, State.QUESTION]


@pytest.mark.parametrize(
    "line",
    [
        "Various sizes", "Verschiedene Formate", "Mixed truckloads", "CRB, various mills", "Fin de série",
        "End of line lots", "Prices until end of June", "Olika format", "Restposten",
    ],
)  # fmt: skip
def test_lines_about_something_else_leave_the_titles_grade(line):
    assert below(line, title="CRB list, USD per short ton").offer.grade == "CRB"
