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


@pytest.mark.parametrize(
    "note",
    [
        "Surcharge EUR 40/t, not for rolls over 600 mm",
        "Surcharge EUR 40/t except for rolls over 600 mm",
        "Rolls over 600 mm are exempt from the EUR 40/t surcharge",
        "Surcharge of EUR 40/t waived for rolls over 600 mm",
        "Zuschlag 40 EUR/t, nicht für Rollen über 600 mm",
        "Zuschlag 40 EUR/t, entfällt bei Rollen über 600 mm",
        "Zuschlag 40 EUR/t außer für Rollen über 600 mm",
        "Supplément 40 EUR/t, sauf pour les laizes supérieures à 600 mm",
        "Suplemento 40 EUR/t, excepto bobinas de más de 600 mm",
        "Tillägg 40 EUR/t, ej för rullar över 600 mm",
    ],
)
def test_a_width_that_is_freed_is_not_the_one_that_bears_it(note):
    assert _charges(note) == [("open",)] * 3


@pytest.mark.parametrize(
    "note",
    [
        "No EUR 40/t surcharge for rolls under 600 mm",
        "Prices include the EUR 40/t surcharge for rolls under 600 mm",
        "Rolls under 600 mm were charged a EUR 40/t surcharge until 2025",
        "Kein Zuschlag von 40 EUR/t für Rollen unter 600 mm",
        "Aucun supplément de 40 EUR/t pour les laizes inférieures à 600 mm",
    ],
)
def test_what_no_roll_is_said_to_bear_is_charged_to_none(note):
    assert _charges(note) == [()] * 3


def test_a_bound_that_is_denied_bounds_all_the_same():
    assert _charges("Rolls not over 600 mm wide: surcharge EUR 40/t") == [(), ("40",), ("40",)]


@pytest.mark.parametrize(
    "note",
    [
        "Pallets over 1000 mm high: surcharge EUR 10/t",
        "Roll diameter over 1000 mm: surcharge EUR 10/t",
        "Rolls with a diameter over 1000 mm: surcharge EUR 10/t",
        "Trucks longer than 12000 mm: surcharge EUR 10/t",
        "Rollendurchmesser über 1000 mm: Zuschlag 10 EUR/t",
        "Palettenhöhe unter 1000 mm: Zuschlag 10 EUR/t",
        "Diamètre des bobines supérieur à 1000 mm : supplément 10 EUR/t",
        "Diámetro de bobina superior a 1000 mm: recargo 10 EUR/t",
        "Palets de más de 1000 mm de altura: recargo 10 EUR/t",
        "Rulldiameter över 1000 mm: tillägg 10 EUR/t",
    ],
)
def test_heights_and_diameters_are_no_widths(note):
    assert _charges(note) == [("open",)] * 3


@pytest.mark.parametrize("note", ["Breitenzuschlag bis 550 mm 40 EUR/t", "Breddtillägg under 600 mm 40 EUR/t"])
def test_a_charge_called_after_the_width_is_bounded_by_one(note):
    assert _charges(note) == [(), ("40",), ()]


_STEPS = (520, 700, 1240)


@pytest.mark.parametrize(
    "note",
    [
        "Rolls under 600 mm: surcharge EUR 40/t. Rolls 600 to 900 mm: surcharge EUR 20/t",
        "Surcharge EUR 40/t for rolls under 600 mm; EUR 20/t for rolls 600 to 900 mm",
        "Rollen unter 600 mm: Zuschlag 40 EUR/t. Rollen von 600 bis 900 mm: Zuschlag 20 EUR/t",
        "Zuschlag 40 EUR/t für Rollen unter 600 mm; 20 EUR/t für Rollen von 600 bis 900 mm",
        "Laizes inférieures à 600 mm : supplément 40 EUR/t. Laizes de 600 à 900 mm : supplément 20 EUR/t",
        "Bobinas de menos de 600 mm: recargo 40 EUR/t. Bobinas de 600 a 900 mm: recargo 20 EUR/t",
        "Rullar under 600 mm: tillägg 40 EUR/t. Rullar från 600 till 900 mm: tillägg 20 EUR/t",
    ],
)
def test_a_second_step_has_both_its_ends(note):
    assert _charges(note, sizes=_STEPS) == [("40",), ("20",), ()]


@pytest.mark.parametrize(
    "note",
    [
        "Narrow roll surcharge: under 600 mm EUR 40/t, 600-900 mm EUR 20/t",
        "Schmalrollenzuschlag: unter 600 mm 40 EUR/t, 600-900 mm 20 EUR/t",
        "Rolls over 600 mm and up to 900 mm: surcharge EUR 20/t",
    ],
)
def test_ends_that_are_not_told_apart_leave_it_open(note):
    assert _charges(note, sizes=_STEPS) == [("open",)] * 3


def test_a_dearer_freight_of_wide_rolls_leaves_theirs_open():
    note = "Freight EUR 42/t; rolls over 900 mm wide EUR 55/t"
    assert _charges(note, sizes=_STEPS) == [("42",), ("42",), ("open",)]


@pytest.mark.parametrize(
    "head",
    [
        "Max. roll width mm", "Max width mm", "Machine width mm", "Max. Rollenbreite mm", "Maschinenbreite mm",
        "Laize maxi mm", "Laize machine mm", "Ancho máximo mm", "Max rullbredd mm",
    ],
)  # fmt: skip
def test_the_widest_that_can_be_made_is_no_roll_width(head):
    assert _charges("Rolls under 600 mm: surcharge EUR 40/t", head) == [("open",)] * 3


@pytest.mark.parametrize("head", ["Roll width mm", "Width mm", "Laize mm", "Ancho mm", "Rullbredd mm"])
def test_the_width_of_a_row_is(head):
    assert _charges("Rolls under 600 mm: surcharge EUR 40/t", head) == [(), ("40",), ()]
