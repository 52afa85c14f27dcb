"""Lists of order sizes and forms beside the boards, behind an empty column: they hold for no board of their row."""

from itertools import zip_longest

import pytest

from tests.intake.sheets import lines

_BOARDS = [["GC1", 300, 1200], ["GC2", 280, 1150], ["GD2", 350, 900]]


def _found(heads, *beside, boards=_BOARDS):
    rows = [["Grade", "g/m²", "EUR/t", None, *heads]]
    rows += [[*board, None, *one] for board, one in zip(boards, beside, strict=True)]
    return [line.offer for line in lines(rows).values()]


@pytest.mark.parametrize(
    ("heads", "sizes"),
    [
        (("Order size", "Surcharge EUR/t"), ("under 1 t", "1–3 t", "3–5 t")),
        (("Menge", "Zuschlag EUR/t"), ("unter 1 t", "1–3 t", "3–5 t")),
        (("Quantité", "Supplément €/t"), ("moins de 1 t", "1 à 3 t", "3 à 5 t")),
        (("Cantidad", "Recargo €/t"), ("menos de 1 t", "1 a 3 t", "3 a 5 t")),
        (("Kvantitet", "Tillägg EUR/t"), ("under 1 t", "1–3 t", "3–5 t")),
        (("Order size", "Surcharge EUR/t"), ("3–5 t", "1–3 t", "under 1 t")),
    ],
)  # fmt: skip
def test_sizes_that_run_on_are_no_boards_own(heads, sizes):
    found = _found(heads, *zip(sizes, (120, 60, 30), strict=True))
    assert [(one.from_kg, one.below_kg, one.charges) for one in found] == [(None, None, ())] * 3


@pytest.mark.parametrize("last", ["5 weeks", "2 weeks"])
def test_nor_are_the_times_of_such_sizes(last):
    found = _found(("Order size", "Lead time"), ("under 1 t", "2 weeks"), ("1–3 t", "3 weeks"), ("over 3 t", last))
    assert [(one.from_kg, one.lead_days) for one in found] == [(None, None)] * 3


def test_each_form_once_tells_of_no_board():
    found = _found(("Form", "Lead time"), ("Rolls", "3 weeks"), ("Sheets", "5 weeks"), ("Skids", "6 weeks"))
    assert [one.lead_days for one in found] == [None] * 3
    found = _found(("Form", "Lead time"), ("Rolls", "3 weeks"), ("Rolls", "5 weeks"), ("Sheets", "6 weeks"))
    assert [one.lead_days for one in found] == [(21, 21), (35, 35), (42, 42)]


def test_one_board_at_several_sizes_has_them_in_its_rows():
    boards = [["GC1", 300, 1200], ["GC1", 300, 1150], ["GC1", 300, 1100]]
    sizes = ("under 1 t", "2 weeks"), ("1–3 t", "3 weeks"), ("over 3 t", "5 weeks")
    found = _found(("Order size", "Lead time"), *sizes, boards=boards)
    assert [(one.from_kg, one.lead_days) for one in found] == [(None, (14, 14)), (1000, (21, 21)), (3000, (35, 35))]


def test_sizes_that_do_not_run_on_are_the_boards():
    found = _found(
        ("Order size", "Lead time"), ("from 1 t", "2 weeks"), ("from 1 t", "3 weeks"), ("from 3 t", "5 weeks")
    )
    assert [one.from_kg for one in found] == [1000, 1000, 3000]


@pytest.mark.parametrize(
    ("heads", "sizes"),
    [
        (("Order size", "Lead time"), ("under 5 ST", "5-20 ST", "over 20 ST")),
        (("Order size", "Lead time"), ("over 20 ST", "5-20 ST", "under 5 ST")),
        (("Menge", "Zuschlag EUR/t"), ("unter 5 ST", "5-20 ST", "über 20 ST")),
        (("Quantité", "Supplément EUR/t"), ("moins de 5 ST", "5-20 ST", "plus de 20 ST")),
        (("Cantidad", "Recargo EUR/t"), ("menos de 5 ST", "5-20 ST", "más de 20 ST")),
        (("Kvantitet", "Tillägg EUR/t"), ("under 5 ST", "5-20 ST", "över 20 ST")),
    ],
)  # fmt: skip
def test_sizes_in_pieces_or_short_tons_run_on_as_well(heads, sizes):
    told = ("2 weeks", "3 weeks", "4 weeks") if "time" in heads[1] else (50, 20, 0)
    found = [one.offer for one in lines(_beside(heads, *zip(sizes, told, strict=True))).values()]
    assert [(one.from_kg, one.below_kg, one.lead_days) for one in found] == [(None, None, None)] * 3
    assert not any(charge.price for one in found for charge in one.charges)


def _beside(heads, *beside, boards=_BOARDS):
    rows = [["Grade", "g/m²", "EUR/t", None, *heads]]
    return rows + [[*board, None, *one] for board, one in zip_longest(boards, beside, fillvalue=())]


_FORMS = {
    "en": ("Form", "Lead time", "Rolls", "Sheets", "{} weeks"),
    "de": ("Form", "Lieferzeit", "Rollen", "Bogen", "{} Wochen"),
    "fr": ("Forme", "Délai", "Bobines", "Feuilles", "{} semaines"),
    "es": ("Forma", "Plazo", "Bobinas", "Hojas", "{} semanas"),
    "sv": ("Form", "Leveranstid", "Rullar", "Ark", "{} veckor"),
}


