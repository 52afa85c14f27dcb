"""What a note says to take off prices or to add to them is asked about once; what they bear already is not."""

import pytest

from tests.intake.sheets import book, grid, lines, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Board", "pt", "lb/MSF"]
BOARDS = [["SBS C1S", 18, 75, 1100], ["CRB C1S", 20, 85, 880]]


def states(note, boards=BOARDS, head="Price USD/ST", *, above=False):
    """The first letters of the lines' states, and how many questions there are."""
    table = [[*HEAD, head], *boards]
    reading = read([[note], *table] if above else [*table, [], [note]])
    return "".join(str(line.state)[0] for line in reading.lines), len(reading.questions)


@pytest.mark.parametrize(
    "note",
    [
        "All prices + 3 %", "+3 % on all items", "All prices +$20/ST", "All prices minus 2 %", "All prices - 2 %",
        "All prices – 2 %", "Discount of 3 % applies", "Discount of 3 percent applies", "5 % discount on all items",
        "Discount: 12 %", "12% off", "Less 12 %", "Deduct 2 %", "Rebate: 3 %", "Discount $20/ST",
        "Prices shown less 5% = your net", "Prices are list; your net is list less 8 %", "Net multiplier .92",
        "All prices increase by 4 %", "Price increase of $40/ST effective immediately", "Prices before 2 % increase",
        "All prices are subject to an increase of 3 %", "Base prices; index adjustment +2.5 %",
        "Prices in USD hundreds", "A discount of 3 % is to be deducted",
        "alle Preise zzgl. 3 %", "Alle Preise minus 2 %", "Alle Preise abzgl. 2 %", "Preise ./. 4 %", "Rabatt 4 %",
        "Kundenrabatt 5 %", "Wir gewähren 4 % Nachlass", "Alle Preise erhöhen sich um 4 %", "Preiserhöhung 4 %",
        "Nettomultiplikator 0,92", "3 % Rabatt, noch nicht abgezogen",
        "Remise 3 %", "3 % de remise", "Une remise de 3 % s'applique", "Tous les prix majorés de 3 %",
        "Tous les prix moins 2 %", "Hausse de 3 % sur tous les prix", "Remise de 3 % à déduire",
        "Descuento 5 %", "Dto. 5 %", "Todos los precios más 3 %", "Precios menos 3 %", "Todos los precios suben un 3 %",
        "Multiplicador neto 0,92",
        "Item 2 less 3 %", "Items 1 and 2: +20 EUR/t", "Pos. 2 abzgl. 3 %", "Poste 2 : moins 3 %", "Item (b) less 3 %",
        "4 % rabatt", "Rabatt om 4 %", "Alla priser minus 2 %", "Alla priser höjs med 3 %", "Avgår 3 %",
    ],
)  # fmt: skip
@pytest.mark.parametrize("above", [False, True])
def test_a_note_that_changes_all_prices_is_one_question(note, above):
    assert states(note, above=above) == ("qq", 1)


@pytest.mark.parametrize(
    "note",
    [
        "Discount 2 % 10 days", "Prompt payment discount 2 %", "Early payment discount: 1 %", "Annual rebate 2 %",
        "Rebate 3 % paid annually", "Quantity discount 3 %", "Customer pick-up allowance: $2.00/cwt",
        "5 % discount deducted", "Prices incl. 5 % discount", "Prices reflect a 5 % discount", "No discount",
        "The increase of 3 % is included", "Prices have increased by 3 % since January", "Prices may rise by 3 %",
        "From 1 July 2027 prices rise by 3 %", "We expect prices to rise by 3 % in 2027", "Prices + VAT 20 %",
        "Prices are 2 % lower than in Q1", "Basis weight tolerance + 4 % / - 4 %", "Quantity +/- 10 %",
        "The prices below replace the old prices", "Price increase announcement, US$ per short ton",
        "Skonto 2 %", "Barzahlungsrabatt 2 %", "Mengenrabatt 3 %", "3 % Rabatt bereits abgezogen",
        "Die Erhöhung um 3 % ist enthalten", "Alle Preise + 19 % MwSt.",
        "Escompte 2 %", "Remise de fin d'année 2 %", "Remise de 3 % déduite", "La hausse de 3 % est incluse",
        "Moins de 3 % de tolérance", "Prix + TVA 20 %",
        "Descuento por pronto pago 2 %", "Descuento por volumen 3 %", "Descuento 5 % ya deducido",
        "El aumento del 3 % está incluido", "Todos los precios + 21 % IVA",
        "Kassarabatt 2 %", "Mängdrabatt 3 %", "Rabatten på 3 % är avdragen", "Höjningen på 3 % ingår",
        "Vi planerar en höjning på 6 % under 2027. Listan ovan påverkas inte.",
        "Prix révisables en cas de hausse de plus de 4 % de la pâte", "Hausse de plus de 4 % en cas de pénurie",
        "Precios revisables en caso de alza de más del 4 % de la celulosa",
        "Item 2: tolerance +/- 5 %", "Items 1 and 2: cash discount 2 %", "Item 1: 3 % less than last year",
        "Pos. 2: inkl. 2 % Rabatt", "Item 2: lead time + 3 weeks",
        "Prices are open in the event of a rise of more than 4 % in pulp",
    ],
)  # fmt: skip
def test_what_prices_bear_already_or_only_some_pay_changes_none(note):
    assert states(note) == ("aa", 0)


