"""How units of size and currencies are written, whatever the language."""

UNIT_WORDS = {
    "pt": ("pt", "points", "pts", "pt.", "point"),
    "in": ("in", "inches", "inch"),
    "um": ("µm", "micron", "mic", "microns", "um", "μm"),
    "mm": ("mm",),
    "lb_msf": (
        "lb/MSF",
        "lbs/MSF",
        "lb/1000 ft²",
        "#/MSF",
        "lb per 1,000 sq ft",
        "lbs per MSF",
        "lb./MSF",
        "lbs/1,000 sq. ft.",
    ),
    "lb_3000": ("lb/3000 ft²", "lb/3,000 sq ft", "lbs/3000 sf", "lb per 3,000 ft²"),
    "gsm": ("g/m²", "g/m²", "gsm", "g/m2", "gr/m²", "g/m^2", "GSM"),
}
CURRENCY_WORDS = {
    "USD": ("USD", "US$", "$"),
    "EUR": ("EUR", "€", "Euro"),
    "GBP": ("GBP", "£"),
    "SEK": ("SEK",),
    "CHF": ("CHF",),
    "CAD": ("CAD", "CAD"),
    "AUD": ("AUD",),
}
