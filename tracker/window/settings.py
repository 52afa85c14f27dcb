"""The window's settings, each declared once with its type and default; kept in the desktop's own way.

QSettings gives back 'true' for True in the next process, so every value is read through its declared type.
"""

from dataclasses import dataclass, fields, replace
from typing import Any

from PySide6.QtCore import QSettings


@dataclass(frozen=True, slots=True)
class Kept:
    """What is remembered from one day to the next; `begun`: sheets answered in part, as JSON text by their sha256."""

    theme: str = ""
    units: str = "US"
    currency: str = "USD"
    per: str = "msf"
    delivered: bool = True
    begun: str = ""


class Settings:
    """Reads and keeps the declared settings. Without a store (tests, pictures) nothing outlives the process."""

    def __init__(self, store: QSettings | None = None) -> None:
        self._store = store
        self._kept = Kept() if store is None else _read(store)

    @classmethod
    def of_user(cls) -> "Settings":
        """The settings of who is logged in."""
        return cls(QSettings("paperboard-tracker", "window"))

    def keep(self, **changes: Any) -> None:
        """Remembers new values; TypeError for one that is not declared."""
        self._kept = replace(self._kept, **changes)
        if self._store is not None:
            for name, value in changes.items():
                self._store.setValue(name, value)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._kept, name)


def _read(store: QSettings) -> Kept:
    values: dict[str, Any] = {
        field.name: store.value(field.name, field.default, type(field.default)) for field in fields(Kept)
    }
    return Kept(**values)
