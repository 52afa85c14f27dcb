"""Markets with planted faults, and how many the judge finds: python tests/benchmarks/market_simulation.py --help.

A market: the level of SBS is known; the other grades' levels lie somewhere inside the ratios the facts allow; price
per tonne falls a little with caliper; vendors' offers scatter. Nothing of the judge is used to make it.
"""

import argparse
import sys
from dataclasses import dataclass
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tracker.market.bands import Bands
from tracker.market.offers import Offers, Settings
from tracker.market.verdicts import judge

GRADES = ("SBS", "CUK", "UUK", "CRB", "URB", "FBB")
FACTS = {"SBS": (1.0, 1.0), "CUK": (0.70, 1.0), "UUK": (0.60, 0.70), "CRB": (0.60, 0.85), "URB": (0.50, 0.70),
         "FBB": (0.65, 1.0)}  # fmt: skip
BANDS = FACTS | {"SBS": (0.85, 1.15)}
BASES = ("tonne", "short_ton", "cwt", "lb", "kg", "msf", "1000m2", "m2", "1000sheets", "sheet")
KG = {"tonne": 1000.0, "short_ton": 907.18474, "cwt": 45.359237, "lb": 0.45359237, "kg": 1.0}
M2 = {"msf": 92.90304, "1000m2": 1000.0, "m2": 1.0, "1000sheets": 734.4, "sheet": 0.7344}
SLIPS = {  # quoted basis -> (what it was meant in, factor on the price)
    "tonne": ["cwt", "kg", "lb", "x10"],
    "short_ton": ["cwt", "lb", "x10"],
    "cwt": ["short_ton", "tonne", "lb", "x10"],
    "lb": ["kg", "cwt", "short_ton", "x10"],
    "kg": ["lb", "tonne", "x10"],
    "msf": ["1000m2", "3000ft2"],
    "1000m2": ["msf", "m2"],
    "m2": ["1000m2", "x10"],
    "1000sheets": ["sheet", "x10"],
    "sheet": ["1000sheets", "x10"],
}
CLEAN, OUTLIER, SLIP, CLUSTER = 0, 1, 2, 3


@dataclass(frozen=True)
class Market:
    offers: Offers
    bands: Bands
    fault: np.ndarray
    meant: list[str]


def make_market(rng, sizes=(12, 60), scatter=0.05, outliers=0.06, slips=0.04, cluster=False, vendors=10, least=0.30):
    level = rng.uniform(900, 1500)
    parts = []
    for code, grade in enumerate(GRADES):
        n = int(rng.integers(sizes[0], sizes[1] + 1))
        ratio = rng.uniform(*FACTS[grade])
        falling = rng.uniform(0.0, 0.008)
        points = rng.choice(np.arange(10, 31, 2), n)
        vendor = rng.integers(0, vendors, n)
        fault = np.zeros(n, int)
        if cluster:
            fault[rng.permutation(n)[: round(0.4 * n)]] = CLUSTER
            vendor[fault == CLUSTER] = vendors
        draw = rng.random(n)
        fault[(fault == CLEAN) & (draw < outliers)] = OUTLIER
        fault[(fault == CLEAN) & (draw > 1 - slips)] = SLIP
        price = level * ratio * (1 - falling * (points - 18)) * np.exp(rng.normal(0, scatter, n))
        gsm = points * 25.4 * rng.uniform(0.62, 0.82, n)
        basis = rng.integers(0, len(BASES), n)
        size = rng.uniform(least, 2 * least, n)
        price = np.where(fault == OUTLIER, price * np.where(rng.random(n) < 0.5, 1 + size, 1 - size), price)
        price = np.where(fault == CLUSTER, price * 1.38, price)
        meant = [BASES[b] for b in basis]
        for i in np.flatnonzero(fault == SLIP):
            meant[i] = str(rng.choice(SLIPS[BASES[basis[i]]]))
            price[i] *= slip_factor(BASES[basis[i]], meant[i], rng)
        parts.append((np.full(n, code), points, vendor, fault, price, gsm, basis, meant))
    grade, points, vendor, fault, price, gsm, basis = (np.concatenate([p[k] for p in parts]) for k in range(7))
    n = len(price)
    none = np.full(n, np.nan)
    offers = Offers(
        per_tonne=price, shown=np.ones(n, bool), grade=grade.astype(np.int32), vendor=vendor.astype(np.int32),
        basis=basis.astype(np.int32), currency=np.zeros(n, np.int32), board=np.arange(n, dtype=np.int32),
        received=np.zeros(n, np.int32), caliper_um=points * 25.4, grammage_gsm=gsm, from_kg=none, below_kg=none,
        delivered=np.zeros(n, bool), estimated=np.zeros(n, bool), grades=GRADES,
        vendors=[f"Vendor {k}" for k in range(vendors + 1)], bases=BASES, currencies=("USD",),
    )  # fmt: skip
    low, high = (np.array([level * BANDS[g][k] for g in GRADES]) for k in (0, 1))
    return Market(offers, Bands(low, high, ("level given",) * 6), fault, [m for p in parts for m in p[7]])


