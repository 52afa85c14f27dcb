"""One last day of all prices and an earlier one of some boards in a sentence: 'open until 30 April, the kraft only
until 31 March'."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Form", "µm", "g/m²", "EUR/tonne"]
SBS, KRAFT, GD2 = (
    ["SBS C1S", "Rolls", 400, 300, 1290], ["Uncoated unbleached kraft", "Rolls", 460, 340, 940],
    ["GD2", "Sheets 70 x 100 cm", 480, 350, 790],
)  # fmt: skip
ALL, OWN = date(2027, 4, 30), date(2027, 3, 31)


def days(note, *, above=False):
    table = [HEAD, SBS, KRAFT, GD2]
    found = lines([[note], [], *table] if above else [*table, [], [note]]).values()
    return [line.offer.valid_until for line in found], [codes(line) for line in found]


@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize(
    "note",
    ["This quotation is open until 30 April 2027, GD2 only until 31 March 2027.",
     "This quotation is open through April 30, 2027, the GD2 only through March 31, 2027.",
     "Prices are valid until 30 April 2027. GD2 prices are valid until 31 March 2027.",
     "Prices are valid until 30 April 2027, but the GD2 expires on 31 March 2027.",
     "Die Preise gelten bis 30.04.2027, für GD2 nur bis 31.03.2027.",
     "Unser Angebot gilt bis zum 30.04.2027, die GD2-Sorten jedoch nur bis zum 31.03.2027.",
     "Nos prix sont valables jusqu'au 30 avril 2027, le GD2 seulement jusqu'au 31 mars 2027.",
     "Nos prix sont valables jusqu'au 30 avril 2027, pour le GD2 uniquement jusqu'au 31 mars 2027.",
     "Oferta válida hasta el 30 de abril de 2027, el GD2 solo hasta el 31 de marzo de 2027.",
     "Priserna gäller till den 30 april 2027, för GD2 bara till den 31 mars 2027."],
)  # fmt: skip
def test_a_grade_that_ends_earlier(note, above):
    assert days(note, above=above)[0] == [ALL, ALL, OWN]


@pytest.mark.parametrize(
    "note",
    ["This quotation is open through April 30, 2027, the kraft only through March 31, 2027.",
     "Prices are valid until 30 April 2027, those of 460 µm only until 31 March 2027.",
     "Die Preise gelten bis 30.04.2027, die Kraftsorten nur bis 31.03.2027.",
     "Priserna gäller till 30 april 2027, kraftkvaliteterna endast till 31 mars 2027."],
)  # fmt: skip
def test_boards_called_by_their_kind_or_measure(note):
    assert days(note)[0] == [ALL, OWN, ALL]


@pytest.mark.parametrize(
    "note",
    ["Prices are valid until April 30, 2027, sheets only until March 31, 2027.",
     "Die Preise gelten bis 30.04.2027, Bogen nur bis 31.03.2027."],
)  # fmt: skip
def test_sheets_that_end_earlier(note):
    assert days(note)[0] == [ALL, ALL, OWN]


@pytest.mark.parametrize(
    "note",
    ["This quotation is open until 30 April 2027, the specials only until 31 March 2027.",
     "Die Preise gelten bis 30.04.2027, Sonderposten nur bis 31.03.2027.",
     "Nos prix sont valables jusqu'au 30 avril 2027, les fins de série seulement jusqu'au 31 mars 2027.",
     "Oferta válida hasta el 30 de abril de 2027, los saldos solo hasta el 31 de marzo de 2027.",
     "Priserna gäller till 30 april 2027, restpartier endast till 31 mars 2027."],
)  # fmt: skip
def test_a_last_day_of_boards_that_nobody_knows_is_told_of_all(note):
    found, told = days(note)
    assert found == [None] * 3
    assert all("validity-unread" in each for each in told)


@pytest.mark.parametrize(
    "note",
    ["Prices are valid until 30 April 2027, the freight rates only until 31 March 2027.",
     "Valid until April 30, 2027, for delivery until May 31, 2027.",
     "Prix fermes jusqu'au 30 avril 2027 / Prices firm until April 30, 2027",
     "Die Preise gelten bis 30.04.2027, die Frachtsätze nur bis 31.03.2027.",
     "Die Preise gelten bis 30.04.2027, Lieferung bis 31.05.2027.",
     "Priserna gäller till 30 april 2027, leverans till 31 maj 2027."],
)  # fmt: skip
def test_what_ends_beside_the_prices_takes_nothing_from_them(note):
    assert days(note)[0] == [ALL] * 3


def test_an_end_of_some_boards_that_is_no_day_leaves_the_others_theirs():
    assert days("Prices hold until 30 April 2027, on GD2 only until further notice.")[0] == [ALL, ALL, None]


@pytest.mark.parametrize(
    ("note", "times"),
    [("Lead time 4 weeks. Kraft: 6 weeks.", [(28, 28), (42, 42), (28, 28)]),
     ("Kraft: lead time 6 weeks.", [None, (42, 42), None])],
)  # fmt: skip
def test_a_kind_before_a_colon_is_no_name_of_a_line(note, times):
    found = lines([HEAD, SBS, KRAFT, GD2, [], [note]]).values()
    assert [line.offer.lead_days for line in found] == times
