"""What a text says of one code is said of the rows that hold it, under the head by which the text calls it.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import lines

LANGUAGES = [
    ("Mill", "Mill A: US dollars per short ton, FOB Dayton", "USD", "short_ton"),
    ("Mill", "Mill A prices are US dollars per short ton, FOB Dayton", "USD", "short_ton"),
    ("Werk", "Werk A: Euro je Tonne, ab Werk", "EUR", "tonne"),
    ("Usine", "Usine A : euros par tonne, départ usine", "EUR", "tonne"),
    ("Fábrica", "Fábrica A: euros por tonelada métrica, en fábrica", "EUR", "tonne"),
    ("Bruk", "Bruk A: euro per 1000 kg, fritt fabrik", "EUR", "tonne"),
]


def priced(head, *notes):
    rows = [["SBS", 450, 350, "T", 1180], ["CUK", 500, 330, "A", 1080], ["CRB", 500, 400, "A", 742]]
    sheet = [["Halden Board"], ["Grade", "µm", "g/m²", head, "Price"], *rows, [], *([note] for note in notes)]
    return [
        (line.offer.currency, line.offer.basis and str(line.offer.basis), line.offer.delivered, str(line.state))
        for line in lines(sheet).values()
    ]


@pytest.mark.parametrize(("head", "note", "currency", "basis"), LANGUAGES)
def test_the_unit_and_freight_of_one_mill_are_no_others(head, note, currency, basis):
    other, *own = priced(head, note)
    assert other == (None, None, None, "question")
    assert own == [(currency, basis, False, "accepted")] * 2


def test_each_mill_has_its_own_where_one_text_tells_of_both():
    other, *own = priced("Mill", "Mill A: USD per short ton, FOB Dayton; Mill T: EUR per tonne, delivered")
    assert other == ("EUR", "tonne", True, "accepted")
    assert own == [("USD", "short_ton", False, "accepted")] * 2


@pytest.mark.parametrize("note", ["Mill prices in US dollars per short ton, FOB Dayton", "USD per short ton, FOB mill"])
def test_what_names_no_code_holds_for_all(note):
    assert priced("Mill", note) == [("USD", "short_ton", False, "accepted")] * 3


def test_a_unit_that_is_not_certain_is_asked_of_all():
    told = priced("Mill", "Mill A: US dollars per short ton before the yearly bonus")
    assert [state for *_, state in told] == ["question"] * 3


@pytest.mark.parametrize("head", ["Unit", "Code", "Item"])
@pytest.mark.parametrize("left_out", ["C", "P", "M", "T"])
def test_a_code_that_the_key_leaves_out_is_no_unit(head, left_out):
    key = ["A = USD per short ton, B = USD per cwt"] if head == "Unit" else []
    key = key or [f"{head} A: figure is US dollars per short ton", f"{head} B: figure is US dollars per cwt"]
    rows = [["SBS", 18, 220, left_out, 98], ["CUK", 20, 230, "B", 54], ["CRB", 24, 260, "A", 780]]
    sheet = [["Halden Board"], ["Grade", "Caliper (pt)", "Basis wt (lb/3000 sq ft)", head, "Price"], *rows]
    asked, *told = lines([*sheet, [], *([line] for line in key)]).values()
    assert (str(asked.state), asked.offer.price, asked.offer.basis) == ("question", 98, None)
    assert [(line.offer.basis, str(line.state)) for line in told] == [("cwt", "accepted"), ("short_ton", "accepted")]


def test_units_beside_a_code_of_the_key_stay_units():
    rows = [["SBS", 18, 220, "cwt", 58], ["CUK", 20, 230, "A", 1080], ["CRB", 24, 260, "ST", 780]]
    sheet = [["Price list, USD"], ["Grade", "Caliper (pt)", "Basis wt (lb/3000 sq ft)", "Unit", "Price"], *rows]
    found = lines([*sheet, [], ["A = USD per short ton"]]).values()
    assert [line.offer.basis for line in found] == ["cwt", "short_ton", "short_ton"]


def told(head, note):
    """Delivery and lead time of the rows of the mills A, B and C."""
    rows = [["A", "SBS", 18, 1200], ["B", "CUK", 20, 900], ["C", "CRB", 24, 700]]
    found = lines([["Halden Board"], [head, "Grade", "Caliper (pt)", "Price USD/ST"], *rows, [note]])
    return [(line.offer.delivered, line.offer.lead_days and line.offer.lead_days[1] // 7) for line in found.values()]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Mill", "Mill A delivered, all others FOB mill."), ("Werk", "Werk A frei Haus, alle anderen ab Werk."),
        ("Usine", "Usine A franco, toutes les autres départ usine."),
        ("Fábrica", "Fábrica A: entregado, las demás en fábrica."),
        ("Bruk", "Bruk A: fritt kund, alla andra fritt bruk."),
    ],
)  # fmt: skip
def test_the_others_are_those_that_are_not_named(head, note):
    assert told(head, note) == [(True, None), (False, None), (False, None)]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Mill", "Mill A and B: FOB mill. Mill C: delivered."), ("Mill", "Mills A, B ex works; mill C delivered"),
        ("Werk", "Werk A und B: ab Werk. Werk C: frei Haus."), ("Werk", "Werke A und B ab Werk; Werk C frei Haus"),
        ("Usine", "Usines A et B : départ usine. Usine C : franco."),
        ("Fábrica", "Fábricas A y B: en fábrica; fábrica C: entregado."),
        ("Bruk", "Bruk A och B: fritt bruk; bruk C: fritt kund."),
    ],
)  # fmt: skip
def test_codes_that_are_joined_are_meant_together(head, note):
    assert told(head, note) == [(False, None), (False, None), (True, None)]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Mill", "Mill A lead time 4 weeks, mill B 6 weeks"), ("Werk", "Werk A Lieferzeit 4 Wochen, Werk B 6 Wochen"),
        ("Usine", "Usine A délai 4 semaines, usine B 6 semaines"),
        ("Fábrica", "Fábrica A plazo 4 semanas, fábrica B 6 semanas"),
        ("Bruk", "Bruk A leveranstid 4 veckor, bruk B 6 veckor"),
    ],
)  # fmt: skip
def test_a_second_code_goes_on_with_the_first_ones_subject(head, note):
    assert told(head, note) == [(None, 4), (None, 6), (None, None)]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Mill", "Mill A: FOB Dayton; lead time for all mills 4 weeks"),
        ("Mill", "Mill A: ex works, all mills 4 weeks."),
        ("Werk", "Werk A: ab Werk; Lieferzeit für alle Werke 4 Wochen"),
        ("Usine", "Usine A : départ usine ; délai pour toutes les usines 4 semaines"),
        ("Fábrica", "Fábrica A: en fábrica; plazo para todas las fábricas 4 semanas"),
        ("Bruk", "Bruk A: fritt bruk; leveranstid för alla bruk 4 veckor"),
    ],
)  # fmt: skip
def test_what_is_said_of_all_behind_a_code_is_said_of_all(head, note):
    assert [delivered for delivered, _ in told(head, note)] == [False, None, None]
    assert {weeks for _, weeks in told(head, note)} <= {4, None}
    assert len({weeks for _, weeks in told(head, note)}) == 1


def test_all_grades_of_one_of_several_mills_are_its_own():
    note = "Mill A: FOB mill; all grades 4 weeks; Mill B: delivered; all grades 6 weeks"
    assert told("Mill", note) == [(False, 4), (True, 6), (None, None)]


@pytest.mark.parametrize("note", ["Mill A: ex works, lead time 4 weeks", "Mill A ex works; lead time 4 weeks."])
def test_all_that_follows_a_code_is_its_own(note):
    assert told("Mill", note) == [(False, 4), (None, None), (None, None)]


def test_prices_of_another_mill_are_not_those_of_the_first():
    assert len(set(told("Mill", "Mill A is closed; prices FOB mill B."))) == 1
