"""A key 'A = delivered, B = FOB mill' explains codes of rows: it says nothing of the first and the second table."""

import pytest

from tests.intake.sheets import codes, lines


def _offers(note, *, column="Code", titles=((), ()), where="below"):
    """The lines of two tables whose rows have the codes A and B, in the order of the rows."""
    head = ["Grade", "Caliper (pt)", *([column] if column else []), "Price USD/short ton"]
    code = {"A": ["A"], "B": ["B"]} if column else {"A": [], "B": []}
    first = [*titles[0], head, ["SBS", 18, *code["A"], 1200], ["CUK", 20, *code["B"], 900], []]
    second = [*titles[1], head, ["CRB", 22, *code["A"], 800], ["SBS", 24, *code["B"], 1250], []]
    said = [[note], []]
    parts = {"above": [*said, *first, *second], "between": [*first, *said, *second], "below": [*first, *second, *said]}
    return [line.offer for line in lines(parts[where]).values()]


@pytest.mark.parametrize("titles", [((), ()), ([["Table A"]], [["Table B"]])])
@pytest.mark.parametrize("where", ["above", "between", "below"])
@pytest.mark.parametrize(
    "note",
    [
        "A = delivered, B = FOB mill", "A: delivered, B: FOB mill", "A = frei Haus, B = ab Werk",
        "A = franco, B = départ usine", "A = portes pagados, B = en fábrica",
        "A = fritt levererat, B = fritt fabrik",
    ],
)  # fmt: skip
def test_codes_of_rows_are_no_letters_of_tables(note, where, titles):
    delivered = [offer.delivered for offer in _offers(note, where=where, titles=titles)]
    assert delivered in ([None] * 4, [True, False, True, False])


def test_neither_are_times_smallest_orders_last_days_and_charges():
    times = [offer.lead_days for offer in _offers("A: Lieferzeit 4 Wochen, B: Lieferzeit 6 Wochen")]
    assert times == [(28, 28), (42, 42)] * 2
    smallest = [offer.minimum_kg for offer in _offers("A = minimum 5 short tons, B = minimum 2 short tons")]
    assert smallest[:2] == smallest[2:]
    assert smallest[0] != smallest[1]
    days = _offers("A: valid until 31 December 2026, B: valid until 31 January 2027")
    assert days[0].valid_until == days[2].valid_until != days[1].valid_until == days[3].valid_until
    charged = _offers("A = energy surcharge 3 %, B = energy surcharge 4 %")
    assert [str(charge.price) for offer in charged for charge in offer.charges] == ["3", "4"] * 2


@pytest.mark.parametrize("titles", [((), ()), ([["Table A"]], [["Table B"]])])
@pytest.mark.parametrize(
    "note",
    [
        "Mill A: delivered, mill B: FOB mill", "Quality A delivered, quality B FOB mill",
        "Plan A: delivered; plan B: FOB mill", "Option A: delivered; option B: FOB mill",
        "A quality: delivered, B quality: FOB mill", "Werk A: frei Haus, Werk B: ab Werk",
        "Variante A : franco, variante B : départ usine", "Variante A: portes pagados, variante B: en fábrica",
        "Alternativ A: fritt levererat, alternativ B: fritt fabrik",
    ],
)  # fmt: skip
def test_letters_of_other_things_are_none_of_tables(note, titles):
    assert [offer.delivered for offer in _offers(note, column=None, titles=titles)] == [None] * 4


def test_letters_by_place_are_no_names():
    assert [offer.delivered for offer in _offers("A: delivered, B: FOB mill", column=None)] == [None] * 4


@pytest.mark.parametrize("note", ["A: delivered, B: FOB mill", "Prices A delivered, B FOB mill"])
def test_letters_in_titles_are_names_where_no_row_has_them(note):
    titles = ([["Table A"]], [["Table B"]])
    assert [offer.delivered for offer in _offers(note, column=None, titles=titles)] == [True, True, False, False]


def test_a_table_is_told_by_its_letter_whatever_codes_the_rows_have():
    told = _offers("Table A delivered, table B FOB mill")
    assert [offer.delivered for offer in told] == [True, True, False, False]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum 5 tonnes in table A, 10 in table B.", "Minimum 5 tonnes in table A, 10 tonnes in table B.",
        "Mindestmenge 5 t in Tabelle A, 10 t in Tabelle B", "Minimum 5 t dans le tableau A, 10 t dans le tableau B",
        "Pedido mínimo 5 t en la tabla A, 10 t en la tabla B", "Minsta order 5 t i tabell A, 10 t i tabell B",
    ],
)  # fmt: skip
def test_a_figure_before_the_other_table_leaves_its_smallest_order_open(note):
    head = ["Grade", "g/m²", "Price EUR/tonne"]
    rows = [["Table A"], head, ["SBS", 300, 1200], [], ["Table B"], head, ["CRB", 350, 800], [], [note]]
    first, second = lines(rows).values()
    assert (first.offer.minimum_kg, second.offer.minimum_kg) == (5000, None)
    assert "bracket-unread" in codes(second)
