"""What families build sheets with: seeded choices of words, boards, terms and title blocks, truth kept alongside."""

import random
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import Any

from tests.corpus import boards
from tests.corpus.boards import Board
from tests.corpus.letterhead import lay_out
from tests.corpus.model import Csv, FilePlan, SheetPlan
from tests.corpus.truth import KG_PER, Charge, Intent
from tests.corpus.vendors import VENDORS
from tests.corpus.words import LANGUAGES
from tests.corpus.words.language import Language
from tests.corpus.words.units import CURRENCY_WORDS, UNIT_WORDS


@dataclass
class Facts:
    """What holds for the whole file or sheet, as the title block or notes say."""

    vendor: Any = None
    lead: tuple[int, int] | None = None
    valid: date | None = None
    delivered: bool | None = None
    minimum_kg: Fraction | None = None
    charges: list[Charge] = field(default_factory=list)


class Kit:
    """Seeded choices for one file. `us`: points and pounds; otherwise micrometres and g/m²."""

    def __init__(self, seed: str, lang: str, us: bool):
        self.rng = random.Random(seed)
        self.lang: Language = LANGUAGES[lang]
        self.us = us
        self.country = "US" if us else {"en": "GB", "de": "DE", "fr": "FR", "es": "ES", "sv": "SE"}[lang]
        self.currency = {"US": "USD", "GB": "GBP", "SE": "SEK"}.get(self.country, "EUR")
        if self.country == "GB" and self.rng.random() < 0.4:
            self.currency = "EUR"
        if self.country in ("DE", "FR") and self.rng.random() < 0.2:
            self.country, self.currency = "CH", "CHF"
        self.vendor, self.address = self.rng.choice(VENDORS[self.country])
        self.units = ("pt", "lb_msf") if us else ("um", "gsm")
        self.facts = Facts()
        self.ton_is_settled = True  # g/m² and µm throughout; a sheet without one of them says 't'
        self.plan = FilePlan(csv=self.dialect())

    # --- choices

    def pick(self, options: Any) -> Any:
        return self.rng.choice(list(options))

    def chance(self, share: float) -> bool:
        return self.rng.random() < share

    def dialect(self) -> Csv:
        """A CSV as a spreadsheet program of the vendor's country saves it."""
        decimal, thousands = (".", ",") if self.lang.code == "en" else (",", ".")
        if self.lang.code in ("fr", "sv"):
            thousands = self.pick((" ", "\u00a0", ""))
        if self.country == "CH":
            decimal, thousands = ".", "'"
        delimiter = self.pick(",,\t|") if self.lang.code == "en" else self.pick(";;;\t")
        encoding = self.pick(("utf-8", "utf-8-sig", "cp1252", "cp1252", "utf-16"))
        return Csv(
            delimiter,
            encoding,
            decimal,
            thousands if self.chance(0.6) else "",
            self.pick(("\r\n", "\n")),
            self.chance(0.15),
        )

    def head(self, key: str) -> str:
        """A header word, sometimes in capitals or misspaced as people type it."""
        word = self.pick(self.lang.headers[key])
        return word.upper() if self.chance(0.08) else word

    def unit_head(self, key: str, unit: str) -> str:
        """'Caliper (pt)', 'Flächengewicht g/m²', 'g/m²'…"""
        word = self.pick(UNIT_WORDS[unit])
        name = self.head(key)
        return self.pick(
            (f"{name} ({word})", f"{name} {word}", f"{name}\n({word})", f"{name} [{word}]", f"{name}, {word}", word)
        )

    def caliper_head(self) -> str:
        return self.unit_head("caliper", self.units[0])

    def weight_head(self) -> str:
        return self.unit_head("weight" if self.us else "grammage", self.units[1])

    def money(self, currency: str | None = None) -> str:
        currency = currency or self.currency
        words = CURRENCY_WORDS[currency]
        return self.pick(words)

    def per(self, basis: str) -> str:
        words = self.lang.per[basis]
        return self.pick(words if self.ton_is_settled else [word for word in words if word != "ton"])

    def each(self, basis: str) -> str:
        return self.pick(self.lang.each).format(per=self.per(basis))

    def price_head(self, basis: str, currency: str | None = None) -> str:
        """A header that says currency and basis."""
        money, per, name = self.money(currency), self.per(basis), self.head("price")
        join = self.pick(("/", "/", " per " if self.lang.code == "en" else "/"))
        return self.pick(
            (
                f"{name} ({money}{join}{per})",
                f"{name} {money}{join}{per}",
                f"{name}\n{money}{join}{per}",
                f"{money}{join}{per}",
                f"{name} [{money}{join}{per}]",
            )
        )

    # --- boards

    def grades(self, n: int) -> list[str]:
        pool = ["SBS", "CUK", "CRB", "URB", "FBB", "UUK"] if self.us else ["FBB", "CRB", "SBS", "URB", "CUK"]
        weights = [5, 3, 4, 3, 1, 1] if self.us else [5, 5, 2, 2, 1]
        chosen: list[str] = []
        while len(chosen) < n:
            grade = self.rng.choices(pool, weights)[0]
            if grade not in chosen:
                chosen.append(grade)
        return chosen

    def series(self, grade: str, n: int, words: tuple[str, Any] | None = None) -> list[Board]:
        """n boards of one grade, heavier ones cheaper by weight, all called the same."""
        words = words or self.pick(self.lang.boards[grade])
        sizes = sorted(self.rng.sample((boards.POINTS if self.us else boards.GRAMMAGES)[grade], n))
        return [boards.board(self.rng, grade, words, size, self.units, index / 10) for index, size in enumerate(sizes)]

    def range(self, n_grades: int, low: int = 2, high: int = 4) -> list[Board]:
        """Boards of several grades, grouped by grade."""
        return [item for grade in self.grades(n_grades) for item in self.series(grade, self.rng.randint(low, high))]

    def price(
        self, item: Board, basis: str, currency: str | None = None, factor: float = 1.0, places: int | None = None
    ) -> Decimal:
        return boards.price(item, basis, currency or self.currency, factor, places)

    def intent(self, item: Board, price: Decimal, basis: str, **over: Any) -> Intent:
        """The truth of one offer: the board, the price, the file's facts, and what this row says itself."""
        facts = self.facts
        base = Intent(
            item.grade,
            price,
            self.currency,
            basis,
            item.sides,
            item.caliper_um,
            item.gsm,
            item.sheet_mm,
            minimum_kg=facts.minimum_kg,
            lead=facts.lead,
            valid=facts.valid,
            delivered=facts.delivered,
            charges=facts.charges,
            vendor=facts.vendor,
        )
        return replace(base, **over)

    # --- terms

    def lead(self, unread: bool = False) -> tuple[str, tuple[int, int] | None]:
        """A lead time in words and in calendar days; with `unread`, words that give none."""
        if unread:
            return self.pick(self.lang.lead_unread), None
        kind = self.pick(("weeks", "weeks", "weeks", "days", "work", "stock"))
        if kind == "stock":
            return self.pick(self.lang.lead_stock), (0, 0)
        low = self.rng.randint(2, 6) * (1 if kind == "weeks" else 5 if kind == "work" else 7)
        high = low + (self.pick((0, 1, 2)) if kind == "weeks" else 0)
        shown = str(low) if high == low else f"{low}{self.pick('-–')}{high}"
        form = self.pick(
            {"weeks": self.lang.lead_weeks, "days": self.lang.lead_days, "work": self.lang.lead_work_days}[kind]
        )
        days = tuple(_calendar(value, kind) for value in (low, high))
        said = form.format(n=shown)
        if low == high and self.chance(0.15):
            said = self.pick(self.lang.about).format(lead=said)
        return said, (days[0], days[1])

    def day(self, months: tuple[int, int] = (6, 12)) -> date:
        """A date that reads only one way: its day is above 12."""
        return date(2026, self.rng.randint(*months), self.rng.randint(13, 28))

    def date_words(self, day: date) -> str:
        """The day as this vendor writes it."""
        if self.chance(0.35):
            month = self.lang.months[day.month - 1]
            if self.us and self.chance(0.6):
                return f"{month} {day.day}, {day.year}"
            return self.lang.long_date.format(d=day.day, month=month, y=day.year)
        if self.chance(0.2):
            return day.isoformat()
        if self.lang.code == "en" and self.chance(0.2):
            short = self.lang.months[day.month - 1][:3]
            return self.pick(
                (f"{day.day}-{short}-{day.year}", f"{short} {day.day}, {day.year}", f"{day.day} {short} {day.year}")
            )
        return f"{day:%m/%d/%Y}" if self.us else day.strftime(self.lang.short_date)

    def mass(self) -> tuple[str, Fraction]:
        """An order size in words and in kg."""
        if self.us:
            pounds = self.pick((5000, 10000, 20000, 40000))
            return self.pick((f"{pounds:,} lb", f"{pounds} lbs", f"{pounds:,} pounds")), Fraction(pounds) * KG_PER["lb"]
        tonnes = self.pick((1, 2, 3, 5, 10, 20))
        return self.pick((f"{tonnes} t", f"{tonnes * 1000} kg")), Fraction(tonnes * 1000)

    def mass_unit(self, unit: str) -> Fraction:
        """Kilograms in one 'lb', 't', 'kg' or 'cwt'."""
        return Fraction(1000) if unit == "t" else KG_PER[unit]

    # --- title block

    def title_block(self, sheet: SheetPlan, row: int, column: int, basis: str | None = None, say: str = "vdlm") -> int:
        """Letterhead and terms; returns the next free row. `say`: v(alid) d(elivery) l(ead) m(inimum), each perhaps.

        With `basis`, a line says currency and basis of all prices.
        """
        label = f"{self.lang.headers['vendor'][0]}: " if self.chance(0.12) else ""
        vendor = [label + self.vendor, *([self.address] if self.chance(0.6) else [])]
        title = self.pick(self.lang.title).format(n=f"{self.rng.randint(1, 30)}-{self.rng.randint(1, 9)}")
        issued = self.day((1, 5))
        dated = self.pick(self.lang.dated).format(date=self.date_words(issued))
        terms = [dated] if self.chance(0.5) else []
        if basis:
            terms.append(self.pick(self.lang.prices_in).format(currency=self.money(), each=self.each(basis)) + ".")
        terms += self.terms(say)
        if self.chance(0.3):
            terms.append(self.pick(self.lang.noise))
        self.facts.vendor = self.plan.vendor = self.vendor
        return lay_out(self.rng, sheet, row, column, title, vendor, terms)

    def terms(self, say: str, share: float = 0.6) -> list[str]:
        """Sentences on validity, delivery, lead time and minimum; the facts keep what was said."""
        lines = []
        if "v" in say and self.chance(share):
            day = self.day()
            self.facts.valid = day
            lines.append(self.pick(self.lang.valid_until).format(date=self.date_words(day)))
        if "d" in say and self.chance(share):
            self.facts.delivered = self.chance(0.5)
            lines.append(self.pick(self.lang.delivered if self.facts.delivered else self.lang.ex_works))
        if "l" in say and self.chance(share):
            words, self.facts.lead = self.lead()
            lines.append(self.pick(self.lang.lead_is).format(lead=words))
        if "m" in say and self.chance(share * 0.7):
            words, self.facts.minimum_kg = self.mass()
            lines.append(self.pick(self.lang.minimum_is).format(mass=words))
        return lines

    def footer(self, sheet: SheetPlan, row: int, column: int, n: int = 2) -> None:
        """Footnotes that offer nothing, some with numbers."""
        for offset, line in enumerate(self.rng.sample(self.lang.noise, n)):
            sheet.put(row + offset, column, line)

    def natural_basis(self) -> str:
        """A basis usual for the vendor's country."""
        return (
            self.pick(("short_ton", "short_ton", "cwt", "msf", "lb"))
            if self.us
            else self.pick(("tonne", "tonne", "tonne", "kg", "1000m2"))
        )


def _calendar(value: int, kind: str) -> int:
    return {"weeks": value * 7, "days": value, "work": -(-value * 7 // 5)}[kind]
