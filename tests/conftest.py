"""What holds for every test."""

import gc
import os
from collections.abc import Iterator

import pytest

# Before anything imports PySide6: without a display Qt aborts the whole run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from hypothesis import settings

from tests.reading_here import reading_in_this_process

# A slow machine is no fault of the code, and the first example often pays for an import.
settings.register_profile("tracker", deadline=None)
settings.load_profile("tracker")


def pytest_collection_finish() -> None:
    """What was loaded for twenty thousand tests is no garbage: without this the collector would look through all of it
    every few tests."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 20)


@pytest.fixture
def reading_here() -> Iterator[None]:
    """Files are read in this process."""
    with reading_in_this_process():
        yield
