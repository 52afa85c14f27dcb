"""Rolls and sheets, home and export, with a unit each: every column has its own, and a form alone is no unit."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.prices.units_of_parts import units_of_parts


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


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


ROW = ["CRB C1S", 16, 63]


@pytest.mark.parametrize("head", ["Roll price", "Sheet price", "Reel price"])
def test_below_a_title_s_unit_the_head_says_the_form(head):
    (line,) = lines([["US$ per short ton f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", head], [*ROW, 912]]).values()
    assert (str(line.state), line.offer.basis) == ("accepted", "short_ton")


@pytest.mark.parametrize("head", ["Price per roll", "US$/roll", "Price/roll"])
def test_with_per_it_says_what_prices_are_per(head):
    (line,) = lines([["US$ per short ton f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", head], [*ROW, 912]]).values()
    assert "basis-unknown" in codes(line)


def test_and_where_nothing_else_says_a_unit():
    (line,) = lines([["US$, f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", "Roll price"], [*ROW, 912]]).values()
    assert "basis-unknown" in codes(line)


def test_a_pack_is_the_smallest_order_and_no_unit_of_price():
    head = ["Board", "gsm", "Microns", "Sheet mm", "Price £", "Sold per", "Min. qty"]
    (line,) = lines([head, ["GC1", 230, 370, "640 x 900", 212.4, "1000 sheets", "1 pack"]]).values()
    assert (str(line.state), line.offer.basis, line.offer.minimum_kg) == ("accepted", "1000sheets", None)


US, SBS = ["Board", "pt", "lb/MSF"], ["SBS C1S", 18, 75]
METRIC, GC1 = ["g/m²", "µm"], ["GC1", 250, 400]


def units(rows):
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return {cell: f"{line.offer.currency}/{line.offer.basis.value}" for cell, line in found.items()}


@pytest.mark.parametrize(
    "title",
    ["Rolls in USD/ST, sheets in USD/MSF", "Prices USD/ST; sheets per MSF", "USD/ST for rolls and USD/MSF for sheets"],
)
def test_rolls_and_sheets_have_their_own_units(title):
    assert units([[title], [*US, "Rolls", "Sheets"], [*SBS, 1190, 52]]) == {"D3": "USD/short_ton", "E3": "USD/msf"}


@pytest.mark.parametrize(
    ("title", "rolls", "sheets"),
    [
        ("Rollen EUR/t, Bogen EUR/1000 Bogen", "Rolle", "Bogen 70x100"),
        ("Bobines EUR/t, formats EUR/1000 feuilles", "Bobines", "Formats 70x100"),
        ("Bobinas EUR/t y hojas EUR/1000 hojas", "Bobinas", "Hojas 70x100"),
        ("Rulle EUR/ton, ark EUR/1000 ark", "Rulle", "Ark 70x100"),
        ("Reels EUR/t, sheets EUR/1000 sheets", "Reels", "Sheets 70x100"),
    ],
)
def test_by_weight_and_by_the_thousand(title, rolls, sheets):
    found = units([[title], ["GC1", *METRIC, rolls, sheets], [*GC1, 1180, 215]])
    assert found == {"D3": "EUR/tonne", "E3": "EUR/1000sheets"}


@pytest.mark.parametrize(
    ("title", "home", "export"),
    [
        ("Preise in EUR/t, Ausfuhr in USD/t", "Inland", "Export"),
        ("Prices in EUR/t, export in USD/t", "Domestic", "Export"),
        ("Prix en EUR/t, export en USD/t", "France", "Export"),
        ("Precios en EUR/t, exportación en USD/t", "Nacional", "Exportación"),
        ("Inrikes EUR/ton, export USD/ton", "Inrikes", "Export"),
    ],
)
def test_home_and_export_have_their_own_currencies(title, home, export):
    found = units([[title], ["GC1", *METRIC, home, export], [*GC1, 1180, 1290]])
    assert found == {"D3": "EUR/tonne", "E3": "USD/tonne"}


@pytest.mark.parametrize(
    "title",
    [
        "Prices for rolls and sheets in EUR/t", "EUR/t, 1000 sheets per pallet", "EUR/t, rolls and sheets, ex works",
        "Preise für Rollen und Bogen EUR/t", "Prix bobines et formats EUR/t", "Precios bobinas y hojas EUR/t",
        "Priser rulle och ark EUR/t",
    ],
)  # fmt: skip
def test_one_unit_is_said_of_all(title):
    assert units_of_parts(title) == ()
    found = units([[title], ["GC1", *METRIC, "Rolls", "Sheets"], [*GC1, 1180, 1260]])
    assert found == {"D3": "EUR/tonne", "E3": "EUR/tonne"}


def test_a_column_of_neither_is_asked_about():
    found = lines([["Rolls in USD/ST, sheets in USD/MSF"], [*US, "Price"], [*SBS, 1190]])
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize(
    ("title", "rolls", "sheets"),
    [
        ("Rolls USD/ST, sheets USD/cwt", "Rolls", "Sheets"),
        ("Rollen USD/ST, Bogen USD/cwt", "Rollen", "Bogen"),
        ("Bobines USD/ST, formats USD/cwt", "Bobines", "Formats"),
        ("Bobinas USD/ST, hojas USD/cwt", "Bobinas", "Hojas"),
        ("Rulle USD/ST, ark USD/cwt", "Rulle", "Ark"),
    ],
)
def test_a_row_or_a_heading_may_say_which_form_it_is(title, rolls, sheets):
    own = [
        [title],
        ["Board", "Form", "pt", "lb/MSF", "Price"],
        ["SBS", rolls, 18, 75, 1190],
        ["SBS", sheets, 18, 75, 64],
    ]
    assert units(own) == {"E3": "USD/short_ton", "E4": "USD/cwt"}
    headed = [[title], [*US, "Price"], [rolls], [*SBS, 1190], [sheets], [*SBS, 64]]
    assert units(headed) == {"D4": "USD/short_ton", "D6": "USD/cwt"}


BOARD = ["GC2", 270, 415]
FORMS = ["Sorte", "g/m²", "µm", "Rollen", "Bogen 72 x 102 cm"]


def forms_priced(note, heads=FORMS, figures=(1060, 231), below=False):
    """Rolls and sheets of one board under a note, or above it."""
    table = [heads, [*BOARD, *figures]]
    return prices(lines([*table, [], [note]] if below else [[note], [], *table]))


@pytest.mark.parametrize("below", [False, True])
@pytest.mark.parametrize(
    ("note", "heads"),
    [
        ("Alle Preise EUR/t (Bogen je 1000 Bogen)", FORMS),
        ("Alle Preise EUR/t, Bogen je 1000 Bogen", FORMS),
        ("Rollen in EUR/t, Bogen in EUR/1000 Bogen", FORMS),
        ("All prices EUR per tonne (sheets: per 1000 sheets)", ["Grade", "gsm", "µm", "Web", "Sheets 72 x 102 cm"]),
        ("All prices EUR per tonne (sheets per M)", ["Grade", "gsm", "µm", "Rolls", "Sheets 72 x 102 cm"]),
        (
            "Tous les prix en EUR/t (feuilles : les 1000 feuilles)",
            ["Qualité", "g/m²", "µm", "Bobine", "Format 72 x 102"],
        ),
        ("Todos los precios EUR/t (hojas: por 1000 hojas)", ["Calidad", "g/m²", "µm", "Bobina", "Hoja 72 x 102"]),
        ("Alla priser EUR/ton (ark per 1000 ark)", ["Kvalitet", "g/m²", "µm", "Rulle", "Ark 72 x 102 cm"]),
    ],
)
def test_a_note_s_brackets_tell_the_unit_of_sheets(note, heads, below):
    assert [one[::2] for one in sorted(forms_priced(note, heads, below=below).values())] == [
        ("accepted", "tonne"), ("accepted", "1000sheets"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("note", "heads"),
    [
        ("All prices EUR per tonne except for sheets", ["Grade", "gsm", "µm", "Rolls", "Sheets 72 x 102 cm"]),
        ("All prices EUR per tonne, sheets excepted", ["Grade", "gsm", "µm", "Rolls", "Sheets 72 x 102 cm"]),
        ("Alle Preise EUR/t mit Ausnahme von Bogen", FORMS),
        ("Alle Preise EUR/t, Bogen ausgenommen", FORMS),
        ("Tous les prix en EUR/t sauf feuilles", ["Qualité", "g/m²", "µm", "Bobines", "Feuilles 72 x 102"]),
        ("Todos los precios EUR/t excepto hojas", ["Calidad", "g/m²", "µm", "Bobinas", "Hojas 72 x 102"]),
        ("Alla priser EUR/ton utom ark", ["Kvalitet", "g/m²", "µm", "Rullar", "Ark 72 x 102 cm"]),
    ],
)
def test_sheets_excepted_have_no_unit(note, heads):
    found = forms_priced(note, heads, figures=(1060, 1130))
    assert [(one[0], one[2]) for one in found.values()] == [("accepted", "tonne"), ("question", None)]


@pytest.mark.parametrize(
    ("note", "head", "rolls", "sheets"),
    [
        ("All prices EUR per tonne except sheets", "Form", "Reels", "Sheets"),
        ("All prices EUR per tonne, sheets excepted", "Form", "Reels", "Sheets"),
        ("Alle Preise EUR/t, Bogen ausgenommen", "Form", "Rollen", "Bogen"),
        ("Tous les prix en EUR/t sauf feuilles", "Forme", "Bobines", "Feuilles"),
        ("Todos los precios EUR/t excepto hojas", "Forma", "Bobinas", "Hojas"),
        ("Alla priser EUR/ton utom ark", "Form", "Rullar", "Ark"),
    ],
)
def test_sheets_excepted_have_none_where_a_row_or_a_heading_says_the_form_either(note, head, rolls, sheets):
    states = [("accepted", "tonne"), ("question", None)]
    rows = [[note], ["Board", *METRIC, head, "Price"], [*GC1, rolls, 1060], ["GC2", 270, 415, sheets, 231]]
    assert [one[::2] for one in prices(lines(rows)).values()] == states
    headed = [[note], ["Board", *METRIC, "Price"], [rolls], [*GC1, 1060], [sheets], ["GC2", 270, 415, 231]]
    assert [one[::2] for one in prices(lines(headed)).values()] == states


def test_rows_of_sheets_have_the_unit_of_all_where_nothing_excepts_them():
    rows = [["All prices EUR per tonne, ex works"], ["Board", *METRIC, "Form", "Price"]]
    rows += [[*GC1, "Reels", 1060], ["GC2", 270, 415, "Sheets", 1131]]
    assert {one[::2] for one in prices(lines(rows)).values()} == {("accepted", "tonne")}


@pytest.mark.parametrize("note", ["Preise EUR/t, Bogen inbegriffen", "Preise EUR/t (auch Bogen)", "Preise EUR/t"])
def test_sheets_named_and_not_excepted_have_the_unit_of_all(note):
    found = forms_priced(note, figures=(1060, 1130))
    assert {(one[0], one[2]) for one in found.values()} == {("accepted", "tonne")}


def test_a_form_s_figures_that_nothing_calls_prices_are_asked_and_not_dropped():
    assert {cell: one[0] for cell, one in forms_priced("Alle Preise EUR/t").items()}["D4"] == "question"


def test_sheets_counted_beside_a_price_are_none():
    heads = ["Sorte", "g/m²", "µm", "Preis EUR/t", "Bogen"]
    assert list(lines([heads, [*BOARD, 1060, 2400], ["GD2", 300, 395, 880, 1800]])) == ["D2", "D3"]


@pytest.mark.parametrize(
    ("title", "price"),
    [
        ("All prices USD per short ton except sheets", "USD/short_ton"),
        ("All prices USD per short ton except export", "USD/short_ton"),
        ("Alle Preise EUR je Tonne, Bogen ausgenommen", "EUR/tonne"),
    ],
)
def test_what_is_excepted_over_a_table_is_none_of_its_rows(title, price):
    rows = [[*US, "Price"], [*SBS, 1190]]
    assert units([[title], *rows]) == {"D3": price}
    assert units([["Rolls"], [title], *rows]) == {"D4": price}


def test_a_unit_of_sheets_below_the_exception_is_not_that_of_rolls():
    said = [["All prices USD per short ton except sheets"], ["Sheets USD per MSF"]]
    rows = [[*US, "Form", "Price"], [*SBS, "Rolls", 1190], [*SBS, "Sheets", 52]]
    assert units([*said, *rows]) == {"E4": "USD/short_ton", "E5": "USD/msf"}
    (line,) = lines([["Sheets"], said[0], [*US, "Price"], [*SBS, 52]]).values()
    assert codes(line) == {"basis-unknown"}
