"""Lead times as a vendor writes them in whole sentences: of rolls and sheets, of thick boards and of thin ones, of what
is in stock and what is made to order. An exception that is not understood leaves open the time of its own lines."""

import pytest

from tests.intake.sheets import codes, lines

_BOARDS = [["GC1", 230, 360, 1268], ["GC1 *", 320, 500, 1239], ["GD2", 420, 560, 850], ["Graukarton", 800, 1200, 679]]
_FORMS = [["GC1", "Rolls", 230, 360, 1268], ["GC1", "Sheets", 230, 360, 1290]]


def _days(*notes, head=("Grade", "g/m²", "µm", "EUR/t"), rows=_BOARDS):
    """The longest time of each line, 'unread' where a note says so of it."""
    found = lines([list(head), *rows, [], *[[note] for note in notes]]).values()
    return [_told(line) for line in found]


def _told(line):
    if "lead-time-unread" in codes(line):
        return "unread"
    return None if line.offer.lead_days is None else line.offer.lead_days[1]


def _days_of_forms(note):
    return _days(note, head=("Grade", "Form", "g/m²", "µm", "EUR/t"), rows=_FORMS)


@pytest.mark.parametrize(
    "note",
    [
        "Rolls leave the mill in 10 business days, sheets in four weeks.",
        "We ship rolls in 10 working days and sheets in four weeks.",
        "Wir liefern Rollen in 10 Arbeitstagen und Bogen in vier Wochen.",
        "Rollen verlassen das Werk in 10 Arbeitstagen, Bogen in vier Wochen.",
        "Nous livrons les bobines en 10 jours ouvrés et les feuilles en quatre semaines.",
        "Les bobines quittent l'usine en 10 jours ouvrés, les feuilles en quatre semaines.",
        "Servimos las bobinas en 10 días laborables y las hojas en cuatro semanas.",
        "Vi levererar rullar inom 10 arbetsdagar och ark inom fyra veckor.",
        "Rullar lämnar bruket inom 10 arbetsdagar, ark inom fyra veckor.",
    ],
)
def test_rolls_and_sheets_have_each_their_own(note):
    assert _days_of_forms(note) == [14, 28]


@pytest.mark.parametrize(
    "note",
    [
        "Payment: rolls in 15 days, sheets in five weeks.",
        "Claims on rolls in 10 working days and on sheets in four weeks.",
    ],
)
def test_what_else_is_counted_of_rolls_and_sheets_is_no_lead_time(note):
    assert _days_of_forms(note) == [None, None]


@pytest.mark.parametrize(
    "note",
    [
        "We ship from stock, except that anything 500 µm and heavier is made to order and takes eight weeks.",
        "Wir liefern ab Lager, nur dass alles ab 500 µm auf Bestellung gefertigt wird und acht Wochen braucht.",
    ],
)
def test_what_is_heavier_is_made_to_order(note):
    assert _days(note) == [0, 56, 56, 56]


@pytest.mark.parametrize(
    "note",
    [
        "From a caliper of 500 µm we need 6 weeks, all thinner ones 15 working days.",
        "Ab einer Dicke von 500 µm liefern wir in 6 Wochen, alle dünneren Sorten in 15 Arbeitstagen.",
        "Ab einem Flächengewicht von 300 g/m² liefern wir in 6 Wochen, alle leichteren Sorten in 15 Arbeitstagen.",
        "À partir d'une épaisseur de 500 µm, il faut 6 semaines, les plus minces demandent 3 semaines.",
        "A partir de un espesor de 500 µm necesitan 6 semanas, los más finos requieren 3 semanas.",
        "Från en tjocklek på 500 µm tar det 6 veckor, tunnare ytvikter tar 3 veckor.",
        "Weights of 300 g/m² and above are made late in the cycle and need 6 weeks. Lighter ones need three weeks.",
        "Gewichte ab 300 g/m² fertigen wir am Ende des Zyklus, sie brauchen 6 Wochen. Leichtere brauchen drei Wochen.",
    ],
)
def test_thick_boards_and_thin_ones_have_each_their_own(note):
    assert _days(note) == [21, 42, 42, 42]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time is 4 weeks; only greyboard is in stock with us and ships at once.",
        "Die Lieferzeit beträgt 4 Wochen; nur Graukarton ist bei uns vorrätig und geht sofort in den Versand.",
        "Le délai est de 4 semaines. Le carton gris est en stock pour livraison immédiate.",
        "El plazo de entrega es de 4 semanas. El cartón gris está en stock para entrega inmediata.",
        "Räkna med 4 veckors leveranstid. Gråkartong har vi däremot i lager för omgående leverans.",
        "Lead time 4 weeks. Greyboard goes out at once.",
        "Lieferzeit 4 Wochen. Graukarton geht sofort raus.",
        "Le délai est de 4 semaines. Le carton gris part tout de suite.",
        "Plazo 4 semanas. El cartón gris se sirve de inmediato.",
        "Leveranstid 4 veckor. Gråkartong skickas samma dag.",
    ],
)
def test_what_is_in_stock_goes_at_once(note):
    assert _days(note) == [28, 28, 28, 0]


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Lead time 4 weeks. Greyboard is available immediately in small lots only.", "unread"),
        ("Lead time 4 weeks. Greyboard goes out at once or in 2 weeks.", "unread"),
        ("Lead time 4 weeks. Please report damage to greyboard immediately.", 28),
        ("Leveranstid 4 veckor. Gråkartong levereras direkt från bruket.", 28),
    ],
)
def test_at_once_may_be_on_a_condition_or_of_something_else(note, days):
    assert _days(note) == [28, 28, 28, days]


