"""A buyer's comparison: several vendors' columns under one header, and above it what each of them says of its own."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Ln", "Grade", "pt", "lb/MSF", "$/cwt", "LT wks", "$/cwt", "LT wks"]
ROW = [1, "SBS C1S", 18, 76, 63.1, 5, 58.4, 6]
VENDORS = [None, None, None, None, "Wendmere Mills", None, "Kestrel Basin Board Co.", None]


def over(*values):
    return [None, None, None, None, values[0], None, values[1], None]


def test_lines_above_the_header_are_each_vendors_own():
    found = lines(
        [
            ["Bids in US$, rolls"],
            [],
            VENDORS,
            over("delivered", "F.O.B. mill"),
            over("good until 31 October 2026", "valid until 31 December 2026"),
            HEAD,
            ROW,
        ]
    )
    offers = {cell: line.offer for cell, line in found.items()}
    assert {cell: offer.vendor for cell, offer in offers.items()} == {
        "E7": "Wendmere Mills",
        "G7": "Kestrel Basin Board Co.",
    }
    assert [offer.delivered for offer in offers.values()] == [True, False]
    assert [offer.lead_days for offer in offers.values()] == [(35, 35), (42, 42)]
    assert [str(offer.valid_until) for offer in offers.values()] == ["2026-10-31", "2026-12-31"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize(
    ("vendor", "terms", "until"),
    [
        ("Lieferant", "Lieferbedingung", "Gültig bis"),
        ("Fournisseur", "Conditions de livraison", "Valable jusqu'au"),
        ("Proveedor", "Condiciones de entrega", "Válido hasta"),
        ("Leverantör", "Leveransvillkor", "Giltig till"),
    ],
)
def test_a_label_at_the_left_says_what_such_a_line_tells(vendor, terms, until):
    found = lines(
        [
            ["EUR/t"],
            [None, None, vendor, "Donnersund Karton", "Finnbrook"],
            [None, None, terms, "DAP", "EXW"],
            [None, None, until, "31.12.2026", "30.11.2026"],
            ["Pos.", "Board", "g/m²", "EUR/t", "EUR/t"],
            [1, "GC2", 230, 1242, 1198],
        ]
    )
    offers = [line.offer for line in found.values()]
    assert [offer.vendor for offer in offers] == ["Donnersund Karton", "Finnbrook"]
    assert [offer.delivered for offer in offers] == [True, False]
    assert [str(offer.valid_until) for offer in offers] == ["2026-12-31", "2026-11-30"]


def test_a_charge_below_one_vendors_prices_is_not_the_others():
    found = lines(
        [VENDORS, over("delivered", "FOB mill"), HEAD, ROW, ["", "Est. freight", None, None, None, None, 3.6]]
    )
    assert [len(line.offer.charges) for line in found.values()] == [0, 1]


def test_what_one_vendor_remarks_changes_no_other_vendors_price():
    head = [*HEAD[:6], "Note", *HEAD[6:], "Note"]
    rows = [[*VENDORS[:6], None, *VENDORS[6:]], [*over("delivered", "")[:7], "FOB mill"], head]
    found = lines([*rows, [1, "SBS C1S", 18, 76, 63.1, 5, None, 58.4, 6, "no longer offered"]])
    assert [str(line.state) for line in found.values()] == ["accepted", "question"]
    other = lines([*rows, [1, "SBS C1S", 18, 76, 63.1, 5, None, 58.4, 6, "alt. 17 pt not offered"]])
    assert [str(line.state) for line in other.values()] == ["accepted", "accepted"]


def test_titles_above_a_list_of_one_vendor_are_no_such_lines():
    found = lines(
        [
            ["Larchmoor Board Ltd", None, None, "Valid until 31 December 2026"],
            ["Prices delivered", None, None, "Lead time 4 weeks"],
            ["Board", "pt", "lb/MSF", "< 5 t $/ST", "> 5 t $/ST"],
            ["SBS C1S", 18, 76, 1250, 1190],
        ]
    )
    assert {line.offer.vendor for line in found.values()} == {"Larchmoor Board Ltd"}
    assert {line.offer.lead_days for line in found.values()} == {(28, 28)}
    assert {str(line.offer.valid_until) for line in found.values()} == {"2026-12-31"}


def test_a_day_right_behind_valid_is_none_that_days_are_counted_from():
    rows = [["Valid 9/30/2026 - 60 day term"], ["Board", "pt", "lb/MSF", "$/ST"], ["SBS C1S", 18, 76, 1250]]
    assert lines(rows)["D3"].offer.valid_until is None
