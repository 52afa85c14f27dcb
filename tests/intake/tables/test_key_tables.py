"""Keys that stand as small tables, on the sheet of the prices or another: 'Unit code | Meaning' over '1 | per ST'."""

from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_TITLE = [["Osmere Paperboard Inc. - prices in US dollars"], []]
_HEAD = ["Grade code", "Caliper (pt)", "Weight (lb/MSF)", "Price", "Unit code", "Terms code"]
_ROWS = [["K1", 14, 59, 1225, 1, "F"], ["K1", 18, 75, 45.4, 2, "D"], ["K5", 18, 71, 895, 1, "D"]]
_GRADES = [["Grade code", "Meaning"], ["K1", "SBS, coated one side"], ["K5", "CRB, coated one side"]]
_UNITS = [["Unit code", "Meaning"], [1, "per short ton"], [2, "per MSF"]]
_TERMS = [["Terms code", "Meaning"], ["F", "FOB mill"], ["D", "delivered, freight included"]]
_KEYS = [*_GRADES, [], *_UNITS, [], *_TERMS]
_READ = [
    ("accepted", "SBS", 1, "short_ton", False),
    ("accepted", "SBS", 1, "msf", True),
    ("accepted", "CRB", 1, "short_ton", True),
]


def _sheets(*sheets):
    grids = (grid(rows, sheet=f"Sheet{number}") for number, rows in enumerate(sheets, 1))
    return read_workbook(book(*grids), Answers())


def _told(reading):
    offers = [(str(line.state), line.offer) for line in reading.lines]
    return [(state, one.grade, one.coated_sides, one.basis, one.delivered) for state, one in offers]


def _beside(table, key):
    rows = max(len(table), len(key))
    wide = [[*row, *[None] * (len(_HEAD) - len(row))] for row in [*table, *[[]] * (rows - len(table))]]
    return [[*row, None, *explained] for row, explained in zip(wide, [*key, *[[]] * rows], strict=False)]


def test_keys_on_another_sheet():
    found = _sheets([*_TITLE, _HEAD, *_ROWS], _KEYS)
    assert _told(found) == _READ
    assert [(one.sheet, one.rows) for one in found.passed_over] == [("Sheet2", "1-11")]


@pytest.mark.parametrize(
    "rows",
    [
        [*_TITLE, _HEAD, *_ROWS, [], *_KEYS],
        [*_TITLE, _HEAD, *_ROWS, *_GRADES, *_UNITS, *_TERMS],
        [*_TITLE, *_KEYS, [], _HEAD, *_ROWS],
        [*_TITLE, *_beside([_HEAD, *_ROWS], _KEYS)],
    ],
    ids=["below", "right below", "above", "beside"],
)
def test_keys_on_the_sheet_of_the_prices(rows):
    assert _told(_sheets(rows)) == _READ


@pytest.mark.parametrize(
    "key",
    [
        [["FIELD", "VALUE", "MEANING"], ["GRADE_CODE", "K1", "SBS C1S"], ["GRADE_CODE", "K5", "CRB C1S"],
         ["UNIT_CODE", 1, "per short ton"], [None, 2, "per MSF"],
         ["TERMS_CODE", "F", "FOB mill"], [None, "D", "delivered"]],
        [["PLANT", "CODE", "DEFINITION"], ["PLANT", "P1", "Dover"], ["Grade code", "K1", "SBS C1S"],
         ["Grade code", "K5", "CRB C1S"], ["Unit code", 1, "per short ton"], ["Unit code", 2, "per MSF"],
         ["Terms code", "F", "FOB mill"], ["Terms code", "D", "delivered"]],
    ],
    ids=["named once", "with a field of no column"],
)  # fmt: skip
def test_a_key_whose_rows_name_the_heads(key):
    assert _told(_sheets([*_TITLE, _HEAD, *_ROWS], key)) == _READ


def test_a_key_may_call_a_column_by_a_part_of_its_head():
    keys = [["Grade", "Stands for"], *_GRADES[1:], [], ["UNIT", "Description"], *_UNITS[1:], [], *_TERMS]
    assert _told(_sheets([*_TITLE, _HEAD, *_ROWS], keys)) == _READ


