"""Markets with planted faults, and how many of them the judge finds.

    python tests/benchmarks/market_simulation.py --markets 300 --seed 7
    python tests/benchmarks/market_simulation.py --time

A market: the level of SBS is known; the other grades' levels lie somewhere inside the ratios the facts allow; price
per tonne falls a little with caliper; offers scatter round that. Faults are then planted. Nothing of the judge is
used to make a market, and the judge is told nothing of how it was made.
"""

import argparse
import sys
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from time import perf_counter

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.market.making import no_bands
from tracker.market.bands import Bands
from tracker.market.offers import Offers, Settings
from tracker.market.slips import Slip, SlipKind
from tracker.market.verdicts import judge

GRADES = ("SBS", "CUK", "UUK", "CRB", "URB", "FBB")
# Ratios to SBS: the trade's sayings, and where they leave an end open the tracker's own band (resources/bands.toml).
FACTS = {
    "SBS": (1.0, 1.0), "CUK": (0.70, 1.0), "UUK": (0.60, 0.70), "CRB": (0.60, 0.85), "URB": (0.50, 0.70),
    "FBB": (0.65, 1.0),
}  # fmt: skip
BANDS = FACTS | {"SBS": (0.85, 1.15)}
RATES = {"USD": 1.0, "EUR": 1.1, "GBP": 1.3, "SEK": 0.095}

BASES = ("tonne", "short_ton", "cwt", "lb", "kg", "msf", "1000m2", "m2", "1000sheets", "sheet")
AMOUNT = {  # kilograms, square metres or sheets in one unit of the basis
    "tonne": 1000.0, "short_ton": 907.18474, "cwt": 45.359237, "lb": 0.45359237, "kg": 1.0,
    "msf": 92.90304, "1000m2": 1000.0, "m2": 1.0, "1000sheets": 1000.0, "sheet": 1.0,
}  # fmt: skip
MEANT = {  # by basis as typed, what the price may have been meant in
    "tonne": ("cwt", "kg", "lb", "decimal"), "short_ton": ("cwt", "lb", "decimal"),
    "cwt": ("short_ton", "tonne", "lb", "decimal"), "lb": ("kg", "cwt", "short_ton", "decimal"),
    "kg": ("lb", "tonne", "decimal"), "msf": ("1000m2", "3000ft2"), "1000m2": ("msf", "m2"),
    "m2": ("1000m2", "decimal"), "1000sheets": ("sheet", "decimal"), "sheet": ("1000sheets", "decimal"),
}  # fmt: skip

CLEAN, OUTLIER, SLIP, VENDOR = "clean", "outlier", "slip", "vendor 38 % too dear"


@dataclass(frozen=True)
class Scene:
    """How markets of a kind are made. sizes: offers a grade, least and most. outliers, slips: their share.

    least, most: how far outliers are off, as a share of the price; dear: only dearer ones. cluster: one vendor with
    two fifths of a grade's offers is 38 % too dear. vendors: how many others there are. ratio_error: grades' true
    levels may lie this far outside the facts' ranges. level_error: the level told is off by up to this. brackets:
    each board is offered at three order sizes, each dearer by this share than the next larger.
    """

    sizes: tuple[int, int] = (12, 60)
    scatter: float = 0.05
    outliers: float = 0.06
    slips: float = 0.04
    least: float = 0.30
    most: float = 0.60
    dear: float = 0.5
    cluster: bool = False
    vendors: int = 10
    steepest: float = 0.008
    ratio_error: float = 0.0
    level_error: float = 0.0
    level_known: bool = True
    brackets: float | None = None


