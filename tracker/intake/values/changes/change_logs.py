"""A sheet's diary: 'date | who | change', where an author notes what was changed in the list and when."""

from tracker.intake.words.lists import phrases


def heads_change_log(heads: list[str]) -> bool:
    """Whether these are the heads of such a diary: a day, somebody, and a change."""
    named = {phrases("change_logs").whole(head.strip(" :.")) for head in heads}
    return {"day", "who", "change"} <= named


def names_change_log(name: str) -> bool:
    """'log', 'Change log', 'Änderungsprotokoll'."""
    return phrases("change_logs").whole(name.strip()) == "name"
