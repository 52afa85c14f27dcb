"""Reference: the grades, with where every fact comes from."""
