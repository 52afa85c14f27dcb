"""Who quotes, by name and address."""
