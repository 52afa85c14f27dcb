"""Rows of extras below a line that says they are charged if ordered."""

import pytest

from tests.intake.sheets import lines, read

SHEETS = {
    "sv": ("Priser i SEK per ton (1000 kg)", ["Benämning", "g/m²", "µm", "Pris"], ("Nyfiber", "Returfiber"),
           ("Arkning", "Rullbredd under 500 mm", "Order under 2 ton")),
    "en": ("Prices in SEK per tonne", ["Board", "g/m²", "µm", "Price"], ("Virgin fibre board", "Recycled board"),
           ("Sheeting", "Reel width under 500 mm", "Orders under 2 t")),
    "de": ("Preise in SEK je Tonne", ["Sorte", "g/m²", "µm", "Preis"], ("Frischfaserkarton", "Recyclingkarton"),
           ("Querschneiden", "Rollenbreite unter 500 mm", "Aufträge unter 2 t")),
    "fr": ("Prix en SEK par tonne", ["Qualité", "g/m²", "µm", "Prix"], ("Cartons vierges", "Cartons recyclés"),
           ("Mise en format", "Laize inférieure à 500 mm", "Commandes de moins de 2 t")),
    "es": ("Precios en SEK por tonelada métrica", ["Calidad", "g/m²", "µm", "Precio"], ("Fibra virgen", "Reciclados"),
           ("Corte a hoja", "Ancho de bobina inferior a 500 mm", "Pedidos de menos de 2 t")),
}  # fmt: skip
LINES = [
    ("sv", "Tillägg per ton vid behov"), ("sv", "Tillval, per ton"), ("en", "Extras per tonne as needed"),
    ("en", "Optional extras"), ("en", "Surcharges if required, per tonne"), ("en", "Extra services on request"),
    ("de", "Zuschläge je Tonne bei Bedarf"), ("de", "Sonderleistungen auf Wunsch"),
    ("fr", "Suppléments si besoin, par tonne"), ("fr", "Services en option"), ("es", "Suplementos opcionales"),
    ("es", "Recargos si procede, por tonelada"),
]  # fmt: skip


def among(language, line, *, second=True):
    title, head, (first, last), extras = SHEETS[language]
    rows = [["Ferrowick Board"], [title], head, [first], ["GC1", 230, 370, 13640], ["GC2", 275, 440, 13190], [line]]
    rows += [[extra, None, None, amount] for extra, amount in zip(extras, (650, 300, 450), strict=True)]
    rows += [[last], ["GD2", 300, 400, 9480], ["GT2", 320, 430, 9890]] if second else []
    return list(lines(rows).values())


@pytest.mark.parametrize("second", [True, False])
@pytest.mark.parametrize(("language", "line"), LINES)
def test_extras_are_no_boards_and_charged_to_none(language, line, second):
    found = among(language, line, second=second)
    assert [one.offer.grade for one in found] == (["FBB", "FBB", "CRB", "CRB"] if second else ["FBB", "FBB"])
    assert not any(one.offer.charges for one in found)
    assert {one.offer.basis for one in found} == {"tonne"}
    assert all(any("650" in note.text for note in one.notes) for one in found)


@pytest.mark.parametrize(
    ("language", "line"), [("en", "Surcharges per tonne"), ("de", "Zuschläge je Tonne"), ("sv", "Tillägg per ton")]
)
def test_charges_that_are_not_called_optional_are_charged(language, line):
    found = among(language, line)
    assert all([charge.price for charge in one.offer.charges] == [650] for one in found)


@pytest.mark.parametrize(("language", "line"), LINES)
def test_a_little_table_of_extras_below_the_list_charges_nothing(language, line):
    title, head, _, extras = SHEETS[language]
    rows = [["Ferrowick Board"], [title], head, ["GC1", 230, 370, 13640], ["GC2", 275, 440, 13190], []]
    rows += [[line, "SEK"], *([extra, amount] for extra, amount in zip(extras, (650, 300, 450), strict=True))]
    found = read(rows).lines
    assert [one.offer.source.cell for one in found] == ["D4", "D5"]
    assert not any(one.offer.charges for one in found)


def test_boards_below_a_line_about_extras_stay_boards():
    title, head, *_ = SHEETS["en"]
    rows = [["Ferrowick Board"], [title], head, ["Optional grades"], ["GC1", 230, 370, 13640], ["Optional extras"],
            ["GC2", 275, 440, 13190], ["Sheeting", None, None, 650]]  # fmt: skip
    assert [one.offer.grade for one in lines(rows).values()] == ["FBB", "FBB"]
