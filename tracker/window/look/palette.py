"""The colours of the window by what they are for, from resources/look/palette.toml."""

import tomllib
from dataclasses import dataclass, fields
from functools import cache

from PySide6.QtGui import QColor

from tracker.trade.resources import resource


@dataclass(frozen=True, slots=True)
class Palette:
    """One colour ('#RRGGBB') a role; palette.toml says what each role is for."""

    ground: str
    raised: str
    strip: str
    line: str
    edge: str
    ink: str
    quiet: str
    accent: str
    on_accent: str
    above: str
    below: str
    slip: str
    point: str
    band: str
    band_ink: str
    selected: str
    hover: str
    used: str
    asked: str

    def roles(self) -> dict[str, str]:
        """Role name to colour, for filling in the style sheet."""
        return {field.name: getattr(self, field.name) for field in fields(self)}


@cache
def _tables() -> dict[str, dict[str, str]]:
    with resource("look", "palette.toml").open("rb") as file:
        return tomllib.load(file)


@cache
def palette_named(name: str) -> Palette:
    """The palette 'light' or 'dark'."""
    return Palette(**_tables()[name])


@cache
def colour(text: str) -> QColor:
    """A role's colour, read once from its text: tables ask for it at every cell. Nobody may change what they get."""
    return QColor(text)


def ply_colours() -> dict[str, str]:
    """What each material of a ply glyph looks like, with 'mark' for its pattern and 'outline'."""
    return _tables()["plies"]
