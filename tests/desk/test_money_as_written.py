"""No vendor is asked about a currency that the sheet's own sign rules out."""

from dataclasses import replace
from decimal import Decimal

import numpy as np
import pytest

from tests.desk.filing import file
from tests.desk.test_quotes import PLAIN, comparison, level, market
from tests.store.making import line
from tracker.desk.opening import Desk
from tracker.trade.basis import Basis
from tracker.trade.offer import Evidence


@pytest.mark.parametrize(
    ("words", "named"), [("Pris kr/ton", False), ("Price $/t", True), ("Pris SEK/ton", True), ("", True)]
)
def test_a_currency_is_named_only_where_the_sign_allows_it(desk: Desk, words: str, named: bool) -> None:
    """1,820 Canadian dollars are what the others ask; as Swedish kronor they are a seventh of it."""
    level(desk)
    market(desk, 1270, 1285, 1300, 1310, 1322, 1290, 1305)
    quoted = {"vendor": "Elver", "price": Decimal(1820), "basis": Basis.TONNE, **PLAIN}
    usual = line(cell="D5", **{**quoted, "vendor": "Fenn", "currency": "CAD"})
    file(desk, usual, content=b"cad", vendor="Fenn")
    odd = line(cell="D6", **quoted, currency="SEK")
    said = (Evidence("currency", "D4", words),) if words else ()
    file(desk, replace(odd, evidence=said), content=b"kr", vendor="Elver")
    made = comparison(desk)
    (at,) = np.flatnonzero(made.out_of_line)
    assert bool(made.slip[at]) is named
    assert made.judged is not None
    assert (int(at) in made.judged.verdicts.slips) is named
