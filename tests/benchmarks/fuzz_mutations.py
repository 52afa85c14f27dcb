"""Ways to spoil a workbook: its bytes, the parts of its zip, the markup inside the parts, the text of a CSV."""

import io
import random
import re
import zipfile
import zlib
from collections.abc import Callable

Mutation = Callable[[bytes, random.Random], bytes]

_TAG = re.compile(rb"<[^<>]{1,400}>")
_QUOTED = re.compile(rb'"[^"<>]{0,200}"')
_NUMBER = re.compile(rb"\d+(?:\.\d+)?")
_VALUES = (
    b"0", b"-1", b"1048577", b"16385", b"4294967295", b"99999999999999999999", b"1e308", b"1E-320", b"NaN", b"INF",
    b"1_0", b"0x10", b"", b" ", b"true", b"&amp;", b"&#0;", b"&#55296;", b"&nope;", b"A1", b"XFD1048576", b"ZZZZ9",
    b"A1:XFD1048576", b"#REF!", b"_x0000_", b"..\\..\\x", b"\xff\xfe", "٣".encode(),
)  # fmt: skip
_MARKUP = (
    b"<!-- <c r='A1'><v>9</v></c> -->", b"<![CDATA[<row>]]>", b"<?x y?>", b"<c/>", b"<row/>", b"</row>", b"<v>1</v>",
    b"<is><t>x</t></is>", b"<f/>", b"<f>1+1</f>", b"<x:c xmlns:x='u' r='B2'><x:v>1</x:v></x:c>", b"\x00", b"]]>",
    b"<mergeCell ref='A1:XFD1048576'/>", b"<text:p/>", b"<table:table-cell/>", b"<table:covered-table-cell/>",
    b"<!DOCTYPE a [<!ENTITY b 'c'>]>", b"<a>" * 300,
)  # fmt: skip


def mutated(content: bytes, chance: random.Random) -> bytes:
    """The content spoiled one to four times."""
    for _ in range(chance.randint(1, 4)):
        kinds: list[Mutation] = [spoil_bytes]
        if content.startswith(b"PK"):
            kinds = [spoil_bytes, spoil_parts, spoil_markup, spoil_markup, spoil_markup]
        elif not content.startswith(b"\xd0\xcf"):
            kinds = [spoil_bytes, spoil_text]
        content = chance.choice(kinds)(content, chance)
    return content


def spoil_bytes(content: bytes, chance: random.Random) -> bytes:
    """Flip, cut, repeat, overwrite or insert bytes anywhere."""
    spoiled = bytearray(content)
    if not spoiled:
        return content
    at = chance.randrange(len(spoiled))
    length = chance.choice((1, 2, 4, 16, 200))
    kind = chance.randrange(6)
    if kind == 0:
        spoiled[at] ^= 1 << chance.randrange(8)
    elif kind == 1:
        del spoiled[at : at + length]
    elif kind == 2:
        spoiled[at:at] = spoiled[at : at + length] * chance.randint(1, 50)
    elif kind == 3:
        spoiled[at : at + length] = chance.randbytes(length)
    elif kind == 4:
        del spoiled[at:]
    else:
        spoiled[at : at + 4] = chance.choice((b"\0\0\0\0", b"\xff\xff\xff\xff", b"\xff\xff\xff\x7f"))
    return bytes(spoiled)


def spoil_text(content: bytes, chance: random.Random) -> bytes:
    """Put quotes, delimiters, line ends and odd characters into a text."""
    at = chance.randrange(len(content) + 1)
    piece = chance.choice(
        (b'"', b'""', b";", b",", b"\t", b"\r", b"\n\n\n", b"\0", b"\xc3", b"\xef\xbb\xbf", b"sep=|\n", b"=")
    )
    return content[:at] + piece * chance.choice((1, 1, 1, 50)) + content[at:]


def spoil_parts(content: bytes, chance: random.Random) -> bytes:
    """Drop, swap, rename, empty or double parts of a zip."""
    parts = _parts(content)
    if not parts:
        return content
    names = list(parts)
    one, other = chance.choice(names), chance.choice(names)
    kind = chance.randrange(5)
    if kind == 0:
        del parts[one]
    elif kind == 1:
        parts[one], parts[other] = parts[other], parts[one]
    elif kind == 2:
        parts[chance.choice((one.upper(), "/" + one, one.replace("/", "\\"), one + "x"))] = parts.pop(one)
    elif kind == 3:
        parts[one] = b""
    else:
        parts[one] = parts[one] * 2
    return _zipped(parts)


def spoil_markup(content: bytes, chance: random.Random) -> bytes:
    """Change one part inside its zip: an attribute, a number, a tag dropped, doubled or put elsewhere, odd markup."""
    parts = _parts(content)
    names = [name for name in parts if parts[name] and not name.endswith("/")]
    if not names:
        return content
    sheets = [name for name in names if "sheet" in name or name == "content.xml"]
    name = chance.choice(sheets if sheets and chance.random() < 0.7 else names)
    part = parts[name]
    if name.endswith(".bin"):
        parts[name] = spoil_bytes(part, chance)
        return _zipped(parts)
    kind = chance.randrange(6)
    place = _pick({0: _QUOTED, 1: _NUMBER}.get(kind, _TAG), part, chance)
    if place is None:
        return content
    start, end = place
    piece = part[start:end]
    if kind == 0:
        piece = b'"' + chance.choice(_VALUES) + b'"'
    elif kind == 1:
        piece = chance.choice(_VALUES)
    elif kind == 2:
        piece = b""
    elif kind == 3:
        piece = piece * chance.choice((2, 2, 200))
    elif kind == 4:
        piece = piece + chance.choice(_MARKUP)
    else:
        swap = _pick(_TAG, part, chance)
        piece = part[slice(*swap)] if swap else b""
    parts[name] = part[:start] + piece + part[end:]
    return _zipped(parts)


def _pick(pattern: re.Pattern[bytes], part: bytes, chance: random.Random) -> tuple[int, int] | None:
    """A match somewhere in the part, found from a random place on."""
    found = pattern.search(part, chance.randrange(len(part))) or pattern.search(part)
    return found.span() if found else None


def _parts(content: bytes) -> dict[str, bytes]:
    """The parts of a zip; none where an earlier mutation broke it."""
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as archive:
            return {part.filename: archive.read(part) for part in archive.infolist() if part.file_size < 50_000_000}
    except (zipfile.BadZipFile, zlib.error, OSError, RuntimeError, NotImplementedError, ValueError, EOFError):
        return {}


def _zipped(parts: dict[str, bytes]) -> bytes:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return buffer.getvalue()
