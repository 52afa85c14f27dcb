"""Worksheet rows written the way nearly every program writes them, read four times as quickly as element by element.

The quick way is only taken when it accounts for everything between `<sheetData>` and `</sheetData>`: every row and
every cell must match, addresses must rise, and nothing may hide text from a plain search (comments, CDATA, processing
instructions, odd entities). At the first doubt Irregular is raised and the sheet is walked element by element
instead, so this module can be slow to notice nothing and wrong about nothing.
"""

import math
import re
from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import TypeVar

from tracker.intake.files.cell_values import clean, unescaped
from tracker.intake.files.cells import MOST_CELLS, Row, Stored, Style, TooManyCells, is_blank
from tracker.intake.files.markup import parse
from tracker.intake.files.places import LAST_COLUMN, LAST_ROW, column_number
from tracker.intake.files.xlsx_cell import SheetContext, stored_value
from tracker.intake.files.xlsx_strings import RichText

_SHEET_DATA = re.compile(rb"<sheetData\s*(/?)>")
_END = b"</sheetData>"
_ROW = re.compile(r'\s*<row((?:\s+[\w:]+="[^"<]*")*)\s*(/?)>')
_CELL = re.compile(
    r'<c r="([A-Z]{1,3}+)([0-9]{1,7}+)"((?: \w++="[^"<&]*+")*) ?(?:/>|>\s*+'
    r"(?:<f((?: [^<>]*?)?)(?:/>|>([^<]*+)</f>)\s*+)?"
    r'(?:<v(?: xml:space="preserve")?>([^<]*+)</v>|<v ?/>|<is>(.*?)</is>)?\s*+</c>)',
    re.DOTALL,
)
"""What a quantifier has taken it keeps (the plus behind it): nothing else could end it, and to remember where it might
give way takes a fifth of the time."""
_CELL_STARTS = ("<c ", "<c>", "<c/", "<c\n")
_ROW_NUMBER = re.compile(r'(?:^|\s)r="([0-9]{1,7})"')
_ROW_HIDDEN = re.compile(r'\shidden="(?:1|true|on)"|\sht="0*\.?0*"')
_ATTRIBUTE = re.compile(r'(\w+)="([^"]*)"')
_PLAIN_INLINE = re.compile(r'<t(?: xml:space="preserve")?>([^<]*)</t>')
_NOT_A_NUMBER = re.compile("[^0-9.eE+-]")
_ENTITY = re.compile(r"&(?:#([0-9]{1,7});|#x([0-9A-Fa-f]{1,6});|(\w+);|)")
_NAMED = {"amp": "&", "lt": "<", "gt": ">", "quot": '"', "apos": "'"}
_MOST_LAYOUTS = 5000
_MOST_TEXTS = 10_000
_LONGEST_ROW = 16_000_000  # bytes; 16,384 cells of markup are about a tenth of that
_NUMBER, _SHARED, _OTHER = 0, 1, 2

_Items = TypeVar("_Items", bound=tuple[object, ...])
_Layout = tuple[tuple[int, ...], tuple[Style, ...], tuple[int, ...], tuple[str, ...]]


class Irregular(Exception):
    """The sheet is not written the usual way."""