@pytest.mark.parametrize(
    ("grade", "unit", "meaning", "per", "collected", "delivered"),
    [
        ("Sorte", "Einheit", "Bedeutung", "je", "ab Werk", "frei Haus"),
        ("Qualité", "Unité", "Signification", "par", "départ usine", "franco"),
        ("Calidad", "Unidad", "Significado", "por", "ex works", "entregado"),
        ("Kvalitet", "Enhet", "Betydelse", "per", "fritt fabrik", "levererat"),
    ],
)
def test_in_other_languages(grade, unit, meaning, per, collected, delivered):
    head = [grade, "µm", "g/m²", "EUR", unit, "X"]
    rows = [["K1", 400, 250, 1250, 1, "F"], ["K5", 450, 350, 0.85, 2, "D"]]
    key = [[grade, meaning], ["K1", "GC1"], ["K5", "GD2"], [], [unit, meaning], [1, f"{per} 1000 kg"], [2, f"{per} kg"],
           [], ["X", meaning], ["F", collected], ["D", delivered]]  # fmt: skip
    assert [
        (state, grade, basis, freight) for state, grade, _, basis, freight in _told(_sheets([head, *rows], key))
    ] == [
        ("accepted", "FBB", "tonne", False),
        ("accepted", "CRB", "kg", True),
    ]


def test_lead_times_by_codes_under_their_head():
    head = ["Grade", "Caliper (pt)", "Lead time", "USD/short ton"]
    key = [["Lead time", "Meaning"], ["A", "3 weeks"], ["B", "5 weeks"]]
    found = _sheets([head, ["SBS", 18, "A", 1200], ["CRB", 20, "B", 900]], key).lines
    assert [line.offer.lead_days for line in found] == [(21, 21), (35, 35)]


@pytest.mark.parametrize(
    "key",
    [
        [*_UNITS, [1, "per cwt"]],
        [*_UNITS, [], ["Unit code", "Meaning"], [1, "per cwt"], [2, "per MSF"]],
    ],
    ids=["in one key", "in two"],
)
def test_a_code_explained_two_ways_is_asked(key):
    found = _sheets([*_TITLE, _HEAD, *_ROWS], [*_GRADES, [], *_TERMS, [], *key]).lines
    assert "basis-unknown" in codes(found[0])
    assert "basis-unknown" in codes(found[2])


def test_a_code_that_the_key_leaves_out_is_asked_and_terms_left_open():
    found = _sheets([*_TITLE, _HEAD, *_ROWS, ["K5", 20, 79, 900, 4, None]], _KEYS).lines
    assert "basis-unknown" in codes(found[3])
    assert found[3].offer.delivered is None


def test_a_key_to_a_head_that_no_table_has_explains_nothing():
    found = _sheets([*_TITLE, _HEAD, *_ROWS], [*_GRADES, [], ["Plant code", "Meaning"], *_UNITS[1:], [], *_TERMS])
    assert all("basis-unknown" in codes(line) for line in found.lines)


def test_what_stands_below_a_key_still_holds():
    below = [["MOQ", "20,000 lb"], ["Lead time", "3 weeks"]]
    found = _sheets([*_TITLE, _HEAD, *_ROWS], [*_KEYS, *below])
    assert _told(found) == _READ
    assert {round(line.offer.minimum_kg) for line in found.lines} == {9072}
    assert {line.offer.lead_days for line in found.lines} == {(21, 21)}


def test_each_sheet_hears_its_own_key_first():
    other = [["Unit code", "Meaning"], [1, "per cwt"], [2, "per MSF"]]
    rows = [["K1", 20, 83, 61.5, 1, "F"], ["K5", 24, 93, 48.2, 2, "F"]]
    sheets = [
        [*_TITLE, _HEAD, *of, [], *_GRADES, [], *_TERMS, [], *key] for of, key in ((_ROWS, _UNITS), (rows, other))
    ]
    found = _sheets(*sheets).lines
    assert [line.offer.basis for line in found] == ["short_ton", "msf", "short_ton", "cwt", "msf"]


@pytest.mark.parametrize(
    "other",
    [
        [["Mill", "Description"], ["E1", "Dover mill, 12 Mill Road, Dover"], ["E2", "Augusta mill, by rail"]],
        [["Mill", "Meaning"], ["E1", "see page 3"], ["E2", "see page 4"]],
        [["Grade", "Description", "Price"], ["SBS", "Solid bleached sulfate", 40]],
    ],
    ids=["addresses", "index", "other prices"],
)
def test_no_keys(other):
    head = ["Mill", "Grade", "Caliper (pt)", "USD/short ton"]
    found = _sheets([["FOB mill"], head, ["E1", "SBS", 18, 1200], ["E2", "CRB", 20, 900]], other).lines
    assert [(line.offer.grade, line.offer.price, line.offer.delivered) for line in found[:2]] == [
        ("SBS", Decimal(1200), False),
        ("CRB", Decimal(900), False),
    ]


LEADS = {
    "en": ("Lead time", "LT", "Code", "3 weeks", "from stock"),
    "de": ("Lieferzeit", "Lieferfrist", "Code", "3 Wochen", "ab Lager"),
    "fr": ("Délai", "Délai de livraison", "Code", "3 semaines", "sur stock"),
    "es": ("Plazo", "Plazo de entrega", "Código", "3 semanas", "en stock"),
    "sv": ("Leveranstid", "Lev.tid", "Kod", "3 veckor", "från lager"),
}


