"""The files in sample_quotes/ are what the generator writes, and the scenario speaks of what is in them."""

import tomllib
from collections import Counter
from datetime import date

import pytest
from python_calamine import CalamineWorkbook

from tests.demo_sheets.__main__ import write_all
from tracker.trade.grades import grades
from tracker.trade.methods import measured
from tracker.trade.resources import resource, sample_quotes

SCENARIO = tomllib.loads(resource("demo", "scenario.toml").read_text(encoding="utf-8"))
FILES = {entry["file"] for vendor in SCENARIO["vendors"] for entry in vendor["files"]}


@pytest.fixture(scope="module")
def written_anew(tmp_path_factory):
    folder = tmp_path_factory.mktemp("sample_quotes")
    write_all(folder)
    return folder


def content(path):
    if path.suffix == ".csv":
        return path.read_bytes()
    book = CalamineWorkbook.from_path(path)
    return {name: book.get_sheet_by_name(name).to_python(skip_empty_area=False) for name in book.sheet_names}


def test_the_scenario_names_every_file():
    assert {path.name for path in sample_quotes().iterdir()} == FILES


@pytest.mark.parametrize("file", sorted(FILES))
def test_the_generator_writes_what_lies_in_sample_quotes(file, written_anew):
    assert content(written_anew / file) == content(sample_quotes() / file)


def test_vendors_come_from_at_least_three_countries():
    assert len(SCENARIO["vendors"]) >= 8
    assert len({vendor["country"] for vendor in SCENARIO["vendors"]}) >= 3


@pytest.mark.parametrize("planted", SCENARIO["planted"], ids=lambda planted: planted["finds"])
def test_a_planted_fault_points_at_a_sheet_that_is_there(planted):
    assert planted["file"] in FILES
    if planted["sheet"]:
        assert planted["sheet"] in content(sample_quotes() / planted["file"])


def test_there_are_40_samples_in_every_state():
    states = Counter(sample["state"] for sample in SCENARIO["samples"])
    assert states.total() == 40
    assert set(states) == {"requested", "promised", "sent", "arrived", "tested", "refused", "cancelled"}


@pytest.mark.parametrize("sample", SCENARIO["samples"], ids=lambda sample: f"{sample['vendor']}-{sample['requested']}")
def test_a_sample_lives_in_order_and_ends_in_its_state(sample):
    vendors = {vendor["name"] for vendor in SCENARIO["vendors"]}
    assert sample["vendor"] in vendors
    assert sample["grade"] in grades()
    days = [sample["requested"], *(event["on"] for event in sample.get("events", []))]
    assert days == sorted(days)
    assert max(days) <= SCENARIO["today"] == date(2026, 11, 25)
    moves = [event["kind"] for event in sample.get("events", []) if event["kind"] != "chased"]
    reached = moves[-1] if moves else "requested"
    assert sample["state"] == ("tested" if sample.get("readings") else reached)
    for event in sample.get("events", []):
        assert ("until" in event) is (event["kind"] == "promised")
        assert event.get("until", event["on"]) >= event["on"]


@pytest.mark.parametrize(
    "sample", [sample for sample in SCENARIO["samples"] if "readings" in sample], ids=lambda sample: sample["for"]
)
def test_a_reading_is_of_a_property_that_is_measured_so(sample):
    for reading in sample["readings"]:
        assert measured(reading["property"]).factor(reading["unit"]) is not None
        assert reading["values"]
