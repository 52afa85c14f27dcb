"""Vendors' files as they were sent: listed, shown again, withdrawn when they should not have been taken in."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.files import StoredFile as StoredFile
    from tracker.trade.offer import Answers


def files(desk: Desk) -> tuple[StoredFile, ...]:
    """Every kept file, the latest first, with how many offers and held lines it left."""
    from tracker.store import files as kept

    with desk.store.reading() as connection:
        return kept.listing(connection)


def find(desk: Desk, file: int | str) -> StoredFile:
    """The kept file of a number or a sha256. Trouble where there is none."""
    for kept in files(desk):
        if file in (kept.id, kept.sha256):
            return kept
    raise Trouble("That file is not kept in this database, so its sheet can't be shown.")


def content(desk: Desk, file_id: int) -> bytes:
    """The file as the vendor sent it. Trouble where there is none of that id."""
    from tracker.store import files as kept

    with desk.store.reading() as connection:
        try:
            return kept.content(connection, file_id)
        except KeyError:
            raise Trouble(f"No file of number {file_id} is kept here.") from None


def answers(desk: Desk, file_id: int) -> Answers:
    """What a kept file was read with, remembered answers included."""
    from tracker.desk.take_in import answers_kept
    from tracker.store import files as kept

    with desk.store.reading() as connection:
        _, received, settled = kept.answers_of(connection, file_id)
    return answers_kept(settled, received)


def read_anew(desk: Desk, file_id: int, new: Answers, remember: Mapping[str, str] | None = None) -> Answers:
    """Puts a reading with these answers in the place of what is stored of a kept file; gives those it was read with.

    `remember` is kept for the vendor, as storing a file does.
    """
    from tracker.desk.take_in import read_bytes, store

    before, kept = answers(desk, file_id), find(desk, file_id)
    # Without the desk, so that what is remembered now does not come between.
    taken = read_bytes(None, kept.name, content(desk, file_id), new)
    store(desk, taken, remember, anew=True)
    return before


def name_vendor(desk: Desk, file_id: int, vendor: str) -> Edit:
    """Says who sent a file that was taken in without a vendor; its offers then supersede and are superseded as usual.

    Trouble for an empty name, or a file whose vendor is known.
    """
    from tracker.store import files as kept

    name, found = " ".join(vendor.split()), find(desk, file_id)
    if not name:
        raise Trouble("Say the vendor's name.")
    if found.vendor is not None:
        raise Trouble(f"{found.name} is {found.vendor}'s already.")
    text = f"named {name} as the vendor of {found.name}"
    with writing(desk, text) as pen:
        changes = kept.name_vendor(pen, file_id, name)
    return Edit(text, changes)


def withdraw(desk: Desk, *file_ids: int) -> Edit:
    """The offers and questions of files no longer count anywhere; the files stay, and undoing brings them back."""
    from tracker.store.tables import price_file

    names = {each.id: each.name for each in files(desk)}
    for file_id in file_ids:
        if file_id not in names:
            raise Trouble(f"No file of number {file_id} is kept here.")
    text = f"withdrew {names[file_ids[0]]}" if len(file_ids) == 1 else f"withdrew {len(file_ids)} files"
    at = datetime.now(UTC)
    with writing(desk, text) as pen:
        changes = tuple(pen.update(price_file, file_id, {"withdrawn_at": at}) for file_id in file_ids)
    return Edit(text, changes)


def bring_back(desk: Desk, file_id: int) -> Edit:
    """A withdrawn file's offers and questions count again."""
    from tracker.store.tables import price_file

    kept = find(desk, file_id)
    if not kept.withdrawn:
        raise Trouble(f"{kept.name} counts already.")
    text = f"brought back {kept.name}"
    with writing(desk, text) as pen:
        change = pen.update(price_file, file_id, {"withdrawn_at": None})
    return Edit(text, (change,))
