"""On how many sides board is coated: by words, counts, and what stands over the boards."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.boards.grade import find_grade


@pytest.mark.parametrize(("head", "cell"), [("Alt. offered?", "No"), ("Sample sent?", "no"), ("Alternative", "none")])
def test_no_to_another_question_says_nothing_of_coating(head, cell):
    rows = [["Board", "pt", "lb/MSF", "USD/ST", head], ["SBS C1S", 18, 75, 1190, cell], ["CRB C1S", 18, 70, 850, cell]]
    assert [line.offer.coated_sides for line in lines(rows).values()] == [1, 1]


def test_a_heading_tells_the_coating_of_boards_called_by_their_code():
    rows = [
        ["Artikel", "g/m²", "µm", "EUR/t"],
        ["GZ – Zellstoffkarton, beidseitig gestrichen"],
        ["GZ-250", 250, 310, 1490],
    ]
    assert lines(rows)["D3"].offer.coated_sides == 2


@pytest.mark.parametrize(("coat", "sides"), [("1-seitig", 1), ("2-seitig", 2), ("2", 2), ("2 sidor", 2), ("3", None)])
def test_a_coating_column_counts_sides(coat, sides):
    rows = [["Sorte", "Strich", "g/m²", "µm", "EUR/t"], ["Zellstoffkarton", coat, 250, 305, 1488],
            ["Zellstoffkarton", "1-seitig", 280, 340, 1480]]  # fmt: skip
    assert lines(rows)["E2"].offer.coated_sides == sides


@pytest.mark.parametrize(
    ("text", "grades", "sides"),
    [
        ("SUS uncoated back", ("CUK",), None), ("CUK Rückseite ungestrichen", ("CUK",), None),
        ("SBS verso non couché", ("SBS",), None), ("Unbleached kraft, uncoated back", (), None),
        ("SUS uncoated", ("CUK", "UUK"), 0),
    ],
)  # fmt: skip
def test_a_back_without_coating_says_nothing_of_the_face(text, grades, sides):
    reading = find_grade(text)
    assert (reading.grades, reading.coated_sides) == (grades, sides)


@pytest.mark.parametrize(
    ("board", "sides"),
    [
        ("SBS couche 1 cara rollo", 1), ("CRB (reverso gris) 1 cara", 1), ("SBS, est. 1 cara", 1),
        ("SBS cuché 2 caras", 2), ("SBS 1 sida", 1), ("GC1 1 Seite", 1), ("Chipboard gris sin couche", 0),
        ("SBS una cara gris", None),
    ],
)  # fmt: skip
def test_coated_sides_in_few_words(board, sides):
    read = find_grade(board)
    assert read is not None
    assert read.coated_sides == sides


@pytest.mark.parametrize(
    ("words", "sides"),
    [
        ("double face couchée", 2), ("chaque face couchée", 2),
        ("recto couché, 2ème face couchée", 2), ("recto couché et verso couché", 2), ("face couchée, dos couché", 2),
        ("recto couché / verso couché", 2), ("couché recto et verso", 2),
        ("recto couché", 1), ("face couchée", 1), ("recto couché, verso non couché", 1), ("face couchée, dos gris", 1),
        ("verso couché", None),
    ],
)  # fmt: skip
def test_a_coated_back_beside_a_coated_face_makes_two_sides(words, sides):
    assert find_grade(f"SBS {words}").coated_sides == sides


@pytest.mark.parametrize(
    ("title", "head", "heading", "sides"),
    [
        ("Prices in EUR per tonne", ["Board", "g/m²", "µm", "Price"], "Reels, coated one side", 1),
        ("Prices in EUR per tonne", ["Board", "g/m²", "µm", "Price"], "Reels, coated two sides", 2),
        ("Tarif", ["Qualité", "g/m²", "µm", "Prix"], "Bobines, couché une face, prix en €/t", 1),
        ("Preise in EUR je Tonne", ["Sorte", "g/m²", "µm", "Preis"], "Rollen, einseitig gestrichen", 1),
        ("Precios en EUR por tonelada métrica", ["Calidad", "g/m²", "µm", "Precio"], "Bobinas, estucado una cara", 1),
        ("Priser i EUR per ton (1000 kg)", ["Kvalitet", "g/m²", "µm", "Pris"], "Rullar, bestruken en sida", 1),
        ("Prices in EUR per tonne", ["Board", "g/m²", "µm", "Price"], "Reels, coated one side on request", None),
        ("Prices in EUR per tonne", ["Board", "g/m²", "µm", "Price"], "Reels, not coated on two sides", None),
    ],
)
def test_a_sub_heading_says_how_the_boards_below_it_are_coated(title, head, heading, sides):
    rows = [["Ferrowick Board"], [title], head, [heading], ["GC1", 230, 370, 1258], ["URB", 770, 1000, 700]]
    coated, chip = lines(rows).values()
    assert (coated.offer.grade, coated.offer.coated_sides) == ("FBB", sides)
    assert (chip.offer.grade, chip.offer.coated_sides) == ("URB", None)


@pytest.mark.parametrize(
    ("one", "two"),
    [
        ("gestr. 1-seitig", "gestr. 2-seitig"), ("1-seit. gestr.", "2-seit. gestr."), ("gestr. 1s", "gestr. 2s"),
        ("einseit. gestr.", "zweis. gestr."), ("coat. 1 side", "coat. 2 sides"), ("coated 1S", "coated 2S"),
        ("couch. 1F", "couch. 2F"), ("estuc. 1C", "estuc. 2C"), ("bestr. 1-sid.", "bestr. 2-sid."),
        ("enkelbestr.", "dubbelbestr."),
    ],
)  # fmt: skip
def test_coated_sides_in_short(one, two):
    said = [find_grade(f"GZ {words}") for words in (one, two)]
    assert [None if reading is None else reading.coated_sides for reading in said] == [1, 2]


@pytest.mark.parametrize("words", ["ungestr. 1-seitig", "Rückseite ungestr.", "gestr.", "estuc.", "bestr."])
def test_without_a_count_of_coated_sides_none_is_told(words):
    reading = find_grade(f"GZ {words}")
    assert reading is None or reading.coated_sides not in (1, 2)
