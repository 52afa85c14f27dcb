"""A coated top is one side, and two where the back is said to be coated as well."""

import pytest

from tracker.intake.values.boards.grade import find_grade


@pytest.mark.parametrize(
    ("text", "sides"),
    [
        ("CUK, clay coated top", 1), ("CUK top coated, uncoated back", 1), ("CUK coated top, coated back", 2),
        ("CUK, coated top and back", 2), ("SBS coated back", None),
        ("GD2 oberseitig gestrichen", 1), ("GD2 Oberseite gestrichen, Rückseite ungestrichen", 1),
        ("GC1 VS gestrichen, RS gestrichen", 2), ("GC1 VS/RS gestrichen", 2),
        ("GD2 recto couché", 1), ("GD2 recto couché, verso couché", 2),
        ("GD2 estucado cara superior", 1), ("GD2 estucado reverso gris", None),
        ("GC1 estucado cara superior y dorso", 2),
        ("GC1 bestruken översida", 1), ("GC1 översidan bestruken, baksidan bestruken", 2),
        ("GC1 bestruken översida och baksida", 2), ("GC1 översidan bestruken, baksidan obestruken", 1),
    ],
)  # fmt: skip
def test_sides_told_by_their_names(text, sides):
    reading = find_grade(text)
    assert reading is not None
    assert reading.coated_sides == sides
