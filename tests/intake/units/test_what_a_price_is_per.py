"""What prices are per: a hundred pounds, a thousand feet, codes and signs, in heads and columns."""

import pytest

from tests.intake.readings import accepted, by_cell, read_rows
from tests.intake.sheets import book, codes, grid, lines, prices
from tracker.intake.read import read_workbook
from tracker.intake.values.heads.header import header
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.multiples import multiplied_in_head
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_a_form_in_a_title_or_head_is_not_what_a_price_is_per():
    titled = read_rows([["Rolls, USD"], [*HEAD, "USD/ST"], [*BOARD, 1162]])
    assert accepted(titled) == {"D3": ("SBS", "1162", "USD", "short_ton")}
    across = read_rows([["Prices per tonne, GBP"], [], ["Quality", "gsm", "Reels", "Sheets"], ["GC1", 240, 985, 1040]])
    assert set(accepted(across).values()) == {("FBB", "985", "GBP", "tonne"), ("FBB", "1040", "GBP", "tonne")}


def test_a_unit_says_what_is_measured_whatever_its_group_is_called():
    head = [["Product", "Substance", None, "Price, reels"], ["Grade", "g/m²", "µm", "€/t"]]
    reading = read_rows([*head, ["GC1", 250, 410, 1065]])
    assert accepted(reading) == {"D3": ("FBB", "1065", "EUR", "tonne")}
    offer = by_cell(reading)["D3"].offer
    assert (offer.grammage_gsm, offer.caliper_um) == (250, 410)


def test_a_price_per_100_lb():
    reading = read_rows([["US dollars"], [*HEAD, "Price per 100 lb"], [*BOARD, 61.4]])
    assert accepted(reading) == {"D3": ("SBS", "61.4", "USD", "cwt")}


@pytest.mark.parametrize(("unit", "basis"), [("cent livres", "cwt"), ("100 livres", "cwt"), ("livre", "lb")])
def test_a_hundred_pounds_are_no_cents(unit, basis):
    rows = [["Prix en dollars canadiens"], ["Produit", "pts", "lb/M pi²", "Prix", "Unité"], ["CUK", 21, 86, 78.4, unit]]
    offer = lines(rows)["D3"].offer
    assert (str(offer.price), offer.currency, offer.basis) == ("78.4", "CAD", basis)


_HEAD = ["Board", "Caliper (in.)", "BW (lb/MSF)", "Price"]
_ROWS = [_HEAD, ["SBS C1S", 0.016, 67, 61.35], ["CCNB", 0.018, 70, 45.2]]


def test_an_initial_is_no_thousand():
    found = lines([["Quoted by: M. Trennick"], ["USD per cwt"], [], *_ROWS])
    assert {line.offer.basis for line in found.values()} == {"cwt"}


@pytest.mark.parametrize(
    ("unit", "expected"),
    [("1 t", ("accepted", "1265", "tonne")), ("je 1 TO", ("accepted", "1265", "tonne")),
     ("100 kg", ("question", "1265", None))],
)  # fmt: skip
def test_a_price_unit_of_one_is_the_unit_itself(unit, expected):
    rows = [
        ["Kurztext", "Flächengewicht", "Dicke", "Preis", "Währung", "Preiseinheit"],
        ["GC1 Rolle", "240 g/m²", "385 µm", 1265, "EUR", unit],
    ]
    assert prices(lines(rows)) == {"D2": expected}


def test_a_price_on_an_unknown_unit_does_not_hold_back_the_one_beside_it():
    rows = [["Sorte", "g/m²", "µm", "EUR/100 kg", "EUR/t"], ["GC1", 250, 400, 138.5, 1295]]
    assert prices(lines(rows)) == {"D2": ("question", "138.5", None), "E2": ("accepted", "1295", "tonne")}


@pytest.mark.parametrize("head", ["Per 000", "£ per 000", "Per '000", "£/000", "je 000"])
def test_noughts_behind_per_are_a_thousand_sheets(head):
    assert not multiplied_in_head(head)
    basis = header(head).basis
    assert basis is not None
    assert basis.bases == {Basis.THOUSAND_SHEETS}


@pytest.mark.parametrize("head", ["Price ('000)", "EUR 000", "EUR 000/t"])
def test_noughts_beside_money_multiply_it(head):
    assert multiplied_in_head(head)


