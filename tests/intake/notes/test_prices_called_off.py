"""Prices that a footnote, a remark or a comment calls off are no offers; what only limits them leaves them one."""

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Sorte", "g/m²", "µm", "Preis EUR/t"]
ASKED, OFFERED = State.QUESTION, State.ACCEPTED


def noted(note, sign=" *"):
    """A list of three boards, the second price of which carries a sign, above its note."""
    rows = [["EUR/t"], HEAD, ["GC2", 230, 380, 1064], ["GC2", 270, 445, f"1055{sign}"], ["GD2", 350, 470, 771]]
    return [line.state for line in lines([*rows, [], [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "* Price withdrawn on 12 May, no longer offered. A new figure follows.", "* under review", "* sold",
        "* Preis zurückgezogen", "* wird nicht mehr angeboten", "* Preis wird derzeit überprüft", "* bereits verkauft",
        "* prix retiré", "* n'est plus proposé", "* prix non valable", "* vendu",
        "* ya no se ofrece", "* precio en revisión", "* vendido",
        "* erbjuds inte längre", "* priset gäller inte", "* under översyn", "* såld",
        "Prices marked with * are under review.", "Mit * gekennzeichnete Preise sind zurückgezogen.",
    ],
)  # fmt: skip
def test_a_price_whose_footnote_calls_it_off_is_asked_about(note):
    assert noted(note) == [OFFERED, ASKED, OFFERED]


@pytest.mark.parametrize(
    "note",
    [
        "* delivered from stock", "* no longer offered in rolls", "* not valid for orders below 5 t",
        "* sold in full pallets only", "* withdrawn if not confirmed by 30 June", "* energy surcharge suspended",
        "* nur in Rollen", "* nicht gültig für Aufträge unter 5 t", "* nicht zurückgezogen", "* Zuschlag entfällt",
        "* zweiseitig gestrichen", "* wird nur palettenweise verkauft", "* no longer offered after 30 June 2027",
        "* vendu par palette complète", "* sous réserve de disponibilité", "* ya no se ofrece en bobina",
        "* säljs endast i hela pallar", "* gäller inte för order under 5 ton",
    ],
)  # fmt: skip
def test_a_footnote_that_only_limits_the_offer_leaves_it_one(note):
    assert noted(note) == [OFFERED] * 3


@pytest.mark.parametrize("sign", ["*", "**", "†", " ¹", " 1)", " (1)", " *)", " (*)", " ¹)", " *, 2)"])
def test_the_sign_may_be_written_in_many_ways(sign):
    assert noted(f"{sign.split()[0].rstrip(',')} withdrawn", sign) == [OFFERED, ASKED, OFFERED]


def test_a_number_may_show_its_sign_by_its_format():
    rows = [["EUR/t"], HEAD, ["GC2", 230, 380, 1064], ["GC2", 270, 445, 1055], [], ["* withdrawn"]]
    found = lines(rows, formats={(3, 3): '#,##0" *"'})
    assert [line.state for line in found.values()] == [OFFERED, ASKED]


@pytest.mark.parametrize(
    "rows",
    [
        [["* withdrawn"], ["EUR/t"], HEAD, ["GC2", 230, 380, 1064], ["GC2", 270, 445, "1055*"], ["GD2", 350, 470, 771]],
        [["EUR/t"], HEAD, ["GC2", 230, 380, 1064], ["GC2 *", 270, 445, 1055], ["* withdrawn"], ["GD2", 350, 470, 771]],
        [["EUR/t"], HEAD, ["GC2", 230, 380, 1064], ["GC2", 270, 445, 1055, "*"], ["GD2", 350, 470, 771], ["*", "sold"]],
        [["EUR/t"], [*HEAD, "Status"], ["GC2", 230, 380, 1064], ["GC2", 270, 445, 1055, "under review"],
         ["GD2", 350, 470, 771]],
    ],
)  # fmt: skip
def test_the_sign_and_the_note_may_stand_anywhere(rows):
    assert [line.state for line in lines(rows).values()] == [OFFERED, ASKED, OFFERED]


def test_a_sign_at_one_price_of_a_row_is_not_about_the_next():
    head = [*HEAD[:3], "EUR/t < 5 t", "EUR/t ab 5 t"]
    rows = [head, ["GC2", 230, 380, "1064 *", 1020], ["GC2", 270, 445, 1055, 1010], [], ["* nicht mehr gültig"]]
    assert [line.state for line in lines(rows).values()] == [ASKED, OFFERED, OFFERED, OFFERED]


def test_the_note_may_stand_on_another_sheet_and_hold_for_a_group():
    prices = [["EUR/t"], HEAD, ["FBB *"], ["X1", 230, 380, 1064], ["CRB"], ["Y1", 350, 470, 771]]
    found = read_workbook(book(grid(prices, sheet="P"), grid([["* no longer offered"]], sheet="N")), Answers())
    assert [line.state for line in found.lines] == [ASKED, OFFERED]


@pytest.mark.parametrize("note", ["All these prices are under review.", "Alle Preise sind in Überarbeitung."])
def test_a_note_may_call_off_the_whole_list(note):
    assert noted(note, "") == [ASKED] * 3


def remarked(remark, lead):
    rows = [
        [*HEAD, "Lieferzeit", "Bemerkung"],
        ["GC1", 250, 400, 1240, "3 Wochen"],
        ["GD2", 300, 385, 880, lead, remark],
    ]
    found = lines(rows)
    return found["D3"].state, codes(found["D3"])


GONE = ["discontinued", "no longer made", "eingestellt", "nicht mehr hergestellt", "abandonné", "fabrication arrêtée",
        "descatalogado", "ya no se fabrica", "utgår", "tillverkas inte längre"]  # fmt: skip


@pytest.mark.parametrize("remark", GONE)
def test_a_board_made_no_more_is_sold_from_stock_and_asked_about_without(remark):
    """A mill can't make it for the buyer at this price, but a merchant sells what he has at what he asks for it."""
    assert remarked(remark, "ab Lager") == (OFFERED, {"validity-unread"})
    assert remarked(remark, "3 Wochen") == (ASKED, {"number-ambiguous"})


@pytest.mark.parametrize(
    "remark",
    ["to be discontinued", "will be discontinued in June", "end of line", "Auslaufartikel", "läuft aus",
     "to be discontinued; replaced by SBS 20 pt", "läuft aus, ersetzt durch GC2", "fin de série, remplacé par GC2",
     "wird eingestellt", "fin de série", "sera supprimé", "a extinguir", "será descatalogado", "ska utgå", "fasas ut"],
)  # fmt: skip
@pytest.mark.parametrize("lead", ["ab Lager", "3 Wochen"])
def test_a_board_that_will_go_is_offered_as_yet_and_told(remark, lead):
    assert remarked(remark, lead) == (OFFERED, {"validity-unread"})


@pytest.mark.parametrize(
    "remark", ["to be discontinued 30 September 2027", "phase-out September 2027", "utgår efter hand"]
)
def test_the_last_day_of_a_board_is_none_of_its_price(remark):
    rows = [["Ware", "g/m²", "µm", "EUR/t", "Hinweis"], ["GC1", 250, 400, 1180, remark], ["GC2", 250, 410, 1090, None]]
    going, other = lines(rows).values()
    assert (going.offer.valid_until, codes(going)) == (None, {"validity-unread"})
    assert codes(other) == set()


@pytest.mark.parametrize(
    "remark",
    ["not to be discontinued", "replaces 270 g, which is to be discontinued", "la remise sera supprimée",
     "Preisbindung läuft aus", "Energiezuschlag wird eingestellt"],
)  # fmt: skip
def test_a_board_that_stays_is_told_to_nobody(remark):
    assert remarked(remark, "3 Wochen") == (OFFERED, set())


@pytest.mark.parametrize(
    "remark", ["withdrawn from sale, sold out", "verkauft", "prix retiré", "vendido", "såld", "under review"]
)
def test_a_price_called_off_is_asked_about_in_stock_too(remark):
    assert remarked(remark, "ab Lager")[0] is ASKED


def test_the_end_of_a_month_calls_no_price_off():
    """Swedish says of a price that ends then what it says of a board that is gone."""
    assert remarked("Gäller till utgången av juni 2027", "3 Wochen") == (OFFERED, set())
    assert remarked("utgår", "3 Wochen")[0] is ASKED


@pytest.mark.parametrize(
    "remark", ["läuft aus – alter Preis, nicht mehr gültig", "to be discontinued, price superseded"]
)
def test_a_price_that_is_out_of_force_is_not_saved_by_a_board_that_will_go(remark):
    assert remarked(remark, "3 Wochen")[0] is not State.ACCEPTED
