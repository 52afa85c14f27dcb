"""What is made while no garbage is looked for is not looked through right afterwards either."""

import gc
import weakref

import pytest

from tracker.desk.collecting import let_go, no_collecting


class _Made:
    others: list["_Made"] | None = None


def generation_of(wanted: object) -> int:
    return next(old for old in range(3) if any(each is wanted for each in gc.get_objects(generation=old)))


def test_many_things_are_old_at_once() -> None:
    with no_collecting():
        made = [[number] for number in range(60_000)]
    assert gc.isenabled()
    assert generation_of(made) == 2


def test_garbage_among_them_is_still_found() -> None:
    with no_collecting():
        made = [_Made() for _ in range(60_000)]
        made[0].others = made
    first = weakref.ref(made[0])
    del made
    gc.collect()
    assert first() is None


@pytest.mark.parametrize("was_on", [True, False])
def test_the_search_is_as_it_was(was_on: bool) -> None:
    if not was_on:
        gc.disable()
    try:
        with no_collecting():
            assert not gc.isenabled()
        assert gc.isenabled() is was_on
    finally:
        gc.enable()


def test_a_long_list_is_let_go_to_its_last_piece():
    rows = [{"number": number} for number in range(2_500)]
    let_go(rows)
    assert rows == []
