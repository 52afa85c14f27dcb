"""Pausing Python's search for garbage while thousands of offers are made at once."""

import gc
from collections.abc import Iterator
from contextlib import contextmanager

_MANY = 50_000


@contextmanager
def no_collecting() -> Iterator[None]:
    """None of what is made meanwhile is garbage, yet the collector would look through all of it again and again: half
    of the time that reading a long sheet takes (measured on 20,000 lines)."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            if gc.get_count()[0] > _MANY:
                _make_old()
            gc.enable()


def _make_old() -> None:
    """All that there is goes to the oldest generation without being looked through: as it is, the next two collections
    would walk every new object, and whatever the program then does, its window stands still for each."""
    gc.freeze()
    gc.unfreeze()
