"""Plans for sticks."""
