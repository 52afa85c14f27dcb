"""Grid -> tables: where on a sheet offers stand, what heads their columns and what stands around them."""
