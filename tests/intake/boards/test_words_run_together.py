"""Words written as one, with a slip or in an unusual order: boards, ends of validity, times, firms."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.times.lead import lead_text


@pytest.mark.parametrize(
    ("name", "grade"),
    [
        ("Claycoated news back", "CRB"), ("claycoated newsback", "CRB"), ("claycoat news", "CRB"),
        ("whitelined chipboard", "CRB"), ("claycoated kraftback", "CUK"), ("foldingboxboard", "FBB"),
        ("plain chipboard", "URB"),
    ],
)  # fmt: skip
def test_a_boards_name_in_fewer_words(name, grade):
    assert find_grade(name).grade == grade


@pytest.mark.parametrize(
    ("name", "sides"),
    [("CUK 1-bestruken", 1), ("CUK 2-bestruken", 2), ("GD 2-bestruken", None), ("GC 1 bestruken", None)],
)
def test_the_number_of_coated_sides_is_no_part_of_a_grades_code(name, sides):
    assert find_grade(name).coated_sides == sides


@pytest.mark.parametrize("until", ["upto", "untill", "til", "up to"])
def test_until_as_it_is_often_written(until):
    rows = [["Sorte", "µm", "g/m²", "EUR/t"], ["GC1", 390, 240, 1138]]
    found = lines([[f"Offer valid {until} 19-Nov-2026"], [], *rows])
    assert found["D4"].offer.valid_until.isoformat() == "2026-11-19"


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("4 weks", (28, 28)), ("4-6 weeeks", (28, 42)), ("3 Wohcen", (21, 21)), ("5 semaines", (35, 35)),
        ("4 semanes", (28, 28)), ("3 vekor", (21, 21)),
    ],
)  # fmt: skip
def test_a_time_with_a_slip(text, days):
    assert lead_text(text).days == days


@pytest.mark.parametrize("text", ["4 reels", "4 rolls", "4 weak", "4 moths", "3 sheets", "4 tonnes"])
def test_other_words_are_no_times(text):
    assert lead_text(text) is None


@pytest.mark.parametrize(
    "name",
    ["Cartoncillo Ribalva del Sor, S.L.", "Graukarton Weiderer KG", "Carton Duplex Belrave SA", "Kartong Lyckvik AB"],
)
def test_a_firm_may_be_called_by_its_goods(name):
    assert read([[name], [], ["EUR/t"], ["Sorte", "µm", "g/m²", "Preis"], ["GC1", 390, 240, 1138]]).vendor == name


@pytest.mark.parametrize("title", ["Cartoncillo, S.L.", "Graukarton KG", "Graukarton Preise AG"])
def test_goods_alone_are_no_firm(title):
    assert read([[title], [], ["EUR/t"], ["Sorte", "µm", "g/m²", "Preis"], ["GC1", 390, 240, 1138]]).vendor is None
