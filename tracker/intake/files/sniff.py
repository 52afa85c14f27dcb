"""What a file is, told by its content: vendors' file names often say otherwise."""

import re
from enum import Enum

from tracker.intake.files.package import Package


class Kind(Enum):
    """The formats that can be read, and the zip that three of them are packed in."""

    XLSX = "xlsx"
    XLS = "xls"
    XLSB = "xlsb"
    ODS = "ods"
    FLAT_ODS = "flat ods"
    TEXT = "csv"
    ZIP = "zip"


class Wrong(Exception):
    """A file that is no price sheet: `what` it is and what `to_do`, both parts of a sentence."""

    def __init__(self, what: str, to_do: str) -> None:
        super().__init__(what)
        self.what = what
        self.to_do = to_do

    def sentence(self, name: str) -> str:
        return f"{name} {self.what}; {self.to_do}."


_SAVE_AS = "open it in a spreadsheet program, save it as .xlsx and import that"
_ASK = "ask the vendor for the price sheet as a spreadsheet or CSV"
_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_OLD_BIFF = re.compile(rb"\x09[\x00\x02\x04\x08][\x04-\x10]\x00")

_SIGNATURES: tuple[tuple[bytes, str], ...] = (
    (b"%PDF", "is a PDF"),
    (b"\x89PNG", "is a picture"),
    (b"\xff\xd8\xff", "is a picture"),
    (b"GIF8", "is a picture"),
    (b"BM", "is a picture"),
    (b"II*\x00", "is a picture"),
    (b"MM\x00*", "is a picture"),
    (b"RIFF", "is a picture or recording"),
    (b"{\\rtf", "is a text document"),
    (b"MIME-Version:", "is a web page or mail message"),
    (b"Received:", "is a mail message"),
    (b"Return-Path:", "is a mail message"),
    (b"\x1f\x8b", "is a packed file"),
    (b"7z\xbc\xaf", "is a packed file"),
    (b"Rar!", "is a packed file"),
    (b"BZh", "is a packed file"),
    (b"\xfd7zXZ", "is a packed file"),
)


def kind_of(content: bytes) -> Kind:
    """The kind of a file. Raises Wrong for an empty one and for everything that is no spreadsheet."""
    if not content.strip(b"\x00\t\n\r \xef\xbb\xbf\xff\xfe"):
        raise Wrong("is empty" if not content else "holds nothing but blanks", "ask the vendor to send it again")
    if content.startswith((b"PK\x03\x04", b"PK\x05\x06", b"PK\x07\x08")):
        return Kind.ZIP
    if content.startswith(_OLE):
        return _kind_of_ole(content)
    if _OLD_BIFF.match(content):
        return Kind.XLS
    for signature, what in _SIGNATURES:
        if content.startswith(signature) and not (signature == b"BM" and _is_text(content)):
            packed = what == "is a packed file"
            raise Wrong(what, "unpack it and import the price sheet inside" if packed else _ASK)
    return _kind_of_text(content)


def _kind_of_ole(content: bytes) -> Kind:
    """A compound file: an old workbook, a locked new one, or another program's document."""
    if _named(content, "EncryptedPackage"):
        raise Wrong("is protected by a password", "save a copy without the password and import that")
    if _named(content, "Workbook") or _named(content, "Book"):
        return Kind.XLS
    raise Wrong("is not a spreadsheet but another program's document, or damaged", _ASK)


def _named(content: bytes, stream: str) -> bool:
    """Whether the directory of a compound file names a stream (names are UTF-16 there, [MS-CFB] 2.6.1)."""
    return stream.lower().encode("utf-16-le") + b"\x00\x00" in content.lower()


def _kind_of_text(content: bytes) -> Kind:
    start = content[:4096].replace(b"\x00", b"").lstrip(b"\xef\xbb\xbf\xff\xfe \t\r\n").lower()
    if start.startswith(b"<"):
        return _kind_of_markup(start)
    if not _is_text(content):
        raise Wrong("is not a spreadsheet or is damaged", _ASK)
    return Kind.TEXT


def _kind_of_markup(start: bytes) -> Kind:
    if b"office:spreadsheet" in start or b"opendocument.spreadsheet" in start:
        if b"<office:document" in start:
            return Kind.FLAT_ODS
        raise Wrong("is an XML spreadsheet of an old kind", _SAVE_AS)
    if start.startswith(b"<?xml") and b"<html" not in start and b"<!doctype html" not in start:
        raise Wrong("is an XML file, not a spreadsheet", _ASK)
    if re.match(rb"<(?:!doctype|!--|html|head|body|meta|table|style|div|p\b|script)", start):
        raise Wrong("is a web page, not a spreadsheet", _SAVE_AS)
    return Kind.TEXT


def _is_text(content: bytes) -> bool:
    """Whether bytes look like text in some encoding: few control characters, NULs only as halves of UTF-16."""
    sample = content[:65536]
    if sample.startswith((b"\xff\xfe", b"\xfe\xff")) or looks_utf16(sample):
        return True
    controls = sum(sample.count(bytes([code])) for code in (*range(0, 9), *range(14, 27), 28, 29, 30, 31))
    return controls <= len(sample) // 200


def looks_utf16(sample: bytes) -> str | None:
    """'utf-16-le' or 'utf-16-be' for UTF-16 without its mark: nearly every second byte is NUL, the others are not."""
    even, odd = sample[0::2], sample[1::2]
    if len(sample) < 4:
        return None
    if odd.count(0) > 0.7 * len(odd) and even.count(0) < 0.05 * len(even):
        return "utf-16-le"
    if even.count(0) > 0.7 * len(even) and odd.count(0) < 0.05 * len(odd):
        return "utf-16-be"
    return None


def kind_of_package(package: Package) -> Kind:
    """Which of the zipped formats a package is, told by its parts. Raises Wrong for any other zip."""
    names = package.names()
    if any(name.endswith("workbook.bin") for name in names) and "[content_types].xml" in names:
        return Kind.XLSB
    if "content.xml" in names:
        return _kind_of_opendocument(package)
    if "[content_types].xml" in names or "_rels/.rels" in names:
        return _kind_of_office(names)
    if any(name.endswith(".iwa") for name in names):
        raise Wrong("is a spreadsheet of a kind that is not read", "export it as .xlsx and import that")
    raise Wrong("is a packed folder", "unpack it and import the price sheet inside")


def _kind_of_office(names: list[str]) -> Kind:
    if any(name.startswith("word/") for name in names):
        raise Wrong("is a text document", _ASK)
    if any(name.startswith("ppt/") for name in names):
        raise Wrong("is a set of slides", _ASK)
    return Kind.XLSX


def _kind_of_opendocument(package: Package) -> Kind:
    if "meta-inf/manifest.xml" in package and b"encryption-data" in package.read("meta-inf/manifest.xml"):
        raise Wrong("is protected by a password", "save a copy without the password and import that")
    mimetype = package.read("mimetype") if "mimetype" in package else b"spreadsheet"
    if b"spreadsheet" not in mimetype:
        raise Wrong("is not a spreadsheet but another kind of document", _ASK)
    return Kind.ODS
