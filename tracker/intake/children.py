"""The processes in which files are read, and those of them that wait for the next file.

A plain child interpreter serves, not multiprocessing: it never imports the program's own main module, starts in half a
second, and is safe to start from a process that has windows and threads (a fork is not). One that read a small file in
good order waits for the next, so that this half second is not paid for each; any other is ended with its file.
"""

import json
import queue
import struct
import subprocess
import sys
import threading
from typing import IO

Frames = queue.SimpleQueue[tuple[bytes, bytes]]
"""What a child says of its task, as child_side tells; X where it goes without a last word."""

_START = "import json, sys; sys.path[:] = json.loads(sys.argv[1]); from tracker.intake.child_side import serve; serve()"
_FRAME = struct.Struct("<cQ")
_LAST = b"RUMTE"


class Child:
    """A process that does a task, and another after it where it says so. `is_free`: nothing is left of the last one."""

    def __init__(self, *warm: str) -> None:
        self.is_free = True
        self.process = subprocess.Popen(
            [sys.executable, "-I", "-c", _START, json.dumps(sys.path), *warm],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),  # Windows would flash a console over the window
        )
        self._exchange: threading.Thread | None = None

    def begin(self, task: bytes) -> Frames:
        """Hands over a pickled task; what is said of it comes in the queue that is given."""
        frames: Frames = queue.SimpleQueue()
        self.is_free = False
        self._exchange = threading.Thread(target=self._pass_on, args=(task, frames), daemon=True)
        self._exchange.start()
        return frames

    def is_alive(self) -> bool:
        return self.process.poll() is None

    def end(self) -> None:
        self.process.kill()
        if self._exchange is not None:
            self._exchange.join()
        self.process.wait()
        _close(self.process.stdin)
        _close(self.process.stdout)

    def _pass_on(self, task: bytes, frames: Frames) -> None:
        into, out = self.process.stdin, self.process.stdout
        assert into is not None
        assert out is not None
        stays = False
        try:
            into.write(task)
            into.flush()
            while len(head := out.read(_FRAME.size)) == _FRAME.size:
                kind, size = _FRAME.unpack(head)
                body = out.read(size)
                if len(body) < size:
                    break
                if kind == b"S":
                    stays = True
                    continue
                self.is_free = stays and kind in _LAST
                frames.put((kind, body))
                if kind in _LAST:
                    return
        except (OSError, ValueError):
            pass  # the child is gone; what follows says so
        frames.put((b"X", b""))


_MOST = 2
"""Children that wait at once: one that read a file, and one started meanwhile in case the first would not come back."""


class _Waiting:
    """The children that wait for a task; none where nobody wants any."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._wanted = False
        self._children: list[Child] = []

    def fill(self, warm: str) -> None:
        with self._lock:
            self._wanted = True
            self._clear_away()
            if not self._children:
                self._children.append(Child(warm))

    def take(self) -> Child | None:
        """One that has read before, if there is one: it is ready for certain."""
        with self._lock:
            self._clear_away()
            return self._children.pop(0) if self._children else None

    def put_back(self, child: Child) -> bool:
        with self._lock:
            is_room = self._wanted and len(self._children) < _MOST
            if is_room:
                self._children.insert(0, child)
            return is_room

    def empty(self) -> None:
        with self._lock:
            self._wanted = False
            while self._children:
                self._children.pop().end()

    def _clear_away(self) -> None:
        """Lets go of those that ended meanwhile."""
        for child in [each for each in self._children if not each.is_alive()]:
            self._children.remove(child)
            child.end()


_waiting = _Waiting()


def keep_ready(warm: str) -> None:
    """Start a child ahead of need, unless one waits already: the next file then is read without waiting for its start.
    From then on those that read a file in good order wait, too.

    `warm` names a module of which the child calls warm() meanwhile, so that what every file needs is there. They end
    with this process, or when dismissed.
    """
    _waiting.fill(warm)


def dismiss() -> None:
    """End the children that wait, and keep none from now on."""
    _waiting.empty()


def take() -> Child:
    """A child that waits, or else a new one."""
    return _waiting.take() or Child()


def give_back(child: Child) -> None:
    """Lets a child wait again where it is free for that, and ends it where not."""
    if not (child.is_free and _waiting.put_back(child)):
        child.end()


def _close(stream: IO[bytes] | None) -> None:
    """Close a pipe whose other end may be gone with something left to write."""
    if stream is not None:
        try:
            stream.close()
        except OSError:
            return
