"""What two places of a sheet say differently is asked, never settled by the nearer one alone."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["CRB C1S", 16, 62, 905], ["CRB C1S", 18, 70, 885]]
METRIC = [["GD2", 380, 300, 905], ["GD2", 400, 320, 885]]


def asked(rows, code, **more):
    found = lines(rows, **more)
    assert len(found) == 2
    return all(line.state == "question" and code in codes(line) for line in found.values())


def accepted(rows, **more):
    found = lines(rows, **more)
    return len(found) == 2 and all(line.state == "accepted" for line in found.values())


def test_a_footer_that_names_another_ton_than_the_header():
    rows = [["Grade", "µm", "g/m²", "EUR/t"], *METRIC, []]
    assert accepted([*rows, ["All prices per tonne."]])
    assert asked([*rows, ["All prices per short ton."]], "basis-unknown")


@pytest.mark.parametrize("unit", ["per tonne", "/tonne", "EUR/tonne"])
def test_a_unit_below_the_only_price_head_is_part_of_the_header(unit):
    rows = [["EUR, FOB mill"], [], ["Board", "pt", "lb/MSF", "Price"], [None, None, None, unit], *ROWS]
    assert accepted(rows)
    assert {line.offer.basis for line in lines(rows).values()} == {"tonne"}


def test_a_unit_row_that_contradicts_the_header_or_the_title():
    unit_row = [None, None, None, "per tonne"]
    assert asked([["Board", "pt", "lb/MSF", "Price (USD/short ton)"], unit_row, *ROWS], "basis-unknown")
    assert asked([["US$ per short ton"], [], ["Board", "pt", "lb/MSF", "Price"], unit_row, *ROWS], "basis-unknown")


def test_a_title_and_a_sheet_name_that_name_different_grades():
    rows = [["Greyboard (URB) prices"], [], ["Caliper (pt)", "lb/MSF", "USD/ST"], [18, 70, 905], [20, 78, 890]]
    assert accepted(rows, sheet="URB")
    assert accepted(rows, sheet="Prices")
    assert asked(rows, "grade-unknown", sheet="CUK")


def test_a_line_of_the_letterhead_right_above_the_header_heads_nothing():
    rows = [
        ["Minimum order:", "5000 kg per item"],
        ["Board", "Caliper (µm)", "g/m²", "Price EUR/tonne"],
        *METRIC,
    ]
    offer = lines(rows)["D3"].offer
    assert (offer.from_kg, offer.minimum_kg) == (None, 5000)


HEAD = ["Board", "pt", "lb/MSF", "USD/ST"]
LOWER = [["CRB C1S", 16, 62, 865], ["CRB C1S", 18, 70, 845]]


def test_the_same_boards_again_at_other_prices_under_no_title_of_their_own():
    found = lines([HEAD, *ROWS, [], [], HEAD, *LOWER])
    assert len(found) == 4
    assert all("prices-disagree" in codes(line) for line in found.values())


def test_two_tables_that_their_titles_tell_apart():
    found = lines([["Delivered Leeds"], HEAD, *ROWS, [], ["Delivered York"], HEAD, *LOWER])
    assert [line.state for line in found.values()] == ["accepted"] * 4


@pytest.mark.parametrize(
    "old", ["Old", "Ancien", "Antiguo", "Gammal", "Old prices", "Superseded price list", "Anciens prix", "Alte Preise"]
)
def test_an_old_table_above_the_new_one_marks_itself_alone(old):
    found = lines([["Harlow Board Inc."], [], [old], HEAD, *LOWER, [], ["New prices"], HEAD, *ROWS])
    assert {cell: line.offer.price for cell, line in found.items()} == {"D10": 905, "D11": 885}
    found = lines([["Harlow Board Inc."], [], ["New prices"], HEAD, *ROWS, [], [old], HEAD, *LOWER])
    assert {cell: line.offer.price for cell, line in found.items()} == {"D5": 905, "D6": 885}


def test_two_bases_beside_a_change_are_no_old_and_new_price():
    head = ["Description", "Cal. pt", "BW lb/MSF", "$/ST", "$/MSF", "Change %"]
    found = lines([head, ["CRB C1S", 18, 70, 855, 34.02, 2.1], ["CRB C1S", 20, 79, 850, 33.58, 2.1]])
    assert "prices-disagree" in codes(found["D2"])
    assert found["D3"].offer.source.also == ("E3",)


@pytest.mark.parametrize("other", ["Your target price", "Market price", "Last year's price", "Our cost", "Zielpreis"])
def test_prices_that_are_not_the_vendors_offer_stand_beside_it(other):
    found = lines([[*HEAD, other], *[[*row, 700] for row in ROWS]])
    assert {cell: line.state for cell, line in found.items()} == {"D2": "accepted", "D3": "accepted"}
    sized = ["Board", "pt", "lb/MSF", "< 5 tons", "5-20 tons", other]
    rows = [["USD/ST"], [], sized, *[[*row, row[3] - 20, 700] for row in ROWS]]
    assert {cell[0] for cell in lines(rows)} == {"D", "E"}


@pytest.mark.parametrize("strange", ["Amount", "Price 2025", "Price (see mail)"])
def test_a_column_that_names_no_order_size_beside_prices_that_do_is_asked(strange):
    head = ["Board", "pt", "lb/MSF", "< 5 tons", "5-20 tons", strange]
    found = lines([["USD/ST"], [], head, *[[*row, row[3] - 20, 700] for row in ROWS]])
    assert {cell for cell, line in found.items() if line.state == "accepted"} == {"D4", "E4", "D5", "E5"}


def test_the_net_price_once_more_on_another_basis_is_no_list_price():
    head = ["Board", "pt", "lb/MSF", "Net $/ST", "List price", "Unit price ($/MSF)"]
    found = lines([head, ["CRB C1S", 18, 70, 855, 900, 34.02], ["CRB C1S", 20, 79, 850, 900, 33.58]])
    assert "prices-disagree" in codes(found["D2"])
    assert found["D3"].offer.source.also == ("F3",)


BOXBOARD = [["GC1", 250, 400, 1050], ["GD2", 300, 380, 820]]


@pytest.mark.parametrize(
    ("title", "note"),
    [
        ("All prices in EUR per tonne", "Note: prices are per short ton."),
        ("Preise in EUR je Tonne", "Alle Preise verstehen sich in CHF."),
    ],
)
def test_a_note_that_contradicts_the_only_tables_title_is_asked(title, note):
    rows = [[title], ["Sorte", "g/m²", "µm", "Preis"], *BOXBOARD, [], [note]]
    assert [line.state for line in lines(rows).values()] == ["question"] * 2


def test_what_holds_unless_marked_gives_way_to_what_is_marked():
    rows = [["Prices in EUR per tonne unless marked"], ["Grade", "g/m²", "µm", "Price"], BOXBOARD[0]]
    plain, marked = lines([*rows, ["GD2", 300, 380, "0.82/kg"]]).values()
    assert (plain.offer.basis, marked.offer.basis, marked.state) == ("tonne", "kg", "accepted")


@pytest.mark.parametrize("remark", ["price per short ton", "Preis in CHF"])
def test_a_remark_that_contradicts_the_head_is_asked(remark):
    rows = [["Grade", "g/m²", "µm", "EUR/t", "Remarks"], [*BOXBOARD[0], remark], BOXBOARD[1]]
    remarked, plain = lines(rows).values()
    assert (remarked.state, plain.state) == ("question", "accepted")


def test_what_pounds_board_weighs_is_no_currency_of_its_price():
    rows = [["Weight in lb per 3000 sq ft ream"], ["Board", "pt", "Weight", "USD/ST"], ["SBS C1S", 18, 225, 1100]]
    (line,) = lines(rows).values()
    assert (line.state, line.offer.currency, line.offer.basis) == ("accepted", "USD", "short_ton")


@pytest.mark.parametrize("note", ["Invoices can be paid in CHF at the day's rate.", "Prices per MSF on request."])
def test_a_note_about_other_things_contradicts_no_title(note):
    rows = [["Prices in EUR per tonne"], ["Grade", "g/m²", "µm", "Price"], *BOXBOARD, [], [note]]
    assert accepted(rows)


def test_a_ton_of_2240_pounds_is_none_that_prices_are_compared_by():
    rows = [["Board", "pt", "lb/MSF", "Price USD/ton"], *ROWS, []]
    assert accepted([*rows, ["Ton = 2,000 lb"]])
    assert asked([*rows, ["Ton = 2,240 lb"]], "basis-unknown")


def test_a_footnote_of_marked_prices_stands_beside_what_holds_unless_marked():
    rows = [["Grade", "pt", "lb/MSF", "Price US$"], ["CRB C1S", 16, 62, "905"], ["CRB C1S", 18, 70, "44.25*"], []]
    found = lines([*rows, ["Prices are per short ton unless marked."], ["* per cwt (100 lb)"]])
    assert [line.offer.basis for line in found.values()] == ["short_ton", "cwt"]


@pytest.mark.parametrize(
    "title",
    [
        "All prices in Canadian dollars, FOB our dock",
        "Alle Preise in CAD, ab Werk",
        "Tous les prix en dollars canadiens",
        "Todos los precios en dólares canadienses",
        "Alla priser i CAD, fritt fabrik",
    ],
)
def test_all_prices_in_one_money_contradicts_a_head_of_another(title):
    heads = ["Rolls", "pt", "lb/MSF", "US$/MT"], ["Skids", "pt", "lb/MSF", "CAD/MT"]
    found = lines([["Boardworks"], [title], heads[0], ["CUK", 16, 65, 1190], [], heads[1], ["URB", 24, 85, 1018]])
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]


def test_prices_in_one_money_without_all_give_way_to_the_heads():
    heads = ["Rolls", "pt", "lb/MSF", "US$/MT"], ["Skids", "pt", "lb/MSF", "CAD/MT"]
    found = lines([["CAD, FOB our dock"], heads[0], ["CUK", 16, 65, 1190], [], heads[1], ["URB", 24, 85, 1018]])
    assert [line.offer.currency for line in found.values()] == ["USD", "CAD"]
