"""One question for each cause: its words, and the cells that it leads to."""

import pytest

from tests.intake.sheets import read


def asked(rows):
    (question,) = read(rows).questions
    return question


@pytest.mark.parametrize(
    ("head", "weight", "quoted"),
    [
        ("lb/MSF", 350, "350 lb/MSF"),
        ("lb/3000 ft²", 1100, "1100 lb/3,000 ft²"),
        ("g/m²", 1709, "1709 g/m²"),
        ("Basis weight", "350 lb/MSF", "350 lb/MSF"),
    ],
)
def test_an_impossible_weight_is_quoted_in_the_sheets_own_unit_and_shown_ahead_of_its_price(head, weight, quoted):
    question = asked([["Board", "pt", head, "USD/ST"], ["SBS", 18, weight, 1100]])
    assert question.text.startswith(f"No board of caliper “18” (457 µm) weighs {quoted}.")
    assert question.cells == (("Sheet1", "C2"), ("Sheet1", "D2"))


def test_impossible_weights_of_rows_alike_lead_each_to_its_own_cell():
    rows = [["SBS", 18, 350, 1140, "1–5 tons"], ["SBS", 18, 350, 1100, "5–20 tons"]]
    question = asked([["Board", "pt", "lb/MSF", "USD/ST", "Order size"], *rows])
    assert [cell for _, cell in question.cells] == ["C2", "D2", "C3", "D3"]


def test_the_question_about_the_ton_quotes_every_unit_that_its_answer_settles():
    prices = ["1160 USD/ton", "1140 USD/T", "1120 USD/ton"]
    rows = [["SBS", pt, 20 * pt, price] for pt, price in zip((16, 18, 20), prices, strict=True)]
    question = asked([["Board", "pt", "g/m²", "Price"], *rows])
    assert "“USD/ton” and “USD/T”" in question.text
    assert question.text.count("USD/ton") == 1
    assert [cell for _, cell in question.cells] == ["D2", "D3", "D4"]
    one = asked([["Board", "pt", "g/m²", "USD/ton"], ["SBS", 18, 360, 1100]])
    assert one.text.startswith("Is the ton of “USD/ton” a short ton")


_HEAD = ["Board", "pt", "lb/MSF", "Price"]


@pytest.mark.parametrize(
    ("rows", "key", "told"),
    [
        ([["SBS", 18, 74, 46.1]], "currency:", "Nothing says in which currency the price in D2 is."),
        (
            [["SBS", 16 + 2 * at, 66 + 8 * at, 46.1 + at] for at in range(2)],
            "basis:",
            "Nothing says what the prices in D2 and D3 are per.",
        ),
        (
            [["SBS", 14 + at, 58 + 4 * at, 46.1 + at] for at in range(6)],
            "currency:",
            "Nothing says in which currency 6 prices in column D are.",
        ),
    ],
)
def test_a_question_about_no_words_says_which_cells_it_is_about(rows, key, told):
    texts = {question.key: question.text for question in read([_HEAD, *rows]).questions}
    assert texts[key] == told


def test_one_answer_about_several_words_names_them_all():
    rows = [["SBS", "130 lb", 34.2], ["SBS", "140 lb", 35.2]]
    question = asked([["Board", "Weight", "USD/MSF"], *rows])
    assert question.text.startswith("Are “130 lb” and “140 lb” per 1,000 ft² or per 3,000 ft²")
    rows = [["SBS", 18, 350, 1100], ["CUK", 20, 360, 1000]]
    question = asked([["Board", "pt", "lb/MSF", "USD/ST"], *rows])
    assert question.text.endswith("One of the two must be wrong. So it is with “360”.")


def test_a_decimal_sign_is_asked_for_with_what_the_figure_then_is():
    question = asked([["Board", "pt", "lb/MSF", "Price", "Unit"], ["CRB C1S", 18, 71, "1,234", "SEK/tonne"]])
    assert [(choice.value, choice.label.partition(":")[0]) for choice in question.choices] == [
        (".", "1234"),
        (",", "1.234"),
    ]
