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


ALONE = [["SBS", 18, 1200], ["CRB", 22, 800]]


def alone(title):
    """The states of the lines of a file's only list, and whether a note calls them indicative."""
    found = read([[title], [], _HEAD, *ALONE]).lines
    told = any("indicative" in note.text for line in found for note in line.notes)
    return {str(line.state) for line in found}, told


@pytest.mark.parametrize(
    "title",
    [
        "Sample price list", "Price list (sample)", "Specimen", "Specimen price list", "Price list - SPECIMEN",
        "Riverbend Board Inc. - Example price list", "Illustrative prices", "Sample quotation", "Dummy price list",
        "Muster-Preisliste", "Musterpreisliste", "Preisliste (Muster)", "Beispiel-Preisliste", "Beispielpreise",
        "Tarif exemple", "Exemple de tarif", "Tarif (spécimen)", "Lista de precios de ejemplo",
        "Lista de precios (muestra)", "Ejemplo de lista de precios", "Exempelprislista", "Exempel på prislista",
    ],
)  # fmt: skip
def test_of_a_list_called_a_specimen_it_is_asked_whether_anybody_offers_it(title):
    assert alone(title)[0] == {"question"}


@pytest.mark.parametrize(
    "title", ["Indicative price list - for illustration only", "Prix indicatifs à titre d'exemple",
              "Precios orientativos a modo de ejemplo"]
)  # fmt: skip
def test_an_example_is_none_for_being_called_indicative_too(title):
    assert alone(title)[0] == {"question"}


@pytest.mark.parametrize(
    "title", ["Indicative prices", "Richtpreise", "Prix indicatifs", "Precios orientativos", "Riktpriser"]
)
def test_indicative_prices_are_offered_with_a_note(title):
    assert alone(title) == ({"accepted"}, True)


@pytest.mark.parametrize("title", ["Price list", "Price list for samples", "Musterbogen Preisliste", "Tarif type"])
def test_a_list_of_samples_is_no_specimen(title):
    assert alone(title)[0] == {"accepted"}


def over_all(title):
    found = read([["Fairhaven Board Co."], [title], _HEAD, *_BOARDS]).lines
    return {str(line.state) for line in found}


@pytest.mark.parametrize(
    "title",
    [
        "Sample prices on request", "Call us for sample pricing", "Ask for a sample quote",
        "Sample quantities: sample prices on request", "Musterpreise auf Anfrage",
        "Muster kostenlos, Musterangebot auf Wunsch", "Precios de muestra bajo consulta",
        "Exemples de prix sur demande", "Provpriser på begäran",
    ],
)  # fmt: skip
def test_samples_that_are_to_be_had_leave_the_prices_what_they_are(title):
    assert over_all(title) == {"accepted"}


@pytest.mark.parametrize(
    "title",
    ["Sample prices", "Sample price list 2026", "Musterpreisliste", "Exemple de tarif", "Exempel på prislista",
     "Sample prices, our prices on request"],
)  # fmt: skip
def test_samples_of_prices_are_asked_about(title):
    assert over_all(title) == {"question"}
