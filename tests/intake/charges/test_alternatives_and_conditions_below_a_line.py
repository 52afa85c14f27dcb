"""What may be charged on some orders alone is held open below a line that adds it to all prices; alternatives are never
charged together."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_BOARDS = [["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]]
_LINES = {
    "en": "Added to all prices:",
    "de": "Hinzu kommen auf alle Preise:",
    "fr": "S'ajoutent à tous les prix :",
    "es": "A todos los precios se añaden:",
    "sv": "Tillkommer på alla priser:",
}
_ALTERNATIVES = {
    "en": (["Freight Tarn", "Freight Vale"], ["Canada", "Mexico"], ["Ashby mill", "Barton mill"]),
    "de": (["Fracht Nord", "Fracht Süd"], ["Werk Tarn", "Werk Vale"]),
    "fr": (["Transport nord", "Transport sud"], ["Suisse", "Italie"]),
    "es": (["Península", "Baleares"], ["Portes norte", "Portes levante"]),
    "sv": (["Norrland", "Skåne"], ["Frakt norr", "Frakt söder"]),
}
_NAMED = {
    "en": ("Edge guards", "Certificate"),
    "de": ("Kantenschutz", "Zertifikat"),
    "fr": ("Cornières", "Certificat"),
    "es": ("Cantoneras", "Certificado"),
    "sv": ("Kantskydd", "Certifikat"),
}


def read(*rows):
    found = lines([["EUR/t, ex works"], ["Board", "g/m²", "µm", "EUR/t"], *_BOARDS, *rows])
    assert list(found) == ["D3", "D4"]
    assert {line.state.value for line in found.values()} == {"accepted"}
    return found.values()


def charges(*rows):
    told = [[(one.label, None if one.currency == OPEN else f"{one.price:f}") for one in each.offer.charges]
            for each in read(*rows)]  # fmt: skip
    assert told[0] == told[1]
    return told[0]


@pytest.mark.parametrize("language", _LINES)
def test_alternatives_are_open_each(language):
    line = _LINES[language]
    for names in _ALTERNATIVES[language]:
        rows = [[name, None, None, f"{at}0 €/t"] for at, name in enumerate(names, 4)]
        assert {each[1] for each in charges([], [line], *rows)} == {None}
        assert {each[1] for each in charges([line], *rows)} == {None}
        behind = ", ".join(f"{name} {at}0 €/t" for at, name in enumerate(names, 4))
        assert [each[1] for each in charges([f"{line} {behind}"])] == [None, None]


@pytest.mark.parametrize("language", _LINES)
def test_what_the_trade_knows_is_charged(language):
    rows = [[name, "4 €/t"] for name in _NAMED[language]]
    assert charges([], [_LINES[language]], *rows) == [(name, "4") for name in _NAMED[language]]


@pytest.mark.parametrize(
    "entry",
    [
        "Winter months 15 €/t", "Ausland 60 €/t", "weekend delivery 50 €/t", "credit card 2.5 %", "demurrage 75 €/t",
        "storage 20 €/t", "C2S 80 €/t", "fuel 2 % (rolls only)", "Formatzuschlag 40 €/t (nur Bogen)",
        "freight 45 €/t, unless collected", "energy 3 %, waived in June", "energy approx. 3 %", "Energie 3 % max.",
        "énergie environ 3 %", "energi högst 3 %", "energía máx. 3 %", "energy about 25 €/t",
    ],
)  # fmt: skip
def test_what_hangs_on_a_condition_is_open(entry):
    for line in _LINES.values():
        assert [each[1] for each in charges([], [line], [entry])] == [None]
        assert [each[1] for each in charges([], [f"{line} {entry}"])] == [None]


@pytest.mark.parametrize("entry", ["energy 3 %", "toll 4 €/t", "pallets 12 €/t", "Energie 3 %", "Maut 4 €/t"])
def test_without_a_condition_it_is_charged(entry):
    for line in _LINES.values():
        assert charges([], [f"{line} {entry}"]) == [(entry.split()[0], entry.split()[1])]


def test_a_condition_at_the_end_may_be_of_all_entries():
    assert [each[1] for each in charges([], ["Added to all prices: energy 3 %, toll 4 €/t, waived in June"])] == [
        None
    ] * 2


@pytest.mark.parametrize(
    "line",
    [
        "Hinzu kommen: Energie 6 %, Maut 4 €/t bei Lieferung frei Haus",
        "Added to all prices: energy 6 %, toll 4 €/t if delivered",
        "Tillkommer på alla priser: energi 6 %, vägtull 4 €/t vid leverans fritt kund",
    ],
)
def test_a_charge_s_condition_delivers_no_price(line):
    rows = [["EUR/t"], ["Board", "g/m²", "µm", "EUR/t"], *_BOARDS, [], [line]]
    for found in lines(rows).values():
        assert found.offer.delivered is None
        assert [one.currency == OPEN for one in found.offer.charges][1:] in ([True], [])


def test_an_entry_of_one_board_is_that_board_s():
    rows = [["GC1", "15 €/t"], ["Edge guards", "4 €/t"]]
    found = list(read([], ["Added to all prices:"], *rows))
    told = [[(one.label, f"{one.price:f}") for one in each.offer.charges] for each in found]
    assert told[1] == [("Edge guards", "4")]
    assert sorted(told[0]) == [("Added to all prices", "15"), ("Edge guards", "4")]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Not added to the prices:", []),
        ("Never added to all prices:", []),
        ("Nicht zu den Preisen hinzu kommen:", []),
        ("To be added to all prices from 2027:", [None]),
        ("Last year added to all prices:", [None]),
        ("Added to all prices where applicable:", [None]),
        ("Ab 2027 kommen auf alle Preise hinzu:", [None]),
        ("Added to all prices:", ["3"]),
        ("Not included in the prices:", ["3"]),
        ("Nicht in den Preisen enthalten:", ["3"]),
    ],
)
def test_a_line_that_denies_or_bounds_adds_nothing_for_certain(line, told):
    assert [each[1] for each in charges([], [line], ["Energy", "3 %"])] == told
    assert [each[1] for each in charges([line], ["Energy", "3 %"])] == told
    assert [each[1] for each in charges([], [f"{line} energy 3 %"])] == told


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (["Fracht nach Tarnheim", "40 €/t"], ["Fracht nach Valeburg", "60 €/t"]),
        (["Energy", "3 %"], ["Energy surcharge", "4 %"]),
        (["Pallets", "3 €/t"], ["Pallets", "4 €/t"]),
    ],
)
def test_two_rates_of_one_kind_are_no_sum(first, second):
    line = ["Added to all prices:"]
    assert [each[1] for each in charges([], line, first)] == [first[1].split()[0]]
    assert [each[1] for each in charges([], line, first, second)] == [None]
