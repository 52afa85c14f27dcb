"""Whether one field of a line says what truth says: 'same', 'differs', or 'null' where it is left open though known."""

import re
import unicodedata
from collections import Counter
from decimal import Decimal, InvalidOperation
from typing import Any

PRICE_FIELDS = (
    "grade",
    "price",
    "currency",
    "basis",
    "sheet_mm",
    "caliper_um",
    "grammage_gsm",
    "grammage_from",
    "from_kg",
    "below_kg",
    "per_tonne",
    "per_msf",
)
SECOND_FIELDS = (
    "vendor",
    "coated_sides",
    "minimum_kg",
    "lead_days",
    "valid_until",
    "delivered",
    "charges",
    "delivered_per_tonne",
    "delivered_per_msf",
)
MAY_BE_BLANK = frozenset(("caliper_um", "grammage_gsm", "per_tonne", "per_msf"))
_HALF_PERCENT = Decimal("0.005")
_CLOSE = Decimal("0.0005")
TOLERANCE = {
    "price": Decimal("0.000000001"),
    "caliper_um": _HALF_PERCENT,
    "grammage_gsm": _HALF_PERCENT,
    "from_kg": _HALF_PERCENT,
    "below_kg": _HALF_PERCENT,
    "minimum_kg": _HALF_PERCENT,
    "per_tonne": _CLOSE,
    "per_msf": _CLOSE,
    "delivered_per_tonne": _CLOSE,
    "delivered_per_msf": _CLOSE,
}
COMPANY_FORMS = frozenset(
    {"inc", "llc", "ltd", "limited", "co", "company", "corp", "corporation", "incorporated", "plc", "lp", "the"}
    | {"gmbh", "ag", "kg", "ab", "publ", "sa", "sas", "sarl", "sl", "slu", "bv", "nv", "oy", "as", "spa", "srl"}
    | {"ltee", "ltée"}
)


def choices(truth: Any) -> list[Any]:
    """The values truth lets stand: several for {"any_of": […]}, else the one."""
    return truth["any_of"] if isinstance(truth, dict) and truth.keys() == {"any_of"} else [truth]


def compare(name: str, given: Any, truth: Any) -> str:
    """The best of all values that truth lets stand."""
    verdicts = {_compare_one(name, given, value) for value in choices(truth)}
    return next(verdict for verdict in ("same", "null", "differs") if verdict in verdicts)


def known(truth: Any) -> bool:
    """Whether truth fixes a value, so that leaving it open is incomplete."""
    return None not in choices(truth) and truth != []


def _compare_one(name: str, given: Any, truth: Any) -> str:
    if name == "charges":
        return _compare_charges(given or [], truth or [])
    if given is None:
        return "same" if truth is None else "null"
    if truth is None:
        return "differs"
    return "same" if _agree(name, given, truth) else "differs"


def _agree(name: str, given: Any, truth: Any) -> bool:
    if name in TOLERANCE:
        mine, right = number(given), number(truth)
        return mine is not None and right is not None and abs(mine - right) <= abs(right) * TOLERANCE[name]
    if name == "sheet_mm":
        return _same_sides(given, truth) or _same_sides(given, truth[::-1])
    if name == "lead_days":
        return [number(day) for day in given] == [number(day) for day in truth]
    if name == "vendor":
        return company(given) == company(truth)
    if name == "coated_sides":
        return number(given) == number(truth)
    return type(given) is type(truth) and given == truth


def _same_sides(given: Any, truth: Any) -> bool:
    return len(given) == 2 and all(abs(number(a) - number(b)) <= 1 for a, b in zip(given, truth, strict=True))


def _compare_charges(given: list[dict], truth: list[dict]) -> str:
    """Labels do not count; a charge left out is incomplete, one invented is wrong."""
    mine, right = Counter(map(_charge, given)), Counter(map(_charge, truth))
    if mine == right:
        return "same"
    return "differs" if mine - right else "null"


def _charge(charge: dict) -> tuple[Any, ...]:
    basis = charge.get("basis")
    return number(charge.get("price")), None if basis == "percent" else charge.get("currency"), basis


def number(value: Any) -> Decimal | None:
    if value is None or isinstance(value, bool):
        return None
    try:
        exact = Decimal(str(value).strip())
    except InvalidOperation:
        return None
    return exact if exact.is_finite() else None


def company(name: str) -> str:
    """A vendor's name without letter case, punctuation and company form."""
    words = re.findall(r"\w+", unicodedata.normalize("NFKC", str(name)).casefold().replace(".", ""))
    return "".join(word for word in words if word not in COMPANY_FORMS)
