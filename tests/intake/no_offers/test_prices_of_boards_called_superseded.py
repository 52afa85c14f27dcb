"""Prices of some boards that a note calls superseded are asked about, and contradict no newer ones."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
_OLD = (["SBS", 305, 249, 1232], ["GD2", 400, 300, 820], ["GD2", 457, 350, 812])
_NEW = (["GD2", 400, 300, 845], ["GD2", 457, 350, 836])
_ASKED, _OFFERED = "question", "accepted"


def _states(note, *below):
    return [str(line.state) for line in lines([["Alder Board Ltd"], _HEAD, *_OLD, [], [note], *below]).values()]


_OVER = [
    "The GD2 prices are superseded.",
    "Note: the GD2 prices in the table above are superseded.",
    "GD2 prices no longer apply.",
    "Die GD2-Preise sind überholt.",
    "Les prix du GD2 sont caducs.",
    "Los precios de GD2 quedan sin vigencia.",
    "GD2-priserna är ogiltiga.",
]


@pytest.mark.parametrize("note", _OVER)
def test_they_are_asked_about(note):
    assert _states(note) == [_OFFERED, _ASKED, _ASKED]


@pytest.mark.parametrize(
    "note", ["NOTE: the GD2 prices in the table above are superseded. The GD2 prices below replace them."]
)
def test_what_replaces_them_is_offered(note):
    assert _states(note, [], _HEAD, *_NEW) == [_OFFERED, _ASKED, _ASKED, _OFFERED, _OFFERED]


def test_without_such_a_note_it_is_asked_which_holds():
    assert _states("GD2 once more:", [], _HEAD, *_NEW) == [_OFFERED, *[_ASKED] * 4]


@pytest.mark.parametrize(
    "note",
    [
        "The GD2 prices are not superseded.",
        "The GD2 prices will be superseded on 1 July 2027.",
        "GD2 prices valid until superseded.",
        "GD2: prices of list 13 are superseded.",
        "The energy surcharge on GD2 prices is cancelled.",
    ],
)
def test_what_is_said_of_something_else_leaves_them(note):
    assert _states(note)[1:] == [_OFFERED, _OFFERED]
