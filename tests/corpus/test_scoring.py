"""The corpus' scorer counts each kind of fault, and nothing else, when one thing is wrong."""

from copy import deepcopy
from decimal import Decimal
from fractions import Fraction

import pytest

from tests.corpus.model import FilePlan
from tests.corpus.scoring import judge, judge_crash
from tests.corpus.truth import Charge, Intent

COUNTS = ("right", "asked", "wrong", "blank", "missed", "phantom", "extra_asked", "crashed", "not_told")


@pytest.fixture
def truth():
    """An accepted line, one with two price cells, one to ask, one to refuse, one cell that offers nothing."""
    plan = FilePlan()
    sheet = plan.sheet("Prices")
    freight = Charge("Freight", Decimal("1.85"), "USD", "cwt", freight=True)
    full = Intent(
        "SBS",
        Decimal(1200),
        "USD",
        "short_ton",
        1,
        Fraction(4572, 10),
        Fraction(380),
        vendor="Brackenfold Paperboard Co.",
        lead=(28, 42),
        delivered=False,
        charges=[freight],
        from_kg=Fraction(1000),
        minimum_kg=Fraction(500),
    )
    plan.accept(sheet, 1, 3, full)
    by_area = Intent("CRB", Decimal("32.50"), "USD", "msf", 1, Fraction(4572, 10), Fraction(340))
    by_weight = Intent("CRB", Decimal("933.20"), "USD", "short_ton", 1, Fraction(4572, 10), Fraction(340))
    plan.either_cell(sheet, 2, 3, by_area, 4, by_weight)
    plan.ask(sheet, 3, 3, "basis-unknown")
    plan.refuse(sheet, 4, 3, "error-cell")
    plan.no_price(sheet, 5, 3)
    return plan.as_truth("list.xlsx", is_csv=False)


def first(value):
    if isinstance(value, dict):
        return (
            first(value["any_of"][0]) if value.keys() == {"any_of"} else {key: first(one) for key, one in value.items()}
        )
    return [first(one) for one in value] if isinstance(value, list) else value


def perfect(truth):
    lines = [first(line) for line in deepcopy(truth["lines"]) if not line.get("optional")]
    for line in lines:
        line.setdefault("notes", [])
    return lines


def counts(truth, lines, unreadable=None):
    score = judge(truth, unreadable, lines)
    return {name: score.counts[name] for name in COUNTS if score.counts[name]}


def test_truth_read_back_is_all_right(truth):
    score = judge(truth, None, perfect(truth))
    assert (score.counts["right"], score.counts["lines"]) == (4, 4)
    assert (score.coverage, score.completeness, score.notes) == (100, 100, 100)
    assert not score.faults


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("price", "1200.01"),
        ("grade", "CRB"),
        ("grade", None),
        ("currency", "CAD"),
        ("basis", "tonne"),
        ("caliper_um", "462"),
        ("grammage_gsm", "383"),
        ("from_kg", None),
        ("below_kg", "2000"),
        ("per_tonne", "1324"),
        ("per_msf", "46"),
        ("vendor", "Somebody"),
        ("coated_sides", 2),
        ("minimum_kg", "510"),
        ("lead_days", [28, 28]),
        ("valid_until", "2026-12-31"),
        ("delivered", True),
        ("delivered_per_tonne", "1365"),
        ("charges", [{"label": "x", "price": "2", "currency": "USD", "basis": "cwt"}]),
    ],
)
def test_a_field_that_differs_is_silently_wrong(truth, name, value):
    lines = perfect(truth)
    lines[0][name] = value
    assert counts(truth, lines) == {"right": 3, "wrong": 1}


@pytest.mark.parametrize("name", ["caliper_um", "grammage_gsm", "per_tonne", "per_msf"])
def test_a_known_figure_left_out_is_wrong_and_blank(truth, name):
    lines = perfect(truth)
    lines[0][name] = None
    assert counts(truth, lines) == {"right": 3, "wrong": 1, "blank": 1}


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("caliper_um", "458"),
        ("grammage_gsm", "380.9"),
        ("from_kg", "1001"),
        ("vendor", "BRACKENFOLD PAPERBOARD"),
        ("per_tonne", "1322.8"),
    ],
)
def test_what_is_within_tolerance_is_right(truth, name, value):
    lines = perfect(truth)
    lines[0][name] = value
    assert counts(truth, lines) == {"right": 4}


