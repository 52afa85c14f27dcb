"""Terms of one part of an offer, named by its mark or its title, hold for that part's table alone."""

import pytest

from tests.intake.sheets import lines


def offer(titles, terms):
    """Two tables, each below its title and above its terms."""
    head = ["Board", "g/m²", "µm", "EUR per tonne"]
    return lines([
        [titles[0]], head, ["GC2", 250, 410, 1150], [terms[0]], [],
        [titles[1]], head, ["GD2", 350, 450, 790], [terms[1]],
    ])  # fmt: skip


def told(found):
    return [(line.offer.delivered, line.offer.lead_days) for line in found.values()]


@pytest.mark.parametrize(
    ("titles", "terms"),
    [
        (("A. Folding boxboard", "B. Lined board"), ("Terms for A: delivered, 3 weeks", "Terms of B: EXW, 1 week")),
        (("Del 1: import", "Del 2: lager"), ("Villkor del 1: DAP, 3 veckor", "Villkor del 2: EXW, 1 vecka")),
        (("Teil 1: Import", "Teil 2: Lager"), ("Zu Teil 1: DAP, 3 Wochen", "Zu Teil 2: EXW, 1 Woche")),
        (("I. Import", "II. Stock"), ("Conditions I : DAP, 3 semaines", "Conditions II : EXW, 1 semaine")),
        (("1) Bobines", "2) Feuilles"), ("Bobines : DAP, délai 3 semaines", "Feuilles : EXW, délai 1 semaine")),
    ],
)  # fmt: skip
def test_each_part_has_its_own_terms(titles, terms):
    assert told(offer(titles, terms)) == [(True, (21, 21)), (False, (7, 7))]


def test_terms_that_name_no_part_hold_for_the_table_above_and_below():
    found = lines([["A. Reels"], ["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1150], ["Lead time: 3 weeks"], [],
                   ["B. Sheets"], ["Board", "g/m²", "µm", "EUR/t"], ["GD2", 350, 450, 790]])  # fmt: skip
    assert [line.offer.lead_days for line in found.values()] == [(21, 21)] * 2


@pytest.mark.parametrize(
    ("said", "delivered"),
    [
        ("Ex our Selhampton warehouse", False), ("Preise ab unserem Bremer Lager", False),
        ("Départ notre entrepôt de Lyon", False), ("Orders are shipped from our mill", None),
    ],
)  # fmt: skip
def test_the_vendor_s_own_place_may_have_a_name(said, delivered):
    found = lines([[said], ["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1150]])
    assert [line.offer.delivered for line in found.values()] == [delivered]


@pytest.mark.parametrize(
    ("note", "rates"),
    [("Energy surcharge: 4 % of the board price", [4]), ("Energy surcharge 4 % on recycled board", [])],
)
def test_a_rate_of_any_board_s_price_is_everybody_s(note, rates):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1150], [note]]).values()
    assert [charge.price for charge in line.offer.charges if charge.currency is None] == rates


@pytest.mark.parametrize("word", ["Note", "Hinweis", "Remark", "Class"])
def test_a_number_of_notes_names_no_part(word):
    notes = [[f"{word} 1: Prices FOB mill."], [f"{word} 2: Lead time 4 weeks."]]
    head = ["Board", "g/m²", "µm", "EUR per tonne"]
    rows = [["1. Sheets"], head, ["GC2", 250, 410, 1150], [], ["2. Rolls"], head, ["GD2", 350, 450, 790], [], *notes]
    assert told(lines(rows)) == [(False, (28, 28))] * 2
