"""The zip that an xlsx, xlsb or ods file is: parts by name, with bounds on what they unpack to."""

import posixpath
import zipfile
from collections.abc import Iterator
from pathlib import Path
from types import TracebackType
from typing import Self

from tracker.intake.files.markup import Attributes, parse

LARGEST_PART = 300_000_000
LARGEST_WHOLE = 600_000_000
_BOMB_SIZE = 60_000_000
_BOMB_RATIO = 100
"""Sheet markup unpacks to 6 to 36 times its size: 6 with prices all different, 17 with one price, 36 with one text."""
_MOST_PARTS = 20_000
_CHUNK = 1 << 20


class TooLarge(Exception):
    """The parts unpack to more than a price sheet can need; the message is the unpacked size in words."""


class Locked(Exception):
    """The zip itself is encrypted."""


class Package:
    """An open zip. Part names are found whatever their case, slashes and leading slash."""

    def __init__(self, path: Path) -> None:
        self._zip = zipfile.ZipFile(path)
        try:
            self._parts = {_plain(part.filename): part for part in self._zip.infolist()}
            self._check_sizes()
        except BaseException:
            self._zip.close()
            raise

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self._zip.close()

    def __contains__(self, name: str) -> bool:
        return _plain(name) in self._parts

    def names(self) -> list[str]:
        """Part names in lower case with forward slashes."""
        return list(self._parts)

    def size(self, name: str) -> int:
        return self._parts[_plain(name)].file_size

    def chunks(self, name: str) -> Iterator[bytes]:
        """A part's bytes, a megabyte at a time. KeyError for a part that is not there."""
        with self._zip.open(self._parts[_plain(name)]) as stream:
            while chunk := stream.read(_CHUNK):
                yield chunk

    def read(self, name: str) -> bytes:
        return b"".join(self.chunks(name))

    def relations(self, part: str) -> dict[str, tuple[str, str]]:
        """Id -> (kind, target part) of a part's relationships; the kind is the last word of its type.

        External targets are left out: nothing outside the file is ever followed.
        """
        folder, name = posixpath.split(part)
        rels = posixpath.join(folder, "_rels", name + ".rels")
        found: dict[str, tuple[str, str]] = {}
        if rels not in self:
            return found

        def start(element: str, attributes: Attributes) -> None:
            if element == "Relationship" and attributes.get("TargetMode") != "External":
                target = attributes.get("Target", "").replace("\\", "/")
                whole = target if target.startswith("/") else posixpath.join(folder, target)
                kind = attributes.get("Type", "").rpartition("/")[2]
                name_of = attributes.get("Id") or str(len(found))
                found[name_of] = (kind, posixpath.normpath(whole).lstrip("/"))

        parse(self.chunks(rels), start)
        return found

    def _check_sizes(self) -> None:
        parts = self._parts.values()
        if any(part.flag_bits & 1 for part in parts):
            raise Locked
        whole = sum(part.file_size for part in parts)
        if len(self._parts) > _MOST_PARTS or whole > LARGEST_WHOLE or any(_is_bomb(part) for part in parts):
            raise TooLarge(f"{whole / 1_000_000:,.0f} MB in {len(self._parts):,} parts")


def _is_bomb(part: zipfile.ZipInfo) -> bool:
    if part.file_size > LARGEST_PART:
        return True
    return part.file_size > _BOMB_SIZE and part.file_size > _BOMB_RATIO * max(1, part.compress_size)


def _plain(name: str) -> str:
    return name.replace("\\", "/").lstrip("/").lower()
