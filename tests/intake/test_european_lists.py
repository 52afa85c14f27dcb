"""Price lists as German, French, Swedish and Finnish vendors send them: what once made the reader ask, miss or err.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import codes, lines


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


@pytest.mark.parametrize("head", ["Bulk cm3/g", "Volumen cm³/g", "cm³/g", "Dichte g/cm3", "kg/m3", "Vol. [cm³/g]"])
def test_bulk_and_density_are_no_basis_weight(head):
    found = lines([["EUR/t"], ["Sorte", "g/m²", head, "µm", "EUR/t"], ["GC1", 240, 1.69, 405, 1290]])
    assert prices(found) == {"E3": ("accepted", "1290", "tonne")}
    assert found["E3"].offer.grammage_gsm == 240


@pytest.mark.parametrize("head", ["kg/m²", "Weight kg/m2", "Flächengewicht (kg/qm)"])
def test_greyboard_weighed_in_kilograms_a_square_metre(head):
    found = lines([["EUR/t"], ["Board", "mm", head, "EUR/t"], ["Greyboard", 1.4, 0.94, 630]])
    assert prices(found) == {"D3": ("accepted", "630", "tonne")}
    assert found["D3"].offer.grammage_gsm == 940
    assert not codes(found["D3"])


def test_rolls_and_sheets_over_two_prices_say_the_form_and_not_the_basis():
    found = lines(
        [["Preise in €/t frei Haus"], ["Sorte", "g/m²", "µm", "Rollen", "Bogen"], ["GD2", 300, 395, 880, 960]]
    )
    assert prices(found) == {"D3": ("accepted", "880", "tonne"), "E3": ("accepted", "960", "tonne")}


@pytest.mark.parametrize(
    ("roll", "sheets"),
    [("Preis Rolle", "Preis Bogen"), ("Rollenpreis", "Bogenpreis"), ("Pris rulle", "Pris ark")],
)
def test_prices_of_rolls_and_of_sheets_on_their_own_units_are_two_offers(roll, sheets):
    rows = [
        ["Sorte", "g/m²", "µm", roll, sheets, "Format cm"],
        [None, None, None, "EUR/t", "EUR/1000 Bogen"],
        ["GD2", 300, 395, 880, 238, "70 x 100"],
    ]
    assert prices(lines(rows)) == {"D3": ("accepted", "880", "tonne"), "E3": ("accepted", "238", "1000sheets")}


def test_roll_and_sheet_below_price_per_are_what_the_prices_are_per():
    rows = [
        ["EUR"],
        ["Sorte", "g/m²", "µm", "Preis je", "Preis je"],
        [None, None, None, "Rolle", "Bogen"],
        ["GD2", 300, 395, 880, 0.2],
    ]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


def test_prices_to_zones_across_are_offers_where_the_table_describes_boards():
    rows = [
        ["GD2 Chromoduplexkarton, EUR/t frei Haus"],
        [],
        ["g/m²", "Dicke µm", "Zone 1 (D)", "Zone 2 (A/CH)"],
        [230, 300, 905, 930],
    ]
    assert prices(lines(rows)) == {"C4": ("accepted", "905", "tonne"), "D4": ("accepted", "930", "tonne")}


def test_freight_to_zones_across_is_no_offer():
    rows = [["GD2, EUR/t ab Werk"], [], ["Menge", "Zone 1", "Zone 2"], ["bis 5 t", 95, 110], ["ab 5 t", 60, 75]]
    assert not lines(rows)


def test_a_note_on_struck_prices_leaves_the_list_standing():
    rows = [
        ["Preisliste 8, EUR/t"],
        ["Durchgestrichene Preise sind nicht mehr gültig."],
        ["Sorte", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert prices(lines(rows)) == {"D4": ("accepted", "1320", "tonne")}


def test_the_swedish_short_word_for_from_is_no_franc():
    rows = [
        ["SEK/kg"],
        ["Kvalitet", "g/m2", "µm", "500-1 999 kg", "fr 2 000 kg"],
        ["GC1", 240, 405, "17,20", "16,10"],
    ]
    found = lines(rows)
    assert prices(found) == {"D3": ("accepted", "17.20", "kg"), "E3": ("accepted", "16.10", "kg")}
    assert (found["E3"].offer.from_kg, found["E3"].offer.below_kg) == (2000, None)


def test_the_day_a_french_list_begins_is_not_its_last():
    rows = [
        ["Tarif applicable au 1er octobre 2026, EUR/t"],
        ["Sorte", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert lines(rows)["D3"].offer.valid_until is None


@pytest.mark.parametrize(
    ("said", "kilograms"),
    [("Min order 3 t/item", 3000), ("Mindestabnahme 2 t/Sorte", 2000), ("Minsta order 2 ton/kvalitet", 2000)],
)
def test_a_smallest_order_for_each_item(said, kilograms):
    rows = [["EUR/t"], [said], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]]
    assert lines(rows)["D4"].offer.minimum_kg == kilograms


@pytest.mark.parametrize("said", ["Lev.tid: 3 veckor", "Liefertermin: 3 Wochen", "Levtid 3 v"])
def test_other_words_for_lead_time(said):
    rows = [["EUR/t"], [said], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]]
    offer = lines(rows)["D4"].offer
    assert tuple(offer.lead_days) == (21, 21)


def test_weeks_counted_from_the_works_do_not_contradict_delivered_prices():
    rows = [
        ["Prices EUR/t, DAP your plant"],
        ["Lead time: 5-6 weeks ex mill"],
        ["Grade", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert lines(rows)["D4"].offer.delivered is True


@pytest.mark.parametrize(
    "name",
    [
        "Papeteries Lorvain",
        "Kartonfabrik Sonthal",
        "Cartiera Valdorso",
        "Kartonska Dolna d.o.o.",
        "Feldmoser Papiergroßhandel",
    ],
)
def test_firms_that_say_first_what_they_are_and_forms_of_other_countries(name):
    found = lines([[name], ["EUR/t"], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]])
    assert found["D4"].offer.vendor == name


@pytest.mark.parametrize("title", ["Vereinigte Preise", "Papierfabrik ab Werk", "Kartonfabrik"])
def test_titles_that_are_no_firms(title):
    found = lines([[title], ["EUR/t"], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]])
    assert found["D4"].offer.vendor is None


def test_measures_under_a_heading_belong_to_the_prices_under_it():
    rows = [
        ["€/t frei Haus"],
        [],
        ["Grammatur", "GC1", None, "GD2", None],
        ["g/m²", "Dicke µm", "€/t", "Dicke µm", "€/t"],
        [250, 420, 1310, 330, 895],
        [300, 510, 1290, 395, 885],
    ]
    found = lines(rows)
    assert prices(found)["E5"] == ("accepted", "895", "tonne")
    assert [(found[cell].offer.grade, found[cell].offer.caliper_um) for cell in ("C5", "E5", "C6", "E6")] == [
        ("FBB", 420),
        ("CRB", 330),
        ("FBB", 510),
        ("CRB", 395),
    ]


def test_lead_times_under_a_heading_belong_to_the_prices_under_it():
    rows = [
        ["€/t"],
        [],
        ["Sorte", "g/m²", "Rollen", None, "Bogen", None],
        [None, None, "€/t", "Lieferzeit", "€/t", "Lieferzeit"],
        ["GC1", 250, 1310, "3 Wochen", 1390, "4 Wochen"],
    ]
    found = lines(rows)
    assert {cell: line.offer.lead_days for cell, line in found.items()} == {"C5": (21, 21), "E5": (28, 28)}


@pytest.mark.parametrize("same", ['"', "dto.", "id.", "d:o", '- " -', "idem"])
def test_a_ditto_says_what_the_cell_above_it_says(same):
    rows = [["€/t"], ["Sorte", "g/m²", "µm", "€/t"], ["GC1", 240, 405, 1320], [same, 270, 460, 1310]]
    found = lines(rows)
    assert (found["D4"].offer.grade, found["D4"].offer.product) == ("FBB", "GC1")
    assert prices(found)["D4"] == ("accepted", "1310", "tonne")


def test_a_list_called_old_above_a_new_one_offers_nothing():
    board = ["GC1", 240, 405]
    rows = [
        ["Preisliste alt (bis 31.10.2026)"],
        ["Sorte", "g/m²", "µm", "€/t"],
        [*board, 1210],
        [],
        ["Preisliste neu (ab 01.11.2026)"],
        ["Sorte", "g/m²", "µm", "€/t"],
        [*board, 1290],
    ]
    assert prices(lines(rows)) == {"D7": ("accepted", "1290", "tonne")}


@pytest.mark.parametrize("second", [1310, 1240])
def test_two_boards_of_one_grade_under_headings_are_two_offers(second):
    rows = [["€/t"], [], ["g/m²", "GC1", None, "GC2", None], [None, "€/t", "Lieferzeit", "€/t", "Lieferzeit"]]
    found = lines([*rows, [250, 1310, "3 Wochen", second, "4 Wochen"], [300, 1300, "3 Wochen", 1230, "4 Wochen"]])
    assert prices(found)["B5"] == ("accepted", "1310", "tonne")
    assert prices(found)["D5"] == ("accepted", str(second), "tonne")


def test_numbers_that_count_the_prices_are_no_order_sizes():
    rows = [
        ["Sorte", "g/m²", "µm", "Preis 1 (ab 1 t)", "Preis 2 (ab 5 t)"],
        ["GC1", 240, 405, "1.390,00 €/t", "1.340,00 €/t"],
    ]
    found = lines(rows)
    assert [(found[cell].offer.from_kg, found[cell].offer.below_kg) for cell in ("D2", "E2")] == [
        (1000, 5000),
        (5000, None),
    ]


def test_a_toll_beside_the_price_is_part_of_the_delivered_cost():
    rows = [["€/t ab Werk"], ["Sorte", "g/m²", "µm", "€/t", "Maut €/t", "Fracht €/t"], ["GC1", 240, 405, 1240, 6, 45]]
    found = lines(rows)
    assert set(found) == {"D3"}
    assert sorted(charge.price for charge in found["D3"].offer.charges) == [6, 45]


@pytest.mark.parametrize(
    ("said", "last"),
    [
        ("Preise gültig vom 01.01. bis 31.03.2027", "2027-03-31"),
        ("Preise gültig bis Ende 2026", "2026-12-31"),
        ("prix valables jusqu'à fin 2026", "2026-12-31"),
        ("Offert t.o.m. 2027-01-31, fritt kund", "2027-01-31"),
        ("Prislista 2027:1, gäller 2027-01-01 – 2027-03-31", "2027-03-31"),
    ],
)
def test_last_days_of_validity(said, last):
    rows = [["€/t"], [said], ["Sorte", "g/m²", "µm", "€/t"], ["GC1", 240, 405, 1240]]
    assert str(lines(rows)["D4"].offer.valid_until) == last


def test_a_word_that_ends_in_x_is_no_sheet_size():
    found = lines([["€/t"], ["Sorte", "€/t"], ["GT2 Triplex 345 µm 250 g/m²", 955]])
    assert (found["B3"].offer.caliper_um, found["B3"].offer.grammage_gsm) == (345, 250)
    assert prices(found)["B3"] == ("accepted", "955", "tonne")


def test_one_price_on_two_bases_is_one_offer_whatever_else_a_head_says():
    rows = [["Sorte", "g/m²", "µm", "€/t", "Ihr Objektpreis EUR/1000 m²"], ["GC1", 250, 415, 1165, 291.25]]
    found = lines(rows)
    assert set(found) == {"D2"}
    assert found["D2"].offer.source.also == ("E2",)
