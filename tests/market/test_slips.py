import numpy as np
import pytest

from tests.market.making import LIKE, bands_of, offers_of
from tests.trade.quantities_for_tests import price_on
from tracker.market.offers import Settings
from tracker.market.slips import THREE_THOUSAND, SlipKind
from tracker.market.verdicts import judge
from tracker.trade.basis import Basis, BoardMeasure, per_tonne

BAND = bands_of(850.0, 1150.0)
BOARD = BoardMeasure(350, (720, 1020))


def _slip_of(price, basis=Basis.TONNE, settings=None, **last):
    """The slip named for one more offer among eight clean ones, read per tonne as `price`."""
    columns = {name: [plain] * len(LIKE) + [value] for name, (plain, value) in last.items()}
    bases = [list(Basis).index(Basis.TONNE)] * len(LIKE) + [list(Basis).index(basis)]
    offers = offers_of([*LIKE, price], basis=bases, **columns)
    verdicts = judge(offers, BAND, settings or Settings())
    return verdicts.slips.get(len(LIKE))


@pytest.mark.parametrize(
    ("typed", "meant", "factor"),
    [
        (Basis.SHORT_TON, Basis.CWT, 20),
        (Basis.CWT, Basis.SHORT_TON, 20),
        (Basis.LB, Basis.KG, 2.2046),
        (Basis.KG, Basis.LB, 2.2046),
        (Basis.LB, Basis.CWT, 100),
        (Basis.CWT, Basis.LB, 100),
        (Basis.MSF, Basis.THOUSAND_M2, 10.764),
        (Basis.THOUSAND_M2, Basis.MSF, 10.764),
        (Basis.M2, Basis.THOUSAND_M2, 1000),
        (Basis.SHEET, Basis.THOUSAND_SHEETS, 1000),
        (Basis.THOUSAND_SHEETS, Basis.SHEET, 1000),
        (Basis.TONNE, Basis.KG, 1000),
    ],
)
def test_the_basis_that_was_meant_is_named(typed, meant, factor):
    """The figure a vendor means per one basis, read per another, as the tracker's own exact conversions read it."""
    figure = price_on(1010, meant, BOARD)
    slip = _slip_of(float(per_tonne(figure, typed, BOARD)), typed)
    assert (slip.quoted_basis, slip.likely_basis, slip.kind) == (typed, meant, SlipKind.BASIS)
    assert slip.factor == pytest.approx(factor, rel=1e-4)
    assert slip.per_tonne_if_so == pytest.approx(1010)
    assert slip.likely_currency is None


def test_a_price_per_hundredweight_for_one_per_tonne():
    """Ton and short ton part by a tenth, so either may be named for the other; the cwt is sure."""
    slip = _slip_of(1010 * 0.0453592, Basis.TONNE)
    assert slip.likely_basis == Basis.CWT
    assert slip.factor == pytest.approx(22.046, rel=1e-3)


@pytest.mark.parametrize("times", [10, 100, 0.1, 0.01])
def test_a_slipped_decimal_sign(times):
    slip = _slip_of(1010 * times)
    assert (slip.kind, slip.likely_basis) == (SlipKind.DECIMAL, Basis.TONNE)
    assert slip.factor == pytest.approx(max(times, 1 / times))
    assert slip.per_tonne_if_so == pytest.approx(1010)


def test_a_weight_of_3000_square_feet_beside_a_price_per_area():
    slip = _slip_of(1010 / 3, Basis.THOUSAND_M2, grammage_gsm=(350.0, 1050.0))
    assert (slip.kind, slip.likely_basis) == (SlipKind.BASIS_WEIGHT, THREE_THOUSAND)
    assert slip.factor == pytest.approx(3)


def test_a_factor_of_three_is_no_slip_of_a_price_by_weight():
    assert _slip_of(1010 / 3, Basis.TONNE) is None


def _with_crowns(*, crowns_quoted: bool):
    """Eight clean prices in USD, one typed in crowns and called USD, and one of another vendor and grade."""
    sek = 3
    offers = offers_of(
        [*LIKE, 1010 / 0.18, 700.0],
        currency=[0] * 9 + [sek if crowns_quoted else 0],
        grade=[0] * 9 + [1],
    )
    assert offers.currencies[sek] == "SEK"
    return judge(offers, BAND, Settings(rates={"USD": 1.0, "SEK": 0.18})).slips.get(len(LIKE))


def test_another_currency_that_is_quoted_here():
    slip = _with_crowns(crowns_quoted=True)
    assert (slip.kind, slip.likely_basis, slip.likely_currency) == (SlipKind.CURRENCY, Basis.TONNE, "SEK")
    assert slip.per_tonne_if_so == pytest.approx(1010)


def test_a_currency_nobody_quotes_in_is_never_named():
    assert _with_crowns(crowns_quoted=False) is None


def test_a_currency_of_near_worth_counts_only_for_a_vendor_who_uses_it():
    settings = Settings(rates={"USD": 1.0, "GBP": 1.35})
    assert _slip_of(1000 / 1.35, settings=settings) is None
    prices, eur = [*LIKE, 1000 / 1.35, 700.0], 2
    offers = offers_of(prices, vendor=[*range(len(LIKE) + 1), len(LIKE)], currency=[0] * 9 + [eur], grade=[0] * 9 + [1])
    slip = judge(offers, BAND, settings).slips[len(LIKE)]
    assert slip.likely_currency == "GBP"


@pytest.mark.parametrize("times", [1.0, 1.1, 1.4, 0.7, 1.7, 5.0])
def test_what_no_other_reading_explains_has_no_slip(times):
    assert _slip_of(1010 * times) is None


def test_a_tenth_is_no_slip_of_the_ton():
    assert _slip_of(1010 * 1.1023, Basis.SHORT_TON) is None


def test_an_unknown_basis_is_not_guessed_at():
    offers = offers_of([*LIKE, 50.0], basis=[1] * len(LIKE) + [-1])
    verdicts = judge(offers, BAND, Settings())
    assert verdicts.out_of_line[-1]
    assert not verdicts.slip.any()
    assert np.isfinite(verdicts.expected[-1])
