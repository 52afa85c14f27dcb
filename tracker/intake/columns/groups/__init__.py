"""Columns that belong together: of one vendor, one place, one board, one way of selling."""