@pytest.mark.parametrize(
    "note",
    [
        "The items are in stock. Those marked * are made to order and take six weeks.",
        "Die Artikel liegen am Lager. Die mit * gekennzeichneten sind Bestellware und brauchen sechs Wochen.",
        "Les articles sont en stock. Ceux marqués * sont fabriqués sur commande et demandent six semaines.",
        "Los artículos están en stock. Los marcados con * se fabrican bajo pedido y tardan seis semanas.",
        "Artiklarna finns i lager. De som är märkta med * är beställningsvaror och tar sex veckor.",
    ],
)
def test_the_items_are_in_stock_but_for_those_marked(note):
    assert _days(note) == [0, 42, 0, 0]


@pytest.mark.parametrize(
    "note",
    [
        "The items are not in stock.", "The items may be in stock.", "The boards are kept in stock in Holm.",
        "The items are in stock, sheets 3 weeks.", "Artiklarna finns inte i lager.",
    ],
)  # fmt: skip
def test_the_items_may_not_be_in_stock(note):
    assert set(_days(note)) <= {None, "unread"}


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks. Those marked * may need six weeks.",
        "Lead time 3 weeks. Those marked * six weeks or so after a new run.",
        "Lieferzeit 3 Wochen. Die mit * gekennzeichneten dürften eher sechs Wochen brauchen.",
    ],
)
def test_a_time_of_marked_lines_that_is_not_read_leaves_theirs_open(note):
    assert _days(note) == [21, "unread", 21, 21]


def test_what_else_is_counted_of_marked_lines_changes_nothing():
    assert _days("Lead time 3 weeks. Items marked * must be paid in 2 weeks.") == [21] * 4


@pytest.mark.parametrize(
    "note",
    [
        "We make within the cycle, please allow 3-4 weeks.",
        "We accept orders from 1 tonne and deliver within four weeks.",
        "Wir fertigen innerhalb des Zyklus, rechnen Sie bitte mit 3-4 Wochen.",
        "Wir nehmen Aufträge ab 1 t an und liefern innerhalb von vier Wochen.",
        "Nous fabriquons selon le cycle, comptez 3 à 4 semaines.",
        "Fabricamos dentro del ciclo, calcule 3-4 semanas.",
        "Vi tillverkar i cykler, räkna med 3-4 veckor.",
        "Vi tar emot order från 1 000 kg och levererar inom 20 arbetsdagar.",
    ],
)
def test_of_all_boards_beside_how_they_are_made_or_ordered(note):
    assert _days(note) == [28] * 4


@pytest.mark.parametrize(
    "note",
    [
        "Wir fertigen im Zyklus, rechnen Sie mit 3-4 Wochen mehr.", "Wir fertigen im Zyklus, alle 3 Wochen.",
        "Wir fertigen innerhalb des Zyklus, rechnen Sie mit einer Preiserhöhung in 4 Wochen.",
        "We make within the cycle, please allow 3 weeks for samples.", "Our competitors deliver in 3 weeks.",
        "Andere Werke liefern in 6 Wochen.",
    ],
)  # fmt: skip
def test_what_is_more_or_of_others_is_none(note):
    assert set(_days(note)) <= {None, "unread"}
