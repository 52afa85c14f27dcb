"""The sheet that a title names among terms of its prices, as the title of one of two tables below each other does."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def read(title, notes=()):
    rows = [
        ["Reels, EUR per tonne"], ["Grade \\ g/m²", 240, 260], ["GC1", 1231, 1222], ["GC2", 1199, 1188], [], [],
        [title], ["g/m²", "GC1", "GC2"], [260, 199.4, 191.1], [310, 236.2, 227.5], [], *([note] for note in notes),
    ]  # fmt: skip
    return [line for cell, line in lines(rows).items() if int(cell[1:]) > 7]


@pytest.mark.parametrize(
    "title",
    [
        "B. Sheets 720 x 1020 mm, EUR per 1,000 sheets, collected from our warehouse in Lower Marling (EXW)",
        "Sheets 720 x 1020 mm, EUR per 1,000 sheets, minimum order 500 kg",
        "Bogen 72 x 102 cm, EUR je 1000 Bogen, ab Lager Unterbach, Mindestmenge 500 kg je Sorte und Lieferung",
        "Feuilles 720 x 1020 mm, EUR les 1000 feuilles, départ usine, minimum de commande 500 kg par qualité",
        "Hojas 720 x 1020 mm, EUR por millar de hojas, en fábrica, pedido mínimo 500 kg por calidad y entrega",
        "Ark 720 x 1020 mm, EUR per 1000 ark, fritt fabrik, minsta order 500 kg per kvalitet och leverans",
    ],
)
def test_the_part_that_names_a_sheet_says_its_size(title):
    found = read(title)
    assert len(found) == 4
    assert {line.state for line in found} == {State.ACCEPTED}
    assert {line.offer.sheet_mm for line in found} == {(720, 1020)}


@pytest.mark.parametrize(
    ("title", "notes"),
    [
        ("Sheets 720 x 1020 mm, Sheets 640 x 880 mm, EUR per 1,000 sheets, minimum order 500 kg", ()),
        ("EUR per 1,000 sheets, minimum order 500 kg, also trimmed to 720 x 1020 mm", ()),
        ("EUR per 1,000 sheets", ("Samples of all boards as sheets 720 x 1020 mm, minimum order 5 samples",)),
    ],
)
def test_several_sheets_and_those_said_in_passing_are_asked_about(title, notes):
    assert all("basis-unknown" in codes(line) for line in read(title, notes))
