"""Read a file in another process, within bounds: whatever the file does, the program lives on."""

import pickle
import queue
import struct
import time
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any, Protocol, TypeVar

from tracker.intake.children import Frames, give_back, take
from tracker.intake.grid import Unreadable
from tracker.intake.quick_pickle import unpacked

Result = TypeVar("Result")

_POLL_S = 0.05
_PATIENCE = 4
"""On a busy machine a process gets a fraction of the clock's time, and that is not the file's fault: where the system
can count the processor's time, it alone ends a reading early; the clock gives it this many times as long."""
_FLOAT = struct.Struct("<d")


class Flag(Protocol):
    """What says that the user has cancelled: a threading.Event will do."""

    def is_set(self) -> bool: ...


class Cancelled(Exception):
    """The user stopped the reading."""


class ChildFailure(Exception):
    """What went wrong inside the child, as its own traceback: chained to the Unreadable that the user is shown."""


def deadline_s(path: Path) -> float:
    """Processor time that reading a file may take, in seconds: 5 for a small one, 3 more a megabyte beyond the first.

    Several times what sound files need (measured on our own), so that only a file built to be slow meets it.
    """
    try:
        megabytes = path.stat().st_size / 1_000_000
    except OSError:  # opening it will say what is wrong
        megabytes = 0.0
    return 5.0 + 3.0 * max(0.0, megabytes - 1.0)


def read_in_child(
    path: Path,
    work: Callable[[Path], Result],
    timeout_s: float | None = None,
    memory_mb: int = 600,
    cancelled: Flag | None = None,
    part: Callable[[Any], None] | None = None,
    meanwhile: Callable[[], None] | None = None,
    progress: Callable[[float], None] | None = None,
) -> Result:
    """Run `work(path)` in a child process and return its result.

    `work` is a module-level function (or functools.partial of one) and it and its result can be pickled. Inside it
    child_side.hand_over(piece) reaches `part` and child_side.tell(share) `progress`, both called in this thread, and
    child_side.allow(seconds) moves the deadline.
    `meanwhile` is called once the child is at work, so that what comes after the reading can be loaded beside it;
    `cancelled` is not looked at before it returns.

    Raises Unreadable with one sentence when the file is unreadable, takes more than `timeout_s` seconds of processor
    time (deadline_s by default) or a few times as many by the clock, takes more than `memory_mb` megabytes beyond the
    interpreter's own (both enforced where the system can), or ends the child; Cancelled when `cancelled` is set.
    """
    timeout_s = deadline_s(path) if timeout_s is None else timeout_s
    task = pickle.dumps((work, path, memory_mb, timeout_s))
    child = take()
    try:
        frames = child.begin(task)
        if meanwhile is not None:
            meanwhile()
        kind, body = _outcome(frames, timeout_s, cancelled, {b"H": _unpacking(part), b"P": _counting(progress)})
    finally:
        give_back(child)
    if kind == b"R":
        result: Result = unpacked(body)
        return result
    raise _unreadable(kind, body, path.name, memory_mb)


def _unpacking(part: Callable[[Any], None] | None) -> Callable[[bytes], None] | None:
    return None if part is None else lambda body: part(unpacked(body))


def _counting(progress: Callable[[float], None] | None) -> Callable[[bytes], None] | None:
    return None if progress is None else lambda body: progress(_FLOAT.unpack(body)[0])


def _outcome(
    frames: Frames,
    allowed_s: float,
    cancelled: Flag | None,
    heard: Mapping[bytes, Callable[[bytes], None] | None],
) -> tuple[bytes, bytes]:
    """The child's last frame, or one in its stead: T for too late, with the seconds it was allowed, X for none.

    `heard`: who hears the bodies of the frames of one kind that come before it.
    """
    deadline = time.monotonic() + _PATIENCE * allowed_s
    while True:
        try:
            kind, body = frames.get(timeout=_POLL_S)
        except queue.Empty:
            if cancelled is not None and cancelled.is_set():
                raise Cancelled from None
            if time.monotonic() > deadline:
                return b"T", _FLOAT.pack(allowed_s)
            continue
        if kind == b"A":
            (allowed_s,) = _FLOAT.unpack(body)
            deadline = time.monotonic() + _PATIENCE * allowed_s
        elif kind == b"T":
            return kind, _FLOAT.pack(allowed_s)
        elif kind not in heard:
            return kind, body
        elif (hear := heard[kind]) is not None:
            hear(body)


def _unreadable(kind: bytes, body: bytes, name: str, memory_mb: int) -> Exception:
    """The one sentence for a reading without a result."""
    if kind == b"U":
        sentence, cause = pickle.loads(body)
        return _because(Unreadable(sentence), cause)
    alone = "save the price list alone in a file of its own and import that"
    if kind == b"T":
        (allowed_s,) = _FLOAT.unpack(body)
        return Unreadable(f"{name} was not read within {allowed_s:.3g} seconds and was stopped; {alone}.")
    if kind == b"M":
        return Unreadable(f"{name} needs more than {memory_mb} MB of memory to read and was stopped; {alone}.")
    again = "open it in a spreadsheet program, save it as a new .xlsx and import that"
    return _because(
        Unreadable(f"{name} could not be read, reading it broke off; {again}."), body.decode("utf-8", "replace")
    )


def _because(error: Unreadable, cause: str) -> Unreadable:
    if cause:
        error.__cause__ = ChildFailure(cause)
    return error
