"""Where the data files that a person can mend are found, in a checkout and in an installed package."""

from functools import cache
from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent.parent


@cache
def _folder(name: str) -> Path:
    # Installed, the package has its own: beside it, among all that is installed, another's may have the same name.
    within = _PACKAGE / f"_{name}"
    return within if within.is_dir() else _PACKAGE.parent / name


def resource(*parts: str) -> Path:
    """The path of a file under resources/: resource('grades.toml')."""
    return _folder("resources").joinpath(*parts)


def sample_quotes() -> Path:
    """The folder of the demo's invented vendor files."""
    return _folder("sample_quotes")
