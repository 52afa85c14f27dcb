"""Heads that count a lead time from the order: 'Days ARO', 'Mill notice (weeks)'."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    ("head", "cell", "days"),
    [
        ("Days ARO", 28, (28, 28)), ("Weeks ARO", 4, (28, 28)), ("Mill notice (weeks)", 4, (28, 28)),
        ("Tage nach Auftrag", 28, (28, 28)), ("Semaines après commande", 4, (28, 28)),
        ("Semanas tras pedido", 4, (28, 28)), ("Veckor efter order", 4, (28, 28)),
    ],
)  # fmt: skip
def test_they_head_lead_times(head, cell, days):
    rows = [
        ["Grade", "g/m²", "µm", head, "EUR per tonne"],
        ["GC1", 250, 400, cell, 1149],
        ["GC2", 260, 440, cell, 1109],
    ]
    found = lines(rows)
    assert [(str(line.state), line.offer.lead_days) for line in found.values()] == [("accepted", days)] * 2


@pytest.mark.parametrize("head", ["Notice", "Price notice"])
def test_a_bare_notice_heads_none(head):
    rows = [["Grade", "g/m²", "µm", head, "EUR per tonne"], ["GC1", 250, 400, "see list", 1149]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [None]
