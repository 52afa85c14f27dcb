"""'Offer 1', 'Offer 2' over different boards number them; over the same board they are rounds of bids."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

FIELDS = {
    "en": ("Offer", "Grade:", "Caliper:", "Basis weight:", "Price (EUR/t):", "Lead time:", "4 weeks"),
    "de": ("Angebot", "Sorte:", "Dicke:", "Flächengewicht:", "Preis (EUR/t):", "Lieferzeit:", "4 Wochen"),
    "fr": ("Offre", "Qualité :", "Épaisseur :", "Grammage :", "Prix (EUR/t) :", "Délai :", "4 semaines"),
    "es": ("Oferta", "Calidad:", "Calibre:", "Gramaje:", "Precio (EUR/t):", "Plazo:", "4 semanas"),
    "sv": ("Offert", "Kvalitet:", "Tjocklek:", "Ytvikt:", "Pris (EUR/t):", "Leveranstid:", "4 veckor"),
}
BOARDS = [("GC1", "405 µm", "250 g/m²", 1415), ("GC2", "455 µm", "280 g/m²", 1322), ("GD2", "460 µm", "350 g/m²", 942)]


def forms(language, boards, name=None, spelt="{} {}"):
    word, grade, caliper, weight, price, lead, weeks = FIELDS[language]
    rows = [["Whitlow & Strand Paper"], []]
    for number, board in enumerate(boards, 1):
        rows += [[spelt.format(name or word, number)]]
        rows += [[grade, board[0]], [caliper, board[1]], [weight, board[2]], [price, board[3]], [lead, weeks], []]
    return lines(rows)


def states(found):
    return {line.state for line in found.values()}


@pytest.mark.parametrize("language", FIELDS)
def test_forms_below_each_other(language):
    found = forms(language, BOARDS)
    assert [line.offer.price for line in found.values()] == [1415, 1322, 942]
    assert states(found) == {State.ACCEPTED}


@pytest.mark.parametrize("language", FIELDS)
def test_the_same_board_twice_is_asked_about(language):
    again = ("GC1", "405µm", "250 gsm", 1390)
    assert State.QUESTION in states(forms(language, [BOARDS[0], again]))
    assert State.QUESTION in states(forms(language, [*BOARDS, again]))


@pytest.mark.parametrize(
    ("language", "name"), [("en", "Round"), ("de", "Runde"), ("fr", "Tour"), ("es", "Ronda"), ("sv", "Runda")]
)
def test_rounds_are_rounds_whatever_is_bid_for(language, name):
    assert State.QUESTION in states(forms(language, BOARDS, name))


@pytest.mark.parametrize("language", FIELDS)
def test_sub_headings_in_one_table(language):
    word = FIELDS[language][0]
    rows = [["Whitlow & Strand Paper"], ["Grade", "g/m²", "µm", "EUR/t"]]
    rows += [[f"{word} 1"], ["GC1", 250, 405, 1415], [f"{word} 2"], ["GC2", 280, 455, 1322], ["GD2", 350, 460, 942]]
    assert states(lines(rows)) == {State.ACCEPTED}
    again = lines([*rows, [f"{word} 3"], ["GC1", 250, 405, 1390]])
    assert State.QUESTION in states(again)


def test_a_final_offer_leaves_the_others_behind():
    rows = [["Grade", "g/m²", "µm", "EUR/t"], ["Offer 1"], ["GC1", 250, 405, 1415], ["Final offer"]]
    found = lines([*rows, ["GC2", 280, 455, 1322]])
    assert [line.state for line in found.values()] == [State.QUESTION, State.ACCEPTED]


@pytest.mark.parametrize("language", FIELDS)
@pytest.mark.parametrize(
    ("second", "state"),
    [
        (["GC1", 250, "405.0"], State.QUESTION), (["GC1 C1S", 250, 405], State.QUESTION),
        (["GC1", None, 405], State.QUESTION), (["GC1 250 g/m²", None, None], State.QUESTION),
        (["GC1", 300, 405], State.ACCEPTED), (["GD2", 250, 405], State.ACCEPTED),
    ],
)  # fmt: skip
def test_a_board_written_otherwise_is_the_same_one(language, second, state):
    word, head = FIELDS[language][0], ["Grade", "g/m²", "µm", "EUR/t"]
    rows = [["Whitlow & Strand Paper"], [f"{word} 1"], head, ["GC1", 250, 405, 1415], []]
    assert states(lines([*rows, [f"{word} 2"], head, [*second, 1390]])) == {state}
