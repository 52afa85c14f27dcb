"""Prices with value added tax in them compare with none, and are asked about; all others are without."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import statements
from tracker.trade.offer import State

HEAD = ["Grade", "g/m²", "EUR/t", "Remarks"]
INCLUDED = [
    "All prices incl. 19 % VAT", "Prices include 20 % VAT", "VAT included", "Prices inclusive of GST",
    "Alle Preise inkl. 19 % MwSt.", "Preise verstehen sich einschließlich der gesetzlichen Mehrwertsteuer",
    "Prix TTC", "Prix en EUR/t, TVA 20 % comprise", "Precios con IVA", "IVA incluido (21 %)",
    "Priser inkl. 25 % moms", "Moms ingår i priserna",
]  # fmt: skip
EXCLUDED = [
    "All prices plus VAT", "Prices do not include VAT", "VAT not included", "excl. VAT (20 %)",
    "Preise inkl. Fracht, zzgl. MwSt.", "Preise inkl. Fracht zzgl. 19 % MwSt.", "ohne MwSt.", "MwSt. nicht enthalten",
    "Prix HT", "TVA non comprise", "TVA en sus", "Precios sin IVA", "IVA no incluido", "más IVA",
    "Priser exkl. moms", "Moms tillkommer", "moms ingår ej", "USt-IdNr. DE123456789", "Total TTC",
    "Statutory VAT will be included in each of our invoices",
]  # fmt: skip


@pytest.mark.parametrize("text", INCLUDED)
@pytest.mark.parametrize("below", [False, True])
def test_a_title_or_note_that_says_tax_is_in_the_prices(text, below):
    table = [HEAD, ["GC1", 250, 1290], ["GD2", 350, 880]]
    found = lines([*table, [], [text]] if below else [[text], *table])
    assert [line.state for line in found.values()] == [State.QUESTION] * 2
    assert all(codes(line) == {"number-ambiguous"} for line in found.values())


@pytest.mark.parametrize("text", EXCLUDED)
def test_what_says_that_it_is_not_changes_nothing(text):
    (line,) = lines([[text], HEAD, ["GC1", 250, 1290]]).values()
    assert line.state == "accepted"


@pytest.mark.parametrize("text", ["incl. VAT", "inkl. MwSt.", "TTC", "IVA incluido", "inkl. moms"])
def test_a_head_or_a_remark_says_so_too(text):
    headed = lines([["Grade", "g/m²", f"EUR/t {text}"], ["GC1", 250, 1290]])["C2"]
    remarked = lines([HEAD, ["GC1", 250, 1290, text], ["GD2", 350, 880]])
    assert headed.state == remarked["C2"].state == "question"
    assert remarked["C3"].state == "accepted"


def test_beside_a_net_price_the_one_with_tax_is_told_apart():
    rows = [["VAT included: see right column"], ["Grade", "g/m²", "Price EUR/t", "Price incl. VAT EUR/t"]]
    found = lines([*rows, ["GC1", 250, 1290, 1535.1]])
    assert [(cell, line.state) for cell, line in found.items()] == [("C3", "accepted")]


@pytest.mark.parametrize(
    "note",
    [
        "Preise exkl. MWST. Energiezuschlag 4,5 % auf alle Preise.", "Preise zzgl. MwSt. Energiezuschlag 4,5 %.",
        "Precios sin I.V.A. Recargo energético 4,5 %.", "Prix hors T.V.A. Supplément énergie 4,5 %.",
    ],
)  # fmt: skip
def test_a_sentence_ends_with_the_tax(note):
    charged = [said for said in statements(note) if isinstance(said, ChargeWords)]
    assert [(charge.percent, str(charge.amounts[0].value)) for charge in charged] == [(True, "4.5")]


@pytest.mark.parametrize("text", ["zzgl. MwSt. 19 %", "zzgl. gesetzl. MwSt. und Fracht", "inkl. MwSt. ab Werk"])
def test_a_tax_that_goes_on_ends_no_sentence(text):
    assert len(clauses(text)) == 1
