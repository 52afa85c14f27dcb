"""What a firm's name is: legal forms, words for what it makes or deals in, and where the name ends."""

import pytest

from tests.intake.readings import read_rows
from tests.intake.sheets import lines, read
from tracker.intake.values.firms.company import company_name, letterhead_name

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


@pytest.mark.parametrize(
    ("rows", "vendor"),
    [
        ([["Kestrel Ridge Board"], ["Prices in USD"]], "Kestrel Ridge Board"),
        ([["Harrow Vale Board", None, None, "Page 1 of 2"]], "Harrow Vale Board"),
        ([["Folding Carton Board"], ["Prices in USD"]], None),
        ([["Nordlake Fibre"], ["14 Mill Lane, Farholt"], ["Tel. +44 20 7946 0958"]], "Nordlake Fibre"),
        ([["Nordlake Fibre"], ["14 Mill Lane, Farholt"]], None),
        ([["Folding Carton Board"], ["Tel. +44 20 7946 0958"]], None),
        ([["Kestrel Ridge Board"], ["Ostrel Mills Inc."]], "Ostrel Mills Inc."),
    ],
)
def test_a_name_without_a_legal_form_at_the_head_of_a_sheet(rows, vendor):
    reading = read_rows([*rows, [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert {line.offer.vendor for line in reading.lines} == {vendor}


def test_a_limited_partnership_over_prices_is_a_vendor_and_no_kilogram():
    heads = ["Board", "g/m²", "µm", "Kartonfabrik Ellerbach KG", "Hallenbeck Kartonwerk GmbH"]
    found = lines([["€/t delivered"], heads, ["GC1", 240, 395, 1235, 1247]])
    assert [line.offer.vendor for line in found.values()] == heads[3:]


@pytest.mark.parametrize(
    "name",
    [
        "Papeteries Lorvain",
        "Kartonfabrik Sonthal",
        "Cartiera Valdorso",
        "Kartonska Dolna d.o.o.",
        "Feldmoser Papiergroßhandel",
        "Lindvik Arkcentral",
        "Sollbach Kartonzentrale",
        "Harrow Lane Board Centre",
    ],
)
def test_firms_that_say_first_what_they_are_and_forms_of_other_countries(name):
    found = lines([[name], ["EUR/t"], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]])
    assert found["D4"].offer.vendor == name


@pytest.mark.parametrize("title", ["Vereinigte Preise", "Papierfabrik ab Werk", "Kartonfabrik"])
def test_titles_that_are_no_firms(title):
    found = lines([[title], ["EUR/t"], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]])
    assert found["D4"].offer.vendor is None


PRICED_HEAD = ["Board", "pt", "lb/MSF", "Price"]
ROW = ["SBS C1S", 18, 76, 60.75]
SOLD = "Prices are in U.S. dollars per hundredweight"


def test_a_firm_ends_where_the_number_of_its_paper_is_asked_for():
    form = ["Seller:", "Arlescote Paper Products, Inc.", "", "Quote no.", "Q-61180"]
    (line,) = lines([form, [SOLD], PRICED_HEAD, ROW]).values()
    assert line.offer.vendor == "Arlescote Paper Products, Inc."


def test_a_firm_may_be_called_by_what_it_makes():
    rows = [["Umeå Falskartong AB"], ["SEK/ton"], ["Kvalitet", "g/m²", "µm", "Pris"], ["GC1", 250, 405, 13800]]
    assert read(rows).vendor == "Umeå Falskartong AB"


def test_the_point_that_board_is_shipped_from_is_no_unit_of_a_metric_list():
    rows = [
        ["EUR per tonne"],
        [None, None, None, "FOB shipping point", None],
        ["Sorte", "µm", "g/m²", "< 10 t", "> 10 t"],
        ["GC1", 400, 250, 1050, 1020],
    ]
    assert [int(line.offer.below_kg or 0) for line in lines(rows).values()] == [10000, 0]


def test_a_star_between_a_firm_and_its_street_parts_them():
    letterhead = ["Fallow Creek Board & Paper   *   Dayton Road, Fallow Creek, Indiana   *   call the desk: 555-0129"]
    found = lines([letterhead, [], ["Grade", "pt", "USD/short ton"], ["SBS C1S", 14, 1140], ["URB", 22, 662]])
    assert {line.offer.vendor for line in found.values()} == {"Fallow Creek Board & Paper"}


TONNE_HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Hermanos Ardelune, cartón y papel", "Hermanos Ardelune, cartón y papel"),
        ("Kartonfabrik Ardelune, Karton und Papier", "Kartonfabrik Ardelune, Karton und Papier"),
        ("Papeteries Ardelune, papiers et cartons", "Papeteries Ardelune, papiers et cartons"),
        ("Ardelunes Bruk, kartong och papper", "Ardelunes Bruk, kartong och papper"),
        ("Ardelune Board Mills, board and paper", "Ardelune Board Mills, board and paper"),
        ("Ardelune Board Mills, paperboard", "Ardelune Board Mills"),
        ("Ardelune Board Mills, board and paper prices", "Ardelune Board Mills"),
    ],
)
def test_what_a_firm_deals_in_is_a_part_of_its_name(title, vendor):
    assert read([[title], TONNE_HEAD, *OLD]).vendor == vendor


