"""Signs of footnotes that stand in a cell of their own."""

from tests.intake.sheets import lines

HEAD = ["Grade", "pt", "lb/MSF", "USD/ST", "Note"]
NOTES = [[], ["Lead time 3 weeks"], ["1) Lead time 6 weeks"], ["2) Minimum order 5 short tons"]]


def terms(rows):
    return [(line.offer.lead_days, line.offer.minimum_kg is not None) for line in lines(rows).values()]


def test_a_sign_alone_in_a_cell_gives_its_row_the_note():
    rows = [["SBS C1S", 18, 75, 1178], ["SBS C1S", 20, 81, 1160, "1)"], ["CRB", 20, 85, 800, "2)"]]
    assert terms([HEAD, *rows, *NOTES]) == [((21, 21), False), ((42, 42), False), ((21, 21), True)]


def test_signs_that_count_the_rows_carry_no_note():
    rows = [["1)", "SBS C1S", 18, 75, 1178], ["2)", "SBS C1S", 20, 81, 1160]]
    head = ["No.", *HEAD[:-1]]
    numbered = [[], ["1) Minimum order 5 short tons"], ["2) Prices are net"]]
    assert terms([head, *rows, *numbered]) == [(None, True), (None, True)]
