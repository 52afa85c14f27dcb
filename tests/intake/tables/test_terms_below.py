"""Terms in rows below a comparison, each under the prices it holds for."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "g/m²", "µm", "Marlow Board Ltd", "Hellmoor Karton GmbH"]
ROWS = [["GC2", 250, 400, 1205, 1188], ["GD2", 350, 460, 822, 815]]


def _found(*below):
    return lines([["Prices in EUR/t"], [], HEAD, *ROWS, *below])


@pytest.mark.parametrize(
    ("terms", "lead"),
    [
        (["Incoterm", None, None, "DAP Lyon", "FCA Hellmoor"], ["Lead time", None, None, "3 weeks", "5-6 weeks"]),
        (["Lieferbedingung", None, None, "frei Haus", "ab Werk"], ["Lieferzeit", None, None, "3 Wochen", "5-6 Wochen"]),
        (["Incoterm", None, None, "franco", "départ usine"], ["Délai", None, None, "3 semaines", "5 à 6 semaines"]),
        (["Incoterm", None, None, "DAP Vigo", "EXW"], ["Plazo", None, None, "3 semanas", "5 a 6 semanas"]),
        (["Leveransvillkor", None, None, "DAP", "fritt fabrik"], ["Leveranstid", None, None, "3 veckor", "5-6 veckor"]),
    ],
)
def test_terms_below_each_price_are_its_own(terms, lead):
    found = _found(terms, lead)
    first, second = ([found[f"{column}{row}"].offer for row in (4, 5)] for column in "DE")
    assert {(offer.delivered, offer.lead_days) for offer in first} == {(True, (21, 21))}
    assert {(offer.delivered, offer.lead_days) for offer in second} == {(False, (35, 42))}
    assert set(found) == {"D4", "D5", "E4", "E5"}


def test_terms_below_an_empty_row_are_those_of_their_columns_too():
    apart = _found([], ["Lead time", None, None, "3 weeks", "5-6 weeks"])
    assert {line.offer.lead_days for line in apart.values()} == {(21, 21), (35, 42)}


def test_marks_given_below_are_no_terms():
    found = _found(["Quality mark", None, None, "14 points", "16 points"])
    assert {(line.offer.lead_days, line.offer.delivered) for line in found.values()} == {(None, None)}


@pytest.mark.parametrize(
    ("labels", "leads"),
    [
        (("Freight", "Minimum", "Lead time", "Prices firm through"), "SBS 4 weeks; CRB 2 weeks"),
        (("Fracht", "Mindestmenge", "Lieferzeit", "Gültig bis"), "SBS 4 Wochen; CRB 2 Wochen"),
        (("Transport", "Minimum", "Délai", "Valable jusqu'au"), "SBS 4 semaines ; CRB 2 semaines"),
        (("Flete", "Mínimo", "Plazo", "Válido hasta"), "SBS 4 semanas; CRB 2 semanas"),
        (("Frakt", "Minsta order", "Leveranstid", "Gäller t.o.m."), "SBS 4 veckor; CRB 2 veckor"),
    ],
)
def test_lead_times_by_grade_behind_their_label_head_no_table(labels, leads):
    rows = [["Grade", "pt", "USD/cwt"], ["SBS C1S", 18, 58], ["CRB", 20, 44], []]
    said = ("FOB mill", "5,000 lb", leads, "2026-12-31")
    found = lines([*rows, *([label, words] for label, words in zip(labels, said, strict=True))]).values()
    assert [line.offer.lead_days for line in found] == [(28, 28), (14, 14)]
    assert {round(line.offer.minimum_kg) for line in found} == {2268}
    assert {(line.offer.delivered, str(line.offer.valid_until)) for line in found} == {(False, "2026-12-31")}
