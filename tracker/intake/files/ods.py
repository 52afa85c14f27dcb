"""OpenDocument spreadsheets (.ods, and .fods without its zip). Structure: OpenDocument 1.3 part 3, chapters 9 and 16.

Element and attribute names are told by their usual prefixes (`table:`, `office:`), which every producer writes.
"""

from collections.abc import Iterable

from tracker.intake.files.markup import Attributes, parse
from tracker.intake.files.ods_styles import OdsStyles
from tracker.intake.files.ods_table import OdsTables
from tracker.intake.files.package import Package
from tracker.intake.grid import Grid


def read_ods(package: Package) -> tuple[Grid, ...]:
    """Every table of a zipped OpenDocument spreadsheet."""
    styles = OdsStyles()
    if "styles.xml" in package:
        parse(package.chunks("styles.xml"), styles.start, styles.end, styles.characters)
    return _tables(package.chunks("content.xml"), styles)


def read_flat_ods(content: bytes) -> tuple[Grid, ...]:
    """Every table of an OpenDocument spreadsheet kept as one XML file."""
    return _tables([content], OdsStyles())


def _tables(chunks: Iterable[bytes], styles: OdsStyles) -> tuple[Grid, ...]:
    """Styles stand before the body in a document, so one walk serves both."""
    tables = OdsTables(styles)
    reader: OdsStyles | OdsTables = styles

    def start(element: str, attributes: Attributes) -> None:
        nonlocal reader
        if element == "spreadsheet":
            reader = tables
        reader.start(element, attributes)

    parse(chunks, start, lambda element: reader.end(element), lambda text: reader.characters(text))
    return tuple(tables.grids)
