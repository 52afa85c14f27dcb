"""What a board was called before, beside what it is called now: the board offered is the one named now."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (["GC1 Ivory", "GZ, solid bleached board (SBS)", 240, 300, 1495], ["GD2 Extra", "GC2", 250, 405, 1240])


def _grades(heads, order=(0, 1)):
    rows = ([board[order[0]], board[order[1]], *board[2:]] for board in _BOARDS)
    found = lines([["EUR/t, DAP"], [*heads, "g/m²", "µm", "Price"], *rows])
    return [(str(line.state), line.offer.grade) for line in found.values()]


@pytest.mark.parametrize(
    ("former", "current"),
    [
        ("Old name", "Current name"),
        ("Former grade", "Grade"),
        ("Formerly", "Grade"),
        ("Replaces", "Grade"),
        ("Alte Bezeichnung", "Neue Bezeichnung"),
        ("Bisherige Sorte", "Sorte"),
        ("Ersetzt", "Sorte"),
        ("Ancienne désignation", "Désignation actuelle"),
        ("Remplace", "Qualité"),
        ("Denominación anterior", "Denominación actual"),
        ("Sustituye a", "Calidad"),
        ("Tidigare benämning", "Nuvarande benämning"),
        ("Ersätter", "Kvalitet"),
    ],
)
def test_the_former_name_says_nothing_of_the_grade(former, current):
    told = [("accepted", "SBS"), ("accepted", "FBB")]
    assert _grades((former, current)) == told
    assert _grades((current, former), (1, 0)) == told


def test_a_former_name_by_itself_names_the_board():
    rows = ([board[0], *board[2:]] for board in _BOARDS)
    found = lines([["EUR/t, DAP"], ["Old name", "g/m²", "µm", "Price"], *rows])
    assert [line.offer.grade for line in found.values()] == ["FBB", "CRB"]


def test_of_two_names_that_are_both_in_force_it_is_asked():
    assert {state for state, _ in _grades(("Grade", "Description"))} == {"question"}
