"""Rows whose money is marked: a column of any name holds the currency, or a sign that a sentence explains."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["CRB C1S", 410, 320, 1215], ["SBS C1S", 410, 322, 1185], ["CUK", 460, 352, 1395]]


def money(said, head, mark, *notes):
    """What the unmarked and the marked row are priced in, '?' where it is asked."""
    rows = [[said], ["Grade", "µm", "g/m²", "Price", head]]
    rows += [[*board, mark if n == 1 else None] for n, board in enumerate(BOARDS)]
    found = lines([*rows, [], *([note] for note in notes)])
    told = [
        f"{line.offer.currency}/{line.offer.basis}" if str(line.state) == "accepted" else "?" for line in found.values()
    ]
    assert told[0] == told[2]
    return told[0], told[1]


BY_CURRENCY = [
    ("All prices EUR per tonne unless marked US$.", "Marked"), ("All prices EUR per tonne unless marked US$.", "Mark"),
    ("All prices EUR per tonne except as marked.", "Marked"), ("All prices EUR per tonne unless noted.", "Hallmark"),
    ("Alle Preise in EUR je Tonne, sofern nicht mit US$ gekennzeichnet.", "Kennz."),
    ("Tous les prix en EUR la tonne sauf si marqués US$.", "Marqué"),
    ("Tous les prix en EUR la tonne sauf mention US$.", "Repère"),
    ("Todos los precios en EUR por 1000 kg salvo los marcados US$.", "Marcado"),
    ("Alla priser i EUR per 1000 kg om ej märkta US$.", "Märkt"),
]  # fmt: skip


@pytest.mark.parametrize(("said", "head"), BY_CURRENCY)
def test_a_currency_in_a_column_of_any_name_is_that_rows(said, head):
    assert money(said, head, "US$") == ("EUR/tonne", "USD/tonne")


BY_SIGN = [
    "All prices EUR per tonne unless marked {} (US$).", "All prices EUR per tonne unless marked with {} (US$).",
    "All prices EUR per tonne, except prices marked {}, which are US$.",
    "All prices EUR per tonne, except those marked {} in US$.",
    "Alle Preise in EUR je Tonne, sofern nicht mit {} (US$) gekennzeichnet.",
    "Tous les prix en EUR la tonne sauf ceux marqués {} (US$).",
    "Todos los precios en EUR por 1000 kg salvo los marcados con {} (US$).",
    "Alla priser i EUR per 1000 kg om ej märkta med {} (US$).",
]  # fmt: skip


@pytest.mark.parametrize("said", BY_SIGN)
@pytest.mark.parametrize("sign", ["*", "X"])
def test_a_sign_stands_for_the_currency_that_the_exception_names(said, sign):
    assert money(said.format(sign), "Marked", sign) == ("EUR/tonne", "USD/tonne")


@pytest.mark.parametrize("tick", ["X", "x", "✓", "yes"])
def test_a_row_ticked_below_a_currency_is_in_that_one(tick):
    assert money("All prices EUR per tonne unless marked.", "US$", tick) == ("EUR/tonne", "USD/tonne")


@pytest.mark.parametrize(("head", "mark"), [("Marked", "US$"), ("US$", "X")])
def test_where_the_title_makes_no_exception_a_marked_row_is_asked(head, mark):
    assert money("All prices EUR per tonne.", head, mark) == ("EUR/tonne", "?")


@pytest.mark.parametrize("mark", ["new", "FSC"])
def test_another_mark_names_no_money(mark):
    assert money("All prices EUR per tonne unless marked US$.", "Marked", mark) == ("EUR/tonne", "EUR/tonne")


TICKED = [
    ("All prices EUR per tonne unless marked US$.", "Marked"), ("Prices per tonne in EUR unless marked US$.", "Flag"),
    ("Prices per tonne, in EUR except items marked US$.", "Mark"),
    ("Alle Preise in EUR je Tonne, sofern nicht mit US$ gekennzeichnet.", "Kennz."),
    ("Alle Preise je Tonne in EUR, sofern nicht US$ markiert.", "Markierung"),
    ("Tous les prix en EUR la tonne sauf si marqués US$.", "Marqué"),
    ("Tous les prix en EUR la tonne sauf mention US$.", "Repère"),
    ("Todos los precios en EUR por 1000 kg salvo los marcados US$.", "Marcado"),
    ("Alla priser i EUR per 1000 kg om ej märkta US$.", "Märkt"),
]  # fmt: skip


@pytest.mark.parametrize(("said", "head"), TICKED)
@pytest.mark.parametrize("mark", ["x", "X", "*", "✓"])
def test_a_bare_mark_stands_for_the_one_currency_excepted(said, head, mark):
    assert money(said, head, mark) == ("EUR/tonne", "USD/tonne")


@pytest.mark.parametrize("said", ["Prices in EUR unless marked US$", "Priser i EUR om ej märkta US$"])
def test_the_currency_excepted_is_not_that_of_other_rows(said):
    rows = [[said], ["Grade", "µm", "g/m²", "Price per 1000 kg"], *BOARDS]
    assert [line.offer.currency for line in lines(rows).values()] == ["EUR"] * 3


@pytest.mark.parametrize(
    ("said", "note"),
    [
        ("All prices EUR per tonne unless marked US$.", "Marked grades are made to order."),
        ("Alle Preise in EUR je Tonne, sofern nicht mit US$ gekennzeichnet.", "Markierte Sorten nur auf Bestellung."),
    ],
)
def test_a_mark_that_may_mean_something_else_as_well_is_asked_about(said, note):
    assert money(said, "Marked", "x", note) == ("EUR/tonne", "?")


@pytest.mark.parametrize(("mark", "note"), [("x", "x = FSC certified"), ("*", "* FSC certified")])
def test_a_mark_that_a_note_explains_names_no_money(mark, note):
    assert money("All prices EUR per tonne unless marked US$.", "Marked", mark, note) == ("EUR/tonne", "EUR/tonne")


def test_an_x_below_another_head_names_no_money():
    assert money("All prices EUR per tonne unless marked US$.", "FSC", "x") == ("EUR/tonne", "EUR/tonne")


@pytest.mark.parametrize(
    "said",
    [
        "All prices EUR per tonne unless marked with an x, which are US$.",
        "All prices EUR per tonne unless marked x (US$).",
        "Alle Preise in EUR je Tonne, sofern nicht mit x (US$) gekennzeichnet.",
    ],
)
def test_a_tick_that_the_sentence_names_is_the_one_in_the_rows(said):
    assert money(said, "Marked", "x") == ("EUR/tonne", "USD/tonne")


def test_where_marked_rows_are_per_something_else_as_well_they_are_asked_about():
    assert money("All prices EUR per tonne unless marked US$ per cwt.", "Marked", "x") == ("EUR/tonne", "?")


EUR = "All prices EUR per tonne unless marked US$."
GERMAN = "Alle Preise in EUR je Tonne, sofern nicht mit US$ markiert."
FRENCH = "Tous les prix en EUR la tonne sauf si marqués US$."
SPANISH = "Todos los precios en EUR por 1000 kg salvo los marcados US$."
SWEDISH = "Alla priser i EUR per 1000 kg om ej märkta US$."


@pytest.mark.parametrize(
    ("said", "head", "note"),
    [
        (EUR, "Mark", "x - in stock"), (EUR, "Mark", "(x) stock items"), (EUR, "Mark", "x FSC certified"),
        (EUR, "Mark", "An x means FSC certified"), (EUR, "Mark", "Items with x are FSC certified"),
        (EUR, "Mark", "Mark: FSC certified"), (EUR, "Mark", "Grades with a mark ship from stock"),
        (GERMAN, "Markierung", "x - ab Lager"), (GERMAN, "Markierung", "x bedeutet ab Lager"),
        (FRENCH, "Repère", "x - en stock"), (SPANISH, "Marcado", "x - en stock"), (SWEDISH, "Märkt", "x - i lager"),
    ],
)  # fmt: skip
def test_a_mark_of_which_something_else_is_said_is_asked_about(said, head, note):
    assert money(said, head, "x", note) == ("EUR/tonne", "?")


@pytest.mark.parametrize("note", ["Sheets 20 x 30 in on request", "Mark Ostrander, Sales Manager"])
def test_sizes_and_persons_say_nothing_of_a_mark(note):
    assert money(EUR, "Mark", "x", note) == ("EUR/tonne", "USD/tonne")


@pytest.mark.parametrize(("marks", "state"), [(("*", "x"), "question"), (("x", "X"), "accepted")])
def test_of_two_kinds_of_mark_it_is_asked_which_is_meant(marks, state):
    rows = [[EUR], ["Grade", "µm", "g/m²", "Price", "Mark"], BOARDS[0]]
    found = lines([*rows, *([*board, mark] for board, mark in zip(BOARDS[1:], marks, strict=True))])
    assert [str(line.state) for line in found.values()] == ["accepted", state, state]
