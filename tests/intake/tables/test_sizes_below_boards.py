"""A board alone in a row, and below it the sizes of orders for it with their prices, under no heads."""

import pytest

from tests.intake.sheets import lines, read

SIZES = {
    "en": ("Delivered, EUR per tonne", "under 2,000 kg", "from 2,000 to under 8,000 kg", "8,000 kg and over"),
    "de": ("Preise frei Haus, EUR/t", "unter 2.000 kg", "von 2.000 bis unter 8.000 kg", "ab 8.000 kg"),
    "fr": ("Franco, €/t", "moins de 2 000 kg", "de 2 000 à moins de 8 000 kg", "8 000 kg et plus"),
    "es": ("Precios entregados, EUR/t", "menos de 2.000 kg", "de 2.000 a menos de 8.000 kg", "8.000 kg o más"),
    "sv": ("Fritt levererat, EUR/ton (1000 kg)", "under 2 000 kg", "2 000 till under 8 000 kg", "8 000 kg och mer"),
}
BOARDS = ("GC2 – 270 g/m² – 430 µm", "GD2 – 300 g/m² – 390 µm")


def sheet(title, sizes, prices=((1260, 1210, 1170), (840, 800, 775)), boards=BOARDS):
    rows = [[title], []]
    for board, figures in zip(boards, prices, strict=True):
        rows += [[board], *([None, size, figure] for size, figure in zip(sizes, figures, strict=True)), []]
    return rows


@pytest.mark.parametrize("language", SIZES)
def test_sizes_below_a_board_are_its_offers(language):
    title, *sizes = SIZES[language]
    found = lines(sheet(title, sizes))
    assert list(found) == ["C4", "C5", "C6", "C9", "C10", "C11"]
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [(line.offer.grade, line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        (grade, *bounds) for grade in ("FBB", "CRB") for bounds in ((None, 2000), (2000, 8000), (8000, None))
    ]


def test_prices_that_say_what_they_are_in_need_no_title():
    found = lines(sheet("Boards", ("under 2 t", "2 t and over"), (("€1,260/t", "€1,210/t"), ("€840/t", "€800/t"))))
    assert [str(line.state) for line in found.values()] == ["accepted"] * 4


def test_what_such_rows_are_in_is_never_guessed():
    assert not any(str(line.state) == "accepted" for line in lines(sheet("Boards", SIZES["fr"][1:])).values())


def test_freight_by_order_size_is_no_offer():
    zones = ("Zone 1", "Zone 2")
    assert not read(sheet("Freight, EUR/t", SIZES["en"][1:], ((60, 45, 30), (80, 70, 60)), zones)).lines


ODD = [["Halden Board, Inc."], ["Prices in EUR per tonne"], ["GZ 450 µm 350 g/m²"], ["under 5,000 kg", 1300],
       ["5,000 kg and more", 1180]]  # fmt: skip
LAST = [["GD2 500 µm 400 g/m²"], ["under 5,000 kg", 900], ["5,000 kg and more", 780]]


def _told(*between):
    found = lines([*ODD, *between, *LAST]).values()
    return [(line.offer.grade, line.offer.price, line.offer.from_kg, line.offer.below_kg) for line in found]


PLAIN = [("SBS", 1300, None, 5000), ("SBS", 1180, 5000, None), ("CRB", 900, None, 5000), ("CRB", 780, 5000, None)]


def test_a_charge_among_the_sizes_takes_none_of_them_away():
    assert _told(["add for sheeting", 60]) == PLAIN


def test_a_bare_size_begins_where_it_says():
    told = _told(["20,000 kg", 1150])
    assert told[1:3] == [("SBS", 1180, 5000, 20000), ("SBS", 1150, 20000, None)]
    assert told[3:] == PLAIN[2:]


def test_a_board_without_sizes_names_no_other():
    assert _told(["GC2 480 µm 300 g/m²"]) == PLAIN


def test_a_board_with_one_price_among_the_sizes_has_that_for_all():
    told = _told(["GC2 480 µm 300 g/m²", 650])
    assert told == [*PLAIN[:2], ("FBB", 650, None, None), *PLAIN[2:]]
