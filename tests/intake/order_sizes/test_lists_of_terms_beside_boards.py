"""A list of order sizes or forms beside the boards holds for whichever board is ordered: what it says is told of all,
and taken from none of them in silence."""

import pytest

from tests.intake.sheets import codes, read

MAIN = {
    "en": (["Grade", "Caliper (pt)", "USD/ST"], [["SBS", 16, 1200], ["SBS", 18, 1180], ["CUK", 18, 980]]),
    "de": (["Sorte", "g/m²", "EUR/t"], [["GC1", 250, 1200], ["GC1", 300, 1180], ["GD2", 300, 880]]),
    "fr": (["Qualité", "g/m²", "EUR/t"], [["GC1", 250, 1200], ["GC1", 300, 1180], ["GD2", 300, 880]]),
    "es": (["Calidad", "g/m²", "EUR/t"], [["GC1", 250, 1200], ["GC1", 300, 1180], ["GD2", 300, 880]]),
    "sv": (["Kvalitet", "g/m²", "SEK/kg"], [["GC1", 250, 12], ["GC1", 300, 11.8], ["GD2", 300, 8.8]]),
}
SURCHARGES = {
    "en": (["Order quantity", "Surcharge USD/ST"], ["under 5,000 lb", "5,000-10,000 lb", "over 10,000 lb"], (80, 40)),
    "de": (["Abnahmemenge", "Zuschlag EUR/t"], ["unter 1 t", "1–3 t", "über 3 t"], (80, 40)),
    "fr": (["Quantité commandée", "Supplément EUR/t"], ["moins de 1 t", "1 à 3 t", "plus de 3 t"], (80, 40)),
    "es": (["Cantidad", "Recargo EUR/t"], ["menos de 1 t", "1 a 3 t", "más de 3 t"], (80, 40)),
    "sv": (["Ordermängd", "Tillägg SEK/kg"], ["under 1 t", "1–3 t", "över 3 t"], (0.8, 0.4)),
}
DISCOUNTS = {
    "en": (["Order quantity", "Discount"], ["from 5,000 lb", "from 10,000 lb", "from 20,000 lb"]),
    "de": (["Abnahmemenge", "Rabatt"], ["ab 5 t", "ab 10 t", "ab 20 t"]),
    "fr": (["Quantité commandée", "Remise"], ["dès 5 t", "dès 10 t", "dès 20 t"]),
    "es": (["Cantidad", "Descuento"], ["desde 5 t", "desde 10 t", "desde 20 t"]),
    "sv": (["Ordermängd", "Rabatt"], ["från 5 t", "från 10 t", "från 20 t"]),
}
FORMS = {
    "en": (["Form", "Lead time"], ["Rolls", "Sheets", "Cut-size"], "{} weeks"),
    "de": (["Form", "Lieferzeit"], ["Rollen", "Bogen", "Formatware"], "{} Wochen"),
    "fr": (["Présentation", "Délai"], ["Bobines", "Feuilles", "Formats"], "{} semaines"),
    "es": (["Formato", "Plazo de entrega"], ["Bobinas", "Hojas", "Resmas"], "{} semanas"),
    "sv": (["Form", "Leveranstid"], ["Rulle", "Ark", "Format"], "{} veckor"),
}


def beside(language, heads, rows):
    head, boards = MAIN[language]
    return read([[*head, None, *heads], *([*board, None, *row] for board, row in zip(boards, rows, strict=True))]).lines


@pytest.mark.parametrize("language", SURCHARGES)
def test_small_orders_that_cost_more_are_told_of_every_board(language):
    heads, sizes, (most, less) = SURCHARGES[language]
    found = beside(language, heads, zip(sizes, (most, less, 0), strict=True))
    assert [str(line.state) for line in found] == ["accepted"] * 3
    assert all("bracket-unread" in codes(line) and not line.offer.charges for line in found)
    assert all(any(sizes[0] in note.text for note in line.notes) for line in found)
    assert all(line.offer.from_kg is None and line.offer.below_kg is None for line in found)


