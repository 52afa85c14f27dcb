"""The styles part of an xlsx workbook: for each cell format its number format code and whether it is struck through."""

from tracker.intake.files.cells import Style
from tracker.intake.files.markup import Attributes, parse, truth
from tracker.intake.files.number_formats import built_in
from tracker.intake.files.package import Package


class _Styles:
    def __init__(self) -> None:
        self.codes: dict[int, str] = {}
        self.fonts: list[bool] = []
        self.formats: list[tuple[int, int]] = []
        self._inside = ""

    def start(self, element: str, attributes: Attributes) -> None:
        if element in ("fonts", "cellXfs", "cellStyleXfs", "dxfs"):
            self._inside = element
        elif element == "numFmt" and self._inside != "dxfs":
            self.codes[_whole(attributes.get("numFmtId"))] = attributes.get("formatCode", "General")
        elif element == "font" and self._inside == "fonts":
            self.fonts.append(False)
        elif element == "strike" and self._inside == "fonts" and self.fonts:
            self.fonts[-1] = truth(attributes.get("val"), default=True)
        elif element == "xf" and self._inside == "cellXfs":
            self.formats.append((_whole(attributes.get("numFmtId")), _whole(attributes.get("fontId"))))

    def end(self, element: str) -> None:
        if element == self._inside:
            self._inside = ""


def read_styles(package: Package, part: str) -> list[Style]:
    """One Style a cell format, in the order that cells refer to them; like ones are one object."""
    found = _Styles()
    if part in package:
        parse(package.chunks(part), found.start, found.end)
    shared: dict[tuple[str, bool], Style] = {}
    styles: list[Style] = []
    for number, font in found.formats:
        code = found.codes.get(number) or built_in(number)
        struck = font < len(found.fonts) and found.fonts[font]
        style = shared.get((code, struck))
        if style is None:
            style = shared[code, struck] = Style(code, struck)
        styles.append(style)
    return styles


def _whole(text: str | None) -> int:
    return int(text) if text is not None and text.isascii() and text.isdigit() else 0
