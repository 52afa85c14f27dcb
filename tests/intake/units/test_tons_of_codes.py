"""Which ton is meant in rows whose items begin or end so, as a note or another sheet defines it."""

import pytest

from tests.intake.sheets import book, grid, read_workbook
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers

_CODES = ("DOM-11", "DOM-12", "EXP-11", "GEN-11")


def _bases(*notes, elsewhere=True, head="USD per ton"):
    rows = [[code, "GD2", 400 + n, 300 + n, 900 + n] for n, code in enumerate(_CODES)]
    table = [["Alder Board Ltd"], ["Code", "Grade", "µm", "g/m²", head], *rows]
    texts = [[note] for note in notes]
    sheets = [grid(table), grid(texts, sheet="Definitions")] if elsewhere else [grid([*table, [], *texts])]
    lines = read_workbook(book(*sheets), Answers({})).lines
    return [line.offer.basis if line.state == "accepted" else None for line in lines]


_SHORT, _TONNE = Basis.SHORT_TON, Basis.TONNE


@pytest.mark.parametrize("elsewhere", [True, False])
@pytest.mark.parametrize(
    "notes",
    [
        ('"Ton" in item numbers that begin with DOM is the short ton of 2,000 lb.',
         '"Ton" in item numbers that begin with EXP is the metric ton of 1,000 kg.'),
        ("Ton in items beginning with DOM means 2,000 lb", "Ton in items beginning with EXP means 1,000 kg"),
        ("Bei Artikeln beginnend mit DOM ist die Tonne 2.000 lb.",
         "Bei Artikeln beginnend mit EXP ist die Tonne 1.000 kg."),
        ("Pour les articles commençant par DOM, la tonne est de 2 000 lb.",
         "Pour les articles commençant par EXP, la tonne est de 1 000 kg."),
        ("Para los artículos que empiezan por DOM la tonelada es de 2.000 lb.",
         "Para los artículos que empiezan por EXP la tonelada es de 1.000 kg."),
        ("I artiklar som börjar på DOM är ton 2 000 lb.", "I artiklar som börjar på EXP är ton 1 000 kg."),
    ],
)  # fmt: skip
def test_each_row_has_the_ton_of_its_item(notes, elsewhere):
    assert _bases(*notes, elsewhere=elsewhere) == [_SHORT, _SHORT, _TONNE, None]


def test_one_that_is_told_of_some_items_is_not_that_of_others():
    assert _bases("Ton in items beginning with DOM means 2,000 lb.") == [_SHORT, _SHORT, None, None]


@pytest.mark.parametrize(
    "note",
    [
        "Ton in items beginning with DOM means 2,000 lb for export.",
        "Minimum in items beginning with DOM is 5 tons of 2,000 lb.",
    ],
)
def test_what_says_more_settles_none(note):
    assert _bases(note) == [None] * 4


def test_a_ton_in_full_is_none_of_these():
    assert _bases("Ton in items beginning with DOM means 2,000 lb.", head="USD per tonne") == [_TONNE] * 4


def test_one_for_all_is_that_of_all():
    assert _bases("Ton means 2,000 lb.") == [_SHORT] * 4
