"""Discounts of unknown size that still come off are asked about; rebates, classes and net prices are not."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.intake.values.changes.discounts import discount_to_come
from tracker.trade.offer import Answers, State

HEAD = ["Board", "gsm", "micron", "EUR/t"]
BOARDS = [["SBS", 240, 340, 1298], ["GC1", 280, 450, 1180], ["GD2", 300, 420, 845]]


def with_columns(*heads):
    rows = [[*row, *(8 * (n + 1) * (100 if place + 1 < len(heads) else 1) for place in range(len(heads)))]
            for n, row in enumerate(BOARDS)]  # fmt: skip
    return {str(line.state) for line in lines([[*HEAD, *heads], *rows]).values()}


@pytest.mark.parametrize(
    "heads",
    [("Rebate steps (t/yr)", "Rebate EUR/t"), ("Bonusstaffel (t/Jahr)", "Bonus EUR/t"), ("Jahresbonus EUR/t",),
     ("Barème de ristourne (t/an)", "Ristourne EUR/t"), ("Rappel anual (t/año)", "Rappel EUR/t"),
     ("Årsbonus (t/år)", "Bonus EUR/t")],
)  # fmt: skip
def test_a_rebate_on_a_year_leaves_the_price(heads):
    assert with_columns(*heads) == {"accepted"}


@pytest.mark.parametrize("heads", [("Rebate EUR/t",), ("t/yr", "Discount %")])
def test_any_other_discount_is_asked_about(heads):
    assert with_columns(*heads) == {"question"}


FRENCH_HEAD = ["Qualité", "g/m²", "µm"]
GC2, GD2 = ["GC2", 235, 380], ["GD2", 300, 400]
ASKED, OFFERED = State.QUESTION, State.ACCEPTED


def states(rows):
    return [line.state for line in lines(rows).values()]


def noted(note, head="Tarif brut EUR/t"):
    return states([[*FRENCH_HEAD, head], [*GC2, 1340], [*GD2, 985], [], [note]])


@pytest.mark.parametrize(
    "note",
    [
        "Les prix ci-dessus sont bruts : la remise de votre contrat (voir votre lettre) est encore à déduire.",
        "Tarif hors remise contractuelle", "Prix avant remise", "Votre remise habituelle vient en déduction.",
        "Prices are gross: your contract discount still comes off.", "List prices before discount",
        "Your customary rebate is to be deducted.", "Your rebate is not yet deducted", "Discount as per contract",
        "Bruttopreise, abzüglich Ihres Vertragsrabatts", "Ihr üblicher Rabatt geht noch ab.",
        "Von diesen Preisen geht Ihr vereinbarter Rabatt ab.", "Preise ohne Ihren Kundenrabatt",
        "Precios brutos, menos su descuento habitual", "Falta deducir su descuento", "Sin su descuento habitual",
        "Bruttopriser, er avtalsrabatt avgår", "Priser före rabatt", "Er rabatt är inte avdragen",
    ],
)  # fmt: skip
def test_a_discount_of_unknown_size_that_still_comes_off_is_asked_about(note):
    assert noted(note) == [ASKED] * 2


@pytest.mark.parametrize(
    "note",
    [
        "Prices are net", "Discount already deducted", "2 % 10 days", "2 % cash discount within 10 days", "No discount",
        "Prices are net, your contract discount has been deducted", "Prices include your usual discount",
        "Quantity discounts on request", "Discount for orders over 20 t", "Net of your contract discount",
        "Rabatt bereits abgezogen", "2 % Skonto bei Zahlung innerhalb 10 Tagen", "Ihr Kundenrabatt ist eingerechnet",
        "Mengenrabatt auf Anfrage", "Jahresbonus laut Vereinbarung", "kein Rabatt",
        "Remise déjà déduite", "Escompte 2 % à 10 jours", "Sans remise", "Remise quantitative sur demande",
        "Descuento ya deducido", "2 % por pronto pago", "Precios netos de descuento",
        "Rabatten är redan avdragen", "Kassarabatt 10 dagar", "Er rabatt ingår", "Mängdrabatt på begäran",
        "Widths under 18 in. carry a trim allowance agreed at order entry.",
    ],
)  # fmt: skip
def test_a_discount_that_is_in_the_prices_or_hangs_on_something_changes_nothing(note):
    assert noted(note) == [OFFERED] * 2
    assert not discount_to_come(note)


@pytest.mark.parametrize("head", ["Prix brut EUR/t (remise à déduire)", "Listenpreis EUR/t abzgl. Ihres Rabatts"])
def test_the_head_of_the_prices_may_say_so(head):
    assert noted("", head) == [ASKED] * 2


def test_a_remark_a_star_and_another_sheet_may_say_so():
    remarked = [[*FRENCH_HEAD, "EUR/t", "Remarks"], [*GC2, 1340, "less your contract discount"], [*GD2, 985, None]]
    starred = [[*FRENCH_HEAD, "EUR/t"], [*GC2, "1340*"], [*GD2, 985], [], ["* less your contract discount"]]
    assert states(remarked) == states(starred) == [ASKED, OFFERED]
    prices, terms = grid([[*FRENCH_HEAD, "EUR/t"], [*GC2, 1340]], sheet="P"), grid([["Remise à déduire"]], sheet="C")
    assert [line.state for line in read_workbook(book(prices, terms), Answers()).lines] == [ASKED]


def test_net_prices_beside_the_list_are_what_the_discount_leads_to():
    note = ["List prices less your contract discount give the net prices"]
    assert (
        states([[*FRENCH_HEAD, "List EUR/t", "Net EUR/t"], [*GC2, 1340, 1300], [*GD2, 985, 950], [], note])
        == [OFFERED] * 2
    )
    assert noted(note[0], "Net price EUR/t") == [OFFERED] * 2


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


def test_a_class_of_discount_takes_nothing_off():
    rows = [[*EXPORT_HEAD, "Disc. class", "USD/ST"], [*BOARD, "A", 1190], ["CRB", 18, 70, "B", 850]]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


DISCOUNTED = [(1232, 1400, 12), (1210, 1375, 12), (1192.5, 1325, 10)]


def beside_a_discount(heads, figures):
    """Which of the columns D, E and F hold offers, each with its state."""
    rows = [[*board[:3], *row] for board, row in zip(BOARDS, figures, strict=True)]
    return {cell[0]: str(line.state) for cell, line in lines([["EUR/t"], [*HEAD[:3], *heads], *rows]).items()}


@pytest.mark.parametrize(
    "heads",
    [
        ("Your price", "List", "Disc."), ("Your price", "General tariff", "Discount %"),
        ("Ihr Preis", "Allgemeine Preisliste", "Rabatt"), ("Votre prix", "Tarif général", "Remise"),
        ("Su precio", "Tarifa general", "Dto."), ("Ert pris", "Generellt pris", "Rabatt %"),
        ("Price A", "Price B", "Discount"), ("Prix A", "Prix B", "Remise"),
    ],
)  # fmt: skip
def test_what_a_discount_leaves_of_another_price_is_the_price_to_pay(heads):
    assert beside_a_discount(heads, DISCOUNTED) == {"D": "accepted"}
    in_words = [(net, listed, f"{share} %") for net, listed, share in DISCOUNTED]
    assert beside_a_discount(heads, in_words) == {"D": "accepted"}
    in_money = [(net, listed, listed - net) for net, listed, _ in DISCOUNTED]
    assert beside_a_discount(heads, in_money) == {"D": "accepted"}
    turned = [(listed, net, share) for net, listed, share in DISCOUNTED]
    assert beside_a_discount(("Prix A", "Prix B", heads[2]), turned) == {"E": "accepted"}


@pytest.mark.parametrize("heads", [("Votre prix", "Tarif général", "Remise"), ("Price A", "Price B", "Discount")])
def test_where_one_row_does_not_fit_the_discount_is_asked_about(heads):
    figures = [DISCOUNTED[0], (1210, 1375, 13), DISCOUNTED[2]]
    assert set(beside_a_discount(heads, figures).values()) == {"question"}


@pytest.mark.parametrize(
    "heads", [("Price, cash", "Price", "Discount"), ("Pris A", "Pris B", "Kontantrabatt vid betalning inom 10 dagar"),
              ("Preis A", "Preis B", "Skonto")]
)  # fmt: skip
def test_a_discount_that_hangs_on_the_day_of_payment_is_asked_about(heads):
    assert "accepted" not in beside_a_discount(heads, DISCOUNTED).values()
