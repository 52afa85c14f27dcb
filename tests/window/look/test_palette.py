"""Contrast by WCAG 2.2 (W3C Recommendation, 1.4.3 and 1.4.11), computed by its own formula of relative luminance."""

import pytest

from tracker.window.look.palette import Palette, palette_named

GROUNDS = ("ground", "raised", "strip")
TEXTS = ("ink", "quiet", "accent", "above", "below", "slip")


def luminance(colour: str) -> float:
    channels = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_formula_gives_the_recommendations_own_extremes() -> None:
    assert contrast("#FFFFFF", "#000000") == pytest.approx(21.0)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.01)


@pytest.fixture(params=["light", "dark"])
def palette(request: pytest.FixtureRequest) -> Palette:
    return palette_named(request.param)


@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("text", TEXTS)
def test_words_can_be_read_on_every_ground(palette: Palette, ground: str, text: str) -> None:
    assert contrast(getattr(palette, text), getattr(palette, ground)) >= 4.5


@pytest.mark.parametrize("ground", ["selected", "hover", "used", "asked"])
def test_ink_can_be_read_where_something_is_marked(palette: Palette, ground: str) -> None:
    assert contrast(palette.ink, getattr(palette, ground)) >= 7.0


def test_words_on_a_full_button_and_on_the_band_can_be_read(palette: Palette) -> None:
    assert contrast(palette.on_accent, palette.accent) >= 4.5
    assert contrast(palette.band_ink, palette.band) >= 4.5


def test_outlines_of_fields_and_points_can_be_seen(palette: Palette) -> None:
    for ground in (palette.ground, palette.raised):
        assert contrast(palette.edge, ground) >= 3.0
        assert contrast(palette.point, ground) >= 3.0
    assert contrast(palette.point, palette.band) >= 3.0
