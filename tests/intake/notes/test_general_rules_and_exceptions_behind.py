"""A rule for all boards stands in one sentence and its exception in the next: the excepted boards have their own, or
none where the sentence is not wholly understood."""

import pytest

from tests.intake.sheets import codes, lines

_BOARDS = [
    ["GC1", 230, 370, 1268], ["GC1", 360, 590, 1239], ["GD2", 250, 330, 862], ["GD2", 400, 520, 850],
    ["SBS", 260, 320, 1460], ["URB", 500, 750, 679],
]  # fmt: skip


def _lines(*notes, head=("Grade", "g/m²", "µm", "EUR/t"), rows=_BOARDS):
    return list(lines([list(head), *rows, [], *[[note] for note in notes]]).values())


def _weeks(*notes):
    return [None if (days := line.offer.lead_days) is None else days[1] // 7 for line in _lines(*notes)]


def _tonnes(*notes):
    found = [line.offer.minimum_kg for line in _lines(*notes)]
    return [None if kg is None else int(kg) // 1000 for kg in found]


@pytest.mark.parametrize(
    "note",
    [
        "Our lead time is four weeks. Weights from 350 g/m² we run less often, so allow six weeks.",
        "Unsere Lieferzeit liegt bei vier Wochen. Gewichte ab 350 g/m² fertigen wir selten, hier beträgt sie 6 Wochen.",
        "Le délai est de quatre semaines. Les grammages à partir de 350 g/m² demandent six semaines.",
        "El plazo de entrega es de 4 semanas, salvo los gramajes de 350 g/m² en adelante, que necesitan 6.",
        "Leveranstiden är fyra veckor. Ytvikter från 350 g/m² och uppåt tar sex veckor.",
    ],
)
def test_weights_of_the_next_sentence_have_their_own_time(note):
    assert _weeks(note) == [4, 6, 4, 6, 4, 6]


@pytest.mark.parametrize(
    "note",
    [
        "Weights up to 250 g/m² are in stock. All heavier ones take three weeks.",
        "Die Gewichte bis und mit 250 g/m² sind ab Lager lieferbar. Für alle schwereren brauchen wir drei Wochen.",
        "Les grammages jusqu'à 250 g/m² sont en stock. Pour les plus lourds, il faut trois semaines.",
        "Los gramajes hasta 250 g/m² están en stock. Los más pesados requieren tres semanas.",
        "Ytvikter upp till 250 g/m² finns i lager. Tyngre ytvikter tar tre veckor.",
    ],
)
def test_heavier_ones_are_those_above_the_span_before(note):
    assert _weeks(note) == [0, 3, 0, 3, 3, 3]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time is 4 weeks; only the 230 and 250 g/m² are held in stock.",
        "Die Lieferzeit beträgt 4 Wochen; nur die 230 und 250 g/m² liegen am Lager.",
        "Le délai est de quatre semaines ; seuls les 230 et 250 g/m² sont tenus en stock.",
        "El plazo de entrega es de 4 semanas; solo los de 230 y 250 g/m² se mantienen en stock.",
        "Leveranstiden är 4 veckor; endast 230 och 250 g/m² finns i lager.",
    ],
)
def test_some_weights_are_in_stock(note):
    assert _weeks(note) == [0, 4, 0, 4, 4, 4]


@pytest.mark.parametrize(
    "notes",
    [
        (
            "All the recycled board on this list is in stock.",
            "The bleached items are made to order: that takes 4 weeks.",
        ),
        ("Recyclingsorten sind ab Lager lieferbar.", "Gebleichte Sorten fertigen wir auf Bestellung: 4 Wochen."),
        (
            "Les cartons recyclés sont en stock.",
            "Les cartons blanchis sont fabriqués à la commande : délai 4 semaines.",
        ),
        ("Los cartones reciclados están en stock.", "Los blanqueados se fabrican bajo pedido: plazo 4 semanas."),
        ("Returkvaliteter finns i lager.", "Blekta kvaliteter tillverkas mot order: leveranstid 4 veckor."),
    ],
)
def test_families_have_each_their_own(notes):
    assert _weeks(*notes) == [None, None, 0, 0, 4, 0]


@pytest.mark.parametrize(
    "notes",
    [
        ("Minimum order is 3 t per item.", "URB is made for orders of 10 t and up."),
        ("Minimum order 3 t. URB from 10 t only.",),
        ("Minimum de commande : 3 tonnes par grammage, porté à 10 tonnes pour le carton gris.",),
        ("Minsta tillverkning är 3 ton per ytvikt, för URB 10 ton.",),
    ],
)
def test_smallest_orders_of_the_next_sentence(notes):
    assert _tonnes(*notes) == [3, 3, 3, 3, 3, 10]


