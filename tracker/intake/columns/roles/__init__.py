"""What a column is, by its head, its unit and its cells: words first, then what stands below them."""
