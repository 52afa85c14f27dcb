"""Who quotes: named by a label or in the letterhead, for the file, a sheet or a table."""

from collections.abc import Iterable, Sequence

from tracker.intake.offers.said import Said, at
from tracker.intake.tables.table import Words
from tracker.intake.values.company import company_name, labelled_company, may_be_a_name
from tracker.intake.words.fold import fold


def vendor_among(texts: Sequence[Words]) -> Said[str] | None:
    """The one vendor that some texts name; a labelled name comes before others; None for none or two."""
    labelled = _names(texts, labelled=True)
    return _only(labelled) or _only(_names(texts, labelled=False))


def may_name_another(texts: Sequence[Words], vendor: Said[str]) -> bool:
    """Whether a sheet begins with what may be another firm's name: then the file's vendor is not taken for its own."""
    first = min(texts, key=lambda words: (words.row, words.cell.column), default=None)
    return first is not None and fold(vendor.value) not in fold(first.text) and may_be_a_name(first.text)


def _names(texts: Iterable[Words], *, labelled: bool) -> dict[str, Said[str]]:
    found: dict[str, Said[str]] = {}
    for words in texts:
        name = labelled_company(words.text) if labelled else company_name(words.text)
        if name is not None:
            found.setdefault(fold(name), Said(name, at(words.cell), words.text))
    return found


def _only(names: dict[str, Said[str]]) -> Said[str] | None:
    return next(iter(names.values())) if len(names) == 1 else None
