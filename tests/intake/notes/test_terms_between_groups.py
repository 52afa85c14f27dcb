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
