import numpy as np
import pytest

from tests.market.making import LIKE, NO_BANDS, bands_of, offers_of
from tracker.market.offers import Settings
from tracker.market.reasons import Wording, reasons
from tracker.market.verdicts import judge
from tracker.trade.basis import Basis

BAND = bands_of(850.0, 1150.0)
WORDING = Wording(
    lambda per_tonne: f"USD {per_tonne:,.0f} per tonne",
    lambda low, high: f"USD {low:,.0f} to {high:,.0f} per tonne",
    lambda per_tonne: f"USD {per_tonne:,.0f}",
)


def _said(offers, offer, bands=BAND, settings=None):
    return reasons(offer, offers, bands, judge(offers, bands, settings or Settings()), WORDING)


def test_a_dear_offer_in_a_buyers_words():
    assert _said(offers_of([*LIKE, 1350.0, 1005.0]), 8) == [
        (
            "USD 1,350 per tonne is 34 % above the going price of USD 1,004, which 9 offers of other vendors for SBS "
            "show at this caliper and order size; USD 881 to 1,144 per tonne is in line."
        ),
        "It lies 17 % above the expected band of SBS, USD 850 to 1,150 per tonne: level given.",
    ]


def test_a_slip_comes_first_and_asks():
    cwt = list(Basis).index(Basis.CWT)
    offers = offers_of([*LIKE, 1005.0 * 20], basis=[1] * 8 + [cwt])
    assert _said(offers, 8)[0] == (
        "Read as written this is USD 20,100 per tonne, 20 times too high; if the figure was meant per short ton and "
        "not per hundredweight (100 lb), it would be USD 1,005 per tonne, as the market is. Which is it?"
    )


def test_a_slipped_decimal_says_how_far():
    said = _said(offers_of([*LIKE, 10.05]), 8)[0]
    assert "100 times too low; with the decimal sign two places over, it would be USD 1,005 per tonne" in said


def test_an_offer_in_line_is_explained_too():
    peers, band = _said(offers_of(LIKE), 0)
    assert peers.endswith("per tonne is in line.")
    assert band == "It lies within the expected band of SBS, USD 850 to 1,150 per tonne: level given."


def test_without_a_caliper_no_caliper_is_spoken_of():
    offers = offers_of([*LIKE, 1350.0, 1005.0], caliper_um=[457.2] * 8 + [np.nan, 457.2])
    assert "for SBS show at this order size; " in _said(offers, 8)[0]


def test_too_few_is_said_with_what_was_judged_by():
    said = _said(offers_of([1000.0, 1010.0, 1500.0]), 2)
    assert said[0].startswith(
        "Only 2 offers of other vendors for SBS, too few to go by alone: the going price rests largely on the expected"
    )
    assert said[0].endswith("per tonne is in line, and USD 1,500 lies outside.")


def test_nobody_to_compare_with():
    assert _said(offers_of([1000.0]), 0, NO_BANDS) == [
        "No other vendor offers SBS, and no market level is set: there is nothing to compare with.",
        "There is no expected band for SBS: no market level is set.",
    ]


def test_a_vendors_own_list_as_accuser():
    alone = offers_of([*LIKE, 1450.0], vendor=[3] * 9)
    assert "it is held against what this vendor itself asks for the grade, USD 8" in _said(alone, 8, NO_BANDS)[0]
    beside_a_dear_one = offers_of([*LIKE, 1190.0, 1010.0], vendor=[3] * 9 + [4])
    said = _said(beside_a_dear_one, 8, bands_of(850.0, 1400.0))
    assert any("With this vendor's other offers counted in, the going price is" in sentence for sentence in said)


def test_a_vendor_whose_whole_list_is_dear():
    offers = offers_of([*LIKE, 1005.0, 1380.0, 1390.0, 1410.0], vendor=[*range(9), 9, 9, 9])
    assert _said(offers, 9)[1] == (
        "3 of the 3 offers of Vendor 9 for SBS are out of line, all dearer: this vendor's level, not this one price."
    )


def test_history_with_its_numbers():
    prices = [1000.0, 1010.0, 990.0, 1200.0, 980.0, 990.0, 970.0, 1000.0]
    offers = offers_of(
        prices,
        vendor=[0, 1, 2, 3] * 2,
        board=[0, 1, 2, 3] * 2,
        received=[737000] * 4 + [736900] * 4,
        shown=[True] * 4 + [False] * 4,
    )
    assert _said(offers, 3)[-1] == (
        "Up 20 % since this vendor's last price for the board, USD 1,000 per tonne on 25 Jul 2018; over the same time "
        "SBS of other vendors is up 2 % (3 boards)."
    )


@pytest.mark.parametrize(
    ("delivered", "said"),
    [
        (
            [1] * 8 + [-1],
            (
                "The sheet says nothing of freight for this price, while of the 9 offers for SBS 8 are delivered; "
                "the comparison makes no allowance for it."
            ),
        ),
        (
            [1] + [-1] * 3 + [0] * 4 + [1],
            (
                "This price is delivered, while of the 9 offers for SBS 4 are without freight and 3 say nothing of "
                "freight (Vendor 1, Vendor 2, Vendor 3); the comparison makes no allowance for it."
            ),
        ),
        (
            [-1] * 7 + [1, 0],
            (
                "This price is without freight, while of the 9 offers for SBS 1 is delivered (Vendor 7) and 7 say "
                "nothing of freight; the comparison makes no allowance for it."
            ),
        ),
    ],
)
def test_what_makes_it_less_certain_comes_last(delivered, said):
    assert _said(offers_of([*LIKE, 1000.0], delivered=delivered), 8)[-1] == said


def test_the_reader_chooses_how_amounts_are_said():
    offers = offers_of([*LIKE, 1350.0])
    per_msf = Wording(
        lambda per_tonne: f"{per_tonne * 0.0325:.2f} a thousand",
        lambda low, high: f"{low * 0.0325:.2f} to {high * 0.0325:.2f} a thousand",
        lambda per_tonne: f"{per_tonne * 0.0325:.2f}",
    )
    assert reasons(8, offers, BAND, judge(offers, BAND, Settings()), per_msf)[0].startswith("43.88 a thousand is 3")


def test_what_is_not_on_offer_has_nothing_said_of_it():
    assert _said(offers_of([*LIKE, np.nan]), 8) == []
