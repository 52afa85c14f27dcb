"""Lead times as contracts and letters write them: in words with the figure in brackets, and for sheets and rolls."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_sentences import find_lead


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Lead time is twenty-eight (28) days from acceptance of the order.", 28),
        ("Lead time is twenty-eight days.", 28),
        ("Lead time: four (4) weeks", 28),
        ("Lieferzeit: achtundzwanzig Tage", 28),
        ("Délai de livraison : vingt-huit (28) jours", 28),
        ("Délai de livraison : vingt et un jours", 21),
        ("Plazo de entrega: treinta y cinco (35) días", 35),
        ("Leveranstid: tjugoåtta dagar", 28),
    ],
)
def test_a_number_in_words_is_read_whole(text, days):
    assert find_lead(text).days == (days, days)


def test_other_figures_in_brackets_stay_what_they_are():
    assert in_figures("GC1 300 (305) g/m², two weeks") == "GC1 300 (305) g/m², 2 weeks"
    assert in_figures("two-three weeks") == "2-3 weeks"


def test_the_diameter_of_a_reel_counts_no_days():
    assert lead_remarked("reel 815, 1200 dia") is None
    assert lead_remarked("envío 45 dias") is not None


_NOTES = [
    ("Lead times: 2 weeks for sheets, 3 weeks for rolls.", "sheets", "rolls"),
    ("Lieferzeit: 2 Wochen für Bogen, 3 Wochen für Rollen.", "Bogen", "Rollen"),
    ("Délais : 2 semaines pour les feuilles, 3 semaines pour les bobines.", "feuilles", "bobines"),
    ("Plazos de entrega: 2 semanas para hojas, 3 semanas para bobinas.", "hojas", "bobinas"),
    ("Leveranstid: 2 veckor för ark, 3 veckor för rullar.", "ark", "rullar"),
]


@pytest.mark.parametrize(("note", "sheets", "rolls"), _NOTES)
def test_each_form_has_its_own_lead_time(note, sheets, rolls):
    rows = [
        ["Description", "EUR/tonne"],
        [f"GC1 300 g/m² 490 µm, {sheets}", 1284],
        [f"GC1 300 g/m² 490 µm, {rolls}", 1239],
    ]
    assert [line.offer.lead_days for line in lines([*rows, [], [note]]).values()] == [(14, 14), (21, 21)]


@pytest.mark.parametrize(("note", "sheets", "rolls"), _NOTES)
def test_a_board_of_no_known_form_has_neither(note, sheets, rolls):
    (line,) = lines([["Description", "EUR/tonne"], ["GC1 300 g/m² 490 µm", 1284], [], [note]]).values()
    assert line.offer.lead_days is None
    assert "lead-time-unread" in codes(line)
