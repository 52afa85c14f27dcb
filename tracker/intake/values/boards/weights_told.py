"""In what a sentence says that weights are: a unit of basis weight, pounds on a ream, or what 1,000 sheets weigh."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.boards.reams import Ream, ream_of
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.figures.sheetsize import SheetSize, find_sheet_sizes, without_sheet_sizes
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_mass_units, find_masses
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis
from tracker.trade.quantities import MassUnit, WeightUnit


@dataclass(frozen=True, slots=True)
class WeightBasis:
    """`units`: that a basis weight may be in, () where none is told. `of_sheets`: it is no basis weight, but what 1,000
    sheets of a board's own size weigh, or of the size `sheet`, in `masses`, where these are told. `by_grade`: what is
    told of some grades instead."""

    units: tuple[WeightUnit, ...] = ()
    ream: Ream | None = None
    of_sheets: bool = False
    masses: tuple[MassUnit, ...] = ()
    sheet: SheetSize | None = None
    by_grade: "tuple[tuple[str, WeightBasis], ...]" = ()


UNTOLD = WeightBasis()


@lru_cache(maxsize=8192)
def weight_basis(clause: str) -> WeightBasis | None:
    """'Weights are pounds per 500 sheets of 25 x 38 in', 'the weight is lb per 1,000 sheets and the price is $ per
    cwt'; None where a clause leaves open what weights are in."""
    part = clause[slice(*span_of_weights(clause))]
    return basis_of_part(part) if part else None


def basis_of_part(part: str) -> WeightBasis | None:
    """What a part of a sentence about weights says that they are in; None where it leaves that open."""
    if phrases("optional").find(part):
        return None
    ream = ream_of(part)
    if ream is not None:
        usual = ream.msf == _USUAL_MSF
        return WeightBasis((WeightUnit.LB_3000FT2,)) if usual else WeightBasis(ream=ream) if ream.msf else None
    if _of_thousand_sheets(part):
        sizes = find_sheet_sizes(part)
        sheet = replace(sizes[0], words="") if len(sizes) == 1 else None
        return WeightBasis(of_sheets=True, masses=find_mass_units(part), sheet=sheet)
    units = weight_units(part)
    return WeightBasis(units) if len(units) == 1 else None


def span_of_weights(clause: str) -> tuple[int, int]:
    """What a clause says of weights, without what it says of prices behind or before that; nothing where it names
    none. The 'Pesos' of 'Pesos en libras' is no money."""
    weighed = phrases("weight_words").find(clause)
    if not weighed:
        return 0, 0
    start = weighed[0].start
    named = [match.start for match in phrases("price_words").find(clause)]
    money = [clause.find(one.words) for one in find_currencies(clause)]
    told = [at for at in (*named, *money) if not any(match.start <= at < match.end for match in weighed)]
    ahead = any(at < start for at in told)
    return start if ahead else 0, min((at for at in told if at > start), default=len(clause))


def _of_thousand_sheets(part: str) -> bool:
    """'lb per 1,000 sheets', 'M weight'; '900 kg, 1,000 sheets' tells of a pallet."""
    basis = find_basis(part)
    by_thousands = basis is not None and basis.bases == {Basis.THOUSAND_SHEETS}
    named = any(match.value == Role.SHEETS_WEIGHT for match in phrases("headers").find(part))
    masses = find_mass_units(part)
    return not find_masses(part) and (named or (by_thousands and len(masses) == 1 and masses[0] in _OF_SHEETS))


def says_only_that(clause: str) -> bool:
    """Whether no word of what a note says of weights is left unread: 'M weights of our other mill' is of no line."""
    return not rest_of(without_sheet_sizes(clause[slice(*span_of_weights(clause))]), (), *SAID)


SAID = ("weight_words", "weight_units", "headers.sheets_weight", "basis", "per", "forms", "from_here_on")
"""Word lists of what is said of weights."""


def looks_back(clause: str) -> bool:
    """'Weights above are lb per 1,000 sheets', between rows."""
    return bool(phrases("looking_back").find(clause)) and not phrases("from_here_on").find(clause)


_OF_SHEETS = (MassUnit.LB, MassUnit.KG)
_USUAL_MSF = 3


def one_told(told: Iterable[WeightBasis]) -> WeightBasis | None:
    """What several sentences say together: None where there are none, UNTOLD where they differ. Beside pounds, g/m² are
    a second way to say the same."""
    said = dict.fromkeys(told)
    in_pounds = [one for one in said if one.units != (WeightUnit.GSM,)]
    if not said:
        return None
    return in_pounds[0] if len(in_pounds) == 1 else UNTOLD if in_pounds else next(iter(said))
