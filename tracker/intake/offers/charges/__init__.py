"""What is charged beside a price."""
