"""What is paid for a cancelled or returned order is told of every board, and is no board, discount or charge of one."""

import pytest

from tests.intake.sheets import codes, read

FEES = [
    *((["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200], fee, "USD/ST")
      for fee in ("Cancellation fee", "Restocking fee", "Return fee", "Late payment fee")),
    *((["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200], fee, "EUR/t") for fee in ("Stornogebühr", "Rücknahmegebühr")),
    *((["Qualité", "g/m²", "EUR/t"], ["GC1", 250, 1200], fee, "EUR/t")
      for fee in ("Frais d'annulation", "Frais de retour")),
    *((["Calidad", "g/m²", "EUR/t"], ["GC1", 250, 1200], fee, "EUR/t")
      for fee in ("Gastos de cancelación", "Cargo por devolución")),
    *((["Kvalitet", "g/m²", "SEK/t"], ["GC1", 250, 12000], fee, "SEK/t")
      for fee in ("Avbokningsavgift", "Returavgift")),
]  # fmt: skip


def told(line, fee):
    return any(fee in note.text and "cancelled, returned or not paid" in note.text for note in line.notes)


@pytest.mark.parametrize(("head", "board", "fee", "unit"), FEES)
def test_in_a_row(head, board, fee, unit):
    (line,) = read([head, board, [fee, None, 50]]).lines
    assert str(line.state) == "accepted"
    assert not line.offer.charges
    assert told(line, fee)


@pytest.mark.parametrize(("head", "board", "fee", "unit"), FEES)
def test_in_a_column(head, board, fee, unit):
    (line,) = read([[*head, f"{fee} {unit}"], [*board, 50]]).lines
    assert str(line.state) == "accepted"
    assert not line.offer.charges
    assert told(line, fee)


@pytest.mark.parametrize(
    ("head", "board", "size"),
    [
        (["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200], "Orders under 10,000 lb"),
        (["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Unter 5 t"),
        (["Qualité", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Moins de 5 t"),
        (["Calidad", "g/m²", "EUR/t"], ["GC1", 250, 1200], "Menos de 5 t"),
        (["Kvalitet", "g/m²", "SEK/t"], ["GC1", 250, 12000], "Under 5 ton"),
    ],
)
def test_what_small_orders_cost_more_by_its_figure(head, board, size):
    rows = [[*board, board[2] // 20], [*board[:1], board[1] + 50, board[2], board[2] // 20]]
    found = read([[*head, size], *rows]).lines
    assert [str(line.state) for line in found] == ["accepted"] * 2
    assert all("bracket-unread" in codes(line) for line in found)


def test_prices_of_small_orders_are_prices():
    head = ["Grade", "Caliper (pt)", "USD/ST", "Orders under 10,000 lb"]
    found = read([head, ["SBS", 16, 1200, 1260], ["CUK", 18, 980, 1040]]).lines
    assert [str(line.offer.price) for line in found] == ["1200", "1260", "980", "1040"]
