"""Formulas of an old binary workbook that nobody calculated; xlrd gives them as empty texts."""

import io
from collections.abc import Iterator
from typing import Any

_FORMULA, _BOF, _EOF = 0x0006, 0x0809, 0x000A
_RESULT, _TOKENS = slice(6, 14), 22
_TEXTS = (b"\x00", b"\x03")
_EMPTY_TEXT = b"\x17\x00"
"""A token of [MS-XLS] 2.5.198.89 that stands for "": what holds it can come to nothing."""
_ANOTHER_CELL = 0x01


def never_calculated(book: Any, content: bytes, number: int) -> frozenset[tuple[int, int]]:
    """Places of a sheet's formulas whose result is an empty text that they cannot come to ([MS-XLS] 2.4.127).

    `book` is xlrd's, made of `content`; `number` counts sheets from 0. Books before Excel 5 keep their formulas
    elsewhere and give none.
    """
    stream = _stream(content)
    return frozenset(
        (int.from_bytes(body[0:2], "little"), int.from_bytes(body[2:4], "little"))
        for body in _formulas(stream, book._sh_abs_posn[number] - book.base)
        if _is_left_empty(body)
    )


def _stream(content: bytes) -> bytes:
    from xlrd.compdoc import SIGNATURE, CompDoc

    if not content.startswith(SIGNATURE):
        return content
    parts = CompDoc(content, logfile=io.StringIO())
    return parts.get_named_stream("Workbook") or parts.get_named_stream("Book") or b""


def _formulas(stream: bytes, at: int) -> Iterator[bytes]:
    """Bodies of a sheet's formulas; what is drawn within it has a beginning and an end of its own."""
    depth = 0
    while at + 4 <= len(stream):
        kind, size = int.from_bytes(stream[at : at + 2], "little"), int.from_bytes(stream[at + 2 : at + 4], "little")
        depth += (kind == _BOF) - (kind == _EOF)
        if depth == 0:
            return
        if kind == _FORMULA and depth == 1:
            yield stream[at + 4 : at + 4 + size]
        at += 4 + size


def _is_left_empty(formula: bytes) -> bool:
    result, tokens = formula[_RESULT], formula[_TOKENS:]
    if result[6:] != b"\xff\xff" or result[:1] not in _TEXTS:
        return False
    return _EMPTY_TEXT not in tokens and tokens[:1] != bytes([_ANOTHER_CELL])
