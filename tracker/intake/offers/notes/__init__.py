"""What stands around a row, and for which rows it holds."""
