"""Lines of words between boards: a heading for the next one, or what the one above is. The whole table tells."""

import pytest

from tests.intake.sheets import lines

HEADS = ["Pos", "Article", "Qty t", "Price EUR/t"]
TEXTS = {
    "en": ("Folding boxboard GC2, 260 g/m², 440 µm, reel 720 mm", "White lined chipboard GD2, 300 g/m², 390 µm"),
    "de": ("GC2 Faltschachtelkarton, 260 g/m², 440 µm, Rolle 720 mm", "GD2 Duplexkarton, 300 g/m², 390 µm"),
    "fr": ("Carton pliant GC2, 260 g/m², 440 µm, bobine 720 mm", "Carton duplex GD2, 300 g/m², 390 µm"),
    "es": ("Cartulina plegable GC2, 260 g/m², 440 µm, bobina 720 mm", "Cartoncillo dúplex GD2, 300 g/m², 390 µm"),
    "sv": ("Falskartong GC2, 260 g/m², 440 µm, rulle 720 mm", "Returkartong bestruken GD2, 300 g/m², 390 µm"),
}
THIRD = "GT2, 250 g/m², 330 µm"


def boards(rows, heads=HEADS):
    found = lines([heads, *rows])
    return [
        (line.offer.grade, line.offer.grammage_gsm) if str(line.state) == "accepted" else "asked"
        for line in found.values()
    ]


def item(number, code, price):
    return [number, code, 12, price]


@pytest.mark.parametrize(("one", "two"), TEXTS.values(), ids=TEXTS)
def test_lines_below_each_board_and_none_above_the_first_are_the_boards_own(one, two):
    rows = [item(10, "A-4711", 1206), [None, one], item(20, "A-4712", 884), [None, two]]
    assert boards(rows) == [("FBB", 260), ("CRB", 300)]


@pytest.mark.parametrize(("one", "two"), TEXTS.values(), ids=TEXTS)
def test_lines_above_each_board_and_none_below_the_last_are_headings(one, two):
    rows = [[None, one], item(10, "A-4711", 1206), [None, two], item(20, "A-4712", 884)]
    assert boards(rows) == [("FBB", 260), ("CRB", 300)]


@pytest.mark.parametrize(
    ("sum_of", "tax"), [("Summe netto", "19 % MwSt."), ("Net total", "20 % VAT"), ("Summa", "25 % moms")]
)
def test_totals_behind_the_last_board_are_no_boards(sum_of, tax):
    one, two = TEXTS["de"]
    rows = [[*item(10, "A-4711", 1206), 14472], [None, one], [20, "A-4712", 5, 884, 4420], [None, two], []]
    sums = [[None, None, None, sum_of, 18892], [None, None, None, tax, 3590]]
    assert boards([*rows, *sums], [*HEADS, "Amount EUR"]) == [("FBB", 260), ("CRB", 300)]


def test_the_words_may_stand_below_the_item_s_number_and_go_on_for_two_lines():
    one, two = (text.split(", ", 1) for text in TEXTS["de"])
    rows = [item(10, 4711001, 1206), [one[0]], [one[1]], item(20, 4711002, 884), [two[0]], [two[1]]]
    assert boards(rows) == [("FBB", 260), ("CRB", 300)]


def test_a_board_that_says_itself_what_it_is_needs_no_line():
    one, two = TEXTS["de"]
    assert boards([item(10, "A-1", 1206), [None, one], item(20, two, 884), item(30, "A-3", 900), [None, THIRD]]) == [
        ("FBB", 260),
        ("CRB", 300),
        ("CRB", 250),
    ]
    assert boards([item(10, "A-1", 1206), [None, one], item(20, "A-3", 900), [None, THIRD], item(30, two, 884)]) == [
        ("FBB", 260),
        ("CRB", 250),
        ("CRB", 300),
    ]


def test_with_lines_at_both_ends_the_figures_that_a_board_shares_with_its_line_tell():
    one, two = TEXTS["fr"]
    first, last = item(10, "GC2-260-720R", 1206), item(20, "GD2-300-700B", 884)
    assert boards([[None, THIRD], first, [None, one], last, [None, two]]) == [("FBB", 260), ("CRB", 300)]
    assert boards([[None, one], first, [None, two], last, [None, THIRD]]) == [("FBB", 260), ("CRB", 300)]


