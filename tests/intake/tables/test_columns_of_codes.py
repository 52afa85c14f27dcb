"""Codes below a head that a key explains under the same head: 'U' and 'U: S = per short ton, C = per cwt'."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Item", "G", "Caliper (pt)", "Weight (lb/MSF)", "U", "Price", "T"]
_ROWS = [[1201, 1, 14, 59, "S", 1210, 1], [1202, 1, 18, 77, "C", 61.5, 2], [1204, 2, 18, 73, "F", 38.2, 2]]
_KEYS = [
    "G: 1 = solid bleached sulfate C1S, 2 = coated unbleached kraft",
    "U: S = per short ton, C = per cwt, F = per 1,000 sq ft",
    "T: 1 = FOB mill, 2 = delivered, freight included",
]


def _read(*keys, rows=_ROWS, head=None):
    return lines([["Osmere Paperboard Inc."], ["US dollars"], [], head or _HEAD, *rows, [], *([key] for key in keys)])


def _told(found):
    return [(str(line.state), line.offer.grade, line.offer.basis, line.offer.delivered) for line in found.values()]


def test_grade_unit_and_terms_of_each_row():
    assert _told(_read(*_KEYS)) == [
        ("accepted", "SBS", "short_ton", False),
        ("accepted", "SBS", "cwt", True),
        ("accepted", "CUK", "msf", True),
    ]


@pytest.mark.parametrize(
    ("column", "per", "collected", "delivered"),
    [
        ("Spalte", "je", "ab Werk", "frei Haus"),
        ("Colonne", "par", "départ usine", "franco"),
        ("Columna", "por", "ex works", "entregado"),
        ("Kolumn", "per", "fritt fabrik", "levererat"),
    ],
)
def test_in_other_languages(column, per, collected, delivered):
    units = f"U: S = {per} short ton, C = {per} cwt, F = {per} 1000 sq ft"
    told = _told(_read(f"{column} G: 1 = GZ; 2 = GN1", units, f"T: 1 = {collected}, 2 = {delivered}"))
    assert [(grade, basis, freight) for _, grade, basis, freight in told] == [
        ("SBS", "short_ton", False),
        ("SBS", "cwt", True),
        ("CUK", "msf", True),
    ]


def test_a_code_that_the_key_leaves_out_is_asked():
    rows = [*_ROWS, [1209, 3, 30, 105, "C", 34.9, 1]]
    assert codes(_read(*_KEYS, rows=rows)["F8"]) >= {"grade-unknown"}


def test_a_key_of_another_head_explains_nothing_here():
    found = _read("P: 1 = solid bleached sulfate C1S, 2 = coated unbleached kraft", *_KEYS[1:])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_codes_of_a_property_stay_as_they_are():
    head = ["Board", "F", "Caliper (pt)", "Weight (lb/MSF)", "USD/short ton"]
    rows = [["SBS C1S", 1, 14, 59, 1210], ["CUK", 2, 18, 73, 1040]]
    found = _read("F: 1 = smooth finish, 2 = linen finish", rows=rows, head=head)
    assert [(line.offer.grade, str(line.state)) for line in found.values()] == [
        ("SBS", "accepted"),
        ("CUK", "accepted"),
    ]


def test_a_sentence_behind_a_key_holds_for_the_rows_of_every_code():
    rows = [_HEAD, *_ROWS, [], [_KEYS[0]],
            ["U: S = per short ton; F = per 1,000 sq ft; C = per cwt. U.S. dollars."]]  # fmt: skip
    assert {line.offer.currency for line in lines(rows).values()} == {"USD"}
