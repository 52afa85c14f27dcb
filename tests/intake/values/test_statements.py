"""What whole notes and title blocks say."""

from datetime import date
from decimal import Decimal

import pytest

from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.dated import SaysDate
from tracker.intake.values.notes.statements import (
    Remark,
    SaysMinimum,
    SaysTon,
    SaysWeightBasis,
    says,
    statements,
)
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.values.times.validity import Validity
from tracker.trade.basis import Basis
from tracker.trade.quantities import MassUnit, WeightUnit


@pytest.mark.parametrize(
    ("text", "ton"),
    [
        ("1 ton = 2,000 lb", "short_ton"),
        ("All prices per ton of 2,000 lb", "short_ton"),
        ("Tons are metric", "tonne"),
        ("USD per short ton", None),
        ("Deliveries: 12,480 st", None),
        ("ton of 2000 lb or ton of 1000 kg", None),
        ("2,000 lb minimum", None),
    ],
)
def test_ton_definitions(text, ton):
    found = ton_definition(text)
    assert found == (MassUnit(ton) if ton else None)


def test_a_title_block_states_everything_once():
    found = statements(
        "All prices in US dollars per ton of 2,000 lb, FOB mill. Minimum order 10,000 lb per item. Lead time 3-4 weeks."
    )
    kinds = [type(said).__name__ for said in found]
    assert sorted(kinds) == ["Delivery", "LeadTime", "SaysBasis", "SaysCurrency", "SaysMinimum", "SaysTon"]
    by_kind = {type(said): said for said in found}
    assert by_kind[SaysCurrency].currency.code == "USD"
    assert by_kind[SaysBasis].basis.basis is Basis.SHORT_TON
    assert by_kind[SaysTon].ton is MassUnit.SHORT_TON
    assert by_kind[SaysMinimum].mass.kg() == Decimal("4535.9237")


@pytest.mark.parametrize(
    "text",
    [
        "",
        "SBS C1S",
        "1180 Millrace Road, Quillmere Landing, Wisconsin",
        "Deliveries of 2025: 12,480 st",
        "Index May: 1,214",
        "Payment 1% 10 days, net 30. Overruns of 10% are normal.",
        "Contact: I. Oduya-Lark, ext. 4417",
        "Ersetzt die Preisliste vom 01.01.2026",
        "1500 sheets per pallet",
    ],
)
def test_texts_that_state_nothing(text):
    assert statements(text) == ()


def test_weight_bases_and_dates_of_lists():
    (said,) = statements("Basis weights per 3,000 ft²")
    assert isinstance(said, SaysWeightBasis)
    assert said.basis.units == (WeightUnit.LB_3000FT2,)
    assert [said.date.words for said in statements("Stand: 04.05.2026") if isinstance(said, SaysDate)] == ["04.05.2026"]


def test_every_line_of_one_cell_says_its_own_thing():
    block = "Larkmere Mills\nPrice list 3\nUS$ per short ton, FOB mill\nLead time 4 weeks\nMinimum order:\n5 t"
    kinds = sorted(type(said).__name__ for said in statements(block))
    assert kinds == ["Delivery", "LeadTime", "SaysBasis", "SaysCurrency", "SaysMinimum"]
    # A sentence that only wraps stays one.
    assert any(isinstance(said, SaysBasis) for said in statements("All prices in US\ndollars per short\nton"))


@pytest.mark.parametrize(
    "text", ["Price sheet", "Reels, price ex works", "Rollen, Preise ab Werk", "Bobines, prix départ usine"]
)
def test_the_form_board_comes_in_is_not_what_prices_are_per(text):
    assert not any(isinstance(said, SaysBasis) for said in statements(text))


def test_a_charges_currency_is_not_the_prices():
    found = statements("zzgl. Fracht 45 EUR/t")
    assert not any(isinstance(said, SaysCurrency | SaysBasis) for said in found)


@pytest.mark.parametrize(
    ("text", "remarks"),
    [
        ("Budgetary pricing for carton project", {Remark.INDICATIVE}),
        ("Price list 2025 (superseded)", {Remark.SUPERSEDED}),
        ("OLD PRICES", {Remark.SUPERSEDED}),
        ("Supersedes previous price list of 1 Jan 2026", set()),
        ("Annule et remplace l'ancien tarif", set()),
        ("Ersetzt die Preisliste 2026-1", set()),
        ("Ersetzt durch Preisliste 2026-2 – nicht mehr gültig", {Remark.SUPERSEDED}),
        ("Total", {Remark.TOTAL}),
        ("Average", {Remark.TOTAL}),
        ("Index May: 1,214", {Remark.INDEX}),
        ("Bei Fragen: Vertrieb, Durchwahl 218", {Remark.CONTACT}),
        ("SBS C1S", set()),
        ("Alla priser t.o.m. mars", set()),
        ("Preise freibleibend", {Remark.INDICATIVE}),
    ],
)
def test_what_kind_of_text_it_is(text, remarks):
    assert says(text) == remarks


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("CIF/DAP buyer's works, per 1000 kg", {Basis.TONNE}),
        ("prix en € h.t. la tonne, franco", {Basis.TONNE}),
        ("per pallet, 600 sheets", set()),
        ("Minimum 2 t per grade, net weights", set()),
    ],
)
def test_a_basis_without_a_word_for_price(text, expected):
    said = [one.basis.basis for one in statements(text) if isinstance(one, SaysBasis)]
    assert set(said) == expected


@pytest.mark.parametrize(
    "text",
    [
        "In 2025 we delivered 48,000 tons of board worldwide.",
        "Free delivery from 10 t.",
        "Ab 5 t frei Haus",
        "Delivered free for orders over 20,000 lb",
    ],
)
def test_delivery_of_some_orders_leaves_it_open_for_the_prices(text):
    assert [said.delivered for said in statements(text) if isinstance(said, Delivery)] == [None]


@pytest.mark.parametrize(
    "text",
    ["Prices delivered, minimum order 10,000 lb", "USD per ton of 2,000 lb, delivered", "€/1000 kg frei Haus"],
)
def test_a_unit_or_a_minimum_beside_delivery_is_no_condition(text):
    assert [said.delivered for said in statements(text) if isinstance(said, Delivery)] == [True]


def test_until_when_an_earlier_list_held_is_no_validity_of_this_one():
    assert not any(isinstance(said, Validity) for said in statements("Previous list was valid until 31 March 2026."))
    (said,) = [s for s in statements("Replaces previous list. Valid until 30 June 2026.") if isinstance(s, Validity)]
    assert said.last_day() == date(2026, 6, 30)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Quotation Q-2211 / November 18, 2026", "November 18, 2026"),
        ("Offerte vom 16.11.2026, gültig bis 15.01.2027", "16.11.2026"),
        ("Cotización 2211 del 12 de noviembre de 2026", "12 de noviembre de 2026"),
        ("Offer valid until 31 Dec 2026", None),
        ("Price list effective December 1, 2026", None),
        ("Quotation for delivery on 12 Dec 2026", None),
        ("Price list replaces that of 1 June 2026", None),
    ],
)
def test_a_list_is_dated_by_its_name_and_number_but_by_no_other_day(text, day):
    dated = [said.date.words for said in statements(text) if isinstance(said, SaysDate)]
    assert dated == ([] if day is None else [day])


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Canadian customers: C$ list on request", False),
        ("Prices in US$, other grades on request", True),
        ("Prices in US$ are open until June 30", True),
    ],
)
def test_a_list_on_request_says_nothing_of_this_ones_currency(text, said):
    assert any(isinstance(one, SaysCurrency) for one in statements(text)) is said
