"""One language's words for headers, boards, units, terms and noise."""

from dataclasses import dataclass

Board = tuple[str, int | None]


@dataclass(frozen=True)
class Language:
    """Every list holds forms that mean the same. Boards: wording and coated sides as said (None: not said)."""

    code: str
    boards: dict[str, tuple[Board, ...]]
    headers: dict[str, tuple[str, ...]]
    per: dict[str, tuple[str, ...]]
    each: tuple[str, ...]
    lead_weeks: tuple[str, ...]
    lead_days: tuple[str, ...]
    lead_work_days: tuple[str, ...]
    lead_stock: tuple[str, ...]
    lead_unread: tuple[str, ...]
    about: tuple[str, ...]
    no_price: tuple[str, ...]
    delivered: tuple[str, ...]
    ex_works: tuple[str, ...]
    valid_until: tuple[str, ...]
    lead_is: tuple[str, ...]
    minimum_is: tuple[str, ...]
    prices_in: tuple[str, ...]
    title: tuple[str, ...]
    dated: tuple[str, ...]
    noise: tuple[str, ...]
    totals: tuple[str, ...]
    months: tuple[str, ...]
    long_date: str
    short_date: str
    indicative: tuple[str, ...]
    superseded: tuple[str, ...]
