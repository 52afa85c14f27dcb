"""Charges that one form of board bears: 'Sheets carry a cutting surcharge of 42 €/t; rolls bear none'."""

import pytest

from tests.intake.sheets import lines

_FORMS = {
    "en": ("Rolls", "Sheets"),
    "de": ("Rolle", "Bogen"),
    "fr": ("bobines", "feuilles"),
    "es": ("Bobina", "Hojas"),
    "sv": ("rulle", "ark"),
}


def _charges(*notes, forms=_FORMS["en"]):
    """What comes on top of rolls and of sheets, '?' where it is not certain."""
    rows = [["GC1", form, 300, 490, 1380] for form in forms]
    found = lines(
        [["Tarnwell Board Ltd"], ["Board", "Form", "g/m²", "µm", "EUR/tonne"], *rows, *([note] for note in notes)]
    )
    return [
        ["?" if charge.currency == "XXX" else f"{charge.price:f}" for charge in line.offer.charges]
        for line in found.values()
    ]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Sheets carry a cutting surcharge of €38 per tonne; rolls bear none."),
        ("en", "For sheets we charge a supplement of 38 EUR/t on top, while rolls bear none."),
        ("en", "For material in sheets a handling surcharge of 38 EUR/t is added."),
        ("de", "Für Bogenware berechnen wir zusätzlich einen Zuschlag von 38 EUR je Tonne; Rollen sind ohne Zuschlag."),
        ("de", "Auf Bogenware kommt ein Zuschlag von 38 EUR/t, Rollen bleiben zuschlagsfrei."),
        (
            "fr",
            (
                "Pour les articles en feuilles, nous facturons en plus un supplément de coupe de 38 EUR par tonne ; les"
                " bobines n'ont pas de supplément."
            ),
        ),
        ("fr", "Les feuilles portent un supplément de 38 EUR/t, tandis que les bobines n'en ont pas."),
        ("es", "Al material en hojas se le suma un recargo por corte de 38 €/t; la bobina va sin recargo."),
        ("es", "Para las hojas cobramos un recargo de 38 €/t."),
        ("sv", "På vara i ark tillkommer ett skärtillägg på 38 EUR/t; på rulle tas inget tillägg ut."),
        ("sv", "För ark debiterar vi ett tillägg på 38 EUR/ton; rullar har inget tillägg."),
    ],
)
def test_sheets_alone_bear_what_is_said_of_them(language, note):
    assert _charges(note, forms=_FORMS[language]) == [[], ["38"]]


def test_rolls_alone_bear_what_is_said_of_them():
    assert _charges("A packing surcharge of 38 EUR/t applies to rolls only.") == [["38"], []]
    assert _charges("Freight for rolls is €38/t.") == [["38"], []]


def test_the_form_that_is_not_freed_bears_it():
    assert _charges("A packing charge of €38/t is added; rolls bear none.") == [[], ["38"]]
    assert _charges("Energy surcharge 38 EUR/t, no surcharge on sheets.") == [["38"], []]
    assert _charges("The energy surcharge of 38 EUR/t does not apply to rolls.") == [[], ["38"]]
    assert _charges("The energy surcharge of 38 EUR/t is waived on sheets.") == [["38"], []]


@pytest.mark.parametrize(
    "note",
    [
        "An energy surcharge of 38 EUR/t applies to rolls and sheets.",
        "An energy surcharge of 38 EUR/t applies, whether rolls or sheets.",
        "Energy surcharge 38 EUR/t; rolls not in stock.",
        "Sheets are wrapped in kraft paper; an energy surcharge of 38 EUR/t is charged.",
    ],
)
def test_both_bear_what_is_said_of_both_or_of_neither(note):
    assert _charges(note) == [["38"], ["38"]]


def test_of_a_row_whose_form_is_not_told_it_is_open():
    assert _charges("Packing surcharge of 38 EUR/t on sheets.", forms=("", "Sheets")) == [["?"], ["38"]]


@pytest.mark.parametrize(
    "note",
    [
        "For sheets under 1 t, we charge a supplement of 38 EUR/t.",
        "For narrow rolls, we charge a supplement of 38 EUR/t.",
        "Packing of sheets on pallets: 38 EUR/t.",
        "Sheets carry a surcharge of €12/t and rolls one of €5/t.",
        "An energy surcharge of 12 % is charged on sheets and 2 % on rolls.",
        "Energy surcharge 12 EUR/t, sheets 38 EUR/t.",
    ],
)
def test_nothing_is_certain_where_more_is_said_of_the_form(note):
    assert not {"38", "12"}.intersection(*_charges(note))


def test_heads_and_sizes_tell_the_form_as_well():
    note = ["Sheets carry a surcharge of 38 EUR/t."]
    apart = lines([["EUR/tonne"], ["Grade", "µm", "g/m²", "Rolls", "Sheets"], ["GC1", 450, 300, 1180, 1250], note])
    assert [len(line.offer.charges) for line in apart.values()] == [0, 1]
    sized = lines([["Grade", "µm", "g/m²", "Size (mm)", "EUR/t"], ["GC1", 450, 300, "700 x 1000", 1180], note])
    assert [[f"{charge.price:f}" for charge in line.offer.charges] for line in sized.values()] == [["38"]]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "On the sheeted items there is a further 38 EUR/t for sheeting; rolls carry no such charge."),
        ("en", "Sheets carry a further charge of 38 EUR/t for sheeting; rolls do not."),
        ("de", "Auf die Bogen kommen weitere 38 EUR/t für das Schneiden hinzu; Rollen sind davon frei."),
        ("de", "Für Bogen berechnen wir zusätzlich 38 EUR/t fürs Schneiden; Rollen tragen keinen solchen Zuschlag."),
        ("fr", "Sur les feuilles s'ajoutent encore 38 EUR/t pour la coupe ; les bobines ne supportent aucun frais."),
        ("es", "En las hojas se suman otros 38 EUR/t por corte; las bobinas no llevan recargo."),
        ("sv", "För ark tillkommer ytterligare 38 EUR/ton för arkning; rullar har ingen sådan avgift."),
    ],
)
def test_what_is_further_charged_is_a_charge(language, note):
    assert _charges(note, forms=_FORMS[language]) == [[], ["38"]]


@pytest.mark.parametrize(
    "note",
    ["There may be a further 38 EUR/t for sheeting.", "On small sheets there is a further 38 EUR/t for sheeting."],
)
def test_what_is_further_charged_at_times_is_not_certain(note):
    assert _charges(note)[1] in ([], ["?"])
