"""Last days, smallest orders, surcharges and lead times in words that lists use now and then."""

from datetime import date

import pytest

from tests.intake.sheets import lines

BOARDS = [["Board", "g/m²", "µm", "EUR per 1000 kg"], ["GC1", 260, 415, 1287]]


def offer(*said):
    (line,) = lines([*([one] for one in said), [], *BOARDS]).values()
    assert str(line.state) == "accepted"
    return line.offer


@pytest.mark.parametrize(
    ("said", "last"),
    [
        ("Bindefrist 15. Oktober 2026", date(2026, 10, 15)),
        ("Gültig bis Jahresende 2026", date(2026, 12, 31)),
        ("Gültig bis Ende des dritten Quartals 2026", date(2026, 9, 30)),
        ("Prix tenus jusqu'à la fin du troisième trimestre 2026", date(2026, 9, 30)),
        ("Soumission bonne jusqu'au 31 août 2026", date(2026, 8, 31)),
        ("Valable jusqu'à fin d'année 2026", date(2026, 12, 31)),
        ("Precios válidos hasta el final del tercer trimestre de 2026", date(2026, 9, 30)),
        ("Priserna gäller till slutet av tredje kvartalet 2026", date(2026, 9, 30)),
        ("Giltig till årets slut 2026", date(2026, 12, 31)),
        ("Valid to the end of the third quarter of 2026", date(2026, 9, 30)),
    ],
)
def test_last_days(said, last):
    assert offer(said).valid_until == last


@pytest.mark.parametrize("said", ["Gültig bis Jahresende", "Valid from the third quarter of 2026"])
def test_no_last_day_is_guessed(said):
    assert offer(said).valid_until is None


@pytest.mark.parametrize(
    "said",
    [
        "No item below 500 kg",
        "Pas de commande sous 500 kg.",
        "Keine Position unter 500 kg",
        "Ingen post under 500 kg",
        "Ningún pedido por debajo de 500 kg",
    ],
)
def test_smallest_orders(said):
    assert offer(said).minimum_kg == 500


@pytest.mark.parametrize(
    "said",
    [
        "Zuzüglich LSVA-Zuschlag von EUR 18.– je Tonne auf alle Positionen.",
        "Zuzüglich Energiezuschlag von 18,– EUR je Tonne auf alle Positionen",
        "Mautzuschlag EUR 18,- je Tonne",
        "ETS-surcharge EUR 18 per tonne",
        "Supplément RPLP 18.– EUR la tonne",
    ],
)
def test_surcharges_with_a_dash_for_no_cents_or_a_code_before_their_name(said):
    (charge,) = offer(said).charges
    assert (f"{charge.price:f}", charge.currency, charge.basis) == ("18", "EUR", "tonne")


def test_a_price_with_a_dash_for_no_cents_is_still_itself():
    (line,) = lines([["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 260, 415, "1.287,–"]]).values()
    assert f"{line.offer.price:f}" == "1287"


def test_the_day_of_a_span_keeps_its_dash():
    assert offer("Valid 1.7. - 30.9.2026").valid_until == date(2026, 9, 30)


def test_a_word_that_a_narrow_column_parts_is_one():
    rows = [["Sorte", "g/m²", "µm", "Grund-\npreis", "Mindest-\nabnahme"], [None, None, None, "€/t", "kg"]]
    (line,) = lines([*rows, ["GD2", 280, 365, 845, 3000]]).values()
    assert line.offer.minimum_kg == 3000


def test_from_the_floor_is_from_stock():
    rows = [[*BOARDS[0], "Ready in"], [*BOARDS[1], "off the floor"]]
    (line,) = lines(rows).values()
    assert line.offer.lead_days == (0, 0)
