"""A sheet that says below its table that it no longer holds, beside another that does."""

import pytest

from tests.intake.sheets import book, grid, read_workbook
from tracker.trade.offer import Answers

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def _read(*notes):
    """The states of the lines of sheets 'A', 'B' …, each with one of the notes below its table."""
    sheets = [
        grid([_HEAD, ["GC1", 230, 375, 1240 + 20 * n], ["GD2", 300, 400, 830], [], [note]], sheet=f"List {name}")
        for n, (name, note) in enumerate(zip("ABC", notes, strict=False))
    ]
    lines = read_workbook(book(*sheets), Answers({})).lines
    return {(line.offer.source.sheet[-1], str(line.state)) for line in lines}


_NOW = "In force since 1 June 2026."
_OVER = [
    "This price list is cancelled and replaced by list B.",
    "This list is superseded.",
    "Diese Liste ist aufgehoben.",
    "Ce tarif est annulé et remplacé par le tarif B.",
    "Esta tarifa queda anulada y sustituida por la tarifa B.",
    "Denna prislista är upphävd och ersatt av lista B.",
]


@pytest.mark.parametrize("note", _OVER)
def test_what_it_lists_is_no_offer(note):
    assert _read(note, _NOW) == {("B", "accepted")}


@pytest.mark.parametrize("note", _OVER)
def test_where_every_sheet_says_so_it_is_asked(note):
    assert {state for _, state in _read(note, note)} == {"question"}


@pytest.mark.parametrize(
    "note",
    [
        "This list is not superseded.",
        "This list will be superseded on 1 July 2027.",
        "This list replaces list X, which is cancelled.",
        "Prices valid until superseded.",
        "This offer is void if not accepted within 14 days.",
        "Orders under this list that were cancelled are charged.",
        "* These prices are superseded.",
        "Los precios anteriores incluyen palés.",
    ],
)
def test_what_may_be_meant_otherwise_passes_over_nothing(note):
    assert {sheet for sheet, _ in _read(note, _NOW)} == {"A", "B"}
