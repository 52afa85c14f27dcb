"""Terms over each of two tables beside each other hold for the table below them."""

from tests.intake.sheets import codes, lines

LEFT, RIGHT = ["Board", "pt", "lb/MSF", "Price"], ["Grade", "µm", "g/m²", "Price"]
ROWS = [["SBS C1S", 14, 59, 1241, None, "GC1", 355, 220, 1345], ["SBS C1S", 18, 74, 1219, None, "GC2", 510, 305, 1282]]


def beside(*above):
    return lines([*above, [], [*LEFT, None, *RIGHT], *ROWS])


def over(left, right):
    return [left, None, None, None, None, right]


def test_money_terms_and_firm_are_each_table_s_own():
    firms = over("Highmark Board Co.", "Lindwall Falskartong AB")
    found = beside(firms, over("USD per short ton, FOB mill, 4 weeks", "EUR per tonne, DAP, 8-9 weeks"))
    said = [(o.vendor, o.currency, o.basis, o.delivered, o.lead_days) for o in (line.offer for line in found.values())]
    assert set(said[:2]) == {("Highmark Board Co.", "USD", "short_ton", False, (28, 28))}
    assert set(said[2:]) == {("Lindwall Falskartong AB", "EUR", "tonne", True, (56, 63))}


def test_what_only_one_of_them_says_holds_for_both():
    found = beside(["USD per short ton", None, None, None, None, "Valid until 31 December 2026"])
    assert {(line.offer.currency, str(line.offer.valid_until)) for line in found.values()} == {("USD", "2026-12-31")}


def test_a_line_across_both_is_not_parted():
    found = beside(["Prices in USD per short ton, FOB mill"])
    assert not any("basis-unknown" in codes(line) for line in found.values())


FIRMS = over("Mill: Highmark Board Inc.", "Mill: Lindwall Falskartong AB")
MONEY = over("USD per short ton, FOB mill", "EUR per tonne, DAP")


def until(found):
    return [line.offer.valid_until and str(line.offer.valid_until) for line in found.values()]


def test_what_one_firm_says_over_its_table_holds_for_no_other_firm_s():
    found = beside(FIRMS, MONEY, over("Firm until 28 August 2026", "Price open until further notice"))
    assert {line.offer.vendor for line in found.values()} == {"Highmark Board Inc.", "Lindwall Falskartong AB"}
    assert until(found) == ["2026-08-28", "2026-08-28", None, None]


def test_so_does_what_only_one_of_them_says_there():
    found = beside(FIRMS, MONEY, over(None, "Plus energy surcharge 3 %"))
    assert [len(line.offer.charges) for line in found.values()] == [0, 0, 1, 1]


def test_nor_does_one_firm_s_currency_hold_for_another_s():
    found = beside(FIRMS, over("USD per short ton, FOB mill", "per tonne, DAP"))
    assert [line.offer.currency for line in found.values()] == ["USD", "USD", None, None]


def test_notes_below_each_firm_s_table_are_its_own_and_one_below_the_first_alone_is_of_both():
    tables = [FIRMS, MONEY, [], [*LEFT, None, *RIGHT], *ROWS, []]
    found = lines([*tables, over("Lead time 4 weeks", "Lead time 9 weeks"), over(None, "Valid until 30 June 2027")])
    assert [line.offer.lead_days[0] for line in found.values()] == [28, 28, 63, 63]
    assert until(found) == [None, None, "2027-06-30", "2027-06-30"]
    assert set(until(lines([*tables, over("All prices valid until 30 June 2027", None)]))) == {"2027-06-30"}


def test_a_mill_is_named_as_who_quotes_only_where_a_firm_s_name_follows():
    found = lines([["Mill: Augusta, GA"], ["USD per short ton"], LEFT, ROWS[0][:4]])
    assert found["D4"].offer.vendor is None
