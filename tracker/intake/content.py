"""The bytes of a vendor's file, as far as a price sheet can be one at all."""

from pathlib import Path
from stat import S_ISDIR, S_ISREG

from tracker.intake.grid import Unreadable

LARGEST_FILE = 150_000_000


def content_of(path: Path) -> bytes:
    """A whole file of at most LARGEST_FILE bytes.

    Raises Unreadable with one sentence for a folder, for what never ends or waits for another program (a device, a
    pipe), for a larger file, which is not read at all, and for one that can't be opened.
    """
    name = path.name
    try:
        found = path.stat()
        if S_ISDIR(found.st_mode):
            raise Unreadable(f"{name} is a folder; choose the price sheets inside it.")
        if not S_ISREG(found.st_mode):
            raise Unreadable(f"{name} is not a file; save the price sheet as one and choose that.")
        if found.st_size > LARGEST_FILE:
            raise Unreadable(
                f"{name} is {found.st_size / 1_000_000:,.0f} MB, more than the {LARGEST_FILE // 1_000_000} MB that are "
                "read; save the price list alone in a file of its own."
            )
        return path.read_bytes()
    except FileNotFoundError as error:
        raise Unreadable(f"{name} is not there; check the name and the folder.") from error
    except OSError as error:
        raise Unreadable(
            f"{name} could not be opened ({error.strerror}); close it elsewhere or check that you may read it."
        ) from error
