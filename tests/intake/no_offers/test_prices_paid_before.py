"""What was paid before, and figures under their old times, are no offers; what is paid now is."""

import pytest

from tests.intake.sheets import lines, prices

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize("last", ["Last price", "LAST_PRC", "Letzter EK", "Dern. PA", "Últ. precio", "Senaste pris"])
def test_what_was_paid_last_is_no_offer(last):
    rows = [[*HEAD, last, "Price USD/short ton"], [*BOARD, 1150, 1190], ["CRB", 18, 70, 830, 850]]
    assert list(lines(rows)) == ["E2", "E3"]


def test_what_a_buyer_pays_is_offered_where_only_an_earlier_price_stands_beside_it():
    rows = [["Désignation", "µm", "g/m²", "Dern. PA €/t", "PA HT €/t"], ["GC1", 410, 250, 1259, 1312]]
    assert list(lines(rows)) == ["E2"]


def test_the_buyers_own_price_behind_a_discount_in_money():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Preis", "Rabatt EUR/t", "Ihr Preis"], ["GC1", 250, 405, 1000, 50, 950]]
    assert prices(lines(rows)) == {"F3": ("accepted", "950", "tonne")}


@pytest.mark.parametrize(
    ("past", "offer"),
    [
        ("{} (history)", "Offer 2027"),
        ("{} (Historie)", "Angebot 2027"),
        ("{} (historique)", "Offre 2027"),
        ("{} (histórico)", "Oferta 2027"),
        ("{} (historik)", "Offert 2027"),
    ],
)
def test_what_was_paid_in_years_before_is_history(past, offer):
    head = ["Grade", "g/m²", "µm", past.format(2025), past.format(2026), offer]
    rows = [["GC1", 230, 370, 1120, 1150, 1175], ["GC1", 280, 460, 1110, 1140, 1165], ["GT2", 350, 450, 760, 775, 798]]
    found = lines([["EUR/1000 kg"], head, *rows])
    assert prices(found) == {f"F{place}": ("accepted", str(row[5]), "tonne") for place, row in enumerate(rows, start=3)}


@pytest.mark.parametrize("heads", [("Q1/26 (alt)", "Q2/26 (alt)", "neu"), ("Q1 2026 (old)", "Q2 2026 (old)", "new")])
def test_figures_marked_as_old_under_their_times_are_not_offered(heads):
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", *heads],
        ["GC2", 250, 420, 1080, 1098, 1121],
        ["GD2", 320, 410, 768, 775, 791],
    ]
    assert list(lines(rows)) == ["F3", "F4"]


PAID_HEAD = ["Board", "gsm", "micron"]
BOARDS = [["GC1", 235, 380, 1210], ["GD2", 310, 420, 845]]


def states(*heads, title=""):
    rows = [[*row, *(row[-1] - 15 * place for place in range(1, len(heads)))] for row in BOARDS]
    found = lines([*([[title]] if title else []), [*PAID_HEAD, *heads], *rows])
    return {cell[0]: str(line.state) for cell, line in found.items()}


@pytest.mark.parametrize(
    "head",
    ["Paid 2025 EUR/t", "You paid EUR/t", "Bezahlt 2025 EUR/t", "Vous avez payé EUR/t", "Pagado 2025 EUR/t",
     "Ni betalade EUR/t"],
)  # fmt: skip
def test_prices_paid_before_are_no_offers_by_themselves(head):
    assert states(head) == {}


@pytest.mark.parametrize("head", ["Price 2026 EUR/t", "EUR/t, freight paid", "You pay EUR/t"])
def test_prices_to_be_paid_are(head):
    assert states(head) == {"D": "accepted"}


@pytest.mark.parametrize("head", ["You paid 2025", "April list", "Bezahlt 2025", "Liste April"])
def test_beside_the_net_price_they_need_no_question(head):
    assert states(head, "Your net EUR/t") == {"E": "accepted"}


@pytest.mark.parametrize(
    "title",
    ["What our plants paid last year, EUR/t", "Gezahlte Preise, Vorjahr, EUR/t", "Prix payés l'année précédente, EUR/t",
     "Precios pagados, año anterior, EUR/t", "Betalda priser föregående år, EUR/t"],
)  # fmt: skip
def test_a_title_of_prices_paid_is_asked_about(title):
    assert states("Price", title=title) == {"D": "question"}


@pytest.mark.parametrize("title", ["EUR/t, freight paid as last year", "Delivered, carriage paid, EUR/t"])
def test_a_title_of_freight_paid_is_not(title):
    assert states("Price", title=title) == {"D": "accepted"}


@pytest.mark.parametrize(
    "head", ["Last order", "Letzte Bestellung", "Dernière commande", "Último pedido", "Senaste order", "Last PO"]
)
def test_what_was_paid_before_is_not_offered(head):
    rows = [
        ["EUR/t"],
        ["Board", "g/m²", "µm", head, "Price"],
        ["GD2", 300, 395, 861, 842],
        ["GC2", 275, 460, 1230, 1204],
    ]
    assert list(lines(rows)) == ["E3", "E4"]


@pytest.mark.parametrize("head", ["Book", "Published", "Catalogue"])
def test_a_book_price_beside_the_net_one_is_not_offered_though_a_sum_is_missing(head):
    rows = [["US$/cwt"], ["Grade", "Cal pt", "lb/MSF", head, "Allowance", "Net"], ["SBS C1S", 14, 60, 64, 1.5, 62.5],
            ["CUK", 18, 75, 56, 1.25, None]]  # fmt: skip
    assert set(lines(rows)) == {"F3"}


def test_paid_beside_collect_is_asked_and_what_was_last_paid_is_not_offered():
    rows = [["SBS", 18, 1240, 1200], ["CRB", 20, 820, 790]]
    found = lines([["Grade", "pt", "Paid USD/short ton", "Collect USD/short ton"], *rows])
    assert str(found["C2"].state) == "question"
    assert list(lines([["Grade", "pt", "Last paid USD/short ton", "Price USD/short ton"], *rows])) == ["D2", "D3"]
