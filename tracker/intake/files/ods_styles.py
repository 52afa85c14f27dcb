"""Styles of an OpenDocument spreadsheet: number formats as codes, struck or raised text, sheets that are not shown."""

import re
from dataclasses import dataclass

from tracker.intake.files.cells import GENERAL, Style
from tracker.intake.files.markup import Attributes, truth

_NO_SIGN = re.compile(r"[\d\s.,'’()+\-−]")
_FORMATS = frozenset(
    ("number-style", "currency-style", "percentage-style", "date-style", "time-style", "text-style", "boolean-style")
)
_DATE_PARTS = {
    "year": ("yy", "yyyy"),
    "month": ("m", "mm"),
    "day": ("d", "dd"),
    "hours": ("h", "hh"),
    "minutes": ("m", "mm"),
    "seconds": ("s", "ss"),
    "day-of-week": ("ddd", "dddd"),
    "era": ("", ""),
    "week-of-year": ("", ""),
    "quarter": ("", ""),
    "am-pm": ("AM/PM", "AM/PM"),
}


@dataclass(slots=True)
class _CellStyle:
    parent: str = ""
    data_style: str = ""
    struck: bool | None = None
    raised: bool = False


class OdsStyles:
    """Gathers the styles of styles.xml and content.xml as their elements pass."""

    def __init__(self) -> None:
        self.unseen_tables: set[str] = set()
        self._cells: dict[str, _CellStyle] = {}
        self._codes: dict[str, str] = {}
        self._positive: dict[str, str] = {}
        self._ready: dict[tuple[str, str, bool], Style] = {}
        self._style: _CellStyle | None = None
        self._style_name = ""
        self._format = ""
        self._code: list[str] = []
        self._literal: list[str] | None = None

    def start(self, element: str, attributes: Attributes) -> None:
        name = attributes.get("style:name", "")
        if element == "style":
            self._style_name = name
            parent, data = attributes.get("style:parent-style-name", ""), attributes.get("style:data-style-name", "")
            self._style = self._cells[name] = _CellStyle(parent, data)
        elif element == "text-properties" and self._style is not None:
            through = attributes.get("style:text-line-through-style") or attributes.get("style:text-line-through-type")
            self._style.struck = None if through is None else through != "none"
            self._style.raised = attributes.get("style:text-position", "").startswith("super")
        elif element == "table-properties" and attributes.get("table:display") == "false":
            self.unseen_tables.add(self._style_name)
        elif element in _FORMATS:
            self._format, self._code = name, []
        elif self._format:
            self._format_part(element, attributes)

    def end(self, element: str) -> None:
        if element == "style":
            self._style = None
        elif element in _FORMATS and self._format:
            code = "".join(self._code)
            self._codes[self._format] = "@" if element == "text-style" else code
            self._format = ""
        elif element in ("text", "currency-symbol") and self._literal is not None:
            text = "".join(self._literal)
            self._literal = None
            if element == "currency-symbol":
                self._code.append(f"[${text}]")
            elif text:
                self._code.append(text if text in (" ", "%", "-", "/", ":", ".") else f'"{text}"')

    def characters(self, text: str) -> None:
        if self._literal is not None:
            self._literal.append(text)

    def style(self, name: str, currency: str = "", percentage: bool = False) -> Style:
        """The Style of a cell style.

        `currency` (ISO code, as the cell says) stands in for the format's symbol; a cell that says it is a
        `percentage` is shown as one, whatever its style leaves out.
        """
        known = self._ready.get((name, currency, percentage))
        if known is None:
            known = self._ready[name, currency, percentage] = self._resolved(name, currency, percentage)
        return known

    def shown_currency(self, name: str, shown: str) -> str:
        """The sign of '$61.20' as a cell shows it, where its style leaves the sign to the place the file was saved in,
        as LibreOffice does; '' where the style names one."""
        return _NO_SIGN.sub("", shown) if "[$]" in self._code_of(name) else ""

    def is_struck(self, name: str) -> bool:
        return self._struck(name)

    def is_raised(self, name: str) -> bool:
        return name in self._cells and self._cells[name].raised

    def _resolved(self, name: str, currency: str, percentage: bool) -> Style:
        code = self._code_of(name)
        if percentage and "%" not in code:
            code = "0%"
        if currency:
            before, symbol, after = code.partition("[$")
            code = f"{before}[${currency}]{after.partition(']')[2]}" if symbol else f"[${currency}] {code or '0.00'}"
        if not code and not self._struck(name):
            return GENERAL
        return Style(code or "General", self._struck(name))

    def _code_of(self, name: str) -> str:
        """The format code of a style or the nearest of its parents that has one."""
        for style in self._lineage(name):
            if style.data_style:
                data = self._positive.get(style.data_style, style.data_style)
                return self._codes.get(data, "")
        return ""

    def _struck(self, name: str) -> bool:
        return next((style.struck for style in self._lineage(name) if style.struck is not None), False)

    def _lineage(self, name: str) -> list[_CellStyle]:
        """A style and its parents, stopping at a circle."""
        found: list[_CellStyle] = []
        while name in self._cells and len(found) < 20:
            found.append(self._cells[name])
            name = found[-1].parent
        return found

    def _format_part(self, element: str, attributes: Attributes) -> None:
        if element == "number":
            self._code.append(_number_code(attributes))
        elif element in ("text", "currency-symbol"):
            self._literal = []
        elif element == "map" and attributes.get("style:condition", "").replace(" ", "") in ("value()>=0", "value()>0"):
            self._positive[self._format] = attributes.get("style:apply-style-name", "")
        elif element in _DATE_PARTS:
            short, long = _DATE_PARTS[element]
            self._code.append(long if attributes.get("number:style") == "long" else short)
        elif element == "scientific-number":
            self._code.append("0.00E+00")
        elif element == "fraction":
            self._code.append("# ?/?")


def _number_code(attributes: Attributes) -> str:
    places = attributes.get("number:decimal-places", "")
    if not places:
        return "General"
    whole = "#,##0" if truth(attributes.get("number:grouping")) else "0"
    count = min(int(places), 20) if places.isdigit() else 0
    return whole + ("." + "0" * count if count else "")