@pytest.mark.parametrize("name", ["vendor", "coated_sides", "lead_days", "minimum_kg", "delivered", "charges"])
def test_a_secondary_field_left_open_is_right_but_incomplete(truth, name):
    lines = perfect(truth)
    lines[0][name] = [] if name == "charges" else None
    score = judge(truth, None, lines)
    assert score.counts["right"] == 4
    assert score.completeness < 100


def test_a_weight_called_quoted_where_none_is_quoted_is_wrong(truth):
    del truth["lines"][0]["grammage_gsm"]
    truth["lines"][0]["grammage_from"] = {"any_of": ["estimated", None]}
    lines = perfect(truth)
    lines[0]["grammage_from"] = "quoted"
    assert counts(truth, lines) == {"right": 3, "wrong": 1}


def test_asking_what_is_certain_is_asked(truth):
    lines = perfect(truth)
    lines[0]["state"] = "question"
    assert counts(truth, lines) == {"right": 3, "asked": 1}


@pytest.mark.parametrize("index", [2, 3])
def test_accepting_what_must_be_asked_or_refused_is_wrong(truth, index):
    lines = perfect(truth)
    lines[index]["state"] = "accepted"
    assert counts(truth, lines) == {"right": 3, "wrong": 1}


@pytest.mark.parametrize(("index", "state"), [(2, "refused"), (3, "question")])
def test_asking_and_refusing_stand_for_each_other(truth, index, state):
    lines = perfect(truth)
    lines[index]["state"] = state
    assert counts(truth, lines) == {"right": 4}


def test_a_line_left_out_is_missed(truth):
    assert counts(truth, perfect(truth)[1:]) == {"right": 3, "missed": 1}


def test_the_other_price_cell_of_an_offer_will_do_but_not_both(truth):
    other = {**perfect(truth)[1], **truth["lines"][1]["or"][0]}
    lines = perfect(truth)
    assert counts(truth, [lines[0], other, *lines[2:]]) == {"right": 4}
    assert counts(truth, [*lines, other]) == {"right": 4, "phantom": 1}


@pytest.mark.parametrize(
    ("state", "kind"), [("accepted", "phantom"), ("question", "extra_asked"), ("refused", "extra_asked")]
)
def test_a_line_where_truth_has_none(truth, state, kind):
    stray = {**perfect(truth)[0], "cell": "Z99", "state": state}
    assert counts(truth, [*perfect(truth), stray]) == {"right": 4, kind: 1}


@pytest.mark.parametrize(("state", "expected"), [("accepted", {"right": 4, "phantom": 1}), ("refused", {"right": 4})])
def test_a_cell_without_a_price_may_be_refused_never_accepted(truth, state, expected):
    line = {"sheet": "Prices", "cell": "D6", "state": state, "notes": []}
    assert counts(truth, [*perfect(truth), line]) == expected


def test_a_missing_note_lowers_the_notes_share(truth):
    lines = perfect(truth)
    lines[2]["notes"] = []
    assert judge(truth, None, lines).notes == 50


def test_a_file_said_to_be_unreadable_misses_all_its_lines(truth):
    assert counts(truth, [], "is damaged") == {"missed": 4}


def test_a_crash_misses_all_lines_and_is_counted(truth):
    score = judge_crash(truth, "ValueError")
    assert (score.counts["crashed"], score.counts["missed"]) == (1, 4)


@pytest.mark.parametrize(
    ("reason", "lines", "told"),
    [("is a picture", [], 1), (None, [], 0), ("is a picture", [{"sheet": "", "cell": "A1"}], 0)],
)
def test_an_unreadable_file_must_be_told(reason, lines, told):
    score = judge({"file": "x.xlsx", "unreadable": True, "lines": []}, reason, lines)
    assert (score.counts["unreadable"], score.counts["unreadable_ok"], score.counts["not_told"]) == (1, told, 1 - told)
