"""Delivered prices that are given on request alone are not those of the list, whatever the term is called."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "µm", "g/m²", "EUR/t"], ["GC1", 430, 290, 1201], []]


def delivered(note):
    return lines([*ROWS, [note]])["D2"].offer.delivered


@pytest.mark.parametrize(
    "note",
    [
        "Delivered duty paid prices on request.", "Delivered duty paid price on request.",
        "Delivered duties unpaid prices available.", "Delivered prices on request.",
        "Geliefert verzollt auf Anfrage.", "Prix rendu droits acquittés sur demande.",
        "Precios entregado derechos pagados bajo petición.", "Priser levererat tull betald på begäran.",
    ],
)  # fmt: skip
def test_prices_on_request_are_no_prices_of_the_list(note):
    assert delivered(note) is None


@pytest.mark.parametrize(
    "note",
    [
        "Prices delivered duty paid.", "Delivered duty paid, samples on request.", "Delivered duty paid.",
        "Preise frei Haus, Muster auf Anfrage.", "Prix rendu droits acquittés.", "Precios entregado derechos pagados.",
        "Priser levererat tull betald.",
    ],
)  # fmt: skip
def test_what_else_is_on_request_leaves_the_term(note):
    assert delivered(note) is True
