"""What a roll or pallet weighs, in a note that says more of it."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.loads import load_definitions


@pytest.mark.parametrize(
    "text",
    [
        "Each roll is 40 in wide and counts as 850 kg for the breaks below.",
        "Jede Rolle ist 100 cm breit und zählt als 850 kg für die Staffeln unten",
        "Chaque bobine a une laize de 100 cm et compte pour 850 kg dans les tranches ci-dessous",
        "Cada bobina mide 1 m de ancho y pesa 850 kg",
        "Varje rulle är 1 m bred och räknas som 850 kg för stegen nedan",
        "Reels weigh 850 kg and are 40 in wide",
        "Rolls are 40 in wide, weigh 850 kg",
    ],
)
def test_the_weight_is_heard_beside_what_else_is_said(text):
    assert [(one.kind, one.weight.kg()) for one in load_definitions(text)] == [("roll", 850)]


@pytest.mark.parametrize(
    "text",
    [
        "Rolls are 40 in wide and weigh about 850 kg",
        "Rolls are 40 in wide and weigh up to 850 kg",
        "Rolls weigh 850 kg and more",
        "Rolls weigh 850 kg net and are 900 kg gross",
        "Each pallet holds 5 rolls and weighs 850 kg",
        "Rolls are in stock and the minimum is 850 kg",
    ],
)
def test_what_is_not_exact_or_of_something_else_defines_nothing(text):
    assert load_definitions(text) == ()


@pytest.mark.parametrize(
    ("head", "sizes", "note"),
    [
        (
            "Rolls ordered",
            ("1 - 3", "4 and more"),
            "Each roll is 40 in wide and counts as 850 kg for the breaks below.",
        ),
        ("Anzahl Rollen", ("1 - 3", "ab 4"), "Jede Rolle ist 100 cm breit und wiegt 850 kg."),
        ("Nombre de bobines", ("1 - 3", "4 et plus"), "Chaque bobine a une laize de 1 m et pèse 850 kg."),
        ("Número de bobinas", ("1 - 3", "4 o más"), "Cada bobina mide 1 m de ancho y pesa 850 kg."),
        ("Antal rullar", ("1 - 3", "4 och fler"), "Varje rulle är 1 m bred och väger 850 kg."),
    ],
)
def test_rolls_ordered_are_weighed_by_it(head, sizes, note):
    def table(note):
        return [["EUR per tonne"], [note], ["Sorte", "g/m²", "µm", head, "EUR/1000 kg"],
                ["GC2", 280, 470, sizes[0], 1205], [None, None, None, sizes[1], 1160]]  # fmt: skip

    found = lines(table(note))
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [(850, 3400), (3400, None)]
    asked = lines(table("Rolls are 1 m wide"))
    assert all("bracket-unread" in codes(line) for line in asked.values())