def test_a_stock_list_by_the_thousand_is_read_on_every_page():
    heads = ["Bay", "Board", "GSM", "Mic", "Size mm", "Shts left", "Per 000"]
    rows = [
        ["All prices in GBP per thousand sheets"], [], heads,
        ["B1", "Folding boxboard GC1", 240, 375, "640 x 900", 18400, 161.5], ["Ashmoor Ltd – p. 2"], heads,
        ["C1", "Folding boxboard GC2", 300, 500, "720 x 1020", 31000, 249.9],
    ]  # fmt: skip
    found = lines(rows)
    assert {cell: (str(line.state), line.offer.basis) for cell, line in found.items()} == {
        "G4": ("accepted", Basis.THOUSAND_SHEETS), "G7": ("accepted", Basis.THOUSAND_SHEETS),
    }  # fmt: skip


AMERICAN = [["SBS", 0.018, 74, 1140, 42.18], ["CUK", 0.021, 86, 1040, 44.72]]


@pytest.mark.parametrize(
    "head", ["Equivalent, per M sq ft", "Equals per MSF", "i.e. per MSF", "per MSF", "Per MSF equiv."]
)
def test_an_area_behind_per_is_what_a_price_is_for(head):
    rows = [["Prices in USD"], ["Board", "Caliper in", "lb/MSF", "Per short ton", head], *AMERICAN]
    found = lines(rows)
    assert sorted(found) == ["D3", "D4"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize(
    ("text", "rest"),
    [("$0.59 each", ""), ("0.59 each net", ""), ("$0.59 each way", "way"), ("1.18 the sheet", "")],
)
def test_a_word_that_leads_to_a_unit_may_be_one(text, rest):
    assert price_text(text).rest == rest


FIELDS = ["MATNR", "MAKTX", "KBETR", "KONWA", "KPEIN", "KMEIN"]


def test_a_price_per_100_kg_is_still_asked_about():
    found = lines([FIELDS, ["4712", "GD2 350 g/m² 450 µm", 82.5, "EUR", 100, "KG"]])
    assert codes(found["C2"]) == {"basis-unknown"}


@pytest.mark.parametrize(
    ("per", "unit"), [("je", "ME"), ("Per", "UoM"), ("par", "Unité"), ("por", "Unidad"), ("per", "Enhet")]
)
def test_figures_under_per_count_the_units_beside_them(per, unit):
    rows = [["GC1", 230, 380, 1150, 1000, "KG"], ["GD2", 350, 450, 84, 100, "KG"], ["GC2", 270, 455, 1190, 1, "t"]]
    found = lines([["Preise in EUR"], ["Sorte", "g/m²", "µm", "Preis", per, unit], *rows])
    assert (str(found["D3"].state), found["D3"].offer.basis.value) == ("accepted", "tonne")
    assert codes(found["D4"]) == {"basis-unknown"}
    assert (str(found["D5"].state), found["D5"].offer.basis.value) == ("accepted", "tonne")


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


def test_delivered_in_a_price_is_no_pound():
    found = lines([["Carton", "Calibre pt", "lb/M pi²", "Prix livré $ US"], ["SBS C1S", 18, 76, 1240]])["D2"]
    assert (str(found.state), found.offer.basis, found.offer.delivered) == ("question", None, True)


@pytest.mark.parametrize("unit", ["lb/M pi²", "lb/millar pies²", "lb/1000 pi²"])
def test_pounds_on_a_thousand_feet(unit):
    found = offer([["USD/TM"], [], ["Grado", "Calibre", "Peso", "Precio"], ["URB", "24 pts", f"83 {unit}", 640]], "D4")
    assert float(found.grammage_gsm) == pytest.approx(83 * 4.8824276364, rel=1e-9)


def test_notes_by_letter_say_what_the_columns_that_carry_them_are_per():
    notes = [["(a) en euros la tonne"], ["(b) en euros les 1000 feuilles"]]
    rows = [
        ["Qualité", "g/m²", "µm", "Bobines (a)", "Feuilles 72 x 102 cm (b)"],
        ["GC1", 250, 415, 1291, 251.72],
        [],
        *notes,
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["tonne", "1000sheets"]


@pytest.mark.parametrize("title", ["Tarifa 2026 €/t", "Tarif 2026 €/t", "Liste de prix 2026 €/t"])
def test_a_list_of_a_year_names_its_unit(title):
    assert offer([[title], [], ["Qualité", "g/m²", "µm", "Prix"], ["GD2", 350, 470, 843]], "D4").currency == "EUR"


@pytest.mark.parametrize(
    ("unit", "basis"),
    [("/mille pi² (MPC)", "msf"), ("/MPC", "msf"), ("/cwt (100 lb)", "cwt"), ("/tonne courte", "short_ton")],
)
def test_thousands_of_square_feet_in_french(unit, basis):
    rows = [["Prix en dollars canadiens"], ["Produit", "Épaisseur (pt)", "Poids (lb/1000 pi²)", "Prix", "Unité"]]
    found = lines([*rows, ["Carton gris (URB)", 30, 104, 50.4 if basis != "short_ton" else 980, unit]])
    assert [line.offer.basis for line in found.values()] == [basis]


US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def of_book(*grids):
    return {
        (line.offer.source.sheet, line.offer.source.cell): line for line in read_workbook(book(*grids), Answers()).lines
    }


class TestUnitsByCode:
    HEADS = (*US, "Price", "Basis")

    def test_a_column_of_codes_that_a_key_explains_says_what_prices_are_per(self):
        rows = [self.HEADS, ["SBS C1S", 14, 60, 1228, "A"], ["CUK", 18, 74, 54.8, "B"]]
        key = [["Basis codes"], ["A", "US dollars per short ton"], ["B", "US dollars per cwt (100 lb)"]]
        found = of_book(grid(rows, "Prices"), grid(key, "Key"))
        assert [line.offer.basis for line in found.values()] == [Basis.SHORT_TON, Basis.CWT]

    def test_a_code_that_nothing_explains_is_asked_about(self):
        found = lines([["US dollars"], self.HEADS, ["SBS C1S", 14, 60, 1228, "A"], ["CUK", 18, 74, 54.8, "B"]])
        assert {str(line.state) for line in found.values()} == {"question"}

    def test_a_basis_with_figures_is_a_weight(self):
        found = lines([["USD/ST"], ["Board", "pt", "Basis", "Price"], ["SBS C1S", 14, 60, 1228]])
        assert found["D3"].offer.basis is Basis.SHORT_TON


class TestSignsOfUnits:
    BOARDS = ("GC1 240 g/m² 0,38 mm", "GC2 275 g/m² 0,45 mm", "CUK 330 g/m² 0,44 mm")

    def test_prices_in_two_units_lie_far_apart(self):
        rows = [["Sorte", "Preis"], *zip(self.BOARDS, ["1.142,50 €/t", "1.230 €/t", "1,155 €/kg"], strict=True)]
        assert {f"{line.offer.price:f}" for line in lines(rows).values()} == {"1142.50", "1230", "1.155"}

    def test_prices_in_one_unit_do_not(self):
        rows = [["Sorte", "Preis"], *zip(self.BOARDS, ["1.142,50 €/t", "1.230 €/t", "1,155 €/t"], strict=True)]
        assert "question" in {str(line.state) for line in lines(rows).values()}


@pytest.mark.parametrize("text", ["USD 635 PMT", "USD 635 P/MT", "USD 635/PMT"])
def test_per_metric_ton_in_letters(text):
    price = price_text(text)
    assert price is not None
    assert price.basis is not None
    assert price.basis.bases == {Basis.TONNE}


def test_payment_in_letters_is_no_unit():
    rows = [["Grade", "g/m²", "µm", "USD/short ton", "Pmt terms"], ["GC1", 250, 410, 1065, "net 30"]]
    assert accepted(read_rows(rows)) == {"D2": ("FBB", "1065", "USD", "short_ton")}


def test_the_cent_of_a_head_is_money_and_no_hundred():
    (line,) = lines(
        [["Grade", "Caliper (pt)", "Basis weight (lb/3000 ft²)", "Cent pound"], ["SBS", 18, 180, 61]]
    ).values()
    assert (str(line.state), str(line.offer.price), line.offer.currency, line.offer.basis) == (
        "accepted",
        "0.61",
        "USD",
        "lb",
    )
