"""By how much a price went up or down, beside the old one and the new one: by its head or the sum, no charge."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role

_BOARDS = [["GC2", 235, 380], ["GC2", 270, 445], ["SBB", 250, 300], ["GD2", 350, 460]]
_NEW, _MOVED = (1240, 1218, 1436, 848), (32, 32, 40, 20)
_SUMS = [new - moved for new, moved in zip(_NEW, _MOVED, strict=True)]
_KRONOR = (13650, 13400, 15800, 9350)


def _charges(head, *, old="Old price", money="SEK", before=_KRONOR, order=(0, 1, 2), new="New price EUR/t"):
    """Of each line the labels and amounts of its charges."""
    columns = [[f"{old} {money}/t", *before], [new, *_NEW], [head, *_MOVED]]
    table = [["Board", "g/m²", "µm"], *_BOARDS]
    rows = [[*row, *(columns[each][place] for each in order)] for place, row in enumerate(table)]
    found = lines([["Ex works"], [], *rows])
    assert {line.offer.price for line in found.values()} == set(_NEW)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return [[(charge.label, charge.price) for charge in line.offer.charges] for line in found.values()]


@pytest.mark.parametrize(
    "head",
    [
        "Change €/t", "Chg. EUR/t", "Incr. EUR/t", "Diff.", "Increase", "+/-", "+/- EUR/t", "± EUR/t", "Δ EUR/t",
        "Änderung", "Preisänd. EUR/t", "Veränd. EUR/t", "Preiserhöhung EUR/t", "Differenz EUR/t",
        "Écart", "Écart EUR/t", "Var. EUR/t", "Évol. EUR/t", "Variación", "Var. €/t", "Dif. EUR/t", "Aum. EUR/t",
        "Ändr. EUR/ton", "Prisändr. EUR/ton", "Skillnad EUR/ton", "Förändr. EUR/ton",
    ],
)  # fmt: skip
def test_a_head_that_names_a_change_heads_no_charge(head):
    assert _charges(head) == [[], [], [], []]


@pytest.mark.parametrize("order", [(0, 1, 2), (1, 0, 2), (0, 2, 1), (2, 0, 1)])
@pytest.mark.parametrize("head", ["Up EUR/t", "Extra EUR/t", "Aufschlag EUR/t", "Surcharge EUR/t", "Energie EUR/t"])
def test_what_old_and_new_prices_differ_by_is_no_charge(head, order):
    assert _charges(head, money="EUR", before=_SUMS, order=order) == [[], [], [], []]


@pytest.mark.parametrize("head", ["Extra EUR/t", "Energy EUR/t", "Skid wrap EUR/t", "Freight EUR/t"])
@pytest.mark.parametrize(("money", "before"), [("EUR", (1200, 1200, 1400, 810)), ("SEK", _KRONOR)])
def test_a_charge_by_its_words_is_charged_where_no_sum_says_otherwise(head, money, before):
    assert [[price for _, price in charges] for charges in _charges(head, money=money, before=before)] == [
        [moved] for moved in _MOVED
    ]


def test_a_small_figure_of_unknown_words_is_open_where_the_old_price_is_in_other_money():
    columns = ["Old price SEK/t", "New price EUR/t", "Up EUR/t"]
    figures = zip(_BOARDS, _KRONOR, _NEW, _MOVED, strict=True)
    rows = [["Board", "g/m²", "µm", *columns], *([*board, *more] for board, *more in figures)]
    for line in lines([["Ex works"], [], *rows]).values():
        assert [charge.price for charge in line.offer.charges] == [0]
        assert "number-ambiguous" in codes(line)


@pytest.mark.parametrize("head", ["Caliper +/- µm", "+/- g/m²", "± µm", "+/- lb/MSF"])
def test_a_tolerance_is_no_change_of_prices(head):
    assert header(head).role is not Role.CHANGE
