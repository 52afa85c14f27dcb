"""Notes that correct lines by their number or code, or call them off: these lines are asked about, and no others."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Board", "gsm", "micron", "EUR/t", "Lead time"]
_BOARDS = [["GC1", 235, 380, 1218], ["GC1", 275, 450, 1204], ["SBS", 300, 400, 1345], ["GD2", 350, 460, 848]]


def _states(*notes, counted=("Line", 1, 2, 3, 4), below=()):
    first, *numbers = counted if counted else (None, *[None] * 4)
    rows = [[*([first] if counted else []), *_HEAD]]
    rows += [
        [*([number] if counted else []), *board, "5 weeks"] for number, board in zip(numbers, _BOARDS, strict=True)
    ]
    found = lines([*rows, *below, [], *([note] for note in notes)])
    return "".join(str(line.state)[0] for line in found.values())


@pytest.mark.parametrize(
    "note",
    [
        "Line 3: read 1,354 instead of 1,345", "Line 3: read €1,354 per tonne, not €1,345.", "Item 3: 1,354, not 1,345",
        "Line 3: the basis weight is 320, not 300", "Line 3: weight is 320 g/m², not 300.", "Line 3: C1S, not C2S",
        "Line 3: caliper 410 µm instead of 400", "Line 3: lead time 6 weeks, not 5", "Correction: line 3 1,354",
        "Line 3 is withdrawn.", "Position 3: price withdrawn", "Item 3 should read 1,354",
        "Zeile 3: statt 1345 richtig 1354", "Pos. 3 entfällt", "Position 3 ist zu streichen", "Pos. 3: 1354 statt 1345",
        "ligne 3 : lire 1 354", "Ligne 3 : 1 354 au lieu de 1 345", "La ligne 3 est retirée", "Article 3 : à supprimer",
        "línea 3: léase 1.354", "Línea 3: 1.354 en lugar de 1.345", "La línea 3 queda anulada", "Artículo 3: eliminado",
        "rad 3: läs 1354", "Rad 3: 1354 i stället för 1345", "Rad 3 utgår", "Artikel 3 utgår",
    ],
)  # fmt: skip
def test_a_line_that_a_note_corrects_is_asked_about(note):
    assert _states(note) == "aaqa"


def test_several_in_one_note_are_all_asked_about():
    assert _states("Line 2: 280 g/m², not 275. Line 4 is withdrawn. Terms as usual.") == "aqaq"
    assert _states("Lines 1 to 3 withdrawn") == "qqqa"


@pytest.mark.parametrize(
    "head", ["Corrections of May 6:", "Errata", "Berichtigungen:", "Rectificatif :", "Fe de erratas:", "Rättelser"]
)
def test_lines_under_a_heading_of_corrections_are_asked_about(head):
    assert _states(head, "Line 2: 280 g/m²", "Line 3: €1,354 per tonne") == "aqqa"
    assert _states("Remarks:", "Line 2: 280 g/m²", "Line 3: €1,354 per tonne")[0] == "a"


@pytest.mark.parametrize(
    "note",
    [
        "Line 3 is not available in sheets", "Line 3: not for food", "Line 9 is withdrawn", "Line 3 not withdrawn",
        "Errors in line items excepted", "Lines 1-4 are correct as printed", "Line 3: lead time 6 weeks",
        "Item 3: withdrawn if not ordered by 30 June", "Pos. 3: einseitig gestrichen", "Line 3: coated, not laminated",
    ],
)  # fmt: skip
def test_what_corrects_no_line_leaves_them(note):
    assert _states(note) == "aaaa"


@pytest.mark.parametrize("counted", [(), ("Item", 5001, 5002, 5003, 5004)])
def test_a_line_that_is_not_known_may_be_any(counted):
    assert _states("Line 3: read 1,354 instead of 1,399", counted=counted) == "qqqq"
    assert _states("Article 3 of our terms is withdrawn", counted=counted) == "aaaa"


@pytest.mark.parametrize(
    "note",
    ["K103 is withdrawn", "K103: read 1,354", "Art. K103 entfällt", "K103 : 1 354 au lieu de 1 399", "K103: läs 1354"],
)
def test_a_line_may_be_called_by_its_code(note):
    assert _states(note, counted=("Item", "K101", "K102", "K103", "K104")) == "aaqa"
    assert _states(note, counted=("Item", "K1031", "K1032", "K1033", "K1034")) == "aaaa"


def test_a_note_is_of_the_table_above_it_that_counts_so():
    more = [[], ["Line", *_HEAD], [9, "GC2", 220, 340, 1180, "5 weeks"], [10, "GC2", 250, 400, 1160, "5 weeks"]]
    assert _states("Line 9: read 1,108 instead of 1,180", below=more) == "aaaaqa"
