"""Worked price conversions of the trade, exact.

The results were computed from the definitions of pound, foot and inch with exact fractions, independently of the
tracker. Where an example is printed somewhere, the printed figure stands beside it with its source.
"""

from decimal import Decimal
from fractions import Fraction

import pytest

from tests.trade.quantities_for_tests import price_on
from tracker.trade.basis import Basis, BoardMeasure, area_of, mass_of, per_msf, per_tonne, sheet_area
from tracker.trade.exact import M2_PER_MSF, MM_PER_INCH
from tracker.trade.footing import footing
from tracker.trade.offer import Charge, Offer, Source
from tracker.trade.quantities import MassUnit, WeightUnit, grammage, kilograms, weight_in


def lb_msf(pounds):
    return grammage(pounds, WeightUnit.LB_MSF)


def inches(width, length):
    return width * MM_PER_INCH, length * MM_PER_INCH


def test_1_per_short_ton():
    board = BoardMeasure(lb_msf(78))
    assert per_msf(1150, Basis.SHORT_TON, board) == Fraction("44.85") == Fraction(897, 20)
    yield_msf = area_of(Basis.SHORT_TON, board) / M2_PER_MSF
    assert yield_msf == Fraction(2000, 78)


def test_2_per_tonne():
    board = BoardMeasure(300)
    assert price_on(1050, Basis.THOUSAND_M2, board) == 315
    assert per_msf(1050, Basis.TONNE, board) == Fraction(9145143, 312500)
    assert float(price_on(1050, Basis.SHORT_TON, board)) == pytest.approx(952.543977, abs=5e-7)
    assert float(weight_in(300, WeightUnit.LB_MSF)) == pytest.approx(61.44484309, abs=5e-9)


def test_3_per_cwt_and_a_weight_on_3000_square_feet():
    board = BoardMeasure(grammage(190, WeightUnit.LB_3000FT2))
    price = Decimal("62.50")
    tonne = per_tonne(price, Basis.CWT, board)
    assert price_on(tonne, Basis.LB, board) == Fraction("0.625")
    assert price_on(tonne, Basis.SHORT_TON, board) == 1250
    assert per_msf(price, Basis.CWT, board) == Fraction(475, 12)
    assert float(tonne) == pytest.approx(1377.889139, abs=5e-7)
    assert float(board.grammage_gsm) == pytest.approx(309.220417, abs=5e-7)
    assert float(price_on(tonne, Basis.THOUSAND_M2, board)) == pytest.approx(426.071454, abs=5e-7)


def test_4_per_thousand_sheets_in_inches():
    board = BoardMeasure(lb_msf(95), inches(28, 40))
    assert area_of(Basis.THOUSAND_SHEETS, board) / M2_PER_MSF == Fraction(70, 9)
    assert per_msf(412, Basis.THOUSAND_SHEETS, board) == Fraction(1854, 35)
    tonne = per_tonne(412, Basis.THOUSAND_SHEETS, board)
    assert price_on(tonne, Basis.SHORT_TON, board) == Fraction(148320, 133)
    assert price_on(tonne, Basis.CWT, board) == Fraction(148320, 133) / 20
    assert mass_of(Basis.THOUSAND_SHEETS, board) / kilograms(1, MassUnit.LB) == Fraction(6650, 9)
    assert float(tonne) == pytest.approx(1229.284313, abs=5e-7)


def test_5_per_thousand_sheets_in_millimetres():
    board = BoardMeasure(350, (720, 1020))
    assert 1000 * sheet_area((720, 1020)) == Fraction("734.4")
    assert mass_of(Basis.THOUSAND_SHEETS, board) == Fraction("257.04")
    assert per_tonne(210, Basis.THOUSAND_SHEETS, board) == Fraction(125000, 153)
    tonne = per_tonne(210, Basis.THOUSAND_SHEETS, board)
    assert float(price_on(tonne, Basis.THOUSAND_M2, board)) == pytest.approx(285.947712, abs=5e-7)
    assert float(per_msf(210, Basis.THOUSAND_SHEETS, board)) == pytest.approx(26.565412, abs=5e-7)


