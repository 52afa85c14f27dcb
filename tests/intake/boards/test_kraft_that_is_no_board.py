"""'In Kraft' says that a list holds, and kraft is what rolls are wrapped in: neither is about the kraft boards."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.boards.grade import find_grade


@pytest.mark.parametrize(
    ("terms", "until"),
    [
        ("Diese Preisliste ist in Kraft bis 31.12.2026. Mindestmenge 5 t.", "2026-12-31"),
        ("Mindestmenge 5 t. Die Preise treten am 1.1.2026 in Kraft.", None),
        ("Offerten är i kraft till 31.8.2026. Minsta order 5 000 kg per kvalitet.", "2026-08-31"),
        ("Minimum 5 t. All rolls kraft wrapped.", None),
        ("Minimum 5 t. Bobines emballées kraft.", None),
        ("Mínimo 5 t. Bobinas envueltas en kraft.", None),
    ],
)
def test_what_a_list_is_in_leaves_its_terms_to_all_boards(terms, until):
    (line,) = lines([["Tarnkarton GmbH"], [terms], ["Sorte", "g/m²", "EUR/t"], ["GC1", 230, 1355]]).values()
    assert line.offer.minimum_kg == 5000
    assert line.offer.valid_until == (until and type(line.offer.valid_until).fromisoformat(until))


@pytest.mark.parametrize("board", ["Kraft", "Kraft C1S", "coated kraft", "brown kraft board"])
def test_kraft_by_itself_is_a_kind_of_board(board):
    assert find_grade(board) is not None
