"""One sentence gives a lead time to all and others to several of the boards, by grade and by what they measure."""

import pytest

from tests.intake.sheets import codes, lines

_BOARDS = [["SBS", 260, 325, 1390], ["GC1", 250, 410, 1262], ["GD2", 240, 300, 821], ["GD2", 280, 380, 815]]


def _lines(note, head=("Grade", "g/m²", "µm", "EUR/t"), rows=_BOARDS):
    return list(lines([list(head), *rows, [], [note]]).values())


def _weeks(note):
    return [None if (days := line.offer.lead_days) is None else days[1] // 7 for line in _lines(note)]


@pytest.mark.parametrize(
    "note",
    [
        (
            "Lead time is 4 weeks, except GD2, which is delivered in 2 weeks, and weights above 255 g/m², for which "
            "6 weeks must be allowed."
        ),
        (
            "Die Lieferzeit beträgt 4 Wochen, außer für GD2, das in 2 Wochen geliefert wird, und für Grammaturen über "
            "255 g/m², für die 6 Wochen gelten."
        ),
        (
            "Le délai est de 4 semaines, sauf pour le GD2, livré en 2 semaines, et pour les grammages supérieurs à "
            "255 g/m², livrés en 6 semaines."
        ),
        (
            "El plazo de entrega es de 4 semanas, salvo el GD2, que se entrega en 2 semanas, y los gramajes superiores "
            "a 255 g/m², para los que hay que contar con 6 semanas."
        ),
        (
            "Leveranstiden är 4 veckor, utom för GD2, som levereras på 2 veckor, och för ytvikter över 255 g/m², där "
            "man får räkna med 6 veckor."
        ),
    ],
)
def test_each_of_them_has_its_own_and_none_that_is_meant_twice(note):
    assert _weeks(note) == [6, 4, 2, None]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time is 4 weeks, except boards heavier than 255 g/m²: 6 weeks.",
        "Die Lieferzeit beträgt 4 Wochen, ausgenommen Grammaturen ab 255 g/m², hier 6 Wochen.",
        "Le délai est de 4 semaines, sauf pour les grammages supérieurs à 255 g/m² : 6 semaines.",
        "El plazo de entrega es de 4 semanas, salvo los gramajes superiores a 255 g/m², que se entregan en 6 semanas.",
        "Leveranstiden är 4 veckor, utom för ytvikter över 255 g/m², som tar 6 veckor.",
    ],
)
def test_boards_are_excepted_by_their_weight(note):
    assert _weeks(note) == [6, 4, 4, 6]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks, except boards over 400 µm.",
        "Lieferzeit 4 Wochen, außer über 400 µm.",
        "Le délai est de 4 semaines, sauf au-delà de 400 µm.",
        "El plazo es de 4 semanas, salvo los espesores superiores a 400 µm, a consultar.",
        "Leveranstiden är 4 veckor, utom för tjocklekar över 400 µm.",
    ],
)
def test_boards_excepted_without_a_time_have_none(note):
    assert _weeks(note) == [4, None, 4, 4]


def test_boards_excepted_together_have_one_time():
    assert _weeks("Lead time 3 weeks except SBS and boards over 390 µm, 5 weeks.") == [5, 5, 3, 3]


@pytest.mark.parametrize(
    "note",
    ["Lead time 4 weeks, except boards over 400 µm, which take 6 weeks.", "Boards over 24 pt: lead time 6 weeks",
     "Lieferzeit 4 Wochen, außer ab 400 µm: 6 Wochen", "Délai 4 semaines, sauf au-delà de 400 µm : 6 semaines"],
)  # fmt: skip
def test_a_board_that_does_not_say_what_it_measures_has_no_time(note):
    (line,) = _lines(note, ("Grade", "g/m²", "EUR/t"), [["GC1", 250, 1262]])
    assert (line.offer.lead_days, codes(line)) == (None, {"lead-time-unread"})


def test_a_surcharge_by_what_a_board_measures_is_not_known_where_that_is_not_said():
    (line,) = _lines("24 pt and up: energy surcharge 20 EUR/t", ("Grade", "g/m²", "EUR/t"), [["GC1", 250, 1262]])
    assert [charge.price for charge in line.offer.charges] == [0]


@pytest.mark.parametrize("note", ["EUR/t. Minimum order 2 t, except for boards over 255 g/m²: 5 t."])
def test_the_smallest_order_of_boards_excepted_by_weight(note):
    assert [line.offer.minimum_kg for line in _lines(note)] == [5000, 2000, 2000, 5000]


def test_what_another_board_is_excepted_from_is_not_said_of_it():
    assert _weeks("Lead time 3 weeks except SBS, 5 weeks, and GD2, ex works.") == [None, 3, None, None]


@pytest.mark.parametrize(
    "note",
    [
        "All grades 4 weeks except GD2 300 µm and below 2 weeks.",
        "Lead time 4 weeks except GD2 310 µm and below 2 weeks",
        "Alle Sorten 4 Wochen außer GD2 bis 300 µm 2 Wochen.",
        "Alle Sorten 4 Wochen außer GD2 300 µm und darunter 2 Wochen",
        "Toutes qualités 4 semaines sauf GD2 jusqu'à 300 µm 2 semaines.",
        "Todas las calidades 4 semanas salvo GD2 hasta 300 µm 2 semanas.",
        "Alla kvaliteter 4 veckor utom GD2 upp till 300 µm 2 veckor.",
    ],
)  # fmt: skip
def test_a_grade_is_excepted_up_to_a_measure(note):
    assert _weeks(note) == [4, 4, 2, 4]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks except GD2, net 30 days.", "Lieferzeit 4 Wochen außer GD2, Zahlung 30 Tage.",
        "Délai 4 semaines sauf GD2, paiement à 30 jours.", "Plazo 4 semanas salvo GD2, pago a 30 días.",
        "Leveranstid 4 veckor utom GD2, betalning 30 dagar.",
    ],
)  # fmt: skip
def test_days_of_payment_are_not_the_time_of_the_boards_excepted(note):
    assert _weeks(note) == [4, 4, None, None]
