"""Order sizes in rolls below groups that say in what money, and per what, their prices are."""

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.trade.offer import State


def read(groups, sizes, note):
    rows = [
        ["Tariff"], ["Board", "g/m²", groups[0], None, groups[1]], [None, None, *sizes, *sizes],
        ["GC1", 255, 1288, 1236, 1207, 1158], ["GD2", 310, 816, 771, 760, 728], [], [note],
    ]  # fmt: skip
    return list(lines(rows, merged=merged((1, 2, 1, 3), (1, 4, 1, 5))).values())


@pytest.mark.parametrize(
    ("groups", "sizes", "note"),
    [
        (("Zone euro (EUR/t)", "Suisse (CHF/t)"), ("moins de 4 bobines", "4 bobines et plus"),
         "Une bobine est comptée à 900 kg."),
        (("Deutschland (EUR/t)", "Schweiz (CHF/t)"), ("unter 4 Rollen", "ab 4 Rollen"), "Eine Rolle zählt als 900 kg"),
        (("Euro zone (EUR/t)", "Swiss (CHF/t)"), ("under 4 reels", "4 reels and over"), "One reel counts as 900 kg"),
        (("Zona euro (EUR/t)", "Suiza (CHF/t)"), ("menos de 4 bobinas", "4 bobinas o más"),
         "Una bobina se cuenta como 900 kg"),
        (("Euroland (EUR/t)", "Schweiz (CHF/t)"), ("under 4 rullar", "4 rullar eller mer"),
         "En rulle räknas som 900 kg"),
    ],
)  # fmt: skip
def test_the_unit_of_the_group_holds_and_a_roll_weighs_what_the_note_says(groups, sizes, note):
    found = read(groups, sizes, note)
    assert {line.state for line in found} == {State.ACCEPTED}
    assert {str(line.offer.basis) for line in found} == {"tonne"}
    assert [(line.offer.currency, line.offer.from_kg, line.offer.below_kg) for line in found[:4]] == [
        ("EUR", None, 3600), ("EUR", 3600, None), ("CHF", None, 3600), ("CHF", 3600, None),
    ]  # fmt: skip


@pytest.mark.parametrize("note", ["Une bobine pèse environ 900 kg.", "Livraison en 3 semaines"])
def test_what_a_roll_weighs_is_asked_where_no_note_says_it(note):
    found = read(("France (EUR/t)", "Suisse (CHF/t)"), ("moins de 4 bobines", "4 bobines et plus"), note)
    assert all(codes(line) == {"bracket-unread"} for line in found)


@pytest.mark.parametrize("said", ["Rullvikt: 750 kg", "Rollengewicht: 750 kg", "Roll weight: 750 kg"])
def test_one_word_for_the_weight_of_a_roll(said):
    rows = [[said], ["Grade", "g/m²", "µm", "under 4 rolls, EUR/t", "from 4 rolls, EUR/t"], ["GD2", 320, 415, 905, 868]]
    one, two = lines(rows).values()
    assert (one.offer.below_kg, two.offer.from_kg) == (3000, 3000)