@pytest.mark.parametrize("gap", [[], [[]]], ids=["touching", "apart"])
@pytest.mark.parametrize(("lead", "other", "code", "weeks", "stock"), LEADS.values(), ids=LEADS)
def test_a_key_may_head_what_codes_mean_by_the_column_that_they_stand_in(lead, other, code, weeks, stock, gap):
    for head in (lead, other):
        rows = [["Grade", "g/m²", "Price EUR/t", head], ["GC1", 250, 1100, "A"], ["GD2", 300, 800, "B"]]
        found = _sheets([*rows, *gap, [code, lead], ["A", weeks], ["B", stock]]).lines
        assert [line.offer.lead_days for line in found] == [(21, 21), (0, 0)]


def test_such_a_key_of_other_codes_explains_nothing():
    rows = [["Grade", "g/m²", "Price EUR/t", "Lead time"], ["GC1", 250, 1100, "A"], ["GD2", 300, 800, "B"]]
    found = _sheets([*rows, [], ["Code", "Lead time"], ["17", "3 weeks"], ["18", "5 weeks"]]).lines
    assert [line.offer.lead_days for line in found] == [None, None]
    found = _sheets([*rows, [], ["Code", "Minimum order"], ["A", "3 t"], ["B", "5 t"]]).lines
    assert [(line.offer.lead_days, line.offer.minimum_kg) for line in found[:2]] == [(None, None)] * 2


_HEADS = {
    "en": ("Price is", "US$ per short ton", "US$ per MSF"),
    "de": ("Preis je", "US$ je short ton", "US$ je MSF"),
    "fr": ("Prix par", "US$ par short ton", "US$ par MSF"),
    "es": ("Precio por", "US$ por short ton", "US$ por MSF"),
    "sv": ("Priset avser", "US$ per short ton", "US$ per MSF"),
}


@pytest.mark.parametrize("language", _HEADS)
def test_codes_headed_by_what_the_price_is(language):
    head, by_ton, by_area = _HEADS[language]
    rows = [["Board", "Caliper (pt)", "Weight (lb/MSF)", "Code", "Price"], ["K1", 14, 59, "T", 1225],
            ["K1", 18, 75, "A", 45.4], ["K5", 18, 71, "B", 895], ["K5", 24, 92, "T", 890]]  # fmt: skip
    boards = [["Board", "Meaning"], ["K1", "SBS, coated one side"], ["K5", "CRB, coated one side"]]
    key = [*boards, [], ["Code", head], ["T", by_ton], ["A", by_area], ["B", by_ton]]
    told = [(state, grade, basis) for state, grade, _, basis, _ in _told(_sheets([*_TITLE, *rows], key))]
    assert told == [
        ("accepted", "SBS", "short_ton"), ("accepted", "SBS", "msf"), ("accepted", "CRB", "short_ton"),
        ("accepted", "CRB", "short_ton"),
    ]  # fmt: skip


def test_codes_that_are_words_elsewhere_label_no_table_on_its_side():
    rows = [["Board", "Caliper (pt)", "Weight (lb/MSF)", "Code", "Price"], ["SBS", 14, 59, "T", 1248],
            ["SBS", 18, 75, "A", 1235], ["CRB", 16, 62, "T", 915], ["CRB", 24, 92, "A", 890]]  # fmt: skip
    found = _sheets([["US$ per short ton"], [], *rows])
    assert [str(line.offer.price) for line in found.lines] == ["1248", "1235", "915", "890"]


@pytest.mark.parametrize(
    ("head", "key"),
    [
        ("Lead time (weeks)", ("Lead time", "2 weeks", "4 weeks")),
        ("Lieferzeit (Wochen)", ("Lieferzeit", "2 Wochen", "4 Wochen")),
        ("Délai (semaines)", ("Délai", "2 semaines", "4 semaines")),
        ("Plazo (semanas)", ("Plazo", "2 semanas", "4 semanas")),
        ("Leveranstid (veckor)", ("Leveranstid", "2 veckor", "4 veckor")),
    ],
)
def test_figures_below_a_head_with_a_unit_are_no_codes(head, key):
    told, first, second = key
    for headed, leads in ((head, [(7, 7), (14, 14)]), (told, [(14, 14), (28, 28)])):
        rows = [["Board", "g/m²", "EUR/t", headed], ["GC1", 250, 1200, 1], ["GD2", 300, 800, 2]]
        found = _sheets([*rows, [], ["Code", told], [1, first], [2, second]])
        assert [line.offer.lead_days for line in found.lines] == leads
