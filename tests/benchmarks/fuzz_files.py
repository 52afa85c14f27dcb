"""Open thousands of spoiled workbooks and count what happens.

    python tests/benchmarks/fuzz_files.py --inputs 10000 --seed 1 [--understand]

Every input must be read or refused with one sentence, within the seconds and megabytes the project promises. With
`--understand` what opens is also read into offers, and every accepted price must stand in the cell it names. Input N of
a seed is always the same bytes: `--only N --keep FOLDER` writes it for a look. Work goes to child processes; one that
dies is counted as a crash and its inputs are tried again one by one to find which.
"""

import argparse
import random
import resource
import signal
import sys
import tempfile
import time
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from dataclasses import dataclass
from decimal import Decimal
from functools import cache
from multiprocessing import get_context
from pathlib import Path
from traceback import extract_tb

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.benchmarks.fuzz_mutations import mutated  # noqa: E402
from tests.corpus.registry import corpus  # noqa: E402
from tests.intake.files.books import zipped  # noqa: E402
from tests.intake.files.test_xlsb import parts as xlsb_parts  # noqa: E402
from tracker.intake.files import open_workbook  # noqa: E402
from tracker.intake.files.places import place  # noqa: E402
from tracker.intake.grid import CellFault, Unreadable, Workbook  # noqa: E402
from tracker.intake.read import read_workbook  # noqa: E402
from tracker.trade.offer import Answers, State  # noqa: E402

LIMIT_S = 5.0
LIMIT_MB = 500
BATCH = 50
_LARGEST_SEED = 300_000


@dataclass(frozen=True)
class Outcome:
    """What became of one input."""

    number: int
    name: str
    kind: str
    seconds: float
    text: str = ""


class TooSlow(Exception):
    pass


@cache
def seeds() -> tuple[tuple[str, bytes], ...]:
    """Sound workbooks of every format: the corpus, the demo's sheets and a binary workbook."""
    made = [(file.name, file.data) for file in corpus(1, "*", 1)]
    demo = [(path.name, path.read_bytes()) for path in sorted((ROOT / "sample_quotes").glob("*.*"))]
    binary = [(f"binary{copy}.xlsb", zipped(xlsb_parts())) for copy in range(6)]
    return tuple((name, data) for name, data in (*made, *demo, *binary) if len(data) < _LARGEST_SEED)


def input_of(seed: int, number: int) -> tuple[str, bytes]:
    """The spoiled file of a number: its seed's name and its bytes."""
    chance = random.Random(f"{seed}:{number}")
    name, data = chance.choice(seeds())
    return name, mutated(data, chance)


def tried(seed: int, numbers: range, folder: str, understand: bool) -> list[Outcome]:
    """Open each input in this process, with an alarm for those that take too long."""
    signal.signal(signal.SIGALRM, _too_slow)
    return [_tried(seed, number, Path(folder), understand) for number in numbers]


def _tried(seed: int, number: int, folder: Path, understand: bool) -> Outcome:
    name, data = input_of(seed, number)
    path = folder / f"{number}{Path(name).suffix}"
    path.write_bytes(data)
    began = time.perf_counter()
    signal.setitimer(signal.ITIMER_REAL, LIMIT_S)
    try:
        book = open_workbook(path)
        wrong = wrong_in(book) or (wrong_in_offers(book) if understand else "")
        kind, text = ("wrong grid", wrong) if wrong else ("read", "")
    except Unreadable as error:
        text = str(error)
        kind = "unreadable" if is_one_sentence(text, path.name) else "bad sentence"
    except TooSlow:
        kind, text = "hang", ""
    except BaseException as error:
        places = [f"{Path(frame.filename).name}:{frame.lineno}" for frame in extract_tb(error.__traceback__)[-3:]]
        kind, text = "crash", f"{error!r} at {' > '.join(places)}"
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        path.unlink()
    return Outcome(number, name, kind, time.perf_counter() - began, text)


def _too_slow(*_: object) -> None:
    raise TooSlow


def is_one_sentence(text: str, name: str) -> bool:
    return text.startswith(name) and text.endswith(".") and "\n" not in text and text.removesuffix(".").count(". ") == 0


def wrong_in(book: Workbook) -> str:
    """What a grid promises and this one breaks, '' for nothing."""
    for grid in book.grids:
        for (row, column), cell in grid.cells.items():
            if (cell.row, cell.column) != (row, column) or not (0 <= row < 1_048_576 and 0 <= column < 16_384):
                return f"a cell at {row}, {column}"
            if (cell.value is None) != (cell.fault is not None) or not isinstance(cell.fault, CellFault | None):
                return f"a fault at {row}, {column}"
            if "\0" in cell.text or not cell.text.strip():
                return f"text at {row}, {column}"
        if (grid.height, grid.width) != _reach(grid.cells):
            return "the extent"
    return ""


