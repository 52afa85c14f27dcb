"""Few questions, each about one cause: lines that the same answer would settle are asked together."""

from collections.abc import Iterable

from tracker.intake.offers.draft import Asked, Draft
from tracker.trade.basis import Basis
from tracker.trade.grades import grades
from tracker.trade.offer import Choice, Question


def questions_of(drafts: Iterable[Draft]) -> tuple[Question, ...]:
    """One question for each key, with every cell that it holds back, in the order they first arise."""
    first: dict[str, Asked] = {}
    cells: dict[str, list[tuple[str, str]]] = {}
    for draft in drafts:
        for asked in draft.asked:
            first.setdefault(asked.key, asked)
            place = (draft.sheet, draft.where)
            if place not in cells.setdefault(asked.key, []):
                cells[asked.key].append(place)
    return tuple(
        Question(key, asked.code, asked.text, asked.words, _choices(asked), tuple(cells[key]))
        for key, asked in first.items()
    )


def _choices(asked: Asked) -> tuple[Choice, ...]:
    """All answers of the question's kind, or those of them that the sheet leaves open."""
    kind = asked.key.partition(":")[0]
    choices = _FIXED.get(kind, ())
    if kind == "grade":
        choices = tuple(Choice(code, f"{code} · {grade.name}") for code, grade in grades().items())
    elif kind == "currency":
        return tuple(Choice(code, code) for code in asked.options)
    return tuple(choice for choice in choices if not asked.options or choice.value in asked.options)


_BASIS_WORDS = {
    Basis.SHORT_TON: "short ton (2,000 lb)",
    Basis.TONNE: "tonne (1,000 kg)",
    Basis.CWT: "hundredweight (100 lb)",
    Basis.LB: "pound",
    Basis.KG: "kilogram",
    Basis.MSF: "1,000 ft²",
    Basis.M2: "m²",
    Basis.THOUSAND_M2: "1,000 m²",
    Basis.THOUSAND_SHEETS: "1,000 sheets",
    Basis.SHEET: "sheet",
}
_FIXED = {
    "basis": tuple(Choice(basis.value, words) for basis, words in _BASIS_WORDS.items()),
    "ton": (Choice("short", "short ton (2,000 lb)"), Choice("metric", "tonne (1,000 kg)")),
    "weight-basis": (Choice("msf", "lb on 1,000 ft²"), Choice("3000ft2", "lb on 3,000 ft²"), Choice("gsm", "g/m²")),
    "decimal": (
        Choice(".", "1.5 is one and a half (decimal point)"),
        Choice(",", "1,5 is one and a half (decimal comma)"),
    ),
}
