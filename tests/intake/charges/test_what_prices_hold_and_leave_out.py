"""What prices include and what they leave out, said in one sentence."""

import pytest

from tests.intake.charges.one_board import told


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices include freight ($42/ST) but not energy ($25/ST)"),
        ("en", "Prices include freight but not the energy surcharge ($25/ST)"),
        ("en", "Prices include freight ($42/ST) and exclude energy ($25/ST)"),
        ("en", "Prices exclude energy ($25/ST) but include freight ($42/ST)"),
        ("de", "Preise inkl. Fracht, jedoch ohne Energiezuschlag (25 EUR/t)"),
        ("de", "Preise enthalten Fracht, nicht aber den Energiezuschlag (25 EUR/t)"),
        ("fr", "Les prix comprennent le transport mais pas la surcharge énergie (25 EUR/t)"),
        ("es", "Los precios incluyen el transporte pero no el recargo energético (25 EUR/t)"),
        ("sv", "Priserna inkluderar frakt men inte energitillägg (25 EUR/t)"),
        ("sv", "Priser inkl. frakt men exkl. energitillägg (25 EUR/t)"),
    ],
)
def test_what_is_left_out_beside_the_freight_is_charged(language, note):
    assert told(language, note) == ([25], True)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices include energy ($25/ST) but not freight ($42/ST)"),
        ("de", "Preise inkl. Energiezuschlag, jedoch ohne Fracht (42 EUR/t)"),
        ("fr", "Les prix comprennent la surcharge énergie mais pas le transport (42 EUR/t)"),
        ("es", "Los precios incluyen el recargo energético pero no el transporte (42 EUR/t)"),
        ("sv", "Priserna inkluderar energitillägg men inte frakt (42 EUR/t)"),
    ],
)
def test_so_is_freight_beside_energy(language, note):
    assert told(language, note) == ([42], False)


@pytest.mark.parametrize("note", ["Prices include energy but not freight", "Prices exclude freight but include energy"])
def test_freight_left_out_without_its_amount_is_told(note):
    assert told("en", note) == ([], False)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices include freight but not energy"),
        ("de", "Preise inkl. Fracht, jedoch ohne Energiezuschlag"),
        ("sv", "Priserna inkluderar frakt men inte energitillägg"),
    ],
)
def test_a_surcharge_left_out_without_its_amount_leaves_the_cost_open(language, note):
    assert told(language, note) == ([0], True)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices include freight ($42/ST) and energy ($25/ST)"),
        ("en", "Prices include freight and energy"),
        ("de", "Preise inkl. Fracht und Energiezuschlag (25 EUR/t)"),
        ("sv", "Priserna inkluderar frakt (42 EUR/t) och energi (25 EUR/t)"),
    ],
)
def test_what_they_hold_both_is_not_charged(language, note):
    assert told(language, note) == ([], True)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices exclude freight ($42/ST)"),
        ("en", "Prices are net of freight ($42/ST)"),
        ("en", "Prices exclude freight, which is $42/ST"),
        ("en", "Prices do not include freight ($42/ST)"),
        ("de", "Preise ohne Fracht (42 EUR/t)"),
        ("fr", "Les prix ne comprennent pas le transport (42 EUR/t)"),
        ("es", "Los precios no incluyen el transporte (42 EUR/t)"),
        ("es", "Precios sin transporte (42 EUR/t)"),
        ("sv", "Priserna inkluderar inte frakt (42 EUR/t)"),
    ],
)
def test_one_thing_left_out_is_charged_as_several_are(language, note):
    assert told(language, note) == ([42], False)


@pytest.mark.parametrize(
    ("language", "note", "charges"),
    [
        ("fr", "Les prix ne comprennent ni le transport (42 EUR/t) ni l'énergie (25 EUR/t)", [42, 25]),
        ("fr", "Ne sont pas compris : le transport (42 EUR/t) et l'énergie (25 EUR/t)", [42, 25]),
        ("es", "Precios sin IVA (21 %) ni transporte (42 EUR/t)", [42]),
        ("es", "Los precios no incluyen ni transporte (42 EUR/t) ni recargo energético (25 EUR/t)", [42, 25]),
        ("sv", "Ej inkluderat: frakt (42 EUR/t) och energi (25 EUR/t)", [42, 25]),
    ],
)
def test_neither_and_nor_leave_out_both(language, note, charges):
    assert told(language, note)[0] == charges


@pytest.mark.parametrize(
    ("language", "note"),
    [("en", "Prices exclude VAT (8 %)"), ("en", "Prices exclude freight"), ("es", "Precios sin IVA (21 %)")],
)
def test_a_tax_or_a_freight_without_its_amount_is_no_charge(language, note):
    assert told(language, note)[0] == []


@pytest.mark.parametrize("note", ["Frakt: ingår ej", "Frakt: ej inkluderat", "Frakt ej inkluderad"])
def test_a_denial_behind_included_denies_it(note):
    assert told("sv", note) == ([], False)


@pytest.mark.parametrize("note", ["Prices include freight but not to Alaska", "Prices include freight but not for CRB"])
def test_where_they_do_not_hold_the_freight_it_is_not_told_of_all(note):
    assert told("en", note) == ([], None)
