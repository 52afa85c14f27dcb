"""A new user's whole task on a real database: ask five vendors, record what comes, chase, measure, decide."""
