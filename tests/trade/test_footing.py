from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.quantities_for_tests import decimals, grammages, prices, sheets_mm
from tracker.trade.basis import Basis, per_msf, per_tonne
from tracker.trade.footing import Footing, delivered_cost_known, footing
from tracker.trade.offer import Charge, Offer, Source

FREIGHT = Charge("freight", Decimal(60), "USD", Basis.SHORT_TON, freight=True)
ENERGY = Charge("energy", Decimal("3.5"), None, None)


def board(**changes):
    offer = Offer(
        Source("Sheet1", "E5"), price=Decimal(1200), currency="USD", basis=Basis.SHORT_TON, grammage_gsm=Decimal(400)
    )
    return replace(offer, **changes)


any_offer = st.builds(
    lambda price, basis, gsm, sheet: board(price=price, basis=basis, grammage_gsm=gsm, sheet_mm=sheet),
    prices,
    st.sampled_from(Basis),
    grammages,
    sheets_mm,
)


@pytest.mark.parametrize("missing", ["price", "basis"])
def test_without_price_or_basis_nothing_is_known(missing):
    assert footing(board(**{missing: None}, delivered=True)) == Footing(None, None, None, None)


@given(any_offer)
def test_the_price_alone_is_the_basis_converted(offer):
    common = footing(offer)
    assert common.per_tonne == per_tonne(offer.price, offer.basis, offer.measure)
    assert common.per_msf == per_msf(offer.price, offer.basis, offer.measure)


@given(any_offer)
def test_a_delivered_price_without_charges_is_the_delivered_cost(offer):
    common = footing(replace(offer, delivered=True))
    assert (common.delivered_per_tonne, common.delivered_per_msf) == (common.per_tonne, common.per_msf)


@given(any_offer, decimals("0.01", "500", 2), st.sampled_from(Basis), decimals("0", "25", 2))
def test_charges_add_up_the_same_by_weight_and_by_area(offer, freight, basis, percent):
    charges = (Charge("freight", freight, "USD", basis, freight=True), Charge("energy", percent, None, None))
    common = footing(replace(offer, charges=charges))
    area_per_weight = common.per_msf / common.per_tonne
    assert common.delivered_per_msf == common.delivered_per_tonne * area_per_weight
    freight_alone = per_tonne(freight, basis, offer.measure)
    assert common.delivered_per_tonne == common.per_tonne * (1 + Fraction(percent) / 100) + freight_alone


@pytest.mark.parametrize(
    ("changes", "known"),
    [
        ({}, False),
        ({"delivered": False}, False),
        ({"charges": (ENERGY,)}, False),
        ({"delivered": True}, True),
        ({"delivered": True, "charges": (ENERGY,)}, True),
        ({"charges": (FREIGHT, ENERGY)}, True),
        ({"delivered": False, "charges": (FREIGHT,)}, True),
        ({"charges": (replace(FREIGHT, currency="CAD"),)}, False),
        ({"delivered": True, "charges": (Charge("energy", Decimal(9), "EUR", Basis.TONNE),)}, False),
    ],
)
def test_delivered_cost_is_known_only_when_freight_is_in_and_all_is_one_currency(changes, known):
    offer = board(**changes)
    assert delivered_cost_known(offer) is known
    assert (footing(offer).delivered_per_tonne is not None) is known


def test_a_percentage_is_of_the_price_alone_whatever_the_order_of_charges():
    there, back = footing(board(charges=(FREIGHT, ENERGY))), footing(board(charges=(ENERGY, FREIGHT)))
    assert there == back
    assert there.delivered_per_tonne == (1200 + 42 + 60) / Fraction("0.90718474")


def test_a_charge_that_cannot_be_brought_to_weight_leaves_the_delivered_cost_unknown():
    per_sheet = Charge("freight", Decimal(8), "USD", Basis.THOUSAND_SHEETS, freight=True)
    common = footing(board(charges=(per_sheet,)))
    assert common.per_tonne is not None
    assert (common.delivered_per_tonne, common.delivered_per_msf) == (None, None)


def test_an_area_price_without_grammage_still_has_its_delivered_cost_per_area():
    offer = board(
        price=Decimal(48),
        basis=Basis.MSF,
        grammage_gsm=None,
        charges=(Charge("freight", Decimal("1.5"), "USD", Basis.MSF, freight=True),),
    )
    common = footing(offer)
    assert common == Footing(None, Fraction(48), None, Fraction("49.5"))
