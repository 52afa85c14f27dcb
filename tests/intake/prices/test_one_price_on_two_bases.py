"""One price on two bases is one offer, whatever else the heads say."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def test_one_price_on_two_bases_is_one_offer_whatever_else_a_head_says():
    rows = [["Sorte", "g/m²", "µm", "€/t", "Ihr Objektpreis EUR/1000 m²"], ["GC1", 250, 415, 1165, 291.25]]
    found = lines(rows)
    assert set(found) == {"D2"}
    assert found["D2"].offer.source.also == ("E2",)


@pytest.mark.parametrize(("second", "offered"), [(278.3, ["C3"]), (290.0, ["C3", "C4"])])
def test_one_price_on_two_bases_line_by_line_is_one_offer(second, offered):
    rows = [["frei Haus"], ["Sorte", "Einheit", "230 g/m²"], ["GC1", "€/t", 1210], [None, "€/1000 m²", second]]
    assert list(lines(rows)) == offered


HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(("ton", "msf"), [("1,245", 46.69), ("1,245", "46,688"), (1245, "46,688"), ("1.245", "46.688")])
def test_a_price_on_a_second_basis_settles_which_sign_is_the_decimal_sign(ton, msf):
    (line,) = lines([[*HEAD, "Price USD/ST", "Price USD/MSF"], [*SBS, ton, msf]]).values()
    assert (line.offer.price, line.offer.source.also, line.state) == (1245, ("E2",), State.ACCEPTED)
    assert "number-ambiguous" not in codes(line)


def test_a_second_basis_that_settles_nothing_is_asked_about_too():
    both = lines([[*HEAD, "Price USD/ST", "Price USD/MSF"], [*SBS, "1,245", 39.5]]).values()
    assert [line.state for line in both] == [State.QUESTION, State.QUESTION]


@pytest.mark.parametrize("words", ["Precio venta", "Zubber"])
def test_one_price_on_two_bases_under_unknown_words_is_one_offer(words):
    rows = [
        ["Tipo", "µm", "g/m²", f"{words} EUR/t", f"{words} EUR/1.000 m²"],
        ["GC1", 420, 270, 1165, 314.55],
        ["GD2", 365, 280, 945, 264.6],
    ]
    found = lines(rows)
    assert list(found) == ["D2", "D3"]
    assert found["D2"].offer.source.also == ("E2",)
