"""What stands behind a firm's name on its line: 'Supplier: Ferrowick Board Ltd Completed by: R. Ingle', 'Ferrowick
Board rec'd by e-mail'."""

from tracker.intake.words.lists import phrases


def before_the_next_field(name: str, rest: str) -> str | None:
    """What `rest`, the text behind a label, begins with, up to the next label; None where `name` ends at none."""
    if not rest.strip().removeprefix(name).startswith(":"):
        return None
    fields = [match for match in phrases("company").find(name) if match.value == "signs" and match.first > 0]
    return name[: fields[-1].start].strip() if fields and fields[-1].end == len(name) else name


def without_receipt(name: str) -> str:
    """'Ferrowick Board rec'd by e-mail' without the buyer's note of how or when the offer reached him."""
    notes = [match for match in phrases("receipts").find(name) if match.first > 0]
    return name[: min(match.start for match in notes)].rstrip(" ([,;:–—-") if notes else name
