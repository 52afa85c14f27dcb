"""How fast the pictures are drawn and panned with many offers.

    python tests/benchmarks/picture_speed.py --offers 100000

Every picture is drawn on an offscreen window of 1,600 x 1,000 and then panned, one whole repaint a frame. What
counts is the slowest picture: below 30 frames a second panning is no longer smooth. On a machine that is busy with
other work the processor time tells more than the clock.
"""

import argparse
import os
import sys
from pathlib import Path
from statistics import median
from time import perf_counter, process_time

os.environ["QT_QPA_PLATFORM"] = "offscreen"
sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

import numpy as np
from PySide6.QtWidgets import QApplication

from tests.window.fixtures.invented_door import InventedDoor
from tests.window.fixtures.invented_offers import comparison
from tracker.desk.comparison import Per
from tracker.desk.standing import standings
from tracker.window.application import make_application
from tracker.window.look.figures import Units
from tracker.window.look.theme import Theme
from tracker.window.quotes.offer_columns import offers
from tracker.window.quotes.picture_pane import PicturePane
from tracker.window.session import Session
from tracker.window.settings import Settings

KINDS = ("by caliper", "by grade or vendor", "lead time", "over time")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--offers", type=int, default=100_000)
    parser.add_argument("--frames", type=int, default=60)
    chosen = parser.parse_args()
    application = make_application()
    session = Session(InventedDoor(0), Theme(application, "light"), Settings())
    made = comparison(chosen.offers, per=Per.MSF)
    session.comparison = made
    table = offers(made, standings(made), Units.US)
    for grade in ("", "SBS"):
        rows = np.flatnonzero(made.shown if not grade else made.snapshot.grade == made.snapshot.grades.index(grade))
        pane = PicturePane(session)
        pane.resize(1600, 1000)
        pane.show()
        for kind, name in enumerate(KINDS):
            start = perf_counter()
            pane.kinds.button(kind).setChecked(True)
            pane.show_offers(table, rows, rows, grade)
            QApplication.processEvents()
            first = perf_counter() - start
            frames = _frames(pane, chosen.frames)
            wall, own = median(frame[0] for frame in frames), sum(frame[1] for frame in frames) / len(frames)
            print(
                f"{grade or 'all grades':10} {len(rows):>7,} offers, {name:18} first {1000 * first:5.0f} ms; panning "
                f"{1000 * wall:5.1f} ms a frame, {1 / wall:5.1f} a second ({1000 * own:5.1f} ms of processor time)",
                flush=True,
            )
        pane.close()
    session.work.finish()


def _frames(pane: PicturePane, count: int) -> list[tuple[float, float]]:
    """Seconds by the clock and of processor time of each of so many steps of panning sideways, with its repaint."""
    view = pane.plot.getViewBox()
    (left, right), _ = view.viewRange()
    step = (right - left) / 200
    taken = []
    for number in range(count):
        start, used = perf_counter(), process_time()
        view.translateBy(x=step if number % 40 < 20 else -step)
        QApplication.processEvents()
        pane.plot.repaint()
        taken.append((perf_counter() - start, process_time() - used))
    return taken


if __name__ == "__main__":
    main()
