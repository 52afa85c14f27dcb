"""Rewrites sample_quotes/, or the folder named."""

import sys
from pathlib import Path

from tests.demo_sheets import american, european, recycled
from tracker.trade.resources import sample_quotes

WRITERS = (
    american.brackendell,
    american.pell_hollow,
    american.kestrelby,
    american.fennimoor,
    american.tresk_ambler,
    american.halvern,
    american.drummelow,
    recycled.cindervale,
    european.lauterfels,
    european.valbrune,
    european.myrtorp,
    european.ullingstow,
)


def write_all(folder: Path) -> None:
    """Every vendor's files into a folder that exists."""
    for write in WRITERS:
        write(folder)


if __name__ == "__main__":
    target = Path(sys.argv[1]) if len(sys.argv) > 1 else sample_quotes()
    target.mkdir(parents=True, exist_ok=True)
    write_all(target)
    print(f"{len(list(target.iterdir()))} files in {target}")
