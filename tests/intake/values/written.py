"""How people write numbers: every supported form of one value, for the property tests of all grammars."""

from decimal import Decimal

from hypothesis import strategies as st

# name -> (sign between groups, decimal sign)
FORMS = {
    "plain point": ("", "."),
    "plain comma": ("", ","),
    "US": (",", "."),
    "German": (".", ","),
    "space": (" ", ","),
    "no-break space": ("\u00a0", ","),
    "thin space": ("\u2009", ","),
    "narrow no-break space": ("\u202f", ","),
    "Swiss": ("'", "."),
    "Swiss, typographic": ("’", "."),
}
forms = st.sampled_from(sorted(FORMS))


def written(value: Decimal, form: str) -> str:
    """A non-negative value in one form, with all its decimals."""
    group, sign = FORMS[form]
    whole, _, fraction = format(value, "f").partition(".")
    groups = []
    while len(whole) > 3:
        groups.insert(0, whole[-3:])
        whole = whole[:-3]
    text = group.join([whole, *groups])
    return f"{text}{sign}{fraction}" if fraction else text


def decimals(low: str, high: str, places: int):
    return st.decimals(Decimal(low), Decimal(high), places=places, allow_nan=False, allow_infinity=False)


prices = st.one_of(decimals("0.01", "99999", 2), decimals("1", "99999", 0), decimals("0.0001", "9", 4))
