"""Thousands of generated sheets through the reader: python -m tests.benchmarks.corpus_score --count 20

Prints totals by family and every fault asked for. With --resave each spreadsheet is also opened and saved again by
LibreOffice, where it is installed, since many vendors' files come from such a program.
"""

import argparse
import shutil
import subprocess
import tempfile
import time
from collections import defaultdict
from pathlib import Path

from tests.corpus.read import score, score_file
from tests.corpus.registry import Made, corpus
from tests.corpus.scoring import Score

SHOWN = ("lines", "right", "asked", "wrong", "blank", "missed", "phantom", "extra_asked", "crashed", "not_told")
AGAIN_AS = {
    "xlsx": ("xlsx", "ods", "xls"),
    "xls": ("xls", "xlsx"),
    "ods": ("ods", "xlsx"),
    "xlsm": ("xlsx",),
    "xlsb": ("xlsx", "ods"),
}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--count", type=int, default=10, help="files of each family")
    parser.add_argument("--families", default="*")
    parser.add_argument("--faults", type=int, default=0, help="how many faults of each family to print")
    parser.add_argument("--kinds", default="wrong,phantom,crashed,missed,asked,not_told,note,incomplete,extra_asked")
    parser.add_argument("--resave", action="store_true")
    chosen = parser.parse_args()
    started = time.perf_counter()
    with tempfile.TemporaryDirectory() as name:
        made = list(corpus(chosen.seed, chosen.families, chosen.count))
        print(f"{len(made)} files made in {time.perf_counter() - started:.1f} s")
        run = resaved(made, Path(name)) if chosen.resave else as_made(made, Path(name))
        report(run, chosen.faults, chosen.kinds.split(","))


def as_made(made: list[Made], folder: Path) -> dict[str, Score]:
    """The score of each family."""
    families: dict[str, Score] = defaultdict(Score)
    started = time.perf_counter()
    for one in made:
        families[one.plan.family].add(score(one, folder))
    print(f"read in {time.perf_counter() - started:.1f} s")
    return families


def resaved(made: list[Made], folder: Path) -> dict[str, Score]:
    """The score of each family once LibreOffice has saved its files; the target format rotates."""
    program = shutil.which("soffice") or shutil.which("libreoffice")
    if program is None:
        raise SystemExit("--resave needs LibreOffice on the path; run without it to score the files as made.")
    batches: dict[str, list[Made]] = defaultdict(list)
    for index, one in enumerate(item for item in made if item.resave):
        targets = AGAIN_AS[one.name.rpartition(".")[2]]
        batches[targets[index % len(targets)]].append(one)
    families: dict[str, Score] = defaultdict(Score)
    for target, files in batches.items():
        source, out = folder / f"to_{target}", folder / f"as_{target}"
        source.mkdir()
        for one in files:
            (source / one.name).write_bytes(one.data)
        command = [
            program,
            "--headless",
            f"-env:UserInstallation=file://{folder}/profile",
            "--convert-to",
            target,
            "--outdir",
            str(out),
        ]
        subprocess.run([*command, *(str(source / one.name) for one in files)], check=True, capture_output=True)
        for one in files:
            path = out / f"{one.name.rpartition('.')[0]}.{target}"
            families[one.plan.family].add(score_file(path, {**one.truth, "file": path.name}))
    return families


def report(families: dict[str, Score], faults: int, kinds: list[str]) -> None:
    """A line for each family, its faults, and the totals; files of twenty thousand rows are totalled apart."""
    total = Score()
    print(f"{'family':26} " + " ".join(f"{name:>8}" for name in SHOWN))
    for family, result in sorted(families.items()):
        if not family.startswith("bulk"):
            total.add(result)
        print(f"{family:26} " + " ".join(f"{result.counts[name]:>8}" for name in SHOWN))
        for fault in [fault for fault in result.faults if fault.kind in kinds][:faults]:
            print(f"    {fault.kind:11} {fault.cell}: {fault.why}")
    print(f"{'TOTAL':26} " + " ".join(f"{total.counts[name]:>8}" for name in SHOWN))
    shares = f"coverage {total.coverage:.2f} %, completeness {total.completeness:.2f} %, notes {total.notes:.2f} %"
    told = f"unreadable told {total.counts['unreadable_ok']}/{total.counts['unreadable']}"
    print(f"{total.counts['files']} files: {shares}, {told}")


if __name__ == "__main__":
    main()
