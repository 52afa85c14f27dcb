"""The roles that a column's heads may name, by strength: what its words say, and what its unit tells of them."""

from collections.abc import Sequence

from tracker.intake.columns.roles.headed_figures import by_words, says_delivery
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.heads.header import Header, header, without_unit
from tracker.intake.values.heads.role_words import tells_of_freight
from tracker.intake.values.heads.roles import ON_TOP, Role, RoleReading
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.shares import is_share, is_share_cut_short
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def candidates_of(said: Sequence[Header]) -> dict[Role, float]:
    """Roles by strength. The lowest head counts most, but a bare unit only helps the words above it."""
    # 'FOB warehouse, lead time 10 days' over a whole table names none of its columns.
    said = [head for head in said if head is said[-1] or not _tells_terms(head)]
    found: dict[Role, float] = {}
    # A zone or a firm above a unit groups the prices below it.
    worded = any(by_words(head) and head.role not in (Role.DESTINATION, Role.VENDOR) for head in said)
    for level, head in enumerate(reversed(said)):
        for reading in head.roles:
            if worded and reading.role is Role.PRICE and not by_words(head):
                continue
            if reading.role is Role.FREIGHT and says_delivery(head) and not _freight_to_a_place(head, reading):
                continue
            if reading.role is Role.SHEETS_WEIGHT and len(head.weight_units) == 1:
                # The M of 'lb/M sq ft' is of square feet.
                continue
            if reading.role in PRICE_ROLES and _begins_as_index(head):
                continue
            if reading.role is Role.CALIPER and _is_unit_of_a_length(head, reading):
                continue
            found[reading.role] = max(found.get(reading.role, 0.0), reading.strength - 0.15 * level)
        for reading in _beside_unit(head) if not tells_of_freight(head.text) else ():
            found[reading.role] = max(found.get(reading.role, 0.0), reading.strength - 0.15 * level)
        # '#/MSF' is read as a number sign; that it is a unit of basis weight too is left to the cells.
        timed = head.lead_unit is not None and Role.ROLL_WIDTH not in found
        if timed and head.caliper_unit is None and Role.CALIPER in found:
            # The 'cal.' of 'Del. time (cal. days)' is of calendars; the 'dia.' of 'Roll dia.' over '(in)' is no Spanish
            # day.
            found[Role.LEAD_TIME] = max(found.get(Role.LEAD_TIME, 0.0), found.pop(Role.CALIPER))
        if head.lead_unit is not None and level == 0 and any(phrases("lead_topic").find(above.text) for above in said):
            # 'Leverans' over 'arbetsdagar': how long, and not on which terms.
            found[Role.LEAD_TIME] = max(found.get(Role.LEAD_TIME, 0.0), 0.9)
        # 'MSF/yr' is how much is used.
        weighs = len(head.weight_units) == 1 or head.ream is not None
        if weighs and head.currency is None and not phrases("yearly").find(head.text):
            found.setdefault(Role.WEIGHT, 0.85 - 0.15 * level)
        # 'um' is a unit of measure to some and a micron to others.
        only_units = all(reading.role in (Role.BASIS, Role.ITEM) for reading in head.roles)
        if head.caliper_unit is not None and head.currency is None and only_units:
            found.setdefault(Role.CALIPER, 0.6 - 0.15 * level)
    found = _charged_by_share(_paid_by_unit(_named_property(_measured_by_unit(found, said), said), said), said)
    if not found and said and is_share_cut_short(said[-1].text):
        # What it comes to is left open where it is read.
        return {Role.CHARGE: _CUT_SHORT}
    return found


_CUT_SHORT = 0.7


