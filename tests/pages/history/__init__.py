"""The pages of history."""
