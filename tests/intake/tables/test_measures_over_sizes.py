"""A board with its measures and no price in one row, and below it its prices by order size, form or delivery."""

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.offer import State

SIZES = {
    "en": ("Grade / order size", "under 3 t", "3 to 10 t", "from 10 t"),
    "de": ("Sorte / Bestellmenge", "unter 3 t", "3 bis 10 t", "ab 10 t"),
    "fr": ("Qualité / quantité", "moins de 3 t", "de 3 à 10 t", "à partir de 10 t"),
    "es": ("Calidad / cantidad", "menos de 3 t", "de 3 a 10 t", "desde 10 t"),
    "sv": ("Kvalitet / orderstorlek", "under 3 ton", "3 till 10 ton", "från 10 ton"),
}
FORMS = {
    "en": ("Reels", "Sheets"),
    "de": ("Rollen", "Bogen"),
    "fr": ("Bobines", "Feuilles"),
    "es": ("Bobinas", "Hojas"),
    "sv": ("Rullar", "Ark"),
}
BOARDS = (["GC1", 240, 385], ["GC2", 290, 470], ["GD2", 340, 445])


def sheet(corner, labels, gap=False):
    rows = [["EUR per 1000 kg"], [corner, "g/m²", "µm", "EUR"]]
    for step, board in enumerate(BOARDS):
        rows += [[]] if gap and step else []
        rows += [board, *([f"   {label}", None, None, 1300 - 200 * step - 30 * at] for at, label in enumerate(labels))]
    return rows


def measures(found):
    return [(line.offer.grade, line.offer.grammage_gsm, line.offer.caliper_um) for line in found.values()]


def each(times):
    return [board for board in (("FBB", 240, 385), ("FBB", 290, 470), ("CRB", 340, 445)) for _ in range(times)]


@pytest.mark.parametrize("language", SIZES)
@pytest.mark.parametrize("gap", [False, True])
def test_prices_by_order_size_have_the_boards_measures(language, gap):
    corner, *sizes = SIZES[language]
    found = lines(sheet(corner, sizes, gap))
    assert measures(found) == each(3)
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert [line.offer.from_kg for line in found.values()] == [None, 3000, 10000] * 3


@pytest.mark.parametrize("language", FORMS)
def test_so_have_prices_by_form(language):
    found = lines(sheet("Grade", FORMS[language]))
    assert measures(found) == each(2)
    assert {line.state for line in found.values()} == {State.ACCEPTED}


def test_so_have_prices_by_delivery():
    found = lines(sheet("Grade", ("Ex mill", "Delivered Halden")))
    assert measures(found) == each(2)
    assert [line.offer.delivered for line in found.values()] == [False, True] * 3


@pytest.mark.parametrize("other", ["GD2", "Tamarind 7", "GC2 white back"])
def test_another_board_below_has_none_of_them(other):
    rows = [
        ["EUR/t"],
        ["Grade", "g/m²", "µm", "Price"],
        ["GC1", 240, 385],
        [other, None, None, 1048],
        *sheet("", ())[4:],
    ]
    rows += [["URB", 450, 680, 634]]
    assert lines(rows)["D4"].offer.grammage_gsm is None
    assert lines(rows)["D4"].state is State.QUESTION


def test_a_board_without_measures_has_none_of_the_one_before():
    corner, *sizes = SIZES["en"]
    rows = sheet(corner, sizes)
    rows[6] = ["GC2 white back"]
    found = lines(rows)
    assert [line.offer.grammage_gsm for line in found.values()] == [240] * 3 + [None] * 3 + [340] * 3
    assert {line.state for line in list(found.values())[3:6]} == {State.QUESTION}


def test_a_charge_below_such_a_row_is_no_board():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 240, 385, 1200], ["GC2", 290, 470]]
    rows += [["Freight to Halden", None, None, 35], ["GD2", 340, 445, 800]]
    assert "D5" not in {line.offer.source.cell for line in read(rows).lines}


def test_so_have_they_its_lead_time_unless_they_say_their_own():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price", "Lead time"], ["GC1", 240, 385, None, "3 weeks"]]
    rows += [["under 3 t", None, None, 1348], ["from 3 t", None, None, 1317, "5 weeks"]]
    rows += [["GC2", 290, 470], ["under 3 t", None, None, 1256], ["from 3 t", None, None, 1236]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [(21, 21), (35, 35), None, None]


EXTRAS = [
    [["Sheets", None, None, 60]], [["Bogen", None, None, 60]], [["Feuilles", None, None, 60]],
    [["Hojas", None, None, 60]], [["Ark", None, None, 60]],
    [["Delivered Halden", None, None, 42], ["Delivered Tannegg", None, None, 60]],
]  # fmt: skip


@pytest.mark.parametrize("extras", EXTRAS)
def test_what_sheets_cost_more_has_no_measures_of_a_board_without_a_price(extras):
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 240, 385, 1200], ["GC2", 290, 470], *extras]
    found = [line for line in lines(rows).values() if line.offer.price != 1200]
    assert not any(line.state is State.ACCEPTED or line.offer.grammage_gsm for line in found)


def test_one_board_of_several_may_stand_over_its_prices():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 240, 385, 1200], ["GC2", 290, 470]]
    rows += [["Rolls", None, None, 1100], ["Sheets", None, None, 1160]]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [240, 290, 290]
