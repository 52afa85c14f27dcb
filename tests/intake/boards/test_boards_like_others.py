"""A name that tells a grade only to say what the board is like, or stands in for, leaves the board's own grade open."""

import pytest

from tests.intake.sheets import codes, lines


def _line(product, title=None):
    rows = [[title], ["Product", "Caliper (pt)", "Price USD/short ton"], [product, 18, 1200], ["CUK Tarn", 20, 900]]
    return next(iter(lines(rows if title else rows[1:]).values()))


@pytest.mark.parametrize(
    "product",
    [
        "Alpine replaces SBS", "Board like SBS", "SBS-like board", "SBS substitute", "Alpine (replaces SBS)",
        "Ersatz für GC1", "Alpin statt GC1", "GC1-ähnlich", "Alternative au GC1", "Alpin remplace GC1",
        "Carton au lieu de GC1",
        "Similar a GC1", "Alpino en lugar de GC1", "Alternativ till GC1", "Alpin ersätter GC1",
    ],
)  # fmt: skip
@pytest.mark.parametrize("title", [None, "SBS and FBB boards"])
def test_its_grade_is_asked(product, title):
    line = _line(product, title)
    assert (line.offer.grade, str(line.state)) == (None, "question")
    assert "grade-unknown" in codes(line)


@pytest.mark.parametrize(
    ("product", "grade"),
    [
        ("SBS replaces Alpine", "SBS"), ("Alpine SBS", "SBS"), ("FBB, like GC1", "FBB"), ("Likely SBS", "SBS"),
        ("SBS for alternative uses", "SBS"), ("GC1 ersetzt Alpin", "FBB"), ("GC1 remplace Alpin", "FBB"),
    ],
)  # fmt: skip
def test_what_stands_first_is_its_own(product, grade):
    assert _line(product).offer.grade == grade
