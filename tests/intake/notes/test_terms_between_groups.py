"""Terms right below some boards, over what heads the next ones: whose they are, or that it is not known."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Grade", "g/m²", "Price EUR/t"]
_FIRST, _SECOND = [["", 300, 1200], ["", 320, 1180]], [["", 350, 900], ["", 380, 880]]
_BOARDS = [["SBS", 300, 1200], ["SBS", 320, 1180]], [["CUK", 350, 900], ["CUK", 380, 880]]
LEADS = {
    "en": ("Lead time 3 weeks", "Lead time 5 weeks"), "de": ("Lieferzeit 3 Wochen", "Lieferzeit 5 Wochen"),
    "fr": ("Délai 3 semaines", "Délai 5 semaines"), "es": ("Plazo 3 semanas", "Plazo 5 semanas"),
    "sv": ("Leveranstid 3 veckor", "Leveranstid 5 veckor"),
}  # fmt: skip
BELOW = {
    "en": "All prices below are delivered.", "de": "Die Preise unten verstehen sich frei Haus.",
    "fr": "Les prix ci-dessous s'entendent franco.", "es": "Los precios de abajo son a portes pagados.",
    "sv": "Priserna nedan gäller fritt levererat.",
}  # fmt: skip
THREE, FIVE = (21, 21), (35, 35)


def _told(*rows):
    return list(lines([list(row) for row in rows]).values())


def _leads(*rows):
    return [line.offer.lead_days for line in _told(*rows)]


@pytest.mark.parametrize("language", LEADS)
def test_terms_before_a_line_about_the_prices_below_are_not_known_to_be_theirs(language):
    (lead, _), below = LEADS[language], BELOW[language]
    for between in ([[lead], [below]], [[f"{lead}. {below}"]], [[], [lead], [], [below]]):
        for head in ([], [_HEAD]):
            found = _told(_HEAD, *_BOARDS[0], *between, *head, *_BOARDS[1])
            assert [line.offer.lead_days for line in found] == [None] * 4
            assert all("lead-time-unread" in codes(line) for line in found)
            assert [line.offer.delivered for line in found] == [None, None, True, True]


def test_terms_before_a_line_about_the_prices_above_are_theirs():
    rows = [_HEAD, *_BOARDS[0], ["Lead time 3 weeks"], ["All prices above are delivered."], *_BOARDS[1]]
    assert _leads(*rows) == [THREE, THREE, None, None]


def test_units_there_still_head_the_prices_below():
    rows = [["EUR/t"], ["Grade", "g/m²", "Price"], *_BOARDS[0], ["USD/t"], ["All prices below are delivered."]]
    assert [line.offer.currency for line in _told(*rows, *_BOARDS[1])] == ["EUR", "EUR", "USD", "USD"]


@pytest.mark.parametrize("leads", LEADS.values(), ids=LEADS)
def test_a_list_that_ends_its_last_group_with_terms_ends_each_so(leads):
    rows = [_HEAD, ["SBS"], *_FIRST, [leads[0]], ["CUK"], *_SECOND, [leads[1]]]
    assert _leads(*rows) == [THREE, THREE, FIVE, FIVE]


@pytest.mark.parametrize("leads", LEADS.values(), ids=LEADS)
def test_a_list_that_leads_its_first_group_in_with_terms_leads_each_in_so(leads):
    for heading in ([[leads[0]], ["SBS"]], [["SBS"], [leads[0]]]):
        second = [[leads[1]], ["CUK"]] if heading[1] == ["SBS"] else [["CUK"], [leads[1]]]
        assert _leads(_HEAD, *heading, *_FIRST, *second, *_SECOND) == [THREE, THREE, FIVE, FIVE]


@pytest.mark.parametrize(("lead", "_"), LEADS.values(), ids=LEADS)
def test_terms_between_two_groups_are_open_for_both(lead, _):
    found = _told(_HEAD, ["SBS"], *_FIRST, [lead], ["CUK"], *_SECOND)
    assert [line.offer.lead_days for line in found] == [None] * 4
    assert all("lead-time-unread" in codes(line) for line in found)


def test_an_empty_row_tells_whose_they_are():
    assert _leads(_HEAD, ["SBS"], *_FIRST, ["Lead time 3 weeks"], [], ["CUK"], *_SECOND) == [THREE, THREE, None, None]
    assert _leads(_HEAD, ["SBS"], *_FIRST, [], ["Lead time 3 weeks"], ["CUK"], *_SECOND) == [None, None, THREE, THREE]


def test_other_terms_below_the_last_group_are_of_all():
    found = _told(_HEAD, ["SBS"], *_FIRST, ["Lead time 3 weeks"], ["CUK"], *_SECOND, ["Minimum 5 t"])
    assert [line.offer.minimum_kg for line in found] == [5000] * 4
    assert [line.offer.lead_days for line in found] == [None] * 4


TERMS = {
    "en": ("FOB mill", "Delivered", "Valid until 31 December 2026"),
    "de": ("ab Werk", "frei Haus", "Gültig bis 31.12.2026"),
    "fr": ("départ usine", "franco", "Valable jusqu'au 31 décembre 2026"),
    "es": ("en fábrica", "a portes pagados", "Válido hasta el 31 de diciembre de 2026"),
    "sv": ("fritt fabrik", "fritt levererat", "Gäller till och med 31 december 2026"),
}  # fmt: skip


@pytest.mark.parametrize(("mill", "delivered", "valid"), TERMS.values(), ids=TERMS)
def test_a_line_of_another_kind_above_the_first_group_leads_none_in(mill, delivered, valid):
    found = _told(_HEAD, [valid], ["SBS"], *_FIRST, [mill], ["CUK"], *_SECOND, [delivered])
    assert [line.offer.delivered for line in found] == [False, False, True, True]


def test_a_kind_above_the_first_group_and_below_the_last_tells_nothing_of_those_between():
    found = _leads(
        _HEAD, ["Lead time 2 weeks"], ["SBS"], *_FIRST, ["Lead time 3 weeks"], ["CUK"], *_SECOND, ["Lead time 5 weeks"]
    )
    assert found == [None] * 4


PRICES = {
    "en": ("Prices FOB mill", "Prices delivered"), "de": ("Preise ab Werk", "Preise frei Haus"),
    "fr": ("Prix départ usine", "Prix franco"), "es": ("Precios en fábrica", "Precios a portes pagados"),
    "sv": ("Priser fritt fabrik", "Priser fritt levererat"),
}  # fmt: skip


@pytest.mark.parametrize(("mill", "delivered"), PRICES.values(), ids=PRICES)
def test_terms_that_speak_of_prices_end_groups_as_others_do(mill, delivered):
    found = _told(_HEAD, ["SBS"], *_FIRST, [mill], ["CUK"], *_SECOND, [delivered])
    assert [line.offer.delivered for line in found] == [False, False, True, True]
    found = _told(_HEAD, [mill], ["SBS"], *_FIRST, [delivered], ["CUK"], *_SECOND)
    assert [line.offer.delivered for line in found] == [False, False, True, True]


LEVELS = {
    "en": ("ROLLS", "SHEETS", "Bleached", "Kraft"), "de": ("ROLLEN", "BOGEN", "Frischfaser", "Recycling"),
    "fr": ("BOBINES", "FEUILLES", "Blanchi", "Kraft"), "es": ("BOBINAS", "HOJAS", "Blanqueado", "Kraft"),
    "sv": ("RULLAR", "ARK", "Blekt", "Kraft"),
}  # fmt: skip
_ROLLS = [["SBS", 300, 1200], ["CUK", 350, 900]]
_SHEETS = [["SBS", 300, 1300], ["CUK", 350, 1000]]


def _levels(language, *, inner=(), last=None):
    rolls, sheets, first, second = LEVELS[language]
    of_rolls = [[rolls], [first], _ROLLS[0], *inner, [second], _ROLLS[1], [LEADS[language][0]]]
    of_sheets = [[sheets], [first], _SHEETS[0], [second], _SHEETS[1]]
    return [_HEAD, *of_rolls, *of_sheets, *([] if last is None else [[last]])]


@pytest.mark.parametrize("language", LEADS)
def test_terms_over_the_widest_heading_are_of_all_its_groups(language):
    assert _leads(*_levels(language, last=LEADS[language][1])) == [THREE, THREE, FIVE, FIVE]


def test_terms_of_a_smaller_group_stay_its_own():
    rows = _levels("en", inner=[["Lead time 1 week"]], last="Lead time 5 weeks")
    assert _leads(*rows)[:2] == [(7, 7), THREE]


def test_other_terms_behind_those_of_a_smaller_group_are_not_known_to_be_of_both():
    rows = _levels("en", inner=[["FOB mill"], []], last="Lead time 5 weeks")
    found = _told(*rows)
    assert [line.offer.lead_days for line in found][:2] == [None, THREE]
    assert "lead-time-unread" in codes(found[0])


def test_one_line_over_more_levels_may_end_the_widest():
    rows = [["North works"], ["Bleached"], _ROLLS[0], ["Kraft"], _ROLLS[1], ["Lead time 3 weeks"], ["South works"]]
    found = _told(_HEAD, *rows, *_SHEETS, ["Lead time 5 weeks"])
    assert [line.offer.lead_days for line in found][:2] == [None, THREE]
    forms = [["ROLLS"], *rows[1:-1], ["SHEETS"]]
    assert _leads(_HEAD, *forms, *_SHEETS, ["Lead time 5 weeks"]) == [THREE, THREE, FIVE, FIVE]


@pytest.mark.parametrize("leads", LEADS.values(), ids=LEADS)
def test_a_list_that_ends_its_last_table_with_terms_ends_each_so(leads):
    for titles in ([], ["Bleached", "Recycled"]):
        first, second = ([[title]] for title in titles) if titles else ([], [])
        for gap in ([], [[]]):
            rows = [["Moosbrunner"], *first, _HEAD, *_BOARDS[0], [leads[0]], *gap, *second, _HEAD, *_BOARDS[1]]
            assert _leads(*rows, [leads[1]]) == [THREE, THREE, FIVE, FIVE]


@pytest.mark.parametrize("leads", LEADS.values(), ids=LEADS)
def test_a_list_that_leads_its_first_table_in_with_terms_leads_each_in_so(leads):
    rows = [["Moosbrunner"], [leads[0]], _HEAD, *_BOARDS[0], [leads[1]], _HEAD, *_BOARDS[1]]
    assert _leads(*rows) == [THREE, THREE, FIVE, FIVE]


@pytest.mark.parametrize(("lead", "_"), LEADS.values(), ids=LEADS)
def test_terms_that_touch_two_tables_are_open_for_both(lead, _):
    for more in ([], [["Page 1 of 2"]]):
        found = _told(_HEAD, *_BOARDS[0], [lead], *more, _HEAD, *_BOARDS[1])
        assert [line.offer.lead_days for line in found] == [None] * 4
        assert all("lead-time-unread" in codes(line) for line in found)
    assert _leads(_HEAD, *_BOARDS[0], [], [lead], _HEAD, *_BOARDS[1]) == [None, None, THREE, THREE]


def test_units_of_prices_over_a_table_head_it():
    rows = [*_BOARDS[0], ["Prices delivered, USD/t"], ["Grade", "g/m²", "Price"], *_BOARDS[1]]
    assert [line.offer.delivered for line in _told(_HEAD, *rows)] == [None, None, True, True]


@pytest.mark.parametrize(
    "title",
    ["Delivered prices", "Sheets, delivered", "Bogen, frei Haus", "Feuilles, franco", "Hojas, a portes pagados",
     "Ark, fritt levererat"],
)  # fmt: skip
def test_what_names_a_group_with_its_terms_heads_it(title):
    for head in ([_HEAD], [["SBS"]]):
        found = _told(_HEAD, *_BOARDS[0], [title], *head, *_BOARDS[1])
        assert [line.offer.delivered for line in found] == [None, None, True, True]
