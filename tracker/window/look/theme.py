"""Puts the look on the application: fonts, colours, style sheet; light or dark."""

from functools import cache
from string import Template

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from tracker.trade.resources import resource
from tracker.window.look.palette import Palette, palette_named
from tracker.window.look.turns import Turns

BASE_PX = 13


class RoleTemplate(Template):
    """The style sheet writes @role where Python's own templates write $role."""

    delimiter = "@"


class Theme(QObject):
    """The look in force. Whatever paints for itself listens to `changed` and asks for `palette` again.

    The style sheet hangs on parts of the window, not on the application: Qt takes several times as long for the same
    widgets where it is the application's, and a change would hold the window up for half a second.
    """

    changed = Signal()

    def __init__(self, application: QApplication, name: str = "") -> None:
        super().__init__(application)
        self._application = application
        self.name = name or system_theme(application)
        self.base_px = BASE_PX
        self._dressed: list[QWidget] = []
        self.turns = Turns(self)
        application.setStyle("Fusion")
        self._set_colours()

    @property
    def palette(self) -> Palette:
        return palette_named(self.name)

    def dress(self, *parts: QWidget) -> None:
        """Puts the style sheet on these and on all within them, dialogs over them as well; it follows the theme."""
        self._dressed = [*(part for part in self._dressed if isValid(part)), *parts]
        for part in parts:
            self._put_on(part)

    def dress_in_turn(self, *parts: QWidget) -> None:
        """The same for parts that nobody sees yet: one a turn of the loop, or when it comes into view."""
        self._dressed = [*(part for part in self._dressed if isValid(part)), *parts]
        for part in parts:
            self.turns.put_off(part, self._put_on)

    def choose(self, name: str) -> None:
        """Changes to 'light' or 'dark': what is in view now, the rest one part a turn of the loop."""
        self.name = name
        self._set_colours()
        self._dressed = [part for part in self._dressed if isValid(part)]
        for part in self._dressed:
            self.turns.do(part, self._put_on)
        self.changed.emit()

    def _put_on(self, part: QWidget) -> None:
        part.setStyleSheet(style_sheet(self.name, self.base_px))

    def _set_colours(self) -> None:
        self._application.setFont(text_font(self.base_px))
        self._application.setPalette(qt_palette(self.palette))


def system_theme(application: QApplication) -> str:
    """What the desktop asks for; where it doesn't say, light."""
    dark = application.styleHints().colorScheme() is Qt.ColorScheme.Dark
    return "dark" if dark else "light"


def text_font(pixels: int, *, strong: bool = False) -> QFont:
    """The desktop's own text font with figures of equal width, so that columns of numbers line up."""
    font = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont)
    font.setPixelSize(pixels)
    font.setFeature(QFont.Tag("tnum"), 1)
    if strong:
        font.setWeight(QFont.Weight.DemiBold)
    return font


def has_fonts() -> bool:
    """Whether this machine has any font at all: without one every picture of the window would be blank of text."""
    return bool(QFontDatabase.families())


@cache
def style_sheet(name: str, base_px: int) -> str:
    """The style sheet with the theme's colours and sizes filled in; KeyError where it names an unknown role."""
    text = resource("look", "style.qss").read_text(encoding="utf-8")
    sizes = {"size": base_px, "small": base_px - 1, "large": base_px + 2, "title": base_px + 7}
    icons = resource("icons").as_posix()
    # '@smallpx' is a size with its unit written on: longest names first keep '@small' from eating it.
    filled = {f"{key}px": f"{pixels}px" for key, pixels in sizes.items()}
    return RoleTemplate(text[text.index("*/") + 2 :]).substitute(
        filled, icons=icons, theme=name, **palette_named(name).roles()
    )


def qt_palette(palette: Palette) -> QPalette:
    """The same colours for what the style sheet does not reach (offscreen and native palettes differ otherwise)."""
    result = QPalette()
    roles = QPalette.ColorRole
    for role, colour in (
        (roles.Window, palette.ground),
        (roles.Base, palette.raised),
        (roles.AlternateBase, palette.strip),
        (roles.Text, palette.ink),
        (roles.WindowText, palette.ink),
        (roles.ButtonText, palette.ink),
        (roles.Button, palette.raised),
        (roles.ToolTipBase, palette.raised),
        (roles.ToolTipText, palette.ink),
        (roles.Highlight, palette.selected),
        (roles.HighlightedText, palette.ink),
        (roles.PlaceholderText, palette.quiet),
        (roles.Mid, palette.line),
        (roles.Link, palette.accent),
    ):
        result.setColor(role, QColor(colour))
    return result
