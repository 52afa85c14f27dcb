"""Order sizes in a ton that may be either: which ton is asked once, and not what each size weighs."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

BOARD = ["SBS C1S", 18, 366, 47.2, 46.1, 45.7]


def _sized(*sizes: str, money: str = "USD per cwt"):
    return [[money], ["Board", "pt", "g/m²", *sizes], BOARD]


def _asked(rows) -> list[str]:
    return [question.key for question in read_workbook(book(grid(rows)), Answers({})).questions]


@pytest.mark.parametrize(
    "sizes",
    [
        pytest.param(("5 tons", "10 tons", "20 tons"), id="en"),
        pytest.param(("ab 5 ton", "ab 10 ton", "ab 20 ton"), id="de"),
        pytest.param(("from 5 tons", "from 10 tons", "from 20 tons"), id="en-from"),
        pytest.param(("fr 5 ton", "fr 10 ton", "fr 20 ton"), id="sv"),
        pytest.param(("desde 5 ton", "desde 10 ton", "desde 20 ton"), id="es"),
        pytest.param(("à partir de 5 ton", "à partir de 10 ton", "à partir de 20 ton"), id="fr"),
    ],
)
def test_the_ton_is_asked_once_for_all_sizes(sizes) -> None:
    assert _asked(_sized(*sizes)) == ["ton"]


def test_tonnes_are_asked_about_by_nobody() -> None:
    assert _asked(_sized("ab 5 t", "ab 10 t", "ab 20 t", money="EUR per 100 kg")) == ["basis:eur per 100 kg"]


def test_one_answer_joins_the_sizes() -> None:
    rows = _sized("5 tons", "10 tons", "20 tons")
    assert _asked(rows) == ["ton"]
    found = lines(rows, {"ton": "short"})
    bounds = [(found[cell].offer.from_kg, found[cell].offer.below_kg) for cell in ("D3", "E3", "F3")]
    assert [tuple(None if kg is None else round(kg) for kg in each) for each in bounds] == [
        (4536, 9072), (9072, 18144), (18144, None),
    ]  # fmt: skip


def test_a_load_that_has_no_weight_is_asked_by_its_weight_beside_them() -> None:
    assert "ton" in _asked(_sized("5 tons", "10 tons", "truckload"))
    assert any(key.startswith("bracket:") for key in _asked(_sized("5 tons", "10 tons", "truckload")))


def test_a_size_that_neither_ton_makes_is_asked_by_its_weight() -> None:
    keys = _asked(_sized("5 tons+ (30,000 lb)", "10 tons+ (60,000 lb)", "20 tons+ (90,000 lb)"))
    assert "ton" not in keys
    assert all(key.startswith("bracket:") for key in keys)
