"""What comes with the board at its price, pallets, cores and wrapping, is nothing that prices are per."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "g/m²", "µm", "Price"]
_BOARDS = [["SBS", 260, 325, 1390], ["GD2", 280, 380, 821]]
_UNITS = {
    "en": "Prices are in euro per tonne.", "de": "Die Preise sind in Euro je Tonne.",
    "fr": "Les prix sont en euros la tonne.", "es": "Los precios se expresan en euros por tonelada.",
    "sv": "Priserna är i euro per 1000 kg.",
}  # fmt: skip


def _bases(*notes):
    found = lines([_HEAD, *_BOARDS, [], *([note] for note in notes)]).values()
    return {(line.state.value, line.offer.basis.value if line.offer.basis else None) for line in found}


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Non-returnable pallets are included in the price."),
        ("en", "The price includes pallets, cores and wrapping."),
        ("de", "Einwegpaletten sind im Preis enthalten."),
        ("de", "Im Preis enthalten sind Paletten, Hülsen und Verpackung."),
        ("fr", "Les palettes perdues sont comprises dans le prix."),
        ("fr", "La palette perdue est comprise dans le prix."),
        ("fr", "Le prix comprend les palettes, les mandrins et l'emballage."),
        ("fr", "Le prix comprend la palette et l'emballage."),
        ("es", "Los palets no retornables van incluidos en el precio."),
        ("es", "El palet va incluido en el precio."),
        ("es", "El precio incluye los palets, los mandriles y el embalaje."),
        ("sv", "Engångspallar ingår i priset."),
        ("sv", "Priset inkluderar pallar, hylsor och emballage."),
    ],
)
def test_the_unit_that_is_said_of_prices_stays(language, note):
    assert _bases(_UNITS[language], note) == {("accepted", "tonne")}


@pytest.mark.parametrize(
    "note",
    ["Price per pallet in euro, wrapping included.", "Preis je Palette in Euro, Verpackung inklusive.",
     "Prix en euros la palette, emballage compris.", "El precio en euros es por palet, embalaje incluido.",
     "Pris per pall i euro, emballage ingår."],
)  # fmt: skip
def test_a_price_per_pallet_is_one(note):
    assert _bases(note) == {("question", None)}


@pytest.mark.parametrize(
    "said",
    ["Prix en euros les 1000 feuilles", "Prix en euros les mille feuilles", "Precios en euros los 1000 pliegos",
     "Precios en euros los mil pliegos"],
)  # fmt: skip
def test_a_counted_unit_behind_the_article_of_several_is_one(said):
    rows = [["Grade", "Size", "g/m²", "µm", "Price"], ["SBS", "700 x 1000 mm", 260, 325, 139]]
    (line,) = lines([*rows, [], [said]]).values()
    assert (line.offer.basis.value, line.offer.currency) == ("1000sheets", "EUR")
