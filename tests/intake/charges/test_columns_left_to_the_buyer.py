"""Columns of charges that heads or notes call optional: no part of the cost on any line, and told beside it."""

import pytest

from tests.intake.sheets import lines, merged


def _charged(head, *notes, above=(), cell=65, **more):
    """Of two lines what their charges come to (0: not certain), and what is told beside them."""
    heads = ["Board", "g/m²", "µm", "EUR/tonne", head]
    rows = [["Delivered"], *([note] for note in above), [], heads, ["GC1", 250, 405, 1345, cell]]
    rows += [["GD2", 350, 460, 930, 60], [], *([note] for note in notes)]
    found = lines(rows, **more).values()
    assert [str(line.state) for line in found] == ["accepted", "accepted"]
    told = [any("only if you order it" in note.text for note in line.notes) for line in found]
    return [[charge.price for charge in line.offer.charges] for line in found], told


_NONE = [[], []], [True, True]
_OPEN = [[0], [0]], [False, False]
_ALL = [[65], [60]], [False, False]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Corte a hojas (1)", "(1) Opcional: 65 €/t más, solo si el cliente pide hojas en lugar de bobinas."),
        ("Corte a hojas*", "* solo si se pide"), ("Corte a hojas ¹", "¹ opc."), ("Sheeting *", "* if ordered"),
        ("Sheeting *", "* Charged only if the customer orders sheets."), ("Wrapping (a)", "(a) optional"),
        ("Formatzuschlag *", "* auf Wunsch"), ("Formatzuschlag *", "* nur falls Bogen bestellt werden"),
        ("Arkning *", "* på begäran"), ("Arkning 1)", "1) Tillval"), ("Mise en feuilles *", "* en option"),
        ("Mise en feuilles *", "* si le client commande des feuilles"),
    ],
)  # fmt: skip
def test_a_footnote_at_a_head_leaves_its_charges_to_the_buyer(head, note):
    assert _charged(head, note) == _NONE


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Sheeting", "Sheeting is optional."), ("Sheeting", "Sheeting is charged only if ordered."),
        ("Formatzuschlag", "Der Formatzuschlag fällt nur auf Wunsch an."), ("Arkning", "Arkning är tillval."),
        ("Mise en feuilles", "La mise en feuilles est en option."), ("Corte a hojas", "El corte a hojas es opcional."),
        ("Corte a hojas", "El corte a hojas se cobra solo si se pide."), ("Wrapping", "Wrapping on request."),
    ],
)  # fmt: skip
def test_a_note_that_names_the_charge_leaves_it_to_the_buyer(head, note):
    assert _charged(head, note) == _NONE
    assert _charged(head, above=[note]) == _NONE


@pytest.mark.parametrize(
    "head",
    [
        "Corte a hojas (opcional)", "Corte a hojas (opc.)", "Sheeting opt.", "Sheeting on demand", "Arkning (valfr.)",
        "Mise en feuilles (opt.)", "Sheeting if ordered", "Formatzuschlag a. W.", "Formatzuschlag auf Wunsch",
    ],
)  # fmt: skip
def test_a_head_may_say_so_itself(head):
    assert _charged(head) == _NONE


def test_a_heading_over_several_columns_may_say_so():
    rows = [
        ["Delivered"], [], [None, None, None, "Reels", "Optional"],
        ["Board", "g/m²", "µm", "EUR/tonne", "Sheeting", "Wrapping"], ["GC1", 250, 405, 1345, 65, 8],
    ]  # fmt: skip
    (line,) = lines(rows, merged=merged((2, 4, 2, 5))).values()
    assert line.offer.charges == ()


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Sheeting", "Sheeting is not optional."), ("Energy", "Sheeting is optional."),
        ("Sheeting", "SBS on request. Sheeting in 3 weeks."), ("Sheeting", "Sheeting to special sizes on request."),
        ("Freight", "Freight to other places on request."), ("Freight *", "* rounded to 1 EUR"),
        ("Sheeting", "* optional"), ("Corte a hojas", "El corte a hojas no es opcional."),
    ],
)  # fmt: skip
def test_what_is_said_of_something_else_leaves_the_charge(head, note):
    assert _charged(head, note) == _ALL


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Sheeting *", "* optional for GD2"), ("Energy *", "* only if gas is dearer than in May"),
        ("Sheeting", "Sheeting of light boards on request."),
    ],
)  # fmt: skip
def test_what_is_left_to_some_or_hangs_on_something_is_not_certain(head, note):
    assert _charged(head, note) == _OPEN


def test_a_sign_at_one_figure_is_of_its_line_alone():
    assert _charged("Sheeting", "* optional", cell="65*") == ([[], [60]], [True, False])
