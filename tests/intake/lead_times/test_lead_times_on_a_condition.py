"""A lead time on a condition that names a board is nobody's for certain; one with an exception holds for the others."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper (µm)", "Weight (g/m²)", "Price EUR/tonne"]


def leads_below(text):
    found = lines([HEAD, ["GC1", 430, 290, 1201], ["GD2", 450, 350, 780], [], [text]])
    return [
        "lead-time-unread" if "lead-time-unread" in codes(found[cell]) else found[cell].offer.lead_days
        for cell in ("D2", "D3")
    ]


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3 weeks unless GD2.", "Lead time 3 weeks if GD2.", "Lead time 3 weeks provided it is GD2.",
        "Lieferzeit 3 Wochen, es sei denn GD2.", "Lieferzeit 3 Wochen, wenn GD2.", "Délai 3 semaines, sauf si GD2.",
        "Délai 3 semaines, à moins que GD2.", "Plazo 3 semanas, salvo que sea GD2.",
        "Plazo 3 semanas, a menos que sea GD2.",
        "Leveranstid 3 veckor, om inte GD2.",
    ],
)  # fmt: skip
def test_on_a_condition_it_is_nobodys(text):
    assert leads_below(text) == ["lead-time-unread"] * 2


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3 weeks except GD2.", "Lead time 3 weeks for all grades but GD2.", "Lieferzeit 3 Wochen außer GD2.",
        "Délai 3 semaines sauf GD2.", "Plazo 3 semanas, salvo GD2.", "Leveranstid 3 veckor utom GD2.",
    ],
)  # fmt: skip
def test_an_exception_leaves_it_to_the_others(text):
    assert leads_below(text) == [(21, 21), None]


def test_unless_otherwise_stated_is_no_condition():
    assert leads_below("Lead time 3 weeks unless otherwise stated.") == [(21, 21)] * 2
