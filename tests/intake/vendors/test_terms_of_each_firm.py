"""Several firms one below the other: what one says over its table, or below it, holds for no other's."""

import pytest

from tests.intake.sheets import codes, lines, read

HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price"]
ONE = [HEAD, ["SBS C1S", 18, 76, 1190], ["CUK", 18, 74, 1075]]
TWO = [HEAD, ["SBS C1S", 18, 77, 48.3], ["CUK", 18, 75, 43.1]]
TERMS = "US dollars per short ton, FOB mill, lead time 5 weeks, minimum 20,000 lb, freight $40/ST"
BARE = "US dollars per MSF, delivered"


def terms(rows):
    offers = [line.offer for line in lines([[row] if isinstance(row, str) else row for row in rows]).values()]
    return [
        (one.vendor, one.lead_days, one.minimum_kg is not None, [charge.label for charge in one.charges])
        for one in offers[:: len(ONE) - 1]
    ]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Vendor: Brantley Shoals Mill Inc.", "Vendor: Northcote Board Company"),
        ("Brantley Shoals Mill Inc.", "Northcote Board Company"),
    ],
)
@pytest.mark.parametrize("above", [[], ["Carton board enquiry 88, replies as received", ""]])
def test_what_stands_over_one_table_is_said_by_its_firm_alone(above, first, second):
    one, two = terms([*above, first, TERMS, *ONE, "", "", second, BARE, *TWO])
    assert one[1:] == ((35, 35), True, ["freight"])
    assert two == ("Northcote Board Company", None, False, [])


def test_notes_below_each_table_are_its_own_firm_s():
    one, two = terms([
        "Brantley Shoals Mill Inc.", "US dollars per short ton", *ONE, "Lead time 5 weeks.", "",
        "Northcote Board Company", "US dollars per MSF", *TWO, "Minimum order 10,000 lb.",
    ])  # fmt: skip
    assert (one[1:3], two[1:3]) == (((35, 35), False), (None, True))


def test_what_stands_above_all_names_or_below_the_last_table_alone_holds_for_all():
    one, two = terms([
        "All boards: lead time 5 weeks", "", "Brantley Shoals Mill Inc.", "US dollars per short ton", *ONE, "",
        "Northcote Board Company", "US dollars per MSF", *TWO, "", "Minimum order 10,000 lb.",
    ])  # fmt: skip
    assert one[1:3] == two[1:3] == ((35, 35), True)


def test_one_firm_s_terms_hold_for_all_its_tables():
    one, two = terms(["Brantley Shoals Mill Inc.", TERMS, *ONE, "", "Rolls per MSF", "US dollars per MSF", *TWO])
    assert one[1:3] == two[1:3] == ((35, 35), True)


def test_words_that_state_no_term_below_a_table_part_nothing():
    one, two = terms([
        "Brantley Shoals Mill Inc.", "US dollars per short ton", *ONE, "", "Page 1 of 2", "",
        "Northcote Board Company", "US dollars per MSF", *TWO, "", "Minimum order 10,000 lb.",
    ])  # fmt: skip
    assert one[1:3] == two[1:3] == (None, True)


def test_what_is_said_of_all_prices_below_the_last_table_holds_for_all():
    one, two = terms([
        "Brantley Shoals Mill Inc.", "US dollars per short ton", *ONE, "", "Minimum order 10,000 lb.", "",
        "Northcote Board Company", "US dollars per MSF", *TWO, "", "All prices: energy surcharge $25/ST.",
    ])  # fmt: skip
    assert (one[2:], two[2:]) == ((True, ["energy surcharge"]), (False, ["energy surcharge"]))


@pytest.mark.parametrize(
    "said",
    [
        "Both suppliers: lead time 5 weeks", "Alle Lieferanten: Lieferzeit 5 Wochen",
        "Tous les fournisseurs : délai 5 semaines", "Todos los proveedores: plazo 5 semanas",
        "Alla leverantörer: leveranstid 5 veckor",
    ],
)  # fmt: skip
def test_what_is_said_of_all_who_offer_holds_for_all(said):
    one, two = terms(["Brantley Shoals Mill Inc.", said, *ONE, "", "Northcote Board Company", *TWO])
    assert one[1] == two[1] == (35, 35)


def test_a_firm_is_the_same_with_and_without_its_legal_form():
    one, two = terms(["Brantley Shoals Mill Inc.", TERMS, *ONE, "", "Brantley Shoals Mill", *TWO])
    assert one[1:3] == two[1:3] == ((35, 35), True)


def test_words_right_below_a_table_are_not_of_the_firm_below_them():
    one, two = terms(["Brantley Shoals Mill Inc.", *ONE, "Lead time 5 weeks.", "Northcote Board Company", *TWO])
    assert (one[1], two[1]) == ((35, 35), None)


def test_units_of_the_firm_above_hold_where_the_firm_below_says_none():
    head = ["Board", "Caliper (pt)", "lb/MSF", "Price"]
    rows = ["Brantley Shoals Mill Inc.", "All prices in USD per short ton", head, ["SBS", 18, 76, 1190], "",
            "Northcote Board Company", head, ["SBS", 18, 77, 1210]]  # fmt: skip
    found = lines([[row] if isinstance(row, str) else row for row in rows]).values()
    assert [str(line.state) for line in found] == ["accepted", "accepted"]


