"""Letters in a column of any name, explained below the table: each line has its own terms and no other's."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 385, 235, 1312], ["GC2", 410, 250, 1240], ["GD2", 395, 300, 866]]
MADE, STOCK = ((35, 35), 5000), ((0, 0), None)


def terms(head, keys, *notes, title="EUR per tonne"):
    rows = [[title], ["Grade", "µm", "g/m²", "Price", head]]
    rows += [[*board, key] for board, key in zip(BOARDS, keys, strict=True)]
    found = lines([*rows, [], *([note] for note in notes)])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return [(line.offer.lead_days, line.offer.minimum_kg) for line in found.values()]


LEGENDS = [
    ("E = from stock, immediate delivery, no minimum", "F = made to order, lead time 5 weeks, minimum 5 t per item"),
    ("E = ab Lager, sofort lieferbar, keine Mindestmenge", "F = Anfertigung, Lieferzeit 5 Wochen, Mindestmenge 5 t"),
    ("E = sur stock, livraison immédiate, sans minimum", "F = sur fabrication, délai 5 semaines, minimum 5 t"),
    ("E = de existencias, entrega inmediata, sin mínimo", "F = sobre fabricación, plazo 5 semanas, mínimo 5 t"),
    ("E = från lager, omgående leverans, ingen minimikvantitet", "F = tillverkning, leveranstid 5 veckor, minst 5 t"),
]


@pytest.mark.parametrize("legend", LEGENDS)
@pytest.mark.parametrize("head", ["Code", "Clave", "Typ", "Remarks", "Availability", "Lieferart", "Whatever"])
def test_each_line_has_the_terms_of_its_own_letter(head, legend):
    assert terms(head, "FEE", *legend) == [MADE, STOCK, STOCK]


@pytest.mark.parametrize("legend", LEGENDS)
def test_no_minimum_of_a_letter_goes_before_the_smallest_order_of_all(legend):
    title = "EUR per tonne, minimum order 3 t"
    assert terms("Code", "FEE", *legend, title=title) == [MADE, STOCK, STOCK]
    of_all = [((35, 35), 5000), ((0, 0), 3000), ((0, 0), 3000)]
    assert terms("Code", "FEE", "E = from stock", legend[1], title=title) == of_all


@pytest.mark.parametrize(
    "text",
    [
        "E = from stock, no minimum; F = made to order, lead time 5 weeks, minimum 5 t",
        "E = ab Lager, ohne Mindestmenge; F = Lieferzeit 5 Wochen, Mindestmenge 5 t",
        "E = sur stock; F = délai 5 semaines, minimum 5 t",
        "E: de existencias, sin mínimo. F: plazo 5 semanas, mínimo 5 t",
        "E = från lager; F = leveranstid 5 veckor, minst 5 t",
        "E = from stock; F = lead time 5 weeks, minimum 5 t; G = lead time 8 weeks, minimum 20 t",
    ],
)
def test_letters_explained_in_one_text(text):
    assert terms("Code", "FEE", text) == [MADE, STOCK, STOCK]
    assert terms("Code", "EEE", text) == [STOCK] * 3


@pytest.mark.parametrize("head", ["Code", "Remarks"])
def test_a_letter_that_nothing_explains_has_no_other_letters_terms(head):
    assert terms(head, "FEZ", "E = from stock", "F = lead time 5 weeks, minimum 5 t") == [MADE, STOCK, (None, None)]


def test_a_minimum_charge_is_no_smallest_order():
    title = "EUR per tonne, minimum order 3 t"
    found = terms("Code", "EEE", "E = from stock, no minimum charge", title=title)
    assert found == [((0, 0), 3000)] * 3


@pytest.mark.parametrize("remark", ["no minimum", "ohne Mindestmenge", "sans minimum", "sin mínimo", "utan minimum"])
def test_a_remark_that_there_is_no_minimum_is_of_its_line(remark):
    found = terms("Remarks", (remark, None, None), title="EUR per tonne, minimum order 3 t")
    assert [least for _, least in found] == [None, 3000, 3000]
