"""What is said of one code, or of boards of some weight, is said of no other board of its grade."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]
_BOARDS = [["GC1", 250, 410, 1262], ["GC2", 280, 480, 1221], ["GC2", 350, 600, 1200], ["GD2", 280, 380, 821]]


def _offers(note):
    return [line.offer for line in lines([_HEAD, *_BOARDS, [], [note]]).values()]


def _days(note):
    return [offer.lead_days and offer.lead_days[1] for offer in _offers(note)]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time for GC1 is 15 working days, for all others 10 working days.",
        "Die Lieferzeit beträgt bei GC1 15 Arbeitstage, bei allen anderen Sorten 10 Arbeitstage.",
        "Le délai est de 15 jours ouvrables pour le GC1, de 10 jours ouvrables pour toutes les autres sortes.",
        "El plazo es de 15 días laborables para GC1, de 10 días laborables para las demás calidades.",
        "Leveranstid: 15 arbetsdagar för GC1, 10 arbetsdagar för alla övriga kvaliteter.",
    ],
)
def test_another_code_of_the_grade_is_one_of_the_others(note):
    assert _days(note) == [21, 14, 14, 14]


def test_codes_named_together_have_their_own():
    assert _days("Lead times: GC1 3 weeks, GC2 4 weeks, all others 2 weeks.") == [21, 28, 28, 14]


def test_a_grade_named_by_itself_is_all_of_it():
    assert _days("Lead times: FBB 3 weeks, all others 2 weeks.") == [21, 21, 21, 14]


def test_boards_of_some_weights_have_their_own():
    assert _days("Lead times: GC2 up to 300 g/m² 3 weeks, all others 5 weeks.") == [35, 21, 35, 35]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order GC1 5 t, all others 1 t.", "Mindestmenge GC1 5 t, alle anderen 1 t.",
        "Commande minimum GC1 5 t, toutes les autres 1 t.", "Pedido mínimo GC1 5 t, las demás 1 t.",
        "Minsta order GC1 5 t, alla andra 1 t.",
    ],
)  # fmt: skip
def test_the_smallest_order_of_one_code(note):
    assert [offer.minimum_kg for offer in _offers(note)] == [5000, 1000, 1000, 1000]


@pytest.mark.parametrize(
    "note",
    [
        "GD2 is made only from 5 t; the minimum order for all other grades is 1 t.",
        "GD2 fertigen wir erst ab 5 t; für alle anderen Sorten beträgt die Mindestmenge 1 t.",
        "Le GD2 n'est fabriqué qu'à partir de 5 t ; pour les autres sortes, la commande minimum est de 1 t.",
        "El GD2 solo se fabrica a partir de 5 t; para las demás calidades el pedido mínimo es de 1 t.",
        "GD2 tillverkas först vid 5 000 kg; för övriga kvaliteter är minsta order 1 000 kg.",
    ],
)
def test_a_board_made_from_some_weight_on_and_all_others(note):
    assert [offer.minimum_kg for offer in _offers(note)] == [1000, 1000, 1000, 5000]


@pytest.mark.parametrize(
    "note",
    [
        "GD2 is held in stock and sent out at once; every other grade is made to order and takes three weeks.",
        "GD2 ist sofort ab Lager lieferbar; alle anderen Sorten fertigen wir in 3 Wochen.",
    ],
)
def test_one_board_from_stock_and_all_others_made(note):
    assert _days(note)[:2] == [21, 21]
