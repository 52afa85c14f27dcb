"""Office Open XML workbooks (.xlsx, .xlsm): parts put together into grids. Macros are never looked at.

Structure: ECMA-376 Part 1, SpreadsheetML.
"""

from dataclasses import dataclass

from tracker.intake.files.cells import SheetCells
from tracker.intake.files.markup import Attributes, local_attribute, parse, truth
from tracker.intake.files.package import Package
from tracker.intake.files.places import spread
from tracker.intake.files.xlsx_comments import read_comments
from tracker.intake.files.xlsx_sheet import SheetContext, read_sheet
from tracker.intake.files.xlsx_strings import read_strings
from tracker.intake.files.xlsx_styles import read_styles
from tracker.intake.grid import Grid


@dataclass(slots=True)
class _Listed:
    """One sheet as the workbook part lists it."""

    name: str
    relation: str
    hidden: bool


def read_xlsx(package: Package) -> tuple[Grid, ...]:
    """Every worksheet in the workbook's order; chart, dialog and macro sheets hold no cells and are left out."""
    book = workbook_part(package)
    relations = package.relations(book)
    listed, epoch_1904 = _listing(package, book)
    context = SheetContext(
        read_strings(package, _only(relations, "sharedStrings", "xl/sharedStrings.xml")),
        read_styles(package, _only(relations, "styles", "xl/styles.xml")),
        epoch_1904,
    )
    grids: list[Grid] = []
    for entry in listed:
        kind, part = relations.get(entry.relation, ("", ""))
        if kind == "worksheet" and part in package:
            grids.append(_grid(package, part, entry, context))
    return tuple(grids)


def workbook_part(package: Package) -> str:
    """The part that the package's own relationships call the document, else the usual place."""
    for kind, part in package.relations("").values():
        if kind == "officeDocument" and part in package:
            return part
    return "xl/workbook.xml"


def _only(relations: dict[str, tuple[str, str]], kind: str, usual: str) -> str:
    return next((part for found, part in relations.values() if found == kind), usual)


def _listing(package: Package, book: str) -> tuple[list[_Listed], bool]:
    listed: list[_Listed] = []
    epoch_1904 = False

    def start(element: str, attributes: Attributes) -> None:
        nonlocal epoch_1904
        if element == "sheet":
            hidden = attributes.get("state", "visible") in ("hidden", "veryHidden")
            relation = next((v for k, v in attributes.items() if k.endswith(":id")), "")
            listed.append(_Listed(attributes.get("name", ""), relation, hidden))
        elif element == "workbookPr":
            epoch_1904 = truth(local_attribute(attributes, "date1904"))

    parse(package.chunks(book), start)
    return listed, epoch_1904


def _grid(package: Package, part: str, entry: _Listed, context: SheetContext) -> Grid:
    sheet = read_sheet(package, part, context)
    comments = {
        place: text
        for kind, target in package.relations(part).values()
        if kind == "comments" and target in package
        for place, text in read_comments(package, target).items()
    }
    cells = SheetCells(sheet.rows, epoch_1904=context.epoch_1904, comments=comments)
    hidden_columns = spread(sheet.hidden_columns, cells.extent()[1])
    return Grid(entry.name, cells, tuple(sheet.merged), frozenset(sheet.hidden_rows), hidden_columns, entry.hidden)
