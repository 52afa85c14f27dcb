import pytest

from tracker.trade.bands import REFERENCE_GRADE, ratio, ratios, read_ratios
from tracker.trade.datafile import WrongDataFile
from tracker.trade.grades import grades
from tracker.trade.sourced import SourceKind


def test_every_grade_has_a_ratio_and_nothing_else_has():
    assert set(ratios()) == set(grades())
    with pytest.raises(KeyError):
        ratio("XYZ")


def test_the_reference_grade_stands_round_its_own_level():
    assert ratio(REFERENCE_GRADE).low < 1 < ratio(REFERENCE_GRADE).high


@pytest.mark.parametrize("code", sorted(ratios()))
def test_an_end_that_no_saying_gives_is_marked_assumed(code):
    ends = (ratio(code).low_source, ratio(code).high_source)
    assert {end.kind for end in ends} <= {SourceKind.COMMON_PRACTICE, SourceKind.ASSUMED}
    assert all(end.reference for end in ends)
    assert ("assumed" in ratio(code).source) is any(end.kind is SourceKind.ASSUMED for end in ends)


@pytest.mark.parametrize(
    ("text", "complaint"),
    [
        (
            "[SBS]\nlow = { ratio = 1.2, source = 'assumed' }\nhigh = { ratio = 1.1, source = 'assumed' }",
            "must be above 0",
        ),
        (
            "[SBS]\nlow = { ratio = 0, source = 'assumed' }\nhigh = { ratio = 1.1, source = 'assumed' }",
            "must be above 0",
        ),
        ("[SBS]\nlow = { ratio = '0.9', source = 'assumed' }\nhigh = { ratio = 1 }", r"SBS\.low\.ratio is '0.9'"),
        (
            "[SBS]\nlow = { ratio = inf, source = 'assumed' }\nhigh = { ratio = 1 }",
            r"SBS\.low\.ratio is Infinity; it should be a number",
        ),
        ("[SBS]\nlow = 0.9\nhigh = 1", r"bands\.toml, SBS\.low is 0\.9; it should be a table"),
        ("[SBS]\nlow = { ratio = 0.9, source = 'assumed' }", r"bands\.toml, SBS\.high is missing"),
        ("SBS = 1", r"bands\.toml, SBS is 1; it should be a table"),
    ],
)
def test_a_slip_in_the_file_is_told_in_a_sentence_with_its_key(tmp_path, text, complaint):
    wrong = tmp_path / "bands.toml"
    wrong.write_text(text, encoding="utf-8")
    with pytest.raises(WrongDataFile, match=complaint):
        read_ratios(wrong)