def test_or_the_kind_of_line_that_stands_at_an_end():
    one, two = TEXTS["es"]
    first, last = item(10, "A-4711", 1206), item(20, "A-4712", 884)
    general = [None, "Cartoncillo GC2"]
    assert boards([general, first, [None, one], last, [None, two.replace("GD2", "GC2")]])[0] == ("FBB", 260)
    note = [None, "Otros gramajes de GC2 bajo pedido"]
    assert boards([[None, one], first, [None, two], last, note]) == [("FBB", 260), ("CRB", 300)]


def test_where_nothing_tells_it_is_asked():
    one, two = TEXTS["sv"]
    first, last = item(10, "A-4711", 1206), item(20, "A-4712", 884)
    assert boards([[None, THIRD], first, [None, one], last, [None, two]]) == ["asked", "asked"]
    assert boards([first, [None, one], last, [None, two], item(30, "A-4713", 900)]) == ["asked"] * 3


def test_a_line_that_contradicts_the_board_above_it_heads_the_next():
    rows = [item(10, "SBS 280 g/m²", 1400), [None, "GC2"], item(20, "A 250 g/m²", 1206), [None, "GD2 auf Anfrage"]]
    assert boards(rows) == [("SBS", 280), ("FBB", 250)]


TOTALS = {
    "en": ("Net total", "Payment 30 days net"),
    "de": ("Summe netto", "Zahlbar 30 Tage netto"),
    "fr": ("Total net", "Paiement à 30 jours"),
    "es": ("Total neto", "Pago a 30 días"),
    "sv": ("Summa netto", "Betalning 30 dagar netto"),
}
MEASURED = ("300 g/m², 390 µm", "350 g/m², 450 µm", "250 g/m², 400 µm")


def positions(lines_between, *behind):
    """Three boards that name their grade alone, each with what follows it."""
    names = ("GD2, 860 mm", "GD2, 1040 mm", "GC2, 900 mm")
    rows = []
    for place, name in enumerate(names):
        tonnes, price = (6, 9, 5)[place], 800 + 10 * place
        rows += [[10 * (place + 1), name, tonnes, price, tonnes * price], *lines_between[place]]
    return boards([*rows, *behind], [*HEADS, "Amount EUR"])


def below(text):
    return [[None, text]]


@pytest.mark.parametrize(("total", "terms"), TOTALS.values(), ids=TOTALS)
def test_totals_and_terms_right_behind_the_last_board_s_line_are_none_of_its_own(total, terms):
    whole = [("CRB", 300), ("CRB", 350), ("FBB", 250)]
    own = [below(text) for text in MEASURED]
    assert positions(own, [None, total, None, None, 28800]) == whole
    assert positions(own, [None, terms]) == whole


@pytest.mark.parametrize(("total", "terms"), TOTALS.values(), ids=TOTALS)
def test_without_a_line_at_either_end_it_is_asked_which_board_a_measure_is_of(total, terms):
    own = [*(below(text) for text in MEASURED[:2]), []]
    assert positions(own, [None, total, None, None, 28800]) == ["asked"] * 3


@pytest.mark.parametrize("carry", ["Carried forward", "Übertrag", "À reporter", "Suma y sigue", "Att överföra"])
def test_a_sum_carried_forward_between_two_boards_is_no_board_s(carry):
    carried = [None, carry, None, None, 12120]
    own = [below(MEASURED[0]), [*below(MEASURED[1]), carried], below(MEASURED[2])]
    assert positions(own) == [("CRB", 300), ("CRB", 350), ("FBB", 250)]


def test_lines_below_stay_with_their_boards_where_every_row_has_a_blank_one_behind_it():
    own = [[[], *below(text), []] for text in MEASURED]
    assert positions(own) == [("CRB", 300), ("CRB", 350), ("FBB", 250)]


def test_words_below_a_figure_go_on_with_the_words_left_of_it():
    rows = [[10, "GD2", 5.5, 800], [None, "300 g/m²", "390 µm"], [20, "GC2", 6.5, 1100], [None, "250 g/m²", "400 µm"]]
    found = [line.offer for line in lines([HEADS, *rows]).values()]
    assert [(one.grade, one.grammage_gsm, one.caliper_um) for one in found] == [("CRB", 300, 390), ("FBB", 250, 400)]
