"""What prices are per and in, in the sentences of a letter and in a row's own remark."""

import pytest

from tests.intake.sheets import lines

SHEETS = [["Grade", "g/m²", "µm", "mm", "Price"],
          ["GC1", 250, 400, "700 x 1000", 214], ["GD2", 300, 390, "700 x 1000", 205]]  # fmt: skip


def told(note, rows=SHEETS):
    found = lines([[note], [], *rows]).values()
    return [(str(line.state), line.offer.currency, line.offer.basis and str(line.offer.basis)) for line in found]


@pytest.mark.parametrize(
    "note",
    ["Here is what one thousand sheets cost, always in euros.",
     "Gerechnet ist immer für tausend Bogen, und zwar in Euro.",
     "Bonjour, voici les prix du mille de feuilles, en euros et port compris jusque chez vous.",
     "Priset i sista kolumnen avser tusen ark och är angivet i EUR."],
)  # fmt: skip
def test_a_thousand_sheets_in_a_sentence_of_prices(note):
    assert told(note) == [("accepted", "EUR", "1000sheets")] * 2


@pytest.mark.parametrize(
    "note",
    ["Prices in euro. Weights are reckoned for one thousand sheets.",
     "Preise in Euro. Verpackt wird immer für tausend Bogen.",
     "Prix en euros. Les palettes portent toujours mille de feuilles."],
)  # fmt: skip
def test_a_thousand_sheets_of_something_else(note):
    assert [state for state, *_ in told(note)] == ["question"] * 2


BOARDS = ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1240], ["GD2", 300, 390, 850]


def test_the_unit_of_other_goods_is_none_of_these():
    note = "We price in euro per tonne. The corrugated you saw is sold by the pallet of 250 sheets."
    assert told(note, BOARDS) == [("accepted", "EUR", "tonne")] * 2


def test_a_title_over_offcuts_has_the_unit_of_these():
    rows = [["Offcuts of reels, euro cents per kg"], BOARDS[0], ["GC1", 250, 400, 92.5], ["GD2", 300, 390, 83.5]]
    assert told("Tarnow Board Ltd", rows) == [("accepted", "EUR", "kg")] * 2


def test_a_row_s_remark_settles_what_the_letter_leaves_open():
    heads = ["Grade", "g/m²", "pt", "Price", "Remark"]
    rows = [heads, ["SBS", 300, 16, 1455, "This price is for the short ton of 2,000 lb."],
            ["CUK", 300, 18, 995, "This price is for the metric tonne of 1,000 kg."],
            ["CRB", 350, 20, 870, None]]  # fmt: skip
    found = [basis for _, _, basis in told("We quote in US dollars a ton.", rows)]
    assert found == ["short_ton", "tonne", None]
    rows = [heads, ["GC2", 250, 16, 1695, None],
            ["SBS", 300, 16, 1455, "Ce carton est facturé en dollars américains."],
            ["GD2", 320, 16, 1140, "Facturé en dollars canadiens sur demande."]]  # fmt: skip
    note = "Carton Lorrimeau, Sainte-Aune (Québec). Nos prix sont en dollars la tonne métrique."
    assert [currency for _, currency, _ in told(note, rows)] == [None, "USD", None]
