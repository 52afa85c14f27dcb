"""The order size of a price, and what it decides."""
