"""Numbers, lengths and rates as they are written."""
