"""Which rows offer anything, and what else a row is."""
