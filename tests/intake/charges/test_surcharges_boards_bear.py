"""A surcharge that a sentence puts on some boards, with its reason and with what it says of the others."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import OPEN

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]
_BOARDS = [["SBS", 260, 325, 1390], ["GC1", 250, 410, 1262], ["GD2", 280, 380, 821]]
_DELIVERED = "DAP"


def _found(note):
    return list(lines([_HEAD, *_BOARDS, [], [_DELIVERED], [note]]).values())


@pytest.mark.parametrize(
    "note",
    [
        (
            "SBS is invoiced with a surcharge of 60 EUR/t for raw material, which is not included in the price; all "
            "other grades bear no surcharge."
        ),
        (
            "SBS wird mit einem Rohstoffzuschlag von 60 EUR/t berechnet, der im Preis nicht enthalten ist; die übrigen "
            "Sorten tragen keinen Zuschlag."
        ),
        (
            "Für SBS berechnen wir einen Rohstoffzuschlag von 60 EUR/t, der im Preis nicht enthalten ist; alle anderen "
            "Sorten sind zuschlagsfrei."
        ),
        (
            "Le SBS est facturé avec un supplément matière de 60 €/t, qui n'est pas compris dans le prix ; les autres "
            "sortes ne portent aucun supplément."
        ),
        (
            "El SBS se factura con un suplemento de 60 €/t por materia prima, que no va incluido en el precio; las "
            "demás calidades no llevan suplemento."
        ),
        "SBS debiteras med ett råvarutillägg på 60 EUR/t, som inte ingår i priset; övriga kvaliteter har inget.",
        "A pulp surcharge of 60 EUR/t applies to SBS and is not in the prices; other grades carry none.",
        "El SBS lleva un suplemento de 60 €/t",
    ],
)
def test_the_boards_named_bear_it_and_no_others(note):
    charges = [[(charge.price, charge.basis.value) for charge in line.offer.charges] for line in _found(note)]
    assert charges == [[(Decimal(60), "tonne")], [], []]
    assert [line.state.value for line in _found(note)] == ["accepted"] * 3


@pytest.mark.parametrize(
    "note",
    [
        "SBS is invoiced with a surcharge of 60 EUR/t, which is included in the price; all other grades bear none.",
        "Der Rohstoffzuschlag für SBS von 60 EUR/t ist in den Preisen enthalten.",
        "Le supplément matière de 60 €/t sur le SBS est compris dans le prix.",
        "El suplemento de 60 €/t por materia prima del SBS ya va incluido en el precio.",
        "Råvarutillägget på 60 EUR/t för SBS ingår i priset.",
    ],
)
def test_what_the_price_includes_is_charged_to_none(note):
    assert [line.offer.charges for line in _found(note)] == [(), (), ()]


@pytest.mark.parametrize(
    "note",
    [
        "For SBS, as agreed at our last meeting, a fibre supplement of 60 EUR/t is shown apart.",
        "Für SBS rechnen wir mit einem Rohstoffzuschlag von 60 EUR/t; für alle anderen Sorten mit 20 EUR/t.",
        "Le SBS paie une majoration de 60 €/t qui suit le cours de la pâte.",
        "El SBS, por su materia prima, se encarece con un suplemento de 60 €/t que se revisa cada trimestre.",
        "SBS har ett råvarutillägg på 60 EUR/t som ses över varje kvartal, övriga inget.",
    ],
)
def test_where_it_is_not_told_apart_no_cost_looks_whole(note):
    offer = _found(note)[0].offer
    assert [charge.currency for charge in offer.charges] == [OPEN]


@pytest.mark.parametrize(
    "note",
    [
        "SBS has a surcharge of 60 EUR/t below 5 t.", "Für SBS gilt unter 5 t ein Zuschlag von 60 EUR/t.",
        "Le SBS supporte un supplément de 60 €/t en dessous de 5 t.",
        "El SBS lleva un recargo de 60 €/t por debajo de 5 t.",
        "För SBS tillkommer ett tillägg på 60 EUR/ton under 5 ton.",
    ],
)  # fmt: skip
def test_what_orders_below_a_weight_bear_is_told(note):
    sbs = _found(note)[0]
    assert (sbs.offer.charges, "bracket-unread" in codes(sbs)) == ((), True)


@pytest.mark.parametrize(
    "note",
    [
        "El recargo por entrega urgente queda suprimido.", "El suplemento por entrega urgente queda suprimido.",
        "Le supplément pour livraison express est supprimé.", "The surcharge for express delivery is waived.",
    ],
)  # fmt: skip
def test_what_ends_for_something_else_does_not_end_an_energy_surcharge(note):
    rows = [_HEAD, *_BOARDS, [], ["Energy surcharge: 20 EUR/t"], [note]]
    assert all(line.offer.charges for line in lines(rows).values())
