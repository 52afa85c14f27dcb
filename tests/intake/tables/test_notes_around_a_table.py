"""Notes beside a table and paragraphs merged across it: words, and neither columns nor rows of it."""

from tests.intake.sheets import lines, merged, read

PARAGRAPH = (
    "We invoice in euro and per tonne. Orders below 3 t bear a supplement of 30 € per tonne. Ask for samples of GC2."
)
TABLE = [["Board", "g/m²", "µm", "Price"], ["GC1", 300, 450, 1120], ["GD2", 350, 470, 846]]


def test_a_paragraph_merged_across_a_table_is_a_note_and_no_row():
    rows = [*TABLE, [None], [PARAGRAPH]]
    found = read(rows, merged=merged((4, 0, 4, 3)))
    assert [(line.offer.currency, line.offer.basis) for line in found.lines] == [("EUR", "tonne")] * 2


def test_a_price_merged_over_several_boards_still_is_each_one_s():
    rows = [*TABLE, ["GD2", 400, 530]]
    found = lines(rows, merged=merged((2, 3, 3, 3)))
    assert [line.offer.price for line in found.values()][-1] == 846


def test_sentences_beside_a_table_that_run_on_below_it_are_its_notes():
    beside = [
        "About this sheet",
        "Prices are dollars, US, per short ton.",
        "All are shipped freight collect.",
        "Ask us about sizes.",
    ]
    rows = [["Board", "Caliper (pt)", "lb/MSF", "Price"], ["SBS", 18, 76, 1215], ["CUK", 21, 88, 1010]]
    rows = [[*row, None, words] for row, words in zip([*rows, [None] * 4], beside, strict=True)]
    (first, *_) = lines(rows).values()
    assert (first.offer.currency, first.offer.basis, first.offer.delivered) == ("USD", "short_ton", False)


def test_remarks_beside_the_rows_stay_a_column():
    rows = [
        ["Board", "Caliper (pt)", "lb/MSF", "USD/ST", None, "Remark"],
        ["SBS", 18, 76, 1215, None, "being discontinued"],
    ]
    (line,) = (lines([*rows, ["CUK", 21, 88, 1010]])["D2"],)
    assert line.offer.price == 1215
