"""Charges that 'plus' joins, shares of freight, and signs before amounts."""

import pytest

from tracker.intake.values.freight.charges import find_charges


def charges(text):
    """Name -> amount, None where it is left open."""
    return {one.label: str(one.amounts[-1].value) if one.amounts else None for one in find_charges(text)}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Freight $42/ST plus 17% fuel surcharge", {"Freight": "42", "fuel surcharge": None}),
        ("Freight $42/ST + fuel surcharge 17%", {"Freight": "42", "fuel surcharge": None}),
        ("Fracht 42 EUR/t zzgl. 4 % Energiezuschlag", {"Fracht": "42", "Energiezuschlag": None}),
        ("Transport 42 EUR/t plus 4 % surcharge énergie", {"Transport": "42", "surcharge énergie": None}),
        ("Transporte 42 EUR/t más 17 % recargo combustible", {"Transporte": "42", "recargo combustible": None}),
        ("Frakt 420 SEK/ton plus 17 % drivmedelstillägg", {"Frakt": "420", "drivmedelstillägg": None}),
        ("Freight $42/ST plus energy surcharge $14/ST", {"Freight": "42", "energy surcharge": "14"}),
        ("Freight $42/ST plus applicable fuel surcharge", {"Freight": "42", "fuel surcharge": None}),
        ("Freight prepaid plus 4% energy surcharge", {"energy surcharge": "4"}),
        ("Frei Haus zzgl. 4 % Energiezuschlag", {"Energiezuschlag": "4"}),
        ("Franco plus surcharge énergie 4 %", {"surcharge énergie": "4"}),
        ("Entregado más recargo energía 4 %", {"recargo energía": "4"}),
        ("Fritt levererat plus energitillägg 4 %", {"energitillägg": "4"}),
        ("Delivered plus energy surcharge", {"energy surcharge": None}),
        ("Delivered plus VAT", {}),
        ("Energy surcharge 4% plus freight $42/ST", {"Energy surcharge": "4", "freight": "42"}),
    ],
)
def test_each_of_two_charges_has_its_own_amount(text, found):
    assert charges(text) == found


@pytest.mark.parametrize(
    "text",
    ["Freight plus fuel $27/ton", "Freight plus energy surcharge $27/ton", "Fracht zzgl. Energiezuschlag 27 EUR/t",
     "Fracht- und Verpackungskosten 42 EUR/t", "Transport plus énergie 27 EUR/t", "Transporte más energía 27 EUR/t",
     "Frakt plus energitillägg 270 SEK/ton"],
)  # fmt: skip
def test_one_amount_behind_two_names_is_for_neither_alone(text):
    assert list(charges(text).values()) == [None]


@pytest.mark.parametrize(
    "text",
    ["Fuel surcharge 17% on top of freight", "17% fuel surcharge on freight",
     "Fuel surcharge of 17% applies to freight",
     "Fuel surcharge 17% applied to freight charges", "Fuel surcharge 17% of line haul",
     "Dieselzuschlag 17 % vom Frachtpreis", "Surcharge gazole 17 % du prix du transport",
     "Recargo combustible 17 % sobre el precio del transporte", "Drivmedelstillägg 17 % av fraktpriset"],
)  # fmt: skip
def test_a_share_of_freight_is_none_of_the_board_s_price(text):
    assert list(charges(text).values()) == [None]


@pytest.mark.parametrize(
    "text",
    ["Energy surcharge 4% on all prices", "A fuel surcharge of 4% applies", "Energiezuschlag 4 % vom Preis",
     "Surcharge énergie 4 % du prix", "Recargo energía 4 % sobre el precio", "Energitillägg 4 % av priset"],
)  # fmt: skip
def test_a_share_of_the_price_is_one(text):
    assert list(charges(text).values()) == ["4"]


@pytest.mark.parametrize("sign", ["-", "–", "—", ":"])
@pytest.mark.parametrize(
    ("name", "amount"),
    [("Energy surcharge", "$14/ST"), ("Freight", "$42/ST"), ("Energiezuschlag", "27 EUR/t"), ("Energitillägg", "4 %"),
     ("Surcharge énergie", "27 EUR/t"), ("Recargo energía", "27 EUR/t")],
)  # fmt: skip
def test_a_dash_of_any_length_parts_a_name_from_its_amount(name, amount, sign):
    assert list(charges(f"{name} {sign} {amount}").values()) == [amount.strip("$ %").split("/")[0].split()[0]]


def test_a_dash_between_two_statements_parts_them():
    found = charges("Energy surcharge applies to all orders – $42/ST freight")
    assert found == {"Energy surcharge": None, "freight": "42"}


@pytest.mark.parametrize(
    "text",
    ["Energy surcharge -$14/ST", "Energy surcharge: ($14)/ST", "Energy surcharge ($14)/ST", "Energy surcharge: $-14/ST",
     "Energy surcharge -4%", "Freight -$42/ST", "Energiezuschlag: -27 EUR/t"],
)  # fmt: skip
def test_what_is_taken_off_is_no_cost(text):
    assert list(charges(text).values()) == [None]


def test_brackets_around_amount_and_unit_take_nothing_off():
    assert charges("Energy surcharge ($14/ST)") == {"Energy surcharge": "14"}
