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


WEEKS = ["Sorte", "g/m²", "µm", "Fenwold Karton AG", "Lieferzeit", "Orrick Board AS", "Lieferzeit"]
IN_UNITS = [None, None, None, "EUR/t", "Wo.", "EUR/t", "Wo."]


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


def test_weeks_right_behind_each_price_are_its_own():
    found = lines([WEEKS, IN_UNITS, ["GC2", 230, 370, 1265, 4, 1248, 6], ["GC2", 275, 455, "–", None, 1236, 2]])
    assert [found[cell].offer.lead_days for cell in ("D3", "F3", "F4")] == [(28, 28), (42, 42), (14, 14)]


def test_weeks_right_before_each_price_are_its_own():
    head = ["Kvalitet", "g/m²", "µm", "Leveranstid veckor", "Fenwold AB SEK/t", "Leveranstid veckor", "Orrick AB SEK/t"]
    found = lines([head, ["GC2", 230, 370, 4, 12650, 6, 12480]])
    assert [found[cell].offer.lead_days for cell in ("E2", "G2")] == [(28, 28), (42, 42)]


def test_weeks_behind_several_prices_are_of_them_all():
    head = ["Qualité", "g/m²", "µm", "Départ usine €/t", "Rendu €/t", "Délai (semaines)"]
    found = lines([head, ["GC2", 230, 370, 1265, 1240, 4]])
    assert [found[cell].offer.lead_days for cell in ("D2", "E2")] == [(28, 28), (28, 28)]


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


def test_a_lead_time_beside_delivered_prices_is_of_the_others_too():
    rows = [
        ["Board", "Thickness", "Basis weight", "Price", None, "Time"],
        [None, None, None, "FOB mill", "Delivered", None],
        [None, "pt", "lb/MSF", "US$/ST", "US$/ST", "weeks"],
        ["CUK", 18, 74, 1062, 1101, 6],
    ]
    found = lines(rows, merged=merged((0, 3, 0, 4), (1, 4, 1, 5)))
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42)]


def test_weeks_between_two_vendors_prices_are_the_firsts():
    head = ["Grade", "g/m²", "µm", "Fenwold Ltd EUR/t", "Lead time (weeks)", "Orrick Ltd EUR/t"]
    found = lines([head, ["GC2", 230, 370, 1265, 6, 1248]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), None]
    one_vendor = [*head[:3], "EXW EUR/t", head[4], "Delivered EUR/t"]
    found = lines([one_vendor, ["GC2", 230, 370, 1265, 6, 1248]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42)]


def test_a_price_under_no_name_has_no_weeks_from_under_anothers():
    head = ["Grade", "g/m²", "µm", "EUR/t", "Orrick Ltd", None]
    rows = [head, [None, None, None, None, "EUR/t", "Lead time (weeks)"], ["GC2", 230, 370, 1265, 1248, 6]]
    found = lines(rows, merged=merged((0, 4, 0, 5)))
    assert [found[cell].offer.lead_days for cell in ("D3", "E3")] == [None, (42, 42)]


def test_weeks_behind_two_prices_of_each_vendor_are_of_both():
    units = ["EUR/t", "USD/t", "Lead time (weeks)"]
    head = ["Grade", "g/m²", "µm", "Fenwold Ltd", None, None, "Orrick Ltd", None, None]
    rows = [head, [None, None, None, *units, *units], ["GC2", 230, 370, 1265, 1390, 6, 1248, 1370, 3]]
    found = lines(rows, merged=merged((0, 3, 0, 5), (0, 6, 0, 8)))
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42), (21, 21), (21, 21)]
    one = ["Fenwold Ltd EUR/t", "Fenwold Ltd USD/t", "Lead time", "Orrick Ltd EUR/t", "Orrick Ltd USD/t", "Lead time"]
    found = lines([[*head[:3], *one], ["GC2", 230, 370, 1265, 1390, "6 weeks", 1248, 1370, "3 weeks"]])
    assert [line.offer.lead_days for line in found.values()] == [(42, 42), (42, 42), (21, 21), (21, 21)]


_BOARD = ["Board", "g/m²", "µm"]
_BIDS = [["GC1", 250, 405, 1284, 1271, -13], ["GD2", 350, 465, 817, 831, 14]]


def _compared(*heads):
    rows = [["EUR per tonne, delivered"], [], [*_BOARD, *heads], ["", "", "", "EUR/tonne", "EUR/tonne", "EUR/tonne"]]
    return {cell: (str(line.state), line.offer.vendor) for cell, line in lines([*rows, *_BIDS]).items()}


@pytest.mark.parametrize(
    ("one", "other", "difference"),
    [
        ("Supplier: Larchmoor Paperboard", "Supplier: Tarnside Board Ltd", "Difference"),
        ("Lieferant: Kartonfabrik Ostmark", "Lieferant: Verrin Karton GmbH", "Differenz"),
        ("Fournisseur : Cartonneries Verdaine", "Fournisseur : Papeteries Soulac", "Écart"),
        ("Proveedor: Papelera Altoria", "Proveedor: Cartones Benasca S.A.", "Diferencia"),
        ("Leverantör: Granforsa Kartong AB", "Leverantör: Fallbro Kartong AB", "Skillnad"),
        ("Larchmoor Board Inc.", "Tarnside Mills", "Diff."),
    ],
)
def test_of_two_vendors_bids_with_their_difference_neither_is_the_old_price(one, other, difference):
    found = _compared(one, other, difference)
    vendors = [name.split(":")[-1].strip() for name in (one, other)]
    assert found == {f"{column}{row}": ("accepted", vendors["DE".index(column)]) for row in (5, 6) for column in "DE"}


@pytest.mark.parametrize(
    "heads",
    [("Ostmark", "Verrin", "Differenz"), ("Supplier 1", "Supplier 2", "Difference"), ("Ist", "Soll", "Differenz")],
)
def test_two_prices_by_words_for_no_time_and_no_vendor_are_asked_about(heads):
    assert {state for state, _ in _compared(*heads).values()} == {"question"}
    assert set(_compared(*heads)) == {"D5", "E5", "D6", "E6"}


@pytest.mark.parametrize(
    "heads",
    [
        ("Preis alt", "Preis neu", "Differenz"),
        ("Current price", "New price", "Difference"),
        ("Q3", "Q4", "Diff."),
        ("Contract", "Offer", "Increase"),
    ],
)
def test_old_and_new_price_with_their_difference_stay_one_offer(heads):
    assert set(_compared(*heads)) == {"E5", "E6"}
