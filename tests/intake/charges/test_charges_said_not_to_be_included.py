"""What is said not to be in the prices is charged; without an amount, or with words that nobody understands, the cost
with it is not known."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_DELIVERED = {
    "en": "Prices DAP your works",
    "de": "Preise frei Haus",
    "fr": "Prix franco",
    "es": "Precios DAP su fábrica",
    "sv": "Priser fritt kund",
}
_ADDED = {
    "en": "Energy surcharge of 28 €/t not included, is added to all prices.",
    "de": "Energiezuschlag von 28 €/t nicht enthalten, kommt zu allen Preisen hinzu.",
    "fr": "Supplément énergie de 28 €/t non compris, s'ajoute à tous les prix.",
    "es": "Recargo energético de 28 €/tm no incluido, se añade a todos los precios.",
    "sv": "Energitillägg om 28 €/t ingår inte, tillkommer på alla priser.",
}
_BEHIND_COMMA = {
    "en": "Freight to your warehouse, not included: 46.50 €/t.",
    "de": "Fracht bis Ihr Lager, nicht enthalten: 46,50 €/t.",
    "fr": "Transport jusqu'à vos entrepôts, non compris : 46,50 €/t.",
    "es": "Transporte hasta su almacén, no incluido: 46,50 €/t.",
    "sv": "Frakt till ert lager, ingår ej: 46,50 €/t.",
}
_WITHOUT_AMOUNT = {
    "en": ["Energy surcharge not included.", "Prices do not include an energy surcharge."],
    "de": ["Energiezuschlag nicht enthalten.", "Die Preise enthalten keinen Energiezuschlag."],
    "fr": ["Supplément énergie non compris.", "Les prix ne comprennent pas le supplément énergie."],
    "es": ["Recargo energético no incluido.", "Los precios no incluyen recargo energético."],
    "sv": ["Energitillägg ingår ej.", "Priserna innefattar inte energitillägg."],
}
_NOT_UNDERSTOOD = {
    "en": "An energy surcharge of 28 €/t is not part of the prices and gets invoiced.",
    "de": "Ein Energiezuschlag von 28 €/t ist nicht Teil der Preise und wird eigens fakturiert.",
    "fr": "Un supplément énergie de 28 €/t ne fait pas partie des prix.",
    "es": "Un recargo energético de 28 €/t no forma parte de los precios.",
    "sv": "Ett energitillägg på 28 €/t är inte en del av priserna.",
}
_INCLUDED = {
    "en": ["Energy surcharge of 28 €/t included, not added to the prices.", "There is no energy surcharge."],
    "de": ["Energiezuschlag von 28 €/t enthalten.", "Es gibt keinen Energiezuschlag."],
    "fr": ["Supplément énergie de 28 €/t compris.", "Aucun supplément énergie."],
    "es": ["Recargo energético de 28 €/t incluido, no se añade a los precios.", "Sin recargo energético."],
    "sv": ["Energitillägg om 28 €/t ingår.", "Inget energitillägg."],
}


def charges(*notes, language="en", title=None):
    head = ["Board", "g/m²", "µm", "EUR/t"]
    boards = [["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]]
    found = lines([[title or _DELIVERED[language]], head, *boards, [], *([note] for note in notes)])
    assert list(found) == ["D3", "D4"]
    assert found["D3"].offer.charges == found["D4"].offer.charges
    return [(one.currency, f"{one.price:f}") for one in found["D3"].offer.charges]


@pytest.mark.parametrize("language", _ADDED)
def test_what_is_not_included_and_added_is_charged(language):
    assert charges(_ADDED[language], language=language) == [("EUR", "28")]


@pytest.mark.parametrize("language", _BEHIND_COMMA)
def test_so_is_an_amount_behind_the_words_behind_a_comma(language):
    assert charges(_BEHIND_COMMA[language], title="EUR/t, ex works") == [("EUR", "46.50")]


@pytest.mark.parametrize(
    ("language", "note"), [(one, note) for one in _WITHOUT_AMOUNT for note in _WITHOUT_AMOUNT[one]]
)
def test_without_its_amount_it_is_not_known(language, note):
    assert charges(note, language=language) == [(OPEN, "0")]


@pytest.mark.parametrize("language", _WITHOUT_AMOUNT)
def test_its_amount_may_stand_elsewhere(language):
    name = _ADDED[language].partition(" 28 ")[0].removesuffix(" of").removesuffix(" de").removesuffix(" von")
    note = f"{name.removesuffix(' om')}: 28 €/t"
    assert charges(_WITHOUT_AMOUNT[language][0], note, language=language) == [("EUR", "28")]


@pytest.mark.parametrize("language", _NOT_UNDERSTOOD)
def test_a_charge_that_nobody_understands_is_not_lost(language):
    assert charges(_NOT_UNDERSTOOD[language], language=language) == [(OPEN, "0")]


@pytest.mark.parametrize(("language", "note"), [(one, note) for one in _INCLUDED for note in _INCLUDED[one]])
def test_what_is_included_or_not_charged_is_none(language, note):
    assert charges(note, language=language) == []
