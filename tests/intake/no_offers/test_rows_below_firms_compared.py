"""Rows in a comparison whose place for the firm names none: means, totals, last year's prices, a budget."""

import pytest

from tests.intake.sheets import lines

HEADS = {
    "en": ["Vendor", "Grade", "Caliper (pt)", "Wt lb/MSF", "Price USD/ST"],
    "de": ["Lieferant", "Sorte", "Stärke (µm)", "Gewicht (g/m²)", "Preis EUR/t"],
    "fr": ["Fournisseur", "Qualité", "Épaisseur (µm)", "Grammage (g/m²)", "Prix EUR/t"],
    "es": ["Proveedor", "Calidad", "Espesor (µm)", "Gramaje (g/m²)", "Precio EUR/t"],
    "sv": ["Leverantör", "Kvalitet", "Tjocklek (µm)", "Ytvikt (g/m²)", "Pris SEK/ton"],
}


def compared(language, label, price, firms=("Ostrow Board", "Kellmar Packaging")):
    """Two firms' prices of one board, and a row below them that begins with the label."""
    board = ("SBS", 20, 82) if language == "en" else ("GC1", 440, 290)
    rows = [HEADS[language], *([firm, *board, 1180 + 20 * at] for at, firm in enumerate(firms)), [label, *board, price]]
    return lines(rows)


@pytest.mark.parametrize(
    ("language", "label"),
    [
        ("en", "Last year"), ("en", "Average"), ("en", "Avg."), ("en", "Subtotal"), ("en", "Difference"),
        ("en", "Lowest"), ("en", "Budget"), ("en", "Index"), ("en", "Old price"), ("de", "Vorjahr"),
        ("de", "Vorjahrespreis"), ("de", "Durchschnitt"), ("de", "Summe"), ("de", "Alter Preis"), ("fr", "Moyenne"),
        ("fr", "Année précédente"), ("fr", "Écart"), ("fr", "Ancien prix"), ("es", "Promedio"), ("es", "Año anterior"),
        ("es", "Ahorro"), ("sv", "Förra året"), ("sv", "Genomsnitt"), ("sv", "Skillnad"),
    ],
)  # fmt: skip
def test_a_word_in_the_place_of_the_firm_is_no_offer(language, label):
    found = compared(language, label, 1111)
    assert {cell: line.state for cell, line in found.items()} == {"E2": "accepted", "E3": "accepted"}


@pytest.mark.parametrize(
    "label", ["Average Joe Paper", "Total Board", "Index Paper", "Budget Board GmbH", "Mean Board Inc"]
)
def test_a_firm_with_such_a_word_in_its_name_offers(label):
    line = compared("en", label, 1111)["E4"]
    assert (line.state, line.offer.vendor) == ("accepted", label)


def test_total_is_one_where_it_sums_up_and_asked_where_it_may_be_a_firm():
    assert sorted(compared("en", "Total", 2380)) == ["E2", "E3"]
    assert compared("en", "Total", 1211)["E4"].state == "question"


def test_who_quotes_all_of_a_list_is_a_firm_whatever_its_name():
    rows = [HEADS["en"], ["Total", "SBS", 20, 82, 1180], ["Total", "CUK", 21, 84, 1010]]
    assert {line.offer.vendor for line in lines(rows).values()} == {"Total"}


def test_a_mean_written_once_holds_for_the_boards_below_it():
    boards = [("SBS", 20, 82, 1180), ("CUK", 21, 84, 1010)]
    rows = [HEADS["en"]]
    for name in ("Ostrow Board", "Kellmar Packaging", "Average"):
        rows += [[name if not at else None, *board] for at, board in enumerate(boards)]
    found = lines(rows)
    assert sorted(found) == ["E2", "E3", "E4", "E5"]
    assert {line.offer.vendor for line in found.values()} == {"Ostrow Board", "Kellmar Packaging"}


def test_firms_named_for_boards_do_not_turn_a_table_on_its_side():
    firms = ("Ostrow Board", "Kellmar Packaging", "Tarnby Paperboard", "Velden Paper")
    assert sorted(compared("en", "Last year", 1111, firms)) == ["E2", "E3", "E4", "E5"]


@pytest.mark.parametrize("name", ["Delta", "Range", "Plan", "Ziel", "Current", "Target", "Gain", "Index"])
def test_a_firm_called_by_such_a_word_is_asked_about_where_it_stands_first(name):
    boards = [("SBS", 20, 82, 1180), ("CUK", 21, 84, 1010)]
    rows = [HEADS["en"], *([firm, *board] for firm in (name, "Ostrow Board") for board in boards)]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == ["question", "question", "accepted", "accepted"]
    assert found["E2"].offer.vendor == name


def test_one_written_once_above_the_others_keeps_all_its_rows():
    rows = [HEADS["en"], ["Delta", "SBS", 20, 82, 1180], [None, "CUK", 21, 84, 1010]]
    rows += [["Ostrow Board", "SBS", 20, 82, 1200], [None, "CUK", 21, 84, 1030]]
    assert sorted(lines(rows)) == ["E2", "E3", "E4", "E5"]


@pytest.mark.parametrize(("language", "label"), [("en", "Delta"), ("en", "Range"), ("de", "Spanne"), ("fr", "Gain")])
def test_what_firms_differ_by_is_no_offer(language, label):
    assert sorted(compared(language, label, 20)) == ["E2", "E3"]


@pytest.mark.parametrize(
    ("language", "label"), [("en", "Target"), ("de", "Plan"), ("fr", "Objectif"), ("es", "Objetivo"), ("sv", "Mål")]
)
def test_what_is_planned_is_no_offer_below_several_firms_and_asked_below_one(language, label):
    assert sorted(compared(language, label, 1111)) == ["E2", "E3"]
    assert compared(language, label, 1111, ("Ostrow Board",))["E3"].state == "question"


SBS, CUK = ("SBS", 20, 82), ("CUK", 21, 84)


@pytest.mark.parametrize(("label", "price"), [("Average", 1190), ("Lowest", 1180), ("Max", 1200)])
def test_so_is_a_mean_or_a_bound_above_the_firms(label, price):
    rows = [HEADS["en"], [label, *SBS, price], ["Ostrow Board", *SBS, 1180], ["Kellmar Packaging", *SBS, 1200]]
    assert sorted(lines(rows)) == ["E3", "E4"]
    by_firm = [["Average", *SBS, 1190], ["Average", *CUK, 1020], ["Ostrow Board", *SBS, 1180]]
    by_firm += [["Ostrow Board", *CUK, 1030], ["Kellmar Packaging", *SBS, 1200], ["Kellmar Packaging", *CUK, 1010]]
    assert sorted(lines([HEADS["en"], *by_firm])) == ["E4", "E5", "E6", "E7"]


def test_above_the_firms_a_word_whose_price_none_of_them_makes_is_asked_about():
    rows = [HEADS["en"], ["Delta", *SBS, 1150], ["Ostrow Board", *SBS, 1180], ["Kellmar Packaging", *SBS, 1200]]
    assert lines(rows)["E2"].state == "question"


def test_a_target_below_the_firms_of_each_board_is_none():
    rows = [HEADS["en"]]
    for board, price in ((SBS, 1180), (CUK, 1010)):
        rows += [["Ostrow", *board, price], ["Kellmar", *board, price + 20], ["Target", *board, price - 15]]
    assert sorted(lines(rows)) == ["E2", "E3", "E5", "E6"]
