"""A remark beside a board, with empty columns between, is said of that board alone."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper", "USD/ST"]
BOARDS = [["SBS", "18 pt", 1200], ["CUK", "20 pt", 1000], ["CRB", "24 pt", 800]]


def told(remarks, gap, head=""):
    rows = [
        [*HEAD, *[""] * gap, head],
        *([*board, *[""] * gap, said] for board, said in zip(BOARDS, remarks, strict=True)),
    ]
    return [(line.offer.lead_days, line.offer.delivered) for line in lines(rows).values()]


REMARKS = {
    "en": ("Lead time 4 weeks", "Delivered"), "de": ("Lieferzeit 4 Wochen", "frei Haus"),
    "fr": ("Délai 4 semaines", "Franco"), "es": ("Plazo 4 semanas", "Portes pagados"),
    "sv": ("Leveranstid 4 veckor", "Fritt levererat"),
}  # fmt: skip


@pytest.mark.parametrize("gap", [0, 1, 2])
@pytest.mark.parametrize("said", REMARKS.values(), ids=REMARKS)
@pytest.mark.parametrize("head", ["", "Remarks"])
def test_a_remark_is_said_of_its_own_row(said, gap, head):
    assert told((*said, ""), gap, head) == [((28, 28), None), (None, True), (None, None)]
    assert told((said[0], "", ""), gap, head) == [((28, 28), None), (None, None), (None, None)]


@pytest.mark.parametrize("gap", [1, 2])
@pytest.mark.parametrize("said", ["All prices delivered", "Alle Preise frei Haus", "Alla priser fritt levererat"])
def test_what_speaks_of_all_prices_is_said_of_all(said, gap):
    assert told((said, "", ""), gap) == [(None, True)] * 3


def test_a_box_that_goes_on_below_the_boards_is_said_of_all():
    rows = [
        HEAD, BOARDS[0], [*BOARDS[1], "", "Lead time 4 weeks"], [*BOARDS[2], "", "Delivered"],
        ["", "", "", "", "Minimum order 5 ST"],
    ]  # fmt: skip
    assert {(line.offer.lead_days, line.offer.delivered) for line in lines(rows).values()} == {((28, 28), True)}


def test_a_key_of_the_heads_beside_the_boards_is_said_of_all():
    rows = [
        ["Grade", "Thickness", "Weight", "Price"], ["GD2", 400, 300, 950, "", "Thickness: um"],
        ["GD2", 475, 350, 940, "", "Weight: GSM"], ["GC2", 495, 300, 1160, "", "Price: € / 1000 kg"],
        ["GC2", 600, 350, 1145],
    ]  # fmt: skip
    assert {(line.offer.currency, line.offer.basis) for line in lines(rows).values()} == {("EUR", "tonne")}


def test_so_are_terms_that_have_each_a_label():
    rows = [HEAD, [*BOARDS[0], "", "Lead time: 4 weeks"], [*BOARDS[1], "", "Delivery: ex works"], BOARDS[2]]
    assert {(line.offer.lead_days, line.offer.delivered) for line in lines(rows).values()} == {((28, 28), False)}


def beside(remarks, gap, head=()):
    """The lines of the boards with these words beside them, under `head` if there is one."""
    rows = [[*HEAD, *[""] * gap, *head]]
    rows += [[*board, *[""] * gap, said] for board, said in zip(BOARDS, remarks, strict=True)]
    return list(lines(rows).values())


TERMS = {
    "en": ("Delivered", "Lead time 4 weeks", "Minimum order 5000 kg"),
    "de": ("Frei Haus", "Lieferzeit 4 Wochen", "Mindestmenge 5000 kg"),
    "fr": ("Franco", "Délai 4 semaines", "Minimum de commande : 5000 kg"),
    "es": ("Portes pagados", "Plazo 4 semanas", "Pedido mínimo 5000 kg"),
    "sv": ("Fritt levererat", "Leveranstid 4 veckor", "Minsta order 5000 kg"),
    "bullets": ("• Delivered", "• Lead time 4 weeks", "• Minimum order 5000 kg"),
    "numbered": ("1. Delivered", "2. Lead time 4 weeks", "3. Minimum order 5000 kg"),
}


@pytest.mark.parametrize("gap", [1, 2])
@pytest.mark.parametrize("said", TERMS.values(), ids=TERMS)
def test_lines_of_which_each_tells_another_term_are_said_of_all(said, gap):
    offers = [line.offer for line in beside(said, gap)]
    assert {(one.delivered, one.lead_days, one.minimum_kg) for one in offers} == {(True, (28, 28), 5000)}


@pytest.mark.parametrize(
    "said",
    [
        ("FOB mill", "Plus sales tax", "Lead time 4 weeks"), ("ab Werk", "zzgl. MwSt.", "Lieferzeit 4 Wochen"),
        ("Départ usine", "Délai 4 semaines", "Paiement 30 jours"),
        ("Franco fábrica", "Plazo 4 semanas", "Pago a 30 días"),
        ("Fritt fabrik", "exkl. moms", "Leveranstid 4 veckor"),
    ],
)  # fmt: skip
def test_so_are_terms_beside_one_of_payment_or_taxes(said):
    offers = [line.offer for line in beside(said, 1)]
    assert {(one.delivered, one.lead_days) for one in offers} == {(False, (28, 28))}


@pytest.mark.parametrize("gap", [1, 2])
def test_what_two_rows_tell_is_each_ones_own_with_the_rest(gap):
    said = beside(("Lead time 4 weeks", "Lead time 3 weeks", "Delivered"), gap)
    assert [line.offer.lead_days for line in said] == [(28, 28), (21, 21), None]
    assert [line.offer.delivered for line in said] == [None, None, True]
    assert not any(codes(line) & {"lead-time-unread"} for line in said)


@pytest.mark.parametrize("said", REMARKS.values(), ids=REMARKS)
def test_what_one_row_tells_may_be_said_of_the_others_too(said):
    time, delivery = said
    told = beside(("", time, ""), 1)
    assert [line.offer.lead_days for line in told] == [None, (28, 28), None]
    assert ["lead-time-unread" in codes(line) for line in told] == [True, False, True]
    told = beside((delivery, "", ""), 1)
    assert [line.offer.delivered for line in told] == [True, None, None]
    assert ["number-ambiguous" in codes(line) for line in told] == [False, True, True]
    # Right beside the price it stands in the board's row.
    assert not any(codes(line) & {"lead-time-unread"} for line in beside(("", time, ""), 0))


@pytest.mark.parametrize("gap", [0, 1])
@pytest.mark.parametrize(
    "said",
    ["Minimum order: 5000 kg per item", "Mindestmenge 5000 kg je Sorte", "Minimum de commande : 5000 kg par qualité",
     "Pedido mínimo: 5000 kg por calidad", "Minsta order 5000 kg"],
)  # fmt: skip
def test_a_smallest_order_beside_a_board_is_no_order_size(said, gap):
    told = beside((said, "", ""), gap)
    assert [line.offer.minimum_kg for line in told] == [5000, None, None]
    assert {(line.offer.from_kg, line.offer.below_kg) for line in told} == {(None, None)}
    assert ["bracket-unread" in codes(line) for line in told] == [False, gap > 0, gap > 0]


@pytest.mark.parametrize(
    "said",
    ["Delivered on orders over 20 t", "Lieferung frei Haus ab 5000 kg", "Franco à partir de 5000 kg",
     "Portes pagados a partir de 5000 kg", "Fraktfritt från 5000 kg"],
)  # fmt: skip
@pytest.mark.parametrize("gap", [0, 1])
def test_what_is_delivered_from_some_size_on_is_not_delivered(said, gap):
    assert [line.offer.delivered for line in beside((said, "", ""), gap)] == [None] * 3


HEADS = {"en": "Terms", "de": "Konditionen", "fr": "Conditions", "es": "Condiciones", "sv": "Villkor"}


@pytest.mark.parametrize("language", HEADS)
def test_terms_right_beside_the_boards_are_each_read(language):
    told = beside(TERMS[language], 0, (HEADS[language],))
    assert [line.offer.delivered for line in told] == [True, None, None]
    assert [line.offer.lead_days for line in told] == [None, (28, 28), None]
    assert [line.offer.minimum_kg for line in told] == [None, None, 5000]
    # They may be terms of all.
    assert all("lead-time-unread" in codes(line) for line in told[::2])
    assert all("bracket-unread" in codes(line) for line in told[:2])


@pytest.mark.parametrize(
    "said",
    [("CUK 6 weeks", "FOB mill"), ("CUK 6 Wochen", "ab Werk"), ("CUK 6 semaines", "départ usine"),
     ("CUK 6 semanas", "franco fábrica"), ("CUK 6 veckor", "fritt fabrik")],
)  # fmt: skip
def test_a_line_that_names_its_board_is_no_remark_on_the_one_beside_it(said):
    assert [line.offer.lead_days for line in beside((*said, ""), 1)] == [None, (42, 42), None]
