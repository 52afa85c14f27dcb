"""Lines of words that go on with the position above them, where a sub-heading for the next ones would stand."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Pos", "Article", "Qty t", "Price EUR/t"]
GENERAL = {
    "en": "Lead time 3 weeks unless noted at the item.",
    "de": "Lieferzeit 3 Wochen, sofern nichts anderes vermerkt ist.",
    "fr": "Délai de livraison 3 semaines sauf indication contraire.",
    "es": "Plazo de entrega 3 semanas salvo indicación.",
    "sv": "Leveranstid 3 veckor om inget annat anges.",
}
TEXTS = {
    "en": ("Reel width 880 mm", "lead time for this item 6 weeks", "from stock", "Size 700 x 1000 mm"),
    "de": ("Rollenbreite 880 mm", "Lieferzeit abweichend 6 Wochen", "ab Lager sofort", "Format 70 x 100 cm"),
    "fr": ("Laize 880 mm", "délai pour ce poste 6 semaines", "disponible sur stock", "Format 70 x 100 cm"),
    "es": ("Ancho de bobina 880 mm", "plazo de esta posición 6 semanas", "en stock", "Formato 70 x 100 cm"),
    "sv": ("Rullbredd 880 mm", "leveranstid för denna post 6 veckor", "i lager", "Format 70 x 100 cm"),
}
ONE, TWO, THREE = (
    "GC1, 250 g/m², 405 µm",
    "GC2, 300 g/m², 500 µm",
    "GD2, 350 g/m², 465 µm",
)


def item(number, text, price):
    return [number, text, 12, price]


def line(text):
    return [None, text]


def leads(rows, head=HEAD):
    return [one.offer.lead_days for one in lines([head, *rows]).values()]


@pytest.mark.parametrize("language", TEXTS)
def test_lines_below_each_position_are_its_own(language):
    width, weeks, stock, size = TEXTS[language]
    rows = [item(10, ONE, 1290), line(width), item(20, TWO, 1240), line(width), line(weeks)]
    rows += [item(30, THREE, 880), line(size), line(stock), [], [GENERAL[language]]]
    found = list(lines([HEAD, *rows]).values())
    assert [one.offer.lead_days for one in found] == [(21, 21), (42, 42), (0, 0)]
    assert [one.offer.sheet_mm for one in found] == [None, None, (700, 1000)]
    assert all(str(one.state) == "accepted" for one in found)


def test_also_where_only_some_numbered_positions_have_any():
    rows = [item(1, ONE, 1290), item(2, TWO, 1240), line("Lead time 6 weeks"), item(3, THREE, 880), line("from stock")]
    assert leads([*rows, [], [GENERAL["en"]]]) == [(21, 21), (42, 42), (0, 0)]


def test_a_charge_and_a_smallest_order_of_one_position():
    rows = [item(1, ONE, 1290), line("minimum order 5 t"), item(2, TWO, 1240), line("plus EUR 40 per tonne slitting")]
    one, two = lines([HEAD, *rows]).values()
    assert (one.offer.minimum_kg, two.offer.minimum_kg) == (5000, None)
    assert [[charge.price for charge in each.offer.charges] for each in (one, two)] == [[], [40]]


def test_a_line_above_the_first_says_that_they_head_what_follows():
    rows = [line("Lead time 6 weeks"), item(1, ONE, 1290), item(2, TWO, 1240)]
    rows += [line("Lead time 1 week"), item(3, THREE, 880)]
    assert leads(rows) == [(42, 42), (42, 42), (7, 7)]


def test_of_lines_below_the_numbers_that_may_head_or_follow_no_lead_time_is_certain():
    rows = [item(1, ONE, 1290), item(2, TWO, 1240), ["Lead time 6 weeks"], item(3, THREE, 880), ["from stock"]]
    assert leads(rows) == [None, None, None]


def test_a_line_of_all_positions_is_no_position_s_own():
    rows = [item(1, ONE, 1290), line("Lead time 6 weeks"), item(2, TWO, 1240), line("All prices ex works")]
    assert [one.offer.delivered for one in lines([HEAD, *rows]).values()] == [False, False]


def test_without_numbers_a_line_here_and_there_is_a_heading():
    head = ["Board", "Price EUR/t"]
    rows = [[ONE, 1290], [TWO, 1240], ["Lead time 6 weeks"], [THREE, 880]]
    assert leads(rows, head) == [None, None, (42, 42)]


def test_where_the_last_position_has_none_the_lead_time_is_left_open_on_both_sides():
    rows = [item(1, ONE, 1290), item(2, TWO, 1240), line("lead time 6 weeks"), item(3, THREE, 880)]
    found = list(lines([HEAD, *rows, [], [GENERAL["en"]]]).values())
    assert [one.offer.lead_days for one in found] == [(21, 21), None, None]
    assert ["lead-time-unread" in codes(one) for one in found] == [False, True, True]


def test_a_sum_behind_the_last_position_is_none():
    rows = [[*item(1, ONE, 1290), 15480], line("Lead time 6 weeks"), [*item(2, TWO, 1240), 14880], line("from stock")]
    assert leads([*rows, [None, None, None, "Total", 30360]], [*HEAD, "Amount"]) == [(42, 42), (0, 0)]


def test_terms_of_payment_end_a_position_s_lines():
    rows = [item(1, ONE, 1290), line("Lead time 6 weeks"), item(2, TWO, 1240), line("from stock")]
    rows += [line("Payment 30 days net"), line("Minimum order 5 t")]
    found = list(lines([HEAD, *rows]).values())
    assert [one.offer.lead_days for one in found] == [(42, 42), (0, 0)]
    assert [one.offer.minimum_kg for one in found] == [5000, 5000]


@pytest.mark.parametrize(
    ("head", "firsts", "of_all"),
    [
        ("Thickness, in.", (".016", ".024"), True), ("g/m²", ("250", "300"), True),
        ("Épaisseur mm", ("0,40", "0,60"), True),
        ("Artikel-Nr.", ("4101", "4102"), True), ("Pos", ("10", "20"), True),
    ],
)  # fmt: skip
def test_a_line_below_the_figures_of_the_first_column_is_of_all(head, firsts, of_all):
    rows = [[first, text, 12, 1200] for first, text in zip(firsts, (ONE, TWO), strict=True)]
    found = leads([*rows, ["2 - 3 weeks. Minimum 2 tonnes."]], [head, *HEAD[1:]])
    assert found == ([(14, 21)] * 2 if of_all else [None, (14, 21)])


def test_a_line_below_the_words_of_the_last_position_is_its_own():
    assert leads([item(10, ONE, 1290), item(20, TWO, 1240), line("lead time 6 weeks")]) == [None, (42, 42)]
