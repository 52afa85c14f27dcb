"""Grade, coating and measures of board, and of which boards a text speaks."""
