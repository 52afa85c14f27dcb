"""Codes below a head that a key explains under the same head: 'U' and 'U: S = per short ton, C = per cwt'."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Item", "G", "Caliper (pt)", "Weight (lb/MSF)", "U", "Price", "T"]
_ROWS = [[1201, 1, 14, 59, "S", 1210, 1], [1202, 1, 18, 77, "C", 61.5, 2], [1204, 2, 18, 73, "F", 38.2, 2]]
_KEYS = [
    "G: 1 = solid bleached sulfate C1S, 2 = coated unbleached kraft",
    "U: S = per short ton, C = per cwt, F = per 1,000 sq ft",
    "T: 1 = FOB mill, 2 = delivered, freight included",
]


def _read(*keys, rows=_ROWS, head=None):
    return lines([["Osmere Paperboard Inc."], ["US dollars"], [], head or _HEAD, *rows, [], *([key] for key in keys)])


def _told(found):
    return [(str(line.state), line.offer.grade, line.offer.basis, line.offer.delivered) for line in found.values()]


def test_grade_unit_and_terms_of_each_row():
    assert _told(_read(*_KEYS)) == [
        ("accepted", "SBS", "short_ton", False),
        ("accepted", "SBS", "cwt", True),
        ("accepted", "CUK", "msf", True),
    ]


@pytest.mark.parametrize(
    ("column", "per", "collected", "delivered"),
    [
        ("Spalte", "je", "ab Werk", "frei Haus"),
        ("Colonne", "par", "départ usine", "franco"),
        ("Columna", "por", "ex works", "entregado"),
        ("Kolumn", "per", "fritt fabrik", "levererat"),
    ],
)
def test_in_other_languages(column, per, collected, delivered):
    units = f"U: S = {per} short ton, C = {per} cwt, F = {per} 1000 sq ft"
    told = _told(_read(f"{column} G: 1 = GZ; 2 = GN1", units, f"T: 1 = {collected}, 2 = {delivered}"))
    assert [(grade, basis, freight) for _, grade, basis, freight in told] == [
        ("SBS", "short_ton", False),
        ("SBS", "cwt", True),
        ("CUK", "msf", True),
    ]


def test_a_code_that_the_key_leaves_out_is_asked():
    rows = [*_ROWS, [1209, 3, 30, 105, "C", 34.9, 1]]
    assert codes(_read(*_KEYS, rows=rows)["F8"]) >= {"grade-unknown"}


def test_a_key_of_another_head_explains_nothing_here():
    found = _read("P: 1 = solid bleached sulfate C1S, 2 = coated unbleached kraft", *_KEYS[1:])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_codes_of_a_property_stay_as_they_are():
    head = ["Board", "F", "Caliper (pt)", "Weight (lb/MSF)", "USD/short ton"]
    rows = [["SBS C1S", 1, 14, 59, 1210], ["CUK", 2, 18, 73, 1040]]
    found = _read("F: 1 = smooth finish, 2 = linen finish", rows=rows, head=head)
    assert [(line.offer.grade, str(line.state)) for line in found.values()] == [
        ("SBS", "accepted"),
        ("CUK", "accepted"),
    ]


def test_a_sentence_behind_a_key_holds_for_the_rows_of_every_code():
    rows = [_HEAD, *_ROWS, [], [_KEYS[0]],
            ["U: S = per short ton; F = per 1,000 sq ft; C = per cwt. U.S. dollars."]]  # fmt: skip
    assert {line.offer.currency for line in lines(rows).values()} == {"USD"}


_BOARDS = [("Marlow Brown", 18, 1, 900), ("Marlow Grey", 20, 2, 700)]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("competes with SBS", "competes with CUK"),
        ("tested against SBS", "like CRB"),
        ("vergleichbar mit GC1", "ersetzt GD2"),
        ("comparable à GC1", "remplace GD2"),
        ("compite con GC1", "similar a GD2"),
        ("konkurrerar med GC1", "ersätter GD2"),
    ],
)
def test_what_a_board_is_held_against_is_not_its_grade(first, second):
    key = f"C: 1 = {first}, 2 = {second}"
    found = lines([("Board", "Caliper (pt)", "C", "USD/short ton"), *_BOARDS, [key]]).values()
    assert {line.offer.grade for line in found} == {None}
    named = [("Marlow Brown", 18, 900), ("Marlow Grey", 20, 700)]
    legend = f"Marlow Brown = {first}, Marlow Grey = {second}"
    found = lines([("Board", "Caliper (pt)", "USD/short ton"), *named, [legend]]).values()
    assert {line.offer.grade for line in found} == {None}


@pytest.mark.parametrize("words", ["SBS C1S, cup stock", "coated one side SBS", "white SBS"])
def test_what_else_is_said_of_a_board_hides_no_grade(words):
    found = lines([("Board", "Caliper (pt)", "C", "USD/short ton"), *_BOARDS, [f"C: 1 = {words}; 2 = CUK"]])
    assert [line.offer.grade for line in found.values()] == ["SBS", "CUK"]


@pytest.mark.parametrize(
    ("key", "delivered", "charges"),
    [
        ("D: 1 = delivered over 20,000 lb, 2 = FOB mill", None, []),
        ("D: 1 = delivered at extra cost, 2 = FOB mill", None, []),
        ("D: 1 = frei Haus gegen Aufpreis, 2 = ab Werk", None, []),
        ("D: 1 = franco moyennant supplément, 2 = départ usine", None, []),
        ("D: 1 = entregado con recargo, 2 = ex works", None, []),
        ("D: 1 = levererat mot extra kostnad, 2 = fritt fabrik", None, []),
        ("D: 1 = FOB dock plus $45/ST freight, 2 = FOB mill", False, [45]),
        ("D: 1 = delivered, 2 = FOB mill", True, []),
    ],
)
def test_freight_on_a_condition_is_read_as_a_remark_is(key, delivered, charges):
    rows = [("SBS", 18, 1, 1200), ("CUK", 20, 2, 900)]
    one, other = lines([("Board", "Caliper (pt)", "D", "USD/ST"), *rows, [key]]).values()
    assert (one.offer.delivered, [charge.price for charge in one.offer.charges]) == (delivered, charges)
    assert (other.offer.delivered, other.offer.charges) == (False, ())


@pytest.mark.parametrize(
    ("quantity", "unit", "second"),
    [
        ("Min. order", "short tons", "tonnes"),
        ("Mindestmenge", "short tons", "Tonnen"),
        ("Commande minimum", "short tons", "tonnes"),
        ("Pedido mínimo", "short tons", "toneladas métricas"),
        ("Minsta order", "short tons", "metriska ton"),
    ],
)
def test_units_right_behind_a_quantity_are_its_own(quantity, unit, second):
    rows = [("SBS", 18, 10, 1, 1200), ("CUK", 20, 20, 2, 900)]
    head = ("Grade", "Caliper (pt)", quantity, "U", "Price")
    found = list(lines([["Prices in USD per short ton"], head, *rows, [f"U: 1 = {unit}, 2 = {second}"]]).values())
    assert {line.offer.basis for line in found} == {"short_ton"}
    assert round(found[0].offer.minimum_kg) == 9072


def test_what_prices_are_per_behind_a_quantity_is_not_the_quantity_s():
    rows = [("SBS", 18, "10,000 lb", 1, 1200), ("CUK", 20, "10,000 lb", 2, 60)]
    head = ("Grade", "Caliper (pt)", "Min. order", "U", "Price USD")
    found = lines([head, *rows, ["U: 1 = per short ton, 2 = per cwt"]])
    assert [line.offer.basis for line in found.values()] == ["short_ton", "cwt"]


@pytest.mark.parametrize(
    "key",
    [
        "F: 1 = rolls, 2 = sheets",
        "F: 1 = reels, 2 = skids",
        "F: 1 = Rollen, 2 = Bogen",
        "F: 1 = bobines, 2 = feuilles",
        "F: 1 = bobinas, 2 = hojas",
        "F: 1 = rullar, 2 = ark",
    ],
)
def test_a_form_is_no_unit(key):
    rows = [("SBS", 18, 1, 1200), ("CUK", 20, 2, 900)]
    found = lines([("Board", "Caliper (pt)", "F", "USD/ST"), *rows, [key]])
    assert {(str(line.state), line.offer.basis) for line in found.values()} == {("accepted", "short_ton")}


@pytest.mark.parametrize(
    ("head", "weeks"),
    [("Lead time", "weeks"), ("Lieferzeit", "Wochen"), ("Délai", "semaines"), ("Plazo de entrega", "semanas"),
     ("Leveranstid", "veckor")],
)  # fmt: skip
def test_lead_times_under_their_head(head, weeks):
    rows = [("SBS", 18, "A", 1200), ("CUK", 20, "B", 900)]
    found = lines([("Board", "Caliper (pt)", head, "USD/ST"), *rows, [f"{head}: A = 3 {weeks}, B = 5 {weeks}"]])
    assert [line.offer.lead_days for line in found.values()] == [(21, 21), (35, 35)]


@pytest.mark.parametrize(
    ("head", "key", "code"),
    [
        ("L", "L: 1 = 3 weeks, 2 = 5 weeks", "lead-time-unread"),
        ("M", "M: 1 = 5,000 lb, 2 = 20,000 lb", "bracket-unread"),
    ],
)
def test_times_and_weights_under_a_head_that_nobody_knows_are_noted(head, key, code):
    rows = [("SBS", 18, 1, 1200), ("CUK", 20, 2, 900)]
    for line in lines([("Board", "Caliper (pt)", head, "USD/ST"), *rows, [key]]).values():
        assert (line.offer.lead_days, line.offer.minimum_kg, str(line.state)) == (None, None, "accepted")
        assert code in codes(line)


def test_days_of_payment_are_no_lead_time():
    rows = [("SBS", 18, 1, 1200), ("CUK", 20, 2, 900)]
    found = lines([("Board", "Caliper (pt)", "Payment", "USD/ST"), *rows, ["Payment: 1 = 30 days, 2 = 60 days"]])
    assert {line.offer.lead_days for line in found.values()} == {None}
    assert not any("lead-time-unread" in codes(line) for line in found.values())
