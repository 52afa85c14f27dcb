"""What holds for every test."""

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


@pytest.fixture
def reading_here() -> Iterator[None]:
    """Files are read in this process."""
    with reading_in_this_process():
        yield
