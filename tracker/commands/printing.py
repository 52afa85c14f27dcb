"""JSON as commands print it, one line a line, an offer or a sample, so that people and programs can read it; counts."""

import json
import sys
from collections.abc import Iterator
from itertools import chain, islice
from typing import Any


def print_json(document: Any, depth: int) -> None:
    """Prints a document whose outer `depth` levels have a line for each thing in them; the rest stays on its line."""
    pieces = chain(_laid_out(document, depth, ""), ("\n",))
    while some := "".join(islice(pieces, _AT_ONCE)):
        sys.stdout.write(some)


_AT_ONCE = 1000
"""Pieces that are written together: each by itself is a call to the system where output is not buffered."""


def counted(number: int, what: str) -> str:
    """'1 offer', '315 offers'."""
    return f"{number:,} {what}{'' if number == 1 else 's'}"


def json_text(document: Any, depth: int) -> str:
    """The same as text."""
    return "".join(_laid_out(document, depth, ""))


def _laid_out(value: Any, depth: int, margin: str) -> Iterator[str]:
    """A document whose outer `depth` levels have a line for each thing in them, what is deeper none.

    An iterator is printed as a list, each item as it comes, so that the lines of a long sheet are never all held.
    """
    if depth == 0 or not isinstance(value, dict | list | Iterator):
        yield _on_one_line(value)
        return
    # What goes on one line is written on the spot: a generator for each of a long sheet's lines costs more than it.
    deeper = depth > 1
    opening, closing = "{}" if isinstance(value, dict) else "[]"
    inner = margin + " "
    parts = value.items() if isinstance(value, dict) else ((None, item) for item in value)
    empty = True
    for key, item in parts:
        before = f"{opening}\n{inner}" if empty else f",\n{inner}"
        if key is not None:
            before += f"{_on_one_line(key)}: "
        if deeper:
            yield before
            yield from _laid_out(item, depth - 1, inner)
        else:
            yield before + _on_one_line(item)
        empty = False
    yield f"{opening}{closing}" if empty else f"\n{margin}{closing}"


_on_one_line = json.JSONEncoder(ensure_ascii=False, allow_nan=False).encode
