"""How soon small orders come is no lead time of the others: 'Small lots ship from stock'."""

import pytest

from tests.intake.sheets import codes, lines

_ROWS = [["Board", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 800], []]
ALONE = [
    "Small lots ship from stock", "Small orders ship immediately", "Limited stock available for immediate shipment",
    "Small lots ship in 3 days", "Kleine Mengen sofort lieferbar", "Begrenzte Mengen sofort lieferbar",
    "Kleinmengen ab Lager lieferbar", "Kleinaufträge ab Lager", "Petits lots livrables immédiatement",
    "Petites commandes expédiées immédiatement", "Pequeñas cantidades disponibles de inmediato",
    "Pedidos pequeños en stock", "Små partier levereras omgående", "Små order levereras från lager",
]  # fmt: skip
BESIDE = {
    "en": "Lead time 4 weeks, small lots from stock", "de": "Lieferzeit 4 Wochen, kleine Posten ab Lager",
    "fr": "Délai 4 semaines, petits lots en stock", "es": "Plazo 4 semanas, pequeños lotes en stock",
    "sv": "Leveranstid 4 veckor, små partier från lager",
}  # fmt: skip


def _found(*notes):
    return list(lines([*_ROWS, *([note] for note in notes)]).values())


@pytest.mark.parametrize("note", ALONE)
def test_by_itself_it_leaves_the_lead_time_open(note):
    for line in _found(note):
        assert line.offer.lead_days is None
        assert "lead-time-unread" in codes(line)


@pytest.mark.parametrize("note", BESIDE.values(), ids=BESIDE)
def test_beside_a_lead_time_it_changes_nothing(note):
    for said in (note, note.replace(", ", "; ")):
        assert [line.offer.lead_days for line in _found(said)] == [(28, 28)] * 2
    assert [line.offer.lead_days for line in _found(*note.split(", "))] == [(28, 28)] * 2


@pytest.mark.parametrize(
    "note",
    [
        "Small lots from stock, EUR per tonne",
        "Petites quantités, départ usine, disponible sur stock",
        "All boards ship from stock",
    ],
)
def test_what_a_list_is_of_is_in_stock(note):
    assert [line.offer.lead_days for line in _found(note)] == [(0, 0)] * 2
