"""What the head of a column names."""
