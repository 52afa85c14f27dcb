"""demo: a fresh demo database, then the window on it, or without a display pictures, report and summary."""

import argparse
from pathlib import Path

from tracker.commands.outcome import Outcome, PicturesWanted, WindowWanted
from tracker.desk.demo import default_folder, fresh_demo


def describe(parser: argparse.ArgumentParser) -> None:
    """Where it goes, and whether a window is wanted."""
    parser.add_argument("--folder", metavar="DIR", type=Path, help="where the demo goes; else your data folder")
    parser.add_argument(
        "--headless", action="store_true", help="no window: leave pictures, report and summary in the folder"
    )


def run(options: argparse.Namespace) -> Outcome:
    """Makes the demo; what is shown of it is left to whoever knows the window."""
    folder = (options.folder or default_folder()).expanduser()
    database = fresh_demo(folder)
    pictures = PicturesWanted(database, folder)
    return pictures if options.headless else WindowWanted(database, pictures)
