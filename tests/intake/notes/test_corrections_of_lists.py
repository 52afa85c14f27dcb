"""Notes that correct a list: misprints, lines withdrawn, and times that hold instead of those in their column."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Board", "gsm", "micron", "EUR/t", "Lead time"]
BOARDS = [["GC1", 235, 380, 1218, "5 weeks"], ["GC1", 275, 450, 1204, "5 weeks"], ["SBS", 300, 400, 1345, "5 weeks"]]


def told(note):
    found = lines([HEAD, *BOARDS, [], [note]])
    return "".join(str(line.state)[0] for line in found.values()), [line.offer.lead_days for line in found.values()]


@pytest.mark.parametrize(
    "note",
    ["GC1 235 g/m² is misprinted: 1218 should read 1128", "1218 muss heißen 1128", "GC1 235 g/m²: 1128 statt 1218",
     "Au lieu de 1218, lire 1128", "Donde dice 1218 debe decir 1128", "1218 ska läsas 1128"],
)  # fmt: skip
def test_a_misprinted_price_is_asked_about(note):
    assert told(note)[0] == "qaa"


@pytest.mark.parametrize(
    "note",
    ["GC1 275 g/m² is withdrawn and can no longer be ordered", "GC1 275 g/m² wird nicht mehr angeboten",
     "Le GC1 275 g/m² n'est plus proposé", "El GC1 275 g/m² se retira", "GC1 275 g/m² erbjuds inte längre"],
)  # fmt: skip
def test_a_line_withdrawn_is_asked_about(note):
    assert told(note)[0] == "aqa"


@pytest.mark.parametrize(
    "note",
    ["Errors and misprints excepted", "Druckfehler vorbehalten", "GC1 275 g/m² is not available in sheets",
     "GC1 275 g/m² not available in October", "GC1 275 g/m² im Oktober nicht verfügbar",
     "GC1: 6 weeks instead of 5", "GC1 275 g/m², einseitig gestrichen", "GC2 300 g/m² is withdrawn"],
)  # fmt: skip
def test_what_corrects_no_price_is_not(note):
    assert told(note)[0] == "aaa"


@pytest.mark.parametrize(
    "note",
    ["SBS: the lead time is now 9 weeks, whatever is said above", "Lieferzeit SBS jetzt 9 Wochen",
     "SBS : le délai est désormais de 9 semaines", "SBS: el plazo de entrega es ahora de 9 semanas",
     "SBS: leveranstiden är nu 9 veckor"],
)  # fmt: skip
def test_a_time_that_holds_now_replaces_the_one_in_the_column(note):
    assert told(note) == ("aaa", [(35, 35), (35, 35), (63, 63)])


@pytest.mark.parametrize("note", ["Now shipping from our new mill. Lead time 4 weeks.", "Lead time usually 4 weeks"])
def test_other_times_do_not(note):
    assert told(note)[1] == [(35, 35)] * 3


@pytest.mark.parametrize(
    "note",
    ["Lead time now 3 weeks for new customers.", "Order now: delivery 2 weeks for stock sizes.",
     "Delivery now 2 weeks from our depot (stock sizes only)", "Lieferzeit jetzt 3 Wochen für Neukunden",
     "Délai maintenant 3 semaines pour nouveaux clients",
     "El plazo de entrega es ahora de 3 semanas para nuevos clientes",
     "Leveranstid nu 3 veckor för nya kunder", "Lead time is now 9 weeks"],
)  # fmt: skip
def test_a_time_that_holds_now_of_no_named_board_or_on_a_condition_is_told(note):
    found = lines([HEAD, *BOARDS, [], [note]])
    assert [line.offer.lead_days for line in found.values()] == [(35, 35)] * 3
    assert all("lead-time-unread" in codes(line) for line in found.values())


def test_a_condition_counts_beside_a_board_as_well():
    assert told("SBS: the lead time is now 3 weeks for new customers")[1] == [(35, 35)] * 3
    assert told("GC1: the lead time is now 3 weeks")[1] == [(21, 21), (21, 21), (35, 35)]


@pytest.mark.parametrize(
    "note",
    ["Correction: GC1 275 g/m² should read 1240", "GC1 275 g/m² muss heißen 1240", "GC1 275 g/m² : lire 1240",
     "GC1 275 g/m² debe decir 1240", "GC1 275 g/m² ska vara 1240", "Correction: GC1 275 should read 1240"],
)  # fmt: skip
def test_a_correction_that_names_a_board_and_one_figure_is_asked_about_its_prices(note):
    assert told(note)[0] == "aqa"


def test_the_figure_of_a_boards_code_is_no_price():
    assert told("GC1 1204 should read 1240")[0] == "aqa"
    assert told("GC1 275 g/m²: EUR1204 should read EUR1240")[0] == "aqa"
    assert told("GC1 1199 should read 1240")[0] == "aaa"


def test_a_misprint_in_cents_is_known_by_the_figure_as_it_is_printed():
    rows = [["GC1", 235, 380, 122], ["GC1", 275, 450, 121]]
    found = lines([[*HEAD[:3], "US cents/kg"], *rows, [], ["122 should read 112"]])
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]
