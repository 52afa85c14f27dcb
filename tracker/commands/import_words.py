"""What import says of a file in sentences: the outcome, what is asked, what answers it, and why lines were refused."""

from collections.abc import Iterator, Sequence

from tracker.desk.take_in import TakenIn
from tracker.trade.offer import Line, NoteCode, Question, State

_NO_PRICES = "no prices"
_MOST_CELLS = 6
_MOST_REFUSALS = 10
"""A long list whose every formula is empty would bury what else was said; --json has them all."""

_REFUSING = {NoteCode.FORMULA_WITHOUT_VALUE, NoteCode.ERROR_CELL, NoteCode.PRICE_NOT_POSITIVE}


def outcome(taken: TakenIn, *, dry: bool = False) -> str:
    """How many lines were accepted, are held or were refused, and whether that is new; `dry`: nothing was stored."""
    counts = {state: sum(line.state is state for line in taken.reading.lines) for state in State}
    said = (
        f"{taken.reading.file}: {counts[State.ACCEPTED]} accepted, {counts[State.QUESTION]} held by a question, "
        f"{counts[State.REFUSED]} refused"
    )
    if taken.imported_on is not None:
        said += f"; already taken in on {taken.imported_on.isoformat()}, so nothing was added"
        if counts[State.QUESTION]:
            said += ". What is held waits for its answers, here as options or in the window"
    elif dry:
        said += ". A dry run: nothing was stored"
    if (
        taken.imported_on is None
        and counts[State.ACCEPTED]
        and not all(line.offer.vendor for line in taken.reading.lines)
    ):
        said += ". Nothing in it says who quotes, so its offers have no vendor: import it again with --vendor NAME"
    return said


def nothing_found(taken: TakenIn) -> Iterator[str]:
    """What to do with a file that can be read and has no prices: its vendor may have changed the form."""
    if taken.reading.lines or taken.reading.questions:
        return
    passed = taken.reading.passed_over
    why = next((f" ({each.why})" for each in passed if each.why != _NO_PRICES), "")
    if not any(each.rows for each in passed):
        said = "Nothing stands in it. If its own program shows prices, save it there anew; else ask the vendor for it."
    else:
        said = f"No prices were found{why}. If it has some, open it in the window and mark its table by hand."
    yield f"{taken.reading.file}: {said}"


def questions(taken: TakenIn, *, dry: bool = False) -> Iterator[str]:
    """Each open question with the cells it is about and what answers it."""
    for question in taken.reading.questions:
        yield f"{taken.reading.file}, {_where(question.cells)}: {question.text} {_answered_by(question, dry=dry)}"


def refusals(taken: TakenIn) -> Iterator[str]:
    """Why each refused line can't be used, the first few of a long list."""
    refused = [line for line in taken.reading.lines if line.state is State.REFUSED]
    for line in refused[:_MOST_REFUSALS]:
        source = line.offer.source
        yield f"{taken.reading.file}, {_where([(source.sheet, source.cell)])}: {_why(line)}"
    if len(refused) > _MOST_REFUSALS:
        yield f"{taken.reading.file}: {len(refused) - _MOST_REFUSALS} more lines were refused; --json tells of each."


def _where(cells: Sequence[tuple[str, str]]) -> str:
    """The first cells by sheet: 'sheet “Offer”, cells D5, D8'; a CSV file has no sheets to name."""
    by_sheet: dict[str, list[str]] = {}
    for sheet, cell in cells[:_MOST_CELLS]:
        by_sheet.setdefault(sheet, []).append(cell)
    said = ", ".join(
        (f"sheet “{sheet}”, " if sheet else "") + f"{'cell' if len(named) == 1 else 'cells'} {', '.join(named)}"
        for sheet, named in by_sheet.items()
    )
    more = len(cells) - _MOST_CELLS
    return (said or "no cell") + (f" and {more} more" if more > 0 else "")


def _answered_by(question: Question, *, dry: bool) -> str:
    kind = question.key.partition(":")[0]
    if kind == "ton":
        return "Answer it with --ton short or --ton metric."
    if kind == "grade":
        codes = ", ".join(choice.value for choice in question.choices)
        return f'Answer it with --grade "{question.words}=CODE", where CODE is one of {codes}.'
    if kind == "currency":
        options = " or ".join(f"--currency {choice.value}" for choice in question.choices) or "--currency USD"
        return f"Answer it with --currency CODE, for example {options}."
    if question.key == "vendor":
        return "Answer it with --vendor NAME."
    if kind == "table":
        return "Open the file in the window and mark its table by hand."
    if question.key == "basis:":
        codes = ", ".join(choice.value for choice in question.choices)
        return f"Answer it with --per CODE, where CODE is one of {codes}."
    choices = f"It is one of: {'; '.join(choice.label for choice in question.choices)}. " if question.choices else ""
    # After a dry run nothing waits under Today.
    return f"{choices}{'Open the file in the window to answer it.' if dry else 'Answer it in the window, under Today.'}"


def _why(line: Line) -> str:
    refusing = [note.text for note in line.notes if note.code in _REFUSING]
    return " ".join(refusing or [note.text for note in line.notes])
