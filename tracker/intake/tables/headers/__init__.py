"""What heads a table: the words, values and units over its columns, and keys that explain them."""
