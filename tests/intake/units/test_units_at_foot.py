"""The units of all columns in one row below the last figures: 'Units: | pt | lb/MSF | US$/short ton | weeks'."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis
from tracker.trade.offer import State

LISTS = {
    "en": (["Grade", "Weight", "Caliper", "Price", "Lead time"], "Units:", "weeks"),
    "de": (["Sorte", "Flächengewicht", "Dicke", "Preis", "Lieferzeit"], "Einheiten", "Wochen"),
    "fr": (["Qualité", "Grammage", "Épaisseur", "Prix", "Délai"], "Unités :", "semaines"),
    "es": (["Calidad", "Gramaje", "Calibre", "Precio", "Plazo"], "Unidades", "semanas"),
    "sv": (["Kvalitet", "Ytvikt", "Tjocklek", "Pris", "Leveranstid"], "Enheter", "veckor"),
}
BOARDS = [["GC2", 255, 410, 1159, 3], ["GD2", 330, 430, 781, 2]]


def metric(language, foot=(), gap=False, after=()):
    head, label, weeks = LISTS[language]
    units = list(foot) or [label, "g/m²", "µm", "EUR/t", weeks]
    return lines([["Riocastel"], [], head, *BOARDS, *([[]] if gap else []), units, *([[text] for text in after])])


@pytest.mark.parametrize("language", LISTS)
@pytest.mark.parametrize("gap", [False, True])
def test_each_column_is_in_the_unit_at_its_foot(language, gap):
    found = metric(language, gap=gap, after=["2027 list"])
    assert list(found) == ["D4", "D5"]
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    offer = found["D4"].offer
    assert (offer.grammage_gsm, offer.caliper_um, offer.basis, offer.currency) == (255, 410, Basis.TONNE, "EUR")
    assert offer.lead_days == (21, 21)


def test_units_of_pounds_and_points():
    head = ["Grade", "Caliper", "Weight", "Price", "Lead"]
    rows = [["Varnholt"], head, ["SBS C1S", 16, 67, 1207, 4], ["URB", 30, 106, 698, 2]]
    offer = lines([*rows, ["Units:", "pt", "lb/MSF", "US$/short ton", "weeks"]])["D3"].offer
    assert (offer.caliper_um, offer.basis, offer.currency) == (Decimal("406.4"), Basis.SHORT_TON, "USD")
    assert round(offer.grammage_gsm) == 327


def test_a_row_without_a_label_and_prices_across():
    rows = [["Riocastel"], ["Sorte", "Gewicht", "Rollen", "Bogen"], ["GC2", 255, 1159, 1239], ["GD2", 330, 781, 871]]
    found = lines([*rows, [None, "g/m²", "EUR/t", "EUR/t"]])
    assert {(line.offer.basis, line.state) for line in found.values()} == {(Basis.TONNE, State.ACCEPTED)}
    assert len(found) == 4


def test_a_unit_that_its_head_names_nothing_of_is_no_unit():
    found = metric("en", foot=["Units:", "µm", "g/m²", "EUR/t", "weeks"])
    assert {line.state for line in found.values()} == {State.QUESTION}


@pytest.mark.parametrize("head", [["Grade", "g/m²", "pt", "Price"], ["Grade", "g/m²", "µm", "Price USD"]])
def test_units_against_the_heads_are_never_taken(head):
    rows = [["Riocastel"], head, ["GC2", 255, 16 if "pt" in head else 410, 1159]]
    found = lines([*rows, ["Units:", "g/m²", "µm", "EUR/t"]])
    assert {line.state for line in found.values()} == {State.QUESTION}


def test_units_in_the_title_go_with_those_at_the_foot_or_are_asked_about():
    rows = [["Prices in EUR per tonne"], *[LISTS["en"][0], *BOARDS]]
    alike, other = (lines([*rows, ["Units:", "g/m²", "µm", unit, "weeks"]]) for unit in ("EUR/t", "USD/short ton"))
    assert {line.state for line in alike.values()} == {State.ACCEPTED}
    assert {line.state for line in other.values()} == {State.QUESTION}


def test_units_of_one_page_are_not_those_of_the_other():
    head = LISTS["en"][0]
    rows = [["Riocastel"], head, BOARDS[0], [], head, BOARDS[1], ["Units:", "g/m²", "µm", "EUR/t", "weeks"]]
    found = lines(rows)
    assert found["D6"].state is State.ACCEPTED
    assert found["D3"].offer.basis is None or found["D3"].offer.basis is Basis.TONNE


def test_a_row_of_units_above_further_prices_is_not_at_the_foot():
    rows = [["Riocastel"], LISTS["en"][0], BOARDS[0], ["Units:", "g/m²", "µm", "EUR/t", "weeks"], BOARDS[1]]
    assert all(line.offer.basis in (None, Basis.TONNE) for line in lines(rows).values())
    assert lines(rows)["D3"].state is State.QUESTION


def test_freight_and_smallest_orders_have_theirs():
    head = ["Grade", "Caliper", "Weight", "Price", "Freight", "Lead", "Min. order"]
    rows = [["Varnholt"], head, ["SBS C1S", 16, 67, 1207, 40, 4, 20000], ["URB", 30, 106, 698, 40, 2, 10000]]
    found = lines([*rows, ["Units", "pt", "lb/MSF", "US$/short ton", "US$/short ton", "weeks", "lb"]])
    offer = found["D3"].offer
    assert round(offer.minimum_kg) == 9072
    assert [(charge.price, charge.basis) for charge in offer.charges] == [(40, Basis.SHORT_TON)]
    assert {line.state for line in found.values()} == {State.ACCEPTED}


def test_a_foot_between_two_tables_is_of_the_one_above():
    head = LISTS["en"][0]
    rows = [["Riocastel"], head, *BOARDS, ["Units:", "g/m²", "µm", "EUR/t", "weeks"], [], head, *BOARDS]
    found = lines([*rows, ["Units:", "g/m²", "µm", "USD/t", "weeks"]])
    assert [line.offer.currency for line in found.values()] == ["EUR", "EUR", "USD", "USD"]