def test_sheets_of_one_size_are_in_stock_and_others_cut():
    head = ("Grade", "g/m²", "µm", "Format cm", "EUR/1000 feuilles")
    rows = [["GC1", 250, 405, "70 x 100", 212.4], ["GC1", 300, 495, "72 x 102", 263.9]]
    stocked = "Le 70 x 100 part du stock, sans minimum."
    note = f"{stocked} Le 72 x 102 est coupé à la commande : délai 4 semaines, minimum 2 tonnes."
    found = [(line.offer.lead_days, line.offer.minimum_kg) for line in _lines(note, head=head, rows=rows)]
    assert found == [((0, 0), None), ((28, 28), 2000)]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks. Weights above 350 g/m² we roll when the stars allow, within about 8 weeks.",
        "Lieferzeit 4 Wochen. Gewichte über 350 g/m² laufen nach Absprache mit dem Werk in 8 Wochen.",
        "Délai 4 semaines. Au-delà de 350 g/m², selon le programme de la machine, 8 semaines.",
        "Plazo de entrega 4 semanas. Más de 350 g/m², según programa de la máquina, 8 semanas.",
        "Leveranstid 4 veckor. Ytvikter över 350 g/m² enligt maskinens program, 8 veckor.",
    ],
)
def test_what_is_not_wholly_read_leaves_its_boards_without_a_time(note):
    weeks = _weeks(note)
    assert [weeks[1], weeks[3], weeks[5]] == [None, None, None]
    assert all("lead-time-unread" in codes(_lines(note)[at]) for at in (1, 3, 5))


def test_heavier_ones_than_nobody_told_may_be_any():
    assert set(_weeks("Lead time 4 weeks.", "Heavier ones take 6 weeks.")) == {None}


def test_others_than_those_that_are_not_understood_may_be_any():
    assert set(_weeks("Lead time 4 weeks.", "All other items take three weeks.")) == {None}


@pytest.mark.parametrize(
    "other",
    [
        "GC1 invoices are payable within 6 weeks.", "Prices of GD2 are valid for 6 weeks.",
        "Reklamationen zu GC1 nur innerhalb von 2 Wochen.", "GD2 is packed on pallets of 800 kg.",
        "Samples are sent within 2 weeks.", "GC1 is delivered free from 10 t.",
        "Tolérance de grammage pour le GC1 : plus ou moins 5 %.",
    ],
)  # fmt: skip
def test_other_topics_take_nothing_away(other):
    assert set(_weeks("Lead time 4 weeks.", other)) == {4}
    assert set(_tonnes("Minimum order 3 t.", other)) == {3}


def test_what_is_made_to_order_is_in_no_stock():
    assert _weeks("Everything is available from stock.", "URB is made to order.")[5] is None
    assert _weeks("Lead time 4 weeks.", "URB is made to order.") == [4] * 6


def test_boards_joined_by_and_are_not_those_of_both():
    assert _weeks("Lead time 3 weeks except SBS and boards over 390 g/m², 5 weeks.") == [3, 3, 3, 5, 5, 5]


def test_a_row_that_says_its_own_keeps_it():
    rows = [["URB", 500, 750, 679, "2 weeks"]]
    head = ("Grade", "g/m²", "µm", "EUR/t", "Lead time")
    (line,) = _lines("Lead time 4 weeks. Weights from 350 g/m² take 6 weeks.", head=head, rows=rows)
    assert line.offer.lead_days == (14, 14)


@pytest.mark.parametrize(
    "note",
    [
        "We reckon on five weeks from order to finished goods.",
        "Wir rechnen mit fünf Wochen vom Auftrag bis zur fertigen Ware.",
        "Nous comptons cinq semaines de la commande à la marchandise prête.",
        "Contamos con cinco semanas desde el pedido hasta la mercancía terminada.",
        "Vi räknar med fem veckor från order till färdig vara.",
    ],
)
def test_a_time_from_the_order_to_finished_goods_is_a_lead_time(note):
    assert set(_weeks(note)) == {5}


def test_a_time_that_is_reckoned_with_for_samples_is_none():
    assert set(_weeks("Vi räknar med fem veckor för prover.")) == {None}