METRIC = ["Grade", "µm", "g/m²", "EUR/tonne"]
CODES = [["GC1", 450, 300, 1100], ["GT2", 420, 350, 860], ["GD2", 400, 300, 790]]


def test_a_cooperative_has_its_whole_name():
    (line,) = lines([["Larkholt Recycled Board Co-op"], METRIC, CODES[0]]).values()
    assert line.offer.vendor == "Larkholt Recycled Board Co-op"


@pytest.mark.parametrize(
    ("first", "vendor"),
    [
        ("PELLGATE PAPER STOCK CO.  *** SECONDS / SIDE ROLLS ***", "PELLGATE PAPER STOCK CO."),
        ("Tarnmoor Board Ltd -- price list 4", "Tarnmoor Board Ltd"),
        ("Lieferant: Kartonwerk Aarbach AG 100482", "Kartonwerk Aarbach AG"),
        ("Supplier: 100482 Tarnmoor Board", "Tarnmoor Board"),
        ("Supplier: Karton 2000", "Karton 2000"),
    ],
)
def test_a_vendor_s_name_ends_before_signs_and_before_its_number(first, vendor):
    assert read([[first], [], ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1100]]).vendor == vendor


EURO_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize(
    ("titles", "vendor"),
    [
        (["Price list – Marlow Board Mills plc"], "Marlow Board Mills plc"),
        (["Price list 2027 - Marlow Board Mills"], "Marlow Board Mills"),
        (["Preisliste – Kartonhaus Lindmoor GmbH"], "Kartonhaus Lindmoor GmbH"),
        (["Quotation – Larkmoor Foods Inc."], None), (["Price list – Larkmoor Foods Inc."], None),
        (["Marlow Board Mills plc", "Price list – Harrow Board Mills Ltd"], "Marlow Board Mills plc"),
    ],
)  # fmt: skip
def test_the_firm_behind_the_name_of_its_list(titles, vendor):
    (line,) = lines([*([title] for title in titles), EURO_HEAD, GC1]).values()
    assert line.offer.vendor == vendor


TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Oxbarrow & Thrane", "Oxbarrow & Thrane"),
        ("Lindquell Fibre Products", "Lindquell Fibre Products"),
        ("Terms & Conditions", None),
        ("Sheets & Reels", None),
        ("Rates & Surcharges", None),
    ],
)
def test_partners_at_the_head_of_a_sheet_are_its_vendor(title, vendor):
    assert read([[title], TONNES, GC1]).vendor == vendor


@pytest.mark.parametrize(
    "name",
    ["HOLLIN RUN CHIPBOARD MILL", "Hollin Run Greyboard Mills", "Cartonnerie du Carton Gris Lavelane",
     "Papelera de Cartón Gris Olmera", "Ellervik Gråkartong Bruk", "Ellerau Graupappen Werke",
     "Hollin Run Coated Board Company", "Larkendale Coated Paper Mill"],
)  # fmt: skip
def test_mills_named_after_their_board(name):
    assert company_name(name) == name


@pytest.mark.parametrize(
    "text",
    ["White Lined Chipboard Mill", "GREYBOARD MILL", "Fabrique de Carton Gris", "FOB CRB Mill", "Coated Board Mill"],
)
def test_boards_of_a_mill_name_no_firm(text):
    assert company_name(text) is None


