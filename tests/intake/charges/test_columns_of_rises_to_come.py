"""By how much prices will rise some day is charged to nobody, and a price announced is none yet."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_HEAD = ["Sorte", "g/m²", "µm", "Preis €/t"]
_ROWS = [["GC1", 250, 410, 1248], ["GC1", 300, 495, 1238], ["GD2", 350, 465, 808]]


def _lines(head, figures):
    rows = [[*row, figure] for row, figure in zip(_ROWS, figures, strict=True)]
    return lines([[*_HEAD, head], *rows])


@pytest.mark.parametrize(
    "head",
    [
        "Announced for January 2027 €/t",
        "Planned for 2027 €/t",
        "Angekündigt für Januar 2027 €/t",
        "Annoncé pour janvier 2027 €/t",
        "Anunciado para enero de 2027 €/t",
        "Aviserad från januari 2027 €/t",
    ],
)
def test_an_announced_rise_is_not_charged(head):
    found = _lines(head, (40, 40, 30))
    assert [line.offer.charges for line in found.values()] == [()] * len(_ROWS)


@pytest.mark.parametrize("head", ["for January 2027 €/t", "Angekündigter Energiezuschlag €/t"])
def test_whether_a_charge_of_a_later_day_is_borne_is_not_known(head):
    found = _lines(head, (40, 40, 30))
    assert {charge.currency for line in found.values() for charge in line.offer.charges} == {OPEN}


@pytest.mark.parametrize("head", ["Energiezuschlag €/t", "Palettenumlage €/t"])
def test_a_charge_that_is_not_announced_is_charged(head):
    assert [charge.price for line in _lines(head, (40, 40, 30)).values() for charge in line.offer.charges] == [
        40,
        40,
        30,
    ]


@pytest.mark.parametrize(
    "head",
    [
        "Announced price for January 2027 €/t",
        "Angekündigter Preis ab Januar 2027 €/t",
        "Prix annoncé pour janvier 2027 €/t",
        "Precio anunciado para enero de 2027 €/t",
        "Aviserat pris från januari 2027 €/t",
    ],
)
def test_an_announced_price_is_none_beside_the_price(head):
    assert list(_lines(head, (1290, 1280, 840))) == ["D2", "D3", "D4"]


def test_alone_an_announced_price_is_the_price():
    rows = [["Sorte", "g/m²", "µm", "Angekündigter Preis ab Januar 2027 €/t"], *_ROWS]
    assert [line.offer.price for line in lines(rows).values()] == [1248, 1238, 808]
