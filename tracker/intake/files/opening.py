"""Open any vendor's file: what it is by its content, then the reader for that format."""

import hashlib
import zipfile
from collections.abc import Callable
from pathlib import Path

from tracker.intake.content import content_of
from tracker.intake.files.cells import MOST_CELLS, TooManyCells
from tracker.intake.files.markup import Forbidden
from tracker.intake.files.package import Locked, Package, TooLarge
from tracker.intake.files.sniff import Kind, Wrong, kind_of, kind_of_package
from tracker.intake.grid import Grid, Unreadable, Workbook


def open_workbook(path: Path) -> Workbook:
    """Read a spreadsheet or delimited text file into grids, whatever its name ends in.

    Raises Unreadable with one sentence: what is wrong, which file, what to do. Memory follows the cells with content;
    run it through child.read_in_child where a hostile file must not take the program down.
    """
    name = path.name
    try:
        content = content_of(path)
        kind, grids = _read(path, content)
    except Unreadable:
        raise
    except Wrong as wrong:
        raise Unreadable(wrong.sentence(name)) from wrong
    except Locked as error:
        raise Unreadable(locked(name)) from error
    except TooLarge as error:
        raise Unreadable(
            f"{name} unpacks to {error}, far more than a price sheet holds, and was not opened; "
            "ask the vendor for a plain copy."
        ) from error
    except TooManyCells as error:
        raise Unreadable(
            f"{name} holds more than {MOST_CELLS:,} cells in one sheet; save the price list alone in a file of its own."
        ) from error
    except Forbidden as error:
        raise Unreadable(
            f"{name} holds XML entity declarations, which no spreadsheet program writes, and was not opened; "
            "ask the vendor for a plain copy."
        ) from error
    except MemoryError:
        raise
    except Exception as error:  # a damaged file can fail a parser anywhere; the cause stays chained for --debug
        raise Unreadable(damaged(name)) from error
    return Workbook(name, hashlib.sha256(content).hexdigest(), kind, grids)


def damaged(name: str) -> str:
    return (
        f"{name} is damaged or cut short and could not be read; "
        "open it in a spreadsheet program and save it again, or ask the vendor to send it again."
    )


def locked(name: str) -> str:
    return f"{name} is protected by a password; save a copy without the password and import that."


def _read(path: Path, content: bytes) -> tuple[str, tuple[Grid, ...]]:
    kind = kind_of(content)
    if kind is Kind.ZIP:
        return _read_package(path)
    if kind is Kind.XLS:
        from tracker.intake.files.xls import read_xls

        return "xls", read_xls(content)
    if kind is Kind.FLAT_ODS:
        from tracker.intake.files.ods import read_flat_ods

        return "ods", read_flat_ods(content)
    from tracker.intake.files.delimited import read_delimited

    return "csv", (read_delimited(content),)


def _read_package(path: Path) -> tuple[str, tuple[Grid, ...]]:
    if not zipfile.is_zipfile(path):
        raise zipfile.BadZipFile("no directory at its end")
    with Package(path) as package:
        kind = kind_of_package(package)
        return str(kind.value), _package_reader(kind)(package)


def _package_reader(kind: Kind) -> Callable[[Package], tuple[Grid, ...]]:
    if kind is Kind.XLSX:
        from tracker.intake.files.xlsx import read_xlsx

        return read_xlsx
    if kind is Kind.XLSB:
        from tracker.intake.files.xlsb import read_xlsb

        return read_xlsb
    from tracker.intake.files.ods import read_ods

    return read_ods