def wrong_in_offers(book: Workbook) -> str:
    """An accepted price that does not stand in its cell, '' for none."""
    grids = {grid.sheet: grid for grid in book.grids}
    for line in read_workbook(book, Answers()).lines:
        if line.state is not State.ACCEPTED:
            continue
        source, price = line.offer.source, line.offer.price
        where = place(source.cell)
        cell = grids[source.sheet].cell(*where) if where is not None and source.sheet in grids else None
        if cell is None or cell.fault is not None or price is None or price <= 0:
            return f"an accepted price at {source.sheet} {source.cell}: {price}"
        if _digits(price) not in _digits_of(cell.text):
            return f"{price} is accepted where {source.sheet} {source.cell} says {cell.text!r}"
    return ""


def _digits(price: Decimal) -> str:
    """The significant digits of a price; cents given in the main unit keep theirs."""
    return format(price, "f").replace(".", "").strip("0")


def _digits_of(text: str) -> str:
    return "".join(sign for sign in text if sign.isdigit())


def _reach(cells: object) -> tuple[int, int]:
    places = list(cells)  # type: ignore[call-overload]
    return 1 + max((row for row, _ in places), default=-1), 1 + max((column for _, column in places), default=-1)


def run(seed: int, count: int, jobs: int, understand: bool = False) -> list[Outcome]:
    """Every input's outcome, in batches over child processes."""
    batches = [range(first, min(first + BATCH, count)) for first in range(0, count, BATCH)]
    outcomes: list[Outcome] = []
    with tempfile.TemporaryDirectory() as folder:
        while batches:
            batches = _run_until_broken(seed, batches, jobs, folder, outcomes, understand)
    return outcomes


def _run_until_broken(
    seed: int, batches: list[range], jobs: int, folder: str, outcomes: list[Outcome], understand: bool
) -> list[range]:
    """Run batches until a child dies; the answer is what is still to do, the suspects one by one."""
    with ProcessPoolExecutor(jobs, get_context("spawn"), initializer=_bound_memory) as pool:
        futures = {pool.submit(tried, seed, batch, folder, understand): batch for batch in batches}
        left: list[range] = []
        for future, batch in futures.items():
            try:
                outcomes.extend(future.result())
            except BrokenProcessPool:
                if len(batch) == 1 and not left:
                    outcomes.append(
                        Outcome(batch.start, input_of(seed, batch.start)[0], "crash", 0.0, "the process died")
                    )
                else:
                    left.extend(range(number, number + 1) for number in batch)
    return left


def _bound_memory() -> None:
    room = LIMIT_MB * 1_000_000 + 300_000_000  # the interpreter and the seeds themselves take the second figure
    resource.setrlimit(resource.RLIMIT_AS, (room, room))


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--inputs", type=int, default=10_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--understand", action="store_true", help="read offers from what opens")
    parser.add_argument("--only", type=int, help="try this one input in this process and show its traceback")
    parser.add_argument("--keep", type=Path, help="with --only: write the input into this folder")
    chosen = parser.parse_args()
    if chosen.only is not None:
        return _one(chosen.seed, chosen.only, chosen.keep or Path(tempfile.gettempdir()))
    began = time.perf_counter()
    outcomes = run(chosen.seed, chosen.inputs, chosen.jobs, chosen.understand)
    counts = Counter(outcome.kind for outcome in outcomes)
    slowest = max(outcomes, key=lambda outcome: outcome.seconds)
    print(f"{len(outcomes)} inputs, seed {chosen.seed}, {time.perf_counter() - began:.0f} s: {dict(counts)}")
    print(f"slowest: input {slowest.number} ({slowest.name}), {slowest.seconds:.2f} s")
    for outcome in [outcome for outcome in outcomes if outcome.kind not in ("read", "unreadable")][:40]:
        print(f"{outcome.kind}: input {outcome.number} ({outcome.name}) {outcome.text[:200]}")
    return 0 if set(counts) <= {"read", "unreadable"} else 1


def _one(seed: int, number: int, folder: Path) -> int:
    name, data = input_of(seed, number)
    path = folder / f"{number}_{name}"
    path.write_bytes(data)
    book = open_workbook(path)
    print(
        path,
        book.kind,
        wrong_in(book) or wrong_in_offers(book) or "sound",
        [(grid.sheet, grid.height, grid.width) for grid in book.grids],
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
