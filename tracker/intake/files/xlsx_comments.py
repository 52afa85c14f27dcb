"""Cell comments of an xlsx sheet."""

from tracker.intake.files.markup import Attributes, parse
from tracker.intake.files.package import Package
from tracker.intake.files.places import place
from tracker.intake.files.xlsx_strings import RichText


def read_comments(package: Package, part: str) -> dict[tuple[int, int], str]:
    """Comment text by (row, column); threaded comments are in the file as plain ones too."""
    found: dict[tuple[int, int], str] = {}
    text = RichText()
    where: tuple[int, int] | None = None

    def start(element: str, attributes: Attributes) -> None:
        nonlocal where
        if element == "comment":
            where = place(attributes.get("ref", ""))
            text.clear()
        else:
            text.start(element, attributes)

    def end(element: str) -> None:
        text.end(element)
        if element == "comment" and where is not None:
            result = text.result()
            found[where] = result if isinstance(result, str) else str(getattr(result, "text", ""))

    parse(package.chunks(part), start, end, text.characters)
    return found
