"""Fields of a letter beside each other over its table: labels with their values, which are nobody's offer."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]
BOARD = ["GC1", 250, 400, 1240]


@pytest.mark.parametrize("colon", [":", ""])
@pytest.mark.parametrize(
    ("fields", "days"),
    [
        ([("To", "Purchasing, Larkmoor"), ("FOB", "Our plant, freight prepaid & add"), ("Attn", "J. Buying"),
          ("Ship", "2 wks ARO"), ("Ref", "your mail 3/13"), ("Terms", "Net 30")], 14),
        ([("An", "Einkauf Tarnmoor"), ("Lieferung", "ab Werk"), ("z. Hd.", "Frau Ulmer"), ("Lieferzeit", "3 Wochen"),
          ("Ihr Zeichen", "Mail vom 3.3."), ("Zahlung", "30 Tage netto")], 21),
        ([("À", "Achats Larmor"), ("Incoterm", "départ usine"), ("Attn", "M. Ulmer"), ("Délai", "3 semaines"),
          ("Réf.", "courriel 3/3"), ("Paiement", "30 jours net")], 21),
        ([("Para", "Compras Larmor"), ("Entrega", "EXW"), ("Atn.", "Sra. Olmos"), ("Plazo", "3 semanas"),
          ("Ref.", "correo 3/3"), ("Pago", "30 días")], 21),
        ([("Till", "Inköp Larmor"), ("Leverans", "fritt fabrik"), ("Att", "Anna Ulm"), ("Leveranstid", "3 veckor"),
          ("Er ref", "mejl 3/3"), ("Betalning", "30 dagar netto")], 21),
    ],
)  # fmt: skip
def test_labels_and_values_beside_each_other_are_terms_and_no_offers(fields, days, colon):
    pairs = [(f"{label}{colon}", value) for label, value in fields]
    block = [[*left, None, *right] for left, right in zip(pairs[::2], pairs[1::2], strict=True)]
    found = lines([["Tolbrook Board Ltd"], [], *block, [], HEAD, BOARD])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D8": "accepted"}
    assert (found["D8"].offer.lead_days, found["D8"].offer.delivered) == ((days, days), False)


def test_heads_with_colons_head_a_table_all_the_same():
    found = lines(
        [["USD per short ton"], ["Board:", "Caliper:", "Lead time:", "Price:"], ["SBS C1S", "14 pt", 21, 1175]]
    )
    assert [(cell, str(line.state)) for cell, line in found.items()] == [("D3", "accepted")]


def test_boards_in_forms_beside_each_other_are_offers():
    form = [["Grade:", "SBS C1S", "Grade:", "CUK C1S"], ["Caliper:", "14 pt", "Caliper:", "18 pt"]]
    found = lines([*form, ["Price:", "$1175/ST", "Price:", "$975/ST"]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"B3": "accepted", "D3": "accepted"}


@pytest.mark.parametrize(
    ("heads", "board"),
    [
        (["Item", "Grade", "Caliper", "g/m²", "Incoterm", "EXW"], ["A1", "GC1", 400, 250, "EXW", 1240]),
        (["Grade", "g/m²", "Delivery", "2-3 weeks"], ["GC1", 250, "EXW", 1240]),
        (["Sorte", "g/m²", "Lieferung", "frei Haus"], ["GC1", 250, "3 Wochen", 1240]),
        (["Qualité", "g/m²", "Livraison", "franco"], ["GC1", 250, "3 semaines", 1240]),
        (["Calidad", "g/m²", "Entrega", "EXW"], ["GC1", 250, "3 semanas", 1240]),
        (["Kvalitet", "g/m²", "Leverans", "Fritt fabrik"], ["GC1", 250, "3 veckor", 1240]),
        (["What", "How heavy", "Delivery", "EXW"], ["GC1 250 g/m²", 250, "3 weeks", 1240]),
    ],
)  # fmt: skip
def test_heads_of_boards_that_end_in_a_term_head_their_prices(heads, board):
    (line,) = lines([["Tolbrook Board Ltd"], ["EUR/t"], heads, board]).values()
    assert (str(line.state), line.offer.price, line.offer.grade) == ("accepted", 1240, "FBB")


def test_figures_of_further_fields_make_no_heads_of_a_letter_s():
    fields = [["Attn", "J. Buying", "Ship", "2 wks ARO"], ["Ref no.", 4711, "Net days", 30]]
    found = lines([["Tolbrook Board Ltd"], *fields, [], HEAD, BOARD])
    assert {cell: (str(line.state), line.offer.lead_days) for cell, line in found.items()} == {
        "D6": ("accepted", (14, 14))
    }
