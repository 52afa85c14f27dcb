"""'Optional:' and 'Auf Wunsch:' over names and amounts: what a buyer orders if he likes is charged on no order."""

import pytest

from tests.intake.sheets import read

HEADS = {
    "en": (["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200], "Sheeting", "$60/ST", "Energy surcharge"),
    "de": (["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Palettierung", "15 EUR/t", "Energiezuschlag"),
    "fr": (["Qualité", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Palettisation", "15 EUR/t", "Surcharge énergie"),
    "es": (["Calidad", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Paletizado", "15 EUR/t", "Recargo por energía"),
    "sv": (["Kvalitet", "g/m²", "SEK/kg"], ["GC1", 250, 12], "Palletering", "0,15 SEK/kg", "Energitillägg"),
}
OPTIONAL = [
    *(("en", line) for line in ("Optional:", "On request:", "Optional services:", "If required:", "Options:")),
    *(("de", line) for line in ("Auf Wunsch:", "Optional:", "Optionale Leistungen:", "Wahlweise:")),
    *(("fr", line) for line in ("En option :", "Sur demande :", "Options :", "Prestations en option :")),
    *(("es", line) for line in ("Opcional:", "A petición:", "Servicios opcionales:")),
    *(("sv", line) for line in ("Tillval:", "På begäran:", "Valbara tjänster:")),
]


@pytest.mark.parametrize("gap", [[[]], []])
@pytest.mark.parametrize(("language", "line"), OPTIONAL)
def test_what_stands_below_is_charged_on_no_order(language: str, line: str, gap: list[list[str]]) -> None:
    head, board, name, amount, _ = HEADS[language]
    (offer,) = read([head, board, *gap, [line], [name, amount]]).lines
    assert offer.offer.charges == ()
    assert any(name in note.text and "only if you order it" in note.text for note in offer.notes)


@pytest.mark.parametrize("language", HEADS)
def test_what_is_charged_behind_a_gap_is_charged(language: str) -> None:
    head, board, name, amount, energy = HEADS[language]
    optional = next(line for known, line in OPTIONAL if known == language)
    (offer,) = read([head, board, [], [optional], [name, amount], [], [energy, amount]]).lines
    assert [charge.label for charge in offer.offer.charges] == [energy]


@pytest.mark.parametrize("language", HEADS)
def test_charges_below_no_such_line_are_charged(language: str) -> None:
    head, board, name, amount, energy = HEADS[language]
    (offer,) = read([head, board, [], [name, amount], [energy, amount]]).lines
    assert {charge.label for charge in offer.offer.charges} == {name, energy}


def test_boards_below_such_a_line_are_offered() -> None:
    head, board, *_ = HEADS["en"]
    found = read([head, board, ["Optional grades:"], ["CUK", 18, 980], ["CRB", 20, 800]]).lines
    assert [str(line.offer.price) for line in found] == ["1200", "980", "800"]


TOLD_IN_FULL = [
    ("en", ["Sheeting (optional)", "$60/ST"]),
    ("en", ["Optional sheeting $60/ST"]),
    ("en", ["Sheeting available on request at $60/ST"]),
    ("en", ["Freight quoted on request."]),
    ("en", ["Special packing on request"]),
    ("en", ["Other surcharges on request"]),
    ("de", ["Querschneiden (auf Wunsch)", "60 EUR/t"]),
    ("de", ["Auf Wunsch FSC, Zuschlag 15 EUR/t"]),
    ("de", ["Verpackung nach Wunsch"]),
    ("fr", ["Mise en format (sur demande)", "60 EUR/t"]),
    ("fr", ["Transport sur demande"]),
    ("es", ["Corte en hojas (opcional)", "60 EUR/t"]),
    ("es", ["Transporte a petición"]),
    ("sv", ["Arkskärning (tillval)", "0,60 SEK/kg"]),
    ("sv", ["Frakt på begäran"]),
]


@pytest.mark.parametrize("gap", [[[]], []])
@pytest.mark.parametrize(("language", "row"), TOLD_IN_FULL)
def test_a_row_that_tells_all_of_an_extra_says_nothing_of_those_below(
    language: str, row: list[str], gap: list[list[str]]
) -> None:
    head, board, _, amount, energy = HEADS[language]
    (offer,) = read([head, board, [], row, *gap, [energy, amount]]).lines
    assert [charge.label for charge in offer.offer.charges] == [energy]


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "Special packing on request:"),
        ("en", "Optional charges"),
        ("de", "Optionale Zuschläge"),
        ("fr", "Suppléments facultatifs"),
        ("es", "Recargos opcionales"),
        ("sv", "Valfria tillägg"),
    ],
)
def test_a_line_that_leads_to_extras_leaves_them_to_the_buyer(language: str, line: str) -> None:
    head, board, name, amount, _ = HEADS[language]
    (offer,) = read([head, board, [], [line], [name, amount]]).lines
    assert offer.offer.charges == ()
    assert any(name in note.text and "only if you order it" in note.text for note in offer.notes)
