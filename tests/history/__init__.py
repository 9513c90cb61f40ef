"""What was done can be told, taken back and done again."""
