"""Columns that are a share of the price by a head that names the price: '% of base price'."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.heads.role_words import header_roles
from tracker.trade.footing import footing

LANGUAGES = [
    ("Base price", "EUR per tonne", "Energy surcharge", "% of base price"),
    ("Grundpreis", "EUR je Tonne", "Energiezuschlag", "% vom Grundpreis"),
    ("Preis", "EUR je Tonne", "Energiezuschlag", "in % des Preises"),
    ("Prix de base", "EUR par tonne", "Surcharge énergie", "% du prix de base"),
    ("Precio base", "EUR por tonelada", "Recargo energético", "% s/ precio base"),
    ("Grundpris", "EUR per 1000 kg", "Energitillägg", "% av grundpris"),
]


def read(*heads, charge=3):
    rows = [[None] * 5 for _ in heads]
    for row, (price, energy) in zip(rows, heads, strict=True):
        row[3:] = [price, energy]
    rows[0][:3] = ["Sorte", "g/m²", "µm"]
    return lines([*rows, ["GC2", 255, 430, 1340, charge], ["GD2", 350, 455, 935, charge - 0.5]])


@pytest.mark.parametrize(("price", "unit", "charge", "share"), LANGUAGES)
def test_a_share_below_a_charge_is_the_charges(price, unit, charge, share):
    for found in (read((price, charge), (unit, share)), read((f"{price}, {unit}", f"{charge}, {share}"))):
        assert [(str(line.state), line.offer.price) for line in found.values()] == [
            ("accepted", 1340),
            ("accepted", 935),
        ]
        assert [[str(one.price) for one in line.offer.charges] for line in found.values()] == [["3"], ["2.5"]]


@pytest.mark.parametrize("head", ["Price", "Price, 3 % cash discount taken", "Price 2 % on list price"])
def test_a_percentage_that_is_told_of_the_price_leaves_it_a_price(head):
    assert header_roles(head)[0].role == "price"


@pytest.mark.parametrize(
    "head", ["% of base price", "pct of price", "% vom Grundpreis", "% sur le prix", "% på priset"]
)
def test_a_share_heads_no_price(head):
    assert header_roles(head) == ()


@pytest.mark.parametrize(
    "share", ["% v. Grundpreis", "% d. Grundpreises", "% s/ prix de base", "% s. precio base", "% på grundpris"]
)
def test_the_little_word_may_be_cut_short(share):
    found = read(("Grundpreis", "Energiezuschlag"), ("EUR/t", share))
    assert [[str(one.price) for one in line.offer.charges] for line in found.values()] == [["3"], ["2.5"]]


def _delivered(head, below, title="Preisliste vom 2. November 2026"):
    """What is charged beside a price with its freight, and what that makes a tonne, where it is known."""
    heads = ["Sorte", "g/m²", "µm", "Grundpreis", "Fracht", head]
    units = [None, None, None, "EUR/t", "EUR/t", below]
    (line,) = lines([[title], heads, units, ["GC2", 255, 430, 1340, 60, 3]]).values()
    return str(line.state), footing(line.offer).delivered_per_tonne


@pytest.mark.parametrize("share", ["%", "in %", "% v. Grundpreis", "% Energiezuschlag", "% ab 1.11.2026", "% Q4"])
def test_a_share_of_the_price_comes_on_top_of_it(share):
    state, delivered = _delivered("Energiezuschlag", share)
    assert (state, float(delivered)) == ("accepted", pytest.approx(1340 * 1.03 + 60))


def test_one_from_a_day_may_be_to_come_where_the_list_has_none():
    assert _delivered("Energiezuschlag", "% ab 1.11.2026", title="Preisliste") == ("accepted", None)


@pytest.mark.parametrize(
    "share",
    [
        "% of freight", "% v. Fracht", "% du transport", "% del flete", "% av frakten", "% lt. Vereinbarung",
        "% gem. Liste", "Grundpreis lt. Liste",
    ],
)  # fmt: skip
def test_what_is_no_share_of_the_price_leaves_the_delivered_cost_open(share):
    assert _delivered("Energiezuschlag", share) == ("accepted", None)
