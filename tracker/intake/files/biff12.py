"""Records of the binary spreadsheet parts ([MS-XLSB] 2.1.4): a type and a size of seven bits a byte, then the body."""

import math
import struct
from collections.abc import Iterator
from typing import NamedTuple


class Record(NamedTuple):
    kind: int
    body: bytes


def records(part: bytes) -> Iterator[Record]:
    """The records of a part in order. ValueError where one claims more bytes than there are."""
    position = 0
    while position < len(part):
        kind, position = _packed(part, position, 2)
        size, position = _packed(part, position, 4)
        if position + size > len(part):
            raise ValueError("a record is cut short")
        yield Record(kind, part[position : position + size])
        position += size


def _packed(part: bytes, position: int, most: int) -> tuple[int, int]:
    """An unsigned number of seven bits a byte, and the position after it."""
    number = 0
    for place in range(most):
        if position >= len(part):
            raise ValueError("a record is cut short")
        byte = part[position]
        position += 1
        number |= (byte & 0x7F) << (7 * place)
        if not byte & 0x80:
            break
    return number, position


class Take:
    """Takes values off the front of a record's body. ValueError when it runs out."""

    def __init__(self, body: bytes) -> None:
        self._body = body
        self._at = 0

    def skip(self, count: int) -> None:
        self._bytes(count)

    def whole(self, count: int) -> int:
        """An unsigned little-endian integer of `count` bytes."""
        return int.from_bytes(self._bytes(count), "little")

    def real(self) -> float:
        """A finite double."""
        number = float(struct.unpack("<d", self._bytes(8))[0])
        if not math.isfinite(number):
            raise ValueError("a number is not finite")
        return number

    def text(self) -> str:
        """A counted UTF-16 string; the count of all ones stands for none."""
        count = self.whole(4)
        return "" if count == 0xFFFFFFFF else self._bytes(2 * count).decode("utf-16-le", "replace")

    def rest(self) -> bytes:
        """What was not taken yet."""
        return self._body[self._at :]

    def _bytes(self, count: int) -> bytes:
        taken = self._body[self._at : self._at + count]
        if len(taken) < count:
            raise ValueError("a record is too short")
        self._at += count
        return taken
