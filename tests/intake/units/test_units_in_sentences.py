"""What prices are per, said in sentences: of each form by turns, with no word for 'per', of lines from here down."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysBasis
from tracker.trade.quantities import WeightUnit

BOARD = ["GC2", 300, 490]


def by_form(note, forms=("Reel", "Sheet"), head="Price (GBP)"):
    """Unit of a price for reels and of one for sheets below a note."""
    rows = [["Thornleigh Board Ltd"], [note], [None], ["Board", "g/m²", "µm", "Form", "Size (mm)", head]]
    rows += [[*BOARD, forms[0], "1020 wide", 1045], [*BOARD, forms[1], "720 x 1020", 246.6]]
    found = lines(rows)
    return {cell: (str(line.state), line.offer.basis) for cell, line in found.items()}


@pytest.mark.parametrize(
    "note",
    [
        "Reels are priced per tonne whereas sheets are priced per thousand sheets.",
        "Prices are per tonne for reels and per 1,000 sheets for sheets.",
        "For all on this list the reels are priced per tonne and the sheets per 1,000 sheets unless agreed otherwise.",
        "Where board is in reels the price is per tonne; where it is in sheets it is per 1,000 sheets.",
        "All prices per tonne. Sheets per 1,000 sheets.",
        "Reel prices are by the tonne, sheet prices by the thousand sheets.",
        "Everything per tonne apart from sheets, which are per 1,000.",
    ],
)
def test_each_form_has_the_unit_that_stands_beside_it(note):
    assert by_form(note) == {"F5": ("accepted", "tonne"), "F6": ("accepted", "1000sheets")}


@pytest.mark.parametrize(
    ("note", "forms", "head"),
    [
        ("Die Preise gelten bei Rollen je Tonne und bei Formaten je 1.000 Bogen.", ("Rolle", "Format"), "Preis (EUR)"),
        ("Prix à la tonne en bobines et aux 1 000 feuilles en formats.", ("Bobine", "Format"), "Prix (EUR)"),
        ("Precios por tonelada en bobinas y por mil hojas en pliegos.", ("Bobina", "Pliego"), "Precio (EUR)"),
        ("Priset gäller per ton för rulle och per 1 000 ark för ark.", ("Rulle", "Ark"), "Pris (EUR)"),
    ],
)  # fmt: skip
def test_so_it_is_in_every_language(note, forms, head):
    assert {unit for _, unit in by_form(note, forms, head).values()} == {"tonne", "1000sheets"}


@pytest.mark.parametrize(
    ("note", "unit"),
    [
        ("Prices USD per short ton; for sheets per MSF.", "msf"),
        ("Reels are priced in USD per short ton whereas sheets are priced (in USD) per MSF", "msf"),
        ("Prices in USD per short ton, for sheets per 1,000 sheets", "1000sheets"),
        ("USD per short ton for reels and per cwt for sheets packed flat", "cwt"),
        ("Prices in USD per short ton, weights in lb per MSF, sheets as rolls", "short_ton"),
    ],
)
def test_the_money_said_once_is_that_of_both_forms(note, unit):
    rows = [[note], [], ["Board", "pt", "lb/MSF", "Form", "Size (in.)", "Price"]]
    rows += [["SBS", 18, 77, "Reel", "40 wide", 1190], ["SBS", 18, 77, "Sheet", "28 x 40", 60]]
    found = [(line.offer.currency, line.offer.basis) for line in lines(rows).values()]
    assert found == [("USD", "short_ton"), ("USD", unit)]


@pytest.mark.parametrize(
    "note",
    [
        "Prices in EUR per tonne. Sheets are packed per 1,000 sheets.",
        "Prices in EUR per tonne, sheets packed per 1,000 sheets.",
        "Preise in EUR je Tonne. Bogen werden je 1000 Bogen verpackt.",
        "Prix en EUR à la tonne. Feuilles emballées par 1000 feuilles.",
        "Precios en EUR por tonelada; las hojas se embalan por millar de hojas.",
        "Priser i EUR per ton, ark packas per 1000 ark.",
        "Prices in EUR per tonne. Sheets: one label per sheet.",
        "Prices in EUR per tonne; rolls are weighed per lb and sheets counted.",
    ],
)
def test_how_a_form_is_packed_is_no_unit_of_its_price(note):
    rows = [[note], [], ["Board", "g/m²", "µm", "Form", "Size (mm)", "Price"]]
    rows += [[*BOARD, "Reel", "1020 wide", 1045], [*BOARD, "Sheet", "720 x 1020", 1110]]
    found = lines(rows).values()
    assert {(line.state, line.offer.currency, line.offer.basis) for line in found} == {("accepted", "EUR", "tonne")}


@pytest.mark.parametrize(
    "note",
    [
        "All prices per tonne. Sheets on request.",
        "All prices per tonne. Sheets are sold in full pallets only.",
        "All prices per tonne. Weights of sheets in g/m².",
    ],
)
def test_a_sentence_about_sheets_without_a_unit_leaves_theirs(note):
    assert {unit for _, unit in by_form(note).values()} == {"tonne"}


def of_sheet(note, head="Price"):
    rows = [["Thornleigh Board Ltd"], [note], [None], ["Board", "g/m²", "µm", "Size (mm)", head]]
    rows += [[*BOARD, "720 x 1020", 246.6], ["GD2", 300, 400, "700 x 1000", 165]]
    return {(line.offer.currency, line.offer.basis) for line in lines(rows).values()}


@pytest.mark.parametrize(
    ("note", "unit"),
    [
        ("Angegeben ist, was tausend Bogen in Euro kosten.", ("EUR", "1000sheets")),
        ("Bogenpreise in Euro, jeweils für 1.000 Bogen.", ("EUR", "1000sheets")),
        ("Le prix indiqué est celui de mille feuilles, en euros.", ("EUR", "1000sheets")),
        ("Cada precio corresponde a una hoja suelta y está en euros.", ("EUR", "sheet")),
        ("El importe está en euros y es el de cada mil hojas.", ("EUR", "1000sheets")),
        ("Priset avser tusen ark och anges i svenska kronor.", ("SEK", "1000sheets")),
        ("All amounts are in U.S. funds, for a short ton of 2,000 lb, freight included.", ("USD", "short_ton")),
    ],
)
def test_a_unit_is_heard_in_a_sentence_about_prices_without_a_word_for_per(note, unit):
    assert of_sheet(note) == {unit}


@pytest.mark.parametrize(
    "note",
    [
        "The price of a sheet depends on its size; prices in EUR.",
        "A pallet holds one thousand sheets. Prices in EUR.",
        "Oferta de cartoncillo en hojas, precios en EUR.",
    ],
)
def test_what_sheets_are_or_how_they_are_packed_is_no_unit(note):
    assert of_sheet(note) == {("EUR", None)}


def test_weights_per_three_thousand_square_feet_are_not_those_per_thousand():
    assert weight_units("Basis weights are pounds for three thousand square feet.") == (WeightUnit.LB_3000FT2,)
    assert weight_units("Basis weights are pounds per thousand square feet.") == (WeightUnit.LB_MSF,)


def test_the_unit_of_weights_is_none_of_prices_where_no_comma_parts_them():
    note = "Basis weights per 1,000 sq ft. Rolls are priced in USD per short ton"
    rows = [[note], ["Board", "Caliper (pt)", "Weight", "Price"], ["SBS", 18, 76, 1215]]
    (line,) = lines(rows).values()
    assert (line.offer.currency, line.offer.basis) == ("USD", "short_ton")


@pytest.mark.parametrize(
    ("said", "head", "bases"),
    [
        ("From here down prices are US$ per MSF", "Price USD/ST", ["short_ton", "msf"]),
        ("Ab hier Preise in USD je 1000 m²", "Preis USD/ST", ["short_ton", "1000m2"]),
    ],
)
def test_a_line_among_the_rows_gives_those_below_it_another_unit(said, head, bases):
    rows = [["Board", "Caliper (pt)", "lb/MSF", head], ["SBS", 16, 68, 1215], [said], ["CCNB", 16, 63, 28.35]]
    assert [line.offer.basis for line in lines(rows).values()] == bases


def test_a_heading_that_only_names_another_unit_contradicts_the_head():
    rows = [["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"], ["SBS", 16, 68, 1215], ["Recycled, per tonne"]]
    found = list(lines([*rows, ["CCNB", 16, 63, 985]]).values())
    assert codes(found[-1]) == {"basis-unknown"}


@pytest.mark.parametrize(
    ("note", "price"),
    [
        ("Preis A gilt für Aufträge unter 10 t, Preis B für Aufträge ab 10 t.", "Preis"),
        ("Price A is for orders below 10 t, price B for 10 t and over.", "Price"),
        ("Le prix A vaut pour moins de 10 t, le prix B à partir de 10 t.", "Prix"),
    ],
)
def test_a_sentence_tells_what_prices_a_and_b_are_for(note, price):
    rows = [["Board", "g/m²", "µm", f"{price} A", f"{price} B"], [None, None, None, "€/t", "€/t"]]
    found = lines([*rows, ["GD2", 300, 400, 742, 704], ["GC2", 300, 490, 936, 898], [None], [note]])
    told = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert told[:2] == [(None, 10_000), (10_000, None)]


def test_so_it_may_tell_their_terms_of_delivery():
    rows = [["Sorte", "g/m²", "µm", "Preis A EUR/t", "Preis B EUR/t"], ["GD2", 300, 400, 742, 790]]
    found = lines([*rows, ["GC2", 300, 490, 936, 990], [None], ["Preis A gilt ab Werk, Preis B frei Haus."]])
    assert [line.offer.delivered for line in found.values()] == [False, True] * 2


@pytest.mark.parametrize(
    ("note", "currency"),
    [
        ("We are sorry that sterling cheques are not taken.", "EUR"),
        ("I Sverige fakturerar vi i svenska kronor efter en egen lista.", "EUR"),
        ("Vid export fakturerar vi i dollar efter överenskommelse.", "EUR"),
        ("Prices are in US dollars.", None),
    ],
)
def test_money_of_cheques_invoices_and_other_lists_is_none_of_the_prices(note, currency):
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["GC2", 300, 490, 936], [None], [note]]
    assert {line.offer.currency for line in lines(rows).values()} == {currency}


@pytest.mark.parametrize(
    ("note", "currency", "basis"),
    [
        ("USD per short ton payable by check within 30 days.", "USD", "short_ton"),
        ("USD/ST, wire transfer, 30 days.", "USD", "short_ton"),
        ("In USD, bank account 40771, per short ton.", "USD", "short_ton"),
        ("EUR/t, Zahlung per Überweisung innerhalb 30 Tagen.", "EUR", "tonne"),
        ("EUR/t, paiement par virement à 30 jours.", "EUR", "tonne"),
        ("EUR por tonelada, transferencia 30 días.", "EUR", "tonne"),
        ("SEK per ton, kort leveranstid 3 veckor.", "SEK", "tonne"),
        ("Kort lista 2026: SEK per ton", "SEK", "tonne"),
        ("EUR/t, no sterling cheques", "EUR", "tonne"),
        ("EUR/t, cheques in sterling, 30 days", "EUR", "tonne"),
        ("Sterling cheques, drawn on London, 30 days", None, None),
        ("US dollar cheques are cleared within 10 days", None, None),
        ("Vi tar inte betalt i SEK med kort", None, None),
    ],
)
def test_means_of_payment_beside_the_unit_of_prices_take_nothing_from_it(note, currency, basis):
    rows = [["Board", "g/m²", "µm", "Price"], ["GC2", 300, 490, 936], [None], [note]]
    assert [(line.offer.currency, line.offer.basis) for line in lines(rows).values()] == [(currency, basis)]


@pytest.mark.parametrize(
    ("note", "currency", "basis"),
    [
        ("Prices in USD per short ton, sheets on separate price list.", "USD", "short_ton"),
        ("Prices in USD per short ton (another list holds sheets).", "USD", "short_ton"),
        ("This is a separate list in USD per short ton.", "USD", "short_ton"),
        ("Prices are in USD per short ton as per separate price list.", "USD", "short_ton"),
        ("USD/ST, sheets by their own list", "USD", "short_ton"),
        ("Preise in EUR je Tonne, Formate siehe separate Preisliste.", "EUR", "tonne"),
        ("Prix en EUR par tonne, formats : voir tarif à part.", "EUR", "tonne"),
        ("Precios en EUR por tonelada, formatos en tarifa aparte.", "EUR", "tonne"),
        ("Priser i SEK per ton, ark se separat prislista.", "SEK", "tonne"),
        ("In Sweden, by a list of their own, prices are in SEK per tonne", None, None),
        ("Prices for Sweden in SEK per tonne, by its own list", None, None),
        ("Exports in USD per tonne, by a separate list", None, None),
        ("Stock lots have their own list in USD per cwt", None, None),
    ],
)
def test_another_list_takes_from_prices_only_what_is_said_of_it(note, currency, basis):
    rows = [["Board", "g/m²", "µm", "Price"], ["GC2", 300, 490, 936], [None], [note]]
    assert [(line.offer.currency, line.offer.basis) for line in lines(rows).values()] == [(currency, basis)]


@pytest.mark.parametrize(
    ("note", "currency"),
    [
        ("Invoice currency: CAD", None),
        ("All invoices are in Canadian dollars.", None),
        ("We invoice in CAD.", None),
        ("Rechnungsstellung ausschließlich in CAD.", None),
        ("Vi fakturerar i CAD.", None),
        ("Invoices are in USD.", "USD"),
        ("Canadian customers are invoiced in CAD.", "USD"),
        ("We can invoice in CAD.", "USD"),
        ("Invoices in CAD are issued by our agents.", "USD"),
        ("Las facturas en CAD se emiten por separado.", "USD"),
        ("All invoices are issued in CAD.", None),
        ("Facturation en CAD pour les clients au Canada.", "USD"),
        ("Facturation possible en CAD.", "USD"),
        ("Fakturering i CAD möjlig.", "USD"),
    ],
)
@pytest.mark.parametrize("head", ["Price USD/ST", "Price US$/ST"])
def test_invoices_are_in_the_money_of_prices_unless_they_are_those_of_some_buyers(head, note, currency):
    rows = [["Board", "Caliper (pt)", "lb/MSF", head], ["SBS", 16, 68, 1215], [None], [note]]
    assert {line.offer.currency for line in lines(rows).values()} == {currency}


def test_the_money_that_some_are_invoiced_in_does_not_settle_whose_dollars_prices_are_in():
    rows = [["Board", "Caliper (pt)", "lb/MSF", "Price $/ST"], ["SBS", 16, 68, 1215]]
    found = lines([*rows, [None], ["Canadian customers are invoiced in CAD."]])
    assert [(line.offer.currency, codes(line)) for line in found.values()] == [(None, {"currency-unknown"})]


@pytest.mark.parametrize(
    ("note", "basis"),
    [
        ("Reels per short ton; packed sheets per MSF.", "msf"),
        ("Prices per short ton; sheets packed per MSF.", "short_ton"),
    ],
)
def test_packed_before_a_form_tells_how_it_is_sold(note, basis):
    rows = [["Board", "pt", "lb/MSF", "Form", "Size (in.)", "Price USD"]]
    rows += [["SBS", 18, 77, "Reel", "40 wide", 1190], ["SBS", 18, 77, "Sheet", "28 x 40", 60], [None], [note]]
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton", basis]


@pytest.mark.parametrize(
    ("note", "basis"),
    [
        ("Figures in this list are per short ton.", "short_ton"),
        ("Figures below are per short ton.", "short_ton"),
        ("Figures in this list are per short ton of pulp.", None),
    ],
)
def test_where_the_figures_stand_that_are_per_a_unit(note, basis):
    rows = [["Board", "Caliper (pt)", "lb/MSF", "Price USD"], ["SBS", 16, 68, 1215], [None], [note]]
    assert [line.offer.basis for line in lines(rows).values()] == [basis]


def test_the_french_for_board_is_no_carton_that_prices_are_per():
    rows = [["Prix par tonne, en euros, pour le carton gris"], ["Sorte", "g/m²", "µm", "Prix"], ["URB", 500, 735, 668]]
    assert [line.offer.basis for line in lines(rows).values()] == ["tonne"]
    rows[0] = ["Prix en euros par carton"]
    assert [codes(line) >= {"basis-unknown"} for line in lines(rows).values()] == [True]


@pytest.mark.parametrize(
    ("note", "head", "bases"),
    [
        ("Prices: dollars to the ton.", "Price USD", ["short_ton"]),
        ("Prices apply to the sheet below.", "USD/ST", ["short_ton"]),
        ("Notes to the sheet: prices per short ton.", "Price USD", ["short_ton"]),
        ("Price is carried to the roll total.", "USD/ST", ["short_ton"]),
    ],
)
def test_money_to_the_ton_is_per_ton_and_the_sheet_that_others_are_told_of_is_none(note, head, bases):
    rows = [["Board", "Caliper (pt)", "lb/MSF", head], ["SBS", 18, 77, 1161.5], [], [note]]
    assert [line.offer.basis for line in lines(rows).values()] == bases


@pytest.mark.parametrize(
    "note",
    [
        "Solo pedimos un mínimo, de 1 tonelada.",
        "Nous demandons un minimum, de 1 tonne.",
        "Emballage facturé, la tonne.",
        "Es gilt eine Mindestmenge, je Tonne gerundet.",
        "Minimum order applies, per tonne.",
        "En minsta order krävs, per ton.",
    ],
)
def test_what_is_ordered_or_charged_is_no_unit_of_prices(note):
    assert not [said for said in statements(note) if isinstance(said, SaysBasis)]


@pytest.mark.parametrize("note", ["Folding boxboard, ex works, for one tonne.", "Los precios, netos, de 1 tonelada."])
def test_a_unit_by_itself_is_one_beside_goods_and_prices(note):
    assert [said for said in statements(note) if isinstance(said, SaysBasis)]
