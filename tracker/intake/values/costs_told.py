"""Why prices rise: what the vendor's own costs have come to, which is charged to nobody."""

from tracker.intake.words.lists import phrases


def tells_costs(part: str) -> bool:
    """'Energy costs are up 14 % since January' and 'hausse du coût de l'énergie (+ 11 %)'; 'because of rising costs an
    energy surcharge of 3 % applies' tells a charge as well."""
    said = {match.value for match in phrases("costs_told").find(part)}
    return said == {"cost", "rise"}
