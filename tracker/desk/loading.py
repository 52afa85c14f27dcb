"""From stored columns to the snapshot that tables and pictures draw from."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.desk.footing_columns import Measures, footing_columns
from tracker.desk.snapshot import Charges, Codes, Days, Flags, Floats, Snapshot
from tracker.store.columns import Column, OfferColumns
from tracker.store.types import STORED_UNITS
from tracker.trade.basis import Basis
from tracker.trade.offer import GrammageFrom
from tracker.trade.quoted import basis_sign, money_sign

_BASES = [basis.value for basis in Basis]


def snapshot_of(stored: OfferColumns) -> Snapshot:
    """Every stored offer as arrays, with its price on both common bases and the day it was superseded."""
    columns = stored.columns
    vendor, vendors = _codes_by_id(columns["vendor_id"], stored.vendors)
    file, files = _codes_by_id(columns["price_file_id"], {key: name for key, (name, _) in stored.files.items()})
    grade, grades = _codes(columns["grade"])
    currency, currencies = _codes(columns["currency"])
    basis = _coded(columns["basis"], {name: code for code, name in enumerate(_BASES)})
    delivered = _whole(columns["delivered"])
    price = _exact(columns["price_units"], columns["price_scale"])
    board = Measures(
        _measure(columns["grammage_gsm"]),
        _measure(columns["sheet_width_mm"]) * _measure(columns["sheet_length_mm"]) / 1e6,
    )
    ids = np.array(columns["id"], np.int64)
    charges = _charges(stored.charges, ids, columns["currency"])
    prices = footing_columns(price, basis, delivered, board, charges, _BASES)
    received = _days(columns["received"])
    keys = np.array(columns["board_key"], np.int64)
    return Snapshot(
        id=ids,
        vendor=vendor,
        grade=grade,
        currency=currency,
        basis=basis,
        file=file,
        coated_sides=_whole(columns["coated_sides"]),
        delivered=delivered,
        caliper_um=_measure(columns["caliper_um"]),
        grammage_gsm=board.grammage_gsm,
        estimated=_equals(columns["grammage_from"], GrammageFrom.ESTIMATED.value),
        price=price,
        per_tonne=prices.per_tonne,
        per_msf=prices.per_msf,
        delivered_per_tonne=prices.delivered_per_tonne,
        delivered_per_msf=prices.delivered_per_msf,
        from_kg=_measure(columns["from_kg"]),
        below_kg=_measure(columns["below_kg"]),
        minimum_kg=_measure(columns["minimum_kg"]),
        lead_low=_floats(columns["lead_low"]),
        lead_high=_floats(columns["lead_high"]),
        valid_until=_days(columns["valid_until"]),
        valid_at_latest=np.maximum(_days(columns["valid_until"]), _days(columns["valid_at_latest"])),
        received=received,
        superseded_by_day=superseded_by_day(keys, received, np.array(columns["price_file_id"], np.int64)),
        product=list(columns["product"]),
        as_quoted=_as_quoted(columns),
        sheet=list(columns["sheet"]),
        cell=list(columns["cell"]),
        vendors=vendors,
        grades=grades,
        currencies=currencies,
        bases=list(_BASES),
        files=files,
        board=np.unique(keys, return_inverse=True)[1].astype(np.int32).reshape(-1),
        sha256s=[sha256 for _, sha256 in stored.files.values()],
        sheet_m2=board.sheet_m2,
        charges=charges,
        measured=np.zeros(len(ids), np.bool_),
    )


def superseded_by_day(board_key: NDArray[np.int64], received: Days, file_id: NDArray[np.int64]) -> Days:
    """The day on which the same offer came in another, newer file; -1 where none did.

    Newer: received later, or on the same day in a file taken in later. Several offers of one file that look the same
    (two destinations, say) stand side by side and supersede each other never.
    """
    n = len(board_key)
    result = np.full(n, -1, np.int32)
    if n < 2:
        return result
    order = np.lexsort((file_id, received, board_key))
    key, day, file = board_key[order], received[order], file_id[order]
    starts = np.flatnonzero(np.r_[True, (key[1:] != key[:-1]) | (day[1:] != day[:-1]) | (file[1:] != file[:-1])])
    # A run is one file's offers of one board; the run after it, if it is of the same board, supersedes it.
    run = np.repeat(np.arange(len(starts)), np.diff(np.r_[starts, n]))
    following = np.r_[starts[1:], -1][run]
    superseded = (following >= 0) & (key[following] == key)
    result[order[superseded]] = day[following[superseded]]
    return result


def _charges(charges: Mapping[str, Column], ids: NDArray[np.int64], currency: Column) -> Charges:
    """Charges by the index of their offer; those of offers that are not loaded (withdrawn files) are left out."""
    offer_id = np.array(charges["offer_id"], np.int64)
    at = np.searchsorted(ids, offer_id)
    kept = np.flatnonzero((at < len(ids)) & (ids[np.minimum(at, len(ids) - 1)] == offer_id)) if len(ids) else at[:0]
    offer = at[kept].astype(np.int32)
    own = [charges["currency"][index] for index in kept]
    same = [money is None or money == currency[index] for money, index in zip(own, offer, strict=True)]
    return Charges(
        offer,
        _exact(charges["price_units"], charges["price_scale"])[kept],
        _coded(charges["basis"], {name: code for code, name in enumerate(_BASES)})[kept],
        np.array(charges["freight"], np.bool_)[kept],
        np.array(same, np.bool_),
    )


def _codes_by_id(ids: Column, names: Mapping[int, str]) -> tuple[Codes, list[str]]:
    return _coded(ids, {key: code for code, key in enumerate(names)}), list(names.values())


def _codes(values: Column) -> tuple[Codes, list[str]]:
    names = sorted({value for value in values if value is not None})
    return _coded(values, {name: code for code, name in enumerate(names)}), names


def _coded(values: Sequence[Any], code_of: Mapping[Any, int]) -> Codes:
    return np.array([code_of.get(value, -1) for value in values], np.int32)


def _days(values: Column) -> Days:
    day_of: dict[date | None, int] = {value: -1 if value is None else value.toordinal() for value in set(values)}
    return np.array([day_of[value] for value in values], np.int32)


def _floats(values: Column) -> Floats:
    return np.array(values, np.float64)


def _measure(values: Column) -> Floats:
    return np.array(values, np.float64) / STORED_UNITS


def _exact(units: Column, scale: Column) -> Floats:
    # Dividing by an exact power of ten gives the float nearest to the quoted decimal; multiplying by 0.01 would not.
    return np.array(units, np.float64) / 10.0 ** np.array(scale, np.float64)


def _whole(values: Column) -> Codes:
    return np.array([-1 if value is None else int(value) for value in values], np.int32)


def _equals(values: Column, wanted: str) -> Flags:
    return np.array([value == wanted for value in values], np.bool_)


def _as_quoted(columns: Mapping[str, Column]) -> list[str]:
    parts = zip(columns["price_units"], columns["price_scale"], columns["currency"], columns["basis"], strict=True)
    ends = {basis.value: f" /{basis_sign(basis)}" for basis in Basis}
    return [f"{money_sign(money)}{_grouped(units, scale)}{ends[basis]}" for units, scale, money, basis in parts]


def _grouped(units: int, scale: int) -> str:
    if not scale:
        return f"{units:,}"
    whole, rest = divmod(units, 10**scale)
    # Money has no single decimal: 57.5 is written 57.50.
    return f"{whole:,}.{f'{rest:0{scale}d}':0<2}"
