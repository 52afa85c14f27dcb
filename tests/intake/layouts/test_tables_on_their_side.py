"""Tables on their side: a board a column, with titles and terms above that are said of every one."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines


def test_terms_above_a_table_on_its_side_hold_for_every_board():
    rows = [
        ["Quarrybeck Paper Merchants"],
        ["Delivery:", "2 wks"],
        ["Minimum:", "20000 kg per grade"],
        [],
        ["Description", "SBS C2S", "CRB C1S", "GC2 folding boxboard"],
        ["Cal (μm)", 340, 470, 365],
        ["gsm", 260, 350, 215],
        ["Cost\nEUR/MT", 1350, 945, 1175],
    ]
    found = lines(rows)
    assert {(line.offer.from_kg, line.offer.minimum_kg, line.offer.lead_days) for line in found.values()} == {
        (None, Decimal(20000), (14, 14))
    }


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
