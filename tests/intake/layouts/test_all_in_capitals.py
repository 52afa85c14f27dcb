"""Sheets in capitals throughout, as accounting programs write them."""

import pytest

from tests.intake.sheets import lines

TABLE = [["SORTE", "G/M²", "µM", "EUR/TONNE"], ["GC1", 240, 405, 1320], ["GD2", 300, 400, 860]]


@pytest.mark.parametrize(
    "said",
    [
        "UNE CONTRIBUTION ÉNERGIE DE 4 % DU PRIX EST FACTURÉE EN SUS SUR TOUTES LES SORTES.",
        "TAXES EN SUS. ENERGY SURCHARGE 4 %",
        "A SUS ÓRDENES. RECARGO DE ENERGÍA 4 %",
    ],
)
def test_sus_within_words_is_no_grade(said):
    for line in lines([*TABLE, [], [said]]).values():
        assert [(charge.price, charge.basis) for charge in line.offer.charges] == [(4, None)]


@pytest.mark.parametrize("said", ["SUS 4 % MORE", "SUS: LEAD TIME 5 WEEKS"])
def test_the_grade_stays_one(said):
    assert {line.offer.lead_days for line in lines([*TABLE, [], [said]]).values()} == {None}


def test_a_day_and_month_go_on_behind_their_full_stop():
    (line, *_) = lines([["PREISE FREI HAUS, GÜLTIG VOM 01.06. BIS 31.12.2026"], [], *TABLE]).values()
    assert str(line.offer.valid_until) == "2026-12-31"


@pytest.mark.parametrize("sign", ["(A)", "(a)"])
def test_a_footnotes_letter_may_be_a_capital(sign):
    rows = [
        ["USD per short ton"], ["Board", "pt", f"Wt {sign}", "Price"],
        ["SBS C1S", 10, 205, 1270], ["CRB", 14, 265, 918], [], [f"{sign} grams per square meter"],
    ]  # fmt: skip
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [205, 265]
