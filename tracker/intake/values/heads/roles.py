"""The roles that columns of a price sheet play, and one reading of a header that names such a role."""

from dataclasses import dataclass
from enum import StrEnum


class Role(StrEnum):
    """What a column can hold. The values are the keys of [headers] in the word lists."""

    ITEM = "item"
    PRODUCT = "product"
    GRADE = "grade"
    COATING = "coating"
    CALIPER = "caliper"
    WEIGHT = "weight"
    PRICE = "price"
    LIST_PRICE = "list_price"
    NET_PRICE = "net_price"
    PREVIOUS_PRICE = "previous_price"
    ALL_IN = "all_in"
    CURRENCY = "currency"
    BASIS = "basis"
    PER_QUANTITY = "per_quantity"
    SHEET_SIZE = "sheet_size"
    SHEETS_WEIGHT = "sheets_weight"
    WIDTH = "width"
    LENGTH = "length"
    BRACKET = "bracket"
    FROM_QUANTITY = "from_quantity"
    BELOW_QUANTITY = "below_quantity"
    MINIMUM = "minimum"
    LEAD_TIME = "lead_time"
    VALIDITY = "validity"
    VALID_FROM = "valid_from"
    RECEIVED = "received"
    DELIVERY_TERMS = "delivery_terms"
    FREIGHT = "freight"
    ENERGY = "energy"
    SHEETING = "sheeting"
    CHARGE = "charge"
    DISCOUNT = "discount"
    INDEX = "index"
    REMARKS = "remarks"
    ROLL_WIDTH = "roll_width"
    PACKING = "packing"
    STOCK = "stock"
    VENDOR = "vendor"
    YIELD = "yield"
    PROPERTY = "property"
    CHANGE = "change"
    MARGIN = "margin"
    TOTAL = "total"
    DESTINATION = "destination"
    FORM = "form"
    PAYMENT = "payment"

    # Columns are looked up by role dozens of times a row, and an Enum's own hash is a Python function.
    __hash__ = str.__hash__


@dataclass(frozen=True, slots=True)
class RoleReading:
    """One role that a header may name.

    `strength`: 1 the words say exactly that, about 0.8 among other words, 0.85 or less by a unit, 0.6 or less misspelt.
    """

    role: Role
    strength: float
    words: str


PRICES = frozenset({Role.PRICE, Role.LIST_PRICE, Role.NET_PRICE, Role.PREVIOUS_PRICE, Role.ALL_IN, Role.TOTAL})
ON_TOP = (Role.FREIGHT, Role.ENERGY, Role.SHEETING, Role.CHARGE)
"""What is charged beside a price, in the order in which a column's role is looked for."""
CHARGES = frozenset({*ON_TOP, Role.DISCOUNT, Role.CHANGE, Role.INDEX})
MONEY = PRICES | CHARGES | {Role.MARGIN}
MEASURES = frozenset({Role.CALIPER, Role.WEIGHT})

ORDER_LIMITS = (Role.FROM_QUANTITY, Role.BELOW_QUANTITY)
"""Where an order size begins and where it ends."""
ORDER_SIZES = (Role.BRACKET, *ORDER_LIMITS)
"""Whole, or by their limits."""