SCENES = {
    "a dozen and more": Scene(),
    "a dozen and more, scatter 3 %": Scene(scatter=0.03),
    "a dozen and more, scatter 8 %": Scene(scatter=0.08),
    "a dozen and more, outliers of just 30 %": Scene(most=0.30),
    "12 to 15": Scene(sizes=(12, 15)),
    "12 to 15, outliers of just 30 %": Scene(sizes=(12, 15), most=0.30),
    "12 to 15, one in four faulty": Scene(sizes=(12, 15), outliers=0.15, slips=0.10),
    "12 to 15, all outliers dearer": Scene(sizes=(12, 15), outliers=0.15, dear=1.0),
    "12 to 15, three vendors": Scene(sizes=(12, 15), vendors=3),
    "12 to 15, steep with caliper": Scene(sizes=(12, 15), steepest=0.016),
    "a dozen and more, facts' ratios 15 % out": Scene(ratio_error=0.15),
    "a dozen and more, level 10 % out": Scene(level_error=0.10),
    "a dozen and more, no level": Scene(level_known=False),
    "a dozen and more, brackets 4 % apart": Scene(brackets=0.04),
    "3 to 9": Scene(sizes=(3, 9)),
    "3 to 9, scatter 3 %": Scene(sizes=(3, 9), scatter=0.03),
    "3 to 9, scatter 8 %": Scene(sizes=(3, 9), scatter=0.08),
    "3 to 9, outliers of just 30 %": Scene(sizes=(3, 9), most=0.30),
    "3 to 9, one in six faulty": Scene(sizes=(3, 9), outliers=0.12),
    "3 to 9, three vendors": Scene(sizes=(3, 9), vendors=3),
    "3 to 9, facts' ratios 15 % out": Scene(sizes=(3, 9), ratio_error=0.15),
    "3 to 9, no level": Scene(sizes=(3, 9), level_known=False),
    "3": Scene(sizes=(3, 3)),
    "one vendor 38 % too dear": Scene(cluster=True, outliers=0, slips=0),
    "12 to 15, one vendor 38 % too dear": Scene(cluster=True, outliers=0, slips=0, sizes=(12, 15)),
    "12, one vendor 38 % too dear": Scene(cluster=True, outliers=0, slips=0, sizes=(12, 12)),
    "12 to 15, the same beside three vendors": Scene(cluster=True, outliers=0, slips=0, vendors=3, sizes=(12, 15)),
    "12 to 15, the same beside two vendors": Scene(cluster=True, outliers=0, slips=0, vendors=2, sizes=(12, 15)),
    "one vendor 38 % too dear, no level": Scene(cluster=True, outliers=0, slips=0, level_known=False),
    "one vendor 38 % too dear, other faults": Scene(cluster=True),
}


@dataclass
class Market:
    """One market as made: what the judge is given, and what was planted (fault and meant, by offer)."""

    offers: Offers
    bands: Bands
    fault: np.ndarray
    meant: list[str]


@dataclass
class Score:
    """Counts over many markets, by fault."""

    planted: Counter = field(default_factory=Counter)
    found: Counter = field(default_factory=Counter)
    named: int = 0
    misnamed: int = 0

    def share(self, fault: str) -> float:
        """Percent of the offers with this fault (or of clean ones) that were called out of line."""
        return 100 * self.found[fault] / max(self.planted[fault], 1)

    def named_share(self) -> float:
        return 100 * self.named / max(self.planted[SLIP], 1)

    def line(self) -> str:
        parts = [f"false alarms {self.share(CLEAN):5.2f} % of {self.planted[CLEAN]}"]
        for fault in (OUTLIER, SLIP, VENDOR):
            if self.planted[fault]:
                parts.append(f"{fault} found {self.share(fault):6.2f} % of {self.planted[fault]}")
        if self.planted[SLIP]:
            parts.append(f"named {self.named_share():6.2f} %, slips named where none is {self.misnamed}")
        return "; ".join(parts)


def make_market(rng: np.random.Generator, scene: Scene) -> Market:
    """A market of six grades with its faults."""
    level = rng.uniform(900, 1500)
    grades = [_grade(rng, scene, code, level) for code in range(len(GRADES))]
    names = ("grade", "points", "vendor", "fault", "price", "basis", "gsm", "from_kg", "board")
    columns = {name: np.concatenate([grade[name] for grade in grades]) for name in names}
    told = level * (1 + rng.uniform(-scene.level_error, scene.level_error))
    low, high = (np.array([told * BANDS[grade][end] for grade in GRADES]) for end in (0, 1))
    bands = Bands(low, high, ("level given",) * len(GRADES)) if scene.level_known else no_bands(GRADES)
    meant = [basis for grade in grades for basis in grade["meant"]]
    return Market(_offers(columns, scene), bands, columns["fault"], meant)


def _grade(rng: np.random.Generator, scene: Scene, code: int, level: float) -> dict:
    n = int(rng.integers(scene.sizes[0], scene.sizes[1] + 1))
    low, high = FACTS[GRADES[code]]
    ratio = rng.uniform(low * (1 - scene.ratio_error * (code > 0)), high * (1 + scene.ratio_error * (code > 0)))
    points = rng.choice(np.arange(10, 31, 2), n)
    price = level * ratio * (1 - rng.uniform(0, scene.steepest) * (points - 18))
    vendor = rng.integers(0, scene.vendors, n)
    from_kg = np.full(n, np.nan)
    if scene.brackets is not None:
        points, price, vendor = (np.repeat(column, 3) for column in (points, price, vendor))
        from_kg = np.tile([1000.0, 5000.0, 20000.0], n)
        price = price * np.tile([(1 + scene.brackets) ** 2, 1 + scene.brackets, 1.0], n)
    count = price.size
    price = price * np.exp(rng.normal(0, scene.scatter, count))
    fault = np.full(count, CLEAN, dtype=object)
    if scene.cluster:
        dear = rng.permutation(count)[: round(0.4 * count)]
        vendor[dear], fault[dear], price[dear] = scene.vendors, VENDOR, price[dear] * 1.38
    basis = rng.integers(0, len(BASES), count)
    meant = [BASES[chosen] for chosen in basis]
    _plant(rng, scene, price, fault, basis, meant)
    gsm = points * 25.4 * rng.uniform(0.62, 0.82, count)
    return {"grade": np.full(count, code), "points": points, "vendor": vendor, "fault": fault, "price": price,
            "basis": basis, "gsm": gsm, "from_kg": from_kg, "board": np.arange(count), "meant": meant}  # fmt: skip


