"""What once was read wrong without a word: each is asked, told or left out now."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN, State

HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


def priced(*texts, head="Price USD/ST"):
    """The lines of a list whose boards differ and cost so, in order."""
    rows = [[*HEAD, head], *(["SBS C1S", 12 + place, 60, text] for place, text in enumerate(texts))]
    return list(lines(rows).values())


@pytest.mark.parametrize("charge", [5, "5 or 6", "2.50 EUR or USD/ST"])
def test_a_charge_that_is_not_certain_leaves_the_delivered_cost_open(charge):
    rows = [[*HEAD, "Price USD/ST delivered", "Energy surcharge"], [*SBS, 1100, charge], [*CRB, 900, None]]
    charged, plain = lines(rows).values()
    assert charged.state is State.ACCEPTED
    assert [each.currency for each in charged.offer.charges] == [OPEN]
    assert (footing(charged.offer).delivered_per_tonne, footing(charged.offer).delivered_per_msf) == (None, None)
    assert codes(charged) == {"number-ambiguous"}
    assert footing(plain.offer).delivered_per_tonne is not None


def test_a_charge_in_a_sentence_without_a_unit_leaves_the_delivered_cost_open():
    rows = [["Prices delivered, plus energy surcharge USD 30"], [*HEAD, "Price USD/ST"], [*SBS, 1100]]
    (line,) = lines(rows).values()
    assert footing(line.offer).per_tonne is not None
    assert footing(line.offer).delivered_per_tonne is None


@pytest.mark.parametrize("sign", ["*", "**", "†", "¹", " 1)", " (1)"])
def test_a_footnote_holds_for_the_rows_that_carry_its_sign(sign):
    rows = [[*HEAD, "Price USD/ST"], [f"SBS C1S{sign}", 18, 75, 1100], [*CRB, 900], [], [f"{sign.strip()} delivered"]]
    noted, other = lines(rows).values()
    assert (noted.offer.delivered, other.offer.delivered) == (True, None)


def test_a_footnotes_sign_can_stand_at_the_price_and_other_notes_hold_for_all():
    rows = [
        [*HEAD, "Price USD/ST"], [*SBS, "1100*"], [*CRB, 900], [],
        ["* plus energy surcharge of 30 USD/ST"], ["Prices delivered"],
    ]  # fmt: skip
    noted, other = lines(rows).values()
    assert (len(noted.offer.charges), len(other.offer.charges)) == (1, 0)
    assert (noted.offer.delivered, other.offer.delivered) == (True, True)


def test_a_sign_in_the_head_or_nowhere_holds_for_every_row():
    for head in ("Price USD/ST*", "Price USD/ST"):
        rows = [[*HEAD, head], [*SBS, 1100], [*CRB, 900], [], ["* prices delivered"]]
        assert [line.offer.delivered for line in lines(rows).values()] == [True, True]


@pytest.mark.parametrize("text", ["ca. 915", "915+", "~915", "915 approx."])
def test_a_price_that_is_not_exact_says_so(text):
    (line,) = priced(text)
    assert (line.offer.price, line.state) == (Decimal(915), State.ACCEPTED)
    assert codes(line) == {"number-ambiguous"}


@pytest.mark.parametrize(
    ("text", "figures"),
    [
        ("from 915", ["915"]),
        ("900-950", ["900", "950"]),
        ("900.50 to 950", ["900.50", "950"]),
        ("900 / 960", ["900", "960"]),
    ],
)
def test_what_is_not_one_price_is_asked_with_its_figures_to_choose_from(text, figures):
    rows = [[*HEAD, "Price USD/ST"], ["SBS C1S", 12, 60, text]]
    (asked,) = read(rows).questions
    assert [choice.value for choice in asked.choices] == figures
    (line,) = lines(rows, {asked.key: figures[-1]}).values()
    assert (line.state, line.offer.price) == (State.ACCEPTED, Decimal(figures[-1]))


@pytest.mark.parametrize(
    ("texts", "asked"),
    [
        (["Prices per short ton.", "We can offer SBS C1S 18 pt at $1,190 while stock lasts at the mill."], "A2"),
        (["We can offer", "SBS C1S 18 pt", "at $1,190 per short ton"], "A3"),
        (["SBS C1S 18 pt 75 lb/MSF: reels $1,190/ST, sheets $1,260/ST"], "A1"),
        (["SBS prices will go up by $40 per ton.", "Freight $45 per ton"], None),
    ],
)
def test_in_a_letter_without_an_offer_any_price_is_asked_about(texts, asked):
    reading = read([[text] for text in texts])
    assert {line.offer.source.cell: line.state for line in reading.lines} == ({asked: State.QUESTION} if asked else {})
    assert [passed.why for passed in reading.passed_over] == ([] if asked else ["no prices"])


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        (
            "We can offer SBS C1S 18 pt 75 lb/MSF at $1,190 per short ton, and would like to hear whether it suits.",
            True,
        ),
        ("Our CRB, 18 pt, is $880 per short ton or $31.68 per MSF as long as the stock at the mill lasts.", True),
        ("SBS 18 pt will go up by $40 per short ton.", False),
        ("Sheeting SBS 18 pt costs $1,000 per ton.", False),
        ("SBS 18 pt weighs 75 lb/MSF.", False),
    ],
)
def test_a_price_told_within_a_sentence_is_asked(text, asked):
    for rows in ([["Dear buyer,"], [text]], [[*HEAD, "Price USD/ST"], [*CRB, 900], [], [text]]):
        found = lines(rows)
        assert [found[cell].state for cell in found if cell[0] == "A"] == [State.QUESTION] * asked


def test_a_cell_too_narrow_to_show_its_figure_is_asked():
    hidden, shown = priced("########", 900)
    assert (hidden.state, codes(hidden)) == (State.QUESTION, {"number-ambiguous"})
    assert shown.state is State.ACCEPTED


def test_a_price_with_more_digits_than_can_be_kept_holds_back_its_own_line_only():
    long, short = priced("1100.1234567890123456789", 900)
    assert (long.state, short.state) == (State.QUESTION, State.ACCEPTED)
    assert read([[*HEAD, "Price USD/ST"], [*SBS, Decimal("1100.1234567890123456789")]]).lines[0].state is State.QUESTION


def test_an_order_larger_than_any_mill_makes_is_asked_and_such_a_minimum_left_out():
    rows = [[*HEAD, "From kg", "Price USD/ST"], [*SBS, "99999999999999999999999999", 1100]]
    assert [codes(line) for line in lines(rows).values()] == [{"bracket-unread"}]
    rows = [[*HEAD, "Minimum kg", "Price USD/ST"], [*SBS, Decimal(10) ** 24, 1100]]
    assert [line.offer.minimum_kg for line in lines(rows).values()] == [None]


@pytest.mark.parametrize("head", ["Price rolls / sheets USD/ST", "Price rolls / sheets", "Price USD/ST"])
def test_two_prices_in_one_cell_are_asked(head):
    rows = [[*HEAD, head], [*SBS, "1190 / 1260"], [*CRB, "900 / 960"]]
    assert len(lines(rows)) == 2
    for line in lines(rows).values():
        assert line.state is State.QUESTION
        assert "number-ambiguous" in codes(line)


@pytest.mark.parametrize(("ton", "msf"), [("1,245", 46.69), ("1,245", "46,688"), (1245, "46,688"), ("1.245", "46.688")])
def test_a_price_on_a_second_basis_settles_which_sign_is_the_decimal_sign(ton, msf):
    (line,) = lines([[*HEAD, "Price USD/ST", "Price USD/MSF"], [*SBS, ton, msf]]).values()
    assert (line.offer.price, line.offer.source.also, line.state) == (1245, ("E2",), State.ACCEPTED)
    assert "number-ambiguous" not in codes(line)


def test_a_second_basis_that_settles_nothing_is_asked_about_too():
    both = lines([[*HEAD, "Price USD/ST", "Price USD/MSF"], [*SBS, "1,245", 39.5]]).values()
    assert [line.state for line in both] == [State.QUESTION, State.QUESTION]


@pytest.mark.parametrize(
    "rows",
    [
        [["Falken Weiss", "0.46", "1190"], ["Falken Grau", "0.50", "990"]],
        [["Tolmere Board"], [], ["A100", 450, 1190], ["B200", 500, 990]],
        [["SBS C1S", 18, 1190], ["CRB C1S", 20, 990]],
    ],
)
def test_figures_under_no_heads_are_one_question_for_the_table(rows):
    reading = read(rows)
    (question,) = reading.questions
    assert question.key == "table:Sheet1"
    assert len(question.cells) == 2
    assert {line.state for line in reading.lines} == {State.QUESTION}


@pytest.mark.parametrize(
    "rows",
    [
        [["Dear Sirs,"], ["we met 2 of your people on 3 May."]],
        [["Ada", "+44 20 7946 0958"], ["Ben", "+44 20 7946 0959"]],
        [["Monday", 8, 17], ["Tuesday", 8, 17]],
    ],
)
def test_a_sheet_that_holds_no_board_is_passed_over(rows):
    assert read(rows).lines == ()


@pytest.mark.parametrize(
    ("note", "asked"),
    [
        ("All prices less 3 %", (True, True)),
        ("Auf alle Preise gewähren wir 4 % Rabatt.", (True, True)),
        ("Remise de 5 % à déduire de ces prix", (True, True)),
        ("Deduct $15/ST from all prices above.", (True, True)),
        ("Add $40/ST to all prices.", (True, True)),
        ("C2S less 5 %", (False, True)),
        ("Your discount: 8 % off list", (True, True)),
        ("These prices are no longer valid.", (True, True)),
        ("Previous prices are no longer valid.", (False, False)),
        ("Alle Preise zzgl. 19 % MwSt.", (False, False)),
        ("18 pt: + 5 % / - 5 % tolerance on caliper", (False, False)),
        ("Prices less 2 % for cash within 10 days", (False, False)),
        ("Prices are net of 3 % discount", (False, False)),
        ("Add 25 for C2S", (False, True)),
        ("24 pt: +$20/ST", (False, True)),
        ("From 1 January 2027 C2S +4 %", (False, False)),
        ("Lead time 3 weeks, C2S add 1 week", (False, False)),
    ],
)
def test_a_note_that_changes_what_a_price_comes_to_is_asked(note, asked):
    rows = [[*HEAD, "Price USD/ST"], ["SBS C1S", 18, 75, 1100], ["SBS C2S", 24, 95, 1080], [], [note]]
    assert tuple(line.state is State.QUESTION for line in lines(rows).values()) == asked


@pytest.mark.parametrize(
    "said",
    [
        "Precios en miles de CLP por tonelada métrica",
        "Prices in thousands of JPY per tonne",
        "Prix en milliers de MAD par tonne",
    ],
)
def test_figures_that_count_thousands_of_a_currency_are_asked_about(said):
    found = lines([[said], ["Tipo", "g/m²", "µm", "Precio"], ["GC1", 250, 400, 1085.5]])
    assert (str(found["D3"].state), codes(found["D3"])) == ("question", {"currency-unknown"})


def test_a_price_per_thousand_sheets_counts_no_thousands_of_money():
    rows = [
        ["Prices in EUR per thousand sheets"],
        ["Board", "g/m²", "µm", "Sheet mm", "Price"],
        ["GC1", 250, 400, "700 x 1000", 215],
    ]
    assert str(lines(rows)["E3"].state) == "accepted"


@pytest.mark.parametrize("withheld", ["no disponible", "no quote", "call"])
def test_a_row_that_withholds_its_price_is_no_header(withheld):
    rows = [
        ["Description", "Caliper", "Weight", "Price"],
        ["GD2", "310 µm", "230 g/m²", "955,00 EUR/t"],
        ["GD2", "360 µm", "280 g/m²", withheld],
        ["GD2", "385 µm", "300 g/m²", "920,00 EUR/t"],
        ["GD2", "450 µm", "350 g/m²", "905,00 EUR/t"],
    ]
    assert list(lines(rows)) == ["D2", "D4", "D5"]


def test_terms_above_a_table_on_its_side_hold_for_every_board():
    rows = [
        ["Quarrybeck Paper Merchants"],
        ["Delivery:", "2 wks"],
        ["Minimum:", "20000 kg per grade"],
        [],
        ["Description", "SBS C2S", "CRB C1S", "GC2 folding boxboard"],
        ["Cal (μm)", 340, 470, 365],
        ["gsm", 260, 350, 215],
        ["Cost\nEUR/MT", 1350, 945, 1175],
    ]
    found = lines(rows)
    assert {(line.offer.from_kg, line.offer.minimum_kg, line.offer.lead_days) for line in found.values()} == {
        (None, Decimal(20000), (14, 14))
    }


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


def test_a_sign_for_money_that_is_also_a_short_word_counts_only_beside_a_figure():
    rows = [
        ["€/tonne"],
        ["Qualité", "g/m²", "Prix"],
        ["GC1", 250, 1250],
        ["GC2", 250, "s/d"],
        [],
        ["s/d : sur demande"],
    ]
    assert {cell: line.offer.currency for cell, line in lines(rows).items()} == {"C3": "EUR"}
    rows = [["Precios por TM"], ["Tipo", "g/m²", "Precio"], ["GC1", 250, "S/ 4,510.00"]]
    assert lines(rows)["C3"].offer.currency == "PEN"


@pytest.mark.parametrize(
    ("unit", "weight", "expected"),
    [("ct/kg", "250 g/m²", None), ("ct/lb", "52 lb/MSF", "USD"), ("Cent/kg", "250 g/m²", None)],
)
def test_a_cent_is_a_dollars_in_a_file_of_pounds_alone(unit, weight, expected):
    rows = [["Grade", "Weight", f"Price {unit}"], ["GC1", weight, 58]]
    (line,) = lines(rows).values()
    assert line.offer.currency == expected
    assert ("currency-unknown" in codes(line)) is (expected is None)


@pytest.mark.parametrize("heading", ["Flächengewicht 250 g/m²", "Basis weight: 250 g/m²", "250 g/m²"])
def test_a_sub_heading_gives_the_weight_of_the_rows_below_it(heading):
    rows = [["EUR/t"], ["Sorte", "Dicke µm", "EUR/t"], [heading], ["GC1", 405, 1290], ["GC2", 430, 1240]]
    found = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, str(offer.grammage_from)) for offer in found] == [(250, "quoted")] * 2


def test_the_weight_of_a_thousand_sheets_is_no_basis_weight():
    rows = [["EUR/1000 Bogen"], ["Sorte", "Flächengewicht g/m²", "Format mm", "Gewicht kg/1000 Bogen", "Preis"],
            ["GC1", 250, "700 x 1000", 175, 239.4]]  # fmt: skip
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.grammage_gsm) == ("accepted", 250)


@pytest.mark.parametrize("beside", ["Unser Angebot", "Kolumne 7"])
def test_a_wish_beside_other_prices_is_no_offer(beside):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Ihr Zielpreis", beside], ["GC1", 250, 405, 1240, 1278],
            ["GD2", 350, 465, 840, 868]]  # fmt: skip
    assert list(lines(rows)) == ["E3", "E4"]


@pytest.mark.parametrize(
    ("amounts", "charges"), [((44.73, 30.38), ["44.73", "30.38"]), ((3.5, 3.5), ["3.5", "3.5"])]
)  # fmt: skip
def test_amounts_below_a_stated_rate_are_money(amounts, charges):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Preis", "Energiezuschlag 3,5 %"],
            ["GC1", 250, 405, 1278, amounts[0]], ["GD2", 350, 465, 868, amounts[1]]]  # fmt: skip
    found = [line.offer.charges[0] for line in lines(rows).values()]
    assert [str(charge.price) for charge in found] == charges
    assert {charge.basis for charge in found} == ({None} if charges[0] == "3.5" else {"tonne"})


@pytest.mark.parametrize("heads", [("ab Lager", "ab Fabrik"), ("ab Lager", "Direktlieferung ab 10 t")])
def test_a_price_from_stock_is_not_left_out(heads):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, 1290, 1270], ["GD2", 350, 465, 890, 870]]
    assert set(lines(rows)) == {"D3", "D4", "E3", "E4"}


@pytest.mark.parametrize(("mark", "repeats"), [('"', True), ("〃", True), ('""', False)])
def test_a_ditto_repeats_a_price_and_what_a_spoilt_file_leaves_of_an_empty_field_none(mark, repeats):
    rows = [["SBS C1S", 14, 58, 1240], ["SBS C1S", 18, 74, mark]]
    found = lines([["USD per short ton"], ["Grade", "Caliper (pt)", "lb/MSF", "Price"], *rows])
    assert ("D4" in found and str(found["D4"].state) == "accepted") is repeats


@pytest.mark.parametrize("heads", [("Preis I", "Preis II"), ("Price A", "Price B"), ("Pris 1", "Pris 2")])
def test_prices_told_apart_by_a_sign_alone_are_asked(heads):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, 1290, 1270]]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


@pytest.mark.parametrize(
    "note",
    [
        "Multiply all prices by 1.05",
        "Price = index × 10",
        "All prices x 1.02",
        "Prices in thousands",
        "Preise in Tausend",
    ],
)
def test_figures_that_a_note_multiplies_are_asked(note):
    (line,) = lines([[*HEAD, "Price USD/ST"], [*SBS, 1100], [], [note]]).values()
    assert line.state is State.QUESTION


@pytest.mark.parametrize(
    "note",
    [
        "Multiply by 1.1023 for price per metric ton",
        "To obtain the price per MSF multiply the price per ton by the basis weight and divide by 2,000.",
    ],
)
def test_how_to_reach_another_unit_changes_no_price_and_contradicts_none(note):
    heads = ["Grade", "Caliper (pt)", "lb/MSF", "Price"]
    (line,) = lines([["USD per short ton"], heads, ["SBS C1S", 14, 58, 1225], [], [note]]).values()
    assert (str(line.state), line.offer.basis.value) == ("accepted", "short_ton")


@pytest.mark.parametrize("name", ["Wrapping", "Pool fee"])
def test_what_stands_unexplained_beside_the_freight_leaves_the_delivered_cost_open(name):
    rows = [[*HEAD, "Price USD/cwt", "Freight", name], [*SBS, 57.8, 2.15, 0.35], [*CRB, 43.2, 2.15, 0.4]]
    for line in lines(rows).values():
        assert line.state is State.ACCEPTED
        assert footing(line.offer).delivered_per_tonne is None
