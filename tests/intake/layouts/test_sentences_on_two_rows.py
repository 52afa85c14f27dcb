"""A sentence that goes on in the row below is read whole; what stands below one by itself is no part of it."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_TITLE = ["Karton, €/t frei Haus"]
_HEAD = ["Sorte", "g/m²", "µm", "Format cm", "€/t"]
_BOARDS = (["GC1", 250, 410, "70 x 100", 1268], ["GC1", 250, 410, "80 x 120", 1268], ["GD2", 350, 470, "64 x 90", 836])


def _charges(rows):
    found = lines([_TITLE, *rows])
    assert len(found) == len(_BOARDS)
    return [
        [str(one.price) if one.currency != OPEN else "open" for one in line.offer.charges] for line in found.values()
    ]


_SENTENCES = [
    ("Formate, die größer sind als 72 x 102 cm,", "kosten einen Zuschlag von 3 % auf den Tonnenpreis."),
    ("Sheets which are larger than 72 x 102 cm,", "carry a surcharge of 3 % on the price."),
    ("Les formats qui dépassent 72 x 102 cm,", "supportent un supplément de 3 % du prix."),
    ("Los formatos que superen 72 x 102 cm,", "llevan un recargo del 3 % sobre el precio."),
    ("Format som är större än 72 x 102 cm,", "har ett tillägg på 3 % på priset."),
]


@pytest.mark.parametrize("sentence", _SENTENCES)
def test_below_the_table(sentence):
    assert _charges([_HEAD, *_BOARDS, [], *([text] for text in sentence)]) == [["open"]] * 3


@pytest.mark.parametrize("sentence", _SENTENCES)
def test_beside_the_table(sentence):
    rows = [_HEAD, *_BOARDS]
    beside = [[*row, None, text] for row, text in zip(rows, sentence, strict=False)]
    assert _charges([*beside, *rows[2:]]) == [["open"]] * 3


def test_over_three_rows():
    rows = [
        "Formate, die größer sind als 72 x 102 cm,",
        "weil sie eigens gefertigt werden,",
        "kosten Zuschlag von 3 %.",
    ]
    assert _charges([_HEAD, *_BOARDS, [], *([text] for text in rows)]) == [["open"]] * 3


def test_what_begins_anew_is_said_of_all():
    rows = ["Formate nach Absprache, auch größere als 72 x 102 cm.", "Zuschlag von 3 % auf alle Preise."]
    assert _charges([_HEAD, *_BOARDS, [], *([text] for text in rows)]) == [["3"]] * 3


def test_heads_on_two_rows_stay_heads():
    rows = [["Sorte", "g/m²", "µm", "Format cm", "Preis,"], [None, None, None, None, "in €/t"], *_BOARDS]
    assert _charges(rows) == [[]] * 3
