"""Signs of footnotes at prices, in heads and in cells of their own, and the rows that their notes hold for."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.tables.headers.heads import without_footnote
from tracker.trade.offer import State


def test_a_sentence_tells_what_a_sign_at_a_price_means():
    rows = [
        ["Preise in EUR/t, mit * gekennzeichnete Preise in EUR/kg"], [], ["Sorte", "g/m²", "µm", "Preis"],
        ["GC1", 230, 370, 1313], ["GD2", 300, 390, "0,93*"], ["GD2", 350, 455, 917],
    ]  # fmt: skip
    assert [line.offer.basis.value for line in lines(rows).values()] == ["tonne", "kg", "tonne"]


def test_numbered_notes_with_a_figure_are_notes():
    rows = [
        ["Board", "pt", "US$/MSF"], ["CUK", 18, 37.65], [], ["1. Minimum order 8,000 lb."],
        ["2. Last year's volume:", None, 18450], ["3. Terms net 30."],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert float(line.offer.minimum_kg) == pytest.approx(8000 * 0.45359237)


HEAD = ["Grade", "pt", "lb/MSF", "USD/ST", "Note"]
NOTES = [[], ["Lead time 3 weeks"], ["1) Lead time 6 weeks"], ["2) Minimum order 5 short tons"]]


def terms(rows):
    return [(line.offer.lead_days, line.offer.minimum_kg is not None) for line in lines(rows).values()]


def test_a_sign_alone_in_a_cell_gives_its_row_the_note():
    rows = [["SBS C1S", 18, 75, 1178], ["SBS C1S", 20, 81, 1160, "1)"], ["CRB", 20, 85, 800, "2)"]]
    assert terms([HEAD, *rows, *NOTES]) == [((21, 21), False), ((42, 42), False), ((21, 21), True)]


def test_signs_that_count_the_rows_carry_no_note():
    rows = [["1)", "SBS C1S", 18, 75, 1178], ["2)", "SBS C1S", 20, 81, 1160]]
    head = ["No.", *HEAD[:-1]]
    numbered = [[], ["1) Minimum order 5 short tons"], ["2) Prices are net"]]
    assert terms([head, *rows, *numbered]) == [(None, True), (None, True)]


ROWS = [["GC2", 240, 390, 1214, 1176], ["GD2", 340, 460, 828, 791]]


def _list(under, above, *notes):
    return [["Harrow Carton Mill"], [], ["Grade", "g/m²", "µm", under, above], *ROWS, [], *([note] for note in notes)]


@pytest.mark.parametrize("sign", ["*", "**", "¹", "¹)", "†", "(*)"])
def test_a_sign_within_a_head_leaves_it_a_price_with_its_order_size(sign):
    found = lines(_list(f"Price{sign} below 8 t", f"Price{sign} from 8 t", f"{sign} EUR per 1000 kg, ex works."))
    sizes = [(one.offer.from_kg, one.offer.below_kg) for one in found.values()]
    assert sizes == [(None, 8000), (8000, None)] * 2
    assert {(str(one.state), one.offer.currency, str(one.offer.basis)) for one in found.values()} == {
        ("accepted", "EUR", "tonne")
    }


def test_the_note_of_one_heads_sign_is_none_of_the_others():
    notes = ["* EUR per 1000 kg.", "** GBP per 1000 kg."]
    found = lines(_list("Price* domestic", "Price** export", *notes))
    assert [one.offer.currency for one in found.values()] == ["EUR", "GBP"] * 2


@pytest.mark.parametrize(
    "text", ["Format 70 * 100 cm", "70*100 cm", "Bulk cm³ per g", "Weight g/m² dry", "Area m² net"]
)
def test_signs_of_sizes_and_units_stay(text):
    assert without_footnote(text) == text


AMERICAN_HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize("sign", ["*", "**", "†", "¹", " 1)", " (1)"])
def test_a_footnote_holds_for_the_rows_that_carry_its_sign(sign):
    rows = [
        [*AMERICAN_HEAD, "Price USD/ST"],
        [f"SBS C1S{sign}", 18, 75, 1100],
        [*CRB, 900],
        [],
        [f"{sign.strip()} delivered"],
    ]
    noted, other = lines(rows).values()
    assert (noted.offer.delivered, other.offer.delivered) == (True, None)


def test_a_footnotes_sign_can_stand_at_the_price_and_other_notes_hold_for_all():
    rows = [
        [*AMERICAN_HEAD, "Price USD/ST"], [*SBS, "1100*"], [*CRB, 900], [],
        ["* plus energy surcharge of 30 USD/ST"], ["Prices delivered"],
    ]  # fmt: skip
    noted, other = lines(rows).values()
    assert (len(noted.offer.charges), len(other.offer.charges)) == (1, 0)
    assert (noted.offer.delivered, other.offer.delivered) == (True, True)


def test_a_sign_in_the_head_or_nowhere_holds_for_every_row():
    for head in ("Price USD/ST*", "Price USD/ST"):
        rows = [[*AMERICAN_HEAD, head], [*SBS, 1100], [*CRB, 900], [], ["* prices delivered"]]
        assert [line.offer.delivered for line in lines(rows).values()] == [True, True]


_HEAD = ["Grade", "g/m²", "µm"]


def asked(found):
    return {cell for cell, line in found.items() if line.state is State.QUESTION}


@pytest.mark.parametrize("sign", ["*", "†", "°"])
@pytest.mark.parametrize(
    "said",
    [
        "CHF per tonne delivered. Those marked with {}: EUR per tonne, ex works (EXW).",
        "Francs suisses (CHF) la tonne franco. Les lignes marquées {} : EUR la tonne, départ usine.",
        "CHF per 1000 kg fritt kund. De märkta med {}: EUR per 1000 kg, fritt bruk.",
        "Precios en CHF por 1000 kg, franco destino. Los marcados con {}: EUR por 1000 kg, franco fábrica.",
        "Schweizer Franken je Tonne frei Haus. Die mit {} bezeichneten Zeilen: Euro je Tonne, ab Werk (EXW).",
    ],
)
def test_a_sign_before_a_figure_is_that_of_the_note(sign, said):
    rows = [["GC1", 260, 415, "1'345.00"], ["GC2", 250, 400, f"{sign}1'180.00"]]
    found = lines([[said.format(sign)], [*_HEAD, "Price"], *rows])
    assert asked(found) == set()
    assert [(line.offer.currency, line.offer.delivered) for line in found.values()] == [("CHF", True), ("EUR", False)]


@pytest.mark.parametrize(
    ("above", "below"),
    [
        ("EUR per tonne, EXW", "* plus 5 %"),
        ("EUR per tonne, EXW", "* those marked cost 5 % more"),
        ("EUR per tonne, EXW. Those marked with * 5 % more", ""),
        ("EUR/t, ab Werk; mit * gekennzeichnete zuzüglich 5 %", ""),
        ("EUR/t, départ usine", "* plus 5 %"),
        ("EUR/t, EXW", "* más 5 %"),
        ("EUR/ton, fritt fabrik", "* plus 5 %"),
    ],
)
def test_what_a_footnote_adds_to_its_prices_is_asked_of_them_alone(above, below):
    boards = [["GC2", 250, 410, 1090], ["GC1 *", 250, 400, 1135]]
    found = lines([[above], ["Board", "g/m²", "µm", "Price"], *boards, [], [below]]).values()
    assert [str(line.state) for line in found] == ["accepted", "question"]


@pytest.mark.parametrize(
    "below", ["* orders below 5 t: +3 %", "* plus 19 % VAT", "* tolerance +/- 5 %", "* FSC Mix 70 %"]
)
def test_what_a_footnote_says_of_other_things_leaves_its_prices_standing(below):
    boards = [["GC2", 250, 410, 1090], ["GC1 *", 250, 400, 1135]]
    found = lines([["EUR per tonne, EXW"], ["Board", "g/m²", "µm", "Price"], *boards, [], [below]]).values()
    assert [str(line.state) for line in found] == ["accepted"] * 2


@pytest.mark.parametrize("place", ["note", "name"])
def test_a_rows_own_sign_goes_before_that_of_the_prices_head(place):
    signed = ("CRB (3)", "") if place == "name" else ("CRB", "(3)")
    rows = [
        ["Board", "pt", "lb/MSF", "Price (2)", "Note"],
        ["SBS C1S", 14, 59, 1174, ""], [signed[0], 16, 62, 26.9, signed[1]], [],
        ["(2) US dollars per ton of 2,000 lb, FOB mill, unless noted (3)."],
        ["(3) US dollars per 1,000 sq ft, delivered."],
    ]  # fmt: skip
    found = [(line.state, line.offer.basis.value, line.offer.delivered) for line in lines(rows).values()]
    assert found == [(State.ACCEPTED, "short_ton", False), (State.ACCEPTED, "msf", True)]
