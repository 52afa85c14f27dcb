"""Fields of a form that stand in one text: 'Supplier: Ferrowick Board Ltd Completed by: R. Ingle'."""

from tracker.intake.words.lists import phrases


def before_the_next_field(name: str, rest: str) -> str | None:
    """What `rest`, the text behind a label, begins with, up to the next label; None where `name` ends at none."""
    if not rest.strip().removeprefix(name).startswith(":"):
        return None
    fields = [match for match in phrases("company").find(name) if match.value == "signs" and match.first > 0]
    return name[: fields[-1].start].strip() if fields and fields[-1].end == len(name) else name
