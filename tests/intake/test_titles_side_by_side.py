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
