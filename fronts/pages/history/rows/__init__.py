"""What the pages of history show."""
