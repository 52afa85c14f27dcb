"""'Rolls | Sheets' over prices: the form in which board comes, which is not what its prices are per."""

from dataclasses import replace

from tracker.intake.columns.column import Column
from tracker.intake.values.header import Header
from tracker.intake.values.roles import Role
from tracker.intake.words.lists import phrases


def told_apart_by_form(columns: list[Column]) -> list[Column]:
    """'Rolls | Sheets' over two prices say in what form the board comes, not what the prices are per."""
    forms = {column.index: form for column in columns if (form := _form(column))}
    if set(forms.values()) != {"roll", "sheet"}:
        return columns
    return [replace(column, said=_without_form(column.said)) if column.index in forms else column for column in columns]


def _form(column: Column) -> str:
    """'roll' or 'sheet' where a price's head says that and no more; '' elsewhere, and below 'price per'."""
    per = any(head.strength(Role.BASIS) or head.strength(Role.PER_QUANTITY) for head in column.said)
    if column.role is not Role.PRICE or per:
        return ""
    return next((form for head in column.said if (form := form_alone(head.text))), "")


def _without_form(said: tuple[Header, ...]) -> tuple[Header, ...]:
    return tuple(replace(head, basis=None) if form_alone(head.text) else head for head in said)


def form_alone(text: str) -> str:
    """'roll' or 'sheet' for a text that says that and no more, else ''."""
    form = phrases("basis").whole(text)
    return form if form in ("roll", "sheet") else ""