def slip_factor(quoted, meant, rng):
    """By what a price goes wrong when the figure meant per `meant` is read per `quoted`."""
    if meant == "x10":
        return float(rng.choice([10, 100, 0.1, 0.01]))
    if meant == "3000ft2":
        return 3.0 ** rng.choice([-1, 1])
    family = KG if quoted in KG else M2
    return family[meant] / family[quoted]


def named(slip, meant):
    if slip is None:
        return False
    if meant == "x10":
        return slip.kind == "decimal place" or abs(np.log(slip.factor) / np.log(10) % 1) < 0.05
    tons = {"short_ton", "tonne"}
    return slip.likely_basis == meant or {slip.likely_basis, meant} == tons


def run(markets, seed=1, cut=None, **how):
    rng = np.random.default_rng(seed)
    tally = dict.fromkeys(("clean", "alarms", "outliers", "found", "slips", "slips found", "named", "cluster",
                           "cluster found", "false slips"), 0)  # fmt: skip
    rates = {"USD": 1.0, "EUR": 1.1, "GBP": 1.3, "SEK": 0.095}
    settings = Settings(rates=rates) if cut is None else Settings(cut_off=cut, rates=rates)
    for _ in range(markets):
        market = make_market(rng, **how)
        verdicts = judge(market.offers, market.bands, settings)
        out, fault = verdicts.out_of_line, market.fault
        tally["clean"] += (fault == CLEAN).sum()
        tally["alarms"] += (out & (fault == CLEAN)).sum()
        tally["outliers"] += (fault == OUTLIER).sum()
        tally["found"] += (out & (fault == OUTLIER)).sum()
        tally["false slips"] += (verdicts.slip & (fault != SLIP)).sum()
        tally["slips"] += (fault == SLIP).sum()
        tally["slips found"] += (out & (fault == SLIP)).sum()
        tally["cluster"] += (fault == CLUSTER).sum()
        tally["cluster found"] += (out & (fault == CLUSTER)).sum()
        tally["named"] += sum(named(verdicts.slips.get(int(i)), market.meant[i]) for i in np.flatnonzero(fault == SLIP))
    return tally


def shares(tally):
    of = {"alarms": "clean", "found": "outliers", "slips found": "slips", "named": "slips", "cluster found": "cluster"}
    return {key: 100 * tally[key] / tally[whole] for key, whole in of.items() if tally[whole]}


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--markets", type=int, default=300)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--cut", type=float)
    chosen = parser.parse_args()
    for name, how in SCENES.items():
        tally = run(chosen.markets, chosen.seed, chosen.cut, **how)
        print(
            f"{name:46}",
            "  ".join(f"{k} {v:.2f} %" for k, v in shares(tally).items()),
            f"false slips {tally['false slips']}",
        )


SCENES = {
    "12 to 60 a grade, 5 %": {},
    "12 to 60 a grade, 3 %": {"scatter": 0.03},
    "12 to 60 a grade, 8 %": {"scatter": 0.08},
    "12 to 60 a grade, 5 %, outliers just 30 %": {"least": 0.3001, "outliers": 0.06},
    "12 to 15 a grade, 5 %": {"sizes": (12, 15)},
    "12 to 15 a grade, 5 %, many faults": {"sizes": (12, 15), "outliers": 0.15, "slips": 0.1},
    "3 to 9 a grade, 5 %": {"sizes": (3, 9)},
    "3 to 9 a grade, 8 %": {"sizes": (3, 9), "scatter": 0.08},
    "3 a grade, 5 %": {"sizes": (3, 3)},
    "3 to 9 a grade, 5 %, many faults": {"sizes": (3, 9), "outliers": 0.12},
    "12 to 60, one vendor 40 % at +38 %": {"cluster": True, "outliers": 0, "slips": 0},
    "12 to 15, one vendor 40 % at +38 %": {"cluster": True, "outliers": 0, "slips": 0, "sizes": (12, 15)},
    "12 to 60, cluster, 3 other vendors": {"cluster": True, "outliers": 0, "slips": 0, "vendors": 3},
}

if __name__ == "__main__":
    main()
