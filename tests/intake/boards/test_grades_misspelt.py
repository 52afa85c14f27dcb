"""Names of grades with a letter missing, doubled, swapped or wrong: read where one grade is meant, never as another."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.sheets import codes, lines
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.open_grades import GRADES
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import word_lists, words

_LETTERS = "abcdefghijklmnopqrstuvwxyz"
_SHORTEST = 5
LISTED = {
    fold(part)
    for meanings in word_lists().values()
    for listed in meanings.values()
    for text in listed
    for part in text.replace(".", " ").replace("-", " ").replace(",", " ").split()
}
NAMES = [
    (name, reading.grade)
    for meaning, names in words("grades").items()
    for name in names
    if meaning in GRADES and (reading := find_grade(name)) is not None and reading.grade is not None
]


@st.composite
def slips(draw):
    """A grade's name with one slip in a long word of it, and the grade."""
    name, grade = draw(st.sampled_from(NAMES))
    parts = name.split()
    long = [place for place, part in enumerate(parts) if len(part) >= _SHORTEST and part.isalpha()]
    if not long:
        return name, grade
    place = draw(st.sampled_from(long))
    word = parts[place]
    at = draw(st.integers(0, len(word) - 1))
    wrong = draw(st.sampled_from(_LETTERS))
    slip = draw(st.sampled_from(["missing", "doubled", "swapped", "wrong"]))
    if slip == "swapped" and at + 1 < len(word):
        misspelt = word[:at] + word[at + 1] + word[at] + word[at + 2 :]
    else:
        put = {"missing": "", "doubled": word[at] * 2}.get(slip, wrong)
        misspelt = word[:at] + put + word[at + 1 :]
    if fold(misspelt) in LISTED:
        # 'Blekt' for 'oblekt' and 'while' for 'white' are words: nobody can tell.
        return name, grade
    return " ".join([*parts[:place], misspelt, *parts[place + 1 :]]), grade


@given(slips())
def test_no_misspelling_of_a_grades_name_reads_as_another_grade(slip):
    text, grade = slip
    reading = find_grade(text)
    assert reading is None or reading.grade in (None, grade)


@pytest.mark.parametrize(
    ("text", "grade"),
    [
        ("Foldng boxboard", "FBB"), ("Folding boxbaord", "FBB"), ("Duplx board", "CRB"), ("Dulpex board", "CRB"),
        ("White lined chipbord", "CRB"), ("Recyled board coated", "CRB"), ("Coatd unbleached kraft", "CUK"),
        ("Uncoatd unbleached kraft", "UUK"), ("Sollid bleached sulfate", "SBS"), ("White line chipboard", "CRB"),
        ("Falschachtelkarton", "FBB"), ("gestrichner Recyclingkarton", "CRB"), ("Grakarton", "URB"),
        ("carton recylé couché", "CRB"), ("carton plian", "FBB"), ("cartulna folding", "FBB"),
        ("cartón recilado estucado", "CRB"), ("flaskartong", "FBB"), ("bestruken returkatong", "CRB"),
        ("Duplx", "CRB"), ("Foldng", "FBB"), ("Chipbord", "URB"), ("Solid bleeched sulfate", "SBS"),
    ],
)  # fmt: skip
def test_one_slip_in_a_long_word_leaves_the_grade_meant(text, grade):
    assert find_grade(text).grade == grade


@pytest.mark.parametrize(
    "text",
    ["Coate chipboard", "whte lined chipboard", "gestrichner Graukarton", "carton gris couhé", "cartón gris estucdo",
     "unxoated CUK", "clay coaetd newsboard", "White lime chipboard"],
)  # fmt: skip
def test_a_slip_in_what_makes_it_another_grade_leaves_it_open(text):
    assert find_grade(text).grade is None
    (line,) = lines([["EUR/t"], ["Board", "g/m²", "µm", "Price"], [text, 400, 520, 870]]).values()
    assert "grade-unknown" in codes(line)


@pytest.mark.parametrize(
    "name",
    ["Foldina board", "Duplix board", "Bleachex", "Coatex 250", "Ivory Duplan", "Solidan board", "Triplor",
     "Foldina", "Duple", "Triplax", "Triplax board", "Vinkartong", "Chipboarda"],
)  # fmt: skip
def test_a_coined_name_is_no_misspelling(name):
    reading = find_grade(name)
    assert reading is None or not reading.grades


@pytest.mark.parametrize("text", ["bleached kraft", "unbleached kraft", "Linen chipboard", "uncoated chipboard"])
def test_a_word_of_another_meaning_is_none_either(text):
    reading = find_grade(text)
    assert reading.grade == {"Linen chipboard": "URB", "uncoated chipboard": "URB"}.get(text)
