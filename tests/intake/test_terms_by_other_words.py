"""Lead times, last days, smallest orders and charges in words that vendors use for them."""

import pytest

from tests.intake.sheets import lines


def offer(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [note]]).values()
    return line.offer


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Make & ship 4 to 5 weeks", (28, 35)), ("Transit and make: 3 weeks", (21, 21)),
        ("Ship three weeks from order.", (21, 21)), ("Fertigungszeit 4–5 Wochen", (28, 35)),
        ("We ship 2 reels a pallet", None),
    ],
)  # fmt: skip
def test_lead_times(note, days):
    assert offer(note).lead_days == days


@pytest.mark.parametrize(
    ("note", "day"),
    [
        ("Offer stands through 30 September 2026", "2026-09-30"), ("Gültig bis Jahresende 2026", "2026-12-31"),
        ("Prix tenus jusqu'à la fin du troisième trimestre 2026", "2026-09-30"),
        ("Prices valid until the end of the third quarter of 2026", "2026-09-30"),
        ("Preise gehalten bis 31.10.2026", "2026-10-31"), ("Gültig im dritten Quartal", "None"),
        ("Precios válidos hasta fin del segundo trimestre 2026", "2026-06-30"),
    ],
)  # fmt: skip
def test_last_days(note, day):
    assert str(offer(note).valid_until) == day


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("20,000 kg making minimum", 20000), ("No release shall be smaller than 20 tonnes", 20000),
        ("Release of 20 tonnes", None),
    ],
)  # fmt: skip
def test_smallest_orders(note, kg):
    assert offer(note).minimum_kg == kg


@pytest.mark.parametrize(
    ("note", "charges"),
    [
        ("Zu allen Nettopreisen kommen hinzu: Energiezuschlag 28,00 €/t und Fracht 34,50 €/t", {28.0, 34.5}),
        ("Zuzüglich LSVA-Zuschlag von EUR 18.– je Tonne auf alle Positionen", {18.0}),
        ("Transportkosten (+ 9 %) sind gestiegen", set()),
    ],
)  # fmt: skip
def test_charges(note, charges):
    assert {float(charge.price) for charge in offer(note).charges} == charges
