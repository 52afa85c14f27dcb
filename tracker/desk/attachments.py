"""Photographs and data sheets kept with a sample: in the database, by their hash, up to a size."""

from __future__ import annotations

from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_numbers import no_such_sample
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.attachments import Attachment as Attachment

LARGEST_BYTES = 20 * 1024 * 1024
"""A photograph or a data sheet; larger ones would make every backup slow. Common practice, no source."""


def attach(desk: Desk, number: int, path: Path) -> Edit:
    """Keeps a file with a sample. Trouble for one that is empty, too large, there already, or can't be read."""
    from tracker.store import attachments as kept
    from tracker.store import samples

    content = _content(path)
    text = f"kept {path.name} with sample {number}"
    with writing(desk, text) as pen:
        try:
            samples.get(pen.connection, number)
        except KeyError:
            raise no_such_sample(number) from None
        digest = sha256(content).hexdigest()
        same = next((each for each in kept.listing(pen.connection, number) if each.sha256 == digest), None)
        if same is not None:
            raise Trouble(f"{path.name} is kept with sample {number} already, as {same.name}.")
        change = kept.add(pen, number, path.name, content)
    return Edit(text, (change,))


def take_off(desk: Desk, number: int, name: str) -> Edit:
    """Takes a file off its sample; undoing brings it back. Trouble where it has none of that name."""
    from tracker.store import attachments as kept

    found = next((each for each in attachments(desk, number) if each.name == name), None)
    if found is None:
        raise Trouble(f"Sample {number} has no file {name}.")
    text = f"took {name} off sample {number}"
    with writing(desk, text) as pen:
        change = kept.withdraw(pen, found.id)
    return Edit(text, (change,))


def attachments(desk: Desk, number: int) -> tuple[Attachment, ...]:
    """The files with one sample, as they were added."""
    from tracker.store import attachments as kept

    with desk.store.reading() as connection:
        return kept.listing(connection, number)


def content(desk: Desk, attachment_id: int) -> bytes:
    """A kept file's bytes. Trouble where it is gone or no longer what was kept."""
    from tracker.store import attachments as kept

    with desk.store.reading() as connection:
        try:
            found, digest = kept.content(connection, attachment_id)
        except KeyError:
            raise Trouble("That file is not kept here.") from None
    if sha256(found).hexdigest() != digest:
        raise Trouble("That file is no longer as it was kept: the database is damaged, so restore a backup.")
    return found


def save_copy(desk: Desk, attachment_id: int, path: Path) -> None:
    """Writes a kept file out. Trouble where it can't be written."""
    found = content(desk, attachment_id)
    try:
        path.write_bytes(found)
    except OSError as problem:
        raise Trouble(f"{path} can't be written ({problem.strerror}): choose another place.") from problem


def _content(path: Path) -> bytes:
    try:
        size = path.stat().st_size
        if size > LARGEST_BYTES:
            raise Trouble(
                f"{path.name} is {size / 1024 / 1024:.0f} MB; at most {LARGEST_BYTES // 1024 // 1024} MB are kept: "
                "make the photograph smaller."
            )
        found = path.read_bytes()
    except OSError as problem:
        raise Trouble(f"{path} can't be read ({problem.strerror}).") from problem
    if not found:
        raise Trouble(f"{path.name} is empty, so there is nothing to keep.")
    return found
