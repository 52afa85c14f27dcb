"""Notes on the lines that carry a mark, on those that carry none, and on the boards that they name."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import NoteCode

HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]


def listed(names, *notes):
    boards = [[name, weight, um, price] for name, (weight, um, price) in zip(names, FIGURES, strict=False)]
    return list(lines([["Prices delivered"], HEAD, *boards, [], *([note] for note in notes)]).values())


FIGURES = [(300, 390, 861), (270, 435, 1139), (250, 400, 1150)]


def leads(found):
    return [line.offer.lead_days for line in found]


def charges(found):
    return [[(str(one.price), one.currency) for one in line.offer.charges] for line in found]


@pytest.mark.parametrize(
    ("names", "note", "days"),
    [
        (["GD2 (b)", "GC2", "GC1"], "(b) ships in 7 weeks; lines not marked (b) ship in 2 weeks.", [49, 14, 14]),
        (["GD2 *", "GC2", "GC1"], "* lead time 6 weeks; all others 3 weeks", [42, 21, 21]),
        (["GD2 L", "GC2", "GC1 L"], "Grades marked L are in stock, all others 5 weeks", [0, 35, 0]),
        (["GD2 L", "GC2", "GC1 L"], "Mit L gekennzeichnete Sorten ab Lager, übrige 5 Wochen", [0, 35, 0]),
        (["GD2 L", "GC2", "GC1 L"], "Les qualités marquées L sont en stock, les autres 5 semaines", [0, 35, 0]),
        (["GD2 L", "GC2", "GC1 L"], "Calidades marcadas L disponibles de almacén, las demás 5 semanas", [0, 35, 0]),
        (["GD2 L", "GC2", "GC1 L"], "Sorter märkta L finns i lager, övriga 5 veckor", [0, 35, 0]),
    ],
)
def test_lead_times_of_marked_lines_and_of_the_others(names, note, days):
    assert leads(listed(names, note)) == [(count, count) for count in days]


def test_a_mark_that_no_line_carries_gives_no_line_its_lead_time():
    for note in ("* lead time 6 weeks; all others 3 weeks", "Grades marked L are in stock, all others 5 weeks"):
        assert leads(listed(["GD2", "GC2", "GC1"], note)) == [None] * 3


def test_letters_behind_names_are_marks_only_where_a_note_says_so():
    found = listed(["GD2 L", "GC2", "GC1"], "Lead time 3 weeks", "(L) Lorvain mill")
    assert leads(found) == [(21, 21)] * 3


def test_the_others_behind_numbered_lines_are_other_lines():
    rows = [
        ["Item", *HEAD],
        *([n, name, *figures] for n, (name, figures) in enumerate(zip(("GD2", "GC2", "GC1"), FIGURES, strict=True), 1)),
        [],
        ["b) Items 2 and 3: minimum order 8 t. All other items: 2 t."],
    ]
    assert [line.offer.minimum_kg for line in lines(rows).values()] == [2000, 8000, 8000]


def test_marks_over_the_columns_of_boards():
    rows = [
        ["Price list, EUR per tonne, delivered"],
        ["Grades marked L are in stock, all others 5 weeks"],
        ["Grade", "GC1", "GC2", "GD2 L"],
        ["Basis weight (g/m²)", 250, 300, 350],
        ["Caliper (µm)", 400, 490, 455],
        ["up to 2 t", 1240, 1185, 861],
        ["from 2 t", 1212, 1157, 833],
    ]
    found = lines(rows)
    assert {cell: line.offer.lead_days for cell, line in found.items() if cell.startswith(("C", "D"))} == {
        "C6": (35, 35),
        "C7": (35, 35),
        "D6": (0, 0),
        "D7": (0, 0),
    }


@pytest.mark.parametrize(
    "note",
    [
        "* add EUR 20 per tonne energy surcharge to items so marked.",
        "* 20 EUR/t Energiezuschlag auf so gekennzeichnete Sorten",
        "* supplément énergie de 20 EUR/t sur les articles marqués",
        "* recargo de energía 20 EUR/t a los artículos marcados",
        "* energitillägg 20 EUR/t på märkta artiklar",
    ],
)
def test_charges_of_marked_lines(note):
    assert charges(listed(["GD2 *", "GC2", "GC1"], note)) == [[("20", "EUR")], [], []]


def test_charges_of_unmarked_lines():
    found = listed(["GD2 *", "GC2", "GC1"], "Items not marked * carry an energy surcharge of EUR 20/t")
    assert charges(found) == [[], [("20", "EUR")], [("20", "EUR")]]


@pytest.mark.parametrize(
    "note",
    [
        "Auf GD- und GT-Sorten berechnen wir zusätzlich 24,50 €/t Energiezuschlag. GC bleibt davon frei.",
        "Energy surcharge EUR 24.50/t on GD and GT grades.",
        "Supplément énergie de 24,50 €/t sur les qualités GD et GT",
        "Recargo de energía de 24,50 €/t para las calidades GD y GT",
        "Energitillägg 24,50 €/t på kvaliteterna GD och GT",
    ],
)
def test_a_charge_on_several_kinds_of_board(note):
    assert charges(listed(["GD2", "GC2", "GT2"], note)) == [[("24.50", "EUR")], [], [("24.50", "EUR")]]


def test_a_charge_on_one_kind_is_not_on_another_of_the_same_grade():
    found = listed(["GD2", "GC2", "GT2"], "GD: energy surcharge EUR 24.50/t")
    assert charges(found) == [[("24.50", "EUR")], [], []]


@pytest.mark.parametrize(
    "note",
    [
        "From 5 t delivered; below that ex works plus EUR 52/t freight.",
        "Frei Haus ab 5 t, darunter ab Werk zzgl. 52 EUR/t Fracht.",
        "À partir de 5 t, franco ; en dessous, départ usine plus 52 EUR/t de transport",
        "Desde 5 t puesto en destino; por debajo, en fábrica más 52 EUR/t de flete",
        "Från 5 ton fritt levererat; därunter fritt fabrik plus frakt 52 EUR/ton",
    ],
)
def test_the_size_of_an_order_decides_its_freight(note):
    rows = [["Grade", "g/m²", "µm", "EUR/tonne up to 5 t", "EUR/tonne from 5 t", "EUR/tonne from 15 t"]]
    rows += [["GC2", 250, 400, 1264, 1218, 1197], ["GD2", 300, 390, 918, 872, 851], [], [note]]
    found = lines(rows)
    assert [line.offer.delivered for line in found.values()] == [False, True, True] * 2
    assert charges(found.values()) == [[("52", "EUR")], [], []] * 2
    assert not any(map(codes, found.values()))


def test_an_order_size_on_both_sides_of_that_weight_is_left_open():
    rows = [["Grade", "g/m²", "µm", "EUR/tonne up to 8 t", "EUR/tonne from 8 t"], ["GC2", 250, 400, 1264, 1218], []]
    found = lines([*rows, ["From 5 t delivered; below that ex works plus EUR 52/t freight."]])
    assert [line.offer.delivered for line in found.values()] == [None, True]
    assert charges(found.values()) == [[], []]


BIDS = ["Board", "Caliper (pt)", "lb/MSF", "Bid US$/cwt", "Remarks"]


@pytest.mark.parametrize(
    ("remark", "basis"),
    [
        ("this line per MSF, not per cwt", "msf"),
        ("priced not per cwt but per MSF", "msf"),
        ("Preis je MSF statt cwt", "msf"),
        ("prix par MSF et non par cwt", "msf"),
        ("precio por MSF y no por cwt", "msf"),
        ("pris per MSF, inte per cwt", "msf"),
        ("price not per MSF", "cwt"),
        # Both stand: which holds is asked.
        ("priced per MSF", None),
        ("price not per cwt", None),
    ],
)
def test_a_remark_that_denies_the_unit_of_its_column(remark, basis):
    rows = [BIDS, ["SBS C1S", 16, 68, 58.1], ["CRB C1S", 18, 70, Decimal("29.85"), remark], ["CRB", 24, 93, 43.25]]
    assert [line.offer.basis for line in lines(rows).values()] == ["cwt", basis, "cwt"]


@pytest.mark.parametrize(
    ("first", "second", "note"),
    [
        (True, False, "(a) delivered; not marked (a): EXW, freight 35 EUR/t"),
        (True, False, "(a) delivered; items not marked (a): EXW, freight 35 EUR/t"),
        (False, True, "(a) EXW, freight 35 EUR/t; items not marked (a): delivered"),
    ],
)
def test_a_colon_behind_the_sign_that_lines_do_not_carry(first, second, note):
    found = lines([HEAD, ["GD2 (a)", *FIGURES[0]], ["GC2", *FIGURES[1]], [], [note]])
    assert [line.offer.delivered for line in found.values()] == [first, second]
    assert charges(found.values()) == [[] if one else [("35", "EUR")] for one in (first, second)]


@pytest.mark.parametrize(
    "note",
    [
        "Items marked A or B: energy surcharge 17 EUR/t",
        "Items marked A, B: energy surcharge 17 EUR/t",
        "Mit A oder B gekennzeichnete Sorten: Energiezuschlag 17 EUR/t",
        "Les qualités marquées A ou B : supplément énergie 17 EUR/t",
        "Calidades marcadas A o B: recargo de energía 17 EUR/t",
        "Sorter märkta A eller B: energitillägg 17 EUR/t",
    ],
)
def test_a_charge_of_lines_with_one_of_several_letters(note):
    assert charges(listed(["GD2 A", "GC2 B", "GC1"], note)) == [[("17", "EUR")], [("17", "EUR")], []]


def test_a_charge_of_lines_with_one_letter_or_with_none_of_several():
    names = ["GD2 A", "GC2 B", "GC1"]
    assert charges(listed(names, "Items marked A: energy surcharge 17 EUR/t")) == [[("17", "EUR")], [], []]
    assert charges(listed(names, "Items not marked A or B: energy surcharge 17 EUR/t")) == [[], [], [("17", "EUR")]]


@pytest.mark.parametrize(
    "note",
    [
        "Grades marked A and B are in stock, all others 5 weeks",
        "Mit A und B gekennzeichnete Sorten ab Lager, übrige 5 Wochen",
        "Les qualités marquées A et B sont en stock, les autres 5 semaines",
        "Calidades marcadas A y B disponibles de almacén, las demás 5 semanas",
        "Sorter märkta A och B finns i lager, övriga 5 veckor",
    ],
)
def test_lines_with_one_of_several_letters_and_the_others(note):
    assert leads(listed(["GD2 A", "GC2 B", "GC1"], note)) == [(0, 0), (0, 0), (35, 35)]


@pytest.mark.parametrize(
    "note",
    [
        "Grades marked A to C are in stock, all others 5 weeks",
        "Items marked A: 3 weeks; B: 5 weeks",
        "Grades marked both A and B are in stock",
    ],
)
def test_letters_that_are_not_understood_give_no_line_a_lead_time(note):
    assert leads(listed(["GD2 A", "GC2 B", "GC1"], note)) == [None] * 3


def test_a_charge_of_letters_that_are_not_understood_is_not_certain():
    found = listed(["GD2 A", "GC2 B", "GC1"], "Items marked A to C: energy surcharge 17 EUR/t")
    assert all(NoteCode.NUMBER_AMBIGUOUS.value in codes(line) for line in found)


@pytest.mark.parametrize(
    "note", ["Items marked X: energy surcharge 17 EUR/t", "Items not marked X: energy surcharge 17 EUR/t"]
)
def test_a_charge_of_a_letter_that_no_line_carries_is_not_certain(note):
    assert all(NoteCode.NUMBER_AMBIGUOUS.value in codes(line) for line in listed(["GD2 A", "GC2 B", "GC1"], note))
