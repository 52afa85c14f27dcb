"""Charges that only part loads bear: 'LTL shipments carry a fuel surcharge of $0.85 per cwt; TL does not'."""

from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords, find_charges
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.orders.bracket_pieces import HALF_LOAD
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

PART_LOAD = "part_load"
_LOADS = {"truckload": "truckload", "railcar": "railcar", PART_LOAD: PART_LOAD, HALF_LOAD: PART_LOAD}
"""By the words for them; half a load is less than one."""


@dataclass(frozen=True, slots=True)
class LoadCharge:
    """A charge that only part loads bear. `words`: the clause that says so."""

    charge: ChargeWords
    words: str


@lru_cache(maxsize=4096)
def load_charges(text: str) -> tuple[LoadCharge, ...]:
    """The charges that a note gives part loads by name, and what they come to."""
    if not phrases("charges").find(text):
        return ()
    return tuple(one for clause in clauses(text) if (one := _in_clause(clause)) is not None)


def _in_clause(clause: str) -> LoadCharge | None:
    charged = [part for part in COMMA.split(clause) if charges_named(part)]
    named = _loads_in(charged[0]) if len(charged) == 1 else []
    # 'Energy surcharge 3 % (full load 24 t)' says what a load weighs.
    if {_LOADS[match.value] for match in named} != {PART_LOAD} or find_masses(charged[0]):
        return None
    rest = blanked(charged[0], (match.span for match in named))
    first = min((match.start for match in charges_named(rest)), default=0)
    # What stands before the charge's name is a verb, or the amount.
    found = _with_amount(rest[first:]) or _with_amount(rest)
    return LoadCharge(found[0], clause) if len(found) == 1 else None


def _loads_in(text: str) -> list[Found[str]]:
    found = (match for section in ("loads_priced", "bracket") for match in phrases(section).find(text))
    return [match for match in found if match.value in _LOADS]


def _with_amount(text: str) -> list[ChargeWords]:
    return [charge for charge in find_charges(text) if charge.amounts]


@lru_cache(maxsize=4096)
def load_named(words: str) -> str:
    """The kind of load that an order size is called by; '' where by none, or by two."""
    named = {_LOADS[match.value] for match in _loads_in(words)}
    return named.pop() if len(named) == 1 else ""
