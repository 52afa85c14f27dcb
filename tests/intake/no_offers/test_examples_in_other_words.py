"""Titles over a second table that call it an example, with an 'only', with its prices, or by figures made up."""

import pytest

from tests.intake.sheets import read

_HEAD = ["Grade", "Caliper (pt)", "Price USD/short ton"]
_BOARDS = [["SBS", 18, 1200], ["CUK", 20, 900], ["CRB", 22, 800]]
_SECOND = [["SBS", 24, 1111], ["CUK", 26, 888]]


def states(title):
    """The states of the lines of the second table."""
    found = read([_HEAD, *_BOARDS, [], [title], _HEAD, *_SECOND]).lines
    return {str(line.state) for line in found if int(line.offer.source.cell[1:]) > len(_BOARDS) + 3}


@pytest.mark.parametrize(
    "title",
    [
        "For illustration purposes", "Prices for illustration only", "Only an example", "Illustrative prices, no offer",
        "Illustrative prices - not an offer", "Example (invented figures)", "Example: made-up figures",
        "Nur zur Illustration", "Lediglich als Beispiel", "Preise nur zur Illustration", "Beispiel (erfundene Zahlen)",
        "Seulement à titre d'exemple", "À titre d'illustration uniquement", "Exemple (chiffres fictifs)",
        "Prix illustratifs - pas une offre",
        "Solo como ejemplo", "Sólo a modo de ejemplo", "Ejemplo (cifras ficticias)",
        "Precios ilustrativos - no es una oferta",
        "Endast som exempel", "Enbart som exempel", "Exempel (påhittade siffror)", "Illustrativa priser - ej offert",
    ],
)  # fmt: skip
def test_an_example_offers_nothing(title):
    assert states(title) == set()


@pytest.mark.parametrize(
    "title",
    [
        "Dummy data", "Test data", "Illustrative prices", "Musterdaten", "Testdaten", "Données fictives",
        "Datos de ejemplo", "Exempeldata",
    ],
)  # fmt: skip
def test_figures_that_may_be_made_up_are_asked_about(title):
    assert states(title) == {"question"}


@pytest.mark.parametrize("title", ["Illustration board", "Sample sheets", "Only for CUK", "Prices for stock board"])
def test_other_titles_head_a_list(title):
    assert states(title) == {"accepted"}
