"""Order sizes: brackets, weights and minimums."""

from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import written
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.brackets_in_kg import KgBracket, joined
from tracker.intake.values.orders.loads import load_definitions
from tracker.intake.values.orders.masses import mass_text
from tracker.intake.values.orders.minimum import find_minimum
from tracker.trade.quantities import MassUnit, kilograms

TONNE = MassUnit.TONNE


def read(text: str, ton: MassUnit | None = TONNE) -> KgBracket | None:
    found = bracket_text(text)
    return None if found is None else joined((found,), ton)[0]


def kg(low: int | str | None, high: int | str | None) -> KgBracket:
    return KgBracket(None if low is None else Decimal(low), None if high is None else Decimal(high))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("< 5 t", kg(None, 5000)),
        ("5–20 t", kg(5000, 20000)),
        ("> 20 t", kg(20000, None)),
        ("ab 5 t", kg(5000, None)),
        ("bis 5 t", kg(None, 5000)),
        ("under 20,000 lb", kg(None, "9071.8474")),
        ("20,000-40,000 lb", kg("9071.8474", "18143.6948")),
        ("40,000 lb +", kg("18143.6948", None)),
        ("≥ 10 t", kg(10000, None)),
        ("from 5 tonnes", kg(5000, None)),
        ("à partir de 10 t", kg(10000, None)),
        ("desde 10 t", kg(10000, None)),
        ("från 5 ton", kg(5000, None)),
        ("up to 10 tons", kg(None, 10000)),
        ("5.000 - 10.000 kg", kg(5000, 10000)),
        ("over 20 t", kg(20000, None)),
        ("TL (40,000 lb)", kg("18143.6948", None)),
        ("LTL (under 40,000 lb)", kg(None, "18143.6948")),
        ("1 to under 5 t", kg(1000, 5000)),
        ("500 kg – 2 t", kg(500, 2000)),
        ("10,000 lb and up", kg("4535.9237", None)),
        ("5 bis 20 t", kg(5000, 20000)),
        ("moins de 5 t", kg(None, 5000)),
        ("40M lb +", kg("18143.6948", None)),
        ("10M - 20M LB", kg("4535.9237", "9071.8474")),
        ("40k# +", kg("18143.6948", None)),
        ("under 5k kg", kg(None, 5000)),
        ("from 5 m tons", kg(5000, None)),
        ("20 t et plus", kg(20000, None)),
        ("2 short tons +", kg("1814.36948", None)),
    ],
)
def test_brackets(text, expected):
    assert read(text) == expected


@pytest.mark.parametrize(
    "text",
    ["TL", "LTL", "truckload", "1–4 pallets", "10 rolls", "full truck", "LKW", "camion complet", "LTL (10,000 lb)"],
)
def test_what_is_no_weight_is_unread(text):
    assert read(text) == KgBracket(unread=True)


@pytest.mark.parametrize(
    "text", ["", "4 weeks", "18 pt", "SBS C1S", "Price", "300 g/m²", "12", "$1145/ST", "28 x 40 in", "5–20 t SBS"]
)
def test_what_is_no_bracket(text):
    assert bracket_text(text) is None


def test_tons_wait_for_the_files_ton():
    assert read("5–20 tons", None) == KgBracket(unread=True)
    assert read("5–20 tons", MassUnit.SHORT_TON) == kg("4535.9237", "18143.6948")


def test_bare_numbers_take_the_headers_unit():
    found = bracket_text("5,000-9,999", (MassUnit.LB,))
    assert found is not None
    assert joined((found,))[0].from_kg == Decimal("2267.96185")


@pytest.mark.parametrize(
    ("row", "expected"),
    [
        (["< 5 t", "5–20 t", "> 20 t"], [kg(None, 5000), kg(5000, 20000), kg(20000, None)]),
        (["ab 1 t", "ab 5 t", "ab 20 t"], [kg(1000, 5000), kg(5000, 20000), kg(20000, None)]),
        (["bis 5 t", "bis 10 t", "über 10 t"], [kg(None, 5000), kg(5000, 10000), kg(10000, None)]),
        (["1-4 t", "5-9 t", "10 t+"], [kg(1000, 5000), kg(5000, 10000), kg(10000, None)]),
        (["1-4.9 t", "5-9.9 t", "10 t+"], [kg(1000, 5000), kg(5000, 10000), kg(10000, None)]),
        (
            ["40,000 lb +", "10,000-39,999 lb", "under 10,000 lb"],
            [kg("18143.6948", None), kg("4535.9237", "18143.6948"), kg(None, "4535.9237")],
        ),
        (["1 t", "5 t", "10 t"], [kg(1000, 5000), kg(5000, 10000), kg(10000, None)]),
        (["5 t +", "5 t +", "10 t +"], [kg(5000, 10000), kg(5000, 10000), kg(10000, None)]),
    ],
)
def test_a_row_of_brackets_meets_without_gaps(row, expected):
    assert list(joined(tuple(bracket_text(text) for text in row), TONNE)) == expected