@pytest.mark.parametrize("language", SURCHARGES)
def test_what_every_order_bears_in_some_measure_leaves_the_delivered_cost_open(language):
    heads, sizes, (most, less) = SURCHARGES[language]
    found = beside(language, heads, zip(sizes, (2 * most, most, less), strict=True))
    assert all(charge.currency == "XXX" for line in found for charge in line.offer.charges)
    assert all("number-ambiguous" in codes(line) and line.offer.charges for line in found)


@pytest.mark.parametrize("language", DISCOUNTS)
def test_discounts_beside_prices_are_asked_about(language):
    heads, sizes = DISCOUNTS[language]
    found = beside(language, heads, zip(sizes, ("2 %", "4 %", "6 %"), strict=True))
    assert [str(line.state) for line in found] == ["question"] * 3


@pytest.mark.parametrize("language", ["en", "de", "sv"])
def test_lead_times_of_forms_are_given_to_no_board_and_told_of_all(language):
    heads, forms, weeks = FORMS[language]
    found = beside(language, heads, zip(forms, map(weeks.format, (3, 4, 2)), strict=True))
    assert all(line.offer.lead_days is None and "lead-time-unread" in codes(line) for line in found)


def test_two_boards_may_be_for_rolls_and_sheets():
    head, boards = MAIN["en"]
    rows = [[*boards[0], None, "Rolls", "3 weeks"], [*boards[2], None, "Sheets", "4 weeks"]]
    found = read([[*head, None, "Form", "Lead time"], *rows]).lines
    assert [line.offer.lead_days for line in found] == [(21, 21), (28, 28)]


def test_unit_of_a_list_in_its_head():
    sizes = ["under 10,000 lb", "10,000-40,000 lb", "over 40,000 lb"]
    found = beside("en", ["Order size", "Lead time (weeks)"], zip(sizes, (2, 4, 5), strict=True))
    assert all(line.offer.lead_days is None and "lead-time-unread" in codes(line) for line in found)


NET = {
    "en": (["Net price EUR/t", "Order size", "Discount"], "over {} t"),
    "de": (["Nettopreis EUR/t", "Abnahmemenge", "Rabatt"], "über {} t"),
    "fr": (["Prix net EUR/t", "Quantité commandée", "Remise"], "plus de {} t"),
    "es": (["Precio neto EUR/t", "Cantidad", "Descuento"], "más de {} t"),
    "sv": (["Nettopris EUR/t", "Ordermängd", "Rabatt"], "över {} t"),
}


def with_discounts(language, *sizes):
    heads, over = NET[language]
    boards = zip((["GC1", 250, 1200], ["GC2", 300, 1180], ["GD2", 300, 880]), sizes, strict=False)
    rows = [[*board, over.format(size) if size else None, "2 %" if size else None] for board, size in boards]
    return read([["Tannegg 2027"], ["Grade", "g/m²", *heads], *rows]).lines


@pytest.mark.parametrize("language", NET)
def test_order_sizes_of_two_boards_are_theirs_beside_a_discount_too(language):
    for sizes in ((5, 10), (5, 5)):
        found = with_discounts(language, *sizes)
        assert [str(line.state) for line in found] == ["accepted"] * 2
        assert all(line.offer.from_kg and "bracket-unread" not in codes(line) for line in found)


@pytest.mark.parametrize("language", NET)
@pytest.mark.parametrize("sizes", [(5, 10, 20), (5, 10, None)])
def test_sizes_that_run_on_or_end_before_the_boards_are_told_and_taken_for_none_of_theirs(language, sizes):
    found = with_discounts(language, *sizes)
    assert all(line.offer.from_kg is None for line in found)
    assert ["bracket-unread" in codes(line) for line in found] == [size is not None for size in sizes]