def _charged_by_share(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Energy surcharge' over '% of base price': a share of the price is no price, whatever words name it."""
    *above, lowest = said or (None,)
    charged = any(head.strength(role) >= _PLAINLY for head in above for role in ON_TOP)
    if lowest is None or not charged or not is_share(lowest.text):
        return found
    return {role: strength for role, strength in found.items() if role not in PRICE_ROLES}


def _paid_by_unit(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Guillotine trim' over 'US$/cwt' and 'Rolle, €' are money, though a trim and a roll by themselves are widths."""
    lowest = said[-1] if said else None
    if lowest is None or lowest.currency is None:
        return found
    if lowest.basis is None and (lowest.length_unit is not None or not found.keys() & MEASURED):
        return found
    return {role: strength for role, strength in found.items() if role not in MEASURED} or {Role.PRICE: _BY_UNIT}


_BY_UNIT = 0.85

MEASURED = frozenset(
    {Role.ROLL_WIDTH, Role.WIDTH, Role.LENGTH, Role.SHEET_SIZE, Role.PROPERTY, Role.CALIPER, Role.WEIGHT, Role.YIELD}
)
"""What figures in money per unit are not, whatever stands above them."""


def _tells_terms(head: Header) -> bool:
    return any(isinstance(one, LeadTime | Validity | SaysMinimum | LeastUnread) for one in statements(head.text))


def _begins_as_index(head: Header) -> bool:
    """'Index of fibre cost' is a series, whose price is not this list's."""
    return any(
        reading.role is Role.INDEX and fold(head.text).strip().startswith(f"{fold(reading.words).strip()} ")
        for reading in head.roles
    )


def _is_unit_of_a_length(head: Header, caliper: RoleReading) -> bool:
    """'Max. trim (inches)' is no thickness, though 'inches' alone may head one."""
    lengths = any(reading.role in _LENGTHS for reading in head.roles)
    return lengths and phrases("caliper_units").whole(caliper.words) is not None


def _freight_to_a_place(head: Header, freight: RoleReading) -> bool:
    """'Flete a destino' is what the way there costs; 'Fracht inklusive' and 'DAP, freight paid' are of prices."""
    delivery = head.delivery.words if head.delivery is not None else ""
    first, behind = fold(head.text).strip(), fold(delivery).strip()
    named = fold(freight.words).strip()
    return bool(behind) and first.startswith(named) and first.removeprefix(named).strip().startswith(behind)


def _named_property(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Cobb 60' over 'g/m²' is how much water the board takes up, whatever its unit measures elsewhere."""
    *above, lowest = said or (None,)
    if lowest is None or not any(phrases(units).whole(lowest.text) for units in ("weight_units", "caliper_units")):
        return found
    if any(head.strength(measure) >= _PLAINLY for head in above for measure in (Role.WEIGHT, Role.CALIPER)):
        # 'Coated recycled' over 'Basis wt' over 'lb/MSF': the words next to the unit say what it measures.
        return found
    named = any(head.strength(Role.PROPERTY) >= _PLAINLY and not names_grade(head.text) for head in above)
    if named and (together := header(f"{above[-1].text} {lowest.text}").strength(Role.CALIPER)) >= _PLAINLY:
        # 'Bulk' over 'micron' is how thick the board is.
        return {Role.CALIPER: together}
    return {Role.PROPERTY: found[Role.PROPERTY]} if named and Role.PROPERTY in found else found


_PLAINLY = 0.8
"""From this strength on, words name a property and are not only like its name."""


def _measured_by_unit(found: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """'Substance' over 'g/m²' and 'µm': what a unit measures is what it measures, whatever its group is called."""
    lowest = said[-1] if len(said) > 1 else None
    if lowest is None or (by_words(lowest) and not _is_a_measure(lowest)):
        return found
    if lowest.currency is not None:
        # A head that ran on from its neighbour: figures in '€/t' are no calipers.
        return {role: strength for role, strength in found.items() if role not in (Role.CALIPER, Role.WEIGHT)}
    if _is_a_measure(lowest):
        # The sheet's title, repeated over each page, calls every column a price list's.
        found = {role: strength for role, strength in found.items() if role not in PRICE_ROLES}
    if lowest.length_unit is not None and any(head.role in _LENGTHS for head in said[:-1]):
        # 'Width' over 'in' is a sheet's side, though calipers are in inches too.
        return {role: strength for role, strength in found.items() if role is not Role.CALIPER}
    if lowest.caliper_unit is not None and not lowest.weight_units and Role.WEIGHT in found:
        return {Role.CALIPER if role is Role.WEIGHT else role: strength for role, strength in found.items()}
    if lowest.weight_units and lowest.caliper_unit is None and Role.CALIPER in found:
        return {Role.WEIGHT if role is Role.CALIPER else role: strength for role, strength in found.items()}
    return found


def _is_a_measure(head: Header) -> bool:
    """Nothing but a unit of caliper or basis weight; 'UM' is a unit of measure to some."""
    unit = any(phrases(units).whole(head.text) is not None for units in ("weight_units", "caliper_units"))
    return unit and head.basis is None and head.strength(Role.BASIS) == 0


_LENGTHS = frozenset({Role.WIDTH, Role.LENGTH, Role.ROLL_WIDTH, Role.SHEET_SIZE})


def _beside_unit(head: Header) -> tuple[RoleReading, ...]:
    """The roles of what is left of a head without its currency and unit: 'WAS USD/ton' is what the price was."""
    if head.currency is None or head.basis is None:
        return ()
    rest = without_unit(head).strip(" /()[]")
    return tuple(reading for reading in header(rest).roles if reading.strength >= 0.9) if rest else ()
