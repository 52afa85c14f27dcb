"""A board that may be had in another currency too is priced as its column says."""

import pytest

from tests.intake.sheets import read
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysCurrency

BESIDES = [
    "CUK is also available in CAD", "CUK can be invoiced in CAD", "Invoicing in CAD is possible",
    "CUK ist auch in CAD erhältlich", "CUK kann in CAD fakturiert werden", "CUK peut être facturé en CAD",
    "CUK disponible aussi en CAD", "CUK puede facturarse en CAD", "CUK también disponible en CAD",
    "CUK kan faktureras i CAD", "CUK finns även i CAD",
]  # fmt: skip


@pytest.mark.parametrize("note", BESIDES)
def test_the_prices_that_stand_there_are_in_their_own(note):
    rows = [["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200], ["CUK", 18, 980], [], [note]]
    found = read(rows).lines
    assert [(str(line.state), line.offer.currency) for line in found] == [("accepted", "USD")] * 2


@pytest.mark.parametrize("note", BESIDES)
def test_it_is_no_currency_of_prices_without_one(note):
    rows = [["Grade", "Caliper (pt)", "Price per ST"], ["SBS", 16, 1200], ["CUK", 18, 980], [], [note]]
    assert [str(line.state) for line in read(rows).lines] == ["question"] * 2


@pytest.mark.parametrize(
    "note",
    [
        "CUK is available in CAD", "All prices in CAD", "Prices are in CAD per short ton and may change",
        "Preise in CAD/t, Änderungen sind möglich", "Prices in CAD per tonne, can be changed without notice",
    ],
)  # fmt: skip
def test_what_is_said_outright_is_heard(note):
    assert any(isinstance(one, SaysCurrency) for one in statements(note))
