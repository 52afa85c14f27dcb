"""The inside of a child process (children.py): for each task limits first, then the work, then one last frame.

A frame is one letter, a length and a body: A allowed seconds more, P how much is done, H a pickled piece handed over
ahead of the result, R the pickled result, U an Unreadable (sentence and cause), M out of memory, T out of processor
time, E any other failure with its traceback. S, ahead of the last frame, says that the child stays for another task.
"""

import contextlib
import gc
import importlib
import math
import os
import pickle
import signal
import struct
import sys
import time
import traceback
from pathlib import Path
from typing import Any, BinaryIO, NoReturn

from tracker.intake.grid import Unreadable
from tracker.intake.quick_pickle import packed

_FRAME = struct.Struct("<cQ")
_FLOAT = struct.Struct("<d")
_STAYS_S, _STAYS_BYTES = 2.0, 100_000_000
"""A child that has worked this long on files in all, or has grown by so much, ends with its last file: nothing of a
large one is left to the next, and no child grows old."""
_TOLD_EVERY_S = 0.1
_out: BinaryIO | None = None
_told_at = 0.0


class _OutOfTime(BaseException):
    """The processor time allowed is used up. Not an Exception, so that no reader takes it for a damaged file."""


def hand_over(piece: object) -> None:
    """Give the parent a piece of a long result, which need not be held here any longer; nothing outside a child."""
    if _out is not None:
        body = packed(piece)
        counting = _stop_counting()  # the end of time must not break a frame; it is signalled again a second later
        _send(_out, b"H", body)
        _count_again(counting)


def allow(seconds: float) -> None:
    """Move the deadline: `seconds` from now are allowed once it is known how much there is to do.

    Does nothing outside a child.
    """
    if _out is not None:
        _limit_time(seconds)
        _send(_out, b"A", _FLOAT.pack(seconds))


def tell(share: float) -> None:
    """Say how much of the task is done, from 0 to 1; said a few times a second at the most, and not outside a child."""
    global _told_at
    if _out is not None and time.monotonic() - _told_at >= _TOLD_EVERY_S:
        _told_at = time.monotonic()
        _send(_out, b"P", _FLOAT.pack(share))


def serve() -> NoReturn:
    """Take tasks from standard input and do each within its limits, answering on what was standard output.

    Ends when no more come, and after a task that was long or did not end well.
    """
    global _out
    _out = _private_output()
    gc.disable()  # looking for cycles among a million cells takes a fifth of the time; between files it takes none
    for module in sys.argv[2:]:
        _make_ready(module)
    gc.freeze()
    began, space = time.process_time(), _address_space()
    while _answered(_out, began + _STAYS_S, space + _STAYS_BYTES):
        gc.collect()
    os._exit(0)  # the result is out; taking down what a big file built would only cost time


def _answered(out: BinaryIO, latest: float, largest: int) -> bool:
    """Do the next task, if there is one; tells whether to wait for another."""
    try:
        work, path, memory_mb, timeout_s = pickle.load(sys.stdin.buffer)
    except EOFError:  # nobody wants this child any more
        return False
    _limit_memory(memory_mb)
    _limit_time(timeout_s)
    try:
        kind, body = b"R", packed(work(path))
    except Unreadable as error:
        cause = "" if error.__cause__ is None else "".join(traceback.format_exception(error.__cause__))
        kind, body = b"U", pickle.dumps((str(error), cause))
    except MemoryError:
        kind, body = b"M", b""
    except _OutOfTime:
        kind, body = b"T", b""
    except Exception:  # our own mistake: it must not pass for the file's, so the traceback goes along
        kind, body = b"E", traceback.format_exc().encode("utf-8", "replace")
    _stop_counting()
    stays = kind in b"RU" and time.process_time() < latest and _address_space() < largest
    if stays:
        _send(out, b"S", b"")
    _send(out, kind, body)
    return stays


def _make_ready(module: str) -> None:
    """Started ahead of need: load what every file needs. What fails here will fail, and be told, where it matters."""
    with contextlib.suppress(Exception):
        importlib.import_module(module).warm()


def _private_output() -> BinaryIO:
    """The pipe to the parent under a number of its own, so that a stray print can't break a frame."""
    pipe = os.dup(1)
    os.dup2(2, 1)
    return os.fdopen(pipe, "wb")


def _send(out: BinaryIO, kind: bytes, body: bytes) -> None:
    out.write(_FRAME.pack(kind, len(body)))
    out.write(body)
    out.flush()


def _limit_memory(memory_mb: int) -> None:
    """Bound memory where the system can, beyond what the interpreter has already."""
    _limit("RLIMIT_CORE", 0)
    _limit("RLIMIT_AS", _address_space() + memory_mb * 1_000_000)


def _limit_time(seconds: float) -> None:
    """Bound processor time from now on where the system can count it; elsewhere the parent's clock alone holds."""
    if hasattr(signal, "SIGXCPU"):
        _limit("RLIMIT_CPU", math.ceil(time.process_time() + seconds))
        signal.signal(signal.SIGXCPU, _out_of_time)


def _stop_counting() -> Any:
    """Let the end of processor time pass; gives what was to happen then."""
    return signal.signal(signal.SIGXCPU, signal.SIG_IGN) if hasattr(signal, "SIGXCPU") else None


def _count_again(counting: Any) -> None:
    if counting is not None:
        signal.signal(signal.SIGXCPU, counting)


def _out_of_time(*_: object) -> NoReturn:
    _stop_counting()  # it would come again every second
    raise _OutOfTime


def _limit(what: str, bound: int) -> None:
    try:
        import resource
    except ImportError:  # Windows: the parent's deadline alone holds
        return
    kind = getattr(resource, what)
    try:
        _, hard = resource.getrlimit(kind)
        resource.setrlimit(kind, (bound if hard == resource.RLIM_INFINITY else min(bound, hard), hard))
    except (ValueError, OSError):  # some systems refuse one of them
        return


def _address_space() -> int:
    """Bytes of address space already in use, mostly shared libraries; 0 where the system does not say."""
    try:
        pages = int(Path("/proc/self/statm").read_text("ascii").split()[0])
        return pages * os.sysconf("SC_PAGE_SIZE")
    except (OSError, ValueError):
        return 0
