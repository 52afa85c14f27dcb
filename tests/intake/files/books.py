"""Small workbooks made part by part, so that a test says exactly what stands in the file."""

import io
import struct
import zipfile
from pathlib import Path

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships"


def zipped(parts: dict[str, bytes | str]) -> bytes:
    """A zip of these parts."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return buffer.getvalue()


def relations(*entries: tuple[str, str, str]) -> str:
    """A relationships part of (id, kind, target)."""
    rows = "".join(f'<Relationship Id="{i}" Type="{OFFICE}/{kind}" Target="{to}"/>' for i, kind, to in entries)
    return f'<Relationships xmlns="{PACKAGE}">{rows}</Relationships>'


def xlsx_parts(
    rows: str, *, before: str = "", after: str = "", styles: str = "", strings: str = "", book: str = ""
) -> dict[str, bytes | str]:
    """The parts of an xlsx with one sheet whose sheetData holds `rows`."""
    sheet = f'<worksheet xmlns="{MAIN}">{before}<sheetData>{rows}</sheetData>{after}</worksheet>'
    parts: dict[str, bytes | str] = {
        "[Content_Types].xml": '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
        "_rels/.rels": relations(("rId1", "officeDocument", "xl/workbook.xml")),
        "xl/workbook.xml": f'<workbook xmlns="{MAIN}" xmlns:r="{OFFICE}">{book}'
        '<sheets><sheet name="Prices" sheetId="1" r:id="rId1"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": relations(
            ("rId1", "worksheet", "worksheets/sheet1.xml"),
            ("rId2", "styles", "styles.xml"),
            ("rId3", "sharedStrings", "sharedStrings.xml"),
        ),
        "xl/worksheets/sheet1.xml": sheet,
    }
    if styles:
        parts["xl/styles.xml"] = f'<styleSheet xmlns="{MAIN}">{styles}</styleSheet>'
    if strings:
        parts["xl/sharedStrings.xml"] = f'<sst xmlns="{MAIN}">{strings}</sst>'
    return parts


def write(folder: Path, name: str, content: bytes | dict[str, bytes | str]) -> Path:
    """Put a file into a folder; a mapping is zipped first."""
    path = folder / name
    path.write_bytes(zipped(content) if isinstance(content, dict) else content)
    return path


def biff12(kind: int, body: bytes = b"") -> bytes:
    """One record of a binary part ([MS-XLSB] 2.1.4)."""
    head = bytes([kind]) if kind < 128 else bytes([kind & 0x7F | 0x80, kind >> 7])
    size, left = b"", len(body)
    while left >= 128:
        size += bytes([left & 0x7F | 0x80])
        left >>= 7
    return head + size + bytes([left]) + body


def wide(text: str) -> bytes:
    """A counted UTF-16 string ([MS-XLSB] 2.5.168)."""
    encoded = text.encode("utf-16-le")
    return struct.pack("<I", len(encoded) // 2) + encoded


def at(column: int, style: int = 0) -> bytes:
    """The start of a cell record: column and style."""
    return struct.pack("<I", column) + style.to_bytes(3, "little") + b"\0"


def row_head(row: int, *, hidden: bool = False, height: int = 300) -> bytes:
    flags = 0x10 if hidden else 0
    return biff12(0, struct.pack("<IIHBBBI", row, 0, height, 0, flags, 0, 0))
