"""Strings of spreadsheet XML: plain, rich (superscripts, struck-through runs), shared between cells."""

from tracker.intake.files.cell_values import clean, raised, unescaped
from tracker.intake.files.cells import Stored, joined_runs
from tracker.intake.files.markup import Attributes, parse, truth
from tracker.intake.files.package import Package


class RichText:
    """Gathers one string item (`si` or `is`) from its elements; phonetic hints (`rPh`) are no part of the text."""

    def __init__(self) -> None:
        self.clear()

    def clear(self) -> None:
        self._runs: list[tuple[str, bool]] = []
        self._text: list[str] = []
        self._in_text = self._in_phonetic = self._raised = self._struck = False

    def start(self, element: str, attributes: Attributes) -> None:
        if element == "t":
            self._in_text = not self._in_phonetic
        elif element == "rPh":
            self._in_phonetic = True
        elif element == "r":
            self._raised = self._struck = False
        elif element == "vertAlign":
            self._raised = attributes.get("val") == "superscript"
        elif element in ("strike", "dstrike"):
            self._struck = truth(attributes.get("val"), default=True)

    def end(self, element: str) -> None:
        if element == "t" and self._in_text:
            text = "".join(self._text)
            self._text.clear()
            self._in_text = False
            self._runs.append((raised(text) if self._raised else text, self._struck))
        elif element == "rPh":
            self._in_phonetic = False
        elif element == "r":
            self._raised = self._struck = False

    def characters(self, text: str) -> None:
        if self._in_text:
            self._text.append(text)

    def result(self) -> Stored:
        """The gathered text as a cell stores it."""
        if len(self._runs) == 1 and not self._runs[0][1]:
            return clean(unescaped(self._runs[0][0]))
        return joined_runs([(clean(unescaped(text)), struck) for text, struck in self._runs])


def read_strings(package: Package, part: str) -> list[Stored]:
    """The shared strings in order; an empty list where the workbook has none."""
    strings: list[Stored] = []
    if part not in package:
        return strings
    item = RichText()

    def start(element: str, attributes: Attributes) -> None:
        if element == "si":
            item.clear()
        else:
            item.start(element, attributes)

    def end(element: str) -> None:
        if element == "si":
            strings.append(item.result())
        else:
            item.end(element)

    parse(package.chunks(part), start, end, item.characters)
    return strings
