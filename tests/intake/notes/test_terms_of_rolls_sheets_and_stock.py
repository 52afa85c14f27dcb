"""Terms said of rolls or sheets, of stock or direct supply, of delivered prices or others, hold for no other price."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "µm", "g/m²"]
GC1 = ["GC1", 450, 300]


def read_two(heads, *notes, title="EUR/tonne"):
    """The offers of two prices beside each other, with notes below them."""
    found = lines([[title], [*HEAD, *heads], [*GC1, 1180, 1250], *([note] for note in notes)])
    return [line.offer for line in found.values()]


@pytest.mark.parametrize(
    ("heads", "text", "minimums"),
    [
        (("Rolls", "Sheets"), "Minimum: rolls 20 t, sheets 2 t", [20000, 2000]),
        (("Rolls", "Sheets"), "Minimum 2 t (sheets), 20 t (rolls)", [20000, 2000]),
        (("Rolls", "Sheets"), "Minimum for sheets 2 t", [None, 2000]),
        (("Rolle", "Bogen"), "Mindestmenge Rolle 5 t, Bogen 1 t.", [5000, 1000]),
        (("Bobine", "Feuilles"), "Commande minimum 2 t (bobines 10 t)", [10000, 2000]),
        (("Bobina", "Hojas"), "Pedido mínimo bobinas 5 t y hojas 1 t", [5000, 1000]),
        (("Rulle", "Ark"), "Minsta order rulle 5 t, ark 1 t", [5000, 1000]),
        (("Rolls", "Sheets"), "Minimum 2 t for rolls and sheets", [2000, 2000]),
        (("Rolle", "Bogen"), "Mindestmenge 5 t je Rolle", [None, None]),
        (("Rulle", "Ark"), "Minsta order 5 t", [5000, 5000]),
        (("Lager", "Strecke"), "Mindestmenge Strecke 5 t, Lager 1 t", [1000, 5000]),
        (("Delivered", "FOB"), "Delivered: minimum 20 t", [20000, None]),
        (("FOB", "Delivered"), "Minimum for delivered prices 20 t", [None, None]),
        (("Delivered", "FOB"), "Minimum 20 t, delivered prices include freight", [20000, 20000]),
    ],
)
def test_smallest_orders_of_one_way(heads, text, minimums):
    assert [offer.minimum_kg for offer in read_two(heads, text)] == minimums


@pytest.mark.parametrize(
    ("heads", "text", "days"),
    [
        (("Rolls", "Sheets"), "Lead time 3 weeks, sheets 5 weeks", [(21, 21), (35, 35)]),
        (("Rolls", "Sheets"), "lead time 3 weeks, sheets 5", [(21, 21), (35, 35)]),
        (("Rolle", "Bogen"), "Lieferzeit Rollen 3 Wochen, Bogen 5 Wochen", [(21, 21), (35, 35)]),
        (("Bobine", "Feuilles"), "Délai bobines 3 semaines ; feuilles 5 semaines", [(21, 21), (35, 35)]),
        (("Bobina", "Hojas"), "Plazo de entrega para hojas 5 semanas", [None, (35, 35)]),
        (("Rulle", "Ark"), "Leveranstid rulle 3 veckor, ark 5 veckor", [(21, 21), (35, 35)]),
        (("Lager", "Strecke"), "Strecke: Mindestmenge 5 t, Lieferzeit 4 Wochen", [None, (28, 28)]),
        (("Lager", "Direkt"), "Direkt: minsta order 5 t, leveranstid 4 veckor", [None, (28, 28)]),
        (("FOB mill", "Delivered"), "Lead time 3 weeks ex works", [(21, 21), (21, 21)]),
        (("Rolle", "Bogen"), "Lieferzeit für Rollen und Bogen 3 Wochen", [(21, 21), (21, 21)]),
    ],
)
def test_lead_times_of_one_way(heads, text, days):
    assert [offer.lead_days for offer in read_two(heads, text)] == days


def test_last_days_of_one_way():
    rolls, sheets = read_two(
        ("Rolls", "Sheets"), "Prices for rolls valid until 31 December 2026, sheets until 31 January 2027"
    )
    assert (rolls.valid_until, sheets.valid_until) == (date(2026, 12, 31), date(2027, 1, 31))
    fob, delivered = read_two(("FOB", "Delivered"), "Delivered prices valid until 31 December 2026.")
    assert (fob.valid_until, delivered.valid_until) == (None, date(2026, 12, 31))
    for offer in read_two(("FOB", "Delivered"), "FOB and delivered prices valid until 31 December 2026."):
        assert offer.valid_until == date(2026, 12, 31)


def test_delivery_of_one_form():
    assert [offer.delivered for offer in read_two(("Rolle", "Bogen"), title="EUR/t; Bogen nur ab Werk")] == [
        None,
        False,
    ]
    assert [offer.delivered for offer in read_two(("Rolle", "Bogen"), title="EUR/t ab Werk")] == [False, False]


def test_forms_told_by_rows_and_headings():
    notes = [["Minimum: rolls 20 t, sheets 2 t"], ["Lead time for sheets 5 weeks"]]
    in_rows = lines([[*HEAD, "Form", "EUR/t"], [*GC1, "Rolls", 1180], [*GC1, "Sheets", 1250], *notes])
    below = lines([[*HEAD, "EUR/t"], ["Rolls"], [*GC1, 1180], ["Sheets"], [*GC1, 1250], *notes])
    for found in (in_rows, below):
        offers = [line.offer for line in found.values()]
        assert [(offer.minimum_kg, offer.lead_days) for offer in offers] == [(20000, None), (2000, (35, 35))]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Minimum: rolls 20 t, sheets 2 t", None),
        ("Minimum order for sheets 2 t", None),
        ("Rolls, minimum 2 t", 2000),
        ("Minimum 2 t (rolls 10 t)", None),
    ],
)
def test_a_form_that_is_not_told(text, kg):
    (line,) = lines([[*HEAD, "EUR/t"], [*GC1, 1180], [text]]).values()
    assert line.offer.minimum_kg == kg


@pytest.mark.parametrize(
    ("heads", "own"),
    [
        (("Rolls", "Sheets"), ("Min rolls (t)", "Min sheets (t)")), (("Rolle", "Bogen"), ("Mindestmenge Rolle (t)",
        "Mindestmenge Bogen (t)")),
        (("Bobine", "Feuilles"), ("Min. bobine (t)", "Min. feuilles (t)")), (("Bobina", "Hoja"), ("Mín. bobina (t)",
        "Mín. hoja (t)")),
        (("Rulle", "Ark"), ("Min. rulle (ton)", "Min. ark (ton)")), (("Strecke", "Lager"),
        ("Mindestmenge Strecke (t)", "Mindestmenge Lager (t)")),
        (("FOB", "Delivered"), ("Min FOB (t)", "Min delivered (t)")),
    ],
)  # fmt: skip
def test_columns_of_smallest_orders_of_one_way(heads, own):
    found = lines([["EUR/tonne"], [*HEAD, *heads, *own], [*GC1, 1180, 1250, 20, 2]])
    assert [line.offer.minimum_kg for line in found.values()] == [20000, 2000]
    one = lines([["EUR/tonne"], [*HEAD, *heads, "Min (t)"], [*GC1, 1180, 1250, 20]])
    assert [line.offer.minimum_kg for line in one.values()] == [20000, 20000]
    unknown = lines([[*HEAD, "EUR/tonne", *own], [*GC1, 1180, 20, 2]])
    assert [line.offer.minimum_kg for line in unknown.values()] == [None]


def test_columns_of_lead_times_of_one_form():
    found = lines(
        [
            ["USD/ST"],
            ["Board", "pt", "Rolls", "Sheets", "Lead rolls", "Lead sheets"],
            ["SBS", 18, 1190, 1250, "3 wks", "5 wks"],
        ]
    )
    assert [line.offer.lead_days for line in found.values()] == [(21, 21), (35, 35)]


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (("Rolls", "Sheets"), "EUR per tonne; rolls from stock, sheets 10 business days"),
        (("Rolle", "Bogen"), "EUR per tonne; Rollen ab Lager, Bogen 10 Arbeitstage"),
        (("Rulle", "Ark"), "EUR per tonne; rullar från lager, ark 10 arbetsdagar"),
    ],
)
def test_a_time_and_a_stock_are_lead_times_without_the_word(heads, note):
    assert [offer.lead_days for offer in read_two(heads, note)] == [(0, 0), (14, 14)]


def test_stock_in_sheets_is_no_lead_time_of_theirs():
    head = [*HEAD, "Size (mm)", "£ per 1000 sheets"]
    found = lines([["Sheeted stock, prices in GBP. Dispatch 5-7 working days."], head, [*GC1, "700 x 1000", 185]])
    assert [line.offer.lead_days for line in found.values()] == [(7, 10)]


@pytest.mark.parametrize(
    ("note", "delivered", "days", "minimums"),
    [
        ("Rolls - delivered, sheets - FOB mill", [True, False], [None, None], [None, None]),
        ("Rolls — delivered; sheets — FOB mill", [True, False], [None, None], [None, None]),
        ("Rolls and sheets - delivered", [True, True], [None, None], [None, None]),
        ("Rolls – 6 weeks, sheets – 2 weeks", [None, None], [(42, 42), (14, 14)], [None, None]),
        ("Rollen 6 Wochen, Bogen 2 Wochen", [None, None], [(42, 42), (14, 14)], [None, None]),
        ("Sheets - from stock, rolls - 6 weeks", [None, None], [(42, 42), (0, 0)], [None, None]),
        ("Rolls - 30 days, sheets - 60 days", [None, None], [None, None], [None, None]),
        ("Rolls - minimum 12 t, sheets - minimum 3 t", [None, None], [None, None], [12000, 3000]),
        ("Price list - sheets from stock, EUR per tonne", [None, None], [None, (0, 0)], [None, None]),
    ],
)
def test_a_dash_behind_a_way_tells_what_holds_for_it(note, delivered, days, minimums):
    found = read_two(("Rolls", "Sheets"), note)
    assert [offer.delivered for offer in found] == delivered
    assert [offer.lead_days for offer in found] == days
    assert [offer.minimum_kg for offer in found] == minimums


@pytest.mark.parametrize(
    ("head", "note", "titles"),
    [
        (
            ["Grade", "µm", "g/m²", "Price EUR/t"],
            "Lead time: rolls 3 weeks, sheets 5 weeks",
            ["Sheets on request", "Sheet prices on page 2", "We also sell sheets"],
        ),
        (
            ["Sorte", "µm", "g/m²", "Preis EUR/t"],
            "Lieferzeit: Rollen 3 Wochen, Formate 5 Wochen",
            ["Formate auf Anfrage", "Keine Formate unter 500 kg"],
        ),
    ],
)
def test_a_line_about_sheets_over_a_table_does_not_make_it_one_of_sheets(head, note, titles):
    for title in titles:
        (line,) = lines([["Tarnwell Board Inc"], [note], [title], head, [*GC1, 1180]]).values()
        assert (line.offer.lead_days, line.offer.below_kg, codes(line)) == (None, None, {"lead-time-unread"}), title


def test_nor_does_what_is_added_for_sheets():
    rows = [["Lead time: rolls 3 weeks, sheets 5 weeks"], ["For sheets add €60/t"], [*HEAD, "Price EUR/t"]]
    (line,) = lines([*rows, [*GC1, 1180]]).values()
    assert line.offer.lead_days is None
    assert codes(line) == {"lead-time-unread", "number-ambiguous"}


def test_a_title_that_is_nothing_but_a_form():
    note = "Lead time: rolls 3 weeks, sheets 5 weeks"
    days = {"Board in rolls": (21, 21), "II. Sheets": (35, 35), "Tarnwell Board Inc - Sheets, EUR per tonne": (35, 35)}
    for title, told in days.items():
        (line,) = lines([[note], [title], [*HEAD, "Price EUR/t"], [*GC1, 1180]]).values()
        assert line.offer.lead_days == told, title


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Lead time 3 weeks except sheets", [(21, 21), None]),
        ("Lieferzeit 3 Wochen außer Bogen", [(21, 21), None]),
        ("Lead time 3 weeks, except sheets 5 weeks", [(21, 21), (35, 35)]),
    ],
)
def test_what_is_excepted_from_a_lead_time_does_not_get_it(note, days):
    assert [offer.lead_days for offer in read_two(("Rolls", "Sheets"), note)] == days