@pytest.mark.parametrize(("form", "time", "rolls", "sheets", "weeks"), _FORMS.values(), ids=_FORMS)
def test_two_forms_beside_three_boards_are_of_none(form, time, rolls, sheets, weeks):
    listed = (rolls, weeks.format(3)), (sheets, weeks.format(5))
    assert [one.offer.lead_days for one in lines(_beside((form, time), *listed)).values()] == [None] * 3
    # Of two boards one may well come in rolls and the other in sheets.
    two = lines(_beside((form, time), *listed, boards=_BOARDS[:2])).values()
    assert [one.offer.lead_days for one in two] == [(21, 21), (35, 35)]


def test_nor_is_the_charge_for_a_form():
    found = lines(_beside(("Form", "Surcharge EUR/t"), ("Rolls", 0), ("Sheets", 60))).values()
    assert not any(charge.price for one in found for charge in one.offer.charges)


@pytest.mark.parametrize(
    "heads",
    [("Sheet size", "Sheets per pallet"), ("Format", "Bogen/Palette"), ("Format", "Feuilles/palette"),
     ("Formato", "Hojas por palet"), ("Arkformat", "Ark/pall")],
)  # fmt: skip
def test_sheets_of_two_sizes_beside_three_boards_are_of_none(heads):
    listed = ("70x100", 2000), ("72x102", 1900)
    assert {one.offer.sheet_mm for one in lines(_beside(heads, *listed)).values()} == {None}
    each = lines(_beside(heads, *listed, ("61x86", 2200))).values()
    assert [one.offer.sheet_mm is not None for one in each] == [True] * 3


DISCOUNTS = [
    (("Order size", "Discount"), ("5 t", "10 t", "20 t")), (("Menge", "Rabatt"), ("5 t", "10 t", "20 t")),
    (("Abnahmemenge", "Nachlass"), ("ab 5 t", "ab 10 t", "ab 20 t")), (("Quantité", "Remise"), ("5 t", "10 t", "20 t")),
    (("Cantidad", "Descuento"), ("5 t", "10 t", "20 t")), (("Kvantitet", "Rabatt"), ("5 t", "10 t", "20 t")),
]  # fmt: skip


@pytest.mark.parametrize("shares", [("1 %", "2 %", "3 %"), ("0 %", "2 %", "3 %")])
@pytest.mark.parametrize(("heads", "sizes"), DISCOUNTS)
def test_discounts_by_size_are_asked_about_and_give_no_board_a_size(heads, sizes, shares):
    rows = [["Grade", "g/m²", "EUR/t", None, *heads]]
    rows += [[*board, None, *one] for board, one in zip(_BOARDS, zip(sizes, shares, strict=True), strict=True)]
    found = list(lines(rows).values())
    assert [line.state for line in found] == ["question"] * 3
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, None)] * 3
    assert all("0 %" not in note.text for line in found for note in line.notes)


@pytest.mark.parametrize("heads", [("Annual volume", "Rebate"), ("Jahresmenge", "Bonus"), ("Årsvolym", "Bonus")])
def test_what_is_paid_back_for_a_years_tonnage_changes_no_price(heads):
    rows = [["Grade", "g/m²", "EUR/t", None, *heads]]
    years = zip(("500 t", "1000 t", "2000 t"), ("1 %", "2 %", "3 %"), strict=True)
    rows += [[*board, None, *one] for board, one in zip(_BOARDS, years, strict=True)]
    found = list(lines(rows).values())
    assert [(line.state, line.offer.from_kg) for line in found] == [("accepted", None)] * 3


def test_a_discount_of_one_board_at_several_sizes_is_its_own():
    boards = [["GC1", 300, 1200]] * 3
    rows = [["Grade", "g/m²", "EUR/t", None, "Order size", "Discount"]]
    own = zip(("5 t", "10 t", "20 t"), ("1 %", "2 %", "3 %"), strict=True)
    rows += [[*board, None, *one] for board, one in zip(boards, own, strict=True)]
    assert [line.offer.from_kg for line in lines(rows).values()] == [5000, 10000, 20000]


@pytest.mark.parametrize("gap", [(), (None,)])
@pytest.mark.parametrize("count", [2, 3])
@pytest.mark.parametrize(("heads", "sizes"), DISCOUNTS)
def test_nor_do_two_sizes_or_discounts_right_beside_the_price(heads, sizes, count, gap):
    entries = [(size, f"{share} %") for share, size in enumerate(sizes[:count], start=1)]
    entries += [(None, None)] * (len(_BOARDS) - count)
    rows = [["Grade", "g/m²", "EUR/t", *gap, *heads]]
    rows += [[*board, *gap, *one] for board, one in zip(_BOARDS, entries, strict=True)]
    found = list(lines(rows).values())
    assert [line.state for line in found] == ["question"] * 3
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, None)] * 3


def test_a_price_behind_a_discount_is_that_of_its_size():
    heads = ["Grade", "g/m²", "List EUR/t", "Order size", "Discount", "Net EUR/t"]
    rows = [heads, ["GC1", 300, 1200, "from 5 t", "5 %", 1140], ["GC2", 320, 1100, "from 10 t", "10 %", 990]]
    found = lines(rows).values()
    assert [(line.offer.price, line.offer.from_kg) for line in found] == [(1140, 5000), (990, 10000)]
