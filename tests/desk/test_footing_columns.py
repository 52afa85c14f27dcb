"""The prices of many offers at once are the exact ones of each alone."""

import math
from dataclasses import replace
from decimal import Decimal

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.store.making import FULL
from tracker.desk.footing_columns import Measures, footing_columns
from tracker.desk.snapshot import Charges
from tracker.trade.basis import Basis
from tracker.trade.footing import footing
from tracker.trade.offer import Charge, Offer

BASES = [basis.value for basis in Basis]
AMOUNT = st.decimals(min_value="0.01", max_value="20000", places=2)
CHARGE = st.builds(
    lambda price, currency, basis, freight: Charge("x", price, currency if basis else None, basis, freight),
    AMOUNT,
    st.sampled_from(["USD", "EUR"]),
    st.sampled_from([None, *Basis]),
    st.booleans(),
)
OFFER = st.builds(
    lambda price, basis, gsm, sheet, delivered, charges: replace(
        FULL, price=price, basis=basis, grammage_gsm=gsm, sheet_mm=sheet, delivered=delivered, charges=charges
    ),
    AMOUNT,
    st.sampled_from(list(Basis)),
    st.none() | st.decimals(min_value=150, max_value=900, places=3),
    st.none() | st.tuples(*[st.decimals(min_value=100, max_value=2000, places=1)] * 2),
    st.sampled_from([None, True, False]),
    st.lists(CHARGE, max_size=3).map(tuple),
)


def columns_of(offers: list[Offer]) -> list[tuple[float, float, float, float]]:
    def or_nan(value: object) -> float:
        return math.nan if value is None else float(value)

    charges = [(at, charge, offer) for at, offer in enumerate(offers) for charge in offer.charges]
    found = footing_columns(
        np.array([float(offer.price) for offer in offers]),
        np.array([BASES.index(offer.basis.value) for offer in offers], np.int32),
        np.array([-1 if offer.delivered is None else int(offer.delivered) for offer in offers], np.int32),
        Measures(
            np.array([or_nan(offer.grammage_gsm) for offer in offers]),
            np.array(
                [or_nan(offer.sheet_mm and offer.sheet_mm[0] * offer.sheet_mm[1] / 1_000_000) for offer in offers]
            ),
        ),
        Charges(
            np.array([at for at, _, _ in charges], np.int32),
            np.array([float(charge.price) for _, charge, _ in charges], np.float64),
            np.array(
                [-1 if charge.basis is None else BASES.index(charge.basis.value) for _, charge, _ in charges], np.int32
            ),
            np.array([charge.freight for _, charge, _ in charges], np.bool_),
            np.array([charge.currency in (None, offer.currency) for _, charge, offer in charges], np.bool_),
        ),
        BASES,
    )
    return list(zip(found.per_tonne, found.per_msf, found.delivered_per_tonne, found.delivered_per_msf, strict=True))


@settings(max_examples=200, deadline=None)
@given(st.lists(OFFER, min_size=1, max_size=6))
def test_columns_agree_with_exact_footing(offers: list[Offer]) -> None:
    for offer, figures in zip(offers, columns_of(offers), strict=True):
        exact = footing(offer)
        wanted = (exact.per_tonne, exact.per_msf, exact.delivered_per_tonne, exact.delivered_per_msf)
        for figure, fraction in zip(figures, wanted, strict=True):
            if fraction is None:
                assert math.isnan(figure)
            else:
                assert figure == pytest.approx(float(fraction), rel=1e-12)


def test_the_worked_example_of_a_short_ton_with_three_charges() -> None:
    """1,200 per short ton, sheeting 2.50 per cwt, freight 60 per ton, 3.5 % on the base, at 85 lb/MSF: 1,352 per ton
    and 57.46 per MSF (by hand from the definitions of the units)."""
    gsm = Decimal(85) * Decimal("4.8824276364")
    offer = replace(
        FULL,
        price=Decimal(1200),
        grammage_gsm=gsm,
        charges=(
            Charge("Sheeting", Decimal("2.50"), "USD", Basis.CWT),
            Charge("Freight", Decimal(60), "USD", Basis.SHORT_TON, freight=True),
            Charge("Surcharge", Decimal("3.5"), None, None),
        ),
    )
    _, _, per_tonne, per_msf = columns_of([offer])[0]
    assert per_tonne == pytest.approx(1352 / 0.90718474, rel=1e-9)
    assert per_msf == pytest.approx(57.46, rel=1e-9)
