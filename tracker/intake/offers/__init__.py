"""Columns -> offers: one line for every price cell, with what said each field and what spoke against it."""
