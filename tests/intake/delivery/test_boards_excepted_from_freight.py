"""Freight of all boards but some, and of some only, where a sentence says both."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["CUK", 300, 900], ["Greyboard (URB)", 500, 650]]


def _delivered(note):
    return [line.offer.delivered for line in lines([*ROWS, [note]]).values()]


ALL_BUT = {
    "en": "Everything but the greyboard comes with freight paid to your dock; the greyboard is FOB mill.",
    "en grades": "All grades except URB are delivered; URB is FOB mill.",
    "de": "Alles außer Graukarton kommt frei Haus; Graukarton ab Werk.",
    "fr": "Tout sauf le carton gris est livré franco ; le carton gris est départ usine.",
    "es": "Todo menos el cartón gris va a portes pagados; el cartón gris se vende en fábrica.",
    "sv": "Allt utom gråkartong säljs fritt kund; gråkartong säljs fritt fabrik.",
}
ONLY = {
    "en": "Prices delivered, only the greyboard is sold ex works.",
    "de": "Wir liefern frei Haus, nur der Graukarton versteht sich ab Werk.",
    "es": "Servimos puesto en su almacén, solo el cartón gris se vende en fábrica.",
    "sv": "Vi kör fritt till er port; bara gråkartongen (URB) säljs fritt fabrik.",
}
COLLECTED = {
    "en": "Prices delivered; greyboard (URB) you collect (EXW).",
    "de": "Wir liefern frei Haus, Graukarton holen Sie selbst ab (EXW).",
    "fr": "Tous les prix franco ; le carton gris est enlevé par le client (EXW).",
    "es": "Servimos puesto en su almacén; el cartón gris (URB) lo recoge el cliente en fábrica (EXW).",
    "sv": "Vi kör fritt till er port; bara gråkartongen (URB) hämtar ni själva hos oss (EXW).",
}


@pytest.mark.parametrize("note", ALL_BUT.values(), ids=ALL_BUT)
def test_all_but_some(note):
    assert _delivered(note) == [True, True, False]


@pytest.mark.parametrize("note", ALL_BUT.values(), ids=ALL_BUT)
def test_of_those_excepted_nothing_is_known_where_nothing_is_said(note):
    assert _delivered(note.split(";")[0].split(" ;")[0]) == [True, True, None]


@pytest.mark.parametrize("note", ONLY.values(), ids=ONLY)
def test_some_only(note):
    assert _delivered(note) == [True, True, False]


@pytest.mark.parametrize("note", COLLECTED.values(), ids=COLLECTED)
def test_some_that_the_buyer_fetches(note):
    assert _delivered(note) == [True, True, False]


def test_others_than_those_excepted_may_be_told_of_behind():
    assert _delivered("Everything but CUK comes delivered; greyboard is FOB mill.") == [True, None, False]


def test_what_only_some_are_says_nothing_of_others():
    assert _delivered("Only greyboard is sold ex works.")[:2] == [None, None]
    assert _delivered("Only samples are delivered; greyboard is sold ex works.")[:2] == [None, None]
