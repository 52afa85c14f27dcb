"""What the loads of some boards weigh, or those of one kind, is not what each load of the list weighs."""

import pytest

from tests.intake.sheets import codes, lines

_ENGLISH = ["Grade", "Caliper (pt)", "1 pallet", "5 pallets"]
_METRIC = ["Grade", "g/m²", "1 pallet", "5 pallets"]


def sizes(note, *, head=None, rows=(("SBS", 24, 1250, 1200),)):
    """Where the two order sizes begin, in kg, or what is asked of them, per line."""
    metric = head is _METRIC
    unit = "EUR/t" if metric else "USD/short ton"
    found = lines([[unit], head or _ENGLISH, *map(list, rows), [note]])
    return {None if "bracket-unread" in codes(line) else round(line.offer.from_kg) for line in found.values()}


@pytest.mark.parametrize(
    "note",
    [
        "There are 2,000 lb on each pallet, 1,800 lb for 24 pt.", "Pallet weight 2,000 lb net, 24 pt 1,800 lb net.",
        "Pallets weigh 2,000 lb. Pallets of 24 pt weigh 1,800 lb.", "Half pallets weigh 1,000 lb.",
        "Half pallets of 1,000 lb each.", "Damaged pallets weigh 900 lb.",
        "Half pallets are 40 in wide and weigh 1,000 lb.", "24 pt pallets weigh 1,800 lb.",
    ],
)  # fmt: skip
def test_loads_of_some_calipers_or_of_a_kind_are_asked_about(note):
    assert sizes(note) == {None}


@pytest.mark.parametrize(
    "note",
    [
        "Paletten wiegen 800 kg, ab 350 g/m² 900 kg.", "Beschädigte Paletten wiegen 400 kg.",
        "Les palettes pèsent 800 kg, au-delà de 350 g/m² 900 kg.", "Les demi palettes pèsent 400 kg.",
        "Los palés pesan 800 kg, a partir de 350 g/m² 900 kg.", "Medios palés pesan 400 kg.",
        "Pallar väger 800 kg, från 350 g/m² 900 kg.", "Halva pallar väger 400 kg.",
    ],
)  # fmt: skip
def test_so_they_are_in_other_languages(note):
    assert sizes(note, head=_METRIC, rows=[("GD2", 400, 900, 880)]) == {None}


@pytest.mark.parametrize(
    "note",
    [
        "Our full pallets weigh 800 kg.", "Each standard pallet weighs 800 kg.", "Volle Paletten wiegen 800 kg.",
        "Die Paletten wiegen 800 kg.", "Nos palettes pèsent 800 kg.", "Cada palé pesa 800 kg.",
        "Varje full pall väger 800 kg.", "Half pallets weigh 400 kg. Pallets weigh 800 kg.",
        "Pallets weigh 800 kg, minimum for 400 g/m² 5 t.",
    ],
)  # fmt: skip
def test_words_that_set_no_load_apart(note):
    assert sizes(note, head=_METRIC, rows=[("GD2", 400, 900, 880)]) == {800, 4000}


@pytest.mark.parametrize(
    "note",
    ["SBS pallets weigh 2,000 lb.", "SBS rolls weigh 1,000 lb, SBS pallets 2,000 lb. SBS pallets weigh 2,000 lb."],
)
def test_loads_of_the_one_grade_of_a_list(note):
    assert sizes(note, rows=[("SBS", 18, 1250, 1200), ("SBS", 24, 1150, 1100)]) == {907, 4536}


@pytest.mark.parametrize(
    ("note", "rows"),
    [
        ("SBS pallets weigh 2,000 lb.", [("SBS", 18, 1250, 1200), ("CUK", 24, 1150, 1100)]),
        ("SBS pallets weigh 2,000 lb.", [("CUK", 24, 1150, 1100)]),
        ("SBS pallets weigh 2,000 lb.", [("SBS", 18, 1250, 1200), ("Snowhite", 24, 1150, 1100)]),
        ("SBS pallets weigh 2,000 lb. SBS 24 pt pallets weigh 1,800 lb.", [("SBS", 24, 1250, 1200)]),
    ],
)
def test_those_of_a_grade_are_no_other_boards(note, rows):
    assert None in sizes(note, rows=rows)


@pytest.mark.parametrize(
    "note", ["GC1 pallets weigh 800 kg.", "GC1-Paletten wiegen 800 kg.", "GC1-pallar väger 800 kg."]
)
def test_those_of_a_grade_in_tonnes(note):
    assert sizes(note, head=_METRIC, rows=[("GC1", 300, 900, 880)]) == {800, 4000}
