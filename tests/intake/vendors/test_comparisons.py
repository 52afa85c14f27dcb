"""A buyer's comparison: several vendors' columns under one header, and above it what each of them says of its own."""

import pytest

from tests.intake.sheets import lines, merged

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


def test_a_firm_called_by_fibre_or_board_has_prices_below_its_name():
    found = lines(
        [
            ["Board", "pt", "g/m²", "Ferrow Mills Inc.", None, "Tallow Fibre Ltd.", None, "Quern Board Co.", None],
            [None, None, None, "CAD/MT", "Freight", "CAD/MT", "Freight", "USD/ST", "Freight"],
            ["SBS C1S", 14, 281, 1795, "delivered", 1760, "FOB mill", 1215, "FOB mill"],
            ["SBS C1S", 18, 366, 1765, "delivered", 1735, "FOB mill", 1195, "FOB mill"],
            ["CRB C1S", 18, 342, "no bid", None, 1290, "delivered", 905, "FOB mill"],
        ],
        merged=merged((0, 3, 0, 4), (0, 5, 0, 6), (0, 7, 0, 8)),
    )
    told = {cell: (line.offer.vendor, line.offer.delivered) for cell, line in found.items()}
    assert told == {
        "D3": ("Ferrow Mills Inc.", True),
        "F3": ("Tallow Fibre Ltd.", False),
        "H3": ("Quern Board Co.", False),
        "D4": ("Ferrow Mills Inc.", True),
        "F4": ("Tallow Fibre Ltd.", False),
        "H4": ("Quern Board Co.", False),
        "F5": ("Tallow Fibre Ltd.", True),
        "H5": ("Quern Board Co.", False),
    }


def test_freight_under_one_vendors_name_is_not_the_others():
    found = lines(
        [
            ["Grade", "Caliper (pt)", "lb/MSF", "Ferrow Mills Inc.", None, "Tallow Paper Ltd."],
            [None, None, None, "USD/ST", "Freight", "USD/ST"],
            ["SBS C1S", 14, 60, 1215, "delivered", 1260],
            ["SBS C1S", 18, 76, 1195, "delivered", 1225],
        ],
        merged=merged((0, 3, 0, 4)),
    )
    assert [found[cell].offer.delivered for cell in ("D3", "F3", "D4", "F4")] == [True, None, True, None]


def test_prices_delivered_to_two_places_over_one_unit_are_two_prices():
    head = ["Product", "Caliper", "Basis wt.", "FOB mill", "Delivered Arnby, WI", "Delivered Osk, OK"]
    units = [None, "(in.)", "(lb/MSF)", "per ton", "per ton", "per ton"]
    rows = [["US dollars, short tons"], head, units, ["CRB C1S", 0.024, 91, 870, 919, 1002]]
    found = lines(rows)
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("D4", "E4", "F4"), "accepted")


def test_one_delivered_price_on_two_units_is_one_price():
    head = ["Product", "Caliper", "Basis wt.", "Delivered Arnby, WI", "Delivered Arnby, WI"]
    rows = [head, [None, "(in.)", "(lb/MSF)", "$/ton (2,000 lb)", "$/MSF"], ["CRB C1S", 0.024, 91, 920, 41.86]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"D3": "accepted"}


@pytest.mark.parametrize(
    ("head", "vendor"),
    [("Fenntalwerk", "Fenntalwerk"), ("Alnäsbruk", "Alnäsbruk"), ("Hauptwerk", None), ("Incumbent", None),
     ("Wunsch", None), ("Kontrakt", None), ("Lager", None)],
)  # fmt: skip
def test_works_in_one_word_among_firms(head, vendor):
    title = ["Angebotsvergleich GD2 – alle Preise EUR/t frei Haus"]
    firms = [None, None, "Ellerauer Board", "Mooskamp Karton", head]
    units = ["g/m²", "Dicke µm", "EUR/t", "EUR/t", "EUR/t"]
    terms = ["Lieferzeit", None, "4 Wochen", "6 Wochen", "3-4 Wochen"]
    found = lines([title, [], firms, units, [300, 385, 806, 795, 815], [350, 450, 801, 789, 808], terms])
    assert [found[cell].offer.lead_days for cell in ("C5", "D5")] == [(28, 28), (42, 42)]
    asked = {cell: str(line.state) for cell, line in found.items() if line.offer.vendor is None}
    assert asked == ({} if vendor else dict.fromkeys(("E5", "E6"), "question"))
    assert not vendor or found["E6"].offer.vendor == vendor


@pytest.mark.parametrize(
    ("label", "none"),
    [("Proveedor", "no oferta"), ("Lieferant", "kein Gebot"), ("Fournisseur", "ne propose pas"), ("Supplier", "no bid"),
     ("Leverantör", "inget anbud")],
)  # fmt: skip
def test_a_bidder_who_leaves_a_board_out_is_still_one(label, none):
    rows = [
        ["EUR/t, DAP"], [], ["Board", "g/m²", "µm", label, label],
        [None, None, None, "Cartonajes Ferrow", "Molino Tarn"],
        ["GC1", 240, 385, 1294, 1279], ["GC2", 300, 505, 1212, none], ["GD2", 320, 415, 879, 864],
    ]  # fmt: skip
    found = lines(rows, merged=merged((2, 3, 2, 4)))
    assert {cell: (str(line.state), line.offer.vendor) for cell, line in found.items()} == {
        **{f"D{row}": ("accepted", "Cartonajes Ferrow") for row in (5, 6, 7)},
        **{f"E{row}": ("accepted", "Molino Tarn") for row in (5, 7)},
    }


def test_a_column_of_firms_stays_one_though_a_number_stands_among_them():
    head = ["Board", "g/m²", "µm", "Proveedor", "EUR/t"]
    rows = [
        ["GC1", 240, 385, "Cartonajes Ferrow", 1294],
        ["GC2", 300, 505, "Molino Tarn", 1212],
        ["GD2", 320, 415, 7, 9],
    ]
    found = lines([head, *rows])
    assert [found[cell].offer.vendor for cell in ("E2", "E3")] == ["Cartonajes Ferrow", "Molino Tarn"]