@pytest.mark.parametrize("note", ["Energy surcharge 3 % on all prices", "Teuerungszuschlag 3 % auf alle Preise"])
def test_a_surcharge_by_name_stays_a_charge(note):
    reading = read([[*HEAD, "Price USD/ST"], *BOARDS, [], [note]])
    assert {str(charge.price) for line in reading.lines for charge in line.offer.charges} == {"3"}
    assert states(note) == ("aa", 0)


@pytest.mark.parametrize(
    ("note", "asked"),
    [
        ("20 pt and up: add $15/ST", "aaqq"), ("over 20 pt +$15/ST", "aaaq"), ("under 18 pt: +$20/ST", "qaaa"),
        ("18 pt and under add $20/ST", "qqaa"), ("16 to 18 pt: add $15/ST", "qqaa"), ("20 pt+: add $15", "aaqq"),
        ("16, 20 pt: add $15/ST", "qaqa"), ("Upcharge 20 pt and up: $15/ST", "aaqq"), ("20 pt: $15/ST extra", "aaqa"),
        ("20 pt and up 2 % off", "aaqq"), ("CRB 20 pt and up: add $15/ST", "aaaa"),
        ("20 pt and up: add 1 week", "aaaa"),
        ("ab 80 lb/MSF: + 20 $/ST", "aaqq"), ("unter 70 lb/MSF Zuschlag 30 USD/ST", "qaaa"),
        ("à partir de 20 pt : supplément de 30 USD/ST", "aaqq"), ("menos de 18 pt: recargo de 30 USD/ST", "qaaa"),
        ("under 18 pt tillägg 30 USD/ST", "qaaa"), ("Prices less $2 per 100 lb", "qqqq"),
    ],
)  # fmt: skip
def test_a_note_on_boards_by_what_they_measure_asks_about_those(note, asked):
    boards = [["SBS C1S", 16, 68, 1110], ["SBS C1S", 18, 75, 1100], ["SBS C1S", 20, 82, 1090], ["SBS", 24, 95, 1080]]
    assert states(note, boards) == (asked, int("q" in asked))


def test_a_board_whose_weight_is_not_said_may_be_one_that_a_note_means():
    assert states("250 g/m² and up: + 2 %", [["SBS C1S", 18, None, 1100]]) == ("q", 1)


def in_remark(remark, board="SBS C1S", head="Price USD/ST"):
    rows = [[*HEAD, head, "Remarks"], [board, 18, 75, 1100, remark], ["CRB C1S", 20, 85, 880, None]]
    reading = read(rows)
    charges = {str(charge.price) for charge in reading.lines[0].offer.charges}
    return "".join(str(line.state)[0] for line in reading.lines), charges


@pytest.mark.parametrize(
    "remark",
    [
        "less 3 % discount", "less 3 %", "3 % discount", "add 3 %", "plus 25/ST", "plus 25 USD/ST", "10 % off",
        "abzgl. 3 %", "3 % Rabatt", "zzgl. 25 USD", "moins 3 %", "majoré de 25 USD", "menos 3 %", "más 25 USD",
        "avgår 3 %", "plus 25 USD för C1S",
    ],
)  # fmt: skip
def test_a_remark_that_changes_the_price_of_its_row_is_asked(remark):
    assert in_remark(remark) == ("qa", set())


@pytest.mark.parametrize(
    "remark",
    [
        "less 2 % cash", "3 % discount already deducted", "less 3 % above 20 tons", "85 % recycled", "+5 % overrun",
        "+2 % vs March", "+3 % gegenüber Vorjahr", "add 1 week", "-1+2", "price incl. 3 % discount",
        "zzgl. MwSt. 19 %", "+ 18 USD pour laize < 600", "plus 25 USD for C2S",
    ],
)  # fmt: skip
def test_a_remark_of_something_else_changes_nothing(remark):
    assert in_remark(remark) == ("aa", set())


@pytest.mark.parametrize(
    "remark", ["plus 25/ST for cutting", "plus $25/ST for cutting", "zzgl. 25 USD/ST Schneiden", "extra 25 USD/ST"]
)
def test_a_charge_in_a_remark_stays_one_in_the_prices_money(remark):
    assert in_remark(remark) == ("aa", {"25"})


def test_figures_of_packing_in_a_remark_are_no_charge():
    assert in_remark("Packing 500/pallet") == ("aa", set())


