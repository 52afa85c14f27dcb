"""How long the whole `import` process takes on a long sheet, beside pandas merely reading the same file.

    python tests/benchmarks/import_speed.py [--rows 20000] [--runs 5]

Every run is a process of its own, from the start of Python to its end: pandas.read_excel(engine="openpyxl"), a dry run
that prints JSON, and a run that stores into a fresh database and prints JSON. They take turns, so that a busy machine
is busy for all. Seconds are by the clock and of the processor (all processes of a run together); memory is the most
that any one process of a run held.
"""

import argparse
import os
import random
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

_ROOT = Path(__file__).resolve().parents[2]
_HEAD = (
    "Item", "Description", "Grade", "Caliper (pt)", "Basis Wt (lb/MSF)", "Price (USD/short ton)", "Min order (lb)",
    "Lead time", "Valid until", "Roll width", "Core", "Mill", "Remark", "FSC", "Pallets",
)  # fmt: skip
_GRADES = (("SBS C1S", 4.2), ("Coated Unbleached Kraft", 4.1), ("CCNB", 3.9), ("Chipboard (URB)", 3.5))
_ASKED = 3
"""import's exit status where a person is asked something."""


class Run(NamedTuple):
    """Seconds by the clock, seconds of the processor, and megabytes of the largest process."""

    clock: float
    processor: float
    megabytes: float


def write_sheet(path: Path, rows: int) -> None:
    """A vendor's list of 15 columns, the same for the same number of rows."""
    import openpyxl

    chance = random.Random(1)
    book = openpyxl.Workbook(write_only=True)
    sheet = book.create_sheet("List")
    sheet.append(_HEAD)
    for number in range(rows):
        sheet.append(_line(chance, number))
    book.save(path)


def _line(chance: random.Random, number: int) -> tuple[str | float, ...]:
    grade, pounds = chance.choice(_GRADES)
    points, width = chance.choice((12, 14, 16, 18, 20, 24, 28)), chance.choice((36, 40, 42))
    lead = chance.choice(("4-6 wks", "3 weeks", "stock"))
    weight, price = round(points * pounds + chance.random(), 1), round(chance.uniform(700, 1300), 2)
    return (
        f"Q{number:06d}", f"{grade} {points}pt roll {width} in", grade, points, weight, price, 20_000,
        lead, "2027-03-31", width, 3, "M1", "", chance.choice(("yes", "no")), chance.randint(1, 20),
    )  # fmt: skip


def measured(command: list[str], expected: tuple[int, ...]) -> Run:
    """Runs a command to its end; SystemExit with what it said where its status is not an `expected` one."""
    with tempfile.TemporaryFile() as said:
        began = time.perf_counter()
        child = subprocess.Popen(
            command, cwd=_ROOT, stdout=subprocess.DEVNULL, stderr=said, env={**os.environ, "PYTHONPATH": str(_ROOT)}
        )
        _, status, used = os.wait4(child.pid, 0)
        clock = time.perf_counter() - began
        child.returncode = os.waitstatus_to_exitcode(status)
        if child.returncode not in expected:
            said.seek(0)
            sys.exit(f"{' '.join(command)} ended with {child.returncode}:\n{said.read().decode()}")
    return Run(clock, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)


def ways(sheet: Path, folder: Path) -> dict[str, Callable[[], Run]]:
    """What is measured, by name."""

    def pandas() -> Run:
        code = "import sys, pandas; pandas.read_excel(sys.argv[1], engine='openpyxl')"
        return measured([sys.executable, "-c", code, str(sheet)], (0,))

    def importing(*options: str) -> Run:
        database = folder / "fresh.db"
        for part in folder.glob("fresh.db*"):
            part.unlink()
        command = [sys.executable, "-m", "tracker", "import", "--json", "--database", str(database), *options]
        return measured([*command, str(sheet)], (0, _ASKED))

    return {
        "pandas.read_excel": pandas,
        "import --dry-run --json": lambda: importing("--dry-run"),
        "import --json": importing,
    }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rows", type=int, default=20_000)
    parser.add_argument("--runs", type=int, default=5)
    parser.add_argument("--no-pandas", action="store_true", help="leave pandas out: on 200,000 rows it takes a while")
    chosen = parser.parse_args()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        sheet = folder / "list.xlsx"
        write_sheet(sheet, chosen.rows)
        measures = ways(sheet, folder)
        if chosen.no_pandas:
            del measures["pandas.read_excel"]
        runs: dict[str, list[Run]] = {way: [] for way in measures}
        for _ in range(chosen.runs):
            for way, measure in measures.items():
                runs[way].append(measure())
    load = ", ".join(f"{number:.1f}" for number in os.getloadavg())
    print(f"{chosen.rows:,} rows of 15 columns, {chosen.runs} runs each; load of the machine {load}")
    for way, done in runs.items():
        print(f"{way:24} {_spread('clock', [run.clock for run in done])}, ", end="")
        print(f"{_spread('processor', [run.processor for run in done])}, {max(run.megabytes for run in done):.0f} MB")


def _spread(what: str, seconds: list[float]) -> str:
    return f"{what} {min(seconds):.2f} / {statistics.median(seconds):.2f} / {max(seconds):.2f} s"


if __name__ == "__main__":
    main()
