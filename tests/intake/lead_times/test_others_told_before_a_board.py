"""'GC1 from stock, others 4 weeks' and 'GZ: 6 weeks', in either order: a board named is none of the others."""

import pytest

from tests.intake.sheets import lines

_ROWS = [
    ["Moosbrunner Karton GmbH"],
    ["Sorte", "g/m²", "EUR/t"],
    ["GC1", 250, 1200],
    ["GD2", 300, 900],
    ["GZ", 280, 1300],
]


def _read(field, *notes):
    found = lines([*_ROWS, [], *([note] for note in notes)]).values()
    return [getattr(line.offer, field) for line in found]


@pytest.mark.parametrize(
    ("others", "named"),
    [
        ("GC1 from stock, others 4 weeks", "GZ: 6 weeks"),
        ("GC1 ab Lager, sonst 4 Wochen", "GZ: 6 Wochen"),
        ("GC1 en stock, les autres 4 semaines", "GZ : 6 semaines"),
        ("GC1 en stock, el resto 4 semanas", "GZ: 6 semanas"),
        ("GC1 i lager, övriga 4 veckor", "GZ: 6 veckor"),
    ],
)
def test_the_order_of_notes_does_not_matter(others, named):
    for notes in ((others, named), (named, others)):
        assert _read("lead_days", *notes) == [(0, 0), (28, 28), (42, 42)]


def test_what_is_told_of_another_matter_takes_no_board_out():
    notes = "GC1 ab Lager, sonst 4 Wochen", "GZ: Mindestmenge 10 t"
    assert _read("lead_days", *notes) == [(0, 0), (28, 28), (28, 28)]
    assert _read("minimum_kg", *notes) == [None, None, 10000]


def test_a_time_that_is_not_read_leaves_its_board_open():
    assert _read("lead_days", "GC1 ab Lager, sonst 4 Wochen", "GD2 länger") == [(0, 0), None, (28, 28)]
