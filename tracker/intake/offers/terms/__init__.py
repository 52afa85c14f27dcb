"""Lead time, validity, smallest order, delivery and vendor."""
