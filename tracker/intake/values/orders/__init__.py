"""Order sizes, loads and smallest orders."""