@pytest.mark.parametrize(
    ("labels", "minimum", "lead"),
    [
        ([["Lead time", "5 weeks"], ["Minimum order", "2 tonnes"]], True, (35, 35)),
        ([["Mindestmenge", "2 t"], ["Lieferzeit", "5 Wochen"]], True, (35, 35)),
        ([["Minsta order", "2 ton"], ["Leveranstid", "5 veckor"]], True, (35, 35)),
    ],
)
def test_a_term_and_what_it_is_right_above_the_heads_are_no_heads(labels, minimum, lead):
    rows = [["Vendor", "Northcote Board Company"], *labels, ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1100]]
    (line,) = lines(rows).values()
    assert (line.offer.minimum_kg is not None, line.offer.lead_days, line.offer.from_kg) == (minimum, lead, None)
    assert line.offer.caliper_um == 400


def replies(*labels, remark="phoned"):
    """One block a firm: its label and name with a remark in the column of prices, its terms, its own table."""
    first, second, third = (["Vendor:", name, None, remark] for name in labels)
    return [
        ["Replies to inquiry 14"], [], first, ["terms:", "FOB mill, US$ per short ton, 4 weeks"], *ONE, [],
        second, ["no quote - sold out through August"], [],
        third, ["terms:", "US dollars per MSF, delivered"], *TWO,
    ]  # fmt: skip


def test_each_block_of_replies_is_quoted_by_the_firm_over_it():
    rows = replies("Ferrowick Carton Mills", "Passmere Paper Sales", "Sorrel Hollow Board")
    found = read([[row] if isinstance(row, str) else row for row in rows])
    assert found.vendor is None
    assert {str(line.state) for line in found.lines} == {"accepted"}
    said = [(line.offer.vendor, line.offer.delivered, line.offer.lead_days) for line in found.lines]
    assert said == [("Ferrowick Carton Mills", False, (28, 28))] * 2 + [("Sorrel Hollow Board", True, None)] * 2


def test_blocks_of_one_firm_are_all_its_own():
    found = read(replies(*["Ferrowick Carton Mills"] * 3))
    assert {line.offer.vendor for line in found.lines} == {"Ferrowick Carton Mills"}


def test_a_label_far_from_the_next_cell_does_not_name_it():
    title = ["Ferrowick Karton GmbH"]
    form = ["Firma", None, None, "Angebot Nr.", "A-26/114"]
    found = read([title, form, [], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1180]])
    assert [line.offer.vendor for line in found.lines] == ["Ferrowick Karton GmbH"]


PRICED = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]


def below_the_last(*notes, own=(), gap=False, heads=PRICED):
    """The first firm's offer and the last one's, with notes below the last table."""
    rows = [
        ["Brantley Shoals Mill Inc."], heads, ["SBS C1S", 18, 76, 1190], *([note] for note in own), [],
        ["Northcote Board Company"], heads, ["CUK", 18, 74, 1075], *([[]] if gap else []), *([note] for note in notes),
    ]  # fmt: skip
    return [line.offer for _, line in sorted(lines(rows).items())]


@pytest.mark.parametrize("own", [(), ("Lead time 3 weeks",)])
@pytest.mark.parametrize(
    ("note", "said"),
    [
        ("All prices subject to 4% energy surcharge", lambda offer: len(offer.charges)),
        ("Energy surcharge $14/ST", lambda offer: len(offer.charges)),
        ("All prices delivered Dayton", lambda offer: offer.delivered),
        ("All prices firm until 30 April 2026", lambda offer: offer.valid_until),
    ],
)
def test_words_that_touch_the_last_table_are_its_firm_s_alone(note, said, own):
    one, two = below_the_last(note, own=own)
    assert (bool(said(one)), bool(said(two))) == (False, True)


@pytest.mark.parametrize("note", ["Prices of both vendors are delivered Dayton", "All prices delivered Dayton"])
def test_below_a_gap_or_of_all_who_offer_they_hold_for_all(note):
    assert [offer.delivered for offer in below_the_last(note, gap="both" not in note)] == [True, True]


def test_the_terms_of_each_are_told_apart_though_they_speak_of_all_prices():
    own = "All prices delivered. Lead time 3 weeks"
    one, two = below_the_last("All prices FOB Akron. Lead time 5 weeks", own=(own,))
    assert (one.delivered, one.lead_days, two.delivered, two.lead_days) == (True, (21, 21), False, (35, 35))


def test_the_unit_of_all_prices_right_below_the_last_table_is_every_firm_s():
    offers = below_the_last("All prices USD per short ton", heads=[*PRICED[:3], "Price"])
    assert [offer.basis for offer in offers] == ["short_ton", "short_ton"]


@pytest.mark.parametrize(
    ("note", "code"),
    [
        ("FOB mill, freight $40/ST extra", "number-ambiguous"),
        ("Lead time 3 weeks", "lead-time-unread"),
        ("Lieferzeit 3 Wochen", "lead-time-unread"),
        ("Délai de livraison 3 semaines", "lead-time-unread"),
        ("Plazo de entrega 3 semanas", "lead-time-unread"),
        ("Leveranstid 3 veckor", "lead-time-unread"),
        ("Prices firm until 30 April 2026", "validity-unread"),
        ("Minimum order 20,000 lb", "bracket-unread"),
    ],
)
def test_an_earlier_firm_s_bare_offer_tells_of_the_terms_right_below_the_last(note, code):
    def told(own):
        rows = ["Brantley Shoals Mill Inc.", *own, PRICED, ["SBS C1S", 18, 76, 1190], "",
                "Northcote Board Company", PRICED, ["CUK", 18, 74, 1075], note]  # fmt: skip
        return [codes(line) for line in lines([[row] if isinstance(row, str) else row for row in rows]).values()]

    assert told([]) == [{code}, set()]
    assert told(["Lead time 5 weeks"]) == [set(), set()]
    assert told(["Delivered"]) == [set(), set()]
