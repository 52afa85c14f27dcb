"""The size of the sheets that a title names, among other terms and over one of several tables."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.boards.list_boards import LONGEST_TITLE
from tracker.trade.offer import State


@pytest.mark.parametrize(
    ("title", "mm"),
    [
        ("Sheets 28 x 40 in – US$ per 1,000 sheets", (Decimal("711.2"), Decimal("1016"))),
        ("Formatware 70 x 100 cm, USD/1000 Bogen", (Decimal(700), Decimal(1000))),
        ("Franco, USD/1000 feuilles 72 x 102 cm", (Decimal(720), Decimal(1020))),
    ],
)
def test_a_title_says_how_large_the_sheets_below_it_are_and_what_a_thousand_cost(title, mm):
    rows = [[title], ["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 16, 68, 342.5], ["CCNB", 18, 71, 268.4]]
    found = lines(rows).values()
    assert [(str(line.state), line.offer.sheet_mm) for line in found] == [("accepted", mm)] * 2


def test_a_size_in_a_title_with_other_terms_is_the_sheets():
    title = ["Sheets 720 x 1020 mm, price per sheet ex VAT, despatch 5 working days"]
    found = lines([title, ["Board", "GSM", "Micron", "Each"], ["SBB C2S", 250, 290, "27.4p"]])
    assert found["D3"].offer.sheet_mm == (720, 1020)
    assert found["D3"].offer.price == Decimal("0.274")


@pytest.mark.parametrize(
    ("title", "size"),
    [
        ("Oferta en hojas 72 x 102 cm. Portes incluidos (DAP). Válida hasta el 30 de noviembre de 2026.", [720, 1020]),
        (
            "Offer for sheets 28 x 40 in, FOB mill, good until 30 November 2026, all in US dollars as usual",
            [711.2, 1016],
        ),
        (
            "Carton GD2 en feuilles de 70 x 100 cm, prix par mille de feuilles, départ usine, sans engagement",
            [700, 1000],
        ),
        ("Sheets from 70 x 100 cm to order, EUR per tonne, delivered, good until 30 November 2026 as usual", None),
        ("Pallets 80 x 120 cm are included, EUR per tonne, delivered, good until 30 November 2026 as usual", None),
    ],
)
def test_the_size_of_sheets_in_a_long_title(title, size):
    assert len(title) > LONGEST_TITLE
    (line,) = lines([[title], ["Board", "g/m²", "µm", "EUR/t"], ["GD2", 350, 460, 896]]).values()
    assert line.offer.sheet_mm == (None if size is None else tuple(Decimal(str(side)) for side in size))


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
