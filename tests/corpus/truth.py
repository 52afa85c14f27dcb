"""The exact truth of an offer, by fractions and from first definitions, independent of the product.

Pound 0.45359237 kg, foot 0.3048 m, inch 25.4 mm (international yard and pound, 1959; from memory), short ton 2,000 lb,
hundredweight 100 lb, a caliper point a thousandth of an inch.
"""

from dataclasses import dataclass, field
from datetime import date
from decimal import Context, Decimal
from fractions import Fraction
from typing import Any

LB = Fraction(45359237, 100_000_000)
FOOT = Fraction(3048, 10_000)
MSF_M2 = 1000 * FOOT * FOOT
GSM_PER = {"lb_msf": LB * 1000 / MSF_M2, "lb_3000": LB * 1000 / (3 * MSF_M2), "gsm": Fraction(1)}
UM_PER = {"pt": Fraction(254, 10), "in": Fraction(25_400), "mm": Fraction(1000), "um": Fraction(1)}
MM_PER = {"mm": Fraction(1), "cm": Fraction(10), "in": Fraction(254, 10)}
KG_PER = {"short_ton": 2000 * LB, "tonne": Fraction(1000), "cwt": 100 * LB, "lb": LB, "kg": Fraction(1)}
M2_PER = {"msf": MSF_M2, "m2": Fraction(1), "1000m2": Fraction(1000)}
SHEETS_PER = {"1000sheets": 1000, "sheet": 1}


class AnyOf(tuple[Any, ...]):
    """Several values, each of which is right."""

    __slots__ = ()


def text(value: Fraction | Decimal | int) -> str:
    """A number as truth writes it: 12 significant digits, no exponent, no trailing zeros."""
    exact = Fraction(value)
    rounded = Context(prec=12).divide(Decimal(exact.numerator), Decimal(exact.denominator))
    plain = format(rounded, "f")
    return plain.rstrip("0").rstrip(".") if "." in plain else plain


@dataclass
class Charge:
    """Quoted beside the price; basis 'percent' is of the price. `freight`: it brings the board to the buyer."""

    label: str
    price: Decimal
    currency: str
    basis: str
    freight: bool = False

    def as_truth(self) -> dict[str, str]:
        return {"label": self.label, "price": text(self.price), "currency": self.currency, "basis": self.basis}


@dataclass
class Intent:
    """What one price cell was made to say. Masses in kg, caliper in µm, grammage in g/m², sheet sides in mm."""

    grade: str
    price: Decimal
    currency: str
    basis: str
    sides: Any = None
    caliper_um: Fraction | None = None
    gsm: Fraction | None = None
    sheet_mm: tuple[Fraction, Fraction] | None = None
    from_kg: Any = None
    below_kg: Any = None
    minimum_kg: Fraction | None = None
    lead: tuple[int, int] | None = None
    valid: date | None = None
    delivered: bool | None = None
    charges: list[Charge] = field(default_factory=list)
    vendor: Any = None

    def area_m2(self) -> Fraction | None:
        """Square metres in one unit of the basis."""
        if self.basis in M2_PER:
            return M2_PER[self.basis]
        if self.basis in SHEETS_PER:
            return self._sheet_m2()
        return KG_PER[self.basis] * 1000 / self.gsm if self.gsm else None

    def _sheet_m2(self) -> Fraction | None:
        if self.sheet_mm is None:
            return None
        return SHEETS_PER[self.basis] * self.sheet_mm[0] * self.sheet_mm[1] / 1_000_000

    def mass_kg(self) -> Fraction | None:
        """Kilograms in one unit of the basis."""
        if self.basis in KG_PER:
            return KG_PER[self.basis]
        area = self.area_m2()
        return area * self.gsm / 1000 if area is not None and self.gsm else None

    def per_tonne(self) -> Fraction | None:
        mass = self.mass_kg()
        return Fraction(self.price) * 1000 / mass if mass is not None else None

    def per_msf(self) -> Fraction | None:
        area = self.area_m2()
        return Fraction(self.price) * MSF_M2 / area if area is not None else None

    def reaches_the_dock(self) -> bool:
        return self.delivered is True or any(charge.freight for charge in self.charges)

    def delivered_cost(self, per: str) -> Fraction | None:
        """Price and charges together, per 'tonne' or 'msf'; None where a conversion is missing."""
        own = self.per_tonne() if per == "tonne" else self.per_msf()
        if own is None:
            return None
        total = own
        for charge in self.charges:
            if charge.basis == "percent":
                total += own * Fraction(charge.price) / 100
                continue
            beside = Intent(
                self.grade, charge.price, charge.currency, charge.basis, gsm=self.gsm, sheet_mm=self.sheet_mm
            )
            added = beside.per_tonne() if per == "tonne" else beside.per_msf()
            if added is None:
                return None
            total += added
        return total


def fields(intent: Intent) -> dict[str, Any]:
    """The truth of an accepted line. A field that rests on an estimate is left out, so it is not judged."""
    out: dict[str, Any] = {
        "vendor": intent.vendor,
        "grade": intent.grade,
        "coated_sides": intent.sides,
        "caliper_um": _text_or_none(intent.caliper_um),
        "price": text(intent.price),
        "currency": intent.currency,
        "basis": intent.basis,
    }
    if intent.gsm is None:
        out["grammage_from"] = AnyOf(("estimated", None))
    else:
        out["grammage_gsm"], out["grammage_from"] = text(intent.gsm), "quoted"
    if intent.basis in SHEETS_PER or intent.sheet_mm:
        out["sheet_mm"] = [text(side) for side in intent.sheet_mm] if intent.sheet_mm else None
    out |= {
        "from_kg": _text_or_none(intent.from_kg),
        "below_kg": _text_or_none(intent.below_kg),
        "minimum_kg": _text_or_none(intent.minimum_kg),
        "lead_days": list(intent.lead) if intent.lead else None,
        "valid_until": intent.valid.isoformat() if intent.valid else None,
        "delivered": intent.delivered,
        "charges": [charge.as_truth() for charge in intent.charges],
    }
    for name, value in (("per_tonne", intent.per_tonne()), ("per_msf", intent.per_msf())):
        if value is not None:
            out[name] = text(value)
    _add_delivered(out, intent)
    return plain(out)


def _add_delivered(out: dict[str, Any], intent: Intent) -> None:
    if not intent.reaches_the_dock():
        out["delivered_per_tonne"] = out["delivered_per_msf"] = None
        return
    if any(charge.currency != intent.currency for charge in intent.charges if charge.basis != "percent"):
        return
    for per in ("tonne", "msf"):
        value = intent.delivered_cost(per)
        if value is not None:
            out[f"delivered_per_{per}"] = text(value)


def _text_or_none(value: Any) -> Any:
    if isinstance(value, AnyOf):
        return AnyOf(_text_or_none(one) for one in value)
    return None if value is None else text(value)


def plain(value: Any) -> Any:
    """The same for JSON: AnyOf becomes {"any_of": […]}."""
    if isinstance(value, AnyOf):
        return {"any_of": [plain(one) for one in value]}
    if isinstance(value, dict):
        return {key: plain(one) for key, one in value.items()}
    if isinstance(value, list):
        return [plain(one) for one in value]
    return value
