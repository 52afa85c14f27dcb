"""A charge of which some boards bear another part, that is only estimated, or of which it is not told who bears it."""

import pytest

from tests.intake.charges.two_boards import ROWS, charged
from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 25 EUR/t, double on GD2.", "Energy surcharge 25 EUR/t, negotiable for GD2.",
        "Energy 25 EUR/t. GD2 pays half.", "Energiezuschlag 25 EUR/t, auf GD2 doppelt",
        "Energiezuschlag 25 EUR/t; GD2 trägt die Hälfte.", "Supplément énergie 25 EUR/t, double sur le GD2",
        "Recargo de energía 25 EUR/t, el doble en GD2", "Energitillägg 25 EUR/t, dubbelt på GD2",
    ],
)  # fmt: skip
def test_another_rate_leaves_the_board_open_and_the_others_charged(note):
    assert charged(note) == [[25], [None]]


@pytest.mark.parametrize(
    ("note", "own"),
    [
        ("Energy surcharge 25 EUR/t; GD2 bears 15 EUR/t.", [[25], [15]]),
        ("Energy surcharge 25 EUR/t; on GD2 we charge 15 EUR/t.", [[25], [15]]),
        ("Energiezuschlag 25 EUR/t; GD2 trägt 15 EUR/t.", [[25], [15]]),
        ("Energiezuschlag 25 EUR/t; GD2 trägt keinen.", [[25], []]),
        ("Supplément énergie 25 EUR/t ; le GD2 supporte 15 EUR/t.", [[25], [15]]),
        ("Recargo de energía 25 EUR/t; GD2 soporta 15 EUR/t.", [[25], [15]]),
        ("Energitillägg 25 EUR/t; GD2 belastas med 15 EUR/t.", [[25], [15]]),
        ("GD2 bears no surcharge of its own; energy 25 EUR/t on all.", [[25], [25]]),
        ("Energy surcharge 25 EUR/t, also on GD2.", [[25], [25]]),
        ("Energy surcharge 25 EUR/t, samples of GD2 free.", [[25], [25]]),
        ("Energy surcharge 25 EUR/t, payable on GD2.", [[], [25]]),
        ("Energy surcharge 25 EUR/t, insured on GD2 rolls.", [[None], [None]]),
    ],
)  # fmt: skip
def test_who_bears_it(note, own):
    assert charged(note) == own


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge of about 25 EUR/t.", "Energy surcharge of 25 EUR/t or 3 %, whichever is greater.",
        "Energiezuschlag ca. 25 EUR/t", "Energiezuschlag 25 EUR/t oder 3 %", "Supplément énergie env. 3 %",
        "Supplément énergie 25 EUR/t ou 3 %", "Recargo de energía unos 25 EUR/t.",
        "Recargo de energía 25 EUR/t o 3 %", "Energitillägg omkring 25 EUR/t", "Energitillägg 25 EUR/t eller 3 %",
    ],
)  # fmt: skip
def test_an_estimate_and_one_of_two_are_open(note):
    assert charged(note) == [[None], [None]]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 3 % on rolls or sheets",
        "Energy surcharge on orders of about 5 t: 3 %",
        "Le supplément énergie est de 3 %.",
        "Energy surcharge 3 %. Energy costs are lower this year.",
        "Energy surcharge 3 %. Certificates for GD2 on request.",
    ],
)
def test_what_is_near_and_what_is_joined_otherwise_changes_nothing(note):
    assert charged(note) == [[3], [3]]


@pytest.mark.parametrize(
    "note",
    [
        "Surcharge of 25 EUR/t on GD2 rolls under 20 in wide.",
        "Surcharge of 25 EUR/t on GD2, reviewed monthly",
        "GD2 bears a surcharge of 25 EUR/t or 3 %, whichever is greater.",
        "Only GD2 sheets bear a surcharge of 25 EUR/t.",
        "Auf GD2 kommt ein Zuschlag von 25 EUR/t, sofern in Bogen geliefert.",
    ],
)  # fmt: skip
def test_more_that_is_said_of_it_leaves_it_open_for_these_boards_alone(note):
    assert charged(note) == [[], [None]]
    assert {line.state.value for line in lines([*ROWS, [note]]).values()} == {"accepted"}


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 3 %, not for GD2 only but for all", "Energy surcharge 3 %, not on GD2 only.",
        "Energiezuschlag 3 %, nicht nur für GD2, sondern für alle",
        "Supplément énergie 3 %, non seulement pour GD2 mais pour tous",
        "Recargo de energía 3 %, no solo para GD2 sino para todos",
        "Energitillägg 3 %, inte bara för GD2 utan för alla",
    ],
)  # fmt: skip
def test_not_of_some_only_is_of_all(note):
    assert charged(note) == [[3], [3]]


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Energy surcharge 3 % GD2 only.", None), ("Energy surcharge 3 %, GD2 only. Lead time 4 weeks.", (28, 28)),
        ("Energiezuschlag 3 % nur GD2.", None), ("Energiezuschlag 3 %, nur GD2. Lieferzeit 4 Wochen.", (28, 28)),
        ("Supplément énergie 3 % GD2 uniquement.", None),
        ("Supplément énergie 3 %, GD2 uniquement. Délai 4 semaines.", (28, 28)),
        ("Recargo de energía 3 % solo GD2.", None), ("Recargo de energía 3 %, solo GD2. Plazo 4 semanas.", (28, 28)),
        ("Energitillägg 3 % endast GD2.", None), ("Energitillägg 3 %, endast GD2. Leveranstid 4 veckor.", (28, 28)),
    ],
)  # fmt: skip
def test_the_board_named_alone_bears_it_and_the_time_behind_is_of_all(note, days):
    assert charged(note) == [[], [3]]
    assert [line.offer.lead_days for line in lines([*ROWS, [note]]).values()] == [days, days]


@pytest.mark.parametrize(
    "note",
    [
        "Supplement 35 EUR/t is not included in the table.", "Supplement of 35 EUR/t on top of the rates shown.",
        "Energy surcharge of 35 EUR/t is not included in the prices.",
        "Ein Zuschlag von 35 EUR/t ist in den Preisen nicht enthalten.",
    ],
)  # fmt: skip
def test_what_is_not_in_the_prices_is_charged(note):
    assert charged(note) == [[35], [35]]


@pytest.mark.parametrize(
    "note",
    [
        "A supplement of 35 EUR/t, which is not included in the prices, applies to orders under 5 t.",
        "Ein Zuschlag von 35 EUR/t, der in den Preisen nicht enthalten ist, gilt für Aufträge unter 5 t.",
        "Une majoration de 35 EUR/t, qui n'est pas comprise dans les prix, s'applique aux commandes de moins de 5 t.",
        "Un suplemento de 35 EUR/t, que no está incluido en los precios, se aplica a pedidos de menos de 5 t.",
        "Ett tillägg på 35 EUR/t, som inte ingår i priserna, gäller för order under 5 ton.",
    ],
)
def test_what_small_orders_pay_is_charged_to_no_other(note):
    assert charged(note) == [[], []]