class UsualSheet:
    """Reads the rows of a sheet written as usual. After `read`, `rows` and `hidden_rows` are complete."""

    def __init__(self, context: SheetContext) -> None:
        self.rows: dict[int, Row] = {}
        self.hidden_rows: set[int] = set()
        self._context = context
        self._strings = [None if is_blank(text) else text for text in context.strings]
        self._last_row = -1
        self._count = 0
        self._layouts: dict[tuple[tuple[str, ...], tuple[str, ...]], _Layout] = {}
        self._alike: dict[tuple[object, ...], tuple[object, ...]] = {}
        self._narrow: dict[tuple[int, int, tuple[int, ...]], tuple[tuple[int, ...], tuple[Style, ...]]] = {}
        self._texts: dict[str, Stored | None] = {}

    def read(self, chunks: Iterable[bytes]) -> bytes:
        """Read the whole part; the answer is the part without its rows, for the rest of the sheet's facts."""
        pieces = iter(chunks)
        before, rest, empty = _before_rows(pieces)
        if not empty:
            rest = self._read_rows(rest, pieces)
        return before + b"<sheetData/>" + rest + b"".join(pieces)

    def _read_rows(self, held: bytes, pieces: Iterator[bytes]) -> bytes:
        """Take whole rows off the stream as they come; the answer is what follows the end tag."""
        searched = 0
        while (end := held.find(_END, searched)) < 0:
            cut = max(held.rfind(b"<row", searched), 0)
            self._take(held[:cut])
            piece = next(pieces, None)
            if piece is None:
                raise Irregular("no end of the rows")
            if len(held) - cut > _LONGEST_ROW:
                raise ValueError("a row longer than any sheet has")
            searched = max(0, len(held) - cut - len(_END))
            held = held[cut:] + piece
        self._take(held[:end])
        return held[end + len(_END) :]

    def _take(self, rows: bytes) -> None:
        """Read a stretch of whole rows."""
        if b"<!" in rows or b"<?" in rows or b"AlternateContent" in rows:
            raise Irregular("something may be hidden from a search")
        try:
            text = rows.decode("utf-8")
        except UnicodeDecodeError as error:
            raise Irregular("not UTF-8") from error
        position = found_cells = 0
        while position < len(text):
            row = _ROW.match(text, position)
            if row is None:
                if text[position:].strip():
                    raise Irregular("not a row")
                break
            start = position = row.end()
            if row[2]:
                self._row(row[1], "")
                continue
            end = text.find("</row>", start)
            if end < 0:
                raise Irregular("a row without an end")
            position = end + len("</row>")
            found_cells += self._row(row[1], text[start:end])
        # Only rich text holds other elements that begin with a c, so one count settles nearly every sheet.
        if found_cells != text.count("<c") and found_cells != sum(map(text.count, _CELL_STARTS)):
            raise Irregular("a cell of another shape")

    def _row(self, attributes: str, inner: str) -> int:
        """Read one row; the answer is how many cells it has."""
        number = _ROW_NUMBER.search(attributes)
        if number is None:
            raise Irregular("a row without its number")
        row = int(number[1]) - 1
        if not self._last_row < row <= LAST_ROW:
            raise Irregular("rows out of order")
        self._last_row = row
        if _ROW_HIDDEN.search(attributes):
            self.hidden_rows.add(row)
        cells = _CELL.findall(inner) if inner else []
        if cells:
            self._cells(row, number[1], cells, "<f" in inner)
        return len(cells)

    def _cells(self, row: int, number: str, cells: list[tuple[str, ...]], has_formulas: bool) -> None:
        letters, numbers, attributes, of_formulas, formulas, raws, inlines = zip(*cells, strict=True)
        if numbers.count(number) != len(numbers):
            raise Irregular("a cell of another row")
        layout = self._layouts.get((letters, attributes)) or self._new_layout(letters, attributes)
        columns, styles, kinds, types = layout
        values: list[Stored | None]
        digits = "".join(raws)
        if has_formulas or _NOT_A_NUMBER.search(digits) or ("-" in digits and _SHARED in kinds):
            values = [
                self._value(name, raw, inline, _formula(of_formula, formula))
                for name, raw, inline, of_formula, formula in zip(
                    types, raws, inlines, of_formulas, formulas, strict=True
                )
            ]
        else:
            values = self._plain_values(kinds, raws, types, inlines)
        if None in values:
            kept = tuple([place for place, value in enumerate(values) if value is not None])
            if not kept:
                return
            columns, styles = self._narrowed(columns, styles, kept)
            values = [values[place] for place in kept]
        self._count += len(columns)
        if self._count > MOST_CELLS:
            raise TooManyCells
        self.rows[row] = Row(columns, styles, tuple(values))  # type: ignore[arg-type]

    def _narrowed(
        self, columns: tuple[int, ...], styles: tuple[Style, ...], kept: tuple[int, ...]
    ) -> tuple[tuple[int, ...], tuple[Style, ...]]:
        """The columns and styles at some places. Both are of a layout, which is kept, so that their ids stay theirs."""
        key = (id(columns), id(styles), kept)
        if key not in self._narrow:
            some_columns = self._shared(tuple(columns[place] for place in kept))
            self._narrow[key] = some_columns, self._shared(tuple(styles[place] for place in kept))
        return self._narrow[key]

    def _plain_values(
        self, kinds: tuple[int, ...], raws: tuple[str, ...], types: tuple[str, ...], inlines: tuple[str, ...]
    ) -> list[Stored | None]:
        """Values of a row without formulas; written for speed, since a long sheet spends its time here."""
        strings, texts = self._strings, self._texts
        try:
            values: list[Stored | None] = [
                float(raw)
                if kind == _NUMBER and raw
                else strings[int(raw)]
                if kind == _SHARED and raw
                else (texts[inline] if inline in texts else self._text(inline))
                if name == "inlineStr"
                else self._value(name, raw, inline, None)
                for kind, raw, name, inline in zip(kinds, raws, types, inlines, strict=True)
            ]
        except (ValueError, IndexError) as error:
            raise Irregular("a value of another kind") from error
        if math.inf in values or -math.inf in values:
            # A damaged '1e999': too large for a number, and left as it is written where cells are read one by one.
            raise Irregular("a number too large")
        return values

    def _value(self, name: str, raw: str, inline: str, formula: str | None) -> Stored | None:
        rich = self._inline(inline) if inline else None
        value = stored_value(name, _unreferenced(raw), formula, rich, self._context)
        return None if is_blank(value) else value

    def _text(self, markup: str) -> Stored | None:
        """A text in the cell itself, one object for all that are the same: a list repeats its grades and terms."""
        if len(self._texts) >= _MOST_TEXTS:
            self._texts.clear()
        text = self._inline(markup) if markup else None
        kept = self._texts[markup] = None if is_blank(text) else text
        return kept

    def _inline(self, markup: str) -> Stored:
        plain = _PLAIN_INLINE.fullmatch(markup)
        if plain is not None:
            return clean(unescaped(_unreferenced(plain[1])))
        item = RichText()
        try:
            parse([b"<is>", markup.encode(), b"</is>"], item.start, item.end, item.characters)
        except Exception as error:
            raise Irregular("rich text of another shape") from error
        return item.result()

    def _new_layout(self, letters: tuple[str, ...], attributes: tuple[str, ...]) -> _Layout:
        columns = tuple(map(column_number, letters))
        if any(left >= right for left, right in pairwise(columns)) or columns[-1] > LAST_COLUMN:
            raise Irregular("columns out of order")
        facts = [dict(_ATTRIBUTE.findall(text)) for text in attributes]
        types = tuple(fact.get("t", "n") for fact in facts)
        kinds = tuple(_NUMBER if name == "n" else _SHARED if name == "s" else _OTHER for name in types)
        styles = tuple(self._context.style(fact.get("s")) for fact in facts)
        layout = (self._shared(columns), self._shared(styles), kinds, types)
        if len(self._layouts) > _MOST_LAYOUTS:
            self._layouts.clear()
            self._narrow.clear()
        self._layouts[letters, attributes] = layout
        return layout

    def _shared(self, items: _Items) -> _Items:
        """The first tuple seen that is equal to this one, so that like rows hold one."""
        return self._alike.setdefault(items, items)  # type: ignore[return-value]


