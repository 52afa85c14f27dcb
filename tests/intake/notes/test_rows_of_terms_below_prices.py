"""Rows of terms below several prices: each price has what stands below it."""

import pytest

from tests.intake.sheets import lines, merged

HEADS = [["Grade", "Caliper (pt)", "Rolls USD/ST", "Sheets USD/ST"], ["SBS", 18, 1228, 1300], ["CUK", 21, 1010, 1100]]


def terms(row, field):
    return [getattr(line.offer, field) for line in lines([*HEADS, row]).values()][:2]


@pytest.mark.parametrize(
    ("row", "field", "told"),
    [
        (["Lead time", None, "4 weeks", "6 weeks"], "lead_days", [(28, 28), (42, 42)]),
        (["Lead time", None, None, "6 weeks"], "lead_days", [None, (42, 42)]),
        (["Lead time (weeks)", None, None, 6], "lead_days", [None, (42, 42)]),
        (["Delivery", None, None, "delivered"], "delivered", [None, True]),
        (["Lead time", None, "6 weeks", None], "lead_days", [(42, 42), None]),
        (["Lead time", "6 weeks", None, None], "lead_days", [(42, 42), (42, 42)]),
    ],
)
def test_a_term_below_one_price_is_that_one_s(row, field, told):
    assert terms(row, field) == told


@pytest.mark.parametrize(
    ("low", "high", "told"),
    [("5,000 lb", "10,000 lb", [2268, 4536]), (None, "10,000 lb", [None, 4536]), ("5,000 lb", None, [2268, None])],
)
def test_so_is_a_smallest_order(low, high, told):
    found = terms(["Minimum order", None, low, high], "minimum_kg")
    assert [kg and round(kg) for kg in found] == told


def test_so_is_a_last_day():
    found = terms(["Valid until", None, "2027-03-31", "2027-06-30"], "valid_until")
    assert [day.isoformat() for day in found] == ["2027-03-31", "2027-06-30"]


BIDS = [
    ["Board", "µm", "g/m²", "Alderfen Board", "Tessamill Oy", "Norrhaga AB"],
    [None, None, None, "EUR/t", "EUR/t", "EUR/t"],
    ["SBS C1S", 356, 290, 1215, 1330, 1190],
    ["CRB C1S", 508, 385, 885, None, 812],
    [],
]


def bids(*rows, above=()):
    found = lines([*above, *BIDS, *rows]).values()
    return [line for line in found if line.offer.caliper_um == 356]


@pytest.mark.parametrize(
    ("freight", "lead", "until"),
    [
        (
            ["Freight terms", "FOB mill", "Delivered", "DAP works"],
            ["Lead time", "5 weeks", "6-8 weeks", "3 weeks"],
            ["Bid good through", "Oct 31, 2026", "Nov 15, 2026", "Oct 30, 2026"],
        ),
        (
            ["Frachtbedingung", "ab Werk", "frei Haus", "DAP Werk"],
            ["Lieferzeit", "5 Wochen", "6-8 Wochen", "3 Wochen"],
            ["Gebot gültig bis", "31.10.2026", "15.11.2026", "30.10.2026"],
        ),
        (
            ["Conditions de transport", "départ usine", "franco", "DAP usine"],
            ["Délai", "5 semaines", "6-8 semaines", "3 semaines"],
            ["Offre valable", "31/10/2026", "15/11/2026", "30/10/2026"],
        ),
        (
            ["Condiciones de entrega", "en fábrica", "puesto en destino", "DAP planta"],
            ["Plazo de entrega", "5 semanas", "6-8 semanas", "3 semanas"],
            ["Oferta válida", "31/10/2026", "15/11/2026", "30/10/2026"],
        ),
        (
            ["Fraktvillkor", "fritt fabrik", "fritt levererat", "DAP bruk"],
            ["Leveranstid", "5 veckor", "6-8 veckor", "3 veckor"],
            ["Anbud giltigt till", "2026-10-31", "2026-11-15", "2026-10-30"],
        ),
    ],
)
def test_each_bidder_has_the_terms_below_an_empty_row(freight, lead, until):
    found = [line.offer for line in bids(*([row[0], None, None, *row[1:]] for row in (freight, lead, until)))]
    assert [offer.delivered for offer in found] == [False, True, True]
    assert [offer.lead_days for offer in found] == [(35, 35), (42, 56), (21, 21)]
    assert [str(offer.valid_until) for offer in found] == ["2026-10-31", "2026-11-15", "2026-10-30"]


def test_what_one_bidder_left_open_is_not_taken_from_the_title():
    title = ["All bids valid until 31.12.2026, lead time 4 weeks"]
    valid = ["Offer valid", None, None, "30.11.2026", "until withdrawn", "15.12.2026"]
    found = bids(valid, ["Lead time", None, None, "5 weeks", "tbd", "3 weeks"], above=[title, []])
    assert [line.offer.valid_until and str(line.offer.valid_until) for line in found] == [
        "2026-11-30",
        None,
        "2026-12-15",
    ]
    assert [line.offer.lead_days for line in found] == [(35, 35), None, (21, 21)]
    assert {"lead-time-unread", "validity-unread"} <= {note.code.value for note in found[1].notes}


def test_a_date_below_the_first_bidder_alone_is_that_one_s_and_beside_the_label_of_all():
    first = bids(["Valid until", None, None, "15.11.2026"])
    beside = bids(["Valid until", "15.11.2026"])
    assert [line.offer.valid_until is not None for line in first] == [True, False, False]
    assert [line.offer.valid_until is not None for line in beside] == [True, True, True]


def test_a_day_merged_over_all_bidders_is_that_of_all():
    rows = [*BIDS, ["Valid until", None, None, "15.11.2026"]]
    found = lines(rows, merged=merged((5, 3, 5, 5))).values()
    assert {str(line.offer.valid_until) for line in found} == {"2026-11-15"}


def test_words_below_an_empty_row_that_figures_follow_head_those():
    found = lines(
        [*BIDS, ["Delivery", None, None, "ex works", "delivered", "DAP"], ["SBS C1S", 400, 320, 1300, 1200, 1]]
    )
    assert {line.offer.delivered for line in list(found.values())[:3]} == {None}


def test_days_in_one_line_are_the_last_of_no_price():
    found = lines([["Grade", "pt", "USD/ST"], ["SBS", 18, 1228], [], ["Bid good through: Oct 31, 2026 Nov 15, 2026"]])
    assert [line.offer.valid_until for line in found.values()] == [None]


@pytest.mark.parametrize(
    ("name", "quoted"),
    [("Tessamill Packaging Board", "1330"), ("Sorbek Packaging", "1330"), ("Export packaging", None)],
)
def test_a_firm_called_by_the_word_for_a_charge_offers(name, quoted):
    heads = ["Board", "µm", "g/m²", "Alderfen Board Inc.", name, "Norrhaga Board AB"]
    rows = [heads, [None, None, None, "EUR/t", "EUR/t", "EUR/t"], ["SBS C1S", 356, 290, 1215, 1330, 1190]]
    found = lines(rows)
    assert (f"{found['E3'].offer.price:f}" if "E3" in found else None) == quoted
