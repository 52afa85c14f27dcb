"""Grades that a title block names for tables without a column of boards."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["g/m²", "µm", "EUR/t"]
ROWS = [[250, 405, 1204], [300, 480, 1190]]
LETTER = "Folding boxboard GC1, reels. Prices EUR per tonne, DAP, fixed until 31 December 2027. Minimum 10 tonnes."


def beside(*texts, left="Rollen", right="Bogen 720 x 1020 mm", below=()):
    return lines(
        [
            *([text] for text in texts),
            [],
            [left, None, None, None, None, right],
            [*HEADS, None, None, "g/m²", "µm", "EUR/1000 Bogen"],
            [250, 405, 1204, None, None, 250, 405, 219],
            [300, 480, 1190, None, None, 300, 480, 240],
            *below,
        ]
    )


def test_the_first_sentence_of_a_letter_names_the_board_of_its_table():
    found = lines([[LETTER], [], HEADS, *ROWS])
    assert {(line.offer.grade, str(line.state)) for line in found.values()} == {("FBB", "accepted")}


@pytest.mark.parametrize("text", ["Also available in GC2", "Nicht für SBS", "Remplace GD2", "Finns även i GC2"])
@pytest.mark.parametrize("below", [False, True])
def test_what_names_another_board_does_not(text, below):
    table = [HEADS, *ROWS]
    found = lines([*table, [], [text]] if below else [[text], [], *table])
    assert all("grade-unknown" in codes(line) for line in found.values())


def test_a_title_over_two_tables_beside_each_other_names_the_board_of_both():
    found = beside("GC2 Faltschachtelkarton – Preise frei Haus, gültig bis 31.01.2027")
    assert {(line.offer.grade, str(line.state)) for line in found.values()} == {("FBB", "accepted")}
    assert [found[cell].offer.sheet_mm for cell in ("C5", "H5")] == [None, (720, 1020)]


def test_but_not_where_the_sheet_names_another_board_too():
    found = beside("GC2 Faltschachtelkarton", right="GD2 Bogen 720 x 1020 mm")
    assert found["C5"].offer.grade is None
    assert found["H5"].offer.grade == "CRB"
    assert all(line.offer.grade is None for line in beside("GC2 und GD2").values())
