"""A price that no board ever cost: asked where its unit was inferred, taken as written where its own row says it."""

from pathlib import Path

import pytest

from tracker.intake.read import read_sheet
from tracker.trade.offer import Answers, NoteCode, State

PLAIN = "vendor,product,grade,coated_sides,caliper_pt,basis_weight_lb_msf,price,currency,basis\n"
UNDER_A_TITLE = "Fenland Board Ltd\nPrices in USD per lb\nBoard,Grade,Caliper pt,lb/MSF,Price\n"


@pytest.mark.parametrize(
    ("text", "state"),
    [
        (f"{PLAIN}Fenland Board,Fen White,SBS,1,18,78,52,USD,lb\n", State.ACCEPTED),
        (f"{PLAIN}Fenland Board,Fen White,SBS,1,18,78,1.20,USD,tonne\n", State.ACCEPTED),
        (f"{UNDER_A_TITLE}Fen White,SBS,18,78,52\nFen Cream,SBS,20,84,53\n", State.QUESTION),
    ],
)
def test_who_says_the_unit_decides(tmp_path: Path, text: str, state: State) -> None:
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    first = read_sheet(path, Answers()).lines[0]
    assert first.state is state
    assert NoteCode.OUTSIDE_USUAL_RANGE in {note.code for note in first.notes}
