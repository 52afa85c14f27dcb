"""Dates, validity and lead times."""
