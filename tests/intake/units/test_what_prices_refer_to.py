"""Sentences that say in verbs of their own what prices are per: 'Prices refer to 1,000 sheets and are in euro'."""

import pytest

from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency


def _said(text):
    found = statements(text)
    bases = {str(basis.value) for one in found if isinstance(one, SaysBasis) for basis in one.basis.bases}
    return bases, {one.currency.code for one in found if isinstance(one, SaysCurrency)}


@pytest.mark.parametrize(
    "text",
    [
        "Prices refer to 1,000 sheets and are in euro excluding VAT.",
        "Preise beziehen sich auf 1.000 Bogen und sind in Euro ohne Mehrwertsteuer.",
        "Les prix se rapportent à 1 000 feuilles et sont en euros hors TVA.",
        "Les prix portent sur 1 000 feuilles et sont exprimés en euros hors taxes.",
        "Los precios se refieren a 1.000 hojas y están en euros sin IVA.",
        "Los precios corresponden a 1.000 pliegos y se expresan en euros, IVA no incluido.",
        "Priserna avser 1 000 ark och är i euro exklusive moms.",
    ],
)
def test_prices_refer_to_a_thousand_sheets(text):
    assert _said(text) == ({"1000sheets"}, {"EUR"})


@pytest.mark.parametrize(
    "text",
    [
        "The prices in the table are those of one kilo, in euro.", "The prices in the table are kilo prices, in euro.",
        "Die Preise der Tabelle sind Kilopreise in Euro.", "Les prix du tableau sont ceux du kilo, en euros.",
        "Los precios del cuadro son los del kilo, en euros.", "Priserna i tabellen är kilopriser, i euro.",
    ],
)  # fmt: skip
def test_prices_are_those_of_a_kilo(text):
    assert _said(text) == ({"kg"}, {"EUR"})


@pytest.mark.parametrize(
    "text",
    [
        "Prices refer to pallets of 1,000 sheets and are in euro.",
        "Prices refer to orders of 1,000 sheets and are in euro.",
        "Prices do not refer to 1,000 sheets and are in euro.",
        "Die Preise beziehen sich auf Aufträge ab 1.000 Bogen und sind in Euro.",
        "Die Preise in Euro sind keine Kilopreise.",
        "Les prix du rouleau sont en euros.",
        "Les prix portent sur des commandes de 1 000 feuilles et sont en euros.",
        "Los precios del kilo de pulpa están en euros.",
        "Priserna avser minst 1 000 ark och är i euro.",
        "Priserna avser pallar om 1 000 ark och är i euro.",
    ],
)
def test_what_else_is_counted_is_no_unit_of_prices(text):
    assert _said(text) == (set(), {"EUR"})
