"""What rolls below or above a width bear, and what sheets below a size do: never the bare price as if it were whole."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_TITLE = ["Preise frei Haus in EUR je Tonne"]
_BOARDS = (["GC2", 250, 405, 1240, 1198], ["GC2", 250, 405, 520, 1198], ["GD2", 300, 400, 600, 865])


def _charges(note, head="Rollenbreite mm", sizes=(1240, 520, 600)):
    rows = ([*board[:3], size, board[4]] for board, size in zip(_BOARDS, sizes, strict=True))
    found = lines([_TITLE, ["Sorte", "g/m²", "µm", head, "Preis"], *rows, [note]])
    return [
        tuple(str(one.price) if one.currency != OPEN else "open" for one in line.offer.charges)
        for line in found.values()
    ]


@pytest.mark.parametrize(
    "note",
    [
        "Zuschlag für Schmalrollen unter 600 mm Breite: 40 EUR/t, in den Preisen nicht enthalten.",
        "Zuschlag von 40 EUR/t bei Rollenbreiten unter 600 mm.",
        "Surcharge for narrow rolls under 600 mm: EUR 40/t, not included in the prices.",
        "Rolls under 600 mm wide carry an extra EUR 40/t.",
        "Supplément pour bobines étroites de moins de 600 mm : 40 €/t, non compris dans les prix.",
        "Supplément laize inférieure à 600 mm : 40 €/t",
        "Recargo para bobinas de menos de 600 mm: 40 €/t, no incluido en los precios.",
        "Tillägg för smala rullar under 600 mm: 40 EUR/t, ingår inte i priserna.",
    ],
)
def test_rolls_below_a_width_bear_the_charge_and_the_others_do_not(note):
    assert _charges(note) == [(), ("40",), ()]


@pytest.mark.parametrize(
    "note", ["Zuschlag für Rollen über 1200 mm: 25 EUR/t", "Surcharge for rolls over 1200 mm: EUR 25/t"]
)
def test_so_it_is_above_a_width(note):
    assert _charges(note) == [("25",), (), ()]


def test_an_end_that_belongs_to_them_does():
    assert _charges("Zuschlag für Rollen bis 600 mm Breite: 40 EUR/t") == [(), ("40",), ("40",)]


@pytest.mark.parametrize(("head", "sizes"), [("Pos.", ("A", "B", "C")), ("Rollendurchmesser mm", (1240, 520, 600))])
def test_where_no_width_is_told_the_cost_is_not_known(head, sizes):
    note = "Zuschlag für Schmalrollen unter 600 mm Breite: 40 EUR/t, in den Preisen nicht enthalten."
    assert _charges(note, head, sizes) == [("open",)] * 3


@pytest.mark.parametrize(
    "note", ["Zuschlag für Rollen unter 600 mm: 40 EUR/t; Zuschlag für Rollen unter 560 mm: 60 EUR/t"]
)
def test_of_two_that_hold_it_is_not_told_whether_one_replaces_the_other(note):
    assert _charges(note) == [(), ("open",), ()]


_FORMATS = ("70 x 100 cm", "45 x 64 cm", "64 x 90 cm")


def test_sheets_bear_no_charge_of_rolls():
    assert _charges("Zuschlag für Schmalrollen unter 600 mm Breite: 40 EUR/t", "Format", _FORMATS) == [()] * 3


@pytest.mark.parametrize(
    "note",
    [
        "Small formats below 50 x 70 cm: surcharge EUR 40/t",
        "Zuschlag für Bogen unter 0,35 m²: 40 EUR/t, nicht enthalten",
        "Supplément pour formats inférieurs à 50 x 70 cm : 40 €/t",
        "Recargo para formatos menores de 50 x 70 cm: 40 €/t",
        "Tillägg för format under 50 x 70 cm: 40 EUR/t",
    ],
)
def test_a_limit_of_sheets_leaves_the_cost_open(note):
    assert _charges(note, "Format", _FORMATS) == [("open",)] * 3


@pytest.mark.parametrize(("note", "borne"), [("Surcharge for calipers below 405 µm: EUR 40/t", [(), (), ("40",)])])
def test_a_limit_of_calipers_is_one_of_boards(note, borne):
    assert _charges(note) == borne


@pytest.mark.parametrize(
    "note",
    [
        "Formate, die größer sind als 50 x 70 cm, kosten einen Zuschlag von 3 % auf den Tonnenpreis.",
        "Sheets that are larger than 50 x 70 cm bear a surcharge of 3 %.",
        "Les formats qui dépassent 50 x 70 cm supportent un supplément de 3 %.",
        "Los formatos que superen 50 x 70 cm llevan un recargo del 3 %.",
        "Format som är större än 50 x 70 cm har ett tillägg på 3 %.",
    ],
)
def test_so_does_one_told_in_a_sentence(note):
    assert _charges(note, "Format", _FORMATS) == [("open",)] * 3


def test_a_charge_without_a_size_is_one_of_all_sheets():
    assert _charges("Zuschlag von 3 % auf den Tonnenpreis", "Format", _FORMATS) == [("3",)] * 3
