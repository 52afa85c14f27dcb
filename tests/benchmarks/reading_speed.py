"""How long opening a file takes, by format and size, against pandas and openpyxl merely reading it.

    python tests/benchmarks/reading_speed.py [--rows 20000] [--formats xlsx,inline,xls,ods,csv]

Each file has 15 columns: three texts, a date, eleven prices that are all different. Times are processor seconds of this
process, so that a busy machine counts less; memory is the most the process has used so far.
"""

import argparse
import csv
import io
import random
import resource
import sys
import tempfile
import time
import zipfile
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tracker.intake.files import open_workbook

Table = list[list[str | float | date]]


def table(rows: int) -> Table:
    chance = random.Random(1)
    grades = ("SBS", "CUK", "FBB")
    return [
        [f"{chance.choice(grades)} board {chance.randint(1, 3000)}" for _ in range(3)]
        + [date(2026, 1, 1) + timedelta(days=chance.randint(0, 300))]
        + [round(chance.uniform(1, 2000), 2) for _ in range(11)]
        for _ in range(rows)
    ]


def as_xlsx(lines: Table) -> bytes:
    """As most programs write it: texts shared between cells."""
    import xlsxwriter

    out = io.BytesIO()
    with xlsxwriter.Workbook(out, {"in_memory": True}) as book:
        sheet, day = book.add_worksheet(), book.add_format({"num_format": "yyyy-mm-dd"})
        euro = book.add_format({"num_format": "[$€-407] #,##0.00"})
        for row, line in enumerate(lines):
            for column, value in enumerate(line):
                if isinstance(value, date):
                    sheet.write_datetime(row, column, value, day)
                else:
                    sheet.write(row, column, value, euro if isinstance(value, float) else None)
    return out.getvalue()


def as_inline_xlsx(lines: Table) -> bytes:
    """As openpyxl writes it: texts in the cells."""
    import openpyxl

    book = openpyxl.Workbook(write_only=True)
    sheet = book.create_sheet("Sheet")
    for line in lines:
        sheet.append(line)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def as_xls(lines: Table) -> bytes:
    import xlwt

    book = xlwt.Workbook()
    sheet, day = book.add_sheet("Sheet"), xlwt.easyxf(num_format_str="yyyy-mm-dd")
    for row, line in enumerate(lines[:65_000]):
        for column, value in enumerate(line):
            sheet.write(row, column, value, day) if isinstance(value, date) else sheet.write(row, column, value)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def as_ods(lines: Table) -> bytes:
    def cell(value: str | float | date) -> str:
        if isinstance(value, str):
            return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'
        kind, name = ("float", "value") if isinstance(value, float) else ("date", "date-value")
        said = f'office:value-type="{kind}" office:{name}="{value}"'
        return f"<table:table-cell {said}><text:p>{value}</text:p></table:table-cell>"

    rows = "".join(f"<table:table-row>{''.join(map(cell, line))}</table:table-row>" for line in lines)
    names = " ".join(f'xmlns:{name}="{name}"' for name in ("office", "table", "text"))
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(
            "content.xml",
            f"<office:document-content {names}><office:body><office:spreadsheet><table:table>{rows}</table:table>"
            "</office:spreadsheet></office:body></office:document-content>",
        )
    return out.getvalue()


def as_csv(lines: Table) -> bytes:
    out = io.StringIO()
    csv.writer(out, delimiter=";").writerows(lines)
    return out.getvalue().encode("utf-8-sig")


FORMATS: dict[str, tuple[str, Callable[[Table], bytes]]] = {
    "xlsx": ("a.xlsx", as_xlsx),
    "inline": ("b.xlsx", as_inline_xlsx),
    "xls": ("c.xls", as_xls),
    "ods": ("d.ods", as_ods),
    "csv": ("e.csv", as_csv),
}


def seconds(work: Callable[[], object]) -> float:
    began = time.process_time()
    work()
    return time.process_time() - began


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rows", type=int, default=20_000)
    parser.add_argument("--formats", default=",".join(FORMATS))
    parser.add_argument("--pandas", action="store_true", help="also time pandas.read_excel(engine='openpyxl')")
    chosen = parser.parse_args()
    lines = table(chosen.rows)
    with tempfile.TemporaryDirectory() as folder:
        paths = {}
        for name in chosen.formats.split(","):
            file, made = FORMATS[name]
            paths[name] = Path(folder) / file
            paths[name].write_bytes(made(lines))
        del lines
        for name, path in paths.items():
            opened = seconds(lambda path=path: open_workbook(path))  # type: ignore[misc]
            grid = open_workbook(path).grids[0]
            walked = seconds(lambda grid=grid: sum(1 for _ in grid.cells.values()))  # type: ignore[misc]
            used = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
            print(f"{name:7} {path.stat().st_size / 1e6:6.1f} MB, {len(grid.cells):9,} cells: ", end="")
            print(f"opened in {opened:.2f} s, every cell made in {walked:.2f} s, {used:.0f} MB so far", flush=True)
            if chosen.pandas and path.suffix == ".xlsx":
                import pandas

                taken = seconds(lambda path=path: pandas.read_excel(path, engine="openpyxl"))  # type: ignore[misc]
                print(f"        pandas with openpyxl: {taken:.2f} s", flush=True)


if __name__ == "__main__":
    main()