def _plant(rng: np.random.Generator, scene: Scene, price, fault, basis, meant: list[str]) -> None:
    draw = rng.random(price.size)
    for at in np.flatnonzero((fault == CLEAN) & (draw < scene.outliers)):
        off = rng.uniform(scene.least, scene.most)
        price[at] *= 1 + off if rng.random() < scene.dear else 1 - off
        fault[at] = OUTLIER
    for at in np.flatnonzero((fault == CLEAN) & (draw > 1 - scene.slips)):
        typed = BASES[basis[at]]
        meant[at] = str(rng.choice(MEANT[typed]))
        price[at] *= _times(rng, typed, meant[at])
        fault[at] = SLIP


def _times(rng: np.random.Generator, typed: str, meant: str) -> float:
    """What the price comes out at, over what it should be, when a figure meant otherwise is read as typed."""
    if meant == "decimal":
        return float(rng.choice([10, 100, 1 / 10, 1 / 100]))
    if meant == "3000ft2":
        return float(rng.choice([3, 1 / 3]))
    return AMOUNT[meant] / AMOUNT[typed]


def _offers(columns: dict, scene: Scene) -> Offers:
    n = columns["price"].size
    codes = {name: columns[name].astype(np.int32) for name in ("grade", "vendor", "basis")}
    return Offers(
        per_tonne=columns["price"], shown=np.ones(n, bool), **codes, currency=np.zeros(n, np.int32),
        board=np.full(n, -1, np.int32), received=np.full(n, -1, np.int32), caliper_um=columns["points"] * 25.4,
        grammage_gsm=columns["gsm"], from_kg=columns["from_kg"], below_kg=np.full(n, np.nan),
        delivered=np.zeros(n, np.int32), estimated=np.zeros(n, bool), grades=GRADES,
        vendors=[f"Vendor {code}" for code in range(scene.vendors + 1)], bases=BASES, currencies=("USD",),
    )  # fmt: skip


def rightly_named(slip: Slip | None, meant: str) -> bool:
    """Short ton and tonne count as one, and readings that differ by no factor too (cwt for lb: two places)."""
    if slip is None:
        return False
    if meant == "decimal":
        places = np.log10(slip.factor)
        return slip.kind is SlipKind.DECIMAL or abs(places - round(places)) < 1e-9
    tons = {"short_ton", "tonne"}
    return slip.likely_basis == meant or {str(slip.likely_basis), meant} <= tons


def simulate(scene: Scene, markets: int, seed: int, cut_off: float | None = None) -> Score:
    """Judge so many markets of a scene."""
    rng = np.random.default_rng(seed)
    settings = Settings(rates=RATES) if cut_off is None else Settings(cut_off=cut_off, rates=RATES)
    score = Score()
    for _ in range(markets):
        market = make_market(rng, scene)
        verdicts = judge(market.offers, market.bands, settings)
        score.planted.update(market.fault)
        score.found.update(market.fault[verdicts.out_of_line])
        score.misnamed += int((verdicts.slip & (market.fault != SLIP)).sum())
        for at in np.flatnonzero(market.fault == SLIP):
            score.named += rightly_named(verdicts.slips.get(int(at)), market.meant[at])
    return score


def seconds_for_100_000(seed: int) -> float:
    """Wall-clock seconds to judge a market of that size, the best of three."""
    market = make_market(np.random.default_rng(seed), Scene(sizes=(16_667, 16_667), vendors=60))
    taken = []
    for _ in range(3):
        start = perf_counter()
        judge(market.offers, market.bands, Settings(rates=RATES))
        taken.append(perf_counter() - start)
    return min(taken)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--markets", type=int, default=300, help="markets a scene (of six grades each)")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--cut-off", type=float, help="the sensitivity, else the usual one")
    parser.add_argument("--scene", default="", help="only scenes whose name holds this")
    parser.add_argument("--time", action="store_true", help="instead, how long 100,000 offers take to judge")
    chosen = parser.parse_args()
    if chosen.time:
        print(f"{seconds_for_100_000(chosen.seed):.2f} s for 100,000 offers of 60 vendors, best of three")
        return
    for name, scene in SCENES.items():
        if chosen.scene in name:
            print(f"{name:40} {simulate(scene, chosen.markets, chosen.seed, chosen.cut_off).line()}", flush=True)


if __name__ == "__main__":
    main()
