"""How thick board is: points, microns and millimetres by their signs, and figures that are no caliper."""

from decimal import Decimal

import pytest

from tests.intake.readings import by_cell, read_rows
from tests.intake.sheets import codes, lines, read
from tracker.intake.values.boards.caliper import caliper_unit, find_calipers
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.trade.offer import State


def only(rows, cell):
    found = lines(rows)
    assert list(found) == [cell]
    return found[cell]


@pytest.mark.parametrize(
    "earlier",
    ["was 20 pt", "formerly 20 pt", "früher 20 pt", "anciennement 20 pt", "antes 20 pt", "tidigare 20 pt"],
)
def test_what_a_board_was_is_not_its_caliper(earlier):
    line = only([["USD/ST"], ["Description", "Price"], [f"SBS 18 ({earlier}) C1S", 1190]], "B3")
    assert (str(line.state), line.offer.caliper_um) == ("question", None)
    own = only([["USD/ST"], ["Description", "Price"], [f"SBS 18 pt ({earlier}) C1S", 1190]], "B3")
    assert (str(own.state), round(own.offer.caliper_um)) == ("accepted", 457)
    bracketed = only([["USD/ST"], ["Description", "Price"], ["SBS (20 pt) C1S", 1190]], "B3")
    assert round(bracketed.offer.caliper_um) == 508


