"""A row's remark that names a last day without a word for validity: 'Restposten, nur bis 15.10.2026'."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

TITLE = ["Prices EUR/t, delivered, valid until 31.12.2026"]
HEADS = ["Grade", "g/m²", "µm", "Price", "Remarks"]


def remarked(words):
    rows = [TITLE, [], HEADS, ["GC1", 240, 385, 1249], ["GC1", 275, 450, 1150, words], ["GC2", 300, 500, 1208]]
    other, line, _ = lines(rows).values()
    assert other.offer.valid_until == date(2026, 12, 31)
    return line


@pytest.mark.parametrize(
    "words",
    [
        "Stock lot, until 15 October 2026 only",
        "only until 15 October 2026",
        "Restposten, nur bis 15.10.2026",
        "Sonderpreis nur bis 15.10.2026",
        "Fin de lot, seulement jusqu'au 15 octobre 2026",
        "jusqu'au 15 octobre 2026 seulement",
        "Saldo, solo hasta el 15.10.2026",
        "Restparti, endast till 2026-10-15",
    ],
)
def test_a_lot_offered_only_until_a_day_has_that_day(words):
    assert remarked(words).offer.valid_until == date(2026, 10, 15)


@pytest.mark.parametrize(
    "words",
    [
        "Restposten bis 15.10.2026",
        "nur lieferbar bis 15.10.2026",
        "Lieferzeit 4 Wochen, nur bis 15.10.2026",
        "order until 15 October 2026 only",
        "Energiezuschlag 30 EUR/t, nur bis 15.10.2026",
        "solo entrega hasta el 15.10.2026",
        "commande seulement jusqu'au 15 octobre 2026",
        "endast leverans till 2026-10-15",
    ],
)
def test_a_day_that_may_be_of_something_else_leaves_it_open(words):
    line = remarked(words)
    assert line.offer.valid_until is None
    assert "validity-unread" in codes(line)


@pytest.mark.parametrize("words", ["Lieferung bis 15.10.2026", "delivery until 15 October 2026", "nur bis 20 t"])
def test_what_is_delivered_until_a_day_holds_as_long_as_the_others(words):
    assert remarked(words).offer.valid_until == date(2026, 12, 31)
