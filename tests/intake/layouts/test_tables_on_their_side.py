"""A table on its side whose title fills its first row: the title is said of every board, and is no price."""

import pytest

from tests.intake.sheets import lines

BODY = [
    ["Grammage (g/m²)", 200, 220, 250, 280], ["Thickness (µm)", 325, 365, 425, 480],
    ["Price", 1015, 995, 975, 960],
]  # fmt: skip


@pytest.mark.parametrize(
    "title",
    [
        ["Skelby Board Mills plc", "Folding boxboard GC2", "GBP per tonne"],
        ["Folding boxboard GC2 – GBP per tonne", "2026", "list"], ["Folding boxboard GC2, GBP per tonne"],
    ],
)  # fmt: skip
def test_every_price_below_it_is_an_offer_of_its_column(title):
    found = lines([title, *BODY])
    assert set(found) == {"B4", "C4", "D4", "E4"}
    for line in found.values():
        assert (str(line.state), line.offer.currency, line.offer.basis, line.offer.grade) == (
            "accepted", "GBP", "tonne", "FBB",
        )  # fmt: skip
    assert (found["D4"].offer.caliper_um, found["D4"].offer.grammage_gsm) == (425, 250)
