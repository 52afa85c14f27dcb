"""Which board a list's prices are for, by what stands around them."""

import pytest

from tracker.intake.values.boards.list_boards import board_of_list

LETTERS = [
    ("Folding boxboard GC1, reels. Prices EUR per tonne, DAP, fixed until 31 December 2027. 10 t each.", "FBB", None),
    ("Coated unbleached kraft (CUK), C1S, in sheets. Currency EUR. Valid until 31.1.2027. FCA mill.", "CUK", 1),
    ("Preise für GC2 Faltschachtelkarton frei Haus, gültig bis 31.12.2027; Mindestmenge 5 t", "FBB", None),
    ("Nous vous proposons : carton pliant GC2, couché une face. Prix franco en EUR/t, fermes jusqu'en mars", "FBB", 1),
    ("Cartulina folding GC1, en bobinas. Precios en EUR/t, puesto en destino, hasta el 31 de marzo", "FBB", None),
    ("Vi offererar falskartong GC2. Priser i EUR/t fritt kund, giltiga till 31 december, minst 5 ton", "FBB", None),
]  # fmt: skip


@pytest.mark.parametrize(("text", "grade", "sides"), LETTERS)
def test_the_first_words_of_a_letter_name_the_board(text, grade, sides):
    assert len(text) > 80
    found = board_of_list(text)
    assert found is not None
    assert (found.grade, found.coated_sides) == (grade, sides)


OTHERS = [
    "Also available in GC2",
    "Not for SBS",
    "This list replaces our GD2 list",
    "Auch in GC1 lieferbar",
    "Nicht für SBS",
    "GC2 auf Anfrage",
    "Remplace notre offre GD2",
    "Également disponible en GC2",
    "También disponible en GC2",
    "Sustituye a la tarifa GD2",
    "Finns även i GC2",
    "Ersätter GD2",
    "Energy surcharge for GD2: 12 EUR/t",
]


@pytest.mark.parametrize("note", [False, True])
@pytest.mark.parametrize("text", OTHERS)
def test_what_is_said_of_another_board_names_none(text, note):
    found = board_of_list(text, note=note)
    assert found is None or not found.grades
    long = f"{text}. Prices in EUR per tonne, delivered, valid until 31 December 2027, minimum order 5 tonnes"
    found = board_of_list(long)
    assert found is None or not found.grades


@pytest.mark.parametrize(
    ("text", "grade"),
    [
        ("GC2 price list, samples on request", "FBB"),
        ("Price list no. 12 SBS C1S", "SBS"),
        ("Alle Preise für GC2 frei Haus", "FBB"),
        ("Our new SBS programme", "SBS"),
    ],
)
def test_a_title_may_say_more_than_the_board(text, grade):
    found = board_of_list(text)
    assert found is not None
    assert found.grade == grade


@pytest.mark.parametrize(
    ("text", "grade"),
    [("Prices are for GC2 delivered", "FBB"), ("GC2, C1S", "FBB"), ("GC2 also in sheets of 70 x 100", None)],
)
def test_a_note_counts_where_it_names_the_board_and_no_more(text, grade):
    found = board_of_list(text, note=True)
    assert (found.grade if found is not None else None) == grade
