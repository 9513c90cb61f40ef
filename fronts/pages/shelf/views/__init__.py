"""Views of what is in stock."""
