"""What a note says of rows in a colour or a kind of print is known of no row: nobody reads fills and fonts."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GC1", 250, 400, 1106], ["GC2", 270, 440, 1052], ["GD2", 350, 470, 752]]


def noted(*notes, below=False):
    said = [[note] for note in notes]
    table = [["Grade", "g/m²", "µm", "EUR/tonne"], *BOARDS]
    return lines([["Trellick Board Ltd"], *([] if below else said), [], *table, [], *(said if below else [])])


TIMES = [
    "Green rows are ex stock, all others 5 weeks.",
    "Rows marked green are ex stock, others 5 weeks.",
    "Prices in bold are ex stock.",
    "Yellow = lead time 5 weeks",
    "Lead time 3 weeks. Rows in green 5 weeks.",
    "Grün hinterlegte Zeilen ab Lager, alle anderen 5 Wochen.",
    "Gelbe Positionen: Lieferzeit 5 Wochen",
    "Les lignes en vert sont sur stock, les autres 5 semaines.",
    "Délai 3 semaines. Les prix en gras : 5 semaines.",
    "Las filas verdes son de existencias, las demás 5 semanas.",
    "Los precios en negrita: plazo de entrega 5 semanas.",
    "Gröna rader finns i lager, övriga 5 veckor.",
    "Priser i fetstil: leveranstid 5 veckor.",
]


@pytest.mark.parametrize("below", [False, True])
@pytest.mark.parametrize("note", TIMES)
def test_no_row_has_their_lead_time_and_each_is_told(note, below):
    for line in noted(note, below=below).values():
        assert (str(line.state), line.offer.lead_days) == ("accepted", None)
        assert "lead-time-unread" in codes(line)


def test_what_stands_beside_such_a_sentence_holds_for_all():
    found = noted("EUR/tonne delivered. Green rows are ex stock, all others 5 weeks. Minimum order 5 t.")
    assert {(line.offer.delivered, line.offer.minimum_kg) for line in found.values()} == {(True, 5000)}


@pytest.mark.parametrize(
    ("note", "field", "code"),
    [
        ("Prices in red are valid until 31 December 2026.", "valid_until", "validity-unread"),
        ("Shaded items have a minimum order of 10 t.", "minimum_kg", "bracket-unread"),
        ("Grau hinterlegte Zeilen: Mindestmenge 10 t", "minimum_kg", "bracket-unread"),
        ("Prices in bold are delivered, all others ex works.", "delivered", "number-ambiguous"),
    ],
)
def test_other_terms_are_open_too(note, field, code):
    for line in noted(note).values():
        assert getattr(line.offer, field) is None
        assert code in codes(line)


@pytest.mark.parametrize(
    "note",
    [
        "Prices in red are no longer valid.",
        "Items in red are discontinued.",
        "Rot gedruckte Preise sind nicht mehr gültig.",
        "Les prix en rouge ne sont plus valables.",
        "Los precios en rojo ya no son válidos.",
        "Priser i rött gäller inte längre.",
        "Red prices plus 5 %.",
    ],
)
def test_prices_called_off_or_changed_so_are_asked_about(note):
    assert {str(line.state) for line in noted(note).values()} == {"question"}


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks. Changes are shown in red.",
        "New prices are shown in bold. Lead time 3 weeks.",
        "Geänderte Preise sind fett gedruckt. Lieferzeit 3 Wochen.",
        "Delivery 3 weeks after order, prices on the green sheet are void",
    ],
)
def test_what_says_nothing_of_times_leaves_those_of_all(note):
    assert [line.offer.lead_days for line in noted(note).values()][:1] == [(21, 21)]


def test_a_colour_of_boards_is_no_mark():
    found = noted("Lead time 3 weeks", "Grey board: lead time 5 weeks", below=True)
    assert {line.offer.lead_days for line in found.values()} == {(21, 21)}
