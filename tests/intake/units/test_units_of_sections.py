"""Headings and notes that say in what some boards' prices are: they come before what the title says of all."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(
    "said",
    [
        "US dollars. SBS and CRB per short ton; CUK per metric ton.",
        "USD. CUK per tonne, all others per short ton",
        "USD per short ton; CUK per tonne",
        "Prices in USD per short ton except CUK, which is per tonne",
        "All prices USD per short ton except CUK (per tonne)",
        "All prices in USD per short ton. CUK prices are per tonne.",
    ],
)
def test_one_grades_unit_is_not_the_others(said):
    rows = [[*HEAD, "Price"], [*SBS, 1178], ["CUK", 18, 74, 1139], [*CRB, 884]]
    bases = [line.offer.basis for line in lines([[said], [], *rows]).values()]
    assert bases == ["short_ton", "tonne", "short_ton"]


@pytest.mark.parametrize("said", ["SBS and CRB in USD, CUK in CAD", "All in USD except CUK, which is in CAD"])
def test_one_grades_currency_is_not_the_others(said):
    rows = [[*HEAD, "Price"], [*SBS, 1178], ["CUK", 18, 74, 1139], [*CRB, 884]]
    found = lines([["USD per short ton"], [], *rows, [], [said]])
    assert [line.offer.currency for line in found.values()] == ["USD", "CAD", "USD"]


TITLE = ["Prices in USD per short ton unless a section says otherwise"]
HEADS = ["Item", "Caliper, pt", "lb/MSF", "Price"]


def two_sections(heading, first, last=None):
    return [
        TITLE,
        HEADS,
        ["SBS C1S, rolls"],
        ["P1", 16, 68, 1190],
        [heading],
        ["P2", 18, 74, first],
        ["CRB C1S, rolls"],
        ["P3", 18, 70, last or 870],
    ]


@pytest.mark.parametrize(
    ("heading", "price", "basis"),
    [
        ("CUK, rolls - per MSF", "41.2", "msf"),
        ("CUK rolls (per MSF)", "41.2", "msf"),
        ("Coated unbleached kraft, in reels - per cwt", "53.5", "cwt"),
        ("CUK rolls - per lb", "0.535", "lb"),
        ("CUK, sheets 28 x 40 in - per 1,000 sheets", "288", "1000sheets"),
    ],
)
def test_a_heading_overrides_the_titles_unit_for_its_own_rows_alone(heading, price, basis):
    found = lines(two_sections(heading, float(price)))
    assert [str(found[cell].offer.basis) for cell in ("D4", "D6", "D8")] == ["short_ton", basis, "short_ton"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize(
    ("title", "heading", "price", "basis"),
    [
        ("Preise in EUR je Tonne", "GC2, Bogen 70 x 100 cm (je 1.000 Bogen)", 215, "1000sheets"),
        ("Preise in EUR je Tonne", "GC2 Rollen - je 1000 m²", 310, "1000m2"),
        ("Prix en EUR la tonne", "GC2, feuilles 70 x 100 cm - les 1000 feuilles", 215, "1000sheets"),
        ("Precios en EUR por tonelada métrica", "GC2, hojas 70 x 100 cm - por 1.000 hojas", 215, "1000sheets"),
        ("Priser i EUR per ton (1000 kg)", "GC2, ark 70 x 100 cm - per 1000 ark", 215, "1000sheets"),
    ],
)
def test_so_it_does_in_other_languages(title, heading, price, basis):
    rows = [[title], ["Nr", "µm", "g/m²", "EUR"], ["GC1"], [1, 400, 250, 1190], [heading], [2, 430, 270, price]]
    found = lines(rows)
    assert [str(found[cell].offer.basis) for cell in ("D4", "D6")] == ["tonne", basis]
    assert found["D6"].offer.grade == "FBB"


@pytest.mark.parametrize("heading", ["GC2 Rollen - je 100 kg", "CUK - per ream"])
def test_a_unit_that_is_not_converted_is_asked_about_and_not_taken_for_the_titles(heading):
    found = lines(two_sections(heading, 98))
    assert str(found["D6"].state) == "question"
    assert str(found["D8"].offer.basis) == "short_ton"


@pytest.mark.parametrize(
    "heading",
    [
        "CUK rolls - 500 sheets per pallet",
        "CUK rolls - weights per MSF",
        "CUK, rolls - min. 5 t (per item)",
        "CUK, rolls",
    ],
)
def test_what_else_is_said_per_something_leaves_the_titles_unit(heading):
    found = lines(two_sections(heading, 1040))
    assert str(found["D6"].offer.basis) == "short_ton"


AREAS = [["GC2", 250, 395, 328, "4 weeks"], ["GT2", 300, 395, 301, "2 weeks"]]


def with_areas(again, rows=AREAS, time="Lead time"):
    above = [["Board", "g/m²", "µm", "EUR/1000 kg", time], ["GC1", 240, 370, 1412, "3 weeks"]]
    return list(lines([*above, [], again, *rows]).values())[1:]


@pytest.mark.parametrize(
    ("again", "time"),
    [
        (["By area", None, None, "EUR/1000 m²", "Lead time"], "Lead time"),
        (["Nach Fläche", None, None, "EUR je 1000 m²", "Lieferzeit"], "Lieferzeit"),
        (["Par surface", None, None, "EUR pour 1000 m²", "Délai"], "Délai"),
        (["Por superficie", None, None, "EUR por 1000 m²", "Plazo"], "Plazo"),
        (["Per yta", None, None, "EUR per 1000 m²", "Leverans"], "Leverans"),
    ],
)
def test_heads_that_a_second_row_of_units_leaves_out_are_those_above(again, time):
    found = with_areas(again, time=time)
    assert [(str(one.offer.basis), one.offer.grammage_gsm, one.offer.caliper_um) for one in found] == [
        ("1000m2", 250, 395), ("1000m2", 300, 395),
    ]  # fmt: skip
    assert [one.offer.lead_days for one in found] == [(28, 28), (14, 14)]
    assert {str(one.state) for one in found} == {"accepted"}


def test_figures_that_do_not_fit_the_heads_above_are_asked():
    (found,) = with_areas(["By area", None, None, "EUR/1000 m²", "Lead time"], [["GC2", 395, 250, 328, "4 weeks"]])
    assert str(found.state) == "question"


def test_a_row_with_another_head_begins_a_table_of_its_own():
    found = with_areas(["By area", None, None, "EUR/1000 m²", "Remarks"])
    assert {(str(one.state), one.offer.caliper_um) for one in found} == {("question", None)}


def test_a_second_header_of_all_columns_takes_nothing_from_the_one_above():
    above = [["Board", "g/m²", "µm", "EUR/1000 kg delivered"], ["GC1", 240, 370, 1412], []]
    found = lines([*above, ["Board", "g/m²", "µm", "EUR/1000 m², EXW"], ["GC2", 250, 395, 328]])
    assert [(str(one.offer.basis), one.offer.delivered, str(one.state)) for one in found.values()] == [
        ("tonne", True, "accepted"), ("1000m2", False, "accepted"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("rolls", "sheets"),
    [
        ("Rolls are charged per tonne, ex works.", "Sheets cost per 1,000 sheets and are delivered to your works."),
        ("Rollen berechnen wir je Tonne, ab Werk.", "Formate kosten je 1.000 Bogen und werden frei Haus geliefert."),
        ("Les bobines sont facturées à la tonne, départ usine.", "Les feuilles se vendent aux 1 000 feuilles, franco."),
        (
            "Las bobinas se facturan por tonelada, en fábrica.",
            "Las hojas se facturan por millar de hojas, portes pagados.",
        ),
        ("Rullar debiterar vi per ton, fritt vårt bruk.", "Ark säljer vi per 1 000 ark, fritt er fabrik."),
    ],
)
def test_sections_say_by_what_their_goods_are_sold(rolls, sheets):
    head = ["Board", "g/m²", "µm", "Price EUR"]
    rows = [
        ["Ostwerk Karton AB"],
        [],
        [rolls],
        head,
        ["GC1", 240, 385, 1246],
        [],
        [sheets],
        [*head[:3], "Size mm", head[3]],
    ]
    found = lines([*rows, ["GC1", 240, 385, "700 x 1000", 221.5]])
    assert [line.offer.basis for line in found.values()] == ["tonne", "1000sheets"]


@pytest.mark.parametrize(
    "note", ["Freight is charged per tonne.", "Frachten berechnen wir je Tonne.", "Small orders are charged per tonne."]
)
def test_what_is_no_board_is_sold_by_no_unit_of_prices(note):
    (line,) = lines([[note], ["Board", "g/m²", "µm", "Price EUR"], ["GC1", 240, 385, 1246]]).values()
    assert line.offer.basis is None
