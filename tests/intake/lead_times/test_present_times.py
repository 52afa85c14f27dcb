"""Of two times the one of today holds; one that was, one in two stages and one with a plus are not counted."""

import pytest

from tests.intake.lead_times.notes import BOARD, UNREAD, lead_below
from tests.intake.sheets import codes, lines


@pytest.mark.parametrize(
    "text",
    [
        "Current lead time 3 weeks, normal 5 weeks.", "Normal lead time 5 weeks, currently 3 weeks.",
        "Lead time was 5 weeks, now 3 weeks.", "Aktuelle Lieferzeit 3 Wochen, normal 5 Wochen.",
        "Lieferzeit normal 5 Wochen, derzeit 3 Wochen.", "Délai actuel 3 semaines, normal 5 semaines.",
        "Délai normal 5 semaines, actuellement 3 semaines.", "Plazo actual 3 semanas, normal 5 semanas.",
        "Plazo normal 5 semanas, ahora 3 semanas.", "Aktuell leveranstid 3 veckor, normalt 5 veckor.",
        "Normal leveranstid 5 veckor, just nu 3 veckor.", "Lead time is now 3 weeks.", "Normal lead time 3 weeks.",
        "Lead time 3 weeks or earlier.", "Usual lead time 3 weeks.", "30 days net, delivery 3 weeks.",
    ],
)  # fmt: skip
def test_the_time_of_today(text):
    assert lead_below(text) == (21, 21)


@pytest.mark.parametrize(
    "text",
    [
        "Lead time now 4 weeks for rolls, normally 6 weeks for sheets.", "Lead time now 4 weeks, otherwise 6 weeks.",
        "Lead time normally 3 weeks from stock, currently 6 weeks for makings.",
        "Lead time today 4 weeks (usually 3 weeks for truckloads).",
        "Lead time now 3 weeks, for rolls, usually 5 weeks.",
        "Lieferzeit derzeit 3 Wochen für Rollen, sonst 5 Wochen.", "Lieferzeit derzeit 3 Wochen, sonst 5 Wochen.",
        "Lieferzeit normal 3 Wochen ab Lager, derzeit 6 Wochen für Anfertigungen.",
        "Délai actuel 3 semaines pour bobines, normal 5 semaines pour feuilles.",
        "Délai actuel 3 semaines, sinon 5 semaines.",
        "Plazo actual 3 semanas para bobinas, normal 5 semanas para hojas.",
        "Leveranstid nu 3 veckor för rullar, normalt 5 veckor för ark.", "Leveranstid nu 3 veckor, annars 5 veckor.",
    ],
)  # fmt: skip
def test_times_of_two_ways_are_none_for_all(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Lead time currently 3 weeks due to the rebuild, normally 2 weeks.",
        "Lead time is currently about 3 weeks after receipt of order, usually 2 weeks.",
        "Die Lieferzeit beträgt derzeit ca. 3 Wochen nach Auftragseingang, normalerweise 2 Wochen.",
        "Le délai est actuellement de 3 semaines, normalement de 2 semaines.",
        "El plazo de entrega es actualmente de 3 semanas, normalmente de 2 semanas.",
        "Leveranstiden är för närvarande ca 3 veckor, normalt 2 veckor.", "Vår leveranstid är 3 veckor.",
    ],
)  # fmt: skip
def test_the_time_of_today_in_whole_sentences(text):
    assert lead_below(text) == (21, 21)


@pytest.mark.parametrize(
    "text",
    [
        "Lead time was 5 weeks.", "Die Lieferzeit war 5 Wochen.", "Le délai était de 5 semaines.",
        "El plazo era de 5 semanas.", "Leveranstiden var 5 veckor.", "Lead time 3 weeks, standard 5 weeks.",
    ],
)  # fmt: skip
def test_a_time_that_was_or_is_one_of_two(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Production 3 weeks, shipping 1 week.", "Current lead times 3 weeks, delivery 5 days.",
        "Delivery from stock 2 days, mill makings 5 weeks.", "Shipping 1 week, production 3 weeks.",
        "Produktion 3 Wochen, Lieferung 1 Woche.", "Fabrication 3 semaines, livraison 1 semaine.",
        "Fabricación 3 semanas, entrega 1 semana.", "Tillverkning 3 veckor, leverans 1 vecka.",
    ],
)  # fmt: skip
def test_the_last_of_several_stages_is_not_the_whole(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3+ weeks.", "Lead time + 2 weeks.", "Lieferzeit + 2 Wochen.", "Lieferzeit 3+ Wochen.",
        "Délai + 2 semaines.", "Délai 3+ semaines.", "Plazo + 2 semanas.", "Plazo 3+ semanas.",
        "Leveranstid + 2 veckor.", "Leveranstid 3+ veckor.",
    ],
)  # fmt: skip
def test_a_plus_leaves_the_longest_time_open(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize("told", ["3+ weeks", "3 weeks +", "+ 3 weeks", "3 weeks, normally 5 weeks"])
def test_a_plus_or_a_second_time_in_a_cell(told):
    head, board, _ = BOARD
    line = lines([[*head, "Lead time"], [*board, told]])["D2"]
    assert line.offer.lead_days is None
    assert UNREAD in codes(line)


@pytest.mark.parametrize("told", ["3 weeks - 5 weeks", "3 wks/5 wks", "3 to 5 weeks"])
def test_two_ends_of_one_time_in_a_cell(told):
    head, board, _ = BOARD
    assert lines([[*head, "Lead time"], [*board, told]])["D2"].offer.lead_days == (21, 35)
