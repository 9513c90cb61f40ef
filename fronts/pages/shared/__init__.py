"""What several pages are made with."""
