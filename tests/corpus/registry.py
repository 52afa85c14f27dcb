"""The families of sheets: a name, the formats and languages each can take, and how a file of it is built."""

import importlib
import pkgutil
import zlib
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fnmatch import fnmatch

from tests.corpus.kit import Kit
from tests.corpus.model import FilePlan
from tests.corpus.weather import weather
from tests.corpus.writers import WRITERS

Build = Callable[[Kit], FilePlan | None]
SHEETS = ("xlsx", "xlsxw", "xls", "ods", "xlsx", "xlsxw", "xlsb")
ALL = (*SHEETS, "csv")
EVERYWHERE = ("en-us", "en", "de", "fr", "es", "sv")


@dataclass(frozen=True)
class Family:
    """`resave`: truth still holds when a spreadsheet program saves the file again. `heavy`: one file is enough."""

    name: str
    build: Build
    formats: tuple[str, ...]
    places: tuple[str, ...]
    resave: bool = True
    heavy: bool = False


FAMILIES: dict[str, Family] = {}


def family(
    name: str,
    formats: tuple[str, ...] = SHEETS,
    places: tuple[str, ...] = EVERYWHERE,
    resave: bool = True,
    heavy: bool = False,
) -> Callable[[Build], Build]:
    """Register a builder. `places` are languages; 'en-us' means points, pounds and US dollars."""

    def register(build: Build) -> Build:
        if name in FAMILIES:
            raise ValueError(f"two families are called {name}")
        FAMILIES[name] = Family(name, build, formats, places, resave, heavy)
        return build

    return register


def load() -> dict[str, Family]:
    """All families, sorted by name."""
    package = importlib.import_module("tests.corpus.families")
    for module in pkgutil.iter_modules(package.__path__):
        importlib.import_module(f"tests.corpus.families.{module.name}")
    return dict(sorted(FAMILIES.items()))


@dataclass(frozen=True)
class Made:
    """One generated file: its name, its bytes, its plan, its entry in truth.json."""

    name: str
    data: bytes
    plan: FilePlan
    truth: dict
    resave: bool


def make(kind: Family, seed: int) -> Made:
    """One file of a family; the seed rotates language and format so that a run of seeds meets them all."""
    offset = zlib.crc32(kind.name.encode())
    place = kind.places[(seed + offset) % len(kind.places)]
    style = kind.formats[(seed + offset // 7) % len(kind.formats)]
    kit = Kit(f"{kind.name}/{seed}", place[:2], us=place == "en-us")
    plan = kind.build(kit) or kit.plan
    plan.family = kind.name
    weather(plan, kit.rng, is_csv=style == "csv")
    extension, write = WRITERS[style]
    if plan.extension:
        extension = plan.extension
    data = plan.raw if plan.raw is not None else write(plan)
    name = f"{kind.name}_{seed:04d}.{extension}"
    is_csv = plan.raw is None and style == "csv"
    return Made(name, data, plan, plan.as_truth(name, is_csv), kind.resave and plan.raw is None and not is_csv)


def corpus(seed: int, pattern: str = "*", count: int = 1, heavy: bool = True) -> Iterator[Made]:
    """`count` files of each family whose name matches, from seed on; without the heavy ones if told so."""
    for kind in load().values():
        if fnmatch(kind.name, pattern) and (heavy or not kind.heavy):
            for step in range(1 if kind.heavy else count):
                yield make(kind, seed + step)
