"""'SBS C1S' in the corner over rows of delivery, forms or order sizes, calipers across: each block is a board."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

ROWS = {
    "en": [("Ex mill", "Delivered Halden"), ("Reels", "Sheets"), ("under 5 t", "5 t and over")],
    "de": [("ab Werk", "frei Haus"), ("Rollen", "Bogen"), ("unter 5 t", "ab 5 t")],
    "fr": [("départ usine", "franco"), ("Bobines", "Feuilles"), ("moins de 5 t", "à partir de 5 t")],
    "es": [("en fábrica", "entregado"), ("Bobinas", "Hojas"), ("menos de 5 t", "desde 5 t")],
    "sv": [("fritt fabrik", "fritt levererat"), ("Rullar", "Ark"), ("under 5 t", "från 5 t")],
}
EVERY = [(language, labels) for language, kinds in ROWS.items() for labels in kinds]
CALIPERS, WEIGHTS = ("405 µm", "455 µm", "520 µm"), ("250 g/m²", "280 g/m²", "320 g/m²")


def blocks(labels, corners=("GC1", "GD2"), weights=WEIGHTS, gap=()):
    rows = [["EUR per 1000 kg, 2027"], []]
    for step, corner in enumerate(corners):
        rows += [[corner, *CALIPERS], *([[None, *weights]] if weights else []), *gap]
        for at, label in enumerate(labels):
            rows += [[label, *(1300 - 300 * step + 40 * at - 10 * place for place in range(3))]]
        rows += [[]]
    return lines(rows)


@pytest.mark.parametrize(("language", "labels"), EVERY)
@pytest.mark.parametrize("weights", [WEIGHTS, ()], ids=["calipers and weights", "calipers"])
def test_the_corner_names_the_board_of_its_block(language, labels, weights):
    found = blocks(labels, weights=weights)
    assert [line.offer.grade for line in found.values()] == ["FBB"] * 6 + ["CRB"] * 6
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert [line.offer.caliper_um for line in found.values()] == [405, 455, 520] * 4


@pytest.mark.parametrize("corner", ["Tamarind 7", "Unbleached kraft", "like GC1", "Stiffness of GC1"])
def test_what_names_no_board_for_certain_is_asked_about(corner):
    found = blocks(("Ex mill", "Delivered"), corners=(corner, "GD2"))
    assert {line.state for line in list(found.values())[:6]} == {State.QUESTION}


def test_rows_that_name_boards_keep_their_own():
    found = blocks(("GC2", "GT2"), corners=("Board", "Board"))
    assert [line.offer.grade for line in found.values()] == [*["FBB"] * 3, *["CRB"] * 3] * 2


@pytest.mark.parametrize("label", ["Tamarind Bright", "Brown"])
def test_rows_of_unknown_names_are_asked_about(label):
    assert State.ACCEPTED not in {line.state for line in blocks((label, "Cedar")).values()}


@pytest.mark.parametrize("towns", [("Harlow Gap, IN", "Mill Ferry, TN"), ("Regina (SK)", "Calgary (AB)")])
def test_towns_of_states_are_where_the_board_goes(towns):
    found = blocks(towns)
    assert [line.offer.grade for line in found.values()] == ["FBB"] * 6 + ["CRB"] * 6
    assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    "names",
    [
        ("Nova PE", "Nova MB"),
        ("Aurora (PE)", "Borealis (PE)"),
        ("Tamarind", "Cedar"),
        ("Halden, grey", "Halden, white"),
    ],
)
def test_names_that_may_be_boards_are_asked_about(names):
    assert State.ACCEPTED not in {line.state for line in blocks(names).values()}


@pytest.mark.parametrize("names", ["Aurora ({})", "Borealis ({})", "Nordlys, {}"])
@pytest.mark.parametrize("letters", ["PE", "MD", "SC"])
def test_under_no_board_names_with_letters_are_boards(names, letters):
    boards = [[names.format(letters), 18, 1200], [f"Sunder ({letters})", 18, 1300]]
    titled = lines([["SBS cupstock"], [None, "Caliper (pt)", "Price USD/short ton"], *boards])
    assert [line.offer.product for line in titled.values()] == [board[0] for board in boards]
    untitled = lines([[None, "Caliper (pt)", "Price USD/short ton"], *boards])
    assert [line.state for line in untitled.values()] == [State.QUESTION] * 2


@pytest.mark.parametrize(("language", "labels"), EVERY)
def test_a_corner_that_names_the_board_and_its_measure_is_read_whole(language, labels):
    rows = [["Tannegg 2027"], ["GC1 250 g/m²", "EUR/t"], [labels[0], 1200], [labels[1], 1240]]
    found = lines(rows)
    assert [(line.offer.grade, line.offer.grammage_gsm) for line in found.values()] == [("FBB", 250)] * 2
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    rows[1][0] = "GC1"
    assert [line.state for line in lines(rows).values()] == [State.QUESTION] * 2


def test_so_it_is_over_towns_and_not_over_freight_to_them():
    rows = [["Tannegg 2027"], ["SBS 18 pt", "Price USD/ST"], ["Harlow Gap, IN", 1200], ["Mill Ferry, TN", 1240]]
    assert [line.offer.caliper_um for line in lines(rows).values()] == [Decimal("457.2")] * 2
    rows[2:] = [["Freight Indiana", 42], ["Freight Tennessee", 60]]
    assert not lines(rows)
