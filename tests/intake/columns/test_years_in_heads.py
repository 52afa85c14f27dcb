"""Last year's price beside this year's: the earlier one is no offer, however its head says that it is shown again."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 240, 390, 1305, 1342], ["GC2", 250, 410, 1240, 1226], ["GD2", 280, 360, 712, 705]]


def offered(*heads, title="EUR per tonne, delivered"):
    rows = [[title], ["Grade", "g/m²", "µm", *heads], *BOARDS]
    return {cell: str(line.state) for cell, line in lines(rows).items()}


SECOND = dict.fromkeys(("E3", "E4", "E5"), "accepted")


@pytest.mark.parametrize(
    ("earlier", "this"),
    [
        ("Tarif 2025 (rappel)", "Tarif 2026"), ("Tarif 2025 (pour mémoire)", "Tarif 2026 €/t"),
        ("Tarif 2025 pour info", "Prix 2026"), ("Preis 2025 (alt)", "Preis 2026"),
        ("Preis 2025 (zum Vergleich)", "Preis 2026"), ("Preis 2025 (nachrichtlich)", "Preis 2026 €/t"),
        ("Price 2025 (ref.)", "Price 2026"), ("2025 price (for reference)", "2026 price"),
        ("Ref. 2025", "Price 2026"), ("Price 2025 (ref.)", "Price €/t"), ("Price 2025 (ref.)", "Price 2026 ex works"),
        ("Tarifa 2025 (recordatorio)", "Tarifa 2026"), ("Precio 2025 (a título informativo)", "Precio 2026"),
        ("Pris 2025 (referens)", "Pris 2026"), ("Pris 2025 (som jämförelse)", "Pris 2026"),
        ("Price 2026 (ref.)", "Price 2027"), ("Price 2024", "Price 2026"),
        ("2025 actual price", "2026 price"), ("Actual price 2025 €/t", "Price 2026 €/t"),
        ("Realized price 2025", "Price 2026"), ("2025 actual price", "Price"), ("Istpreis 2025", "Preis 2026"),
        ("Preis 2025 (Ist)", "Preis 2026"), ("Prix réel 2025", "Prix 2026"), ("Prix 2025 réalisé", "Prix 2026"),
        ("Precio real 2025", "Precio 2026"), ("Utfall 2025", "Pris 2026"), ("Faktiskt pris 2025", "Pris 2026"),
    ],
)  # fmt: skip
def test_the_earlier_years_price_is_not_offered(earlier, this):
    assert offered(earlier, this) == SECOND


def test_the_spanish_word_for_the_price_in_force_is_no_english_actual():
    assert offered("Precio actual 2025", "Precio 2026") == dict.fromkeys(("D3", "D4", "D5"), "accepted")


CONSECUTIVE = [
    ("Price 2026", "Price 2027"), ("Price 2025 €/t", "Quote 2026 €/t"), ("Preis 2026", "Preis 2027"),
    ("Tarif 2026", "Tarif 2027"), ("Tarifa 2025", "Tarifa 2026"), ("Pris 2025", "Pris 2026"),
]  # fmt: skip


@pytest.mark.parametrize(("first", "second"), CONSECUTIVE)
def test_where_nothing_dates_the_list_it_is_asked_which_years_price_holds(first, second):
    assert offered(first, second) == dict.fromkeys(("D3", "E3", "D4", "E4", "D5", "E5"), "question")


@pytest.mark.parametrize("title", ["EUR per tonne", "Price list of 3 March 2026, EUR per tonne"])
def test_so_it_is_where_the_two_hardly_differ(title):
    rows = [[title], ["Grade", "g/m²", "µm", "Price 2026", "Price 2027"], ["GC1", 240, 390, 1305, 1306]]
    assert [str(line.state) for line in lines(rows).values()] == ["question"] * 2


@pytest.mark.parametrize("title", ["Price list 2027, EUR per tonne", "Price list of 3 March 2027, EUR per tonne"])
def test_the_year_or_the_day_of_the_list_decides(title):
    assert offered("Price 2026", "Price 2027", title=title) == SECOND


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Tarif 2025", "Tarif 2026 (rappel)"), ("Price 2026 (ref.)", "Price 2025"), ("Prix net 2025", "Prix 2026"),
        ("Price 2025", "Price 2026 delivered"), ("Price 2025 east", "Price 2026 west"),
    ],
)  # fmt: skip
def test_where_the_heads_do_not_tell_which_is_paid_it_is_asked(first, second):
    assert set(offered(first, second).values()) == {"question"}


def test_in_a_list_of_the_earlier_year_its_price_is_past_only_where_it_is_said_to_be():
    made = "Price list of 3 March 2026, EUR per tonne"
    assert "accepted" not in list(offered("Price 2026", "Quote 2027", title=made).values())[:2]
    assert offered("Price 2026 (ref.)", "Price 2027", title=made) == SECOND


def test_a_day_of_the_list_tells_which_year_is_paid():
    made = "Price list of 3 March 2026, EUR per tonne"
    assert offered("Price 2025", "Price 2026 delivered", title=made) == SECOND


@pytest.mark.parametrize(
    "title",
    [
        "Effective October 1, 2026", "Effective 10/01/2026", "Carton prices valid from 1 October 2026",
        "Prices valid until December 31, 2026", "Gültig ab 1.10.2026", "Tarif applicable le 1er octobre 2026",
        "Precios vigentes desde el 1 de octubre de 2026", "Gäller från 1 oktober 2026",
    ],
)  # fmt: skip
def test_so_does_a_day_from_which_or_until_which_the_prices_hold(title):
    assert "accepted" not in list(offered("Price 2026 EUR/t", "Price 2027 EUR/t", title=title).values())[:2]
    assert offered("Price 2025 EUR/t", "Price 2026 EUR/t", title=title) == SECOND


@pytest.mark.parametrize("title", ["Effective January 1, 2027", "Gültig ab 1.1.2027", "Gäller från 1 januari 2027"])
def test_next_years_price_is_paid_where_the_prices_hold_from_next_year(title):
    assert offered("Price 2026 EUR/t", "Price 2027 EUR/t", title=title) == SECOND
