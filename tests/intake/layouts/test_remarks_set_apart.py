"""A remark beside a board, with empty columns between, is said of that board alone."""

import pytest

from tests.intake.sheets import lines

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
