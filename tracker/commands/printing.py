"""JSON as commands print it: one line a line, an offer or a sample, so that both people and programs can read it."""

import json
import sys
from collections.abc import Iterator
from typing import Any


def print_json(document: Any, depth: int) -> None:
    """Prints a document whose outer `depth` levels have a line for each thing in them; the rest stays on its line."""
    sys.stdout.writelines(_laid_out(document, depth, ""))
    sys.stdout.write("\n")


def json_text(document: Any, depth: int) -> str:
    """The same as text."""
    return "".join(_laid_out(document, depth, ""))


def _laid_out(value: Any, depth: int, margin: str) -> Iterator[str]:
    """Prints a document whose outer `depth` levels have a line for each thing in them, what is deeper none."""
    if depth == 0 or not value or not isinstance(value, dict | list):
        yield json.dumps(value, ensure_ascii=False, allow_nan=False)
        return
    opening, closing = "{}" if isinstance(value, dict) else "[]"
    inner = margin + " "
    parts = value.items() if isinstance(value, dict) else ((None, item) for item in value)
    yield opening
    for number, (key, item) in enumerate(parts):
        yield ",\n" if number else "\n"
        yield inner if key is None else f"{inner}{json.dumps(key, ensure_ascii=False)}: "
        yield from _laid_out(item, depth - 1, inner)
    yield f"\n{margin}{closing}"
