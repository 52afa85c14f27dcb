"""What a buyer may do without is no part of what the board costs, and is told beside it."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.footing import footing

HEAD = ["Board", "µm", "g/m²"]
GC1 = ["GC1", 450, 300]


def delivered(*notes, head=(), cells=()):
    rows = [["Prices delivered"], *([note] for note in notes), [*HEAD, "EUR/t", *head], [*GC1, 1100, *cells]]
    (line,) = lines(rows).values()
    return footing(line.offer).delivered_per_tonne, [note.text for note in line.notes]


@pytest.mark.parametrize(
    "note",
    [
        "Sheeting extra if required: 60 EUR/t", "Sheeting, if required, EUR 60/t extra", "Sheeting EUR 60/t (optional)",
        "Cutting to sheets on request: 60 EUR/t", "Formatzuschlag auf Wunsch: 60 EUR/t",
        "Zuschlag für Querschneiden bei Bedarf 60 EUR/t", "Mise en format si nécessaire, supplément 60 EUR/t",
        "Mise en format en option : 60 EUR/t", "Corte a hoja, si se requiere: 60 EUR/t", "Formateado opcional 60 EUR/t",
        "Tillägg för arkning 600 SEK/ton vid behov", "Arkning som tillval 600 SEK/ton",
    ],
)  # fmt: skip
def test_a_note_of_an_optional_charge_leaves_the_cost_and_is_told(note):
    cost, notes = delivered(note)
    assert cost == 1100
    assert [text for text in notes if note in text]


@pytest.mark.parametrize("head", ["Sheeting (if required) EUR/t", "Optional sheeting", "Freight (optional) EUR/t"])
def test_a_column_of_optional_charges_leaves_the_cost_and_is_told(head):
    cost, notes = delivered(head=[head], cells=[60])
    assert cost == 1100
    assert [text for text in notes if "only if you order it" in text]


def test_charges_beside_an_optional_one_are_still_charged():
    cost, notes = delivered("Plus freight 45 EUR/t, sheeting on request 60 EUR/t")
    assert cost == 1145
    assert len(notes) == 1
    assert delivered("Freight 45 EUR/t, 500 µm on request")[0] == 1145
