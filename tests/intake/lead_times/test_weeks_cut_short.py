"""A week cut short, and its full stop, end a sentence before a capital, but not where the time goes on."""

import pytest

from tests.intake.sheets import lines

HEADS = (["Grade", "Basis weight (g/m²)", "EUR/t"], ["GC1", 300, 1200])


@pytest.mark.parametrize(
    ("sentence", "days"),
    [
        ("Delivery: 4-6 wk. Minimum: 5,000 kg per grade.", (28, 42)),
        ("Lead time 4–6 wks. Minimum 5 t.", (28, 42)),
        ("Lieferzeit 3 Wo. Mindestmenge 5 t.", (21, 21)),
        ("Délai 3 sem. Minimum 5 t.", (21, 21)),
        ("Plazo 3 sem. Mínimo 5 t.", (21, 21)),
        ("Leveranstid 3 v. Minsta order 5 t.", (21, 21)),
    ],
)
def test_what_follows_is_a_sentence_of_its_own(sentence, days):
    (line,) = lines([["Tarn Board Ltd"], *HEADS, [sentence]]).values()
    assert (line.offer.lead_days, line.offer.minimum_kg) == (days, 5000)


@pytest.mark.parametrize(
    "sentence",
    ["Lead time 4 wks. ARO.", "4 wks. Lead time.", "4 Wo. Lieferzeit.", "Lieferzeit 4 Wo. Nach Auftragseingang."],
)
def test_what_goes_on_about_the_time_is_not(sentence):
    (line,) = lines([["Tarn Board Ltd"], *HEADS, [sentence]]).values()
    assert line.offer.lead_days == (28, 28)
