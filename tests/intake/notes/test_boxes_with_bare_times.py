"""'Net 30' over 'FOB mill' and '4 weeks' beside the boards: a box of terms, though its time stands there by itself."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (("GC1", 250, 1200), ("GD2", 300, 900), ("GZ", 280, 1300))


def _offers(*beside, head=None):
    rows = ([*board, None, said] for board, said in zip(_BOARDS, beside, strict=True))
    return [line.offer for line in lines([["Grade", "Weight g/m²", "Price EUR/t", None, head], *rows]).values()]


@pytest.mark.parametrize(
    ("paid", "delivery", "time"),
    [
        ("Net 30", "FOB mill", "4 weeks"),
        ("Zahlung 30 Tage netto", "ab Werk", "4 Wochen"),
        ("Paiement à 30 jours", "départ usine", "4 semaines"),
        ("Pago a 30 días", "ex fábrica", "4 semanas"),
        ("Betalning 30 dagar netto", "fritt fabrik", "4 veckor"),
    ],
)
def test_what_stands_below_a_term_of_payment_is_said_of_all(paid, delivery, time):
    assert [(offer.delivered, offer.lead_days) for offer in _offers(paid, delivery, time)] == [(False, None)] * 3


def test_so_it_is_under_a_head_for_terms():
    assert [offer.delivered for offer in _offers("FOB mill", "4 weeks", None, head="Terms:")] == [False] * 3


def test_times_of_two_boards_stay_theirs():
    assert [offer.lead_days for offer in _offers("4 weeks", "3 weeks", "Net 30")] == [(28, 28), (21, 21), None]


def test_without_such_a_term_a_delivery_beside_one_board_may_be_its_own():
    assert [offer.delivered for offer in _offers("FOB mill", "4 weeks", "min. 5 t")] == [False, None, None]