@pytest.mark.parametrize(
    "name",
    ["Cartonera La Nopalera", "Industrial Papelera La Nopalera", "Comercial Papelera Nieto", "Cartons Duval",
     "Duval Cartonnages", "Formatos y Cartulinas Duero"],
)  # fmt: skip
def test_a_word_of_the_trade_names_a_firm_at_either_end_of_its_name(name):
    assert (company_name(name) or letterhead_name(name)) == name


@pytest.mark.parametrize(
    "name",
    ["Larkendale Sheet & Roll", "Larkendale Rolls & Sheets", "Rollen & Bogen Lindmoor", "Bobines et Formats Vauriol",
     "Bobinas y Hojas Altavega", "Rullar & Ark i Norrvalla", "Fa. Lindmoor Papp- u. Kartonvertrieb"],
)  # fmt: skip
def test_firms_called_by_rolls_and_sheets_or_with_words_cut_short(name):
    assert letterhead_name(name) == name


@pytest.mark.parametrize(
    "title",
    ["Sheet & Roll", "Rollen & Bogen", "Bobines & Formats", "Rullar & Ark", "Kraft Sheet & Roll"],
)  # fmt: skip
def test_rolls_and_sheets_alone_are_no_firm(title):
    assert letterhead_name(title) is None


@pytest.mark.parametrize(
    "name", ["Papeteries réunies du Val-Orain", "Papeleras reunidas del Orain", "Pappersbruken förenade Orain AB"]
)
def test_firms_that_are_several_in_one(name):
    assert company_name(name) == name


@pytest.mark.parametrize("text", ["Papeteries réunies en réunion", "Prix réunis du Val-Orain"])
def test_what_is_brought_together_is_no_firm(text):
    assert company_name(text) is None


_LIST = [["Board", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 390, 1288]]


@pytest.mark.parametrize(
    "name",
    ["ets ferrowick emballage", "ferrowick ridge mills", "Ferrowick Cartoncillo", "Ferrowick Papiervertretungen"],
)
def test_a_firm_at_the_head_of_a_sheet_in_small_letters_or_called_by_its_goods(name):
    assert read([[name], [], *_LIST]).vendor == name


@pytest.mark.parametrize("title", ["votre carton", "stock rolls", "Cartoncillo estucado", "prices for our mills"])
def test_other_words_at_the_head_of_a_sheet_are_none(title):
    assert read([[title], [], *_LIST]).vendor is None


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Carton & Cie de l'Ognon", "Carton & Cie de l'Ognon"),
        ("Carton & Cie de livraison", "Carton & Cie"),
        ("B", None),
    ],
)
def test_the_place_of_a_partnership_is_a_part_of_its_name(title, vendor):
    found = lines([[title], ["Carton", "g/m²", "µm", "EUR/t"], ["GC1", 300, 470, 874]])
    assert {line.offer.vendor for line in found.values()} == {vendor}


@pytest.mark.parametrize(
    "name",
    [
        "Lohnschnitt Ferrowick", "Handelshaus Ferrowick & Lohse", "Hartpappenfabrik Ferrowick", "Kartonghuset Ferrvik",
        "Ferrviks Arkservice", "Ferrviks Wellråvara", "Formatpapier Ferrowick oHG", "Ferrowick Sheeting Services",
    ],
)  # fmt: skip
def test_firms_called_by_what_they_do_with_board(name):
    assert read([[name], [], *_LIST]).vendor == name
    assert read([[f"{name} - Preise ab Werk"], [], *_LIST]).vendor == name


@pytest.mark.parametrize(
    "title", ["Lohnschnitt", "Lohnschnitt Preise", "Formatservice ab Lager", "Lohnschnitt GC1", "Arkservice, priser"]
)
def test_such_words_without_a_name_are_no_firm(title):
    assert read([[title], [], *_LIST]).vendor is None


@pytest.mark.parametrize("remark", ["Freibleibend", "Unverbindlich", "Budgetary"])
def test_a_remark_before_a_firm_is_no_part_of_its_name(remark):
    rows = [["Preise EUR/t"], ["Sorte", "g/m²", "µm", "Preis"], ["GC1", 250, 405, 1231], []]
    (line,) = lines([*rows, [f"{remark}. Elmstorfer Kartonlager OHG, Hafenstr. 8"]]).values()
    assert line.offer.vendor == "Elmstorfer Kartonlager OHG"


