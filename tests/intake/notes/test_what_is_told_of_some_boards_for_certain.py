"""A time or a weight beside a board's name is its lead time or its smallest order only where the words around it say
so: what is in stock, what a truck carries, an extra week and a rhythm are none."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Grade", "g/m²", "Price EUR/t"]
_BOARDS = [["GC1", 250, 1200], ["GC2", 300, 1100], ["GD2", 350, 800]]
LEAD, LEAST = "lead-time-unread", "bracket-unread"


def _lines(*notes):
    return list(lines([_HEAD, *_BOARDS, [], *[[note] for note in notes]]).values())


def _days(*notes):
    return [line.offer.lead_days and line.offer.lead_days[1] for line in _lines(*notes)]


def _tonnes(*notes):
    found = [line.offer.minimum_kg for line in _lines(*notes)]
    return [None if kg is None else int(kg) // 1000 for kg in found]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order 5 t. GD2: 40 t available from stock.", "Minimum 5 t; of GD2 we have 40 t in stock.",
        "Mindestmenge 5 t. GD2: 40 t ab Lager verfügbar.", "Minimum 5 t. GD2 : 40 t disponibles en stock.",
        "Pedido mínimo 5 t. GD2: 40 t disponibles en almacén.", "Minsta order 5 t. GD2: 40 t finns i lager.",
        "Minimum order 5 t; GD2 available: 18 t.", "Minimum order 5 t. GD2: 24 t per truck.",
        "Minimum 5 t. GD2 : 24 t par camion.", "Pedido mínimo 5 t. GD2: 24 t por camión.",
        "Mindestmenge 5 t. GD2: 24 t je LKW.", "Minimum order 5 t. GD2 comes on 1 t pallets.",
    ],
)  # fmt: skip
def test_what_is_there_or_what_a_load_weighs_is_no_smallest_order(note):
    assert _tonnes(note) == [5, 5, 5]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum 5 t. GD2 in lots of 20 t", "Minimum 5 t. GD2 is made in runs of 60 t",
        "Mindestmenge 5 t. GD2 in Partien zu 20 t", "Minimum 5 t. GD2 par lots de 20 t",
        "Pedido mínimo 5 t. GD2 en lotes de 20 t", "Minsta order 5 t. GD2 i poster om 20 t",
        "Minimum 5 t. GD2 full trucks of 24 t", "Minimum order 5 t, GD2 10",
    ],
)  # fmt: skip
def test_a_weight_that_may_be_one_leaves_its_board_without(note):
    assert _tonnes(note) == [5, 5, None]
    assert LEAST in codes(_lines(note)[2])


@pytest.mark.parametrize(
    "note",
    [
        "Minimum 5 t. GD2 10 t", "Minimum 5 t. GD2 from 10 t only.", "Minimum 5 t. GD2 is made from 10 t.",
        "Mindestmenge 5 t. Für GD2 10 t", "Minimum 5 t. Pour le GD2, 10 t", "Pedido mínimo 5 t. Para GD2, 10 t",
        "Minsta order 5 t. För GD2 10 t", "Minimum 5 t. GD2 is made for orders of 10 t and up.",
    ],
)  # fmt: skip
def test_a_weight_with_nothing_else_beside_its_board_is_one(note):
    assert _tonnes(note) == [5, 5, 10]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks. GD2: plus 1 week.", "Lead time 4 weeks. GD2: +2 weeks",
        "Lieferzeit 4 Wochen. GD2: + 2 Wochen",
        "Délai 4 semaines ; GD2 une semaine de plus", "Délai 4 semaines. GD2 : 2 semaines supplémentaires",
        "Plazo 4 semanas. GD2: + 2 semanas", "Plazo 4 semanas. GD2: 2 semanas adicionales",
        "Leveranstid 4 veckor. GD2: 2 veckor till", "Leveranstid 4 veckor. GD2 en vecka längre",
        "Lead time 4 weeks; GD2 twice as long", "Lieferzeit 4 Wochen; GD2 halb so lang",
        "Lead time 4 weeks; for GD2 add another week.", "Lead time 4 weeks. GD2 takes 2 weeks longer",
        "Lead time 4 weeks. GD2 for 2 weeks only.", "Lead time 4 weeks. GD2 available 2 weeks a month.",
        "Lead time 4 weeks. GD2 is made only every third week", "Leveranstid 4 veckor. GD2 körs var 3:e vecka",
        "Lead time 4 weeks. GD2 is out of stock until May.", "Lead time 4 weeks. GD2 may take 8 weeks.",
        "Lead time 4 weeks. First orders of GD2 may take 8 weeks.", "Lead time 4 weeks, GD2 18",
        "Lieferzeit 4 Wochen. GD2 ab Lager, Zwischenverkauf vorbehalten",
    ],
)  # fmt: skip
def test_another_time_that_is_not_told_for_certain_leaves_its_board_alone_without(note):
    assert _days(note) == [28, 28, None]
    assert LEAD in codes(_lines(note)[2])


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks, GD2 6.", "Lieferzeit 4 Wochen, GD2 6", "Délai 4 semaines, GD2 6", "Plazo 4 semanas, GD2 6",
        "Leveranstid 4 veckor, GD2 6", "Every grade but GD2 ships in 4 weeks, GD2 in 6.",
        "Lead time 4 weeks; the exception is GD2 at 6 weeks", "Lead time 4 weeks. Except GD2: 6 weeks",
        "GD2 6 weeks, everything else 4 weeks",
    ],
)  # fmt: skip
def test_a_figure_or_a_time_behind_a_board_is_that_boards(note):
    assert _days(note) == [28, 28, 42]


def test_exceptions_in_turn_are_each_read():
    note = "Lead time is 4 weeks, except GC2, which comes in 2 weeks, and GD2, which takes 6."
    assert _days(note) == [28, 14, 42]


@pytest.mark.parametrize(
    "notes",
    [
        ("Lead time 4 weeks.", "Sheets take 6 weeks."), ("Lieferzeit 4 Wochen.", "Bogen brauchen 6 Wochen."),
        ("Délai 4 semaines.", "Les feuilles demandent 6 semaines."),
        ("Plazo 4 semanas.", "Las hojas tardan 6 semanas."), ("Leveranstid 4 veckor.", "Ark tar 6 veckor."),
        ("Lead time 4 weeks, 28 x 40 in from stock.",), ("Now 4 weeks for rolls, normally 6 weeks for sheets.",),
        ("Usual lead time 4 weeks, at present the mill is sold out until May.",),
        ("Lieferzeit üblich 4 Wochen, derzeit ist das Werk bis Mai ausverkauft.",),
    ],
)  # fmt: skip
def test_boards_that_may_or_may_not_be_meant_have_no_time(notes):
    assert _days(*notes) == [None] * 3


def test_sheets_have_the_time_of_sheets_where_rows_are_such():
    rows = [["GC1", 250, "70 x 100", 1200]]
    (line,) = lines(
        [["Grade", "g/m²", "Sheet cm", "EUR/t"], *rows, [], ["Lead time 4 weeks."], ["Sheets take 6 weeks."]]
    ).values()
    assert line.offer.lead_days == (42, 42)


def test_rolls_have_the_time_of_all():
    sheet = [
        ["Rolls"],
        ["Grade", "g/m²", "EUR/t"],
        ["GC1", 250, 1200],
        [],
        ["Lead time 4 weeks."],
        ["Sheets take 6 weeks."],
    ]
    (line,) = lines(sheet).values()
    assert line.offer.lead_days == (28, 28)


def test_a_size_with_a_term_of_its_own_is_not_every_boards():
    assert {line.offer.sheet_mm for line in _lines("Lead time 4 weeks, 28 x 40 in from stock.")} == {None}
    assert None not in {line.offer.sheet_mm for line in _lines("Sheets 28 x 40 in, lead time 4 weeks.")}


@pytest.mark.parametrize("goods", ["stock items", "rolls", "SBS"])
def test_a_last_day_of_some_goods_is_not_every_prices(goods):
    (line, *_) = _lines(f"Offer dated November 3, 2026 valid: {goods} to December 18, 2026")
    assert line.offer.valid_until is None
    assert "validity-unread" in codes(line)
    (line, *_) = _lines("Offer valid: from November 3, 2026 to December 18, 2026")
    assert str(line.offer.valid_until) == "2026-12-18"


@pytest.mark.parametrize("days", ["Mon-Fri", "Monday"])
def test_days_of_the_week_are_no_place_where_goods_are_delivered(days):
    assert _lines(f"Delivery {days}.")[0].offer.delivered is None
    assert _lines("Delivered Montpelier.")[0].offer.delivered is True