def _before_rows(pieces: Iterator[bytes]) -> tuple[bytes, bytes, bool]:
    """What stands before the rows, the start of what follows, and whether the sheet says it has none."""
    held = b""
    for piece in pieces:
        held += piece
        found = _SHEET_DATA.search(held)
        if found is not None:
            before = held[: found.start()]
            if b"<!" in before or b"<worksheet" not in before or _declares_other_encoding(before):
                raise Irregular("markup before the rows")
            return before, held[found.end() :], bool(found[1])
    raise Irregular("no rows of the usual name")


def _declares_other_encoding(before: bytes) -> bool:
    declared = re.match(rb'(?:\xef\xbb\xbf)?<\?xml[^>]*encoding=["\']([^"\']+)', before)
    return declared is not None and declared[1].lower() not in (b"utf-8", b"utf8", b"us-ascii")


def _formula(attributes: str, text: str) -> str | None:
    """A formula's text ('' where another cell holds it), None for no formula."""
    return _unreferenced(text) if text or attributes else None


def _unreferenced(text: str) -> str:
    """Resolve XML's own character references, the only ones that an XML reader would resolve without a declaration."""
    return _ENTITY.sub(_character, text) if "&" in text else text


def _character(found: re.Match[str]) -> str:
    if found[0] == "&":
        raise Irregular("a bare ampersand")
    if found[3]:
        if found[3] not in _NAMED:
            raise Irregular("an entity of another name")
        return _NAMED[found[3]]
    code = int(found[1]) if found[1] else int(found[2], 16)
    if code == 0 or code > 0x10FFFF or 0xD800 <= code <= 0xDFFF or (code < 32 and code not in (9, 10, 13)):
        raise Irregular("a character that XML forbids")
    return chr(code)