@pytest.mark.parametrize(
    "firm", ["Till Karton GmbH", "An Karton AG", "Para Board, Inc.", "Pour Carton SA", "For Board Co., Inc."]
)
def test_a_word_before_a_reader_is_a_name_where_no_other_is_left(firm):
    rows = [[firm], ["USD per short ton"], ["Grade", "Caliper (pt)", "lb/MSF", "Price"], ["SBS", 18, 75, 1180]]
    assert [line.offer.vendor for line in lines(rows).values()] == [firm]


@pytest.mark.parametrize(
    "reader",
    ["For Marlow Board Inc.", "An Kartonhaus Lind GmbH", "Till Kartongbruket AB", "Pour Cartonnerie Lind SA",
     "Para Cartones Lind S.A.", "To: Board, Inc.", "Attn: Board, Inc."],
)  # fmt: skip
def test_and_else_it_names_a_reader(reader):
    rows = [[reader], ["USD per short ton"], ["Grade", "Caliper (pt)", "lb/MSF", "Price"], ["SBS", 18, 75, 1180]]
    assert [line.offer.vendor for line in lines(rows).values()] == [None]


@pytest.mark.parametrize(
    "name",
    [
        "Ferrowick Box Works", "Ferrowick Vale Greyboards", "Ferrowick Sheet Centre", "Faltwerk Ferrowick",
        "Ferrowicker Schachtelfabrik", "Imprimerie et Cartonnage Ferrowick", "Centrale du Carton Vauriol",
        "Imprenta y Estuchado Altavega", "Ferrviks Askfabrik", "Ferrviks Arkcentral", "Vretakartong Handel",
    ],
)  # fmt: skip
def test_makers_of_cartons_and_houses_at_the_head_of_their_own_list(name):
    assert read([[name], ["EUR/tonne"], [], *_LIST]).vendor == name


@pytest.mark.parametrize("label", ["De", "From", "Von", "Från"])
def test_a_maker_of_cartons_may_sign(label):
    assert read([[f"{label}: Estuches y Troqueles Altavega"], [], *_LIST]).vendor == "Estuches y Troqueles Altavega"


@pytest.mark.parametrize(
    "title",
    [
        "Premium Kraftboards", "Recycled Boxboards", "Lined Greyboards", "Gloss Linerboard", "Packaging Materials",
        "Sheet Converting", "Pharma Packaging", "Beverage Cartons", "Cajas Plegables", "Envases Farmacia",
        "Imprenta y Estuchado", "Emballages Alimentaires", "Cartons Luxe", "Kartonagen Pharma", "Wellråvara Lager",
        "Hauptwerk Lindau", "Auslieferungswerk Nord", "Distributionscentral Nord", "Box Works",
    ],
)  # fmt: skip
def test_headings_of_goods_and_places_at_the_head_of_a_list_are_no_firm(title):
    assert read([[title], ["EUR/tonne"], [], *_LIST]).vendor is None


@pytest.mark.parametrize("name", ["Estucados Almendriz", "ESTUCADOS ALMENDRIZ", "Estucados del Alcor"])
def test_a_firm_that_is_called_by_its_coating_at_the_head_of_a_sheet(name):
    reading = read_rows([[f"{name} - oferta válida hasta el 28/02/2027"], [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert {line.offer.vendor for line in reading.lines} == {name}


@pytest.mark.parametrize(
    "title",
    ["Estucados", "Estucados Blancos", "Estucados Brillo", "Estucados dos caras", "Estucados Dos Caras",
     "Estucados una cara Almendriz", "Estucados GC1", "Estucados 2027"],
)  # fmt: skip
def test_boards_that_are_called_by_their_coating_are_no_firm(title):
    reading = read_rows([[title], [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert {line.offer.vendor for line in reading.lines} == {None}


def test_coated_boards_over_their_own_table_leave_the_letterhead_its_prices():
    tables = [["Estucados Nevada"], [*HEAD, "USD/ST"], [*BOARD, 1165], [], ["Kraft Nevada"], [*HEAD, "USD/ST"]]
    reading = read_rows([["Papelera Altavega"], [], *tables, ["CUK", 18, 75, 980]])
    assert {line.offer.vendor for line in reading.lines} == {"Papelera Altavega"}