def test_a_remark_for_boards_coated_twice_may_mean_one_whose_coating_is_not_said():
    assert in_remark("plus 25 USD for C2S", board="SBS")[0] == "qa"


@pytest.mark.parametrize("place", ["price", "head"])
@pytest.mark.parametrize(("comment", "asked"), [("less 5 %", True), ("abzgl. 5 % Rabatt", True), ("2 % cash", False)])
def test_a_comment_changes_the_price_that_it_stands_at(place, comment, asked):
    sheet = grid([[*HEAD, "Price USD/ST"], *BOARDS])
    at = (1, 3) if place == "price" else (0, 3)
    cells = dict(sheet.cells) | {at: sheet.cells[at]._replace(comment=comment)}
    reading = read_workbook(book(type(sheet)("Sheet1", cells)), Answers({}))
    held = "q" if asked else "a"
    assert "".join(str(line.state)[0] for line in reading.lines) == (held + ("a" if place == "price" else held))


@pytest.mark.parametrize(
    ("head", "asked"),
    [
        ("Price USD/ST less 3 %", True), ("Price USD/ST (before 3 % increase)", True), ("Price -3 % USD/ST", True),
        ("Price USD/ST incl. 3 % increase", False), ("Price USD/ST (incl. 3 % discount)", False),
        ("Price USD/ST plus 3 % energy surcharge", False), ("Net price USD/ST (less 3 %)", False),
    ],
)  # fmt: skip
def test_a_head_may_change_its_prices(head, asked):
    rows = [[*HEAD, head], *BOARDS]
    assert {str(line.state)[0] for line in read(rows).lines} == {"q" if asked else "a"}


def test_a_discount_beside_list_prices_leads_to_the_net_ones():
    rows = [["Discount: 12 %"], [*HEAD, "List USD/ST", "Net USD/ST"], ["SBS C1S", 18, 75, 1250, 1100]]
    assert [(line.offer.source.cell, str(line.state)) for line in read(rows).lines] == [("E3", "accepted")]
    assert states("Discount: 12 %", head="Net price USD/ST") == ("aa", 0)
    assert states("All prices less 12 %", head="Net price USD/ST") == ("qq", 1)
    assert states("Discount: 12 %", head="List price USD/ST") == ("qq", 1)


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


@pytest.mark.parametrize(
    ("note", "asked"),
    [
        ("GC2 pays 20 euro per tonne more.", [False, True]),
        ("GC2 kostet 20 Euro je Tonne mehr.", [False, True]),
        ("Le GC2 coûte 20 euros par tonne de plus.", [False, True]),
        ("El GC2 cuesta 20 euros por tonelada más.", [False, True]),
        ("GC2 kostar 20 euro per ton mer.", [False, True]),
        ("GC2 costs 20 euro per short ton more.", [False, True]),
        ("GC2 is charged at 1000 euro per tonne and more grades follow.", [False, False]),
    ],
)
def test_more_for_one_board_in_words_is_asked_about_there(note, asked):
    rows = [["Board", "g/m²", "EUR/t"], ["GC1", 250, 1100], ["GC2", 250, 1000], [], [note]]
    assert [line.state is State.QUESTION for line in lines(rows).values()] == asked


LEFT_OUT = [
    "They do not yet include the €50/tonne increase announced March 2, 2026.",
    "The announced increase of €50/tonne is not included.",
    "Die am 2. März 2026 angekündigte Erhöhung von 50 €/t ist noch nicht enthalten.",
    "Ils ne comprennent pas encore la hausse de 50 €/t annoncée le 2 mars 2026.",
    "Aún no incluyen la subida de 50 €/t anunciada el 2 de marzo de 2026.",
    "Höjningen om 50 €/ton som aviserades den 2 mars 2026 ingår ännu inte.",
]
BORNE = [
    "They already include the €50/tonne increase announced March 2, 2026.",
    "Die am 2. März 2026 angekündigte Erhöhung von 50 €/t ist bereits enthalten.",
    "Ils comprennent déjà la hausse de 50 €/t annoncée le 2 mars 2026.",
    "Ya incluyen la subida de 50 €/t anunciada el 2 de marzo de 2026.",
    "De innehåller redan höjningen om 50 €/ton som aviserades den 2 mars 2026.",
    "The increase of €50/tonne effective 1 May 2026 is not included.",
]


@pytest.mark.parametrize(
    ("said", "state"), [(each, "question") for each in LEFT_OUT] + [(each, "accepted") for each in BORNE]
)
def test_a_rise_that_prices_do_not_bear_is_asked_and_one_that_they_bear_is_not(said, state):
    rows = [[f"EUR per 1000 kg. {said}"], ["Grade", "µm", "g/m²", "Price"], ["GC1", 390, 240, 1305]]
    assert [str(line.state) for line in lines(rows).values()] == [state]
