"""Footnotes by letters: 'a) frei Haus' below a list whose prices are '1.262,00 a)'."""

import pytest

from tests.intake.sheets import lines

HEADS = ["Sorte", "g/m²", "µm", "Preis"]


def priced(signs):
    notes = [
        [f"{signs[0]} frei Haus, Lieferzeit 4 Wochen"],
        [f"{signs[1]} ab Werk, sofort ab Lager"],
        [f"{signs[2]} Preis je kg, frei Haus"],
    ]
    boards = [("GC1", 240, 385, "1.262,00"), ("GC2", 280, 465, "1.180,00"), ("GD2", 320, 410, "0,841")]
    rows = [[*board, f"{price} {sign}"] for (*board, price), sign in zip(boards, signs, strict=True)]
    return [line.offer for line in lines([["Preise in EUR je t"], [], HEADS, *rows, [], *notes]).values()]


@pytest.mark.parametrize("signs", [("a)", "b)", "c)"), ("[a]", "[b]", "[c]"), ("*", "**", "***")])
def test_a_letter_behind_a_price_is_the_sign_of_its_note(signs):
    found = priced(signs)
    assert [f"{offer.price:f}" for offer in found] == ["1262.00", "1180.00", "0.841"]
    assert [str(offer.basis) for offer in found] == ["tonne", "tonne", "kg"]
    assert [offer.delivered for offer in found] == [True, False, True]
    assert [offer.lead_days for offer in found] == [(28, 28), (0, 0), None]


@pytest.mark.parametrize("price", ["52.5 c", "52.5c/lb"])
def test_a_letter_without_a_bracket_is_cents(price):
    rows = [["USD per lb"], [], ["Grade", "pt", "lb/MSF", "Price"], ["SBS C1S", 18, 76, price]]
    (line,) = lines(rows).values()
    assert f"{line.offer.price:f}" == "0.525"