@given(st.lists(st.integers(1, 80), min_size=2, max_size=6, unique=True))
def test_joined_brackets_partition_the_order_sizes(edges):
    edges = sorted(edges)
    texts = [
        f"under {edges[0]} t",
        *(f"{low} – {high} t" for low, high in pairwise(edges)),
        f"over {edges[-1]} t",
    ]
    found = joined(tuple(bracket_text(text) for text in texts), TONNE)
    assert found[0].from_kg is None
    assert found[-1].below_kg is None
    assert all(one.below_kg == following.from_kg for one, following in pairwise(found))


MASSES = {
    " lb": MassUnit.LB,
    " lbs": MassUnit.LB,
    "#": MassUnit.LB,
    " kg": MassUnit.KG,
    " MT": MassUnit.TONNE,
    " short tons": MassUnit.SHORT_TON,
    " tonnes": MassUnit.TONNE,
    " cwt": MassUnit.CWT,
}


@given(
    st.integers(1, 999999), st.sampled_from(["plain point", "US", "German", "space"]), st.sampled_from(sorted(MASSES))
)
def test_every_order_size_reads_back(value, form, unit):
    found = mass_text(f"{written(Decimal(value), form)}{unit}")
    assert found is not None
    assert Decimal(value) in [amount.value for amount in found.amounts]
    sign = {"US": ".", "German": ","}.get(form)
    assert found.kg(sign=sign) == kilograms(value, MASSES[unit])


def test_no_order_weighs_a_few_kilograms():
    assert mass_text("20.000 kg").kg() == Decimal(20000)
    assert mass_text("5,000 lb").kg() == Decimal("2267.96185")
    assert mass_text("1,500 t").kg() is None


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Minimum order 10,000 lb per item. Lead time 3-4 weeks.", "4535.9237"),
        ("EUR, DAP. Minimum order 2 t per grade.", "2000"),
        ("MOQ 2 t", "2000"),
        ("US$/ST, 10,000 lb minimum per item", "4535.9237"),
        ("Mindestmenge 5 t", "5000"),
        ("min. 3.000 kg", "3000"),
        ("Minimum de commande : 3 t", "3000"),
        ("Pedido mínimo 2.000 kg", "2000"),
        ("Minsta order 2 ton.", "2000"),
    ],
)
def test_minimums(text, value):
    found = find_minimum(text)
    assert found is not None
    assert found.kg(TONNE) == Decimal(value)


def test_what_a_truckload_weighs_at_least_is_no_smallest_order():
    assert find_minimum("Truckload = 40,000 lb minimum") is None


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3-4 weeks",
        "SBS 75 lb/MSF",
        "Minimum order 3 pallets",
        "Price per ton",
        "10,000 lb",
        "Truckload = 40,000 lb minimum.",
    ],
)
def test_texts_without_a_minimum(text):
    assert find_minimum(text) is None


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            "TL: 40,000 lb or more; LTL: under 40,000 lb.",
            [("truckload", kg("18143.6948", None)), ("part_load", kg(None, "18143.6948"))],
        ),
        ("Truckload = 40,000 lb", [("truckload", kg("18143.6948", None))]),
        ("Camion = 24 t, demi-camion = 12 t.", [("truckload", kg(24000, None)), ("half_load", kg(12000, None))]),
        ("Komplettladung: ab 20 t", [("truckload", kg(20000, None))]),
        ("Truckload prices on request", []),
        ("Minimum order 10,000 lb", []),
        ("TL and LTL: 40,000 lb", []),
    ],
)
def test_loads_that_a_note_defines(text, expected):
    found = [(said.kind, joined((said.bracket,), TONNE)[0]) for said in load_definitions(text)]
    assert found == expected


@pytest.mark.parametrize(
    "text",
    ["1 pallet = 800 kg", "Reels of 800 kg each.", "One reel weighs 800 kg", "800 kg per reel", "Roll: 800 kg net"],
)
def test_what_a_pallet_or_a_roll_weighs(text):
    (said,) = load_definitions(text)
    assert said.each.kg() == Decimal(800)


@pytest.mark.parametrize("text", ["about 800 kg per reel", "max. 800 kg per reel", "EUR 40 per 800 kg per reel"])
def test_a_weight_that_is_none_of_every_roll_defines_nothing(text):
    assert load_definitions(text) == ()


def test_to_between_two_figures_is_no_ton():
    assert read("5,000 to 20,000 lb") == kg("2267.96185", "9071.8474")
    assert read("5,000 to under 20,000 lb") == kg("2267.96185", "9071.8474")
    assert read("50 to below 200 cwt") == kg("2267.96185", "9071.8474")
    assert read("20+ MT", None) == kg(20000, None)


def test_counted_truckloads_wait_for_what_one_weighs():
    several = bracket_text("2-4 T/L")
    assert several is not None
    assert several.start is not None
    assert several.end is not None
    assert several.not_weight == "truckload"
    assert [limit.amounts[0].value for limit in (several.start, several.end)] == [2, 4]
    assert joined((several,))[0].unread
    one = mass_text("40,000 lb")
    assert one is not None
    assert one.times(several.start).kg() == kilograms(80000, MassUnit.LB)


def test_a_decimal_sign_that_makes_an_order_absurd_leaves_it_open():
    mass = mass_text("20,000 lb")
    assert mass is not None
    assert mass.kg(sign=".") == Decimal("9071.8474")
    assert mass.kg(sign=",") is None
    small = mass_text("25 kg")
    assert small is not None
    assert small.kg(sign=",") == 25
