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


SPACED = [
    (("Item", "Grade", "Basis weight (g/m²)", "Caliper (µm)", "Net price", "Unit"), "EUR per tonne"),
    (
        ("Position", "Sorte", "Flächengewicht (g/m²)", "Dicke (µm)", "Angebotspreis netto", "Preiseinheit"),
        "EUR je Tonne",
    ),
    (("Poste", "Qualité", "Grammage (g/m²)", "Épaisseur (µm)", "Prix net", "Unité de prix"), "EUR par tonne"),
    (("Posición", "Calidad", "Gramaje (g/m²)", "Espesor (µm)", "Precio neto", "Unidad"), "EUR por tonelada"),
    (("Pos", "Kvalitet", "Ytvikt (g/m²)", "Tjocklek (µm)", "Nettopris", "Enhet"), "EUR per ton"),
]


@pytest.mark.parametrize(("labels", "unit"), SPACED)
def test_empty_columns_may_part_the_boards(labels, unit):
    columns = [(1, "GC1", 250, 400, 1214, unit), (2, "GC2", 235, 380, 1166, unit), (3, "GD2", 300, 390, 795, unit)]
    rows = [
        [label, *(value for each in values for value in (each, None))]
        for label, *values in zip(labels, *columns, strict=True)
    ]
    found = lines([["Kartonwerk Weidenau, EUR"], [], *rows])
    told = {cell: (str(line.state), line.offer.grade, line.offer.caliper_um) for cell, line in found.items()}
    assert told == {
        "B7": ("accepted", "FBB", 400),
        "D7": ("accepted", "FBB", 380),
        "F7": ("accepted", "CRB", 390),
    }


def test_what_is_said_behind_a_gap_is_no_board():
    rows = [["Grade", "GC1"], ["Basis weight (g/m²)", 250], ["Caliper (µm)", 400], ["Price (EUR per tonne)", 1214]]
    rows = [
        [*row, None, remark] for row, remark in zip(rows, ("as last year", "measured", "measured", "firm"), strict=True)
    ]
    assert list(lines(rows)) == ["B4"]
