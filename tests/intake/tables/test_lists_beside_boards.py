"""Lists of order sizes and forms beside the boards, behind an empty column: they hold for no board of their row."""

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
