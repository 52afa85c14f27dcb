"""One board with prices of several years or quarters: which is to pay is asked; stocks say when they were made."""

import pytest

from tests.intake.sheets import codes, lines, read

_HEADS = [("Board", "Year"), ("Sorte", "Jahr"), ("Qualité", "Année"), ("Calidad", "Año"), ("Kvalitet", "År")]
_TIMES = [("Board", "Period"), ("Sorte", "Quartal"), ("Qualité", "Trimestre"), ("Calidad", "Trimestre"),
          ("Kvalitet", "Kvartal")]  # fmt: skip


@pytest.mark.parametrize(("board", "time"), _HEADS)
@pytest.mark.parametrize("years", [(2025, 2026), (2026, 2027)])
def test_two_years_prices_of_a_board_are_asked(board, time, years):
    rows = [[board, time, "g/m²", "EUR/t"], *(["GC1", year, 250, 1000 + year] for year in years)]
    rows[2][3] += 60
    found = lines([["Valid to 31 December 2026"], *rows])
    assert [codes(line) for line in found.values()] == [{"prices-disagree"}] * 2


@pytest.mark.parametrize(("board", "time"), _TIMES)
def test_so_are_those_of_two_quarters(board, time):
    rows = [[board, time, "g/m²", "EUR/t"], ["GC1", "Q4 2026", 250, 1150], ["GC1", "Q1 2027", 250, 1200]]
    assert [codes(line) for line in lines(rows).values()] == [{"prices-disagree"}] * 2


def test_boards_of_one_year_each_are_offered():
    rows = [["Board", "Year", "g/m²", "EUR/t"], ["GC1", 2026, 250, 1150], ["GD2", 2025, 250, 900]]
    assert [str(line.state) for line in lines(rows).values()] == ["accepted"] * 2


@pytest.mark.parametrize(
    ("title", "head"),
    [("Stock lots", _HEADS[0]), ("Lagerposten", _HEADS[1]), ("Lots en stock", _HEADS[2]),
     ("Lotes en stock", _HEADS[3]), ("Lagerpartier", _HEADS[4])],
)  # fmt: skip
@pytest.mark.parametrize("third", ["GC1", "GD2"])
def test_stocks_made_in_earlier_years_are_no_earlier_prices(title, head, third):
    rows = [["Prices effective 1 November 2026"], [head[0], "g/m²", "EUR/t"], ["GC1", 250, 1200], [], [title],
            [*head, "g/m²", "EUR/t"], ["GC1", 2024, 250, 800], ["GC1", 2025, 250, 900],
            [third, 2025, 250, 900]]  # fmt: skip
    found = read(rows)
    assert len(found.lines) >= 3
    assert not any("earlier years" in passed.why for passed in found.passed_over)


@pytest.mark.parametrize(
    "title", ["Price list November 2026", "Preisliste 2026", "Tarif T4 2026", "Lista de precios 2026", "Prislista 2026"]
)
def test_a_list_is_as_old_as_its_title_says_without_a_day(title):
    rows = [[title], ["Grade", "g/m²", "EUR/t"], ["GC1", 250, 1200], [], ["Grade", "Year", "EUR/t"],
            ["GC1", 2024, 1100], ["GC1", 2025, 1150]]  # fmt: skip
    found = read(rows)
    assert [line.offer.price for line in found.lines] == [1200]
    assert any("earlier years" in passed.why for passed in found.passed_over)
