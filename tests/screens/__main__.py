"""python -m tests.screens --out FOLDER: every screen in its main states, drawn offscreen, to be looked at."""

import argparse
import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"


def main(arguments: list[str]) -> int:
    """Draws what the options ask for and names the folder."""
    parser = argparse.ArgumentParser(prog="python -m tests.screens", description=__doc__)
    parser.add_argument("--out", type=Path, required=True, help="folder for the pictures")
    parser.add_argument("--only", default="", help="only pictures whose name holds this")
    options = parser.parse_args(arguments)
    from tests.screens.states import pictures

    options.out.mkdir(parents=True, exist_ok=True)
    drawn = list(_draw(options.out, options.only, pictures))
    print(f"{len(drawn)} pictures in {options.out}")
    return 0


def _draw(folder: Path, only: str, pictures: object) -> Iterator[Path]:
    with tempfile.TemporaryDirectory() as work:
        yield from pictures(folder, Path(work), only)  # type: ignore[operator]


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
