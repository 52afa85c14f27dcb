"""Currencies and units that a sentence gives some boards of a list, and from which it excepts them."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 240, 390, 1266], ["GD2", 300, 385, 9890], ["GT2", 320, 420, 10360], ["Graupappe", 500, 760, 690]]


def money(note, boards=BOARDS):
    """What each board is priced in: '?' where it is asked."""
    found = lines([["Ostwerk Karton AB"], [note], [], ["Board", "g/m²", "µm", "Price"], *boards])
    return [f"{one.offer.currency}" if str(one.state) == "accepted" else "?" for one in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for the recycled board, which we price in pounds sterling per tonne.",
        "Die Preise sind in Euro je Tonne, außer für den Recyclingkarton, den wir in GBP je Tonne berechnen.",
        "Nos prix sont en euros la tonne, sauf pour le carton recyclé, que nous facturons en livres sterling la tonne.",
        "Los precios son en euros por tonelada, salvo para el cartón reciclado, que facturamos en GBP por tonelada.",
        "Priserna är i euro per ton (1 000 kg), utom för returkartongen som vi prissätter i GBP per ton.",
    ],
)
def test_boards_excepted_have_the_other_currency(note):
    # Grey board is recycled too: whether it is meant is asked.
    assert money(note) == ["EUR", "GBP", "GBP", "?"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for our Kvist boards, which are priced in pounds sterling.",
        "Die Preise sind in Euro je Tonne, außer für unsere Kvist-Sorten, die wir in Pfund Sterling berechnen.",
        "Nos prix sont en euros la tonne, sauf pour la gamme Kvist, que nous facturons en livres sterling.",
        "Los precios son en euros por tonelada, salvo para la gama Kvist, que facturamos en libras esterlinas.",
        "Priserna är i euro per ton (1 000 kg), utom för Kvistserien som vi prissätter i brittiska pund.",
    ],
)
def test_an_exception_for_boards_that_cannot_be_told_is_asked(note):
    assert money(note) == ["?"] * 4


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except freight, which is in pounds sterling.",
        "Die Preise sind in Euro je Tonne, außer der Fracht, die in Pfund Sterling berechnet wird.",
        "Nos prix sont en euros la tonne, sauf le transport, facturé en livres sterling.",
        "Los precios son en euros por tonelada, salvo el flete, que se factura en libras esterlinas.",
        "Priserna är i euro per ton (1 000 kg), utom frakten som faktureras i brittiska pund.",
    ],
)
def test_what_is_no_board_excepts_none(note):
    assert money(note) == ["EUR"] * 4


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne. The two kraft items, which we buy in, are in US dollars (USD).",
        "Die Preise sind in Euro je Tonne. Kraftkarton kaufen wir ein und fakturieren ihn in US-Dollar (USD).",
        "Nos prix sont en euros la tonne. Le carton kraft est facturé en dollars américains (USD).",
        "Los precios son en euros por tonelada métrica. El cartón kraft se factura en dólares (USD).",
        "Priserna är i euro per ton (1 000 kg). Kraftkartongen fakturerar vi i US-dollar (USD).",
    ],
)
def test_a_sentence_of_its_own_tells_some_boards_apart(note):
    boards = [["GC1", 240, 390, 1266], ["CUK", 300, 385, 1180], ["GD2", 320, 420, 890]]
    assert money(note, boards) == ["EUR", "USD", "EUR"]


def test_a_code_is_of_no_other_board_of_its_grade():
    note = "Prices are in Swiss francs per tonne. Grade GT2 is bought in and invoiced in euro."
    assert money(note) == ["CHF", "CHF", "EUR", "CHF"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euro per tonne, except for our Kvist boards, which are priced per 1,000 sheets.",
        "Die Preise sind in Euro je Tonne, außer für unsere Kvist-Sorten, die je 1.000 Bogen kosten.",
        "Nos prix sont en euros la tonne, sauf pour la gamme Kvist, vendue aux 1 000 feuilles.",
    ],
)
def test_an_exception_from_the_unit_is_asked_likewise(note):
    assert money(note) == ["?"] * 4


@pytest.mark.parametrize(
    "note",
    [
        "All prices in SEK except our Kvist boards, in DKK.", "Alle Preise in SEK außer unseren Kvist-Sorten, in DKK",
        "Tous les prix en SEK sauf la gamme Kvist, en DKK", "Todos los precios en SEK salvo la gama Kvist, en DKK",
        "Alla priser i SEK utom Kvistserien, som är i DKK",
    ],
)  # fmt: skip
def test_an_exception_does_not_become_the_money_of_all(note):
    rows = [["Ostwerk Karton AB"], ["Board", "g/m²", "µm", "kr/1000 kg"], ["GC1", 240, 390, 12660], [note]]
    (line,) = lines(rows).values()
    assert line.offer.currency is None


HEAD = ["Grade", "Caliper (pt)", "Price USD"]
GRADES = [["SBS", 18, 1200], ["CUK", 20, 900], ["CRB", 24, 700]]


def bases(note, head=HEAD, rows=GRADES):
    """What each board is priced per: '?' where it is asked."""
    found = lines([["Acme Mill Inc."], head, *rows, [note]]).values()
    return [str(one.offer.basis) if str(one.state) == "accepted" else "?" for one in found]


def test_a_unit_of_something_else_is_not_that_of_the_board_beside_it():
    assert bases("Prices per short ton, CRB freight per tonne.") == ["short_ton"] * 3
    assert bases("Prices per short ton. We sell CRB cores by the tonne.") == ["short_ton", "short_ton", "?"]
    assert bases("Prices per short ton. We sell CRB by the tonne.") == ["short_ton", "short_ton", "tonne"]
    assert bases("Prices per short ton. CRB 24 pt per tonne.") == ["short_ton", "short_ton", "tonne"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices per short ton; until 2025 CRB was per tonne.", "Preise je Short Ton; bis 2025 war CRB je Tonne.",
        "Prix par tonne courte ; jusqu'en 2025 le CRB était à la tonne.",
        "Precios por tonelada corta; hasta 2025 el CRB era por tonelada métrica.",
        "Priser per short ton; till 2025 var CRB per 1000 kg.", "Prices per short ton, formerly per tonne.",
    ],
)  # fmt: skip
def test_what_prices_were_per_is_not_what_they_are_per(note):
    assert bases(note) == ["short_ton"] * 3


def test_a_word_for_the_past_that_is_of_something_else_takes_no_unit():
    assert bases("Prices were last reviewed in May and are per short ton.") == ["short_ton"] * 3


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Price EUR", "Prices per tonne, GD2 in CHF."), ("Preis EUR", "Preise je Tonne, GD2 in CHF."),
        ("Prix EUR", "Prix à la tonne, GD2 en CHF."), ("Precio EUR", "Precios por tonelada métrica, GD2 en CHF."),
        ("Pris EUR", "Priser per ton (1000 kg), GD2 i CHF."),
    ],
)  # fmt: skip
def test_money_of_one_board_contradicts_no_head_for_the_others(head, note):
    rows = [["GC1", 250, 1200], ["GC2", 300, 1100], ["GD2", 350, 800]]
    found = lines([["Ostwerk Karton AB"], ["Board", "g/m²", head], *rows, [note]]).values()
    assert [one.offer.currency for one in found] == ["EUR", "EUR", None]


def test_money_of_two_boards_leaves_that_of_a_third_open():
    head = [*HEAD[:2], "Price"]
    found = lines([["Acme Mill Inc."], head, *GRADES, ["SBS in USD, CRB in CAD, per short ton"]]).values()
    assert [one.offer.currency for one in found] == ["USD", None, "CAD"]


def test_a_smallest_order_behind_a_board_s_unit_takes_nothing_from_it():
    assert bases("SBS per short ton, minimum 20 tonnes.") == ["short_ton", "?", "?"]
    assert bases("A minimum applies, of 1 tonne.") == ["?"] * 3


@pytest.mark.parametrize(
    "note",
    [
        "Reels are invoiced per tonne, sheets per ream.",
        "Die Rollen werden je Tonne berechnet, die Bogen je Mille.",
        "Les bobines sont facturées à la tonne, les feuilles au mille.",
        "Las bobinas se facturan por tonelada métrica, las hojas por millar.",
        "Rullar faktureras per 1000 kg, ark per tusen.",
    ],
)
def test_a_form_s_unit_is_not_that_of_all_beside_another_that_is_not_read(note):
    assert bases(note) == ["?"] * 3


def test_boards_beside_a_form_s_unit_are_asked_where_no_form_is_told():
    note = "Prices per short ton, SBS in sheets per 1,000 sheets."
    assert bases(note) == ["?", "short_ton", "short_ton"]
    assert bases("Reels are invoiced per tonne.") == ["tonne"] * 3
    assert bases("Kartongen säljs per ton (1000 kg).") == ["tonne"] * 3
