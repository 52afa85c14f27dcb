"""What the parts of an item number mean, where a note explains them; without one, nobody knows."""

import pytest

from tests.intake.sheets import lines

ENGLISH = (
    "How to read an item number: grade - caliper in thousandths of an inch - lb per MSF basis weight - width in inches"
)


def board(key, head="Item number", codes=("CRB-018-070-40.00", "CUK-021-088-52.00"), price="USD/ST"):
    found = lines([["Ferrowick Board LLC"], [key], [], [head, "Rolls", price], [codes[0], 9, 845], [codes[1], 4, 1080]])
    return [
        (
            str(line.state),
            line.offer.grade,
            None if line.offer.caliper_um is None else float(line.offer.caliper_um),
            None if line.offer.grammage_gsm is None else round(float(line.offer.grammage_gsm)),
        )
        for line in found.values()
    ]


def test_parts_that_a_key_explains_measure_the_board():
    assert board(ENGLISH) == [("accepted", "CRB", 457.2, 342), ("accepted", "CUK", 533.4, 430)]


@pytest.mark.parametrize(
    ("key", "head"),
    [
        ("Artikelnummer: Sorte - Flächengewicht g/m² - Dicke in µm", "Artikelnummer"),
        ("Référence : qualité - grammage g/m² - épaisseur µm", "Référence"),
        ("Referencia: calidad - gramaje g/m² - espesor µm", "Referencia"),
        ("Artikelnummer: kvalitet - ytvikt g/m² - tjocklek µm", "Artikelnummer"),
    ],
)
def test_keys_in_other_languages(key, head):
    told = board(key, head, ("GC1-250-410", "GD2-300-400"), "EUR/t")
    assert told == [("accepted", "FBB", 410.0, 250), ("accepted", "CRB", 400.0, 300)]


@pytest.mark.parametrize(
    ("key", "codes"),
    [
        ("Rolls on hand, ship from stock", ("CRB-018-070-40.00", "CUK-021-088-52.00")),
        ("Reading a lot number: grade - caliper in points - basis weight lb per MSF - width", ("CRB-018-070-40",) * 2),
        ("Reading an item number: grade - caliper - weight - width", ("CRB-018-070-40.00", "CUK-021-088-52.00")),
        (ENGLISH, ("CRB-018-070", "CUK-021-088")),
    ],
)
def test_parts_that_nothing_explains_are_asked_about(key, codes):
    assert {state for state, *_ in board(key, codes=codes)} == {"question"}


def test_a_column_of_measures_comes_before_the_item_number():
    rows = [[ENGLISH], [], ["Item number", "Caliper (pt)", "USD/ST"], ["CRB-018-070-40", 20, 845]]
    rows += [["CUK-021-088-52", 24, 1080]]
    assert [float(line.offer.caliper_um) for line in lines(rows).values()] == [508.0, 609.6]
