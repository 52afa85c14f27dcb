"""Firms called by the papers they sell, with the department that quotes behind a comma."""

import pytest

from tests.intake.sheets import read


def vendors(*cells):
    return {line.offer.vendor for line in read([list(cells), ["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200]]).lines}


@pytest.mark.parametrize(
    ("cells", "vendor"),
    [
        (["Ebersfurth Kartonagenpapiere, Verkauf Inland"], "Ebersfurth Kartonagenpapiere"),
        (["Ebersfurth Spezialpapiere"], "Ebersfurth Spezialpapiere"),
        (["Fossheim Papp og Kartong", "offer no. 4402"], "Fossheim Papp og Kartong"),
        (["Fossheim Papp och Kartong", "offert nr 4402"], "Fossheim Papp och Kartong"),
    ],
)
def test_the_firm_quotes(cells, vendor):
    assert vendors(*cells) == {vendor}


@pytest.mark.parametrize(
    "text", ["Papier und Kartonagenpapiere", "Verpackungspapiere, Verkauf Inland", "Papp og Kartong", "Ihre Papiere"]
)
def test_papers_alone_are_no_firm(text):
    assert vendors(text) == {None}
