"""What a price is worth beside others: arrays in, verdicts out."""
