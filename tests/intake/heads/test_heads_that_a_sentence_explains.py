"""Prices under 'Column A', 'Staffel I' or a bare letter, and the sentence that says for which orders each is."""

import pytest

from tests.intake.sheets import book, grid, lines, read_workbook
from tracker.trade.offer import Answers


def sizes(heads, note, elsewhere=False):
    rows = [["EUR per tonne, delivered"], [None if elsewhere else note], [],
            ["Grade", "g/m²", "µm", *heads], ["GC2", 250, 410, *(1330 - 40 * n for n in range(len(heads)))],
            ["GD2", 320, 420, *(930 - 30 * n for n in range(len(heads)))]]  # fmt: skip
    letter = [grid([["Dear Ms. Orne,"], [note]], sheet="Letter")] if elsewhere else []
    found = read_workbook(book(*letter, grid(rows)), Answers({})).lines
    return [(str(line.state), *map(_plain, (line.offer.from_kg, line.offer.below_kg))) for line in found[: len(heads)]]


def _plain(kg):
    return None if kg is None else round(kg)


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (("A", "B"), "Column A is meant for orders under 4 tonnes, and column B for anything from 4 tonnes upwards."),
        (("Level 1", "Level 2"), "Level 1 applies to orders under 4 tonnes and level 2 to those of 4 tonnes or more."),
        (("Stufe I", "Stufe II"), "Stufe I gilt für Mengen unter 4 Tonnen und Stufe II ab 4 Tonnen."),
        (("A", "B"), "Le tarif A s'applique en dessous de 4 tonnes, le tarif B à partir de 4 tonnes."),
        (("Columna 1", "Columna 2"),
         "La columna 1 corresponde a pedidos de menos de 4 toneladas y la columna 2 a los de 4 toneladas o más."),
        (("Nivå 1", "Nivå 2"), "Nivå 1 gäller under 4 ton, och nivå 2 från 4 ton."),
    ],
)  # fmt: skip
@pytest.mark.parametrize("elsewhere", [False, True])
def test_columns_are_for_the_orders_that_a_sentence_says(heads, note, elsewhere):
    assert sizes(heads, note, elsewhere) == [("accepted", None, 4000), ("accepted", 4000, None)]


def test_three_columns_with_a_middle_one():
    note = "Staffel I gilt für Mengen unter 2 t, Staffel II von 2 t bis unter 10 t und Staffel III ab 10 t."
    found = [("accepted", None, 2000), ("accepted", 2000, 10000), ("accepted", 10000, None)]
    assert sizes(("Staffel I", "Staffel II", "Staffel III"), note, elsewhere=True) == found


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (("Column A", "Column B"), "Column A does not apply below 4 tonnes, column B not below 10 tonnes."),
        (("A", "B"), "Column A is for skids under 2,000 lb and column B for skids over 2,000 lb."),
        (("A", "B"), "Column A is for samples under 5 kg and column B for samples from 5 kg."),
        (("Staffel I", "Staffel II"), "Staffel I gilt nicht unter 4 t, Staffel II nicht unter 10 t."),
        (("Columna 1", "Columna 2"), "La columna 1 se aplica a bobinas de menos de 600 kg y la columna 2 a las demás."),
    ],
)
def test_what_a_column_is_not_for_or_what_a_skid_weighs_is_no_order_size(heads, note):
    assert all(state == "question" or (begins, ends) == (None, None) for state, begins, ends in sizes(heads, note))
    assert any(state == "question" for state, *_ in sizes(heads, note))


def test_one_column_alone_is_not_explained():
    rows = [["Column A is for orders under 4 tonnes."], [], ["Grade", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1330]]
    (line,) = lines(rows).values()
    assert (line.offer.from_kg, line.offer.below_kg) == (None, None)


def test_the_price_of_a_load_stands_beside_that_of_lighter_orders():
    note = "Price A is for orders under 10 tonnes; price B is for those who take a full truckload."
    assert sizes(("A", "B"), note)[0] == ("accepted", None, 10000)
    assert sizes(("A", "B"), note)[1][0] == "question"


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (("A", "B"), "Column A is for orders under 4 tonnes, and column B for the rest."),
        (("Spalte A", "Spalte B"), "Spalte A gilt für Aufträge unter 4 Tonnen, Spalte B für den Rest."),
        (("A", "B"), "La colonne A vaut pour les commandes de moins de 4 tonnes, la colonne B pour le reste."),
        (("A", "B"), "La columna A es para pedidos de menos de 4 toneladas y la columna B para el resto."),
        (("A", "B"), "Kolumn A gäller för order under 4 ton och kolumn B för resten."),
    ],
)
def test_the_rest_are_the_orders_from_there_on(heads, note):
    assert sizes(heads, note) == [("accepted", None, 4000), ("accepted", 4000, None)]


@pytest.mark.parametrize(
    "note",
    ["Column A is for rolls and column B for the rest.",
     "Column A is for orders under 4 tonnes, and column B for the rest of Ohio.",
     "Column A is for orders from 2 to 4 tonnes, and column B for the rest."],
)  # fmt: skip
def test_the_rest_of_what_is_no_single_limit_is_asked(note):
    assert {begins for _, begins, _ in sizes(("A", "B"), note)} <= {None, 2000}
    assert "question" in {state for state, *_ in sizes(("A", "B"), note)}


@pytest.mark.parametrize("second", ["orders of 4 ST or more", "the rest"])
def test_short_tons_by_their_letters(second):
    note = f"Column A is for orders under 4 ST and column B for {second}."
    rows = [["USD/ST"], ["Grade", "Caliper (pt)", "lb/MSF", "A", "B"], ["SBS", 18, 75, 1180, 1130], [], [note]]
    first, last = lines(rows).values()
    assert (_plain(first.offer.below_kg), _plain(last.offer.from_kg)) == (3629, 3629)
    assert (str(first.state), str(last.state)) == ("accepted", "accepted")
