"""Quotes: every offer on one footing, as a picture, as a table, and one of them explained."""