def test_6_per_square_metre_in_another_currency():
    board, dollars = BoardMeasure(250), Decimal("0.42") * Decimal("1.27")
    assert per_msf(dollars, Basis.M2, board) == Fraction(387144387, 7812500)
    tonne = per_tonne(dollars, Basis.M2, board)
    assert tonne == Fraction("2133.60")
    assert price_on(tonne, Basis.THOUSAND_M2, board) == Fraction("533.40")
    assert float(price_on(tonne, Basis.SHORT_TON, board)) == pytest.approx(1935.569361, abs=5e-7)


@pytest.mark.parametrize(
    ("per_ton", "pounds", "exact", "printed_price", "printed_yield"),
    [(530, 42, "11.13", "11.13", "47.62"), (555, 35, "9.7125", "9.71", "57.14")],
)
def test_7_dearer_by_the_ton_is_cheaper_by_the_area(per_ton, pounds, exact, printed_price, printed_yield):
    """Printed in the industry paper 'Paper 101: Basis Weight'."""
    board = BoardMeasure(lb_msf(pounds))
    price = per_msf(per_ton, Basis.SHORT_TON, board)
    assert price == Fraction(exact)
    assert f"{float(price):.2f}" == printed_price
    assert f"{float(area_of(Basis.SHORT_TON, board) / M2_PER_MSF):.2f}" == printed_yield


def test_8_per_pound_of_a_book_paper_size():
    """A trade page prints $12.3120 for this one: it rounds on the way, which is worth 0.03 %."""
    ream_area = 500 * sheet_area(inches(25, 38))
    board = BoardMeasure(kilograms(70, MassUnit.LB) * 1000 / ream_area)
    ours = per_msf(Decimal("0.58"), Basis.LB, board)
    assert float(ours) == pytest.approx(12.3082105, abs=5e-8)
    assert float(ours) == pytest.approx(12.3120, rel=4e-4)


def test_9_price_with_its_charges():
    sheeting = Charge("sheeting", Decimal("2.50"), "USD", Basis.CWT)
    freight = Charge("freight", Decimal(60), "USD", Basis.SHORT_TON, freight=True)
    surcharge = Charge("surcharge", Decimal("3.5"), None, None)
    offer = Offer(
        Source("", "E2"),
        price=Decimal(1200),
        currency="USD",
        basis=Basis.SHORT_TON,
        charges=(sheeting, freight, surcharge),
    )
    common = footing(offer)
    assert common.delivered_per_tonne == 1352 / Fraction("0.90718474")
    assert float(common.delivered_per_tonne) == pytest.approx(1490.324892, abs=5e-7)
    assert per_msf(1352, Basis.SHORT_TON, BoardMeasure(lb_msf(85))) == Fraction("57.46")


def test_10_a_cover_paper_by_the_pound():
    ream_area = 500 * sheet_area(inches(20, 26))
    board = BoardMeasure(kilograms(100, MassUnit.LB) * 1000 / ream_area)
    assert float(board.grammage_gsm) == pytest.approx(270.411377, abs=5e-7)
    assert float(per_msf(Decimal("0.95"), Basis.LB, board)) == pytest.approx(52.615385, abs=5e-7)


@pytest.mark.parametrize(
    ("ton", "per_1000_kg"),
    [(MassUnit.SHORT_TON, 1102.31), (MassUnit.TONNE, 1000.0), (MassUnit.LONG_TON, 984.21)],
)
def test_11_one_number_per_ton_reads_three_ways(ton, per_1000_kg):
    """Twelve per cent lie between them, which is why a bare 'ton' is asked about."""
    assert round(float(1000 * 1000 / kilograms(1, ton)), 2) == per_1000_kg


def test_12_a_minimum_order_as_an_area():
    board = BoardMeasure(lb_msf(85))
    pounds = area_of(Basis.LB, board) * 40_000 / M2_PER_MSF
    assert float(pounds) == pytest.approx(470.588235, abs=5e-7)
    assert float(area_of(Basis.TONNE, board) * 20 / M2_PER_MSF) == pytest.approx(518.734735, abs=5e-7)


def test_13_a_vendor_whose_two_weights_disagree():
    assert float(63 / weight_in(300, WeightUnit.LB_MSF) - 1) == pytest.approx(0.0253, abs=5e-5)


def test_weight_of_a_thousand_sheets():
    """A trade page's 'M weight': chipboard of 30 × 48 in at 85 lb/MSF weighs 850 lb per 1,000 sheets."""
    board = BoardMeasure(lb_msf(85), inches(30, 48))
    assert mass_of(Basis.THOUSAND_SHEETS, board) == kilograms(850, MassUnit.LB)
