"""What board is and what a price means: pure functions and frozen dataclasses, no files, SQL or Qt."""