def test_a_change_in_per_cent_is_no_caliper_in_inches():
    head = ["Qualität", "g/m²", "Dicke µm", "Preis alt", "Preis neu EUR/t", "in %"]
    (line,) = lines([head, ["GC1", 230, 365, 1210, 1245, 2.9]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 365)


@pytest.mark.parametrize("head", ["Main µm", "Main (µm)", "Bulk µm", "Bulk (micron)", "Volumen µm", "Mano (micras)"])
def test_bulk_in_a_length_is_the_caliper(head):
    rows = [["GC1 Board", "g/m²", head, "EUR/1000 kg"], ["GC1", 230, 360, 1124], ["GC2", 300, 505, 1046]]
    assert [line.offer.caliper_um for line in lines(rows).values()] == [360, 505]


@pytest.mark.parametrize("head", ["Main (cm³/g)", "Bulk cm³/g", "Volumen (cm³/g)", "Bulk", "Main"])
def test_bulk_by_itself_is_a_property(head):
    assert header(head).role is Role.PROPERTY


def test_a_volume_in_tons_is_no_caliper():
    assert header("Volym (t)").caliper_unit is None


@pytest.mark.parametrize(("text", "unit"), [("µ", "um"), ("(μ)", "um"), ("u", None)])
def test_the_sign_of_a_micron_stands_alone(text, unit):
    assert (None if caliper_unit(text) is None else caliper_unit(text).value) == unit


def test_a_roll_s_width_in_the_description_leaves_the_caliper_beside_it_alone():
    head = ["Description", "gsm", "Microns", "GBP/tonne"]
    (line,) = lines([head, ["GC1 FBB, reels 1,020mm", 280, "475 mic", 1140]]).values()
    assert line.offer.caliper_um == 475
    (line,) = lines([head, ["GC1 FBB, 0.48 mm", 280, "475 mic", 1140]]).values()
    assert "caliper-unknown" not in codes(line)
    (line,) = lines([head, ["GC1 FBB, 0.60 mm", 280, "475 mic", 1140]]).values()
    assert "caliper-unknown" in codes(line)


LIST = ["Cartonnerie du Vallon SA, tarif départ usine"]
ROWS = [["GD2", 260, 335, "0,842"], ["GC2", 250, 400, "1,226"]]


@pytest.mark.parametrize("head", ["Main µ", "Main (μ)", "Épaisseur µ", "Dicke µ", "Grosor µ", "Bulk µ", "Bouffant µ"])
def test_a_lone_micron_sign_is_the_unit_of_a_caliper(head):
    found = lines([LIST, ["Qualité", "Gr/m²", head, "Prix EUR/kg"], *ROWS])
    assert [(str(one.state), one.offer.caliper_um) for one in found.values()] == [("accepted", 335), ("accepted", 400)]


@pytest.mark.parametrize("head", ["Main", "Main cm³/g", "Rugosité µ", "Lissé PPS µ"])
def test_bulk_and_smoothness_are_no_caliper(head):
    found = lines([LIST, ["Qualité", "Gr/m²", head, "Prix EUR/kg"], *ROWS])
    assert [one.offer.caliper_um for one in found.values()] == [None, None]


def test_a_leading_nought_settles_the_sign_of_its_column():
    alone = lines([LIST, ["Qualité", "Gr/m²", "Main µ", "Prix EUR/kg"], ["GC2", 250, 400, "1,226"]])
    both = lines([LIST, ["Qualité", "Gr/m²", "Main µ", "Prix EUR/kg"], *ROWS])
    assert [str(one.offer.price) for one in both.values()] == ["0.842", "1.226"]
    assert alone["D3"].offer.price is None or str(alone["D3"].offer.price) == "1.226"


@pytest.mark.parametrize(
    ("text", "calipers"),
    [
        ("GC2 275 g/m², 0,44 mm, Rolle 1.120 mm", [440]), ("GC2 440 µm bobine 1.120 mm", [440]),
        ("Greyboard roll 1.120 mm", [1120]), ("GC2 0,44 mm, Nutzen 1.120 mm", [440, 1120]),
    ],
)  # fmt: skip
def test_beside_a_caliper_a_figure_behind_roll_is_its_width(text, calipers):
    assert [reading.um for reading in find_calipers(text)] == [Decimal(um) for um in calipers]


@pytest.mark.parametrize(("head", "caliper"), [("Web", Decimal("457.2")), ("Thickness", None)])
def test_inches_below_a_word_for_width_are_no_caliper(head, caliper):
    rows = [
        ["USD per short ton"], ["Board", "Caliper", "Weight", head, "Net"],
        [None, "points", "lb per 1,000 sq ft", "inches", "USD"],
        ["SBS C1S", 18, 76, 42.5, 1214], ["SBS C2S", 16, 70, 38, 1250],
    ]  # fmt: skip
    assert next(iter(lines(rows).values())).offer.caliper_um == caliper


@pytest.mark.parametrize(("first", "second"), [("Dicke", "Bahn"), ("Ep.", "Machine"), ("Thickness", "Slit")])
def test_millimetres_that_no_board_is_thick_are_a_width_beside_those_that_one_is(first, second):
    heads = [["EUR/tonne"], ["Sorte", first, "g/m²", second, "Preis"], [None, "mm", None, "mm", None]]
    found = lines([*heads, ["GC1", 0.41, 250, 1020, 1214], ["GD2", 0.45, 350, 1200, 900]])
    assert [line.offer.caliper_um for line in found.values()] == [410, 450]
    alone = lines([*heads, ["GC1", None, 250, 1020, 1214], ["GD2", None, 350, 1200, 900]])
    assert not any(line.offer.caliper_um for line in alone.values())


def test_a_title_repeated_over_each_column_makes_no_prices_of_calipers():
    title = "Tarif 2026 - €/t franco"
    rows = [
        ["Cartons Réole", None, None, "Page 1/2"], [title], ["Qualité", "g/m²", "µm", "Prix"],
        ["GC1", 250, 400, 1230], ["GC1", 275, 450, 1225], ["1", "Cartons Réole", None, "Page 2/2"],
    ]  # fmt: skip
    assert {line.offer.caliper_um for line in read(rows).lines if line.state is State.ACCEPTED} == {400, 450}


def test_a_price_under_a_blank_head_is_no_caliper():
    rows = [
        ["Producto", None, None, "Precio", None], ["Calidad", "Gramaje", "Calibre", None, "Sur"],
        [None, "g/m²", "µm", "€/t", "€/t"], ["GC2", 240, 390, 1239, 1258], ["GD2", 400, 530, 836, 855],
    ]  # fmt: skip
    assert {line.offer.caliper_um for line in lines(rows).values()} == {390, 530}


def test_hundredths_of_a_millimetre():
    heads = ["Sorte", "g/m²", "Dicke 1/100 mm", "Preis"]
    (line,) = lines([["EUR/t"], heads, ["GC1", 230, 38, 1225]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 380)


@pytest.mark.parametrize(
    ("unit", "figure"),
    [
        ("1/10 mm", 8), ("tenths of a mm", 8), ("Zehntel mm", 8), ("dixièmes de mm", 8), ("1/10e de mm", 8),
        ("décimas de mm", 8), ("tiondels mm", 8), ("0,1 mm", 8), ("1/100 mm", 80), ("hundredths of mm", 80),
        ("Hundertstel mm", 80), ("centièmes de mm", 80), ("centésimas de mm", 80), ("hundradels mm", 80),
    ],
)  # fmt: skip
def test_parts_of_a_millimetre(unit, figure):
    units = [[None, unit, "g/m²", "EUR/t"], [None, f"({unit})", "g/m²", "EUR/t"]]
    for below in units:
        rows = [["Sorte", "Dicke", "Gewicht", "Preis"], below, ["Graupappe", figure, 510, 712]]
        (line,) = lines(rows).values()
        assert (str(line.state), line.offer.caliper_um) == ("accepted", 800)


def test_a_figure_in_whole_millimetres_below_tenths_of_them_is_asked_about():
    rows = [["Sorte", "Dicke", "Gewicht", "Preis"], [None, "1/10 mm", "g/m²", "EUR/t"], ["Graupappe", 0.8, 510, 712]]
    (line,) = lines(rows).values()
    assert codes(line) == {"caliper-unknown"}


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


def test_a_lone_mu_behind_a_number_is_microns():
    found = offer([["EUR/t"], ["Désignation", "Prix"], ["SBS couché 1 côté 270 g/m² 345µ", 1405]], "B3")
    assert (found.caliper_um, found.coated_sides) == (345, 1)


def test_a_bulk_in_microns_is_a_caliper_and_one_by_itself_none():
    board = ["GC2", 260, 425, 1240]
    (line,) = lines([["Carton", "Poids g/m²", "Main µm", "€ / t"], board]).values()
    assert line.offer.caliper_um == 425
    (line,) = lines([["Carton", "Poids g/m²", "Main cm³/g", "€ / t"], ["GC2", 260, 1.63, 1240]]).values()
    assert line.offer.caliper_um is None


@pytest.mark.parametrize(
    "head",
    [
        "Grosor\n(milésimas de mm)",
        "Dicke (Tausendstel mm)",
        "Caliper, thousandths of a mm",
        "Épaisseur (millièmes de mm)",
        "Tjocklek, tusendels mm",
    ],
)
def test_thousandths_of_a_millimetre_are_micrometres(head):
    (line,) = lines([["Board", "g/m²", head, "EUR/t"], ["GC1", 260, 415, 1287]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 415)


def test_millimetres_and_thousandths_of_an_inch_stay_what_they_are():
    (line,) = lines([["Board", "g/m²", "Grosor (mm)", "EUR/t"], ["GC1", 260, 0.415, 1287]]).values()
    assert line.offer.caliper_um == 415
    (line,) = lines([["Board", "lb/MSF", "Caliper (thousandths)", "$/ST"], ["SBS", 75, 18, 1287]]).values()
    assert float(line.offer.caliper_um) == 457.2


def test_days_of_the_calendar_are_no_caliper():
    rows = [["Short text", "Net price USD/cwt", "PlDelTime (cal. days)", "GR-IV"]]
    line = lines([*rows, ["SBS C1S 18PT 77#/MSF", 58.75, 21, "X"], ["SBS C1S 16PT 69#/MSF", 59.4, 28, "X"]])["B2"]
    assert (str(line.state), line.offer.lead_days, round(line.offer.caliper_um)) == ("accepted", (21, 21), 457)


def test_thousandths_of_an_inch_in_a_description():
    reading = read_rows(
        [
            ["Wickett Board Sales LLC"],
            ["Item", "Item description", "Your price"],
            ["1003", "CCNB .024 94 lbs/msf sheets 28x40", "$430.50/M"],
        ]
    )
    assert by_cell(reading)["C3"].offer.caliper_um == Decimal("609.6")


def test_a_figure_in_thousandths_of_an_inch():
    (line,) = lines(
        [["Grade", "Caliper (thousandths of an inch)", "g/m²", "CAD per tonne"], ["GC1", 18, 300, 1600]]
    ).values()
    assert line.offer.caliper_um == Decimal("457.2")


def test_a_unit_under_each_and_a_caliper_before_a_comma():
    rows = [["What we are offering", "Each", "US$"], ["SBS, coated two sides, .016, 69 lbs/MSF", "ST", 1231]]
    line, _ = lines([*rows, ["Plain chipboard .026 in, 91 lbs/MSF", "LB", 0.361]]).values()
    assert (line.offer.price, line.offer.caliper_um, line.offer.basis) == (1231, Decimal("406.4"), "short_ton")


def test_an_impossible_caliper_in_microns_is_in_no_points():
    rows = [["SEK/ton"], ["Sort", "g/m²", "µm", "Pris"], ["GD2", 280, 370, 8900], ["GC2", 270, 90, 12800]]
    found = lines(rows)
    assert str(found["D3"].state) == "accepted"
    assert found["D3"].offer.basis == "tonne"
    assert str(found["D4"].state) == "question"


@pytest.mark.parametrize("head", ["Espesor (milésimas)", "Calibre, milésimas", "Milésimas"])
def test_thousandths_of_nothing_are_those_that_board_can_be(head):
    (line,) = lines([["Calidad", "Gramaje g/m²", head, "EUR/kg"], ["GC1", 240, 450, 1.12]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 450)
    (line,) = lines([["Calidad", "lb/MSF", head, "USD/ton corta"], ["SBS", 75, 18, 1240]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", Decimal("457.2"))


@pytest.mark.parametrize(
    ("cell", "um"),
    [
        ("450 milésimas", 450),
        ("18 milésimas", Decimal("457.2")),
        ("18 milésimas de pulgada", Decimal("457.2")),
        ("450 milésimas de mm", 450),
    ],
)
def test_so_they_are_behind_their_figure(cell, um):
    (line,) = lines([["Calidad", "Gramaje g/m²", "Espesor", "USD/tonelada"], ["GC1", 260, cell, 1120]]).values()
    assert line.offer.caliper_um == um


@pytest.mark.parametrize("head", ["Thickness", "Dicke", "Épaisseur", "Espesor", "Tjocklek"])
def test_three_figures_from_a_nought_are_points_or_millimetres(head):
    def measured(caliper, *more, weight="g/m²", unit="EUR/t"):
        rows = [["Price list", unit], ["Board", head, weight, "Price"], ["GC1", caliper, *more, 1180]]
        (line,) = lines(rows).values()
        return (round(float(line.offer.caliper_um)) if line.offer.caliper_um else None), codes(line)

    assert measured("030", 350) == (None, {"caliper-unknown"})
    assert measured("045", 350) == (None, {"caliper-unknown"})
    assert measured("0,30", 300)[0] == 300
    # What pounds or short tons say of the file, holds for its calipers.
    assert measured("018", 75, weight="lb/MSF", unit="USD/ST")[0] == 457
    assert measured("018", "", weight="Note", unit="USD/ST")[0] == 457
    assert "caliper-unknown" in measured("018", "", weight="Note")[1]


@pytest.mark.parametrize("caliper", ["18 †", "18†", "18*", "18 ‡"])
def test_a_footnotes_sign_behind_a_caliper_leaves_it_what_it_is(caliper):
    (line,) = lines([["Board", "Caliper pt", "lb/MSF", "$/cwt"], ["SBS", caliper, 72, 47.6]]).values()
    assert float(line.offer.caliper_um) == pytest.approx(457.2)
