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
        "Better than SBS", "As SBS but greyer", "Same as SBS but brighter", "Matches SBS", "Replacement for SBS",
        "Besser als GC1", "Gleichwertig GC1", "Vergleichbar zu GC1", "GC1 gleichwertig",
        "Équivalent GC1", "Carton équivalent GC1", "Substitut GC1", "Remplaçant du GC1", "Comme GC1 mais plus gris",
        "Plus blanc que GC1",
        "Equivalente GC1", "Sustituto de GC1", "Mejor que GC1", "Como GC1 pero más gris",
        "Liknar GC1", "Bättre än GC1", "Ersättning för GC1", "Som GC1 men gråare",
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
        ("SBS as before", "SBS"), ("Board sold as SBS", "SBS"),
        ("Carton vendu comme GC1", "FBB"), ("Cartulina como siempre: GC1", "FBB"),
        ("Kartong säljs som GC1", "FBB"), ("GC1 wie bisher", "FBB"),
    ],
)  # fmt: skip
def test_what_stands_first_is_its_own(product, grade):
    assert _line(product).offer.grade == grade
